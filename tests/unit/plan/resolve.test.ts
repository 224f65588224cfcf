// What resolving fills in, binds and puts in order.

import { describe, expect, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import { RULES } from '../../../src/library/rules.ts';
import type { Unit } from '../../../src/library/types.ts';
import { ageOn, levelOn } from '../../../src/plan/athlete-facts.ts';
import { isoDate, parseIsoDate } from '../../../src/util/days.ts';
import { athleteOf, codesOf, FRAME, load, planOf, withFields } from './loaded.ts';

const day = (iso: string): number => parseIsoDate(iso) ?? Number.NaN;
const NOW = 'now: { contacts-a-session: 80, sessions-a-week: 2 }';

describe('the season', () => {
  const season = (fields: string): string => FRAME.replace(/season: .*/, `season: { title: Spring, ${fields} }`);
  const cup = (date: string): string => `competitions: [{ name: Cup, date: ${date}, prepare: peak }]\n`;
  const mira = 'athletes: { mira: {} }\n';

  test('ends with the week of its last competition when no end is written', () => {
    const plan = planOf(season('starts: 2027-01-04') + cup('2027-04-24') + mira);
    expect(isoDate(plan.season.ends)).toBe('2027-04-25');
    expect(plan.season.endsOrigin.kind).toBe('default');
  });

  test('counts its weeks from the day they start on', () => {
    const plan = planOf(season('starts: 2027-01-04, week-starts: wednesday') + cup('2027-04-24') + mira);
    expect(isoDate(plan.season.ends)).toBe('2027-04-27');
  });

  test('takes the directions of its sport, and the general profile has none', () => {
    expect(planOf(season('sport: handball, starts: 2027-01-04, ends: 2027-05-02') + mira).season.directions).toEqual({
      vertical: 45,
      horizontal: 30,
      lateral: 25,
    });
    expect(planOf(FRAME + mira).season).toMatchObject({ sport: 'general', units: 'metric', weekStarts: 0 });
    expect(planOf(FRAME + mira).season.directions).toBeUndefined();
  });

  test('has 104 weeks at most', () => {
    const ends = (date: string): readonly string[] => codesOf(season(`starts: 2027-01-04, ends: ${date}`) + mira);
    expect(ends('2028-12-31')).not.toContain('plan/season-too-long');
    expect(ends('2029-01-01')).toContain('plan/season-too-long');
  });

  test('in season comes in order of date', () => {
    const text = 'in-season: [{ from: 2027-04-01, until: 2027-04-10 }, { from: 2027-02-01, until: 2027-02-28 }]';
    const plan = planOf(season(`starts: 2027-01-04, ends: 2027-05-02, ${text}`) + mira);
    expect(plan.season.inSeason.map(({ from }) => isoDate(from))).toEqual(['2027-02-01', '2027-04-01']);
  });
});

describe('an athlete', () => {
  test('takes from the squad what is left out, and limits and time away of both', () => {
    const plan = planOf(`${FRAME}
squads:
  seniors:
    level: advanced
    ${NOW}
    cleared: [drops]
    away: [{ from: 2027-03-01, until: 2027-03-07 }]
    limits: [{ until: 2027-01-31, avoid: [lateral], because: new floor }]
athletes:
  mira: { squad: seniors, cleared: [], limits: [{ until: 2027-02-01, contacts-a-session: 60, because: left knee }] }
  jon: { squad: seniors, level: beginner, now: { contacts-a-session: 30, sessions-a-week: 1 } }
`);
    const mira = athleteOf(plan, 'mira');
    expect(mira.levels.map(({ is }) => is)).toEqual(['advanced']);
    expect(mira.now.value).toEqual({ contactsASession: 80, sessionsAWeek: 2 });
    expect([...mira.cleared]).toEqual([]);
    expect(mira.limits.map(({ because }) => because)).toEqual(['new floor', 'left knee']);
    expect(mira.away.map(({ because, trained }) => [because, trained])).toEqual([['away', 'none']]);
    const jon = athleteOf(plan, 'jon');
    expect(jon.levels.map(({ is }) => is)).toEqual(['beginner']);
    expect(jon.now.value).toEqual({ contactsASession: 30, sessionsAWeek: 1 });
    expect([...jon.cleared]).toEqual(['drops']);
  });

  test('takes the maxima of the squad for its own, which is told, but for who is young', () => {
    const { plan, diagnostics } = load(
      `${FRAME}squads: { u18: { level: beginner, ${NOW}, lifts: { back-squat: { max: 90 kg } } } }\n` +
        'athletes: { ada: { squad: u18, born: 2011-01-04 }, bo: { squad: u18, born: 2011-01-05 }, ' +
        'cas: { squad: u18, born: 2011-01-05, lifts: { back-squat: { max: 30 kg } } }, ' +
        'dan: { squad: u18, born: 2003, lifts: {} } }\n',
    );
    const kilos = plan?.athletes.map(({ lifts }) => (lifts.get('back-squat')?.grams ?? 0) / 1000);
    expect(kilos).toEqual([90, 0, 30, 0]);
    expect(diagnostics.map(({ code, params }) => [code, params])).toContainEqual([
      'plan/maxima-of-squad',
      { squad: 'u18', grown: 'ada', young: 'bo' },
    ]);
  });

  test('without a level is a beginner, without last weeks starts as is usual, and both are said once', () => {
    const { plan, diagnostics } = load(`${FRAME}athletes: { mira: {}, jon: {}, kai: { level: advanced } }\n`);
    expect(diagnostics.map(({ code, params }) => [code, params['athletes']])).toEqual([
      ['plan/level-left-out', 'jon and mira'],
      ['plan/now-left-out', 'jon and mira'],
      ['plan/now-left-out', 'kai'],
    ]);
    expect(plan?.athletes.map(({ id, now }) => [id, now.value.contactsASession, now.origin.kind])).toEqual([
      ['jon', 40, 'default'],
      ['kai', 90, 'default'],
      ['mira', 40, 'default'],
    ]);
  });

  test('starts by the level that holds on the first day', () => {
    const levels = 'level: [{ is: intermediate }, { is: advanced, from: 2027-03-01 }]';
    const mira = athleteOf(planOf(withFields(levels)), 'mira');
    expect(mira.now.value.contactsASession).toBe(70);
    expect(levelOn(mira, day('2027-02-28'))).toBe('intermediate');
    expect(levelOn(mira, day('2027-03-01'))).toBe('advanced');
  });

  test('has levels in order of date, however they are written', () => {
    const written =
      'level: [{ is: advanced, from: 2027-03-01 }, { is: beginner }, { is: intermediate, from: 2027-02-01 }]';
    const mira = athleteOf(planOf(withFields(`${written}, ${NOW}`)), 'mira');
    expect(mira.levels.map(({ is }) => is)).toEqual(['beginner', 'intermediate', 'advanced']);
  });

  test('with a year of birth is as young as it allows', () => {
    const mira = athleteOf(planOf(withFields(`born: 2013, ${NOW}`)), 'mira');
    expect(ageOn(mira, day('2027-12-30'))).toBe(13);
  });

  test.each([
    ['born: 2019-01-04', false],
    ['born: 2019-01-05', true],
    ['born: 2018', false],
    ['born: 2019', true],
    ['born: 2019-01', true],
  ])('%s is under 8 on the first day: %s', (born, isTooYoung) => {
    expect(codesOf(withFields(`${born}, level: beginner, ${NOW}`)).includes('plan/too-young')).toBe(isTooYoung);
  });

  test('with a limit in the season, or a return, has to have its last weeks written', () => {
    const limit = (until: string): string => `limits: [{ until: ${until}, avoid: [drops], because: left knee }]`;
    expect(codesOf(withFields(limit('2027-02-01')))).toContain('plan/now-needed');
    expect(codesOf(withFields(limit('2026-12-01')))).not.toContain('plan/now-needed');
    expect(codesOf(withFields('returning: { stage: 1, of: 4, since: 2026-12-01, signed: physio }'))).toContain(
      'plan/now-needed',
    );
  });

  test('is not at a level before the day it is signed off, but at the one below', () => {
    const from = (is: string, first: string): string => `level: [{ is: ${is}, from: ${first} }]`;
    const levelsOf = (fields: string): readonly string[] => {
      const mira = athleteOf(planOf(withFields(fields)), 'mira');
      return [levelOn(mira, day('2027-01-04')), levelOn(mira, day('2027-02-28')), levelOn(mira, day('2027-03-01'))];
    };
    expect(levelsOf(from('advanced', '2027-03-01'))).toEqual(['intermediate', 'intermediate', 'advanced']);
    expect(levelsOf(from('intermediate', '2027-03-01'))).toEqual(['beginner', 'beginner', 'intermediate']);
    expect(levelsOf(from('advanced', '2027-01-04'))).toEqual(['advanced', 'advanced', 'advanced']);
    expect(levelsOf(from('beginner', '2027-03-01'))).toEqual(['beginner', 'beginner', 'beginner']);
    // What is usual in the last weeks goes by the level that holds then: 70 contacts a session, common practice.
    expect(athleteOf(planOf(withFields(from('advanced', '2027-03-01'))), 'mira').now.value.contactsASession).toBe(70);
  });

  test('keeps a limit that was over before the season, and says that it bars nothing', () => {
    const fields = `limits: [{ until: 2026-12-01, avoid: [drops], because: left knee }], level: beginner, ${NOW}`;
    const { plan, diagnostics } = load(withFields(fields));
    expect(diagnostics.map(({ code }) => code)).toEqual(['plan/outside-season']);
    expect(plan?.athletes[0]?.limits.map(({ range }) => isoDate(range.until))).toEqual(['2026-12-01']);
  });

  test('has a maximum estimated from a set by the lower equation, in whole grams', () => {
    // Brzycki 1993, 36w/(37 − r), read in secondary texts (S): 100 kg x 5 gives 112.5 kg.
    const lifts =
      'lifts: { back-squat: { did: 100 kg x 5 }, deadlift: { did: 120 kg x 1 }, front-squat: { max: 80 kg } }';
    const mira = athleteOf(planOf(withFields(`${lifts}, ${NOW}`)), 'mira');
    expect([...mira.lifts.values()].map(({ lift, grams, estimated }) => [lift, grams, estimated])).toEqual([
      ['back-squat', 112_500, true],
      ['deadlift', 120_000, false],
      ['front-squat', 80_000, false],
    ]);
  });

  test('takes one return stage or a list of them, in order of date', () => {
    const stage = (number: number, since: string): string =>
      `{ stage: ${String(number)}, of: 4, since: ${since}, signed: physio }`;
    const one = athleteOf(planOf(withFields(`returning: ${stage(2, '2027-01-10')}, ${NOW}`)), 'mira');
    expect(one.returning.map(({ stage: number }) => number)).toEqual([2]);
    const list = `[${stage(3, '2027-02-20')}, ${stage(2, '2027-01-10')}]`;
    const two = athleteOf(planOf(withFields(`returning: ${list}, ${NOW}`)), 'mira');
    expect(two.returning.map(({ stage: number }) => number)).toEqual([2, 3]);
  });
});

test('a name of several lines is told in one, and one with a control character in it is none', () => {
  const named = (name: string): string => `${FRAME}athletes: { mira: { name: ${name}, born: 2003, ${NOW} } }\n`;
  expect(planOf(named('"Mira \\n  K."')).athletes[0]?.name).toBe('Mira K.');
  for (const escape of ['\\e[31m', '\\u202E', '\\0', '\\x9b'])
    expect(codesOf(named(`"Mira${escape}"`))).toContain('source/control-character');
  // Marks that belong to a script stay.
  expect(planOf(named('"Mira \\u200f\\u05de"')).athletes[0]?.name).toBe('Mira \u200f\u05de');
});

test('a limit bars everything its word may mean', () => {
  const avoidOf = (word: string): readonly unknown[] => {
    const fields = `limits: [{ until: 2027-02-01, avoid: ${word}, because: left knee }], ${NOW}`;
    return athleteOf(planOf(withFields(fields)), 'mira').limits[0]?.avoid ?? [];
  };
  expect(avoidOf('drops')).toEqual([{ kind: 'drops' }]);
  expect(avoidOf('single-leg')).toEqual([{ kind: 'single-leg' }, { kind: 'pattern', id: 'single-leg' }]);
  expect(avoidOf('lateral')).toEqual([{ kind: 'direction', id: 'lateral' }]);
  expect(avoidOf('fast')).toEqual([{ kind: 'cycle', id: 'fast' }]);
  expect(avoidOf('high')).toEqual([{ kind: 'tier', id: 'high' }]);
  expect(avoidOf('back-squat')).toEqual([{ kind: 'lift', id: 'back-squat' }]);
  expect(avoidOf('squat')).toEqual([{ kind: 'pattern', id: 'squat' }]);
  expect(avoidOf('hurdle-hop')).toContainEqual({ kind: 'drill', id: 'hurdle-hop' });
});

describe('slots', () => {
  const slots = (...lines: readonly string[]): string =>
    `${FRAME.replace(/slots: .*/, `slots: [${lines.join(', ')}]`)}athletes: { mira: { level: beginner, ${NOW} } }\n`;
  const slot = (rest: string): string => `{ minutes: 60, place: hall, ${rest} }`;

  test('come in order of day, time and name, with ids that say which', () => {
    const plan = planOf(
      slots(
        slot('day: thu, name: evening, at: "18:00"'),
        slot('day: mon'),
        slot('day: thu, name: Early Bird, at: "07:30", use: jumps'),
      ),
    );
    expect(plan.slots.map(({ id, at, use }) => [id, at, use])).toEqual([
      ['monday', undefined, 'both'],
      ['thursday-early-bird', 450, 'jumps'],
      ['thursday-evening', 1080, 'both'],
    ]);
    expect(plan.slots.every(({ range }) => isoDate(range.from) === '2027-01-04')).toBe(true);
  });

  test('of one day need names only where both are in force', () => {
    const early = slot('day: tue, until: 2027-02-28');
    expect(codesOf(slots(early, slot('day: tue, from: 2027-03-01')))).toEqual([]);
    expect(codesOf(slots(early, slot('day: tue, from: 2027-02-28, at: "18:00"')))).toEqual(['plan/slots-unnamed']);
    expect(codesOf(slots(slot('day: tue, name: a'), slot('day: tue, name: a')))).toEqual(['plan/slot-twice']);
  });
});

describe('competitions', () => {
  const plan = (sport: string, cups: string, athletes = 'athletes: { mira: {}, jon: {} }'): string =>
    `${FRAME.replace('title: Spring', `title: Spring, sport: ${sport}`)}squads: { seniors: {} }\n${athletes}\ncompetitions: [${cups}]\n`;

  test('without jumps have those of one practice in the sport of who competes', () => {
    const cups =
      '{ name: Cup, date: 2027-04-24, prepare: through }, { name: League, date: 2027-05-01, prepare: through, jumps: 7 }';
    const jumps = (sport: string): readonly unknown[] =>
      [...compilePlan(planOf(plan(sport, cups, 'athletes: { mira: {}, jon: { sport: high-jump } }'))).athletes].map(
        ({ days }) => days.map(({ matchJumps }) => matchJumps),
      );
    expect(jumps('handball')).toEqual([
      [20, 7],
      [50, 7],
    ]);
    expect(jumps('general')).toEqual([
      [20, 7],
      [0, 7],
    ]);
  });

  test('may be peaks on one day for different athletes', () => {
    const cup = (name: string, rest: string): string => `{ name: ${name}, date: 2027-04-24, prepare: peak${rest} }`;
    const apart = `${cup('A', ', athletes: [mira]')}, ${cup('B', ', athletes: [jon]')}`;
    expect(codesOf(plan('general', apart))).not.toContain('plan/two-peaks');
    expect(codesOf(plan('general', `${apart}, ${cup('C', '')}`))).toContain('plan/two-peaks');
  });
});

describe('rules', () => {
  const rules = (text: string): string =>
    `${FRAME}athletes: { mira: { level: beginner, ${NOW} } }\nrules: { ${text} }\n`;

  test('change the parameters written, in the unit of the rule', () => {
    const plan = planOf(
      rules(
        'weekly-rise: [{ most: 8 %, contacts: 5, athletes: [mira], because: a }], pair-rest: { least: 4 min, because: b }',
      ),
    );
    expect(plan.ruleChanges.map(({ rule, parameters }) => [rule, Object.fromEntries(parameters)])).toEqual([
      ['weekly-rise', { most: 8, contacts: 5 }],
      ['pair-rest', { least: 240 }],
    ]);
  });

  test('change every parameter there is', () => {
    const units = new Map<Unit, string>([
      ['percent', ' %'],
      ['cm', ' cm'],
      ['kg', ' kg'],
      ['seconds', ' s'],
    ]);
    const named = RULES.flatMap(({ id, parameters }) => parameters.map((parameter) => ({ id, ...parameter })));
    for (const { id, name, value = 50, unit } of named) {
      const plan = planOf(rules(`${id}: { ${name}: ${String(value)}${units.get(unit) ?? ''}, because: so }`));
      expect(plan.ruleChanges.map((one) => [one.rule, ...one.parameters])).toEqual([[id, [name, value]]]);
    }
  });

  test.each([
    ['drop-mass: { over: 90 kg, because: a }', []],
    ['drop-mass: { over: 110 kg, because: a }', ['plan/rule-loosened']],
    ['drop-mass: { most: 12 in, because: a }', []],
    ['drop-age: { under: 15, because: a }', []],
    ['drop-age: { under: 13 years, because: a }', ['plan/rule-loosened']],
    ['weekly-rise: { most: 20 %, because: a }', []],
    ['weekly-rise: { most: 20, because: a }', ['language/bare-number']],
    ['drop-mass: { over: 98.5 kg, because: a }', ['language/too-fine']],
  ])('%s', (text, codes) => {
    expect(codesOf(rules(text))).toEqual(codes);
  });
});

test('pins have all their effects', () => {
  const plan = planOf(`${FRAME}athletes: { mira: { level: beginner, ${NOW} } }
pins:
  - { week: 2027-03-03, contacts-a-week: 152, kind: load, on: [thu, tue], because: a }
  - { from: 2027-03-08, until: 2027-03-28, phase: strength, because: b }
  - { date: 2027-03-18, rest: true, because: c }
  - { swap: { back-squat: trap-bar-deadlift }, leave-out: [pogo], keep: hurdle-hop, because: d }
  - { week: 2027-04-05, sets: { back-squat: 2 }, load: { back-squat: 80 kg }, because: e }
  - { week: 2027-04-12, add: [{ drill: pogo, sets: 2, reps: 10 }, { lift: plank, sets: 2, reps: 30 }], because: f }
`);
  const told = plan.pins.map(({ range, effects }) => [
    isoDate(range.from),
    isoDate(range.until),
    effects.map(({ kind }) => kind),
  ]);
  expect(told).toEqual([
    ['2027-01-04', '2027-05-02', ['swap', 'leave-out', 'keep']],
    ['2027-03-01', '2027-03-07', ['contacts', 'week-kind', 'on']],
    ['2027-03-08', '2027-03-28', ['phase']],
    ['2027-03-18', '2027-03-18', ['rest']],
    ['2027-04-05', '2027-04-11', ['sets', 'load']],
    ['2027-04-12', '2027-04-18', ['add', 'add']],
  ]);
  expect(plan.pins[1]?.effects[0]).toEqual({ kind: 'contacts', contactsAWeek: 150 });
  expect(plan.pins[1]?.effects[2]).toEqual({ kind: 'on', days: [1, 3] });
  expect(plan.pins[5]?.effects.map((effect) => (effect.kind === 'add' ? effect.part : ''))).toEqual(['jumps', 'trunk']);
});

test('programmes are bound, in order of week and day, with their pairs', () => {
  const plan = planOf(`${FRAME}athletes: { mira: { level: beginner, ${NOW} } }
programmes:
  pairs-block:
    - week: 2
      thursday: [{ drill: hurdle-hop, sets: 4, reps: 5 }]
      tue: [{ lift: back-squat, sets: 3, reps: 8, percent: 67.5 %, pair: { drill: countermovement-jump, reps: 3 } }]
    - week: 1
      tuesday: [{ drill: drop-jump-30, sets: 3, reps: 5, drop: 30 cm, rest: 2 min }]
use: [{ programme: pairs-block, from: 2027-03-03 }]
`);
  const programme = plan.uses[0]?.programme;
  expect(programme?.weeks.map(({ week, days }) => [week, days.map(({ day: weekday }) => weekday)])).toEqual([
    [1, [1]],
    [2, [1, 3]],
  ]);
  const squat = programme?.weeks[1]?.days[0]?.lines[0];
  expect(squat).toMatchObject({ sets: 3, reps: 8, percent: 67.5, exercise: { kind: 'lift', id: 'back-squat' } });
  expect(squat?.pair).toMatchObject({ sets: 3, reps: 3, exercise: { kind: 'drill', id: 'countermovement-jump' } });
  expect(programme?.weeks[0]?.days[0]?.lines[0]).toMatchObject({ dropCm: 30, restSeconds: 120 });
});

test("the plan's own drills and lifts stand in the library", () => {
  const plan = planOf(`${FRAME}athletes: { mira: { level: beginner, ${NOW} } }
drills:
  squat-hop:
    { name: Squat hop, family: squat-hop, rung: 1, direction: { vertical: 70, horizontal: 30 }, cycle: slow, tier: low,
      legs: each, contacts-per-rep: 2, from-level: beginner, kit: boxes, reps: 3-8, sets: 2-4, rest: 90 s, cue: Up., stop: Down. }
lifts:
  half-squat: { name: Our half squat, pattern: squat, depth: half, kit: [racks, bars], max-of: half-squat }
  bench-lunge: { name: Bench lunge, pattern: single-leg, kit: [dumbbells] }
  box-squat: { name: Our box squat, pattern: squat, kit: [racks, bars] }
  high-box: { name: High box squat, pattern: squat, kit: [racks, bars], max-of: box-squat }
`);
  expect(plan.library.drills.get('squat-hop')).toMatchObject({
    direction: { vertical: 70, horizontal: 30, lateral: 0 },
    reps: { from: 3, to: 8 },
    restSeconds: 90,
    kit: ['boxes'],
    lands: 'ground',
    stage: 4,
  });
  expect(plan.library.lifts.get('half-squat')).toMatchObject({
    name: 'Our half squat',
    fromPhase: 'strength-power',
    maxOf: 'half-squat',
    kindOf: 'back-squat',
  });
  expect(plan.library.lifts.get('high-box')?.kinds).toEqual(['box-squat', 'back-squat']);
  expect(plan.library.lifts.get('bench-lunge')).toMatchObject({
    loading: 'dumbbells',
    lower: true,
    stage: 4,
    role: 'main',
  });
  expect(plan.library.drills.has('pogo')).toBe(true);
});

test('a session that was typed in anew counts once, with the worst pain of both', () => {
  const plan = planOf({
    'season.yaml': `${FRAME}athletes: { mira: { level: beginner, ${NOW} } }\nrecord: { done: done.csv }\n`,
    'done.csv':
      'date,athlete,kind,contacts,minutes,effort,pain,note\n' +
      '2027-01-05,mira,session,40,,,5,\n2027-01-05,mira,session,60,,,1,\n2027-01-05,mira,session,0,30,,,\n' +
      '2027-01-05,mira,session,20,,,,in the evening\n2027-01-05,mira,match,50,,,,\n',
  });
  const told = plan.record.done.map(({ kind, contacts, pain }) => [kind, contacts, pain]);
  expect(told).toHaveLength(4);
  expect(told).toEqual(
    expect.arrayContaining([
      ['session', 40, 5],
      ['session', 0, undefined],
      ['session', 20, undefined],
      ['match', 50, undefined],
    ]),
  );
});

test('the record is bound and in order of day', () => {
  const record = {
    'season.yaml': `${FRAME}athletes: { mira: { level: beginner, ${NOW} } }\nrecord: { done: done.csv, tests: tests.csv }\n`,
    'done.csv':
      'date,athlete,kind,contacts,minutes,effort,pain,note\n2027-01-12,mira,session,80,70,6.5,1,no\n2027-01-05,mira,practice,,,,,\n',
    'tests.csv':
      'date,athlete,test,trial,value,unit,method,arms,note\n2027-01-05,mira,countermovement-jump,1,31.25,cm,mat,no,\n',
  };
  const plan = planOf(record);
  expect(
    plan.record.done.map(({ day: date, kind, contacts, effort, note }) => [
      isoDate(date),
      kind,
      contacts,
      effort,
      note,
    ]),
  ).toEqual([
    ['2027-01-05', 'practice', undefined, undefined, undefined],
    ['2027-01-12', 'session', 80, 6.5, 'no'],
  ]);
  expect(plan.record.tests).toMatchObject([{ value: 31.25, unit: 'cm', arms: false }]);
  expect(codesOf(record, day('2027-01-12'))).toEqual([]);
  expect(codesOf(record, day('2027-01-11'))).toEqual(['plan/record-in-future']);
});

test('a missing file brings no unknown names with it', () => {
  const codes = codesOf({
    'season.yaml': `${FRAME}files: [squads.yaml]\nathletes: { mira: { squad: seniors, mass: 68, ${NOW} } }\n`,
  });
  expect(codes.toSorted()).toEqual(['files/missing', 'language/bare-number']);
});

test('one box or bar may be written without brackets, and a number alone counts them', () => {
  const kitOf = (kit: string): readonly unknown[] => {
    const plan = planOf(
      `${FRAME.replace(/^places:.*$/mu, `places: { hall: { kit: { ${kit} } } }`)}athletes: { mira: { level: beginner, ${NOW} } }\n`,
    );
    const found = plan.places.get('hall')?.kit;
    return [found?.counts.get('boxes'), found?.boxesCm, found?.barsGrams];
  };
  expect(kitOf('boxes: 30 cm')).toEqual(kitOf('boxes: [30 cm]'));
  expect(kitOf('bars: 20 kg, smallest-plate: 1 kg')).toEqual(kitOf('bars: [20 kg], smallest-plate: 1 kg'));
  expect(kitOf('boxes: 3')).toEqual([3, [], []]);
});
