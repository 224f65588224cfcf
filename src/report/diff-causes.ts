// Which edits a change came of. Where each edit was tried alone: the one that alone gives it; otherwise those without any one
// of which it isn't there. Where they weren't tried: all edits that may be behind it, the ones that speak of the week
// first. Called by diff-report.ts.

import { isDeepStrictEqual } from 'node:util';
import type { Trials, WeeksOf } from '../diff/trials.ts';
import type { AthleteChange, Edit, SheetWeek, WeekChange } from '../diff/types.ts';
import { appliesTo, overlap, weekFrom } from '../plan/applies.ts';
import type { Day } from '../util/days.ts';
import { everyPoint } from './diff-points.ts';
import type { Point, PointWords } from './diff-points.ts';
import type { EditNote } from './edit-words.ts';

/**
 * `one`: this edit, by trial or because there is no other. `each`: any of them alone gives the same. `together`: none alone
 * gives it, and it isn't there without any of them. `any`: they weren't tried.
 */
export type CauseKind = 'one' | 'each' | 'together' | 'any';

export interface Cause {
  readonly how: CauseKind;
  /** Indices of the edits. */
  readonly edits: readonly number[];
}

export interface CauseFacts {
  readonly notes: readonly EditNote[];
  readonly words: PointWords;
  readonly trials?: Trials;
}

/** The cause of each change of an athlete's week. */
export function causesIn(
  athlete: AthleteChange,
  week: WeekChange,
  { notes, words, trials }: CauseFacts,
): (point: Point) => Cause {
  if (notes.length === 0) return () => ({ how: 'one', edits: [] });
  const near = (): Cause => ({ how: 'any', edits: editsNear(athlete, week, notes) });
  if (notes.length === 1) return () => ({ how: 'one', edits: [0] });
  if (trials === undefined || !isAll(trials, athlete, week)) return near;
  const tried = triedWeek(athlete.athlete, week, trials, words);
  return (point) => causeOf(point, tried);
}

/** Whether the edits are all that made the week different. */
function isAll({ all }: Trials, { athlete }: AthleteChange, { starts, after }: WeekChange): boolean {
  const weeks = all(athlete);
  return weeks !== undefined && isDeepStrictEqual(weekOf(weeks, starts), after);
}

const weekOf = (weeks: readonly SheetWeek[], starts: Day): SheetWeek | undefined =>
  weeks.find((week) => week.starts === starts);

/** How a week of the old build changes with some of the edits. */
interface Changes {
  /** Points, and what they are about. */
  readonly points: ReadonlySet<string>;
  readonly subjects: ReadonlySet<string>;
}

/** With one edit alone, and with all others; undefined where that is no plan. */
interface TriedEdit {
  readonly alone: () => Changes | undefined;
  readonly without: () => Changes | undefined;
}

function triedWeek(
  athlete: string,
  { starts, before }: WeekChange,
  { alone, without }: Trials,
  words: PointWords,
): readonly TriedEdit[] {
  const changes = (weeksOf: WeeksOf | undefined): Changes | undefined => {
    const weeks = weeksOf?.(athlete);
    if (weeks === undefined) return undefined;
    const points = everyPoint({ starts, sessions: [], ...sides(before, weekOf(weeks, starts)) }, words);
    return { points: new Set(points.map(pointKey)), subjects: new Set(points.map(subjectKey)) };
  };
  return alone.map((weeksOf, index) => ({
    alone: once(() => changes(weeksOf)),
    without: once(() => changes(without[index])),
  }));
}

/** Worked out when it is first asked for. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}

const sides = (before?: SheetWeek, after?: SheetWeek): Pick<WeekChange, 'before' | 'after'> => ({
  ...(before !== undefined && { before }),
  ...(after !== undefined && { after }),
});

const subjectKey = ({ kind, subject }: Point): string => `${kind} ${subject}`;
const pointKey = (point: Point): string => `${subjectKey(point)} ${point.before} ${point.after}`;

function causeOf(point: Point, tried: readonly TriedEdit[]): Cause {
  const key = pointKey(point);
  const which = (test: (edit: TriedEdit) => boolean): readonly number[] =>
    tried.flatMap((edit, index) => (test(edit) ? [index] : []));
  const enough = which(({ alone }) => alone()?.points.has(key) === true);
  if (enough.length > 0) return { how: enough.length === 1 ? 'one' : 'each', edits: enough };
  const needed = which(({ without }) => without()?.points.has(key) !== true);
  if (needed.length > 0) return { how: needed.length === 1 ? 'one' : 'together', edits: needed };
  const touching = which(({ alone }) => alone()?.subjects.has(subjectKey(point)) !== false);
  return { how: 'together', edits: touching.length > 1 ? touching : which(() => true) };
}

/** The edits for this athlete that speak of the week; where none does, all that are for the athlete. */
function editsNear(change: AthleteChange, { starts }: WeekChange, notes: readonly EditNote[]): readonly number[] {
  const person = { id: change.athlete, ...(change.squad !== undefined && { squad: change.squad }) };
  const range = weekFrom(starts);
  const isFor = ({ who }: Edit): boolean => appliesTo(who, person);
  const indices = notes.map((_, index) => index);
  const of = (test: (edit: Edit) => boolean): readonly number[] =>
    indices.filter((index) => notes[index]?.edits.some(test) === true);
  const near = of((edit) => isFor(edit) && edit.range !== undefined && overlap(edit.range, range));
  return near.length > 0 ? near : of(isFor);
}
