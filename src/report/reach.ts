// When so many contacts a week are safe for an athlete: the first week whose ceiling holds them, and the weeks before it
// in which the ceiling doesn't rise, each with what holds it. Read off the build; for `footfall reach`.

import type { BuiltAthlete, BuiltWeek } from '../build/types.ts';
import type { Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { createPlaces } from './places.ts';
import type { Places } from './places.ts';
import { placesOf, ruleMark } from './why/told.ts';
import type { Told } from './why/told.ts';
import { kindWords } from './week-words.ts';

export interface Reach {
  readonly athlete: string;
  readonly name: string;
  readonly contacts: number;
  /** The first week whose ceiling is as high; absent where none is. */
  readonly earliest?: ReachWeek;
  /** The week with the highest ceiling. */
  readonly highest: ReachWeek;
  /** Weeks up to then whose ceiling is no higher than one before. */
  readonly inTheWay: readonly ReachWeek[];
  /** What holds the highest week, where it is too low. */
  readonly rise?: { readonly percent: number; readonly byWeek: number };
}

export interface ReachWeek {
  readonly week: number;
  readonly starts: Day;
  readonly kindWords: string;
  /** The highest safe volume. */
  readonly most: number;
  readonly heldBy: Told;
}

/** `riseTo` gives the weekly rise in per cent that would do it by a week, counted from 0. */
export function reportReach(
  plan: Plan,
  built: BuiltAthlete,
  contacts: number,
  riseTo: (week: number) => number | undefined,
): Reach {
  const places = createPlaces(plan.files);
  const { id, name } = built.athlete;
  const ahead = built.weeks.filter(({ done }) => !done);
  const [first, ...rest] = ahead.length > 0 ? ahead : built.weeks;
  if (first === undefined) throw new Error('a season without weeks');
  const highest = rest.reduce((best, week) => (week.mostContacts > best.mostContacts ? week : best), first);
  const earliest = ahead.find((week) => week.mostContacts >= contacts);
  const until = earliest ?? highest;
  const percent = earliest === undefined ? riseTo(highest.week - 1) : undefined;
  return {
    athlete: id,
    name,
    contacts,
    ...(earliest !== undefined && { earliest: weekTold(earliest, places) }),
    highest: weekTold(highest, places),
    inTheWay: notRising(ahead, until.week).map((week) => weekTold(week, places)),
    ...(percent !== undefined && { rise: { percent, byWeek: highest.week } }),
  };
}

function notRising(weeks: readonly BuiltWeek[], until: number): readonly BuiltWeek[] {
  let highest = 0;
  return weeks.filter(({ week, mostContacts }) => {
    if (week > until) return false;
    const rises = mostContacts > highest;
    highest = Math.max(highest, mostContacts);
    return !rises;
  });
}

const HELD: Readonly<Record<string, string>> = {
  empty: 'no day is free for jumps',
  transition: 'rest from jumping',
  limit: "the athlete's limit",
  'open-days': 'the days that are open',
  'slot-minutes': 'the minutes of the slot',
  hold: 'stay fresh between peaks',
};

function weekTold({ week, starts, kind, mostContacts, reasons }: BuiltWeek, places: Places): ReachWeek {
  const held = reasons.find(({ about }) => about === 'most');
  const closing = held?.by === 'empty' ? reasons.find(({ about }) => about === 'phase')?.spans : undefined;
  const by = held?.by ?? '';
  return {
    week,
    starts,
    kindWords: kindWords(kind),
    most: mostContacts,
    heldBy: {
      about: by,
      words: HELD[by] ?? by,
      places: placesOf(closing ?? held?.spans ?? [], places),
      ...ruleMark(by),
    },
  };
}
