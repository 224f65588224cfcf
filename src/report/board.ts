// One session as the board that the floor is run from: minutes down the side, groups across, the same kind of exercise at
// the same time with each one's dose; who lifts at which station with what on the bar; whom to watch, what to set out,
// what goes first when time is short, and a list to tick, which is the record. Whoever stands at the board may be an
// assistant or an athlete: no reasons of health, no names of rules.

import type { Build, BuiltAthlete, BuiltSession } from '../build/types.ts';
import { SHEETS } from '../library/sheets.ts';
import { appliesTo } from '../plan/applies.ts';
import type { Athlete, Plan, Slot } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { Attendance } from './attendance.ts';
import { boardRows } from './board-rows.ts';
import type { BoardOwn, BoardRow } from './board-rows.ts';
import { stationsOf } from './board-stations.ts';
import type { StationTable } from './board-stations.ts';
import { cuesOf, kitToSetOut, shortOnTime, watchList } from './board-watch.ts';
import type { Cue } from './board-watch.ts';
import { dayWords, longDayWords, timeWords } from './calendar-words.ts';
import { createGroupMarks } from './group-marks.ts';
import type { GroupMark } from './group-marks.ts';
import { lineTimes } from './line-times.ts';
import { selectedSessions, selectedWeeks } from './selection.ts';
import type { Selection } from './selection.ts';
import { sheetLine } from './sheet-line.ts';
import { createSheetNames } from './sheet-names.ts';
import { MINUTES_A_DAY } from '../util/units.ts';
import { addTo } from '../util/grouped.ts';

export interface Board {
  /** ISO date. */
  readonly date: string;
  /** `Tuesday 2 March`. */
  readonly day: string;
  /** `18:00–19:15`, where the slot has a time. */
  readonly time?: string;
  readonly place: string;
  readonly slotMinutes: number;
  /** The longest of the athletes' sessions, estimated. */
  readonly minutes: number;
  readonly due: number;
  /** The next match and the next tests of anybody who is there: `Tue 9 Mar: tests; Sat 13 Mar: Cup`. */
  readonly next?: string;
  readonly groups: readonly BoardGroup[];
  readonly rows: readonly BoardRow[];
  /** What somebody does apart from the rows. */
  readonly own: readonly BoardOwn[];
  readonly stations: readonly StationTable[];
  readonly watch: readonly string[];
  readonly kit: readonly string[];
  /** What to leave out when time is short, first things first. */
  readonly short: readonly string[];
  readonly cues: readonly Cue[];
}

export interface BoardGroup {
  /** Absent for those who are in no group and no squad. */
  readonly mark?: GroupMark;
  readonly people: readonly string[];
  /** Those of them who do what the rows say; the others are on their own. */
  readonly together: readonly string[];
}

/** Takes the athletes one at a time; boards are made when all are there. */
export interface BoardMaker {
  readonly add: (built: BuiltAthlete) => void;
  /** In order of day and time. */
  readonly finish: () => Iterable<Board>;
}

/** Takes the athletes one by one; a board for each day and slot that somebody trains in. */
export function createBoards({ plan }: Pick<Build, 'plan'>, selection: Selection): BoardMaker {
  const names = createSheetNames(plan);
  const bySlot = new Map<string, Coming[]>();
  const add = (built: BuiltAthlete): void => {
    for (const coming of comingOf(built, selection)) {
      const { day, slot } = coming.session;
      addTo(bySlot, `${day} ${slot.span.file} ${slot.span.start}`, coming);
    }
  };
  return {
    add,
    *finish() {
      for (const there of [...bySlot.values()].toSorted(inOrderOfTime)) yield boardOf(plan, names, there);
    },
  };
}

interface Coming {
  readonly athlete: Athlete;
  readonly session: BuiltSession;
  readonly firsts: ReadonlySet<string>;
}

/**
 * Whom the board of a session has to know of. The weeks before are looked through for what is new; of a week that an error
 * kept from the sheets nobody has done anything.
 */
function* comingOf(built: BuiltAthlete, selection: Selection): Iterable<Coming> {
  const known = new Set<string>();
  const asked = new Set(selectedWeeks(selection, built));
  let isFirstSession = true;
  for (const week of built.weeks) {
    if (built.blocked.has(week.week)) continue;
    const wanted = new Set(asked.has(week) ? selectedSessions(selection, week) : []);
    for (const session of week.sessions) {
      const exercises = session.lines.map(({ exercise }) => exercise);
      const firsts = isFirstSession ? [] : exercises.filter((exercise) => !known.has(exercise));
      if (wanted.has(session)) yield { athlete: built.athlete, session, firsts: new Set(firsts) };
      for (const exercise of exercises) known.add(exercise);
      isFirstSession = false;
    }
  }
}

function inOrderOfTime([one]: readonly Coming[], [other]: readonly Coming[]): number {
  if (one === undefined || other === undefined) return 0;
  const [a, b] = [one.session, other.session];
  return a.day - b.day || (a.slot.at ?? 0) - (b.slot.at ?? 0) || a.slot.span.start - b.slot.span.start;
}

function boardOf(plan: Plan, names: ReturnType<typeof createSheetNames>, there: readonly Coming[]): Board {
  const [first] = there;
  if (first === undefined) throw new Error('a session without athletes');
  const { day, slot } = first.session;
  const { groups, attendances } = inGroups(plan, names, there, day);
  const { rows, own, apart } = boardRows(plan, attendances, groups.length);
  const next = nextEvents(plan, attendances, day);
  return {
    date: isoDate(day),
    day: longDayWords(day),
    ...timeOf(slot),
    place: slot.place.id,
    slotMinutes: slot.minutes,
    minutes: there.reduce((most, { session }) => Math.max(most, session.minutes), 0),
    due: there.length,
    ...(next !== undefined && { next }),
    groups: groups.map((group, index) => ({
      ...group,
      together: attendances.filter((one) => one.group === index && !apart.has(one)).map(({ name }) => name),
    })),
    rows,
    own,
    stations: stationsOf(plan, attendances),
    watch: watchList(plan, attendances, day),
    kit: kitToSetOut(plan, attendances, slot.place),
    short: shortOnTime(attendances),
    cues: cuesOf(plan, attendances),
  };
}

function timeOf({ at, minutes }: Slot): { readonly time?: string } {
  if (at === undefined) return {};
  const end = at + minutes;
  return { time: `${timeWords(at)}–${timeWords(end % MINUTES_A_DAY)}` };
}

interface Grouped {
  readonly groups: readonly Omit<BoardGroup, 'together'>[];
  readonly attendances: readonly Attendance[];
}

/** Groups in the order of their patterns, then squads by name, then the rest; people in the order of the plan. */
function inGroups(plan: Plan, names: ReturnType<typeof createSheetNames>, there: readonly Coming[], day: Day): Grouped {
  const marks = createGroupMarks(plan);
  const keyed = there.map((coming) => ({ coming, mark: marks.of(coming.athlete) }));
  const ordered = new Map<string, GroupMark | undefined>();
  for (const { mark } of keyed.toSorted((a, b) => (orderOf(a.mark) < orderOf(b.mark) ? -1 : 1))) {
    ordered.set(orderOf(mark), mark);
  }
  const positions = new Map([...ordered.keys()].map((key, index) => [key, index]));
  const attendances = keyed.map(({ coming, mark }) =>
    attendanceOf(plan, coming, names.short(coming.athlete, day), positions.get(orderOf(mark)) ?? 0),
  );
  const groups = [...ordered.values()].map((mark, index) => ({
    ...(mark !== undefined && { mark }),
    people: attendances.filter(({ group }) => group === index).map(({ name }) => name),
  }));
  return { groups, attendances };
}

const orderOf = (mark: GroupMark | undefined): string =>
  mark === undefined ? '3' : mark.pattern === undefined ? `2 ${mark.name}` : `1 ${mark.name}`;

function attendanceOf(plan: Plan, { athlete, session, firsts }: Coming, name: string, group: number): Attendance {
  const { place } = session.slot;
  return {
    athlete,
    name,
    group,
    session,
    lines: session.lines.map((line) => sheetLine({ plan, athlete, place, lines: session.lines }, line)),
    times: lineTimes(plan.library, session),
    firsts,
  };
}

/** The next match and the next tests within some days, the earlier first. What is tested stands on the cards. */
function nextEvents(plan: Plan, attendances: readonly Attendance[], day: Day): string | undefined {
  const last = day + SHEETS.boardDaysAhead;
  const someone = (who: Parameters<typeof appliesTo>[0]): boolean =>
    attendances.some(({ athlete }) => appliesTo(who, athlete));
  const match = plan.competitions.find(({ range, who }) => range.until >= day && range.from <= last && someone(who));
  const tests = plan.tests.find((test) => test.day >= day && test.day <= last && someone(test.who));
  const events = [
    ...(match === undefined ? [] : [{ day: Math.max(day, match.range.from), words: match.name }]),
    ...(tests === undefined ? [] : [{ day: tests.day, words: 'tests' }]),
  ];
  if (events.length === 0) return undefined;
  return events
    .toSorted((a, b) => a.day - b.day)
    .map((event) => `${dayWords(event.day)}: ${event.words}`)
    .join('; ');
}
