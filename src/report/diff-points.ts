// One athlete's week that changed → the points worth telling, in the trade's words: contacts, sessions, drills, kilos.
// A change of under 5 contacts or under the smallest plate isn't one. A week that is over has no sessions any more,
// which is none either; of one that an error keeps from being written that is all there is to tell. The jumps and the
// lifting of a session are looked at apart, so that jumps that move to a day with lifting are a move. Called by
// diff-report.ts.

import { diffSessions } from '../diff/diff-sheets.ts';
import type {
  LineChange,
  SessionChange,
  SheetLine,
  SheetSession,
  SheetWeek,
  WeekChange,
  WrittenWeek,
} from '../diff/types.ts';
import { VOLUME } from '../library/volume.ts';
import type { Day } from '../util/days.ts';
import { dayWords, timeWords } from './calendar-words.ts';
import { exerciseName } from './exercise-words.ts';
import type { Exercises } from './exercise-words.ts';
import { heightWords, loadWords, restWords } from '../util/quantities.ts';
import type { Units } from '../util/quantities.ts';
import { kindWords, LEFT_OUT } from './week-words.ts';
import { PARTS } from '../library/types.ts';

/** `share`: how a week's contacts are shared out, told where the week's are the same. */
export type PointKind =
  | 'blocked'
  | 'phase'
  | 'kind'
  | 'contacts'
  | 'session'
  | 'move'
  | 'share'
  | 'drill'
  | 'lift'
  | 'load'
  | 'drop';

export interface Point {
  readonly kind: PointKind;
  /** What it is about: an exercise, a day; empty for the week itself. */
  readonly subject: string;
  readonly before: string;
  readonly after: string;
  /** How far it moved, for contacts and loads in grams. */
  readonly moved?: number;
}

export interface PointWords {
  readonly exercises: Exercises;
  readonly units: Units;
}

export const NONE = 'none';

/** All there are, some of them perhaps twice. */
export function everyPoint({ before, after }: WeekChange, words: PointWords): readonly Point[] {
  if (before?.blocked === true || after?.blocked === true) return blockedPoints(before, after);
  const halves = after?.done === true ? [] : HALVES;
  return [
    ...weekPoints(before, after),
    ...halves.flatMap((half) => halfPoints(half, before?.sessions ?? [], after?.sessions ?? [], words)),
  ];
}

/** In the order they are told, none twice. */
export function pointsOf(week: WeekChange, words: PointWords): readonly Point[] {
  const points = everyPoint(week, words);
  const volume = points.some(({ kind }) => kind === 'contacts');
  const seen = new Set<string>();
  return points.filter((point) => {
    const key = `${point.kind} ${point.subject} ${point.before} ${point.after}`;
    if (seen.has(key) || (volume && point.kind === 'share')) return false;
    seen.add(key);
    return true;
  });
}

/** None for a week that was left out, and that the season now doesn't have. */
function blockedPoints(before: SheetWeek | undefined, after: SheetWeek | undefined): readonly Point[] {
  const stateOf = (week: SheetWeek | undefined): string =>
    week === undefined ? NONE : week.blocked === true ? LEFT_OUT : 'written';
  const [was, is] = [stateOf(before), stateOf(after)];
  return is === NONE || is === was ? [] : [{ kind: 'blocked', subject: '', before: was, after: is }];
}

function weekPoints(before: WrittenWeek | undefined, after: WrittenWeek | undefined): readonly Point[] {
  const points: Point[] = [];
  const was = before?.contacts ?? 0;
  const is = after?.contacts ?? 0;
  if (before !== undefined && after !== undefined) {
    if (before.phase !== after.phase)
      points.push({ kind: 'phase', subject: '', before: before.phase, after: after.phase });
    if (before.kind !== after.kind)
      points.push({ kind: 'kind', subject: '', before: kindWords(before.kind), after: kindWords(after.kind) });
  }
  if (Math.abs(is - was) >= VOLUME.step)
    points.push({ kind: 'contacts', subject: '', before: String(was), after: String(is), moved: is - was });
  return points;
}

interface Half {
  readonly what: 'jumps' | 'lifting';
  readonly has: (line: SheetLine) => boolean;
}

const isJump = ({ part, contacts }: SheetLine): boolean => part === 'jumps' || contacts > 0;

const HALVES: readonly Half[] = [
  { what: 'jumps', has: isJump },
  { what: 'lifting', has: (line) => !isJump(line) },
];

function halfPoints(
  half: Half,
  before: readonly SheetSession[],
  after: readonly SheetSession[],
  words: PointWords,
): readonly Point[] {
  const of = (sessions: readonly SheetSession[]): readonly SheetSession[] =>
    sessions.flatMap((session) => {
      const lines = session.lines.filter(half.has);
      return lines.length === 0 ? [] : [{ ...session, contacts: half.what === 'jumps' ? session.contacts : 0, lines }];
    });
  return withMoves(diffSessions(of(before), of(after)).flatMap((change) => sessionPoints(half, change, words)));
}

/** An exercise that came or went, before it is known whether it only moved to another day. */
type DayPoint = Point & { readonly day?: Day };

/** What went on one day and came on another is told as a move; two exercises that changed places, as two. */
function withMoves(found: readonly DayPoint[]): readonly Point[] {
  const left = [...found];
  return found.flatMap((point): readonly Point[] => {
    const index = left.indexOf(point);
    if (index === -1) return [];
    left.splice(index, 1);
    const { day, ...told } = point;
    const swapped = left.find((one) => isReverseOf(one, point));
    if (day !== undefined && swapped?.day !== undefined) {
      left.splice(left.indexOf(swapped), 1);
      return [movedTo(told.before, day, swapped.day), movedTo(told.after, swapped.day, day)];
    }
    const other = day === undefined ? undefined : left.find((one) => isBackOf(one, point));
    if (day === undefined || other?.day === undefined) return [told];
    left.splice(left.indexOf(other), 1);
    const [from, to] = told.after === NONE ? [day, other.day] : [other.day, day];
    const subject = told.after === NONE ? told.before : told.after;
    return [movedTo(subject, from, to)];
  });
}

const movedTo = (subject: string, from: Day, to: Day): Point => ({
  kind: 'move',
  subject,
  before: dayWords(from),
  after: dayWords(to),
});

/** The same exercises the other way round on another day. */
const isReverseOf = (one: DayPoint, other: DayPoint): boolean =>
  one.day !== other.day &&
  one.kind === other.kind &&
  one.subject === '' &&
  other.subject === '' &&
  other.before !== NONE &&
  other.after !== NONE &&
  one.before === other.after &&
  one.after === other.before;

const isBackOf = (one: DayPoint, other: DayPoint): boolean =>
  one.day !== undefined &&
  one.day !== other.day &&
  one.kind === other.kind &&
  (one.before === NONE || one.after === NONE) &&
  one.before === other.after &&
  one.after === other.before;

function sessionPoints({ what }: Half, change: SessionChange, words: PointWords): readonly DayPoint[] {
  const whatOf = ({ contacts }: SheetSession): string => (what === 'jumps' ? `${contacts} contacts` : 'lifting');
  if (change.kind === 'added')
    return [{ kind: 'session', subject: dayWords(change.session.day), before: NONE, after: whatOf(change.session) }];
  if (change.kind === 'removed')
    return [{ kind: 'session', subject: dayWords(change.session.day), before: whatOf(change.session), after: NONE }];
  return [...movePoints(what, change.from, change.to), ...linePoints(change, words)];
}

function movePoints(what: Half['what'], from: SheetSession, to: SheetSession): readonly Point[] {
  const points: Point[] = [];
  const subject = dayWords(to.day);
  if (from.day !== to.day) points.push({ kind: 'move', subject: what, before: dayWords(from.day), after: subject });
  else if (whereOf(from) !== whereOf(to))
    points.push({ kind: 'move', subject: `${subject} ${what}`, before: whereOf(from), after: whereOf(to) });
  if (Math.abs(to.contacts - from.contacts) >= VOLUME.step)
    points.push({ kind: 'share', subject, before: String(from.contacts), after: `${to.contacts} contacts` });
  return points;
}

const whereOf = ({ place, at }: SheetSession): string => (at === undefined ? place : `${timeWords(at)} ${place}`);

type Changed = Extract<SessionChange, { kind: 'changed' }>;

function linePoints({ lines, to }: Changed, words: PointWords): readonly DayPoint[] {
  const kept = lines.flatMap((line) => keptPoints(line, to.smallestPlateGrams, words));
  return [...swapPoints(lines, to.day, words), ...kept];
}

/** Exercises that went and came in one part, told in pairs as far as there are pairs. */
function swapPoints(lines: readonly LineChange[], day: Day, { exercises, units }: PointWords): readonly DayPoint[] {
  const went = lines.flatMap(({ before, after }) => (before !== undefined && after === undefined ? [before] : []));
  const came = lines.flatMap(({ before, after }) => (after !== undefined && before === undefined ? [after] : []));
  const name = (line: SheetLine | undefined): string =>
    line === undefined ? NONE : exerciseName(exercises, line.exercise, units);
  return PARTS.flatMap((part) => {
    const of = (all: readonly SheetLine[]): readonly SheetLine[] => all.filter((line) => line.part === part);
    const [old, fresh] = [of(went), of(came)];
    const kind: PointKind = part === 'jumps' ? 'drill' : 'lift';
    return Array.from({ length: Math.max(old.length, fresh.length) }, (_, index) => ({
      kind,
      subject: '',
      before: name(old[index]),
      after: name(fresh[index]),
      day,
    })).filter(({ before, after }) => before !== after);
  });
}

function keptPoints({ before, after }: LineChange, plateGrams: number, words: PointWords): readonly Point[] {
  if (before === undefined || after === undefined) return [];
  const subject = exerciseName(words.exercises, after.exercise, words.units);
  return [
    ...loadPoints(before, after, plateGrams, subject, words.units),
    ...dropPoints(before, after, subject, words.units),
    ...dosePoints(before, after, subject),
    ...mannerPoints(before, after, subject),
  ];
}

function loadPoints(
  before: SheetLine,
  after: SheetLine,
  plateGrams: number,
  subject: string,
  units: Units,
): readonly Point[] {
  const moved = (after.loadGrams ?? 0) - (before.loadGrams ?? 0);
  if (moved === 0 || Math.abs(moved) < plateGrams) return [];
  const load = ({ loadGrams }: SheetLine): string =>
    loadGrams === undefined ? 'no load' : loadWords(loadGrams, units);
  return [{ kind: 'load', subject, before: load(before), after: load(after), moved }];
}

function dropPoints(before: SheetLine, after: SheetLine, subject: string, units: Units): readonly Point[] {
  if (before.dropCm === after.dropCm) return [];
  const drop = ({ dropCm }: SheetLine): string => (dropCm === undefined ? NONE : heightWords(dropCm, units));
  return [{ kind: 'drop', subject, before: drop(before), after: drop(after) }];
}

/** How hard, the rest, and what the coach says of it: a sheet that is out has it otherwise. */
function mannerPoints(before: SheetLine, after: SheetLine, subject: string): readonly Point[] {
  const kind: PointKind = after.part === 'jumps' ? 'drill' : 'lift';
  const [was, is] = [mannerOf(before), mannerOf(after)];
  return was.flatMap((words, index): readonly Point[] => {
    const now = is[index];
    return words === undefined || now === undefined || words === now
      ? []
      : [{ kind, subject, before: words, after: now }];
  });
}

/** Undefined where it says nothing, or where the load says it. */
function mannerOf({
  reserve,
  percent,
  loadGrams,
  restSeconds,
  tempo,
  note,
  paired,
}: SheetLine): readonly (string | undefined)[] {
  return [
    reserve === undefined ? undefined : `${reserve} in reserve`,
    percent === undefined || loadGrams !== undefined ? undefined : `${percent} %`,
    `rest ${restWords(restSeconds)}`,
    tempo === undefined ? 'no tempo' : `tempo ${tempo}`,
    note === undefined ? 'no note' : `note: ${note}`,
    paired === true ? 'in a pair' : 'by itself',
  ];
}

/** Sets and reps of a lift; those of a drill are in the contacts. */
function dosePoints(before: SheetLine, after: SheetLine, subject: string): readonly Point[] {
  if (after.part === 'jumps' || (before.sets === after.sets && before.reps === after.reps)) return [];
  const dose = ({ sets, reps }: SheetLine): string => `${sets} x ${reps}`;
  return [{ kind: 'lift', subject, before: dose(before), after: dose(after) }];
}
