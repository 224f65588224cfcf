// The library as a coach asks for it: the drills and lifts that fit some wishes, and for a plan's athletes who may do
// them, who not and why. The same as a table for scripts.

import type { Direction, Drill, DirectionShares, Lift, Tier } from '../library/types.ts';
import { DIRECTIONS } from '../library/types.ts';
import type { Library } from '../library/index.ts';
import { columns, rowOf } from './table.ts';
import type { Cells, Column, Table } from './table.ts';

export type { Drill, Lift } from '../library/types.ts';

export interface LibraryWishes {
  readonly kind?: 'drill' | 'lift';
  readonly tier?: Tier;
  readonly direction?: Direction;
  readonly family?: string;
  /** Only what needs no other kit; absent: any. */
  readonly kit?: ReadonlySet<string>;
}

/** Who may do an exercise and who not. */
export interface Verdict {
  readonly name: string;
  /** What holds the person back, in words; absent when nothing does. */
  readonly heldBack?: string;
}

export type ReportedExercise =
  | { readonly kind: 'drill'; readonly drill: Drill; readonly verdicts: readonly Verdict[] }
  | { readonly kind: 'lift'; readonly lift: Lift; readonly verdicts: readonly Verdict[] };

/** The verdicts on an exercise; nobody's when no plan is given. */
export type Judge = (exercise: { readonly drill: Drill } | { readonly lift: Lift }) => readonly Verdict[];

/** Drills first, then lifts, each in the library's order. A wish that only drills can meet leaves the lifts out. */
export function reportLibrary(library: Library, wishes: LibraryWishes, judge: Judge): readonly ReportedExercise[] {
  const drills = [...library.drills.values()].filter((drill) => drillMeets(drill, wishes));
  const lifts = [...library.lifts.values()].filter((lift) => liftMeets(lift, wishes));
  return [
    ...drills.map((drill): ReportedExercise => ({ kind: 'drill', drill, verdicts: judge({ drill }) })),
    ...lifts.map((lift): ReportedExercise => ({ kind: 'lift', lift, verdicts: judge({ lift }) })),
  ];
}

function drillMeets(drill: Drill, { kind, tier, direction, family, kit }: LibraryWishes): boolean {
  return (
    kind !== 'lift' &&
    (tier === undefined || drill.tier === tier) &&
    (direction === undefined || drill.direction[direction] > 0) &&
    (family === undefined || drill.family === family) &&
    hasKit(drill, kit)
  );
}

function liftMeets(lift: Lift, { kind, tier, direction, family, kit }: LibraryWishes): boolean {
  const drillsOnly = tier !== undefined || direction !== undefined || family !== undefined;
  return kind !== 'drill' && !drillsOnly && hasKit(lift, kit);
}

function hasKit({ kit }: Drill | Lift, there: ReadonlySet<string> | undefined): boolean {
  return there === undefined || kit.every((item) => there.has(item));
}

/** `vertical`, or `60 vertical, 40 horizontal`. */
export function directionWords(shares: DirectionShares): string {
  const ways = DIRECTIONS.filter((way) => shares[way] > 0);
  return ways.length === 1 ? ways.join('') : ways.map((way) => `${shares[way]} ${way}`).join(', ');
}

/** `3-8`, or `5`. */
export const rangeWords = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? String(from) : `${from}-${to}`;

const COLUMNS: readonly Column[] = [
  ...columns('word', 'kind'),
  ...columns('text', 'exercise', 'name', 'family'),
  ...columns('integer', 'rung'),
  ...columns('word', 'pattern', 'tier'),
  ...columns('integer', 'vertical', 'horizontal', 'lateral'),
  ...columns('word', 'cycle', 'legs', 'from_level'),
  ...columns('integer', 'stage', 'drop_cm', 'rest_s'),
  ...columns('text', 'kit', 'reps', 'sets', 'may', 'may_not'),
];

/** One row an exercise, in the order given. */
export function libraryTable(exercises: readonly ReportedExercise[]): Table {
  const rows = exercises.map((exercise) => {
    const own = exercise.kind === 'drill' ? drillCells(exercise.drill) : liftCells(exercise.lift);
    return rowOf(COLUMNS, { kind: exercise.kind, ...own, ...verdictCells(exercise.verdicts) });
  });
  return { name: 'library', columns: COLUMNS, rows };
}

function drillCells(drill: Drill): Cells {
  return {
    ...commonCells(drill),
    ...drill.direction,
    family: drill.family,
    rung: drill.rung,
    tier: drill.tier,
    cycle: drill.cycle,
    legs: drill.legs,
    drop_cm: drill.dropCm,
    rest_s: drill.restSeconds,
    sets: rangeWords(drill.sets),
  };
}

const liftCells = (lift: Lift): Cells => ({ ...commonCells(lift), pattern: lift.pattern });

function commonCells({ id, name, fromLevel, stage, kit, reps }: Drill | Lift): Cells {
  return { exercise: id, name, from_level: fromLevel, stage, kit: kit.join(' '), reps: rangeWords(reps) };
}

function verdictCells(verdicts: readonly Verdict[]): Cells {
  if (verdicts.length === 0) return {};
  const may = verdicts.filter(({ heldBack }) => heldBack === undefined).map(({ name }) => name);
  const mayNot = verdicts.flatMap(({ name, heldBack }) => (heldBack === undefined ? [] : `${name}: ${heldBack}`));
  return { may: may.join('; '), may_not: mayNot.join('; ') };
}
