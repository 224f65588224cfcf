// A cell of a board: what one group does of one row, exercise by exercise, who has which dose of it, and when, where that is
// far from the row's time. Called by board-rows.ts. Names are left out as far as the rest of the cell tells them.

import type { BuiltLine } from '../build/types.ts';
import { SHEETS } from '../library/sheets.ts';
import type { Attendance } from './attendance.ts';
import type { LineTime } from './line-times.ts';
import type { SheetLine } from './sheet-line.ts';
import { grouped } from '../util/grouped.ts';

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
  /** A load in the hands, what differs from the row's usual, and what the coach wants of it. */
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

/** A line of somebody who is there. */
export interface Entry {
  readonly attendance: Attendance;
  readonly line: BuiltLine;
  readonly sheet: SheetLine;
  readonly time: LineTime;
}

/** What holds for all groups of a row. */
export interface RowFacts {
  /** Minutes from the start, in whole ones. */
  readonly from: number;
  /** What most of the row do between sets, and how hard, where no load says it: `rest 75 s`, `3 left`. */
  readonly usual: readonly string[];
}

/** The cell of a group: its entries of the row, and all who are in it. */
export function cellOf(entries: readonly Entry[], members: readonly Attendance[], row: RowFacts): BoardCell {
  return {
    exercises: grouped(entries, ({ sheet }) => sheet.name).map((those) => exerciseOf(those, members, row)),
  };
}

function exerciseOf(entries: readonly Entry[], members: readonly Attendance[], row: RowFacts): BoardExercise {
  const own = startOf(entries);
  const isOff = Math.abs(own - row.from) >= SHEETS.boardGroupOffMinutes;
  const facts: ExerciseFacts = { members, usual: row.usual, from: isOff ? own : row.from };
  const keyOf = (entry: Entry): string =>
    [entry.sheet.dose, ...loadInHand(entry), ...manner(entry.sheet), ...said(entry.sheet)].join('|');
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

function doseOf(entries: readonly Entry[], facts: ExerciseFacts): readonly BoardDose[] {
  const [first] = entries;
  if (first === undefined) return [];
  const who = whoOf(entries, facts);
  return [
    {
      dose: first.sheet.dose,
      differs: [
        ...loadInHand(first),
        ...manner(first.sheet).filter((words) => !facts.usual.includes(words)),
        ...said(first.sheet),
      ],
      ...(who.length > 0 && { who }),
    },
  ];
}

/** A load that isn't on a bar: those stand with their station. */
export const loadInHand = ({ line, sheet }: Entry): readonly string[] =>
  sheet.load === undefined || line.barGrams !== undefined ? [] : [sheet.load];

/** Nobody where it is the whole group, at the time of the exercise. */
function whoOf(entries: readonly Entry[], { members, from }: ExerciseFacts): readonly BoardWho[] {
  const ownTime = ({ time }: Entry): number | undefined =>
    Math.abs(time.from - from) >= SHEETS.boardAthleteOffMinutes ? Math.round(time.from) : undefined;
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

/** The lower of the two where there are as many above as below; 0 of none. */
export const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? 0;

/** When the middle athlete comes to it, in whole minutes from the start. */
export const startOf = (entries: readonly Entry[]): number => Math.round(middle(entries.map(({ time }) => time.from)));

/** How hard, and the rest. */
export const manner = ({ effort, rest }: SheetLine): readonly string[] => [
  ...(effort === undefined ? [] : [effort]),
  `rest ${rest}`,
];

/** What it is paired with, the tempo, the coach's note. */
export const said = ({ pair, notes }: SheetLine): readonly string[] => [
  ...(pair === undefined ? [] : [pair.words(pair.name)]),
  ...notes,
];
