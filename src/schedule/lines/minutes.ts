// How long a line takes: work and rest of each set, the queue at shared kit, setting up. Called for every line that is
// written and when families are chosen. A set takes as long as its own work and rest, or as everybody at the station
// needs in turn, whichever is longer: the rest isn't cut, and waiting is rest too.

import type { TrainingPlace } from '../../plan/types.ts';
import { contactsOfRep, isDrop } from '../../library/drill-facts.ts';
import { MINUTES, STATION_PIECES } from '../../library/minutes.ts';
import type { Drill, KitId, Lift } from '../../library/types.ts';

/** Athletes for each station of the kit that is shortest, at least 1; 1 where nothing is shared. */
export function peopleAtStation(kit: readonly KitId[], place: TrainingPlace, people: number): number {
  const onTheFloor = Math.min(people, MINUTES.mostOnTheFloor);
  let most = 1;
  for (const item of kit) {
    const pieces = STATION_PIECES.get(item);
    if (pieces === undefined) continue;
    const stations = Math.max(1, Math.floor((place.kit.counts.get(item) ?? 0) / pieces));
    most = Math.max(most, Math.ceil(onTheFloor / stations));
  }
  return most;
}

/** Seconds of one set of a drill, from its first contact to the next set's. */
function drillCycle(drill: Drill, reps: number, place: TrainingPlace, people: number): number {
  const work = drillWork(drill, reps);
  const turns = peopleAtStation(drill.kit, place, people) * (work + MINUTES.changeoverSeconds.jumps);
  return Math.max(work + drill.restSeconds, turns);
}

function drillWork(drill: Drill, reps: number): number {
  if (isDrop(drill)) return reps * MINUTES.dropSeconds;
  return reps * contactsOfRep(drill) * MINUTES.contactSeconds[drill.cycle];
}

/** How many times as long as its own work and rest a usual set takes because of the queue; 1 without one. */
export function setWaiting(drill: Drill, place: TrainingPlace, people: number): number {
  return drillCycle(drill, drill.reps.from, place, people) / (drillWork(drill, drill.reps.from) + drill.restSeconds);
}

/** Seconds of a line of jumps. */
export function drillSeconds(drill: Drill, sets: number, reps: number, place: TrainingPlace, people: number): number {
  return MINUTES.setUpSeconds.jumps + sets * drillCycle(drill, reps, place, people);
}

/** Seconds of a line of lifting; a main lift has its lighter sets before it. */
export function liftSeconds(
  lift: Lift,
  work: { readonly sets: number; readonly reps: number; readonly restSeconds: number },
  place: TrainingPlace,
  people: number,
): number {
  const sides = lift.each === true ? 2 : 1;
  const one = lift.held === true ? 1 : lift.eccentricSeconds + MINUTES.liftUpSeconds;
  const set = work.reps * one * sides;
  const turns = peopleAtStation(lift.kit, place, people) * (set + MINUTES.changeoverSeconds.lifts);
  const barred = lift.loading === 'bar' || lift.loading === 'trap-bar';
  const setUp = barred ? MINUTES.setUpSeconds.bar : MINUTES.setUpSeconds.other;
  return setUp + work.sets * Math.max(set + work.restSeconds, turns);
}
