// How many jump sessions each week's days can hold, chosen for the whole season at once, since the last day of one week
// and the first of the next may be too close. Exact: the largest total, then the fewest open weeks without a session,
// then the later week more. Called by ../contacts.ts.

import type { Day } from '../../util/days.ts';

export interface PossibleWeek {
  /** Days usable for jumps, ascending. */
  readonly days: readonly Day[];
  /** Sessions a week of the phase and level; 0 keeps the week free. */
  readonly frequency: number;
  /** Days from one session's date to the next, at least. */
  readonly apart: number;
  /** Whether a week without a session counts against the plan. */
  readonly open: boolean;
}

interface Choice {
  readonly count: number;
  readonly first: Day;
  readonly last: Day;
}

interface Line {
  readonly total: number;
  readonly without: number;
  /** Sessions of each week so far. */
  readonly counts: readonly number[];
  /** Date of the last session so far. */
  readonly last: Day;
}

/** The number of jump sessions each week can hold. Two sessions stand `apart` days or more from each other (S1). */
export function possibleSessions(weeks: readonly PossibleWeek[]): readonly number[] {
  let lines: readonly Line[] = [{ total: 0, without: 0, counts: [], last: -Infinity }];
  for (const week of weeks) lines = step(lines, week);
  return lines.reduce((best, line) => (compare(line, best) < 0 ? line : best)).counts;
}

function step(lines: readonly Line[], week: PossibleWeek): readonly Line[] {
  const byLast = new Map<Day, Line>();
  for (const line of lines) {
    for (const choice of choices(week)) {
      if (choice.count > 0 && choice.first - line.last < week.apart) continue;
      const next = extend(line, week, choice);
      const known = byLast.get(next.last);
      if (known === undefined || compare(next, known) < 0) byLast.set(next.last, next);
    }
  }
  return [...byLast.values()];
}

function extend(line: Line, week: PossibleWeek, choice: Choice): Line {
  return {
    total: line.total + choice.count,
    without: line.without + (choice.count === 0 && week.open ? 1 : 0),
    counts: [...line.counts, choice.count],
    last: choice.count === 0 ? line.last : choice.last,
  };
}

/** Of the sets of days that are far enough apart, one for each count, first and last day. */
function choices(week: PossibleWeek): readonly Choice[] {
  const found = new Map<string, Choice>();
  const add = (choice: Choice): void => void found.set(`${choice.count} ${choice.first} ${choice.last}`, choice);
  const grow = (from: number, choice: Choice): void => {
    add(choice);
    if (choice.count >= week.frequency) return;
    week.days.forEach((day, index) => {
      if (index < from || (choice.count > 0 && day - choice.last < week.apart)) return;
      grow(index + 1, { count: choice.count + 1, first: choice.count === 0 ? day : choice.first, last: day });
    });
  };
  grow(0, { count: 0, first: 0, last: 0 });
  return [...found.values()];
}

function compare(a: Line, b: Line): number {
  return b.total - a.total || a.without - b.without || compareCounts(a.counts, b.counts);
}

/** Negative where `a` has more sessions in the last week in which they differ. */
function compareCounts(a: readonly number[], b: readonly number[]): number {
  for (let week = a.length - 1; week >= 0; week -= 1) {
    const difference = (b[week] ?? 0) - (a[week] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}
