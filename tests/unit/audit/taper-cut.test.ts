import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { changed, competition, day, drill, EVERYBODY, jumps, loading, place } from './make-build.ts';
import type { WeekSpec } from './make-build.ts';
import type { Plan } from '../../../src/plan/types.ts';

const RULE = 'taper-cut';

const taper = (contacts: number): WeekSpec => loading(contacts, { kind: 'taper', phase: 'power' });
const empty: WeekSpec = { kind: 'empty', phase: 'closed' };

function pinned(week: number, contactsAWeek: number): Pick<Plan, 'pins'> {
  const range = { from: day(week, 0), until: day(week, 6) };
  const effects = [{ kind: 'contacts', contactsAWeek }] as const;
  return { pins: [{ range, who: EVERYBODY, effects, because: 'x', span: place(44) }] };
}

describe('taper-cut', () => {
  // Bosquet 2007, Med Sci Sports Exerc 39(8):1358–1365: two weeks with 41 to 60 % less volume.
  it('cuts the first of two weeks by two fifths and the last by half', () => {
    expectSilent(RULE, { weeks: [taper(120), taper(100)] });
    expectFinding(RULE, { weeks: [taper(121), taper(100)] }, 1);
    expectFinding(RULE, { weeks: [taper(120), taper(101)] }, 2);
  });

  it('cuts a single week by half', () => {
    const plan = { competitions: [competition(day(2, 5), 'peak')] };
    expectSilent(RULE, { plan, weeks: [loading(200), taper(100), loading(100)] });
    expectFinding(RULE, { plan, weeks: [loading(200), taper(101), loading(100)] }, 2);
  });

  it('knows the first week by the training that follows it, even where the last is spent on coming back', () => {
    const plan = { competitions: [competition(day(2, 5), 'peak')] };
    expectSilent(RULE, { plan, weeks: [taper(120), loading(50, { kind: 'return' })] });
    expectFinding(RULE, { plan, weeks: [taper(121), loading(50, { kind: 'return' })] }, 1);
  });

  it('is not split by an empty week', () => {
    const trained = {
      range: { from: day(2, 0), until: day(2, 6) },
      because: 'x',
      trained: 'full',
      who: EVERYBODY,
      span: place(0),
    } as const;
    expectSilent(RULE, { plan: { closures: [trained] }, weeks: [taper(120), empty, taper(100)] });
  });

  it('says too deep a cut where the coach made it', () => {
    expectSilent(RULE, { weeks: [taper(79)] });
    expectSilent(RULE, { plan: pinned(1, 80), weeks: [taper(80)] });
    expectFinding(RULE, { plan: pinned(1, 79), weeks: [taper(79)] }, 1);
    expect(found(RULE, { plan: pinned(1, 79), weeks: [taper(79)] })[0]?.span).toEqual(place(44));
  });

  it('keeps the tiers of the weeks before', () => {
    const before = { phase: 'power', sessions: [{ on: 1, lines: [drill('tuck-jump', 4, 5)] }] } as const;
    const kept = { ...taper(0), sessions: [{ on: 1, lines: [drill('tuck-jump', 1, 20)] }] } as const;
    const lost = { ...taper(0), sessions: [jumps(1, 20)] };
    expectSilent(RULE, { weeks: [before, kept] });
    expectFinding(RULE, { weeks: [before, lost] }, 2);
    expect(found(RULE, { weeks: [before, lost] }).map((one) => one.params['breach'])).toEqual(['tier']);
  });

  it('asks for no hard drills where a match leaves no room behind them', () => {
    const before = { phase: 'power', sessions: [{ on: 1, lines: [drill('tuck-jump', 4, 5)] }] } as const;
    const lost = { ...taper(0), sessions: [jumps(1, 20)] };
    expectSilent(RULE, { weeks: [before, lost], plan: { competitions: [competition(day(2, 3), 'peak')] } });
  });

  describe('the sessions of the last week', () => {
    const taperOf = (...sessions: readonly number[]): WeekSpec => ({
      kind: 'taper',
      phase: 'power',
      sessions: sessions.map((contacts, index) => jumps(index === 0 ? 1 : 3, contacts)),
    });
    const sessionsFound = (...weeks: readonly WeekSpec[]): readonly string[] =>
      found(RULE, { now: [200, 2], weeks: [...weeks] }).flatMap(({ params, message }) =>
        params['breach'] === 'session' ? [message] : [],
      );

    it('are at most a quarter over the largest of the week before, in whole steps', () => {
      expectSilent(RULE, { weeks: [taperOf(50, 45), taperOf(65)] });
      expectFinding(RULE, { weeks: [taperOf(50, 45), taperOf(66)] }, 2);
      expectSilent(RULE, { weeks: [taperOf(70, 50), taperOf(90)] });
    });

    it('are told with both numbers, at the line', () => {
      expect(sessionsFound(taperOf(30, 30), taperOf(41))).toEqual([
        'ada: the taper week of 2027-01-11 has a session of 41 contacts, and at most 40 are wanted behind a taper week whose largest had 30',
      ]);
      const line = drill('small-jump', 1, 50, { origin: { kind: 'written', span: place(55) } });
      const byHand = { ...taperOf(0), sessions: [{ on: 1, lines: [line] }] } as const;
      expect(found(RULE, { weeks: [taperOf(30, 30), byHand] })[0]?.span).toEqual(place(55));
    });

    it('may be small whatever was before, and primers are none of it', () => {
      expect(sessionsFound(taperOf(5), taperOf(15))).toEqual([]);
      expect(sessionsFound(taperOf(5), taperOf(16))).toHaveLength(1);
      const primer: WeekSpec = { kind: 'taper', phase: 'power', sessions: [jumps(1, 20, { kind: 'primer' })] };
      expect(sessionsFound(taperOf(10), primer)).toEqual([]);
    });

    it('look behind a closed week and not behind another kind', () => {
      expect(sessionsFound(taperOf(30), empty, taperOf(60))).toHaveLength(1);
      expect(sessionsFound(taperOf(30), loading(50), taperOf(60))).toEqual([]);
      expect(sessionsFound(loading(30), taperOf(60))).toEqual([]);
    });

    it('go by what a plan changes', () => {
      const weeks = [taperOf(50, 45), taperOf(55)];
      expectSilent(RULE, { weeks });
      expectFinding(RULE, { weeks, plan: changed(RULE, { 'session-over': 0 }) }, 2);
    });
  });

  it('leaves no part of a contact over', () => {
    expectSilent(RULE, { now: [201, 1], weeks: [taper(120), taper(100)] });
    expectFinding(RULE, { now: [201, 1], weeks: [taper(121), taper(100)] }, 1);
    expectFinding(RULE, { now: [201, 1], weeks: [taper(120), taper(101)] }, 2);
  });

  it('asks for no hard drills of somebody with a limit or on a signed stage', () => {
    const before = { phase: 'power', adapted: 200, sessions: [{ on: 1, lines: [drill('tuck-jump', 4, 5)] }] } as const;
    const weeks = [before, { ...taper(0), sessions: [jumps(1, 20)] }];
    const limits = [{ range: { from: day(2, 0), until: day(2, 0) }, avoid: [], because: 'x', span: place(0) }];
    expectSilent(RULE, { weeks, athlete: { limits } });
    const returning = [{ stage: 3, of: 4, since: day(1, 0), signed: 'physio', span: place(0) }];
    expectSilent(RULE, { weeks, athlete: { returning } });
  });
});
