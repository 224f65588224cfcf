// Sessions to read out on the floor: everybody who trains at one time and place, exercise by exercise, with who does how
// much of it. Athletes with the same dose stand together. The same sheet serves one athlete and a whole squad.

import type { Build, BuiltAthlete, BuiltLine, BuiltSession, BuiltWeek } from '../build/types.ts';
import type { PhaseId } from '../library/types.ts';
import { nameKey } from '../plan/athlete-facts.ts';
import type { Athlete, Part, Plan, Season } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { heldBack } from './board-watch.ts';
import { doseWords, exerciseName } from './exercise-words.ts';
import { pairOf } from './pair-words.ts';
import type { Pair } from './pair-words.ts';
import { percentWords } from './percent-of.ts';
import { heightWords, loadNumber, loadWords, restWords } from '../util/quantities.ts';
import { selectedSessions, selectedWeeks } from './selection.ts';
import type { Selection } from './selection.ts';
import { PARTS } from '../library/types.ts';

export interface Dose {
  /** `4 x 5`, with the drop's height, the share of the maximum and the reserve where they apply. */
  readonly words: string;
  readonly rest: string;
  readonly people: readonly DosePerson[];
}

export interface DosePerson {
  readonly name: string;
  /** `72.5 kg (26.25 a side)`, of those with a load; otherwise empty. */
  readonly load: string;
}

export interface SheetExercise {
  readonly part: Part;
  readonly name: string;
  readonly cue: string;
  readonly stop: string;
  readonly doses: readonly Dose[];
}

export interface SessionSheet {
  readonly day: Day;
  readonly place: string;
  readonly at?: number;
  /** Length of the slot. */
  readonly slotMinutes: number;
  /** The longest of the athletes' estimated lengths. */
  readonly minutes: number;
  readonly week: number;
  readonly phases: readonly PhaseId[];
  readonly people: readonly string[];
  /** Least and most contacts of one athlete. */
  readonly contacts: { readonly least: number; readonly most: number };
  readonly exercises: readonly SheetExercise[];
  /** Who is held back, and how; without reasons of health, as it is read out. */
  readonly watch: readonly string[];
  /** What to leave out when time is short, first things first; of a squad the first things only. */
  readonly shortOnTime: readonly string[];
}

/** Takes the athletes one at a time and keeps the sessions whose day is asked for. */
export interface SheetMaker {
  readonly add: (built: BuiltAthlete) => void;
  readonly finish: () => readonly SessionSheet[];
}

interface Attendance {
  /** As it is written, with the id where somebody else in the plan is called the same. */
  readonly name: string;
  readonly athlete: Athlete;
  readonly week: BuiltWeek;
  readonly session: BuiltSession;
}

/** Takes the athletes one by one; a sheet for each day and slot that somebody trains in. */
export function createSheets({ plan }: Pick<Build, 'plan'>, selection: Selection): SheetMaker {
  const bySlot = new Map<string, Attendance[]>();
  const nameOf = toldApart(plan.athletes);
  const add = (built: BuiltAthlete): void => {
    for (const week of selectedWeeks(selection, built)) {
      for (const session of selectedSessions(selection, week)) {
        const key = `${session.day} ${session.slot.span.file} ${session.slot.span.start}`;
        const there = bySlot.get(key) ?? [];
        bySlot.set(key, there);
        there.push({ name: nameOf(built.athlete), athlete: built.athlete, week, session });
      }
    }
  };
  const finish = (): readonly SessionSheet[] =>
    [...bySlot.values()].map((there) => sheetOf(plan, there)).toSorted(inOrderOfTime);
  return { add, finish };
}

/** Two of one name would hear each other's dose. */
function toldApart(athletes: readonly Athlete[]): (athlete: Athlete) => string {
  const times = new Map<string, number>();
  for (const { name } of athletes) times.set(nameKey(name), (times.get(nameKey(name)) ?? 0) + 1);
  return ({ id, name }) => ((times.get(nameKey(name)) ?? 0) > 1 ? `${name} (${id})` : name);
}

const inOrderOfTime = (a: SessionSheet, b: SessionSheet): number => a.day - b.day || (a.at ?? 0) - (b.at ?? 0);

function sheetOf(plan: Plan, there: readonly Attendance[]): SessionSheet {
  const [first] = there;
  if (first === undefined) throw new Error('a session without athletes');
  const { slot, day } = first.session;
  const contacts = there.map(({ session }) => session.contacts);
  return {
    day,
    place: slot.place.id,
    ...(slot.at !== undefined && { at: slot.at }),
    slotMinutes: slot.minutes,
    minutes: Math.max(...there.map(({ session }) => session.minutes)),
    week: first.week.week,
    phases: [...new Set(there.map(({ week }) => week.phase))],
    people: there.map(({ name }) => name),
    contacts: { least: Math.min(...contacts), most: Math.max(...contacts) },
    exercises: exercisesOf(plan, there),
    watch: heldBack(plan, there, day),
    shortOnTime: shortOnTime(plan, there),
  };
}

interface Entry {
  readonly name: string;
  readonly athlete: Athlete;
  readonly line: BuiltLine;
  readonly pair: Pair | undefined;
}

/** Part by part; in a part the exercises by the earliest place anybody has them at. */
function exercisesOf(plan: Plan, there: readonly Attendance[]): readonly SheetExercise[] {
  const byExercise = new Map<string, Entry[]>();
  const entries = there.flatMap(({ name, athlete, session: { lines } }) =>
    lines.map((line) => ({ name, athlete, line, pair: pairOf(plan, line, lines) })),
  );
  for (const entry of entries) {
    const key = `${entry.line.part} ${entry.line.exercise}`;
    const those = byExercise.get(key) ?? [];
    byExercise.set(key, those);
    those.push(entry);
  }
  return [...byExercise.values()].toSorted((a, b) => rank(a) - rank(b)).flatMap((those) => exerciseOf(plan, those));
}

const ORDER_BELOW = 1000;

const rank = (entries: readonly Entry[]): number =>
  Math.min(...entries.map(({ line }) => PARTS.indexOf(line.part) * ORDER_BELOW + line.order));

function exerciseOf(plan: Plan, entries: readonly Entry[]): readonly SheetExercise[] {
  const [first] = entries;
  if (first === undefined) return [];
  const { library, season } = plan;
  const { exercise, part } = first.line;
  const { cue = '', stop = '' } = library.drills.get(exercise) ?? library.lifts.get(exercise) ?? {};
  const byDose = new Map<string, Omit<Dose, 'people'> & { readonly people: DosePerson[] }>();
  for (const entry of entries) {
    const words = wordsOf(plan, entry);
    const rest = restWords(entry.line.restSeconds);
    const key = `${words} ${rest}`;
    const dose = byDose.get(key) ?? { words, rest, people: [] };
    byDose.set(key, dose);
    dose.people.push({ name: entry.name, load: lineLoad(entry.line, season.units) });
  }
  const doses = [...byDose.values()];
  return [{ part, name: exerciseName(library, exercise, season.units), cue, stop, doses }];
}

function wordsOf(plan: Plan, { athlete, line, pair }: Entry): string {
  const { library, season } = plan;
  const details = [
    line.dropCm === undefined ? [] : `from ${heightWords(line.dropCm, season.units)}`,
    line.percent === undefined ? [] : percentWords(plan, athlete, line),
    line.reserve === undefined ? [] : `${line.reserve} in reserve`,
    pair === undefined ? [] : pair.words(pair.name),
    line.tempo ?? [],
    line.note ?? [],
    line.own ? 'apart from the group' : [],
  ].flat();
  return [doseWords(library, line, season.units), ...details].join(', ');
}

function lineLoad({ loadGrams, perSideGrams, estimated }: BuiltLine, units: Season['units']): string {
  if (loadGrams === undefined) return '';
  const details = [
    ...(perSideGrams === undefined || perSideGrams === 0 ? [] : [`${loadNumber(perSideGrams, units)} a side`]),
    ...(estimated ? ['estimated'] : []),
  ].join(', ');
  return `${loadWords(loadGrams, units)}${details === '' ? '' : ` (${details})`}`;
}

/** How many of each athlete's first things to leave out a squad's sheet names. */
const MOST_LEFT_OUT = 2;

/** Of one athlete the whole order; of a squad what goes first, the most common first. */
function shortOnTime({ library, season }: Plan, there: readonly Attendance[]): readonly string[] {
  const most = there.length === 1 ? Infinity : MOST_LEFT_OUT;
  const counts = new Map<string, number>();
  for (const { session } of there) {
    const lines = session.shortOnTime.flatMap((order) => session.lines.find((line) => line.order === order) ?? []);
    const names = new Set(lines.map(({ exercise }) => exerciseName(library, exercise, season.units)));
    for (const name of [...names].slice(0, most)) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].toSorted(([, a], [, b]) => b - a).map(([name]) => name);
}
