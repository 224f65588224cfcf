// What of a build the record says nothing about yet, sessions, practice, matches and tests: what a coach has to confirm.
// Called by the command `done`, week by week, as each week's sheet was made on its first day.

import type { BuiltAthlete } from '../build/types.ts';
import { doneBy } from '../plan/done-by.ts';
import type { Athlete, DoneRow, SeasonRecord } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { dayWords, timeWords } from './calendar-words.ts';
import { columns } from './table.ts';
import type { Row, Table } from './table.ts';

export interface DueSession {
  readonly kind: DoneRow['kind'];
  readonly athlete: Athlete;
  readonly day: Day;
  /** As planned. */
  readonly contacts: number;
  /** Unknown of what the sport itself does. */
  readonly minutes?: number;
  /** `18:00, hall`, `practice`, `match: League round 2`. */
  readonly where: string;
}

/** All that is planned for an athlete on some days, both included. */
export function plannedFor(built: BuiltAthlete, from: Day, until: Day): readonly DueSession[] {
  const isMeant = ({ day }: DueSession): boolean => from <= day && day <= until;
  return [...plannedSessions(built), ...otherJumping(built)].filter(isMeant);
}

/** Sessions, but none of a week that an error kept from the sheets. */
function plannedSessions(built: BuiltAthlete): readonly DueSession[] {
  return built.weeks
    .filter(({ week }) => !built.blocked.has(week))
    .flatMap(({ sessions }) => sessions)
    .map(({ day, contacts, minutes, slot: { at, place } }) => ({
      kind: 'session' as const,
      athlete: built.athlete,
      day,
      contacts,
      minutes,
      where: at === undefined ? place.id : `${timeWords(at)}, ${place.id}`,
    }));
}

/** Practice that jumps, matches and tests, each once a day. */
function otherJumping({ athlete, days }: BuiltAthlete): readonly DueSession[] {
  return days.flatMap(({ day, practiceJumps, matchJumps, testContacts, competition, test }): readonly DueSession[] => {
    const one = { athlete, day };
    return [
      ...(practiceJumps === 0
        ? []
        : [{ ...one, kind: 'practice' as const, contacts: practiceJumps, where: 'practice' }]),
      ...(competition === undefined
        ? []
        : [
            {
              ...one,
              kind: 'match' as const,
              contacts: matchJumps,
              where: `match: ${competition.name}`,
            },
          ]),
      ...(test === undefined
        ? []
        : [{ ...one, kind: 'test' as const, contacts: testContacts, where: `test: ${test.what.join(', ')}` }]),
    ];
  });
}

/** Whether the record has the athlete's training, or what else is asked for, on the day. */
export function isRecorded(record: SeasonRecord, athlete: string, day: Day, kind: DoneRow['kind']): boolean {
  return doneBy(record, athlete).some((row) => row.kind === kind && row.day === day);
}

const KINDS: readonly DueSession['kind'][] = ['session', 'practice', 'match', 'test'];

/** In order of day, sessions first, place and time, athlete. */
export function inOrderOfDay(due: readonly DueSession[]): readonly DueSession[] {
  const keyOf = ({ day, kind, where, athlete }: DueSession): string =>
    `${isoDate(day)} ${KINDS.indexOf(kind)} ${where} ${athlete.id}`;
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

const rowOf = ({ kind, day, athlete, contacts, minutes }: DueSession): Row => [
  isoDate(day),
  athlete.id,
  kind,
  contacts,
  minutes,
  undefined,
  undefined,
  undefined,
];

/** The sheet: one thing after the other who was due, and what to say when it went as written. `due` is in order of day. */
export function dueWords(
  due: readonly DueSession[],
  command: (day: Day, kind: DueSession['kind']) => string,
): readonly string[] {
  return groupsOf(due, ({ day }) => day).flatMap((day, index) => [
    ...(index === 0 ? [] : ['']),
    ...groupsOf(day, ({ kind }) => kind).flatMap((alike) => [
      ...groupsOf(alike, ({ where }) => where).flatMap(sessionWords),
      ...alike.slice(0, 1).map(({ day: date, kind }) => `  as written: ${command(date, kind)}`),
    ]),
  ]);
}

function sessionWords(due: readonly DueSession[]): readonly string[] {
  const heading = due
    .slice(0, 1)
    .map(({ day, where }) => `${dayWords(day)}, ${where}: ${due.length} ${due.length === 1 ? 'athlete' : 'athletes'}`);
  return [...heading, ...due.map((one) => `  ${one.athlete.name} (${one.athlete.id})  ${amountWords(one)}`)];
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

function amountWords({ kind, contacts }: DueSession): string {
  if (contacts > 0) return kind === 'session' ? `${contacts} contacts` : `${contacts} jumps`;
  return kind === 'session' ? 'lifts only' : 'no jumps counted';
}
