// Calendars as others read them: ical.js and Debian's vobject, which refuses what ical.js lets pass, and the bytes
// themselves, by RFC 5545: CRLF, no line over 75 octets, no clock.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import type { Build } from '../../src/build/types.ts';
import type { Season } from '../../src/plan/types.ts';
import { builtAthlete, athlete, day, line, madeBuild, madePlan, session, week } from '../unit/report/made-build.ts';
import { EVERYBODY, HERE } from '../unit/schedule/make-plan.ts';
import { haveAll } from './programs.ts';
import { exampleBuild, writtenFiles } from './written.ts';

const OSLO = 'Europe/Oslo';

/** One athlete, one session and a meeting of two days; the session's day and the season may be changed. */
function smallBuild(change: { readonly date?: string; readonly season?: Partial<Season> } = {}): Build {
  const planned = madePlan();
  const build = madeBuild(
    [
      builtAthlete([week(1, [session(change.date ?? '2027-01-05', [line('hurdle-hop')])])], {
        athlete: athlete('intermediate', 80, { name: 'Łucja; "the, quick" Święcicka\\', id: 'łucja' }),
      }),
    ],
    {
      ...planned,
      season: {
        ...planned.season,
        title: 'Jumps, lifts; and a very long title that has to be folded somewhere – ÆØÅ',
        ...change.season,
      },
    },
  );
  const meeting = { from: day('2027-01-09'), until: day('2027-01-10') };
  return {
    ...build,
    plan: {
      ...build.plan,
      competitions: [
        { name: 'Two days, by the sea', range: meeting, prepare: 'peak', jumps: 0, who: EVERYBODY, span: HERE },
      ],
    },
  };
}

async function calendarsOf(build: Build, last?: ReadonlyMap<string, string>): Promise<ReadonlyMap<string, string>> {
  const files = await writtenFiles(build, 'a4', last);
  return new Map([...files].filter(([path]) => path.endsWith('.ics')));
}

const eventsOf = (text: string): readonly ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));

describe('a calendar', () => {
  test('has an event for each session and each competition of the handball season', async () => {
    const build = exampleBuild('handball-spring');
    const files = await calendarsOf(build);
    expect(files.size).toBe(1 + build.plan.athletes.length);
    for (const built of build.athletes) {
      const events = eventsOf(files.get(`athletes/${built.athlete.id}.ics`) ?? '');
      const sessions = built.weeks.flatMap((one) => (built.blocked.has(one.week) ? [] : one.sessions));
      const timed = events.filter(({ startDate }) => !startDate.isDate);
      expect(timed.map(({ startDate }) => startDate.toString().slice(0, 16))).toEqual(
        sessions.map(({ day: date, slot: { at = 0 } }) =>
          new Date(date * 86_400_000 + at * 60_000).toISOString().slice(0, 16),
        ),
      );
      expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    }
  });

  test('is CRLF throughout, and no line is over 75 octets', async () => {
    const builds = [smallBuild(), smallBuild({ season: { timeZone: OSLO } }), exampleBuild('handball-spring')];
    for (const build of builds) {
      for (const text of (await calendarsOf(build)).values()) {
        expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
        expect(/[^\r]\n|\r[^\n]/u.test(text)).toBe(false);
        const lengths = text.split('\r\n').map((one) => Buffer.byteLength(one, 'utf8'));
        expect(Math.max(...lengths)).toBeLessThanOrEqual(75);
      }
    }
  });

  test('floats without a time zone, and keeps to the zone the plan names', async () => {
    const floating = (await calendarsOf(smallBuild())).get('calendar.ics') ?? '';
    expect(floating).toMatch(/^DTSTART:20270105T180000\r$/mu);
    expect(floating).not.toMatch(/VTIMEZONE/u);
    const zoned = (await calendarsOf(smallBuild({ season: { timeZone: OSLO } }))).get('calendar.ics') ?? '';
    expect(zoned).toMatch(/^DTSTART;TZID=Europe\/Oslo:20270105T180000\r$/mu);
    const [zone] = new ICAL.Component(ICAL.parse(zoned)).getAllSubcomponents('vtimezone');
    const [first] = eventsOf(zoned).filter(({ startDate }) => !startDate.isDate);
    if (zone === undefined || first === undefined) throw new Error('no zone or no event');
    expect(new ICAL.Timezone(zone).utcOffset(first.startDate)).toBe(3600);
  });

  test('has competitions as whole days, the last day included', async () => {
    const [meeting] = eventsOf((await calendarsOf(smallBuild())).get('calendar.ics') ?? '').filter(
      ({ startDate }) => startDate.isDate,
    );
    expect([meeting?.summary, meeting?.startDate.toString(), meeting?.endDate.toString()]).toEqual([
      'Two days, by the sea',
      '2027-01-09',
      '2027-01-11',
    ]);
  });

  test('gives an event that moves the same identity and a higher number, others the same number', async () => {
    let last = await calendarsOf(smallBuild());
    expect(last.size).toBe(2);
    const first = last;
    const again = await calendarsOf(smallBuild(), last);
    expect([...again]).toEqual([...last]);
    for (const [move, sequence] of [
      ['2027-01-06', 1],
      ['2027-01-07', 2],
    ] as const) {
      const moved = await calendarsOf(smallBuild({ date: move }), last);
      for (const [path, text] of moved) {
        const before = eventsOf(first.get(path) ?? '');
        const after = eventsOf(text);
        expect(after.map(({ uid }) => uid).toSorted()).toEqual(before.map(({ uid }) => uid).toSorted());
        const sequences = after.map(({ startDate, sequence: number }) => ({ isDate: startDate.isDate, number }));
        expect(new Set(sequences)).toEqual(
          new Set([
            { isDate: false, number: sequence },
            { isDate: true, number: 0 },
          ]),
        );
      }
      last = moved;
    }
  });

  test('comes back as it was written, whatever is in the names', async () => {
    const text = (await calendarsOf(smallBuild())).get('calendar.ics') ?? '';
    const calendar = new ICAL.Component(ICAL.parse(text));
    expect(String(calendar.getFirstPropertyValue('x-wr-calname')).replaceAll('\\', '')).toBe(
      'Jumps, lifts; and a very long title that has to be folded somewhere – ÆØÅ',
    );
    expect(text).toMatch(/^DTSTAMP:20270104T000000Z\r$/mu);
  });
});

const READER = `
import sys, vobject
for path in sys.argv[1:]:
    text = open(path, newline='', encoding='utf-8').read()
    calendars = list(vobject.readComponents(text, validate=True, allowQP=False))
    assert len(calendars) == 1
    calendars[0].validate(raiseException=True)
    events = calendars[0].vevent_list
    for event in events:
        event.uid.value, event.dtstamp.value, event.dtstart.value, event.dtend.value, event.summary.value, event.sequence.value
        assert event.dtend.value > event.dtstart.value
    print(len(events))
`;

describe.runIf(haveAll('python3-vobject'))('vobject', () => {
  test('reads every calendar, with as many events as ical.js', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'footfall-ical-'));
    try {
      const sources = [
        smallBuild(),
        smallBuild({ season: { timeZone: OSLO } }),
        exampleBuild('handball-spring'),
        exampleBuild('four-weeks'),
      ];
      const texts = (await Promise.all(sources.map(async (build) => [...(await calendarsOf(build)).values()]))).flat();
      const paths = texts.map((text, index) => {
        const path = join(folder, `${index}.ics`);
        writeFileSync(path, text);
        return path;
      });
      const run = spawnSync('/usr/bin/python3', ['-c', READER, ...paths], { encoding: 'utf8' });
      // It says so when Python's own time zones aren't installed, and reads those of the file.
      const complaints = run.stderr.split('\n').filter((text) => text !== '' && !text.includes('pytz'));
      expect({ status: run.status, complaints }).toEqual({ status: 0, complaints: [] });
      expect(run.stdout.trim().split('\n').map(Number)).toEqual(texts.map((text) => eventsOf(text).length));
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
