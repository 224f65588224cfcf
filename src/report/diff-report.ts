// What differs between two builds, arranged for a coach: the edits, then what must be printed again, then what follows,
// equal changes of several athletes told once, each under the edits it came from. Then the totals.

import type { Trials } from '../diff/trials.ts';
import type { AthleteChange, BuildDiff, Edit, WeekChange } from '../diff/types.ts';
import type { Side } from '../diff/side.ts';
import { BUILT_IN } from '../library/index.ts';
import type { Day } from '../util/days.ts';
import { causesIn } from './diff-causes.ts';
import type { Cause, CauseFacts, CauseKind } from './diff-causes.ts';
import { pointsOf } from './diff-points.ts';
import type { Point, PointKind, PointWords } from './diff-points.ts';
import { editNotes } from './edit-words.ts';
import type { EditNote } from './edit-words.ts';
import { createPlaces } from './places.ts';
import type { Units } from '../util/quantities.ts';
import { grouped } from '../util/grouped.ts';

export interface ReportedEdit {
  readonly words: string;
  /** Without what changed in it. */
  readonly name: string;
  /** `season.yaml:31`, of the old plan for what was removed. */
  readonly place?: string;
}

export interface DiffGroup {
  /** The week's first day. */
  readonly starts: Day;
  readonly point: Point;
  /** By id, in order. */
  readonly athletes: readonly string[];
  /** By name, in the same order. */
  readonly names: readonly string[];
  /** Of several points of one kind the smallest and largest move, where they are told as one. */
  readonly range?: { readonly least: number; readonly most: number };
}

/** Groups that came of the same edits. */
export interface DiffSection {
  /** `edited`: a line of the plan says so itself. */
  readonly cause: 'edited' | 'follows';
  readonly how: CauseKind;
  /** Indices of the edits. */
  readonly edits: readonly number[];
  readonly groups: readonly DiffGroup[];
}

export interface DiffReport {
  readonly edits: readonly ReportedEdit[];
  /** False where one side is only sheets, so that nobody can say what was edited. */
  readonly editsKnown: boolean;
  /** False where changes stand under several edits that weren't tried one by one. */
  readonly toldApart: boolean;
  /** Athletes who came, went or have another id. */
  readonly people: readonly string[];
  readonly printAgain: readonly DiffSection[];
  readonly after: readonly DiffSection[];
  readonly totals: Pick<BuildDiff, 'before' | 'after' | 'underWay'>;
  /** What loads and heights are told in. */
  readonly units: Units;
}

export interface DiffFacts {
  readonly before: Known;
  readonly after: Known;
  /** Sheets are out for the weeks that start up to this day; absent: for none. */
  readonly printed?: Day;
  /** Absent where edits weren't tried one by one. */
  readonly trials?: Trials;
}

type Known = Pick<Side, 'plan' | 'units'>;

/** Undefined where there is nothing to tell. */
export function reportDiff(diff: BuildDiff, facts: DiffFacts): DiffReport | undefined {
  const notes = editNotes(diff.edits ?? [], facts.after.units);
  const words = wordsOf(facts);
  const { trials } = facts;
  const causes = { notes, words, ...(trials !== undefined && { trials }) };
  const told = diff.athletes.flatMap((athlete) => tellAthlete(athlete, causes));
  const people = diff.athletes.flatMap(personWords);
  if (notes.length === 0 && told.length === 0 && people.length === 0) return undefined;
  const isOut = ({ starts, done }: Told): boolean => !done && facts.printed !== undefined && starts <= facts.printed;
  return {
    edits: reportedEdits(notes, facts),
    editsKnown: diff.edits !== undefined,
    toldApart: told.every(({ how }) => how !== 'any'),
    people,
    printAgain: sectionsOf(told.filter(isOut)),
    after: sectionsOf(told.filter((one) => !isOut(one))),
    totals: { before: diff.before, after: diff.after, underWay: diff.underWay },
    units: facts.after.units,
  };
}

function wordsOf({ before, after }: DiffFacts): PointWords {
  const libraries = [BUILT_IN, before.plan?.library ?? BUILT_IN, after.plan?.library ?? BUILT_IN];
  return {
    exercises: {
      drills: new Map(libraries.flatMap(({ drills }) => [...drills])),
      lifts: new Map(libraries.flatMap(({ lifts }) => [...lifts])),
    },
    units: after.units,
  };
}

function personWords({ kind, name, athlete, renamedFrom }: AthleteChange): readonly string[] {
  if (kind === 'added') return [`${name} is new`];
  if (kind === 'removed') return [`${name} is no longer in the plan`];
  return renamedFrom === undefined ? [] : [`${name} has the id ${athlete}, before ${renamedFrom}`];
}

interface Told extends Cause {
  readonly starts: Day;
  /** A week that is over is printed for nobody. */
  readonly done: boolean;
  readonly athlete: string;
  readonly name: string;
  readonly point: Point;
  readonly cause: DiffSection['cause'];
}

/** The weeks of one who came or went aren't told one by one. */
function tellAthlete(change: AthleteChange, facts: CauseFacts): readonly Told[] {
  if (change.kind !== 'kept') return [];
  return change.weeks.flatMap((week) => {
    const causeOf = causesIn(change, week, facts);
    const done = week.after?.done === true;
    return pointsOf(week, facts.words).map((point) => {
      const { how, edits } = causeOf(point);
      const cause = isWritten(week, point, edits, facts.notes) ? 'edited' : 'follows';
      return { starts: week.starts, done, athlete: change.athlete, name: change.name, point, cause, how, edits };
    });
  });
}

const WRITES_NUMBERS: ReadonlySet<Edit['section']> = new Set(['pin', 'programme', 'use']);

function isWritten(
  { after }: WeekChange,
  { kind }: Point,
  edits: readonly number[],
  notes: readonly EditNote[],
): boolean {
  if (kind !== 'contacts' || after?.written !== true) return false;
  return edits.some((index) => notes[index]?.edits.some(({ section }) => WRITES_NUMBERS.has(section)) === true);
}

function reportedEdits(notes: readonly EditNote[], { before, after }: DiffFacts): readonly ReportedEdit[] {
  const places = { old: createPlaces(before.plan?.files ?? []), fresh: createPlaces(after.plan?.files ?? []) };
  return notes.map(({ words, name, edits: [edit] }) => {
    if (edit?.span === undefined) return { words, name };
    return { words, name, place: (edit.what === 'removed' ? places.old : places.fresh).words(edit.span) };
  });
}

function sectionsOf(told: readonly Told[]): readonly DiffSection[] {
  return grouped(told, ({ cause, how, edits }) => `${cause} ${how} ${edits.join()}`)
    .flatMap((of): readonly DiffSection[] => {
      const [first] = of;
      if (first === undefined) return [];
      const { cause, how, edits } = first;
      return [{ cause, how, edits, groups: groupsOf(of) }];
    })
    .toSorted(bySection);
}

/** In the order of the edits; what one edit did before what several did, what it says itself before what follows. */
function bySection(a: DiffSection, b: DiffSection): number {
  if (a.edits.length !== b.edits.length) return a.edits.length - b.edits.length;
  const at = a.edits.findIndex((edit, index) => edit !== b.edits[index]);
  if (at >= 0) return (a.edits[at] ?? 0) - (b.edits[at] ?? 0);
  return CAUSES.indexOf(a.cause) - CAUSES.indexOf(b.cause);
}

const CAUSES: readonly DiffSection['cause'][] = ['edited', 'follows'];

const KIND_ORDER: readonly PointKind[] = [
  'blocked',
  'phase',
  'kind',
  'contacts',
  'session',
  'move',
  'share',
  'drill',
  'lift',
  'load',
  'drop',
];

function groupsOf(told: readonly Told[]): readonly DiffGroup[] {
  const equal = grouped(told, ({ starts, point }) => `${starts} ${JSON.stringify(point)}`).flatMap(groupOf);
  const alike = grouped(equal, ({ starts, point }) => `${starts} ${point.kind} ${point.subject}`);
  return alike
    .flatMap(toldAsOne)
    .toSorted(
      (a, b) =>
        a.starts - b.starts ||
        KIND_ORDER.indexOf(a.point.kind) - KIND_ORDER.indexOf(b.point.kind) ||
        b.athletes.length - a.athletes.length,
    );
}

function groupOf(told: readonly Told[]): readonly DiffGroup[] {
  const [first] = told;
  if (first === undefined) return [];
  const { starts, point } = first;
  return [{ starts, point, athletes: told.map(({ athlete }) => athlete), names: told.map(({ name }) => name) }];
}

/** More different numbers of one kind than this in one week are told as a range. */
const MOST_TOLD = 3;

function toldAsOne(alike: readonly DiffGroup[]): readonly DiffGroup[] {
  const [first] = alike;
  const moves = alike.flatMap(({ point }) => point.moved ?? []);
  if (first === undefined || alike.length <= MOST_TOLD || moves.length < alike.length) return alike;
  return [
    {
      ...first,
      athletes: alike.flatMap(({ athletes }) => athletes),
      names: alike.flatMap(({ names }) => names),
      range: { least: Math.min(...moves), most: Math.max(...moves) },
    },
  ];
}
