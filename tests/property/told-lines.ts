// What each output says of each line of each session, as texts that can be set against each other: whose it is, when and
// where, the exercise, sets, reps, load and rest. Read back from the outputs' own words, by readers of this file's own.

import type { Build, BuiltAthlete, BuiltLine, BuiltSession } from '../../src/build/types.ts';
import { createBoards } from '../../src/report/board.ts';
import type { Board, BoardGroup } from '../../src/report/board.ts';
import type { BoardDose } from '../../src/report/board-cells.ts';
import type { BoardRow } from '../../src/report/board-rows.ts';
import { createCalendars } from '../../src/report/calendar.ts';
import { createCards } from '../../src/report/card.ts';
import { createSheets } from '../../src/report/session-sheet.ts';
import { EVERYTHING } from '../../src/report/selection.ts';
import { createSheetNames } from '../../src/report/sheet-names.ts';
import { isoDate } from '../../src/util/days.ts';

/** A session that may be written, of one athlete. */
export interface Planned {
  readonly built: BuiltAthlete;
  readonly session: BuiltSession;
}

/** All of them, those of weeks that an error bars left out. */
export function plannedSessions(athletes: readonly BuiltAthlete[]): readonly Planned[] {
  return athletes.flatMap((built) =>
    built.weeks
      .filter(({ week }) => !built.blocked.has(week))
      .flatMap(({ sessions }) => sessions.map((session) => ({ built, session }))),
  );
}

/** Who, day and place of a session, for outputs that name them so. */
type Where = (planned: Planned) => string;

export interface Told {
  readonly output: string;
  /** What the seasons give, told as this output tells it. */
  readonly wanted: readonly string[];
  readonly found: readonly string[];
}

/** Each output that is for people, with what it should say and what it says. */
export function toldOf(build: Build, athletes: readonly BuiltAthlete[]): readonly Told[] {
  return [sheets(build, athletes), cards(build, athletes), boards(build, athletes), calendars(build, athletes)];
}

const GRAMS_A_POUND = 453.592_37;
const HEIGHT = /, [\d.]+ (?:cm|in)$/u;
const DOSE = /^(\d+) [x×] (\d+)/u;
const LOAD = /([\d.]+) (kg|lb)/u;
const REST = /^(?:(\d+) s|(\d+)(?::(\d\d))? min)$/u;

/** `3 x 5`, whatever stands behind it. */
function doseOf(words: string): string {
  const [, sets, reps] = DOSE.exec(words) ?? [];
  if (sets === undefined || reps === undefined) throw new Error(`"${words}" is no dose`);
  return `${sets} x ${reps}`;
}

function secondsOf(words: string): number {
  const [, seconds, minutes, rest = '0'] = REST.exec(words) ?? [];
  if (seconds === undefined && minutes === undefined) throw new Error(`"${words}" is no rest`);
  return seconds === undefined ? 60 * Number(minutes) + Number(rest) : Number(seconds);
}

interface Words {
  readonly where: string;
  readonly exercise: string;
  readonly dose: string;
  /** As it is told; undefined for none. */
  readonly load: string | undefined;
  readonly rest: string;
}

function factOf({ where, exercise, dose, load = '', rest }: Words): string {
  const [, number, unit] = LOAD.exec(load) ?? [];
  const shown = number === undefined ? '' : `${Number(number)} ${unit}`;
  return [where, exercise.replace(HEIGHT, ''), doseOf(dose), shown, secondsOf(rest)].join(' | ');
}

/** What the season itself gives, in the same form. */
function wantedOf(
  build: Build,
  athletes: readonly BuiltAthlete[],
  where: Where,
  hasLoad: HasLoad = always,
): readonly string[] {
  const { library, season } = build.plan;
  return plannedSessions(athletes).flatMap((planned) =>
    planned.session.lines.map((line) => {
      const { name = '' } = library.drills.get(line.exercise) ?? library.lifts.get(line.exercise) ?? {};
      const load = hasLoad(line) ? shownLoad(line.loadGrams, season.units) : '';
      const bare = name.replace(HEIGHT, '');
      return [where(planned), bare, `${line.sets} x ${line.reps}`, load, line.restSeconds].join(' | ');
    }),
  );
}

type HasLoad = (line: BuiltLine) => boolean;
const always: HasLoad = () => true;

/** A pound that went to grams and back may have lost a hundredth. */
const POUND_LOST = 0.02;

/** Kilos to the hundredth or half pounds, rounded down. */
function shownLoad(grams: number | undefined, units: 'metric' | 'imperial'): string {
  if (grams === undefined) return '';
  if (units === 'metric') return `${Math.floor(grams / 10) / 100} kg`;
  return `${Math.floor(2 * (grams / GRAMS_A_POUND + POUND_LOST)) / 2} lb`;
}

const inRow = (...parts: readonly (string | number | undefined)[]): string =>
  parts.map((part) => part ?? '').join(', ');

/** The sheets that are read out. */
function sheets(build: Build, athletes: readonly BuiltAthlete[]): Told {
  const maker = createSheets(build, EVERYTHING);
  for (const built of athletes) maker.add(built);
  const found = maker.finish().flatMap(({ day, at, place, exercises }) =>
    exercises.flatMap(({ name, doses }) =>
      doses.flatMap(({ words, rest, people }) =>
        people.map((person) =>
          factOf({
            where: inRow(person.name, isoDate(day), at, place),
            exercise: name,
            dose: words,
            load: person.load,
            rest,
          }),
        ),
      ),
    ),
  );
  const where: Where = ({ built, session: { day, slot } }) =>
    inRow(built.athlete.name, isoDate(day), slot.at, slot.place.id);
  return { output: 'sheets', wanted: wantedOf(build, athletes, where), found };
}

const SHORT_DAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const SHORT_MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `Tue 2 Mar` by the machine's own calendar. */
function dayInWords(day: number): string {
  const date = new Date(day * 86_400_000);
  const weekday = SHORT_DAYS[(date.getUTCDay() + 6) % 7] ?? '';
  return `${weekday} ${date.getUTCDate()} ${SHORT_MONTHS[date.getUTCMonth()] ?? ''}`;
}

function clock(at: number | undefined): string {
  if (at === undefined) return '';
  return [Math.floor(at / 60), at % 60].map((part) => String(part).padStart(2, '0')).join(':');
}

/** The cards that are handed out. */
function cards(build: Build, athletes: readonly BuiltAthlete[]): Told {
  const cardsOf = createCards(build, EVERYTHING);
  const found = athletes.flatMap((built) =>
    cardsOf(built).flatMap(({ athlete, sessions }) =>
      sessions.flatMap(({ day, time, place, minutes, lines }) =>
        lines.map(({ name, dose, load, rest }) =>
          factOf({ where: inRow(athlete, day, time, place, minutes), exercise: name, dose, load, rest }),
        ),
      ),
    ),
  );
  const where: Where = ({ built, session: { day, slot, minutes } }) =>
    inRow(built.athlete.id, dayInWords(day), clock(slot.at), slot.place.id, minutes);
  return { output: 'cards', wanted: wantedOf(build, athletes, where), found };
}

/** The boards; what stands on a bar is told with the bars, not in the timetable. */
function boards(build: Build, athletes: readonly BuiltAthlete[]): Told {
  const names = createSheetNames(build.plan);
  const maker = createBoards(build, EVERYTHING);
  for (const built of athletes) maker.add(built);
  const where: Where = ({ built, session: { day, slot } }) =>
    inRow(names.short(built.athlete, day), isoDate(day), slot.place.id, slot.at === undefined ? '' : clock(slot.at));
  const inHand = ({ barGrams }: BuiltLine): boolean => barGrams === undefined;
  const found = [...maker.finish()].flatMap(boardFacts);
  return { output: 'boards', wanted: wantedOf(build, athletes, where, inHand), found };
}

function boardFacts(board: Board): readonly string[] {
  const where = (person: string): string => inRow(person, board.date, board.place, board.time?.split('–')[0] ?? '');
  const rows = board.rows.flatMap((row) =>
    row.cells.flatMap(({ exercises }, index) =>
      exercises.flatMap(({ name, doses }) =>
        doses.flatMap((dose) =>
          peopleOf(dose, board.groups[index]).map((person) =>
            factOf({ where: where(person), exercise: name, dose: dose.dose, ...mannerOf(dose, row) }),
          ),
        ),
      ),
    ),
  );
  const own = board.own.flatMap(({ name: person, lines }) =>
    lines.map(({ exercise, dose, manner }) =>
      factOf({ where: where(person), exercise, dose, ...mannerOf({ differs: manner }, { usual: [] }) }),
    ),
  );
  return [...rows, ...own];
}

/** What differs from a row's usual stands in its place. */
function mannerOf(
  { differs }: Pick<BoardDose, 'differs'>,
  { usual }: Pick<BoardRow, 'usual'>,
): Pick<Words, 'load' | 'rest'> {
  const rest = [...differs, ...usual].find((words) => words.startsWith('rest '));
  return { load: differs.find((words) => LOAD.test(words)), rest: rest?.slice('rest '.length) ?? '' };
}

/** The whole group where nobody is named; who is named at another time is not among the others. */
function peopleOf({ who }: BoardDose, group: BoardGroup | undefined): readonly string[] {
  const together = group?.together ?? [];
  if (who === undefined) return together;
  const named = new Set(who.flatMap((one) => (one.who === 'these' ? one.names : [])));
  return who.flatMap((one) => {
    if (one.who === 'these') return one.names;
    const without = one.who === 'all-but-these' ? new Set(one.names) : named;
    return together.filter((person) => !without.has(person));
  });
}

const LINE = /^(.*) (\d+ × \d+[^,]*)(?:, (.*))?$/u;

/** Everybody's own calendar; a rest is no matter of a phone's. */
function calendars(build: Build, athletes: readonly BuiltAthlete[]): Told {
  const maker = createCalendars(build, EVERYTHING);
  const found = athletes.flatMap((built) =>
    maker.add(built).events.flatMap(({ day, time, place, description = '' }) =>
      description
        .split('\n')
        .filter((words) => words !== '')
        .map((words) => {
          const [, exercise = '', dose = '', load] = LINE.exec(words) ?? [];
          const where = inRow(built.athlete.id, isoDate(day), time?.at, place);
          return withoutRest(factOf({ where, exercise, dose, load, rest: '0 s' }));
        }),
    ),
  );
  const where: Where = ({ built, session: { day, slot } }) =>
    inRow(built.athlete.id, isoDate(day), slot.at, slot.place.id);
  return { output: 'calendars', wanted: wantedOf(build, athletes, where).map(withoutRest), found };
}

const withoutRest = (fact: string): string => fact.replace(/ \| \d+$/u, '');
