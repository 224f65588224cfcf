// The days of a season: each case asks for one thing a coach would check by hand.

import { describe, expect, it } from 'vitest';
import type { RuleId } from '../../../src/library/rules.ts';
import type { Competition, Pin, RuleChange } from '../../../src/plan/types.ts';
import { scheduleDays } from '../../../src/schedule/days.ts';
import { day } from '../date.ts';
import { EVERYBODY, HERE, athlete, peak, slot } from '../schedule/make-plan.ts';
import { stages } from '../schedule/stages.ts';
import { daysOfSeason, inWords, planOf, reasonOf, sessionOn, weeksInWords } from './make-season.ts';

const both = { jumps: true, lifts: true };
const match = (date: string, until = date) =>
  peak(date, { name: 'League', prepare: 'through', jumps: 60, range: { from: day(date), until: day(until) } });
const practice = (weekday: 0 | 1 | 2 | 3 | 4 | 5 | 6, jumps: number) => ({
  day: weekday,
  jumps,
  range: { from: day('2027-01-01'), until: day('2027-12-31') },
  who: EVERYBODY,
  span: HERE,
});
const waiver = (rule: RuleId, from: string, until: string) => ({
  rule,
  range: { from: day(from), until: day(until) },
  who: EVERYBODY,
  because: 'camp',
  span: HERE,
});
const pin = (from: string, until: string, effects: Pin['effects']): Pin => ({
  range: { from: day(from), until: day(until) },
  who: EVERYBODY,
  effects,
  because: 'late shift',
  span: HERE,
});
const openEveryDay = { slots: [0, 1, 2, 3, 4, 5, 6].map((weekday) => slot(weekday as 0)) };

describe('a plain season', () => {
  it('keeps one pattern, the earlier days, jumps and lifts in one session, the larger size first', () => {
    const { value, diagnostics } = daysOfSeason({ weeks: Array.from({ length: 4 }, () => ({ sessions: [65, 60] })) });
    expect(weeksInWords(value)).toEqual(Array.from({ length: 4 }, () => 'tue 65 lift, thu 60 lift'));
    expect(diagnostics).toEqual([]);
  });

  it('says that a day keeps the pattern', () => {
    const { value } = daysOfSeason({ weeks: [{ sessions: [60] }, { sessions: [60] }] });
    expect(reasonOf(sessionOn(value, '2027-01-12'), 'day')).toMatchObject({
      by: 'pattern',
      params: { weekday: 'tuesday' },
    });
  });

  it('holds the lift sessions of the phase on days of their own where jumps are fewer', () => {
    const { value } = daysOfSeason({ weeks: [{ sessions: [60, 60], phase: 'strength' }] });
    expect(inWords(value[0])).toBe('tue 60 lift, thu 60 lift, sat lift');
    expect(value[0]?.liftSessionsWanted).toBe(3);
  });

  it('lifts in a week without jumps, but not in a transition nor in an empty week', () => {
    const weeks = [{}, { kind: 'transition', phase: 'transition' }, { kind: 'empty', phase: 'closed' }] as const;
    const { value } = daysOfSeason({ weeks });
    expect(weeksInWords(value)).toEqual(['tue lift, thu lift', '', '']);
    expect(value.map((week) => week.liftSessionsWanted)).toEqual([2, 0, 0]);
  });

  it('leaves the pattern where a day is closed, names what closed it, and comes back', () => {
    const closure = {
      range: { from: day('2027-01-12'), until: day('2027-01-12') },
      because: 'concert',
      trained: 'none',
      who: EVERYBODY,
      span: { file: 'season.yaml', start: 7, end: 9 },
    } as const;
    const weeks = Array.from({ length: 3 }, () => ({ sessions: [60, 60] }));
    const { value } = daysOfSeason({
      weeks,
      plan: { closures: [closure], slots: [slot(1), slot(3), slot(5), slot(6)] },
    });
    expect(weeksInWords(value)).toEqual([
      'tue 60 lift, thu 60 lift',
      'thu 60 lift, sat 60 lift',
      'tue 60 lift, thu 60 lift',
    ]);
    const moved = reasonOf(sessionOn(value, '2027-01-16'), 'day');
    expect(moved).toMatchObject({ by: 'open-days', params: { instead: 'tuesday', barred: 'closed' } });
    expect(moved?.spans).toEqual([closure.span]);
  });

  it('remembers the pattern through weeks without sessions', () => {
    const closed = { kind: 'empty', phase: 'closed' } as const;
    const { value } = daysOfSeason({ weeks: [{ sessions: [60] }, closed, closed, { sessions: [60] }] });
    expect(reasonOf(sessionOn(value, '2027-01-26'), 'day')).toMatchObject({ by: 'pattern' });
  });
});

describe('spacing', () => {
  it('holds across the turn of a week', () => {
    const { value } = daysOfSeason({
      weeks: [{ sessions: [60] }, { sessions: [60, 60] }],
      plan: {
        slots: [slot(0, { use: 'jumps' }), slot(2, { use: 'jumps' }), slot(6, { use: 'jumps' })],
        pins: [pin('2027-01-04', '2027-01-10', [{ kind: 'on', days: [6] }])],
      },
    });
    expect(weeksInWords(value)).toEqual(['sun 60', 'wed 60, sun 60']);
  });

  it('is two days for jumps, and says so where no other days would do', () => {
    const { value } = daysOfSeason({ weeks: [{ sessions: [60, 60] }], plan: { slots: [slot(1), slot(2), slot(3)] } });
    expect(inWords(value[0])).toBe('tue 60 lift, thu 60 lift');
    expect(reasonOf(sessionOn(value, '2027-01-05'), 'day')).toMatchObject({
      by: 'session-spacing',
      params: { apart: 2 },
    });
  });

  it('takes the number a plan sets', () => {
    const apart: RuleChange = {
      rule: 'session-spacing',
      parameters: new Map([['apart', 3]]),
      range: { from: day('2027-01-01'), until: day('2027-12-31') },
      who: EVERYBODY,
      because: 'tendons',
      span: HERE,
    };
    const { value } = daysOfSeason({ weeks: [{ sessions: [60, 60] }], plan: { ruleChanges: [apart] } });
    expect(inWords(value[0])).toBe('tue 60 lift, sat 60 lift');
  });

  it('is left out of the weeks a waiver touches, and of those alone', () => {
    const slots = [slot(1, { use: 'jumps' }), slot(2, { use: 'jumps' }), slot(3, { use: 'jumps' })];
    const weeks = [{ sessions: [40, 40, 40] }, { sessions: [40, 40, 40] }];
    const { value, diagnostics } = daysOfSeason({
      weeks,
      plan: { slots, waivers: [waiver('session-spacing', '2027-01-06', '2027-01-06')] },
    });
    expect(weeksInWords(value)).toEqual(['tue 40, wed 40, thu 40', 'tue 40, thu 40']);
    expect(reasonOf(sessionOn(value, '2027-01-06'), 'spacing')).toMatchObject({
      by: 'waiver',
      params: { rule: 'session-spacing' },
    });
    expect(diagnostics).toMatchObject([
      { code: 'schedule/sessions-not-held', week: day('2027-01-11'), params: { wanted: 3, held: 2 } },
    ]);
  });

  it('keeps lift days apart, and holds fewer where they do not fit', () => {
    const { value } = daysOfSeason({
      weeks: [{ sessions: [60], phase: 'strength' }],
      plan: { slots: [slot(1), slot(2), slot(3)] },
    });
    expect(inWords(value[0])).toBe('tue 60 lift, thu lift');
    expect(value[0]?.reasons).toContainEqual({
      about: 'lift-sessions',
      by: 'lift-spacing',
      params: { wanted: 3, held: 2, open: 3, apart: 2 },
      spans: [],
    });
  });

  it('says when there are fewer open days than lift sessions', () => {
    const { value } = daysOfSeason({ weeks: [{ phase: 'strength' }], plan: { slots: [slot(1), slot(3)] } });
    expect(value[0]?.reasons).toContainEqual({
      about: 'lift-sessions',
      by: 'open-days',
      params: { wanted: 3, held: 2, open: 2, apart: 2 },
      spans: [],
    });
  });

  it('rather loses a second lift session than leaves a week without one', () => {
    const lifts = (weekday: 0 | 6) => slot(weekday, { use: 'lifts' });
    const week = (from: string) => ({ from: day(from), until: day(from) + 6 });
    const slots = [
      lifts(6),
      { ...slot(4, { use: 'lifts' }), range: week('2027-01-04') },
      { ...lifts(0), range: week('2027-01-11') },
    ];
    const { value } = daysOfSeason({
      weeks: [{}, { phase: 'maintenance' }],
      plan: { slots: slots.map((one, index) => ({ ...one, ...(index === 0 ? { range: week('2027-01-04') } : {}) })) },
    });
    expect(weeksInWords(value)).toEqual(['fri lift', 'mon lift']);
  });
});

describe('heavy lifting', () => {
  it('stays out of the two days before a match and goes where it may be heavy', () => {
    const { value } = daysOfSeason({
      weeks: [{ sessions: [60], phase: 'maintenance' }],
      plan: { slots: [slot(3), slot(1)], competitions: [match('2027-01-09')] },
    });
    expect(inWords(value[0])).toBe('tue 60 lift');
    expect(sessionOn(value, '2027-01-05').heavyAllowed).toBe(true);
  });

  it('is not allowed on the last two days before a match, and the reason names it', () => {
    const { value } = daysOfSeason({
      weeks: [{ phase: 'maintenance' }],
      plan: { slots: [slot(3)], competitions: [match('2027-01-09')] },
    });
    const session = sessionOn(value, '2027-01-07');
    expect(session.heavyAllowed).toBe(false);
    expect(reasonOf(session, 'heavy')).toMatchObject({ by: 'lift-event-gap', params: { days: 2, event: 'League' } });
  });

  it.each([
    ['2027-01-07', false],
    ['2027-01-06', true],
  ])('is not allowed in the four days before a peak: %s', (date, allowed) => {
    const weekday = date === '2027-01-07' ? 3 : 2;
    const { value } = daysOfSeason({
      weeks: [{ phase: 'power' }, {}],
      plan: { slots: [slot(weekday)], competitions: [peak('2027-01-11')] },
    });
    expect(sessionOn(value, date).heavyAllowed).toBe(allowed);
  });

  it('may be heavy where the rule is waived', () => {
    const { value } = daysOfSeason({
      weeks: [{ phase: 'maintenance' }],
      plan: {
        slots: [slot(3)],
        competitions: [match('2027-01-09')],
        waivers: [waiver('lift-event-gap', '2027-01-04', '2027-01-10')],
      },
    });
    expect(sessionOn(value, '2027-01-07').heavyAllowed).toBe(true);
  });

  it('keeps its distance from a test', () => {
    const test = { day: day('2027-01-06'), what: ['back-squat'], contacts: 0, who: EVERYBODY, span: HERE };
    const { value } = daysOfSeason({
      weeks: [{ phase: 'maintenance' }],
      plan: { slots: [slot(1), slot(2)], tests: [test] },
    });
    expect(reasonOf(sessionOn(value, '2027-01-05'), 'heavy')).toMatchObject({ by: 'test-fresh', params: { days: 1 } });
  });

  it('serves nothing behind the peak of its week', () => {
    const { value } = daysOfSeason({
      weeks: [{ phase: 'maintenance' }],
      plan: { slots: [slot(0), slot(4)], competitions: [peak('2027-01-06')] },
    });
    expect(inWords(value[0])).toBe('mon lift');
  });

  it('does not come the day before jumps if that can be helped', () => {
    const slots = [slot(0, { use: 'lifts' }), slot(1, { use: 'jumps' }), slot(3, { use: 'jumps' })];
    const { value } = daysOfSeason({ weeks: [{ sessions: [60], phase: 'maintenance' }], plan: { slots } });
    expect(inWords(value[0])).toBe('mon lift, thu 60');
  });

  it('does not come the day before jumps across the turn of a week either', () => {
    const slots = [slot(0, { use: 'jumps' }), slot(2, { use: 'jumps' }), slot(6, { use: 'lifts' })];
    const { value } = daysOfSeason({
      weeks: Array.from({ length: 3 }, () => ({ sessions: [60], phase: 'maintenance' as const })),
      plan: { slots },
    });
    expect(weeksInWords(value)).toEqual(['wed 60, sun lift', 'wed 60, sun lift', 'wed 60, sun lift']);
  });
});

describe('hard days', () => {
  const slots = [slot(1), slot(4)];
  const week = { from: day('2027-01-18'), until: day('2027-01-24') };
  const weeksOf = (phase: 'strength' | 'hypertrophy') => [1, 2, 3].map(() => ({ sessions: [60], phase }));

  it.each([
    ['strength', 'tue lift, fri 60 lift'],
    ['hypertrophy', 'tue 60 lift, fri lift'],
  ] as const)('on both sides of a day drive sessions of %s away, if it has high-tier drills', (phase, words) => {
    const hard = [practice(0, 60), practice(2, 60)].map((one) => ({ ...one, range: week }));
    const { value } = daysOfSeason({ weeks: weeksOf(phase), plan: { slots, practice: hard } });
    expect(inWords(value[2])).toBe(words);
  });

  it('are those with 60 other jumps or more', () => {
    const easy = [practice(0, 59), practice(2, 59)].map((one) => ({ ...one, range: week }));
    const { value } = daysOfSeason({ weeks: weeksOf('strength'), plan: { slots, practice: easy } });
    expect(inWords(value[2])).toBe('tue 60 lift, fri lift');
  });

  it('that come every week are kept away from in every phase, so that days outlast a phase', () => {
    const weeks = [...weeksOf('hypertrophy'), ...weeksOf('strength')];
    const { value } = daysOfSeason({ weeks, plan: { slots, practice: [practice(0, 60)] } });
    expect(new Set(weeksInWords(value))).toEqual(new Set(['tue lift, fri 60 lift']));
  });
});

describe('drops', () => {
  const weeks = [{ sessions: [60, 60] }, { sessions: [60, 60] }];

  it('are left to sessions with two free days behind them', () => {
    const { value } = daysOfSeason({ weeks, plan: { slots: [slot(1), slot(3)] } });
    expect(sessionOn(value, '2027-01-05').dropsAllowed).toBe(false);
    expect(reasonOf(sessionOn(value, '2027-01-05'), 'drops')).toMatchObject({
      by: 'fast-spacing',
      params: { next: 'session', on: '2027-01-07' },
    });
    expect(sessionOn(value, '2027-01-07').dropsAllowed).toBe(true);
  });

  it.each([
    ['a match', { competitions: [match('2027-01-09')] }, 'match'],
    ['a hard practice', { practice: [practice(5, 60)] }, 'hard-day'],
  ])('do not come two days before %s', (_, plan, next) => {
    const { value } = daysOfSeason({ weeks, plan: { slots: [slot(1), slot(3)], ...plan } });
    expect(reasonOf(sessionOn(value, '2027-01-07'), 'drops')?.params['next']).toBe(next);
  });

  it('may come two days before an easy practice', () => {
    const { value } = daysOfSeason({ weeks, plan: { slots: [slot(1), slot(3)], practice: [practice(5, 59)] } });
    expect(sessionOn(value, '2027-01-07').dropsAllowed).toBe(true);
  });

  it.each([
    ['a session moves', [], 'sat 60'],
    ['none does where their spacing is waived', [waiver('fast-spacing', '2027-01-18', '2027-01-24')], 'tue 60'],
  ])('want room behind one session of the week: %s', (_, waivers, words) => {
    const hard = { ...practice(2, 60), range: { from: day('2027-01-18'), until: day('2027-01-24') } };
    const slots = [slot(1, { use: 'jumps' }), slot(5, { use: 'jumps' })];
    const weeks = [1, 2, 3].map(() => ({ sessions: [60], phase: 'power' as const }));
    const { value } = daysOfSeason({ weeks, plan: { slots, practice: [hard], waivers } });
    expect(weeksInWords(value)).toEqual(['tue 60', 'tue 60', words]);
  });

  it('are no matter of a session that only lifts', () => {
    const { value } = daysOfSeason({ weeks: [{}] });
    expect(sessionOn(value, '2027-01-05').dropsAllowed).toBe(false);
  });
});

describe('what was handed out', () => {
  it('holds a session on its day before the pattern does', () => {
    const weeks = Array.from({ length: 3 }, () => ({ sessions: [60], phase: 'maintenance' as const }));
    const { value } = daysOfSeason({ weeks }, { '2027-01-16': both });
    expect(weeksInWords(value)[1]).toBe('sat 60 lift');
    expect(reasonOf(sessionOn(value, '2027-01-16'), 'day')).toMatchObject({ by: 'published' });
  });

  it('holds lifts on their days too', () => {
    const { value } = daysOfSeason(
      { weeks: [{ sessions: [60], phase: 'maintenance' }] },
      { '2027-01-05': { jumps: true, lifts: false }, '2027-01-07': { jumps: false, lifts: true } },
    );
    expect(inWords(value[0])).toBe('tue 60, thu lift');
  });

  it('gives way to a rule', () => {
    const { value } = daysOfSeason(
      { weeks: [{ sessions: [60] }], plan: { competitions: [match('2027-01-08')] } },
      { '2027-01-07': both },
    );
    expect(inWords(value[0])).toBe('tue 60 lift, thu lift');
  });
});

describe('slots', () => {
  it('puts lifts behind the jumps of the same day where a slot takes only one of them', () => {
    const slots = [
      slot(1, { id: 'early', use: 'lifts' }),
      slot(1, { id: 'noon', use: 'jumps' }),
      slot(1, { id: 'late', use: 'lifts' }),
    ];
    const { value } = daysOfSeason({ weeks: [{ sessions: [60], phase: 'maintenance' }], plan: { slots } });
    expect(value[0]?.sessions.map((session) => [session.slot.id, session.contacts, session.lifts])).toEqual([
      ['noon', 60, false],
      ['late', 0, true],
    ]);
  });

  it('takes the longest slot of a day for jumps, one session for both uses', () => {
    const slots = [slot(1, { id: 'short', minutes: 45 }), slot(1, { id: 'long', minutes: 90 })];
    const { value } = daysOfSeason({ weeks: [{ sessions: [60], phase: 'maintenance' }], plan: { slots } });
    expect(value[0]?.sessions.map((session) => [session.slot.id, session.contacts, session.lifts])).toEqual([
      ['long', 60, true],
    ]);
  });

  it('keeps lifts off a slot for jumps and jumps off a slot for lifts', () => {
    const { value } = daysOfSeason({
      weeks: [{ sessions: [60, 55] }],
      plan: { slots: [slot(1, { use: 'jumps' }), slot(3, { use: 'lifts' }), slot(5)] },
    });
    expect(inWords(value[0])).toBe('tue 60, thu lift, sat 55 lift');
  });
});

describe('matches', () => {
  it('take the smaller session near them', () => {
    const { value } = daysOfSeason({
      weeks: [{ sessions: [65, 60] }],
      plan: { slots: [slot(1), slot(6)], competitions: [match('2027-01-08')] },
    });
    expect(inWords(value[0])).toBe('tue 60 lift, sun 65 lift');
  });

  it('keep lifting off sore legs, the more the nearer they are', () => {
    const sparing = (prepare: Competition['prepare']): readonly unknown[] =>
      ([0, 1, 2, 3, 4] as const).map((weekday) => {
        const competitions = [{ ...match('2027-01-09'), prepare }];
        const plan = { slots: [slot(weekday)], competitions };
        const { value } = daysOfSeason({ weeks: [{ phase: 'maintenance' }], plan });
        return value[0]?.sessions.find((session) => session.lifts)?.spares;
      });
    expect(sparing('through')).toEqual([undefined, undefined, undefined, 'lowered', 'lowered']);
    expect(sparing('freshen')).toEqual([undefined, undefined, undefined, 'lowered', 'eve']);
    expect(sparing('peak')).toEqual([undefined, 'lowered', 'lowered', 'eve', 'eve']);
  });

  it('keep it off sore legs behind a peak of the same week too', () => {
    const competitions = [{ ...match('2027-01-05'), prepare: 'peak' as const }, match('2027-01-09')];
    const { value } = daysOfSeason({ weeks: [{ phase: 'maintenance' }], plan: { slots: [slot(4)], competitions } });
    expect(value[0]?.sessions.find((session) => session.lifts)?.spares).toBe('lowered');
  });

  it('leave their eve free of lifting that has another day, and say so', () => {
    const inWeek = (prepare: Competition['prepare']) =>
      daysOfSeason({
        weeks: [{ phase: 'power' }],
        plan: { slots: [slot(1), slot(4)], competitions: [{ ...match('2027-01-09'), prepare }] },
      }).value[0];
    expect(inWords(inWeek('through'))).toBe('tue lift, fri lift');
    expect(inWords(inWeek('freshen'))).toBe('tue lift');
    expect(inWeek('freshen')?.reasons).toContainEqual(
      expect.objectContaining({ about: 'lift-sessions', by: 'lift-event-gap' }),
    );
  });

  it('leave the eve of a peak free, also where a match that is trained through stands between', () => {
    const competitions: readonly Competition[] = [
      { ...match('2027-01-09'), prepare: 'through' },
      { ...match('2027-01-10'), prepare: 'peak' },
    ];
    const { value } = daysOfSeason({ weeks: [{ phase: 'power' }], plan: { slots: [slot(1), slot(4)], competitions } });
    expect(inWords(value[0])).toBe('tue lift');
  });

  it('leave one short lift where three crowd together', () => {
    const competitions = [match('2027-01-05'), match('2027-01-07'), match('2027-01-09')];
    const { value } = daysOfSeason({ weeks: [{ phase: 'strength' }], plan: { ...openEveryDay, competitions } });
    expect(value[0]?.sessions).toHaveLength(1);
    expect(value[0]?.sessions[0]).toMatchObject({ lifts: true, shortLift: true, contacts: 0 });
    expect(value[0]?.liftSessionsWanted).toBe(1);
    expect(value[0]?.reasons[0]).toMatchObject({ about: 'lift-sessions', by: 'congested-week' });
  });

  it('leave one short lift for a crowd that reaches into the next week', () => {
    const competitions = [match('2027-01-08'), match('2027-01-10'), match('2027-01-13')];
    const { value } = daysOfSeason({
      weeks: [{ phase: 'strength' }, { phase: 'strength' }],
      plan: { ...openEveryDay, competitions },
    });
    const within = value
      .flatMap((week) => week.sessions)
      .filter(({ day: date }) => day('2027-01-08') <= date && date <= day('2027-01-13'));
    expect(within.length).toBeLessThanOrEqual(1);
    expect(value.map((week) => week.sessions.length)).toEqual([1, 1]);
  });

  it('do not crowd together where the rule is waived', () => {
    const competitions = [match('2027-01-05'), match('2027-01-07'), match('2027-01-09')];
    const { value } = daysOfSeason({
      weeks: [{ phase: 'strength' }],
      plan: { ...openEveryDay, competitions, waivers: [waiver('congested-week', '2027-01-04', '2027-01-10')] },
    });
    expect(value[0]?.liftSessionsWanted).toBe(3);
    expect(value[0]?.sessions.some((session) => session.shortLift)).toBe(false);
  });

  it('get a primer on the last open day at least a day before', () => {
    const plan = { slots: [slot(3), slot(4)], competitions: [peak('2027-01-09')] };
    const { value, diagnostics } = daysOfSeason({
      weeks: [{ sessions: [20], primer: true, kind: 'taper', phase: 'power' }],
      plan,
    });
    const primer = sessionOn(value, '2027-01-08');
    expect(primer).toMatchObject({ contacts: 20, primer: true, dropsAllowed: false });
    expect(reasonOf(primer, 'day')).toMatchObject({ by: 'last-week', params: { event: 'Peak of 2027-01-09' } });
    expect(diagnostics).toEqual([]);
  });
});

describe('a young athlete', () => {
  const plan = {
    slots: [slot(1), slot(5), slot(6, { use: 'lifts' })],
    practice: [0, 2, 3, 4].map((weekday) => practice(weekday as 0, 20)),
  };
  const weeks = [{ sessions: [60, 60], phase: 'foundation' as const }];

  it('keeps a day free of everything in a week', () => {
    const born = { earliest: day('2013-01-01'), latest: day('2013-12-31') };
    const { value } = daysOfSeason({ weeks, plan, athlete: { born } });
    expect(inWords(value[0])).toBe('tue 60 lift, sat 60 lift');
  });

  it('moves what was handed out to keep it', () => {
    const published = { '2027-01-05': { jumps: true, lifts: false }, '2027-01-10': { jumps: false, lifts: true } };
    const season = {
      weeks: [{ sessions: [60], phase: 'maintenance' as const }],
      plan: {
        slots: [slot(1, { use: 'jumps' }), slot(5, { use: 'lifts' }), slot(6, { use: 'lifts' })],
        practice: [0, 2, 3, 4, 5].map((weekday) => practice(weekday as 0, 20)),
      },
    };
    const born = { earliest: day('2013-01-01'), latest: day('2013-12-31') };
    expect(inWords(daysOfSeason(season, published).value[0])).toBe('tue 60, sun lift');
    expect(inWords(daysOfSeason({ ...season, athlete: { born } }, published).value[0])).toBe('tue 60, sat lift');
  });
});

describe('pins', () => {
  const on = (from: string, until: string, ...days: (0 | 1 | 2 | 3 | 4 | 5 | 6)[]) =>
    pin(from, until, [{ kind: 'on', days }]);

  it('put the sessions of the week on the days they name', () => {
    const { value, diagnostics } = daysOfSeason({
      weeks: [{ sessions: [60] }, { sessions: [60] }],
      plan: { pins: [on('2027-01-11', '2027-01-17', 5)] },
    });
    expect(inWords(value[1])).toContain('sat 60');
    expect(reasonOf(sessionOn(value, '2027-01-16'), 'day')).toMatchObject({ by: 'pin', spans: [HERE] });
    expect(diagnostics).toEqual([]);
  });

  it('that name a day without a slot are an error', () => {
    const { diagnostics } = daysOfSeason({
      weeks: [{ sessions: [60] }],
      plan: { pins: [on('2027-01-04', '2027-01-10', 2)] },
    });
    expect(diagnostics).toMatchObject([
      { code: 'schedule/pinned-day-barred', severity: 'error', params: { day: 'wednesday', why: 'no-slot' } },
    ]);
  });

  it('that are met in other weeks are a warning, told once', () => {
    const competitions = [match('2027-01-08'), match('2027-01-15')];
    const weeks = [{ sessions: [60] }, { sessions: [60] }, { sessions: [60] }];
    const { diagnostics } = daysOfSeason({ weeks, plan: { competitions, pins: [on('2027-01-04', '2027-01-24', 3)] } });
    expect(diagnostics).toMatchObject([
      {
        code: 'schedule/pinned-day-barred',
        severity: 'warning',
        params: { why: 'event-gap', date: '2027-01-07', weeks: 2 },
      },
    ]);
  });

  it('on days too close hold what can be held', () => {
    const plan = { slots: [slot(1), slot(2), slot(3)], pins: [on('2027-01-04', '2027-01-10', 1, 2)] };
    const { value, diagnostics } = daysOfSeason({ weeks: [{ sessions: [60, 60] }], plan });
    expect(inWords(value[0])).toBe('tue 60 lift, thu 60 lift');
    expect(diagnostics).toMatchObject([
      { code: 'schedule/pinned-day-not-held', params: { day: 'wednesday', apart: 2 } },
    ]);
  });

  it('across the turn of a week too close hold the one and report the other', () => {
    const plan = {
      slots: [slot(0), slot(6)],
      pins: [on('2027-01-04', '2027-01-10', 6), on('2027-01-11', '2027-01-17', 0)],
    };
    const { value, diagnostics } = daysOfSeason({ weeks: [{ sessions: [60] }, { sessions: [60] }], plan });
    const jumping = value.flatMap((week) => week.sessions.filter((session) => session.contacts > 0));
    expect(jumping).toHaveLength(2);
    expect(diagnostics.map((one) => one.code)).toEqual(['schedule/pinned-day-not-held']);
  });

  it('that leave no session to a week are an error, not a week without jumps', () => {
    const pins = [on('2027-01-04', '2027-01-10', 6), on('2027-01-11', '2027-01-17', 0)];
    const plan = planOf(2, { slots: [slot(0), slot(6)], pins });
    const { diagnostics } = scheduleDays(plan, stages(plan, athlete('beginner', 50)));
    expect(diagnostics).toMatchObject([{ code: 'schedule/pinned-day-not-held', severity: 'error' }]);
  });

  it('to rest keep a day for lifts alone free too', () => {
    const plan = {
      slots: [slot(1, { use: 'lifts' }), slot(3, { use: 'lifts' })],
      pins: [pin('2027-01-05', '2027-01-05', [{ kind: 'rest' }])],
    };
    expect(inWords(daysOfSeason({ weeks: [{ phase: 'maintenance' }], plan }).value[0])).toBe('thu lift');
  });

  it('to rest keep the day free of lifts as well', () => {
    const { value } = daysOfSeason({
      weeks: [{ sessions: [60], phase: 'maintenance' }],
      plan: { pins: [pin('2027-01-05', '2027-01-05', [{ kind: 'rest' }])] },
    });
    expect(inWords(value[0])).toBe('thu 60 lift');
  });
});

describe('a programme', () => {
  const line = (kind: 'drill' | 'lift', id: string, sets: number, reps: number) => ({
    exercise: { kind, id },
    sets,
    reps,
    span: HERE,
  });
  const jump = line('drill', 'countermovement-jump', 4, 5);
  const hop = line('drill', 'countermovement-jump', 6, 5);
  const squat = line('lift', 'back-squat', 3, 5);
  const programme = (days: { day: 0 | 1 | 2 | 3 | 4 | 5 | 6; lines: readonly (typeof jump)[] }[]) => ({
    id: 'by-hand',
    weeks: [{ week: 1, days: days.map((one) => ({ ...one, span: HERE })) }],
    span: HERE,
  });
  const use = (of: ReturnType<typeof programme>) => ({
    programme: of,
    from: day('2027-01-13'),
    who: EVERYBODY,
    span: HERE,
  });

  it('sets the days of its weeks, and what each holds', () => {
    const uses = [
      use(
        programme([
          { day: 1, lines: [jump] },
          { day: 2, lines: [squat] },
          { day: 3, lines: [hop, squat] },
        ]),
      ),
    ];
    const weeks = [{ sessions: [60] }, { sessions: [30, 20] }, { sessions: [60] }];
    const { value, diagnostics } = daysOfSeason({ weeks, plan: { ...openEveryDay, uses } });
    expect(inWords(value[1])).toBe('tue 20, wed lift, thu 30 lift');
    expect(reasonOf(sessionOn(value, '2027-01-12'), 'day')).toMatchObject({
      by: 'programme',
      params: { programme: 'by-hand' },
    });
    expect(diagnostics).toEqual([]);
  });

  it('keeps the sessions of the weeks beside it at their distance', () => {
    const uses = [use(programme([{ day: 0, lines: [hop] }]))];
    const { value } = daysOfSeason({
      weeks: [{ sessions: [60] }, { sessions: [30] }],
      plan: { slots: [slot(0, { use: 'jumps' }), slot(6, { use: 'jumps' })], uses },
    });
    expect(weeksInWords(value)).toEqual(['mon 60', 'mon 30']);
  });

  it('is reported for a day without a slot', () => {
    const uses = [
      use(
        programme([
          { day: 1, lines: [hop] },
          { day: 2, lines: [jump] },
        ]),
      ),
    ];
    const { value, diagnostics } = daysOfSeason({ weeks: [{}, { sessions: [30] }], plan: { uses } });
    expect(inWords(value[1])).toBe('tue 30');
    expect(diagnostics).toMatchObject([
      { code: 'schedule/programme-day-without-slot', params: { programme: 'by-hand', day: 'wednesday' } },
    ]);
  });
});
