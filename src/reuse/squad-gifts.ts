// What an athlete's season takes from the others of a squad, in one text: how many they are, the families that those of
// the same sport do side by side in each phase at each place where the athlete may train, and how many share a station. Called for every athlete
// of every round of a watch; what hangs on the squad's standing alone is worked out once for as long as the rest of the
// plan says the same.

import { planIndex } from '../audit/plan-index.ts';
import { PHASES } from '../library/phases.ts';
import { itemsOf } from '../plan/items-of.ts';
import type { Athlete, Plan, Slot, TrainingPlace } from '../plan/types.ts';
import type { Groups } from '../schedule/lines.ts';

/** Families by how a squad's members stand, and a place; good for plans that say the same but for their athletes. */
export type KnownFamilies = Map<string, string>;

/** Squads as they stood that are remembered, a save after the other, each with a place. */
const MOST_KNOWN = 4096;

/** Gives an athlete's text; `known` may hold what plans before found, and takes what is found now. */
export function squadGifts(plan: Plan, { choice }: Groups, known: KnownFamilies): (athlete: Athlete) => string {
  const parties = new Map<string, SquadGifts>();
  const index = planIndex(plan);
  return (athlete) => {
    const party = `${choice.party(athlete)} ${athlete.squad ?? ''}`;
    const gifts = parties.get(party) ?? giftsOf(choice, athlete, known);
    parties.set(party, gifts);
    const { slots } = itemsOf(plan, athlete);
    const counts = slots.map((slot) => index.alike(slot, athlete));
    return `${gifts.people} ${gifts.families(slots)} ${counts.join()}`;
  };
}

interface SquadGifts {
  readonly people: number;
  /** At the places of some slots, in one text. */
  readonly families: (slots: readonly Slot[]) => string;
}

/** The same for all of the athlete's party. */
function giftsOf(choice: Groups['choice'], athlete: Athlete, known: KnownFamilies): SquadGifts {
  const { squad } = athlete;
  const standings = `${choice.party(athlete)} ${choice.standings(squad)}`;
  const bySlots = new Map<readonly Slot[], string>();
  const familiesAt = (place: TrainingPlace): string => {
    // What a squad is called plays no part in its choice.
    const key = `${place.id} ${standings}`;
    const made = known.get(key);
    if (made !== undefined) return made;
    const text = JSON.stringify(PHASES.map(({ id }) => choice.of(athlete, place, id).families));
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(key, text);
    return text;
  };
  const families = (slots: readonly Slot[]): string => {
    const made = bySlots.get(slots);
    if (made !== undefined) return made;
    const text = [...new Set(slots.map(({ place }) => place))].map(familiesAt).join(' ');
    bySlots.set(slots, text);
    return text;
  };
  return { people: choice.people(squad), families };
}
