import { compilePlan } from '../../../src/compile.ts';
import { planOf } from '../plan/loaded.ts';
import { describe, expect, it } from 'vitest';
import type { Athlete, Pin, Plan } from '../../../src/plan/types.ts';
import { day } from '../date.ts';
import { ALWAYS, athlete, EVERYBODY, HERE, peak, plan, slot } from './make-plan.ts';
import { stages } from './stages.ts';

const FOUR_MONTHS = { starts: '2027-01-04', ends: '2027-04-25' };

describe('four months to a peak', () => {
  const season = plan(FOUR_MONTHS, { competitions: [peak('2027-04-24')] });

  it('brings a beginner used to 50 contacts a session to 80', () => {
    const { contacts } = stages(season, athlete('beginner', 50));
    expect(contacts.map((week) => week.contacts)).toEqual([
      110, 110, 115, 65, 125, 135, 140, 80, 150, 160, 160, 95, 160, 160, 95, 60,
    ]);
  });

  it('brings an advanced athlete used to 100 contacts a session to 120, three times a week', () => {
    const { contacts } = stages(season, athlete('advanced', 100));
    expect(contacts.map((week) => week.contacts)).toEqual([
      170, 170, 180, 105, 195, 210, 230, 135, 250, 275, 300, 180, 330, 360, 215, 90,
    ]);
  });
});

const season = (change: Partial<Plan> = {}): Plan =>
  plan(FOUR_MONTHS, { competitions: [peak('2027-04-24')], ...change });
const beginner = athlete('beginner', 50);
const numbers = (change: Partial<Plan>, who = beginner): readonly number[] =>
  stages(season(change), who).contacts.map((week) => week.contacts);
const bounds = (change: Partial<Plan>, who = beginner): readonly string[] =>
  stages(season(change), who).contacts.map((week) => week.boundBy);

const away = (from: string, until: string, trained: 'none' | 'some' | 'full' = 'none') => ({
  range: { from: day(from), until: day(until) },
  because: 'ill',
  trained,
  span: HERE,
});

const pin = (week: string, contactsAWeek: number): Pin => ({
  range: { from: day(week), until: day(week) },
  who: EVERYBODY,
  effects: [{ kind: 'contacts', contactsAWeek }],
  because: 'camp',
  span: HERE,
});

describe('what holds a week', () => {
  it('is told by name', () => {
    expect(bounds({})).toEqual([
      'target',
      'target',
      'reach',
      'deload-depth',
      'weekly-rise',
      'target',
      'reach',
      'deload-depth',
      'weekly-rise',
      'target',
      'target',
      'deload-depth',
      'target',
      'target',
      'taper-cut',
      'open-days',
    ]);
  });

  it('is a limit while it lasts', () => {
    const limit = {
      range: { from: day('2027-01-04'), until: day('2027-01-10') },
      avoid: [],
      contactsASession: 30,
      because: 'knee',
      span: HERE,
    };
    const limited = { ...beginner, limits: [limit] };
    expect(numbers({}, limited)[0]).toBe(60);
    expect(bounds({}, limited)[0]).toBe('target');
    const weekly = { ...limit, contactsASession: 30, contactsAWeek: 25 };
    expect(numbers({}, { ...beginner, limits: [weekly] })[0]).toBe(25);
    expect(bounds({}, { ...beginner, limits: [weekly] })[0]).toBe('limit');
  });

  it('is nothing but the closed hall where a limit allows no contacts', () => {
    const limit = {
      range: { from: day('2027-01-04'), until: day('2027-01-10') },
      avoid: [],
      contactsASession: 0,
      because: 'knee',
      span: HERE,
    };
    expect(numbers({}, { ...beginner, limits: [limit] })[0]).toBe(0);
  });

  it('is a budget of all jumps', () => {
    const budget = {
      rule: 'budget' as const,
      parameters: new Map([['jumps-a-week', 150]]),
      range: { from: day('2027-01-04'), until: day('2027-04-25') },
      who: EVERYBODY,
      because: 'knees',
      span: HERE,
    };
    const practice = {
      day: 0 as const,
      jumps: 60,
      range: { from: day('2027-01-04'), until: day('2027-04-25') },
      who: EVERYBODY,
      span: HERE,
    };
    expect(numbers({ ruleChanges: [budget], practice: [practice] }).slice(0, 3)).toEqual([90, 90, 90]);
    expect(bounds({ ruleChanges: [budget], practice: [practice] })[0]).toBe('budget');
  });

  const practiceOf = (jumps: number, from = '2027-02-01') => ({
    practice: [
      { day: 0 as const, jumps, range: { from: day(from), until: day('2027-04-25') }, who: EVERYBODY, span: HERE },
    ],
  });
  /** The fifth week, in which practice begins; A is what four weeks have come to. */
  const fifthOf = (change: Partial<Plan>) => {
    const week = stages(season(change), beginner).contacts[4];
    if (week === undefined) throw new Error('no fifth week');
    return week;
  };
  const inFives = (contacts: number): number => 5 * Math.floor(contacts / 5);

  it('is other jumping that rises at once', () => {
    expect(bounds(practiceOf(20))[4]).toBe('all-jumps-rise');
    const week = fifthOf(practiceOf(20));
    expect(week.contacts).toBe(inFives(week.adaptedBefore));
  });

  it('is what practice leaves of three tenths more than usual, and half of what is usual at the least', () => {
    const usual = fifthOf(practiceOf(80)).adaptedBefore;
    const most = Math.floor(1.3 * usual);
    for (const jumps of [50, 80]) {
      expect(fifthOf(practiceOf(jumps))).toMatchObject({
        adaptedBefore: usual,
        boundBy: 'all-jumps-rise',
        contacts: inFives(most - jumps),
      });
    }
    for (const jumps of [120, 400]) expect(fifthOf(practiceOf(jumps)).contacts).toBe(inFives(usual / 2));
    // The ceiling line knows of it: it promises nothing that the week can't have.
    expect(fifthOf(practiceOf(120)).most).toBeLessThan(fifthOf(practiceOf(20)).most);
  });

  it('is not practice that was there before, nor before four weeks are known', () => {
    expect(fifthOf(practiceOf(120, '2027-01-04')).boundBy).not.toBe('all-jumps-rise');
    const fourth = (from: string) => stages(season(practiceOf(120, from)), beginner).contacts[3];
    const bound = fourth('2027-01-25')?.bounds.filter(({ by }) => by === 'all-jumps-rise');
    expect(bound?.every(({ params }) => params?.['other'] === undefined)).toBe(true);
  });

  it('is no practice where the rise is waived', () => {
    const range = { from: day('2027-02-01'), until: day('2027-02-07') };
    const waivers = [{ rule: 'all-jumps-rise' as const, range, who: EVERYBODY, because: 'camp', span: HERE }];
    const week = fifthOf({ ...practiceOf(120), waivers });
    expect(week.contacts).toBeGreaterThan(week.adaptedBefore);
  });

  it('is the closed hall, though the ceiling of a session is waived', () => {
    const closed = { from: day('2027-02-01'), until: day('2027-02-07') };
    const about = { who: EVERYBODY, because: 'camp', span: HERE };
    const found = numbers({
      closures: [{ ...about, range: closed, trained: 'none' }],
      waivers: [{ ...about, rule: 'session-ceiling', range: { from: closed.from - 28, until: closed.until } }],
    });
    expect(found[4]).toBe(0);
    expect(found.filter((contacts) => contacts > 0)).toHaveLength(15);
  });

  const back = (stage: number, of: number, since: string) => ({
    ...athlete('advanced', 120),
    returning: [{ stage, of, since: day(since), signed: 'physio', span: HERE }],
  });
  const sessions = (who: Athlete): readonly number[] =>
    stages(season(), who).contacts.map((week) => Math.max(0, ...week.sessions));

  // The library's stages are 30, 50, 70 and 90 contacts a session: common practice, no source.
  it.each([
    [2, 4, 50],
    [3, 6, 50],
    [5, 9, 50],
    [8, 9, 70],
    [1, 9, 30],
  ])('is the stage of a return, %i of %i, on the scale of the library', (stage, of, most) => {
    expect(Math.max(...sessions(back(stage, of, '2026-12-01')))).toBe(most);
  });

  it('is the first stage until a later one is signed, and nothing until the first is', () => {
    const third = sessions(back(3, 4, '2027-02-03'));
    expect(Math.max(...third.slice(0, 5))).toBe(30);
    expect(Math.max(...third)).toBeGreaterThan(30);
    const first = sessions(back(1, 4, '2027-02-03'));
    expect(Math.max(...first.slice(0, 5))).toBe(0);
    expect(Math.max(...first.slice(5))).toBeGreaterThan(0);
  });

  it('is the minutes of a short slot', () => {
    const short = numbers({ slots: [slot(1, { minutes: 42, use: 'jumps' }), slot(4, { minutes: 42, use: 'jumps' })] });
    // 42 - 12 = 30 minutes; 4 a minute, then 3.5, 3 and 2.5: 120, 105, 90 and 75 contacts a session.
    expect(short.slice(12, 14)).toEqual([150, 150]);
  });
});

describe('time away', () => {
  it('cuts the adapted volume to half and climbs 50, 70 after two weeks', () => {
    const found = stages(season(), { ...beginner, away: [away('2027-01-25', '2027-02-07')] }).contacts;
    // A stands at 125 when the time away begins: ⌊125/2⌋ = 62, then ⌊1.40 x 62⌋ = 86.
    expect(found[4]?.adapted).toBe(125);
    expect(found.slice(3, 7).map((week) => week.contacts)).toEqual([0, 0, 60, 85]);
    expect(found[5]?.boundBy).toBe('return-ramp');
  });

  it('costs a tenth for a single week, and nothing where training went on in full', () => {
    const one = stages(season(), { ...beginner, away: [away('2027-01-25', '2027-01-31')] }).contacts;
    expect(one[3]).toMatchObject({ contacts: 0, adaptedBefore: 125, adapted: 112 });
    const full = stages(season(), { ...beginner, away: [away('2027-01-25', '2027-01-31', 'full')] }).contacts;
    expect(full[3]?.adapted).toBe(full[3]?.adaptedBefore);
  });
});

describe('pins', () => {
  it('fix a week, and the rest is planned round it', () => {
    const found = numbers({ pins: [pin('2027-01-13', 105)] });
    expect(found[1]).toBe(105);
    expect(bounds({ pins: [pin('2027-01-13', 105)] })[1]).toBe('pin');
  });

  it('make earlier weeks reach where that is what it takes', () => {
    expect(numbers({ pins: [pin('2027-01-18', 125)] }).slice(0, 3)).toEqual([110, 115, 125]);
  });

  it('that ask for too much are an error with the most there could be, and are let go', () => {
    const found = stages(season({ pins: [pin('2027-01-11', 200)] }), beginner);
    expect(found.diagnostics).toMatchObject([
      { code: 'schedule/pin-too-high', params: { wanted: 200, most: 120, rule: 'weekly-rise' }, span: HERE },
    ]);
    expect(found.contacts[1]?.contacts).toBeLessThanOrEqual(120);
  });

  it('stand over a rule that is waived', () => {
    const waiver = {
      rule: 'weekly-rise' as const,
      range: { from: day('2027-01-11'), until: day('2027-01-17') },
      who: EVERYBODY,
      because: 'camp',
      span: HERE,
    };
    const found = stages(season({ pins: [pin('2027-01-11', 140)], waivers: [waiver] }), beginner);
    expect(found.diagnostics).toEqual([]);
    expect(found.contacts[1]?.contacts).toBe(140);
  });
});

describe('a child', () => {
  const child = athlete('beginner', 45, { born: { earliest: day('2014-06-01'), latest: day('2014-06-30') } });
  const ceilings = (who = child, change: Partial<Plan> = {}): readonly number[] =>
    stages(season({ slots: [slot(2)], ...change }), who).contacts.map((week) => week.sessionCeiling);

  it('has sixty a session for four weeks, then a hundred', () => {
    expect(ceilings().slice(0, 6)).toEqual([60, 60, 60, 60, 100, 100]);
  });

  it('has no more in the first weeks than a plan allows later', () => {
    const parameters = new Map([['most', 50]]);
    const change = {
      rule: 'youth-ceiling' as const,
      parameters,
      range: ALWAYS,
      who: EVERYBODY,
      because: 'so',
      span: HERE,
    };
    expect(ceilings(child, { ruleChanges: [change] }).slice(0, 6)).toEqual([50, 50, 50, 50, 50, 50]);
  });

  it('has no first weeks of jumping while away', () => {
    const gone = { ...child, away: [away('2027-01-04', '2027-01-31', 'full')] };
    expect(ceilings(gone).slice(4, 10)).toEqual([60, 60, 60, 60, 100, 100]);
  });
});

describe('the ladder back', () => {
  const gone = { ...beginner, away: [away('2027-01-18', '2027-02-14')] };
  const change = (parameter: string, value: number, from: string, until: string) => ({
    rule: 'return-ramp' as const,
    parameters: new Map([[parameter, value]]),
    range: { from: day(from), until: day(until) },
    who: EVERYBODY,
    because: 'so',
    span: HERE,
  });
  const rungs = (plan: Partial<Plan>): readonly number[] =>
    stages(season(plan), gone)
      .contacts.slice(6, 10)
      .map((week) => week.contacts);

  // Two weeks of loading have brought A to 120: 60; 84, as 80; ⌊1.14 x 80⌋ = 91, as 90; 100.
  it('is half, then a rise to seven, eight and nine tenths of it', () => {
    expect(stages(season(), gone).contacts[5]?.adapted).toBe(120);
    expect(rungs({})).toEqual([60, 80, 90, 100]);
  });

  it('rises from the rung before as that stood in its own week', () => {
    // 30 % in the first week only is 36, and 40 % more than that 50, not 70 % of 120.
    expect(rungs({ ruleChanges: [change('first', 30, '2027-02-15', '2027-02-21')] }).slice(0, 2)).toEqual([35, 50]);
    // 60 % of 115 in the first week only is 69, and ⌊100 x 70 / 60⌋ = 116 % of that 80, not 140 % of it.
    expect(rungs({ ruleChanges: [change('first', 60, '2027-02-15', '2027-02-21')] }).slice(0, 2)).toEqual([65, 80]);
  });

  it('makes up for no rung that the plan made lower', () => {
    const lower = rungs({ ruleChanges: [change('second', 60, '2027-02-15', '2027-03-14')] });
    expect(lower).toEqual([60, 70, 75, 80]);
  });

  it('cuts at its second rung where the first is waived', () => {
    const waiver = {
      rule: 'return-ramp' as const,
      range: { from: day('2027-02-15'), until: day('2027-02-21') },
      who: EVERYBODY,
      because: 'trained by herself',
      decided: 'the physio',
      span: HERE,
    };
    const found = stages(season({ waivers: [waiver] }), gone);
    const [first, second] = found.contacts.slice(6, 8);
    expect(found.kinds.slice(6, 8).map((week) => week.kind)).toEqual(['load', 'return']);
    expect(second?.contacts).toBeLessThanOrEqual(Math.floor(0.7 * (first?.adapted ?? 0)));
    expect(second?.contacts).toBeGreaterThan(0);
  });
});

describe('between peaks and in season', () => {
  it('two peaks a week apart hold at six tenths or less', () => {
    const change = { competitions: [peak('2027-04-17'), peak('2027-04-24')] };
    const found = stages(season(change), athlete('advanced', 100));
    expect(found.kinds.at(-1)?.kind).toBe('hold');
    const last = found.contacts.at(-1);
    expect(last?.contacts).toBeGreaterThan(0);
    expect(last?.contacts).toBeLessThanOrEqual(Math.floor(0.6 * (last?.adaptedBefore ?? 0)));
    expect(last?.boundBy).toMatch(/hold|open-days/);
  });

  it('a peak with no usable day before it gets a primer', () => {
    const found = stages(season({ competitions: [peak('2027-04-20')], slots: [slot(0), slot(3)] }), beginner);
    expect(found.contacts[15]).toMatchObject({ contacts: 20, primer: true, sessions: [20], boundBy: 'open-days' });
  });

  it('the limit on the day of a primer holds it, though it begins within the week', () => {
    const limit = {
      range: { from: day('2027-04-19'), until: day('2027-04-25') },
      avoid: [],
      contactsASession: 12,
      because: 'knee',
      span: HERE,
    };
    // Tuesday's primer is the only jumping of a week that begins on a sunday.
    const change = { competitions: [peak('2027-04-20')], slots: [slot(0), slot(3)] };
    const base = season(change);
    const fromSunday = { ...base, season: { ...base.season, weekStarts: 6 as const } };
    const found = stages(fromSunday, { ...beginner, limits: [limit] });
    expect(found.contacts.find((week) => week.primer)).toMatchObject({ contacts: 10, boundBy: 'limit' });
  });

  it('ceilings fall in season', () => {
    const range = { from: day('2027-02-15'), until: day('2027-04-25'), span: HERE };
    const base = season({ competitions: [peak('2027-04-24')] });
    const inSeason = { ...base, season: { ...base.season, inSeason: [range] } };
    const found = stages(
      inSeason,
      athlete('intermediate', 100, { goal: { value: 120, origin: { kind: 'written', span: HERE } } }),
    );
    expect(found.contacts.slice(6, 14).every((week) => week.sessionCeiling === 80)).toBe(true);
    expect(found.contacts[7]?.contacts).toBe(60);
  });
});

it('a waived easy week leaves the weeks behind it on the A that it really leaves', () => {
  const written = planOf(
    [
      'footfall: 1',
      'season: { title: Test, sport: general, starts: 2027-01-04, ends: 2027-06-13 }',
      'places: { hall: {} }',
      'slots: [{ day: monday, minutes: 20, use: jumps, place: hall }]',
      'athletes:',
      '  ada:',
      '    level: beginner',
      '    now: { contacts-a-session: 40, sessions-a-week: 2 }',
      '    limits: [{ from: 2027-01-23, until: 2027-02-08, contacts-a-week: 1, because: knee }]',
      'waivers: [{ rule: deload-depth, from: 2027-01-13, until: 2027-02-22, because: so, decided: the coach }]',
      '',
    ].join('\n'),
  );
  const [built] = [...compilePlan(written).athletes];
  expect(built?.weeks[7]).toMatchObject({ kind: 'deload', contacts: 20, adapted: 20 });
  expect(built?.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
});

describe('the sessions of the week of a peak', () => {
  const FIRST = '2027-04-12';
  const lastTwo = (change: Partial<Plan>, who: Athlete): readonly (readonly number[])[] =>
    stages(season(change), who)
      .contacts.slice(-2)
      .map((week) => week.sessions);
  const changed = (over: number): Pick<Plan, 'ruleChanges'> => ({
    ruleChanges: [
      {
        rule: 'taper-cut',
        parameters: new Map([['session-over', over]]),
        range: ALWAYS,
        who: EVERYBODY,
        because: 'camp',
        span: HERE,
      },
    ],
  });

  it('stay as the shares make them', () => {
    expect(lastTwo({}, beginner)).toEqual([[50, 45], [60]]);
    expect(lastTwo({}, athlete('advanced', 100))).toEqual([[75, 70, 70], [90]]);
    expect(lastTwo({ slots: [slot(1), slot(4)] }, athlete('advanced', 100))).toEqual([[70, 70], [90]]);
  });

  it('are at most a quarter over those of the taper week before, where something held that one', () => {
    const pinned = stages(season({ pins: [pin(FIRST, 60)] }), athlete('advanced', 100)).contacts;
    expect(pinned.slice(-2).map((week) => week.sessions)).toEqual([[30, 30], [40]]);
    expect(pinned.at(-1)).toMatchObject({ contacts: 40, boundBy: 'taper-cut' });
    expect(pinned.at(-1)?.bounds).toContainEqual({
      by: 'taper-cut',
      most: 40,
      params: { session: 40, possible: 1, before: 30, percent: 25 },
    });
  });

  it('are so where the week before had days for more sessions than are usual', () => {
    const from = { range: { from: day(FIRST), until: day('2027-04-25') } };
    const slots = [slot(1), slot(3), slot(5, from)];
    const [first = [], last = []] = lastTwo({ slots }, athlete('advanced', 100));
    expect([first.length, last.length]).toEqual([3, 1]);
    expect(last[0]).toBe(Math.ceil((1.25 * (first[0] ?? 0)) / 5) * 5);
  });

  it('are as small as a plan wants them', () => {
    expect(lastTwo(changed(0), athlete('advanced', 100))).toEqual([[75, 70, 70], [75]]);
  });

  it('stay where the coach wrote their number or waived the rule', () => {
    const who = athlete('advanced', 100);
    expect(lastTwo({ pins: [pin(FIRST, 60), pin('2027-04-19', 80)] }, who)).toEqual([[30, 30], [80]]);
    const range = { from: day('2027-04-19'), until: day('2027-04-25') };
    const waivers = [{ rule: 'taper-cut', range, who: EVERYBODY, because: 'camp', span: HERE }] as const;
    expect(lastTwo({ pins: [pin(FIRST, 60)], waivers }, who)[1]?.[0]).toBeGreaterThan(80);
  });

  it('look behind a closed week', () => {
    const closures = [{ ...away(FIRST, '2027-04-18', 'full'), who: EVERYBODY }];
    const sessions = stages(season({ closures, pins: [pin('2027-04-05', 60)] }), athlete('advanced', 100)).contacts;
    expect(sessions.slice(-3).map((week) => week.sessions)).toEqual([[30, 30], [], [40]]);
  });

  it('go by the plan of a week before that is over, however it was done', () => {
    const who = athlete('advanced', 100);
    const last = (change: Partial<Plan>, sum: number): readonly number[] | undefined => {
      const planned = stages(season(change), who).contacts.slice(0, -2);
      const sums = [...planned.map(({ contacts }) => contacts), sum];
      const done = sums.map((contacts, week) => ({
        day: day('2027-01-05') + 7 * week,
        athlete: who.id,
        kind: 'session' as const,
        contacts,
        note: '',
        span: HERE,
      }));
      const plan = season({ ...change, record: { done, tests: [] } });
      return stages(plan, who, day('2027-04-19')).contacts.at(-1)?.sessions;
    };
    expect(last({}, 215)).toEqual([90]);
    expect(last({}, 70)).toEqual([90]);
    expect([40, 60, 200].map((sum) => last({ pins: [pin(FIRST, 60)] }, sum))).toEqual([[40], [40], [40]]);
  });
});
