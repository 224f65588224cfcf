// The week that is under way when a season is planned: what was done of it over its sheets is taken from what is left. The
// first week has jumps on Tuesday and Thursday and 120 contacts; severe is over 156.

import { describe, expect, it, test } from 'vitest';
import { auditAthlete } from '../../../src/audit/audit.ts';
import type { BuiltAthlete, BuiltWeek } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import type { DoneRow, Pin, Plan } from '../../../src/plan/types.ts';
import { isoDate } from '../../../src/util/days.ts';
import { day } from '../date.ts';
import { planOf } from '../plan/loaded.ts';
import { athlete, EVERYBODY, HERE, plan, slot } from './make-plan.ts';

const CODE = 'schedule/week-over-plan';

const on = (date: string, contacts?: number, change: Partial<DoneRow> = {}): DoneRow => ({
  day: day(date),
  athlete: 'ada',
  kind: 'session',
  ...(contacts !== undefined && { contacts }),
  span: HERE,
  ...change,
});

const PINNED: Pin = {
  effects: [{ kind: 'contacts', contactsAWeek: 120 }],
  range: { from: day('2027-01-04'), until: day('2027-01-10') },
  who: EVERYBODY,
  because: 'even numbers',
  span: HERE,
};

/** Jumps on Tuesday and Thursday, as Saturday takes lifts alone. */
function season(done: readonly DoneRow[], change: Partial<Plan> = {}): Plan {
  return plan(
    { starts: '2027-01-04', ends: '2027-04-25' },
    {
      slots: [slot(1), slot(3), slot(5, { use: 'lifts' })],
      athletes: [athlete('intermediate', 60)],
      pins: [PINNED],
      record: { done, tests: [] },
      ...change,
    },
  );
}

interface Found {
  readonly plan: Plan;
  readonly built: BuiltAthlete;
  readonly weeks: BuiltAthlete['weeks'];
  readonly week: BuiltWeek;
  readonly told: readonly Diagnostic[];
}

/** As planned on a day; the first week is told. */
function found(planned: Plan, asOf = '2027-01-07'): Found {
  const build = compilePlan(planned, { asOf: day(asOf) });
  const [built] = [...build.athletes];
  const [week] = built?.weeks ?? [];
  if (built === undefined || week === undefined) throw new Error('nobody was built');
  return {
    plan: build.plan,
    built,
    weeks: built.weeks,
    week,
    told: built.diagnostics.filter(({ code }) => code === CODE),
  };
}

const jumpsOf = ({ sessions }: BuiltWeek): readonly (readonly [string, number])[] =>
  sessions.filter(({ contacts }) => contacts > 0).map((one) => [isoDate(one.day), one.contacts]);

const TUESDAY = ['2027-01-05', 60] as const;

describe('a week under way of which more was done than written', () => {
  test.each([
    { done: 60, left: 60 },
    { done: 64, left: 60 },
    { done: 65, left: 55 },
    { done: 90, left: 30 },
    // Less than is worth a session.
    { done: 95, left: 0 },
    { done: 400, left: 0 },
  ])('has $left contacts left after $done of 60', ({ done, left }) => {
    const { week, told } = found(season([on('2027-01-05', done)]));
    expect(jumpsOf(week)).toEqual(left === 0 ? [TUESDAY] : [TUESDAY, ['2027-01-07', left]]);
    expect(week.contacts).toBe(60 + left);
    expect(week.boundBy === 'record').toBe(left < 60);
    expect(told).toHaveLength(left < 60 ? 1 : 0);
    if (left < 60) expect(told[0]?.params).toMatchObject({ done, written: 60, planned: 120, before: 60, left });
  });

  it('keeps its lifting, the sheets of its days so far, and what the weeks behind it are planned from', () => {
    const [usual, held] = [found(season([on('2027-01-05', 60)])), found(season([on('2027-01-05', 400)]))];
    const liftsOf = ({ week }: Found): readonly (readonly [string, boolean])[] =>
      week.sessions.map((one) => [isoDate(one.day), one.lifts]);
    expect(liftsOf(held)).toEqual(liftsOf(usual));
    expect(held.week.sessions[0]).toEqual(usual.week.sessions[0]);
    expect(held.week.adapted).toBe(usual.week.adapted);
    expect(held.weeks.slice(1).map(({ contacts }) => contacts)).toEqual(
      usual.weeks.slice(1).map(({ contacts }) => contacts),
    );
  });

  it('is told as a notice, and as a warning where it is a leap already that nobody has waived', () => {
    const range = { from: day('2027-01-04'), until: day('2027-01-10') };
    const waivers = [{ rule: 'weekly-rise' as const, range, who: EVERYBODY, because: 'camp', span: HERE }];
    const severityOf = (contacts: number, change: Partial<Plan> = {}): string | undefined =>
      found(season([on('2027-01-05', contacts)], change)).told[0]?.severity;
    expect(severityOf(156)).toBe('notice');
    expect(severityOf(157)).toBe('warning');
    expect(severityOf(157, { waivers })).toBe('notice');
  });

  it.each([
    { done: 25, left: 15 },
    { done: 30, left: 0 },
  ])('has of small sessions $left contacts left after $done of 20, as nobody comes for ten', ({ done, left }) => {
    const pins: readonly Pin[] = [{ ...PINNED, effects: [{ kind: 'contacts', contactsAWeek: 40 }] }];
    const { week } = found(season([on('2027-01-05', done)], { pins, athletes: [athlete('beginner', 20)] }));
    expect(jumpsOf(week).map(([, contacts]) => contacts)).toEqual(left === 0 ? [20] : [20, left]);
  });

  it('is told where nothing is left to cut as well', () => {
    const { week, told } = found(season([on('2027-01-05', 60), on('2027-01-07', 80)]), '2027-01-08');
    expect(week).toMatchObject({ contacts: 120, boundBy: 'pin' });
    expect(told[0]?.message).toMatch(/140 contacts .* where 120 are planned: no jumps are left in the week$/u);
  });

  it('gives the last days what is left where there are several, and no session more than it had', () => {
    const pins: readonly Pin[] = [{ ...PINNED, effects: [{ kind: 'phase', phase: 'power' }] }];
    const athletes = [athlete('advanced', 100)];
    const planned = (done: number): Found =>
      found(season([on('2027-01-04', done)], { slots: [slot(0), slot(2), slot(4)], athletes, pins }), '2027-01-05');
    const before = jumpsOf(planned(0).week);
    expect(before.map(([date]) => date)).toEqual(['2027-01-04', '2027-01-06', '2027-01-08']);
    const total = before.reduce((sum, [, contacts]) => sum + contacts, 0);
    const first = before[0]?.[1] ?? 0;
    const after = jumpsOf(planned(total - 40).week).slice(1);
    expect(after).toEqual([['2027-01-08', 40]]);
    const both = jumpsOf(planned(first + 20).week).slice(1);
    expect(both.map(([date]) => date)).toEqual(['2027-01-06', '2027-01-08']);
    both.forEach(([, contacts], at) => expect(contacts).toBeLessThanOrEqual(before[at + 1]?.[1] ?? 0));
  });

  it('counts a row as written as its sheet, and on a day without one as a session of the week', () => {
    expect(found(season([on('2027-01-05')])).told).toEqual([]);
    const moved = [on('2027-01-06')];
    expect(found(season(moved)).told).toEqual([]);
    const besides = found(season([on('2027-01-05'), on('2027-01-06')]));
    expect(besides.told[0]?.params).toMatchObject({ done: 120, written: 60, left: 0 });
    expect(jumpsOf(besides.week)).toEqual([TUESDAY]);
  });

  it('takes of two rows for one slot the larger, and counts the smaller once the week is over', () => {
    const written = (rows: string): Plan =>
      planOf({
        'season.yaml': `footfall: 1
season: { title: Spring, starts: 2027-01-04, ends: 2027-04-25 }
places: { hall: {} }
slots: [{ day: tuesday, minutes: 75, place: hall }, { day: thursday, minutes: 75, place: hall }]
athletes: { ada: { level: intermediate, now: { contacts-a-session: 60, sessions-a-week: 2 } } }
pins: [{ week: 2027-01-04, contacts-a-week: 120, because: even numbers }]
record: { done: done.csv }
`,
        'done.csv': `date,athlete,kind,contacts,minutes,effort,pain,note\n${rows}`,
      });
    const twice = written('2027-01-05,ada,session,60,,,,\n2027-01-05,ada,session,85,,,,\n');
    const { week, built, told } = found(twice);
    expect(jumpsOf(week)).toEqual([TUESDAY, ['2027-01-07', 35]]);
    expect(told[0]?.params).toMatchObject({ done: 85, here: 85, left: 35 });
    const [row] = twice.record.done;
    expect(row).toMatchObject({ contacts: 60, mayBe: { contacts: 85 } });
    expect(told[0]?.span).toEqual(row?.mayBe?.span);
    expect(told[0]?.span).not.toEqual(row?.span);
    expect(built.diagnostics.map(({ code }) => code)).not.toContain('audit/adapted-volume');
    const over = (plan: Plan): unknown => found(plan, '2027-01-11').weeks.map(({ contacts }) => contacts);
    expect(over(twice)).toEqual(over(written('2027-01-05,ada,session,60,,,,\n')));
  });

  it('leaves what is written by hand, and tells it', () => {
    const jumps = '[{ drill: pogo, sets: 6, reps: 10 }]';
    const byHand = planOf({
      'season.yaml': `footfall: 1
season: { title: Spring, starts: 2027-01-04, ends: 2027-04-25 }
places: { hall: {} }
slots: [{ day: tuesday, minutes: 75, place: hall }, { day: thursday, minutes: 75, place: hall }]
athletes: { ada: { level: intermediate, now: { contacts-a-session: 60, sessions-a-week: 2 } } }
programmes: { block: [{ week: 1, tuesday: ${jumps}, thursday: ${jumps} }] }
use: [{ programme: block, from: 2027-01-04 }]
record: { done: done.csv }
`,
      'done.csv': 'date,athlete,kind,contacts,minutes,effort,pain,note\n2027-01-05,ada,session,400,,,,\n',
    });
    const { week, told } = found(byHand);
    expect(jumpsOf(week)).toEqual([TUESDAY, ['2027-01-07', 60]]);
    expect(told[0]?.message).toContain('the 60 that are left are written by hand, and stay');
    expect(told[0]?.help).toContain('write less for the days that are left');
  });
});

describe('a week under way is not held', () => {
  test.each<{ name: string; done: readonly DoneRow[]; asOf?: string }>([
    { name: 'by less than was written, which is not made up for', done: [on('2027-01-05', 20)] },
    { name: 'by a session that was done instead of another', done: [on('2027-01-06', 60)] },
    { name: 'on its first day', done: [on('2027-01-04', 400)], asOf: '2027-01-04' },
    { name: 'by what is of another week', done: [on('2027-01-03', 400)] },
    { name: 'by what is to come', done: [on('2027-01-08', 400)] },
  ])('$name', ({ done, asOf }) => {
    const { week, told } = found(season(done), asOf);
    expect(jumpsOf(week)).toEqual([TUESDAY, ['2027-01-07', 60]]);
    expect(told).toEqual([]);
  });

  it('nor told where pain stops it', () => {
    const { week, told } = found(season([on('2027-01-05', 60, { pain: 8 })]));
    expect(week).toMatchObject({ contacts: 60, boundBy: 'pain-hold' });
    expect(jumpsOf(week)).toEqual([TUESDAY]);
    expect(told).toEqual([]);
  });
});

describe('a week under way that its own record plans otherwise', () => {
  const MONDAY = '2027-01-04';
  const practice: Plan['practice'] = [{ day: 0, jumps: 60, range: PINNED.range, who: EVERYBODY, span: HERE }];
  const budget = (jumps: number): Partial<Plan> => ({
    pins: [],
    practice,
    ruleChanges: [
      {
        rule: 'budget',
        parameters: new Map([['jumps-a-week', jumps]]),
        range: PINNED.range,
        who: EVERYBODY,
        because: 'so',
        span: HERE,
      },
    ],
  });
  const before = (week: BuiltWeek): BuiltWeek['sessions'] =>
    week.sessions.filter(({ day: at }) => at < day('2027-01-07'));
  const codes = ({ built }: Found): readonly string[] =>
    built.diagnostics.flatMap(({ code, severity }) => (severity === 'error' || code === 'rule/budget' ? [code] : []));

  it.each([
    { name: 'practice leaves less of a budget', row: on(MONDAY, 90, { kind: 'practice' }), cut: 30, by: 'budget' },
    { name: 'practice leaves next to nothing', row: on(MONDAY, 115, { kind: 'practice' }), cut: 60, by: 'budget' },
    { name: 'practice uses a budget up', row: on(MONDAY, 300, { kind: 'practice' }), cut: 60, by: 'budget' },
    { name: 'pain stops the jumps', row: on('2027-01-05', 60, { pain: 8 }), cut: 60, by: 'pain-hold' },
  ])('keeps its days so far, lines and all, and cuts $cut of what is left where $name', ({ row, cut, by }) => {
    const change = budget(180);
    const sheets = found(season([], change), MONDAY);
    expect(jumpsOf(sheets.week)).toEqual([TUESDAY, ['2027-01-07', 60]]);
    const now = found(season([row], change));
    const left = 60 - cut;
    expect(jumpsOf(now.week)).toEqual(left === 0 ? [TUESDAY] : [TUESDAY, ['2027-01-07', left]]);
    expect(before(now.week)).toEqual(before(sheets.week));
    expect(now.week).toMatchObject({ contacts: 60 + left, boundBy: by, underWay: { planned: 120, wereLeft: 60 } });
    expect(now.week.sessions.map((one) => [one.day, one.lifts])).toEqual(
      sheets.week.sessions.map((one) => [one.day, one.lifts]),
    );
    expect(codes(now)).toEqual(row.contacts === undefined || row.contacts <= 120 ? [] : ['rule/budget']);
  });

  it('takes off what was done over as well', () => {
    const rows = [on(MONDAY, 75, { kind: 'practice' }), on('2027-01-05', 75)];
    const { week, told } = found(season(rows, budget(180)));
    expect(jumpsOf(week)).toEqual([TUESDAY, ['2027-01-07', 30]]);
    expect(week).toMatchObject({ boundBy: 'record' });
    expect(told[0]?.params).toMatchObject({ done: 75, written: 60, before: 60, left: 30 });
  });

  it('is no week to keep from being written where no jumps are left, also of somebody with a limit', () => {
    const limits = [{ range: PINNED.range, avoid: [], because: 'knee', span: HERE }];
    const athletes = [{ ...athlete('intermediate', 60), limits }];
    const now = found(season([on(MONDAY, 300, { kind: 'practice' })], { ...budget(180), athletes }));
    expect(now.built.diagnostics.find(({ code }) => code === 'rule/budget')?.severity).toBe('warning');
    expect(now.built.blocked.size).toBe(0);
  });

  it.each([4, 8])('has the days behind a morning of %i as they were then, later in the week as well', (pain) => {
    const hurt = season([on('2027-01-05', 60, { pain })]);
    const [thursday, saturday] = [found(hurt), found(hurt, '2027-01-09')];
    expect(saturday.week.sessions).toEqual(thursday.week.sessions);
    expect(saturday.week.contacts).toBe(pain === 8 ? 60 : 120);
    expect(codes(saturday)).toEqual([]);
    expect(saturday.built.blocked.size).toBe(0);
  });

  it('takes what was done over behind such a morning from the days to come alone', () => {
    const change = { pins: [], slots: [slot(1), slot(3), slot(5)], athletes: [athlete('advanced', 60)] };
    const phase: Pin = { ...PINNED, effects: [{ kind: 'phase', phase: 'power' }] };
    const rows = (thursday: number): readonly DoneRow[] => [
      on('2027-01-05', undefined, { pain: 4 }),
      on('2027-01-07', thursday),
    ];
    const week = (thursday: number): BuiltWeek =>
      found(season(rows(thursday), { ...change, pins: [phase] }), '2027-01-09').week;
    const [, second = ['', 0], third = ['', 0]] = jumpsOf(week(0));
    expect(third[1]).toBeGreaterThan(30);
    expect(jumpsOf(week(second[1] + 10))).toEqual([jumpsOf(week(0))[0], second, [third[0], third[1] - 10]]);
  });

  it('rises no more behind a morning that holds, later in the week as well', () => {
    const hurt = season([on('2027-01-05', undefined, { pain: 4 })], { pins: [] });
    const [thursday, saturday] = [found(hurt), found(hurt, '2027-01-09')];
    expect(saturday.week.sessions).toEqual(thursday.week.sessions);
    expect(saturday.week.contacts).toBe(120);
    expect(codes(saturday)).toEqual([]);
  });

  it('rises no more than a pain that holds allows, its days so far among it', () => {
    const change = { pins: [] };
    const sheets = found(season([], change), MONDAY);
    const now = found(season([on('2027-01-05', undefined, { pain: 4 })], change));
    expect(sheets.week.contacts).toBeGreaterThan(120);
    expect(now.week.contacts).toBe(120);
    expect(before(now.week)).toEqual(before(sheets.week));
  });
});

describe('the audit', () => {
  const planned = season([on('2027-01-05', 110)]);

  it('finds nothing in a week that was held', () => {
    const { built } = found(planned);
    expect(
      built.diagnostics.filter(({ code, week }) => code.startsWith('rule/') && week === day('2027-01-04')),
    ).toEqual([]);
    expect(built.diagnostics.map(({ code }) => code)).not.toContain('audit/adapted-volume');
  });

  it('adds what was done over to what is left', () => {
    const { built, weeks, week, plan: known } = found(season([on('2027-01-05', 80)]));
    expect(jumpsOf(week)).toEqual([TUESDAY, ['2027-01-07', 40]]);
    // The same row with another number: 50 over, and 40 left, where the week was to have 120 and may rise to 132.
    const more = { ...known, record: { done: [on('2027-01-05', 110)], tests: [] } };
    const all = weeks.map(({ week: number, starts }) => ({ week: number, starts }));
    const rises = auditAthlete(more, { ...built, athlete: more.athletes[0] ?? built.athlete, diagnostics: [] }, all);
    const [rise] = rises.diagnostics.filter(({ code }) => code === 'rule/weekly-rise');
    expect(rise).toMatchObject({ week: day('2027-01-04'), params: { found: 150, most: 132 } });
  });

  it('judges an easy week by what its run was planned at', () => {
    const done = ['2027-01-05', '2027-01-07', '2027-01-12', '2027-01-14'].map((date) => on(date, 60));
    const { built } = found(season([...done, on('2027-01-19', 400)]), '2027-01-21');
    const [running, easy] = built.weeks.slice(2);
    expect(running).toMatchObject({ kind: 'load', boundBy: 'record' });
    expect(easy?.kind).toBe('deload');
    expect(easy?.contacts).toBeGreaterThanOrEqual(running?.contacts ?? Infinity);
    expect(built.diagnostics.map(({ code }) => code)).not.toContain('rule/deload-depth');
  });
});

describe('a session to come', () => {
  const near = (done: readonly DoneRow[], change: Partial<Plan> = {}): readonly unknown[] => {
    const { diagnostics } = found(season(done, change)).built;
    return diagnostics.flatMap(({ code, params }) => (code === 'schedule/near-done' ? [params['days']] : []));
  };

  it('is told where it stands too near to one done on a day without a sheet', () => {
    expect(near([on('2027-01-06', 60)])).toEqual([1]);
  });

  it.each([
    { name: 'the sheet was done on its day', done: [on('2027-01-05', 60)] },
    { name: 'nothing was done', done: [on('2027-01-06', 0)] },
    { name: 'there is nothing left of it', done: [on('2027-01-05', 400), on('2027-01-06', 60)] },
  ])('isn’t where $name', ({ done }) => {
    expect(near(done)).toEqual([]);
  });

  it('isn’t where the rule is waived', () => {
    const range = PINNED.range;
    const waivers: Plan['waivers'] = [
      { rule: 'session-spacing', range, who: EVERYBODY, because: 'a short week', span: HERE },
    ];
    expect(near([on('2027-01-06', 60)], { waivers })).toEqual([]);
  });
});
