// The sessions of a build that the record says nothing about yet: what a coach has to confirm. Called by the command
// `done`, week by week, as each week's sheet was made on its first day.

import type { BuiltAthlete } from '../build/types.ts';
import { doneBy } from '../plan/done-by.ts';
import type { Athlete, Record } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { dayWords, timeWords } from './calendar-words.ts';
import { columns } from './table.ts';
import type { Row, Table } from './table.ts';

export interface DueSession {
  readonly athlete: Athlete;
  readonly day: Day;
  /** As planned. */
  readonly contacts: number;
  readonly minutes: number;
  /** `18:00, hall`. */
  readonly where: string;
}

/** The planned sessions of an athlete on some days, both included; none of a week that an error kept from the sheets. */
export function plannedSessions(built: BuiltAthlete, from: Day, until: Day): readonly DueSession[] {
  return built.weeks
    .filter(({ week }) => !built.blocked.has(week))
    .flatMap(({ sessions }) => sessions)
    .filter(({ day }) => from <= day && day <= until)
    .map(({ day, contacts, minutes, slot: { at, place } }) => ({
      athlete: built.athlete,
      day,
      contacts,
      minutes,
      where: at === undefined ? place.id : `${timeWords(at)}, ${place.id}`,
    }));
}

/** Whether the record has a session of the athlete on the day. */
export function isRecorded(record: Record, athlete: string, day: Day): boolean {
  return doneBy(record, athlete).some((row) => row.kind === 'session' && row.day === day);
}

/** In order of day, place and time, athlete. */
export function inOrderOfDay(due: readonly DueSession[]): readonly DueSession[] {
  const keyOf = ({ day, where, athlete }: DueSession): string => `${isoDate(day)} ${where} ${athlete.id}`;
  return due
    .map((one) => ({ one, key: keyOf(one) }))
    .toSorted((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ one }) => one);
}

/** Rows as the record wants them, for a spreadsheet: to be filled in and put below the others. */
export function dueTable(due: readonly DueSession[]): Table {
  return {
    name: 'due',
    columns: [
      ...columns('date', 'date'),
      ...columns('text', 'athlete'),
      ...columns('word', 'kind'),
      ...columns('integer', 'contacts', 'minutes', 'effort', 'pain'),
      ...columns('text', 'note'),
    ],
    rows: due.map(rowOf),
  };
}

const rowOf = ({ day, athlete, contacts, minutes }: DueSession): Row => [
  isoDate(day),
  athlete.id,
  'session',
  contacts,
  minutes,
  undefined,
  undefined,
  undefined,
];

/** The sheet: session by session who was due, and what to say when it went as written. `due` is in order of day. */
export function dueWords(due: readonly DueSession[], command: (day: Day) => string): readonly string[] {
  return groupsOf(due, ({ day }) => day).flatMap((day, index) => [
    ...(index === 0 ? [] : ['']),
    ...groupsOf(day, ({ where }) => where).flatMap(sessionWords),
    ...day.slice(0, 1).map((first) => `  as written: ${command(first.day)}`),
  ]);
}

function sessionWords(due: readonly DueSession[]): readonly string[] {
  const heading = due
    .slice(0, 1)
    .map(({ day, where }) => `${dayWords(day)}, ${where}: ${due.length} ${due.length === 1 ? 'athlete' : 'athletes'}`);
  return [
    ...heading,
    ...due.map(({ athlete, contacts }) => `  ${athlete.name} (${athlete.id})  ${amountWords(contacts)}`),
  ];
}

/** In the order in which their keys come first. */
function groupsOf<T>(items: readonly T[], keyOf: (item: T) => string | number): readonly (readonly T[])[] {
  const groups = new Map<string | number, T[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return [...groups.values()];
}

const amountWords = (contacts: number): string => (contacts === 0 ? 'lifts only' : `${contacts} contacts`);
