// Whether two seasons are the same but for their loads: kilos, shares of a maximum, what is heavy by them and the reasons
// that name them. Called by shared-verdict.ts for athletes who have maxima of their own. What isn't the very same object is
// taken for another, so that at worst somebody is audited alone.

import type { BuiltLine, BuiltSession, BuiltWeek } from '../build/types.ts';

type ByLoads = 'loadGrams' | 'perSideGrams' | 'barGrams' | 'percent' | 'estimated' | 'reasons';

const OF_WEEK = fields<Omit<BuiltWeek, 'sessions'>>({
  week: true,
  starts: true,
  phase: true,
  kind: true,
  block: true,
  weekOfBlock: true,
  contacts: true,
  target: true,
  mostContacts: true,
  adaptedBefore: true,
  adapted: true,
  unwritten: true,
  underWay: true,
  otherJumps: true,
  boundBy: true,
  bounds: true,
  possible: true,
  liftSessionsWanted: true,
  reasons: true,
  done: true,
});

const OF_SESSION = fields<Omit<BuiltSession, 'lines' | 'heavy'>>({
  day: true,
  slot: true,
  kind: true,
  contacts: true,
  jumps: true,
  lifts: true,
  minutes: true,
  shortOnTime: true,
  leftOut: true,
  reasons: true,
});

const OF_LINE = fields<Omit<BuiltLine, ByLoads>>({
  order: true,
  part: true,
  exercise: true,
  kind: true,
  sets: true,
  reps: true,
  contacts: true,
  reserve: true,
  dropCm: true,
  restSeconds: true,
  tempo: true,
  note: true,
  family: true,
  own: true,
  pairedWith: true,
  origin: true,
});

/** Two seasons of the same plan. */
export function differInLoadsAlone(one: readonly BuiltWeek[], other: readonly BuiltWeek[]): boolean {
  return areAlike(
    one,
    other,
    (was, is) => haveSame(OF_WEEK, was, is) && areAlike(was.sessions, is.sessions, isSession),
  );
}

const isSession = (was: BuiltSession, is: BuiltSession): boolean =>
  haveSame(OF_SESSION, was, is) && areAlike(was.lines, is.lines, isLine);

const isLine = (was: BuiltLine, is: BuiltLine): boolean => haveSame(OF_LINE, was, is);

/** One by one; what is the same object is alike. */
function areAlike<T>(before: readonly T[], after: readonly T[], alike: (was: T, is: T) => boolean): boolean {
  return (
    before.length === after.length &&
    before.every((was, at) => {
      const is = after[at];
      return is !== undefined && (was === is || alike(was, is));
    })
  );
}

/** All names of a type's fields: one that is new has to be named or left out. */
function fields<T>(names: Readonly<Record<keyof T, true>>): readonly (keyof T)[] {
  return Object.keys(names) as (keyof T)[];
}

const haveSame = <T>(names: readonly (keyof T)[], one: T, other: T): boolean =>
  names.every((name) => one[name] === other[name]);
