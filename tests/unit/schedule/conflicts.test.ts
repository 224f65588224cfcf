// Pins that can't be met: the lines that stand against one are a smallest set, and taking out each of them helps.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Away, Limit, Pin, PinEffect, Plan } from '../../../src/plan/types.ts';
import { contactsConflict, isPossible } from '../../../src/schedule/conflicts/contacts-conflict.ts';
import { factsOf, without } from '../../../src/schedule/conflicts/facts.ts';
import type { Season } from '../../../src/schedule/conflicts/facts.ts';
import type { Span } from '../../../src/source/types.ts';
import { day } from '../date.ts';
import { athlete, EVERYBODY, peak, plan } from './make-plan.ts';
import { stages } from './stages.ts';

const at = (start: number): Span => ({ file: 'season.yaml', start, end: start + 1 });

const pinned = (week: string, effect: PinEffect, span: Span, until = week): Pin => ({
  range: { from: day(week), until: day(until) },
  who: EVERYBODY,
  effects: [effect],
  because: 'camp',
  span,
});

const contacts = (week: string, contactsAWeek: number, span: Span): Pin =>
  pinned(week, { kind: 'contacts', contactsAWeek }, span);

const away = (from: string, until: string, span: Span): Away => ({
  range: { from: day(from), until: day(until) },
  because: 'exams',
  trained: 'none',
  span,
});

const limit = (from: string, until: string, contactsASession: number, span: Span): Limit => ({
  range: { from: day(from), until: day(until) },
  avoid: [],
  contactsASession,
  because: 'knee',
  span,
});

const FOUR_MONTHS = { starts: '2027-01-04', ends: '2027-04-25' };

function season(change: Partial<Plan>, who: Parameters<typeof athlete>[2] = {}): Season {
  const of = plan(FOUR_MONTHS, { competitions: [peak('2027-04-24')], ...change });
  return { plan: of, athlete: athlete('intermediate', 80, who), asOf: undefined };
}

const WEEK_6 = '2027-02-08';

/** The conflict of the pin of week 6, which stands at 900. */
const conflictOf = (one: Season, wanted: number) => contactsConflict(one, { week: 5, contacts: wanted, span: at(900) });

const spansOf = (one: Season, wanted: number): readonly number[] =>
  conflictOf(one, wanted).facts.map(({ span }) => span.start);

describe('a pin that a line stands against', () => {
  const cases: readonly (readonly [name: string, season: Season, wanted: number, against: readonly number[]])[] = [
    [
      'a limit',
      season({ pins: [contacts(WEEK_6, 190, at(900))] }, { limits: [limit('2027-02-01', '2027-02-28', 50, at(100))] }),
      190,
      [100],
    ],
    [
      'time away',
      season({ pins: [contacts(WEEK_6, 190, at(900))] }, { away: [away('2027-01-18', '2027-01-31', at(110))] }),
      190,
      [110],
    ],
    [
      'another pin',
      season({
        pins: [
          pinned('2027-01-11', { kind: 'contacts', contactsAWeek: 20 }, at(120), '2027-02-07'),
          contacts(WEEK_6, 190, at(900)),
        ],
      }),
      190,
      [120],
    ],
    [
      'rest on every day',
      season({ pins: [pinned(WEEK_6, { kind: 'rest' }, at(130), '2027-02-14'), contacts(WEEK_6, 100, at(900))] }),
      100,
      [130],
    ],
    [
      'a phase without jumps',
      season({
        pins: [pinned(WEEK_6, { kind: 'phase', phase: 'transition' }, at(140)), contacts(WEEK_6, 100, at(900))],
      }),
      100,
      [140],
    ],
    [
      'a kind of week',
      season({
        pins: [pinned(WEEK_6, { kind: 'week-kind', weekKind: 'deload' }, at(150)), contacts(WEEK_6, 150, at(900))],
      }),
      150,
      [150],
    ],
    [
      'a closure',
      season({
        pins: [contacts(WEEK_6, 100, at(900))],
        closures: [
          {
            range: { from: day(WEEK_6), until: day('2027-02-14') },
            because: 'ice',
            trained: 'none',
            who: EVERYBODY,
            span: at(160),
          },
        ],
      }),
      100,
      [160],
    ],
    [
      'a stricter rule',
      season({
        pins: [contacts(WEEK_6, 190, at(900))],
        ruleChanges: [
          {
            rule: 'weekly-rise',
            parameters: new Map([
              ['most', 1],
              ['contacts', 0],
            ]),
            range: { from: day('2027-01-01'), until: day('2027-12-31') },
            who: EVERYBODY,
            because: 'growth',
            span: at(170),
          },
        ],
      }),
      190,
      [170],
    ],
    [
      'two lines, both of them in the way',
      season(
        { pins: [contacts(WEEK_6, 190, at(900))] },
        { away: [away('2027-01-18', '2027-01-31', at(180))], limits: [limit('2027-02-01', '2027-02-28', 50, at(190))] },
      ),
      190,
      [190],
    ],
    ['nothing but the rules', season({ pins: [contacts(WEEK_6, 400, at(900))] }), 400, []],
  ];

  it.each(cases)('%s', (_, one, wanted, against) => {
    expect(stages(one.plan, one.athlete).diagnostics).toMatchObject([
      { code: 'schedule/pin-too-high', params: { wanted } },
    ]);
    expect(spansOf(one, wanted)).toEqual(against);
  });

  it.each(cases.filter(([, , , against]) => against.length === 1).filter(([name]) => !name.startsWith('two')))(
    'is met without any one of: %s',
    (_, one, wanted) => {
      const { facts, eachIsEnough } = conflictOf(one, wanted);
      expect(eachIsEnough).toBe(true);
      for (const { item } of facts) {
        const rest = without(one, new Set([item]));
        const found = stages(rest.plan, rest.athlete);
        expect(found.diagnostics).toEqual([]);
        expect(found.contacts[5]?.contacts).toBe(wanted);
      }
    },
  );

  it('says so where taking out one line is not enough', () => {
    const [, two, wanted] = cases[8] ?? [];
    if (two === undefined || wanted === undefined) throw new Error('no such case');
    expect(conflictOf(two, wanted).eachIsEnough).toBe(false);
  });
});

describe('what would work', () => {
  const one = season({ pins: [contacts(WEEK_6, 240, at(900))] });
  const conflict = conflictOf(one, 240);

  it('is the earliest week in which the number can be pinned', () => {
    const week = conflict.earliest ?? -1;
    const found = (at6: number): readonly string[] => {
      const starts = day('2027-01-04') + 7 * at6;
      const pin = { ...contacts(WEEK_6, 240, at(900)), range: { from: starts, until: starts + 6 } };
      return stages({ ...one.plan, pins: [pin] }, one.athlete).diagnostics.map(({ code }) => code);
    };
    expect(found(week)).toEqual([]);
    for (let before = 5; before < week; before += 1) expect(found(before)).toEqual(['schedule/pin-too-high']);
  });

  it('is the most by that week, and no more', () => {
    const most = Number(stages(one.plan, one.athlete).diagnostics[0]?.params['most']);
    const found = (wanted: number) =>
      stages({ ...one.plan, pins: [contacts(WEEK_6, wanted, at(900))] }, one.athlete).diagnostics;
    expect(found(most)).toEqual([]);
    expect(found(most + 5)).toHaveLength(1);
  });

  it('is the weekly rise, and no less', () => {
    const rise = conflict.rise ?? 0;
    const found = (most: number) =>
      stages(
        {
          ...one.plan,
          ruleChanges: [
            {
              rule: 'weekly-rise',
              parameters: new Map([['most', most]]),
              range: { from: day('2027-01-01'), until: day('2027-12-31') },
              who: EVERYBODY,
              because: 'camp',
              span: at(1),
            },
          ],
        },
        one.athlete,
      ).diagnostics;
    expect(found(rise)).toEqual([]);
    expect(found(rise - 1)).toHaveLength(1);
  });

  it('is waivers, none of them to spare', () => {
    const rules = conflict.waivers ?? [];
    const found = (waived: readonly string[]) => {
      const range = { from: day('2027-01-01'), until: day('2027-12-31') };
      const waivers = rules
        .filter((rule) => waived.includes(rule))
        .map((rule) => ({ rule, range, who: EVERYBODY, because: 'camp', span: at(1) }));
      return stages({ ...one.plan, waivers }, one.athlete).diagnostics;
    };
    expect(rules.length).toBeGreaterThan(0);
    expect(found(rules)).toEqual([]);
    for (const rule of rules) expect(found(rules.filter((other) => other !== rule))).toHaveLength(1);
  });
});

const date = fc.integer({ min: 0, max: 55 }).map((days) => day('2027-01-04') + days);

/** A few lines of several kinds that may or may not stand against a pin. */
const lines = fc.array(
  fc.tuple(fc.constantFrom('limit', 'away', 'closure', 'low-pin', 'rest'), date, fc.integer({ min: 0, max: 20 })),
  { minLength: 1, maxLength: 5 },
);

function seasonOf(drawn: readonly (readonly [string, number, number])[], wanted: number): Season {
  const limits: Limit[] = [];
  const aways: Away[] = [];
  const closures: Plan['closures'][number][] = [];
  const pins: Pin[] = [];
  for (const [index, [kind, from, days]] of drawn.entries()) {
    const range = { from, until: from + days };
    const span = at(100 + index);
    if (kind === 'limit') limits.push({ ...limit(WEEK_6, WEEK_6, 45, span), range });
    if (kind === 'away') aways.push({ ...away(WEEK_6, WEEK_6, span), range });
    if (kind === 'closure') closures.push({ range, because: 'ice', trained: 'none', who: EVERYBODY, span });
    if (kind === 'rest') pins.push({ ...pinned(WEEK_6, { kind: 'rest' }, span), range });
    if (kind === 'low-pin') pins.push({ ...pinned(WEEK_6, { kind: 'week-kind', weekKind: 'deload' }, span), range });
  }
  return season({ pins: [...pins, contacts(WEEK_6, wanted, at(900))], closures }, { limits, away: aways });
}

describe('whatever the lines', () => {
  it('the conflict is a set of which none is to spare, as trying every set finds', { timeout: 120_000 }, () => {
    let conflicts = 0;
    fc.assert(
      fc.property(
        lines,
        fc.integer({ min: 16, max: 42 }).map((fives) => fives * 5),
        (drawn, wanted) => {
          const one = seasonOf(drawn, wanted);
          if (isPossible(one, { week: 5 })) return;
          conflicts += 1;
          const all = factsOf(one).filter(({ span }) => span.start !== 900);
          const kept = new Set<object>(conflictOf(one, wanted).facts.map(({ item }) => item));
          const possibleWith = (keep: ReadonlySet<object>): boolean =>
            isPossible(without(one, new Set(all.map(({ item }) => item).filter((item) => !keep.has(item)))), {
              week: 5,
            });
          expect(possibleWith(kept)).toBe(false);
          for (const item of kept)
            expect(possibleWith(new Set([...kept].filter((other) => other !== item)))).toBe(true);
        },
      ),
      { numRuns: 150 },
    );
    expect(conflicts).toBeGreaterThan(20);
  });
});
