// How many jump sessions each week's days can hold, chosen for the whole season at once, since the last day of one week
// and the first of the next may be too close. Exact: the largest total, then the fewest open weeks without a session,
// then the later week more. Called by week-terms.ts.

import type { Day } from '../../util/days.ts';

export interface PossibleWeek {
  /** Last day of the week. */
  readonly until: Day;
  /** Days usable for jumps, ascending. */
  readonly days: readonly Day[];
  /** Sessions a week of the phase and level; 0 keeps the week free. */
  readonly frequency: number;
  /** Days from one session's date to the next, at least. */
  readonly apart: number;
  /** Days on which sessions stand whatever is near: those of a programme written by hand. They take the place of `days`. */
  readonly fixed?: readonly Day[];
  /** Whether a week without a session counts against the plan. */
  readonly open: boolean;
}

interface Choice {
  readonly count: number;
  readonly first: Day;
  readonly last: Day;
}

/** Sessions of the weeks so far, as a chain from the last back. */
interface Line {
  readonly total: number;
  readonly without: number;
  readonly count: number;
  readonly before: Line | undefined;
  /** Date of the last session so far. */
  readonly last: Day;
}

const START: Line = { total: 0, without: 0, count: 0, before: undefined, last: -Infinity };

/** The number of jump sessions each week can hold. Two sessions stand `apart` days or more from each other (S1). */
export function possibleSessions(weeks: readonly PossibleWeek[]): readonly number[] {
  const apart = weeks.reduce((most, week) => Math.max(most, week.apart), 0);
  let lines: readonly Line[] = [START];
  for (const week of weeks) lines = withoutStale(step(lines, week), week.until - apart + 1);
  return countsOf(lines.reduce((best, line) => (compare(line, best) < 0 ? line : best)));
}

function countsOf(line: Line): readonly number[] {
  const counts: number[] = [];
  for (let at = line; at.before !== undefined; at = at.before) counts.push(at.count);
  return counts.toReversed();
}

function step(lines: readonly Line[], week: PossibleWeek): readonly Line[] {
  const byLast = new Map<Day, Line>();
  const found = choices(week);
  for (const line of lines) {
    for (const choice of found) {
      if (choice.count > 0 && choice.first - line.last < week.apart) continue;
      const next = extend(line, week, choice);
      const known = byLast.get(next.last);
      if (known === undefined || compare(next, known) < 0) byLast.set(next.last, next);
    }
  }
  if (byLast.size > 0) return [...byLast.values()];
  const [line, choice] = [lines.reduce((best, one) => (compare(one, best) < 0 ? one : best)), found[0]];
  return choice === undefined ? [line] : [extend(line, week, choice)];
}

/** Lines whose last session is too long ago to bar any day to come differ by nothing; the best of them stands. */
function withoutStale(lines: readonly Line[], until: Day): readonly Line[] {
  const recent: Line[] = [];
  let stale: Line | undefined;
  for (const line of lines) {
    if (line.last > until) recent.push(line);
    else if (stale === undefined || compare(line, stale) < 0) stale = line;
  }
  return stale === undefined ? recent : [...recent, stale];
}

function extend(line: Line, week: PossibleWeek, choice: Choice): Line {
  return {
    total: line.total + choice.count,
    without: line.without + (choice.count === 0 && week.open ? 1 : 0),
    count: choice.count,
    before: line,
    last: choice.count === 0 ? line.last : choice.last,
  };
}

/** Of the sets of days that are far enough apart, one for each count, first and last day. */
function choices(week: PossibleWeek): readonly Choice[] {
  const [first, last] = [week.fixed?.[0], week.fixed?.at(-1)];
  if (week.fixed !== undefined && first !== undefined && last !== undefined) {
    return [{ count: week.fixed.length, first, last }];
  }
  const found: Choice[] = [];
  const add = (choice: Choice): void => {
    const known = found.some(
      (one) => one.count === choice.count && one.first === choice.first && one.last === choice.last,
    );
    if (!known) found.push(choice);
  };
  const grow = (from: number, choice: Choice): void => {
    add(choice);
    if (choice.count >= week.frequency) return;
    for (let index = from; index < week.days.length; index += 1) {
      const day = week.days[index] ?? 0;
      if (choice.count > 0 && day - choice.last < week.apart) continue;
      grow(index + 1, { count: choice.count + 1, first: choice.count === 0 ? day : choice.first, last: day });
    }
  };
  grow(0, { count: 0, first: 0, last: 0 });
  return found;
}

function compare(a: Line, b: Line): number {
  return b.total - a.total || a.without - b.without || compareCounts(a, b);
}

/** Negative where `a` has more sessions in the last week in which they differ. */
function compareCounts(a: Line, b: Line): number {
  let [one, other]: [Line | undefined, Line | undefined] = [a, b];
  while (one !== undefined && other !== undefined && one !== other) {
    if (one.count !== other.count) return other.count - one.count;
    one = one.before;
    other = other.before;
  }
  return 0;
}
