// The rows of a board: each a kind of exercise (a drill family, a pattern of lifts) that much of a squad does at one
// time; what a group does in it is a cell (board-cells.ts). Times are those of the middle athlete. What hardly anybody does
// is no row: it stands with the names of those who do. Called by board.ts.

import type { BuiltLine } from '../build/types.ts';
import type { Library } from '../library/index.ts';
import { SHEETS } from '../library/sheets.ts';
import type { Part, Plan } from '../plan/types.ts';
import type { Attendance } from './attendance.ts';
import { cellOf, loadInHand, manner, middle, said, startOf } from './board-cells.ts';
import type { BoardCell, Entry, RowFacts } from './board-cells.ts';
import { addTo } from '../util/grouped.ts';
import { PARTS } from '../library/types.ts';

export interface BoardRow extends RowFacts {
  readonly part: Part;
  /** Minutes from the start, in whole ones. */
  readonly until: number;
  /** One for each group of the board. */
  readonly cells: readonly BoardCell[];
}

/** What somebody does apart from the rows, in order of time. */
export interface BoardOwn {
  readonly name: string;
  readonly lines: readonly BoardOwnLine[];
}

export interface BoardOwnLine {
  /** In minutes from the start. */
  readonly at: number;
  readonly exercise: string;
  readonly dose: string;
  /** A load in the hands, how hard, the rest, and what the coach wants of it. */
  readonly manner: readonly string[];
}

export interface BoardPlan {
  readonly rows: readonly BoardRow[];
  readonly own: readonly BoardOwn[];
  /** Those who do the whole session apart from the rows. */
  readonly apart: ReadonlySet<Attendance>;
}

/** The rows of so many groups, in order of part and time, and what stands below them. */
export function boardRows(
  { library }: Pick<Plan, 'library'>,
  attendances: readonly Attendance[],
  groups: number,
): BoardPlan {
  const isRow = (entries: readonly Entry[]): boolean =>
    groups === 1 || entries.length * SHEETS.boardRowOneIn > attendances.length;
  const apart = groups === 1 || attendances.length < SHEETS.boardRowOneIn ? NOBODY : apartOf(attendances);
  const together = attendances.filter((attendance) => !apart.has(attendance));
  const kinds = kindsOf(library, together);
  const own = [...kindsOf(library, [...apart]).flat(), ...kinds.filter((entries) => !isRow(entries)).flat()];
  return {
    rows: kinds.filter(isRow).map((entries) => rowOf(entries, together, groups)),
    own: ownOf(own, attendances),
    apart,
  };
}

const NOBODY: ReadonlySet<Attendance> = new Set();

function apartOf(attendances: readonly Attendance[]): ReadonlySet<Attendance> {
  const doing = new Map<string, Set<Attendance>>();
  for (const attendance of attendances) {
    for (const { exercise } of attendance.session.lines) {
      doing.set(exercise, (doing.get(exercise) ?? new Set()).add(attendance));
    }
  }
  const isApart = ({ session: { lines } }: Attendance): boolean => {
    const alone = lines.filter(({ exercise }) => doing.get(exercise)?.size === 1).length;
    return alone > 1 && alone * 100 >= lines.length * SHEETS.boardApartPercent;
  };
  return new Set(attendances.filter(isApart));
}

/** The lines of all, those of a kind together, in the order of the board. */
function kindsOf(library: Library, attendances: readonly Attendance[]): readonly (readonly Entry[])[] {
  const byKind = new Map<string, Entry[]>();
  for (const attendance of attendances) {
    for (const [kind, entry] of entriesOf(library, attendance)) addTo(byKind, kind, entry);
  }
  return asDone([...byKind.values()].toSorted((a, b) => inOrder(a, b)));
}

/**
 * Down the board as the sessions go: behind a kind that more of those who do both have first, else by time. Groups come to
 * a kind at different times, and by time alone one could read its own column in an order that is nobody's.
 */
function asDone(kinds: readonly (readonly Entry[])[]): readonly (readonly Entry[])[] {
  const starts = kinds.map((entries) => new Map(entries.map(({ attendance, time }) => [attendance, time.from])));
  const left = kinds.map((_, index) => index);
  const ordered: (readonly Entry[])[] = [];
  while (left.length > 0) {
    const free = left.findIndex((one) => left.every((other) => !isFirst(kinds, starts, other, one)));
    for (const index of left.splice(Math.max(0, free), 1)) ordered.push(kinds[index] ?? []);
  }
  return ordered;
}

/** Whether more have the one kind of a part before the other than after it. */
function isFirst(
  kinds: readonly (readonly Entry[])[],
  starts: readonly ReadonlyMap<Attendance, number>[],
  one: number,
  other: number,
): boolean {
  const parts = partOf(kinds[one] ?? []) - partOf(kinds[other] ?? []);
  if (parts !== 0 || one === other) return parts < 0;
  let ahead = 0;
  for (const [attendance, from] of starts[one] ?? []) {
    const then = starts[other]?.get(attendance);
    if (then !== undefined) ahead += Math.sign(then - from);
  }
  return ahead > 0;
}

/** In the order in which the athletes stand on the board. */
function ownOf(entries: readonly Entry[], attendances: readonly Attendance[]): readonly BoardOwn[] {
  return attendances.flatMap((attendance) => {
    const those = entries.filter((entry) => entry.attendance === attendance);
    if (those.length === 0) return [];
    const ordered = those.toSorted((a, b) => a.time.from - b.time.from);
    return [{ name: attendance.name, lines: ordered.map(ownLine) }];
  });
}

const ownLine = (entry: Entry): BoardOwnLine => ({
  at: Math.round(entry.time.from),
  exercise: entry.sheet.name,
  dose: entry.sheet.dose,
  manner: [...loadInHand(entry), ...manner(entry.sheet), ...said(entry.sheet)],
});

/** The lines of one athlete, each under its kind; the second of a kind in a session is a kind of its own. */
function entriesOf(library: Library, attendance: Attendance): readonly (readonly [string, Entry])[] {
  const times = new Map<string, number>();
  return attendance.session.lines.flatMap((line, index) => {
    const sheet = attendance.lines[index];
    const time = attendance.times[index];
    if (sheet === undefined || time === undefined) return [];
    const kind = kindOf(library, line);
    const count = (times.get(kind) ?? 0) + 1;
    times.set(kind, count);
    return [[`${kind} ${count}`, { attendance, line, sheet, time }] as const];
  });
}

function kindOf({ drills, lifts }: Library, { part, exercise, family }: BuiltLine): string {
  const kind = family ?? drills.get(exercise)?.family ?? lifts.get(exercise)?.pattern ?? exercise;
  return `${part} ${part === 'trunk' ? 'trunk' : kind}`;
}

const partOf = ([first]: readonly Entry[]): number => (first === undefined ? 0 : PARTS.indexOf(first.line.part));

/** By part, then by the time that the middle athlete comes to it; the one that more have first. */
function inOrder(a: readonly Entry[], b: readonly Entry[]): number {
  return partOf(a) - partOf(b) || startOf(a) - startOf(b) || b.length - a.length;
}

function rowOf(entries: readonly Entry[], attendances: readonly Attendance[], groups: number): BoardRow {
  const [first] = entries;
  if (first === undefined) throw new Error('a row without lines');
  const row: RowFacts = { from: startOf(entries), usual: usualOf(entries) };
  const cells = Array.from({ length: groups }, (_, group) => {
    const members = attendances.filter((one) => one.group === group);
    return cellOf(
      entries.filter(({ attendance }) => attendance.group === group),
      members,
      row,
    );
  });
  return { part: first.line.part, ...row, until: Math.round(middle(entries.map(({ time }) => time.until))), cells };
}

/** How hard, where most have it so, and the commonest rest; of as many, what comes first. */
function usualOf(entries: readonly Entry[]): readonly string[] {
  const effort = commonest(entries.map(({ sheet }) => sheet.effort));
  const rest = commonest(entries.map(({ sheet }) => `rest ${sheet.rest}`));
  return [
    ...(effort?.value !== undefined && 2 * effort.count > entries.length ? [effort.value] : []),
    ...(rest === undefined ? [] : [rest.value]),
  ];
}

function commonest<T>(values: readonly T[]): { readonly value: T; readonly count: number } | undefined {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const [first] = [...counts].toSorted(([, a], [, b]) => b - a);
  return first === undefined ? undefined : { value: first[0], count: first[1] };
}
