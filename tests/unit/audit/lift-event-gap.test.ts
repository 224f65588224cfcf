import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { changed, competition, day, heavy, lift, place } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';
import type { BuiltLine } from '../../../src/build/types.ts';
import type { Competition } from '../../../src/plan/types.ts';
import type { Weekday } from '../../../src/util/days.ts';

const RULE = 'lift-event-gap';

describe('lift-event-gap', () => {
  const season = (on: Weekday, prepare: Competition['prepare']) => ({
    plan: { competitions: [competition(day(1, 6), prepare)] },
    weeks: [{ sessions: [heavy(on)] }],
  });

  it('keeps four days free of heavy leg work before a peak', () => {
    expectSilent(RULE, season(0, 'peak'));
    expectSilent(RULE, season(1, 'peak'));
    expectFinding(RULE, season(2, 'peak'), 1);
  });

  it.each(['freshen', 'through'] as const)('keeps two days free of it before a match to %s', (prepare) => {
    expectSilent(RULE, season(2, prepare));
    expectSilent(RULE, season(3, prepare));
    expectFinding(RULE, season(4, prepare), 1);
  });

  it('keeps the day itself free of it', () => {
    expectFinding(RULE, season(6, 'through'), 1);
  });

  it('lets light lifting stand', () => {
    const light = { on: 5, lines: [lift('back-squat', 2, 5, { percent: 60 })] } as const;
    expectSilent(RULE, { ...season(5, 'peak'), weeks: [{ sessions: [light] }] });
  });
});

describe('leg work that makes sore', () => {
  /** A competition on the first Sunday, and lifting so many days before it. */
  const lifting = (days: number, prepare: Competition['prepare'], ...lines: readonly BuiltLine[]): SeasonSpec => ({
    plan: { competitions: [competition(day(1, 6), prepare)] },
    weeks: [{ sessions: [{ on: WEEKDAYS[6 - days] ?? 0, lines }] }],
  });
  const of = (id: string, change: Partial<BuiltLine> = {}): BuiltLine => lift(id, 3, 8, { reserve: 3, ...change });

  it.each([
    ['peak', 4],
    ['freshen', 2],
    ['through', 2],
  ] as const)('has no lowering for the hamstrings in the days before a competition to %s', (prepare, days) => {
    expectFinding(RULE, lifting(days, prepare, of('nordic-hamstring')), 1);
    expectFinding(RULE, lifting(0, prepare, of('nordic-hamstring')), 1);
    expectSilent(RULE, lifting(days + 1, prepare, of('nordic-hamstring')));
  });

  describe.each([
    ['peak', 2],
    ['freshen', 1],
    ['through', 0],
  ] as const)('on the eve of a competition to %s', (prepare, days) => {
    it.each(['romanian-deadlift', 'split-squat', 'calf-raise', 'sliding-leg-curl', 'good-morning'])(
      'has no %s',
      (id) => {
        expectFinding(RULE, lifting(days, prepare, of(id)), 1);
        expectFinding(RULE, lifting(days, prepare, of('back-squat'), of(id)), 1);
      },
    );

    it('has one light main lift and no other', () => {
      const pull = of('power-clean');
      expectSilent(RULE, lifting(days, prepare, pull, of('back-squat'), of('back-squat'), of('bench-press')));
      expectSilent(RULE, lifting(days, prepare, of('trap-bar-deadlift')));
      expectFinding(RULE, lifting(days, prepare, of('back-squat'), of('trap-bar-deadlift')), 1);
    });

    it('minds no warm-up', () => {
      expectSilent(RULE, lifting(days, prepare, of('split-squat', { part: 'prepare' })));
    });

    it('ends the day before', () => {
      expectSilent(RULE, lifting(days + 1, prepare, of('romanian-deadlift'), of('split-squat')));
    });
  });

  it('says which lifts are too much, at the first that is written', () => {
    const line = of('split-squat', { origin: { kind: 'written', span: place(99) } });
    const [said, ...more] = found(RULE, lifting(1, 'freshen', of('back-squat'), line, of('nordic-hamstring')));
    expect(said?.message).toBe(
      'ada: split-squat, nordic-hamstring on 2027-01-09, 1 day before Cup: on its eve the legs have one light main lift and no more',
    );
    expect([said?.span, more]).toEqual([place(99), []]);
  });

  it('says the load besides', () => {
    const heavyLine = lift('back-squat', 1, 2, { percent: 85 });
    expect(found(RULE, lifting(2, 'through', heavyLine, of('nordic-hamstring'))).map(({ message }) => message)).toEqual(
      [
        'ada: heavy leg work on 2027-01-08, 2 days before Cup, and the 2 days before it stay free of it',
        'ada: nordic-hamstring on 2027-01-08, 2 days before Cup, and the 2 days before it stay free of what the hamstrings lower',
      ],
    );
  });

  it('counts the eve of a peak behind a match that is nearer', () => {
    const spec = lifting(2, 'peak', of('romanian-deadlift'));
    const plan = { competitions: [competition(day(1, 5), 'through'), competition(day(1, 6), 'peak')] };
    expectFinding(RULE, { ...spec, plan }, 1);
    expectSilent(RULE, { ...spec, plan: { competitions: [competition(day(1, 5), 'through')] } });
  });

  it('goes by the days of the rule where a plan changes them', () => {
    const shorter = (peak: number): SeasonSpec => {
      const spec = lifting(2, 'peak', of('split-squat'));
      return { ...spec, plan: { ...spec.plan, ...changed(RULE, { peak }) } };
    };
    expectFinding(RULE, shorter(2), 1);
    expectSilent(RULE, shorter(1));
  });
});

const WEEKDAYS = [0, 1, 2, 3, 4, 5, 6] as const;
