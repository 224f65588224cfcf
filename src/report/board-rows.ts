// The rows of a board: each a kind of exercise (a drill family, a pattern of lifts) that most of a squad does at one
// time, and in it for each group who does which exercise of that kind, how often. Times are those of the middle athlete;
// whoever is far from them is named with a time of their own.

import type { BuiltLine } from '../build/types.ts';
import type { Library } from '../library/index.ts';
import type { Part, Plan } from '../plan/types.ts';
import type { Attendance } from './attendance.ts';
import type { LineTime } from './line-times.ts';
import type { SheetLine } from './sheet-line.ts';

export interface BoardRow {
  readonly part: Part;
  /** Minutes from the start, in whole ones. */
  readonly from: number;
  readonly until: number;
  /** What most of the row do between sets, and how hard, where no load says it: `rest 75 s`, `3 left`. */
  readonly usual: readonly string[];
  /** One for each group of the board. */
  readonly cells: readonly BoardCell[];
}

export interface BoardCell {
  readonly exercises: readonly BoardExercise[];
}

export interface BoardExercise {
  readonly name: string;
  readonly doses: readonly BoardDose[];
}

export interface BoardDose {
  readonly dose: string;
  /** A load in the hands, and what differs from the row's usual. */
  readonly differs: readonly string[];
  /** Names, where it isn't the whole group or somebody comes at another time. */
  readonly who?: readonly string[];
}

interface Entry {
  readonly attendance: Attendance;
  readonly line: BuiltLine;
  readonly sheet: SheetLine;
  readonly time: LineTime;
}

const PARTS: readonly Part[] = ['prepare', 'jumps', 'lifts', 'trunk'];

export function boardRows(
  { library }: Pick<Plan, 'library'>,
  attendances: readonly Attendance[],
  groups: number,
): readonly BoardRow[] {
  const byKind = new Map<string, Entry[]>();
  for (const attendance of attendances) {
    for (const [kind, entry] of entriesOf(library, attendance)) {
      const those = byKind.get(kind);
      if (those === undefined) byKind.set(kind, [entry]);
      else those.push(entry);
    }
  }
  return [...byKind.values()].toSorted((a, b) => inOrder(a, b)).map((entries) => rowOf(entries, attendances, groups));
}

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

const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? 0;

const partOf = ([first]: readonly Entry[]): number => (first === undefined ? 0 : PARTS.indexOf(first.line.part));

/** By part, then by the time that the middle athlete comes to it; the one that more have first. */
function inOrder(a: readonly Entry[], b: readonly Entry[]): number {
  return partOf(a) - partOf(b) || startOf(a) - startOf(b) || b.length - a.length;
}

const startOf = (entries: readonly Entry[]): number => Math.round(middle(entries.map(({ time }) => time.from)));

function rowOf(entries: readonly Entry[], attendances: readonly Attendance[], groups: number): BoardRow {
  const [first] = entries;
  if (first === undefined) throw new Error('a row without lines');
  const row: RowFacts = { from: startOf(entries), usual: usualOf(entries) };
  const cells = Array.from({ length: groups }, (_, group) => {
    const members = attendances.filter((one) => one.group === group).length;
    return cellOf(
      entries.filter(({ attendance }) => attendance.group === group),
      members,
      row,
    );
  });
  return { part: first.line.part, ...row, until: Math.round(middle(entries.map(({ time }) => time.until))), cells };
}

type RowFacts = Pick<BoardRow, 'from' | 'usual'>;

const manner = ({ effort, rest }: SheetLine): readonly string[] => [
  ...(effort === undefined ? [] : [effort]),
  `rest ${rest}`,
];

/** What most have; of as many, what comes first. */
function usualOf(entries: readonly Entry[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { sheet } of entries) {
    for (const words of manner(sheet)) counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  return [...counts].filter(([, count]) => 2 * count > entries.length).map(([words]) => words);
}

function cellOf(entries: readonly Entry[], members: number, row: RowFacts): BoardCell {
  const exercises = grouped(entries, ({ sheet }) => sheet.name);
  return {
    exercises: exercises.map((those) => ({
      name: those[0]?.sheet.name ?? '',
      doses: grouped(those, (entry) =>
        [entry.sheet.dose, ...loadInHand(entry), ...manner(entry.sheet)].join('|'),
      ).flatMap((same) => doseOf(same, members, row)),
    })),
  };
}

/** Entries that a key holds together, in the order of the first of them. */
function grouped(entries: readonly Entry[], keyOf: (entry: Entry) => string): readonly (readonly Entry[])[] {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const those = groups.get(key);
    if (those === undefined) groups.set(key, [entry]);
    else those.push(entry);
  }
  return [...groups.values()];
}

function doseOf(entries: readonly Entry[], members: number, { from, usual }: RowFacts): readonly BoardDose[] {
  const [first] = entries;
  if (first === undefined) return [];
  const who = entries.map((entry) => whoWords(entry, from));
  const isPlain = entries.every(({ attendance }, index) => attendance.name === who[index]);
  return [
    {
      dose: first.sheet.dose,
      differs: [...loadInHand(first), ...manner(first.sheet).filter((words) => !usual.includes(words))],
      ...((entries.length < members || !isPlain) && { who }),
    },
  ];
}

/** From here on, in minutes, an athlete's own time is told. */
const OFF_THE_CLOCK = 15;

/** A load that isn't on a bar: those stand with their station. */
const loadInHand = ({ line, sheet }: Entry): readonly string[] =>
  sheet.load === undefined || line.barGrams !== undefined ? [] : [sheet.load];

function whoWords({ attendance, time }: Entry, from: number): string {
  const isLate = Math.abs(time.from - from) >= OFF_THE_CLOCK;
  return isLate ? `${attendance.name} at ${Math.round(time.from)}` : attendance.name;
}
