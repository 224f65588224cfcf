// Whatever the plan, no output says what another contradicts: sheets, cards, boards, calendars, the four tables and the JSON
// tell the same sessions, days, doses, loads and rests; sums are those of what they sum; a week that an error bars stands
// nowhere; and what is offered instead of a drill is nothing that the athlete may not do.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import type { Build, BuiltAthlete, BuiltLine } from '../../src/build/types.ts';
import { contactsOfRep } from '../../src/library/drill-facts.ts';
import type { Plan, Slot } from '../../src/plan/types.ts';
import { createDocument } from '../../src/report/build-document.ts';
import { createCalendars } from '../../src/report/calendar.ts';
import { createIndexPage } from '../../src/report/index-page.ts';
import { createSeasonChart } from '../../src/report/season-chart.ts';
import { EVERYTHING } from '../../src/report/selection.ts';
import type { Row } from '../../src/report/table.ts';
import type { TableName } from '../../src/report/table-names.ts';
import { TABLES } from '../../src/report/tables.ts';
import { renderCalendar } from '../../src/render/ical/calendar.ts';
import { NO_LAST_EVENTS } from '../../src/render/ical/last-events.ts';
import { sourceFile } from '../../src/source/source-file.ts';
import { isoDate } from '../../src/util/days.ts';
import type { Weekday } from '../../src/util/days.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan, withProgramme, withRecord } from './random-plan.ts';
import { plannedSessions, toldOf } from './told-lines.ts';

const PLANS = plansFor(60);

/** Hours, a second slot on a day, units, a time zone with summer time in the season, any first day of a week, groups. */
const settings = fc.record({
  units: fc.constantFrom('metric' as const, 'imperial' as const),
  timeZone: fc.constantFrom(undefined, 'Europe/Oslo', 'America/New_York'),
  weekStarts: fc.constantFrom<Weekday>(0, 2, 6),
  hours: fc.array(fc.option(fc.integer({ min: 0, max: 1439 })), { minLength: 5, maxLength: 5 }),
  isTwice: fc.boolean(),
  groups: fc.array(fc.constantFrom(undefined, 'blue', 'red'), { minLength: 3, maxLength: 3 }),
});

const plans = fc
  .tuple(fc.oneof(randomPlan, withProgramme(randomPlan), withRecord(withProgramme(randomPlan))), settings)
  .map(([plan, { units, timeZone, weekStarts, hours, isTwice, groups }]): Plan => {
    const slots = plan.slots.map((slot, index): Slot => {
      const at = hours[index];
      return { ...slot, span: spanOf(index), ...(typeof at === 'number' && { at }) };
    });
    const [first] = slots;
    const second =
      first === undefined || !isTwice ? [] : [{ ...first, id: 'second', at: 1200, span: spanOf(slots.length) }];
    return {
      ...plan,
      files: [sourceFile(spanOf(0).file, 'footfall: 1\n')],
      season: { ...plan.season, units, weekStarts, ...(timeZone !== undefined && { timeZone }) },
      slots: [...slots, ...second],
      athletes: plan.athletes.map((athlete, index) => {
        const group = groups[index];
        return group === undefined ? athlete : { ...athlete, group };
      }),
    };
  });

/** Slots are told apart by where they are written. */
const spanOf = (index: number) => ({ file: 'season.yaml', start: index, end: index + 1 });

const rowsOf = (name: TableName, { plan }: Build, athletes: readonly BuiltAthlete[]): readonly Row[] =>
  athletes.flatMap((built) => [...TABLES[name].rowsOf(built, { plan, selection: EVERYTHING })]);

/** A line as the table and the JSON have it. */
const numbersOf = (athlete: string, day: string, line: readonly (string | number | undefined)[]): string =>
  [athlete, day, ...line.map((cell) => cell ?? '')].join(' | ');

const kilosDown = (grams: number): number => Math.floor(grams / 10) / 100;

function expectSameNumbers(build: Build, athletes: readonly BuiltAthlete[]): void {
  const cells = (line: BuiltLine): readonly (string | number | undefined)[] => [
    line.part,
    line.exercise,
    line.sets,
    line.reps,
    line.contacts === 0 ? undefined : line.contacts,
    line.loadGrams === undefined ? undefined : kilosDown(line.loadGrams),
    line.percent,
    line.reserve,
    line.dropCm,
    line.restSeconds,
  ];
  const wanted = plannedSessions(athletes).flatMap(({ built, session }) =>
    session.lines.map((line) => numbersOf(built.athlete.id, isoDate(session.day), cells(line))),
  );
  const table = rowsOf('lines', build, athletes).map(([athlete, day, , ...line]) =>
    numbersOf(String(athlete), String(day), line.slice(0, 10)),
  );
  expect(table.toSorted()).toEqual(wanted.toSorted());
  expect(jsonLines(build, athletes).toSorted()).toEqual(wanted.toSorted());
}

interface JsonAthlete {
  readonly id: string;
  readonly weeks: readonly {
    readonly sessions: readonly { readonly date: string; readonly lines: readonly JsonLine[] }[];
  }[];
}
type JsonLine = Readonly<Record<string, string | number | undefined>>;

function jsonLines(build: Build, athletes: readonly BuiltAthlete[]): readonly string[] {
  const document = createDocument(build, EVERYTHING);
  const read: readonly JsonAthlete[] = JSON.parse(JSON.stringify(athletes.map(document.athlete)));
  return read.flatMap(({ id, weeks }) =>
    weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ date, lines }) =>
        lines.map((line) => {
          const { load_kg: kilos, contacts } = line;
          return numbersOf(id, date, [
            ...['part', 'exercise', 'sets', 'reps'].map((name) => line[name]),
            contacts === 0 ? undefined : contacts,
            kilos === undefined ? undefined : kilosDown(Math.round(1000 * Number(kilos))),
            ...['percent', 'reserve', 'drop_cm', 'rest_s'].map((name) => line[name]),
          ]);
        }),
      ),
    ),
  );
}

const sum = (rows: readonly Row[], column: number): number =>
  rows.reduce((total, row) => total + Number(row[column] ?? 0), 0);

/** Sums of the tables; weeks that are over have contacts and no sessions. */
function expectSums(build: Build, athletes: readonly BuiltAthlete[]): void {
  const [weeks, sessions, lines] = (['weeks', 'sessions', 'lines'] as const).map((name) =>
    rowsOf(name, build, athletes),
  );
  if (weeks === undefined || sessions === undefined || lines === undefined) throw new Error('a table is missing');
  for (const [athlete, days, minutes, contacts, ...shares] of sessions.map((row) => [
    row[0],
    row[1],
    row[6],
    ...row.slice(7),
  ])) {
    const [vertical, horizontal, lateral, , low, moderate, high] = shares.map(Number);
    expect([vertical, horizontal, lateral].reduce((a = 0, b = 0) => a + b)).toBe(contacts);
    expect([low, moderate, high].reduce((a = 0, b = 0) => a + b)).toBe(contacts);
    expect(minutes).toBeGreaterThan(0);
    const ofDay = ([who, day]: Row): boolean => who === athlete && day === days;
    expect(sum(lines.filter(ofDay), 7)).toBe(sum(sessions.filter(ofDay), 7));
  }
  for (const row of weeks) {
    const own = sessions.filter(([athlete, , week]) => athlete === row[0] && week === row[1]);
    const isOver = athletes.some(
      ({ athlete, weeks: all }) => athlete.id === row[0] && all.some((one) => one.week === row[1] && one.done),
    );
    if (!isOver) expect(sum(own, 7)).toBe(row[6]);
    expect(own.filter((one) => Number(one[7]) > 0)).toHaveLength(Number(row[5]));
  }
  for (const row of rowsOf('season', build, athletes)) {
    const own = weeks.filter(([athlete]) => athlete === row[0]);
    expect([row[3], row[4], row[5]]).toEqual([own.length, sum(own, 5), sum(own, 6)]);
  }
}

/** Contacts and plates of a line are those of its own numbers, and no load is more than its share of a tested maximum. */
function expectArithmetic({ plan }: Build, athletes: readonly BuiltAthlete[]): void {
  for (const { session } of plannedSessions(athletes)) {
    for (const line of session.lines) {
      const drill = plan.library.drills.get(line.exercise);
      if (drill !== undefined) expect(line.contacts).toBe(line.sets * line.reps * contactsOfRep(drill));
      if (line.barGrams !== undefined) expect(line.barGrams + 2 * (line.perSideGrams ?? 0)).toBe(line.loadGrams);
    }
  }
}

/** Every number of the wall chart is somebody's whose week is written, and a barred week has none. */
function expectChart(build: Build, athletes: readonly BuiltAthlete[]): void {
  const chart = createSeasonChart(build, EVERYTHING);
  for (const built of athletes) chart.add(built);
  const squads = [...new Set(athletes.map(({ athlete }) => athlete.squad ?? ''))].toSorted();
  chart.finish().panels.forEach((panel, at) => {
    const members = athletes.filter(({ athlete }) => (athlete.squad ?? '') === squads[at]);
    panel.weeks.forEach(({ contacts, most, all, barred }, index) => {
      const written = members
        .filter(({ blocked }) => !blocked.has(index + 1))
        .flatMap(({ weeks }) => weeks[index] ?? []);
      expect(barred).toBe(written.length === 0);
      const numbers = written.map((week) => [week.contacts, week.mostContacts, week.contacts + week.otherJumps]);
      expect(barred ? [[0, 0, 0]] : numbers).toContainEqual([contacts, most, all]);
    });
  });
}

const EVENT_START = /^DTSTART[^:]*:(\d{4})(\d\d)(\d\d)(?:T(\d\d)(\d\d)00)?$/mu;
/** Nights in which an hour is left out. */
const SUMMER_TIME: ReadonlySet<string> = new Set(['2027-03-14', '2027-03-28']);

/** Each event stands in the file once, on its day and at its time on the clock. */
function expectCalendars(build: Build, athletes: readonly BuiltAthlete[]): void {
  const maker = createCalendars(build, EVERYTHING);
  const own = athletes.map((built) => maker.add(built));
  const squad = maker.finish();
  for (const calendar of [...own, squad]) {
    const { events } = calendar;
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    const written = renderCalendar(calendar, NO_LAST_EVENTS).replaceAll('\r', '').split('BEGIN:VEVENT').slice(1);
    expect(written).toHaveLength(events.length);
    written.forEach((text, index) => {
      const [, year, month, day, hour, minute] = EVENT_START.exec(text) ?? [];
      const { time, day: planned } = events[index] ?? { day: 0 };
      const date = isoDate(planned);
      expect(`${year}-${month}-${day}`).toBe(date);
      if (time !== undefined && !SUMMER_TIME.has(date)) expect(60 * Number(hour) + Number(minute)).toBe(time.at);
    });
  }
  const due = squad.events.reduce((total, { summary }) => total + Number(/, (\d+) due$/u.exec(summary)?.[1] ?? 0), 0);
  expect(due).toBe(plannedSessions(athletes).length);
}

function expectIndex(build: Build, athletes: readonly BuiltAthlete[]): void {
  const maker = createIndexPage(build, EVERYTHING);
  for (const built of athletes) maker.add(built);
  const days = maker.finish([]).weeks.flatMap(({ sessions }) => sessions.map(({ date }) => date));
  expect(days.toSorted()).toEqual(
    [...new Set(plannedSessions(athletes).map(({ session }) => isoDate(session.day)))].toSorted(),
  );
}

describe('any plan', { timeout: PATIENCE }, () => {
  it('has outputs that say the same', () => {
    let lines = 0;
    fc.assert(
      fc.property(plans, (plan) => {
        const build = compilePlan(plan);
        const athletes = [...build.athletes];
        for (const { output, wanted, found } of toldOf(build, athletes)) {
          lines += found.length;
          expect(found.toSorted(), output).toEqual(wanted.toSorted());
        }
        expectSameNumbers(build, athletes);
        expectSums(build, athletes);
        expectArithmetic(build, athletes);
        expectChart(build, athletes);
        expectCalendars(build, athletes);
        expectIndex(build, athletes);
      }),
      { numRuns: PLANS },
    );
    tell(`outputs: ${PLANS} plans, ${lines} lines told the same by all of them`);
    expect(lines).toBeGreaterThan(PLANS);
  });
});
