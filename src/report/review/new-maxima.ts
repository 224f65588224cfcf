// Lifts tested since the plan's maximum was written, and what each would change in the kilos of the weeks ahead. A result
// doesn't find its way into the plan by itself: the coach writes it, and is shown here what that would do.

import type { BuiltAthlete, BuiltLine } from '../../build/types.ts';
import type { Athlete, LiftMax, TestRow } from '../../plan/types.ts';
import type { Span } from '../../source/types.ts';
import type { Day } from '../../util/days.ts';
import { exerciseName } from '../exercise-words.ts';
import type { Exercises } from '../exercise-words.ts';
import { GRAMS_A_KILO, GRAMS_A_POUND } from '../../util/units.ts';

/** The season of an athlete with another maximum of one lift. */
export type WithMax = (athlete: Athlete, max: LiftMax) => BuiltAthlete;

export interface KiloChange {
  readonly day: Day;
  readonly exercise: string;
  readonly name: string;
  /** Grams on the sheet as the plan is; absent where the line has no load yet. */
  readonly before?: number;
  /** Grams with the new maximum. */
  readonly after?: number;
}

export interface NewMaximum {
  readonly max: LiftMax;
  /** The plan's; absent where it has none. */
  readonly before?: LiftMax;
  /** Of the rows of the test. */
  readonly spans: readonly Span[];
  /** The next line of each exercise whose kilos change, in order of day. */
  readonly next: readonly KiloChange[];
  /** All lines from the day on whose kilos change. */
  readonly lines: number;
}

const GRAMS: Readonly<Record<string, number>> = { kg: GRAMS_A_KILO, lb: GRAMS_A_POUND };

/** In the order of the tests; `rows` are the athlete's, in order of day. */
export function newMaxima(
  built: BuiltAthlete,
  rows: readonly TestRow[],
  library: Exercises,
  { from, withMax }: { readonly from: Day; readonly withMax: WithMax },
): readonly NewMaximum[] {
  const { athlete } = built;
  const tested = rows.filter(({ test, unit }) => library.lifts.has(test) && GRAMS[unit] !== undefined);
  return [...new Set(tested.map(({ test }) => test))].flatMap((lift) => {
    const before = athlete.lifts.get(lift);
    const mine = tested.filter(({ test }) => test === lift);
    const max = latest(lift, mine);
    if (max === undefined || isKnown(max, before)) return [];
    const spans = mine.filter(({ day }) => day === max.on).map(({ span }) => span);
    const changes = kiloChanges(library, linesFrom(built, from), linesFrom(withMax(athlete, max), from));
    const next = changes.filter(
      ({ exercise }, index) => changes.findIndex((one) => one.exercise === exercise) === index,
    );
    return { max, ...(before !== undefined && { before }), spans, next, lines: changes.length };
  });
}

/** The best trial of the last day, as a single. */
function latest(lift: string, rows: readonly TestRow[]): LiftMax | undefined {
  const on = rows.at(-1)?.day;
  const trials = rows.filter(({ day }) => day === on);
  const [first] = trials;
  if (on === undefined || first === undefined) return undefined;
  const grams = Math.round(Math.max(...trials.map(({ value, unit }) => value * (GRAMS[unit] ?? 0))));
  return grams === 0 ? undefined : { lift, grams, estimated: false, on, span: first.span };
}

/** Not newer than what the plan has, or the same. */
function isKnown({ on = 0, grams }: LiftMax, before: LiftMax | undefined): boolean {
  if (before === undefined) return false;
  if (before.on !== undefined && before.on >= on) return true;
  return before.grams === grams && !before.estimated;
}

function kiloChanges(
  library: Exercises,
  before: readonly DatedLine[],
  after: readonly DatedLine[],
): readonly KiloChange[] {
  const old = new Map(before.map((one) => [one.key, one]));
  return after.flatMap(({ key, day, line }) => {
    const was = old.get(key)?.line.loadGrams;
    const is = line.loadGrams;
    if (was === is) return [];
    return {
      day,
      exercise: line.exercise,
      name: exerciseName(library, line.exercise),
      ...(was !== undefined && { before: was }),
      ...(is !== undefined && { after: is }),
    };
  });
}

interface DatedLine {
  /** Day, slot, exercise, and which of its lines in the session it is. */
  readonly key: string;
  readonly day: Day;
  readonly line: BuiltLine;
}

function linesFrom({ weeks, blocked }: BuiltAthlete, from: Day): readonly DatedLine[] {
  return weeks
    .filter(({ week }) => !blocked.has(week))
    .flatMap(({ sessions }) => sessions)
    .filter(({ day }) => day >= from)
    .flatMap(({ day, slot, lines }) =>
      lines.map((line, index) => {
        const nth = lines.slice(0, index).filter(({ exercise }) => exercise === line.exercise).length;
        return { key: [day, slot.id, line.exercise, nth].join(' '), day, line };
      }),
    );
}
