// What an athlete's season takes from the others of a squad, in one text: how many they are, the families that they do side
// by side at each place in each phase, and how many share a station. Called for every athlete of every round of a watch;
// what hangs on the squad's standing alone is worked out once for as long as the rest of the plan says the same.

import { planIndex } from '../audit/plan-index.ts';
import { PHASES } from '../library/phases.ts';
import { itemsOf } from '../plan/items-of.ts';
import type { AthleteItems } from '../plan/items-of.ts';
import type { Athlete, Plan, TrainingPlace } from '../plan/types.ts';
import type { Groups } from '../schedule/lines.ts';

/** Families by squad, its members' standing and its places; good for plans that say the same but for their athletes. */
export type KnownFamilies = Map<string, string>;

/** Squads as they stood that are remembered, a save after the other. */
const MOST_KNOWN = 4096;

/** Gives an athlete's text; `known` may hold what plans before found, and takes what is found now. */
export function squadGifts(plan: Plan, groups: Groups, known: KnownFamilies): (athlete: Athlete) => string {
  const places = placesBySquad(plan);
  const families = new Map<string | undefined, string>();
  const index = planIndex(plan);
  return (athlete) => {
    const { squad } = athlete;
    const shared = families.get(squad) ?? familiesOf(groups, squad, places.get(squad) ?? new Set(), known);
    families.set(squad, shared);
    const counts = itemsOf(plan, athlete).slots.map((slot) => index.alike(slot, athlete));
    return `${shared} ${counts.join()}`;
  };
}

/** Where anybody of a squad may train. */
function placesBySquad(plan: Plan): ReadonlyMap<string | undefined, ReadonlySet<TrainingPlace>> {
  const places = new Map<string | undefined, Set<TrainingPlace>>();
  const seen = new Set<AthleteItems>();
  for (const athlete of plan.athletes) {
    const items = itemsOf(plan, athlete);
    if (seen.has(items)) continue;
    seen.add(items);
    const known = places.get(athlete.squad) ?? new Set();
    places.set(athlete.squad, known);
    for (const { place } of items.slots) known.add(place);
  }
  return places;
}

function familiesOf(
  { choice }: Groups,
  squad: string | undefined,
  places: ReadonlySet<TrainingPlace>,
  known: KnownFamilies,
): string {
  const key = JSON.stringify([squad, choice.standings(squad), [...places].map(({ id }) => id)]);
  const made = known.get(key);
  if (made !== undefined) return made;
  const choices = [...places].flatMap((place) => PHASES.map(({ id }) => choice.of(squad, place, id).families));
  const text = JSON.stringify([choice.people(squad), choices]);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, text);
  return text;
}
