// The rows of a board: each a kind of exercise (a drill family, a pattern of lifts) that much of a squad does at one
// time, and in it for each group who does which exercise of that kind, how often. Times are those of the middle athlete;
// a group or an athlete far from them has a time of their own. What hardly anybody does is no row: it stands with the
// names of those who do.

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
  /** When those of the group come to it, in minutes, where that is far from the row's time. */
  readonly at?: number;
  readonly doses: readonly BoardDose[];
}

export interface BoardDose {
  readonly dose: string;
  /** A load in the hands, and what differs from the row's usual. */
  readonly differs: readonly string[];
  /** Where it isn't the whole group or somebody comes at another time. */
  readonly who?: readonly BoardWho[];
}

export interface BoardWho {
  readonly who: 'these' | 'all-but-these' | 'the-others';
  /** None where it is the others of the group. */
  readonly names: readonly string[];
  /** When they come to it, in minutes, where that is far from the exercise's time. */
  readonly at?: number;
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
  /** A load in the hands, how hard, the rest. */
  readonly manner: readonly string[];
}

export interface BoardPlan {
  readonly rows: readonly BoardRow[];
  readonly own: readonly BoardOwn[];
  /** Those who do the whole session apart from the rows. */
  readonly apart: ReadonlySet<Attendance>;
}

interface Entry {
  readonly attendance: Attendance;
  readonly line: BuiltLine;
  readonly sheet: SheetLine;
  readonly time: LineTime;
}

const PARTS: readonly Part[] = ['prepare', 'jumps', 'lifts', 'trunk'];

/** What no more than one in so many do is no row of a board of several groups. */
const ONE_IN = 7;
/** Of whose exercises nobody else does so many per cent or more, does the whole session apart. */
const APART_PERCENT = 25;

export function boardRows(
  { library }: Pick<Plan, 'library'>,
  attendances: readonly Attendance[],
  groups: number,
): BoardPlan {
  const isRow = (entries: readonly Entry[]): boolean => groups === 1 || entries.length * ONE_IN > attendances.length;
  const apart = groups === 1 || attendances.length < ONE_IN ? NOBODY : apartOf(attendances);
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
    return alone > 1 && alone * 100 >= lines.length * APART_PERCENT;
  };
  return new Set(attendances.filter(isApart));
}

/** The lines of all, those of a kind together, in the order of the board. */
function kindsOf(library: Library, attendances: readonly Attendance[]): readonly (readonly Entry[])[] {
  const byKind = new Map<string, Entry[]>();
  for (const attendance of attendances) {
    for (const [kind, entry] of entriesOf(library, attendance)) {
      const those = byKind.get(kind);
      if (those === undefined) byKind.set(kind, [entry]);
      else those.push(entry);
    }
  }
  return [...byKind.values()].toSorted((a, b) => inOrder(a, b));
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
  manner: [...loadInHand(entry), ...manner(entry.sheet)],
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
    const members = attendances.filter((one) => one.group === group);
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

/** From here on, in minutes, the own time of a group's exercise is told. */
const GROUP_OFF = 4;
/** From here on, in minutes, an athlete's own time is told. */
const ATHLETE_OFF = 8;

function cellOf(entries: readonly Entry[], members: readonly Attendance[], row: RowFacts): BoardCell {
  return {
    exercises: grouped(entries, ({ sheet }) => sheet.name).map((those) => exerciseOf(those, members, row)),
  };
}

function exerciseOf(entries: readonly Entry[], members: readonly Attendance[], row: RowFacts): BoardExercise {
  const own = startOf(entries);
  const isOff = Math.abs(own - row.from) >= GROUP_OFF;
  const facts: ExerciseFacts = { members, usual: row.usual, from: isOff ? own : row.from };
  const keyOf = (entry: Entry): string => [entry.sheet.dose, ...loadInHand(entry), ...manner(entry.sheet)].join('|');
  return {
    name: entries[0]?.sheet.name ?? '',
    ...(isOff && { at: own }),
    doses: grouped(entries, keyOf).flatMap((same) => doseOf(same, facts)),
  };
}

interface ExerciseFacts {
  readonly members: readonly Attendance[];
  readonly usual: readonly string[];
  readonly from: number;
}

/** Entries that a key holds together, in the order of the first of them. */
function grouped(
  entries: readonly Entry[],
  keyOf: (entry: Entry) => string | number | undefined,
): readonly (readonly Entry[])[] {
  const groups = new Map<string | number | undefined, Entry[]>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const those = groups.get(key);
    if (those === undefined) groups.set(key, [entry]);
    else those.push(entry);
  }
  return [...groups.values()];
}

function doseOf(entries: readonly Entry[], facts: ExerciseFacts): readonly BoardDose[] {
  const [first] = entries;
  if (first === undefined) return [];
  const who = whoOf(entries, facts);
  return [
    {
      dose: first.sheet.dose,
      differs: [...loadInHand(first), ...manner(first.sheet).filter((words) => !facts.usual.includes(words))],
      ...(who.length > 0 && { who }),
    },
  ];
}

/** A load that isn't on a bar: those stand with their station. */
const loadInHand = ({ line, sheet }: Entry): readonly string[] =>
  sheet.load === undefined || line.barGrams !== undefined ? [] : [sheet.load];

/** Nobody where it is the whole group, at the time of the exercise. */
function whoOf(entries: readonly Entry[], { members, from }: ExerciseFacts): readonly BoardWho[] {
  const ownTime = ({ time }: Entry): number | undefined =>
    Math.abs(time.from - from) >= ATHLETE_OFF ? Math.round(time.from) : undefined;
  const onTime = entries.filter((entry) => ownTime(entry) === undefined);
  const late = grouped(
    entries.filter((entry) => ownTime(entry) !== undefined),
    ownTime,
  ).map((those): BoardWho => ({ who: 'these', names: namesOf(those), ...atOf(those[0], ownTime) }));
  if (onTime.length === 0) return late;
  const there = new Set(entries.map(({ attendance }) => attendance));
  const missing = members.filter((one) => !there.has(one)).map(({ name }) => name);
  if (missing.length === 0 && late.length === 0) return [];
  if (missing.length === 0 && onTime.length > FEW) return [...late, { who: 'the-others', names: [] }];
  if (late.length === 0 && missing.length <= FEW && 2 * missing.length < onTime.length) {
    return [{ who: 'all-but-these', names: missing }];
  }
  return [{ who: 'these', names: namesOf(onTime) }, ...late];
}

/** So few names are better told than left to be worked out. */
const FEW = 2;

const namesOf = (entries: readonly Entry[]): readonly string[] => entries.map(({ attendance }) => attendance.name);

function atOf(entry: Entry | undefined, ownTime: (entry: Entry) => number | undefined): { readonly at?: number } {
  const at = entry === undefined ? undefined : ownTime(entry);
  return at === undefined ? {} : { at };
}
