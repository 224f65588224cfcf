import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { ALWAYS, competition, day, EVERYBODY, jumps, place, slot } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';

const RULE = 'last-week';
const peak = competition(day(1, 5), 'peak', { span: place(55) });

describe('last-week', () => {
  const season = (change: Partial<SeasonSpec> = {}): SeasonSpec => ({
    plan: { competitions: [peak] },
    weeks: [{ kind: 'taper', phase: 'power' }],
    ...change,
  });

  it('wants a session in the week of a peak', () => {
    expectFinding(RULE, season(), 1);
    expectSilent(RULE, season({ weeks: [{ kind: 'taper', sessions: [jumps(1, 50)] }] }));
  });

  it('takes a primer for a session', () => {
    expectSilent(RULE, season({ weeks: [{ kind: 'empty', sessions: [jumps(4, 20, { kind: 'primer' })] }] }));
  });

  it('says which competition', () => {
    expect(found(RULE, season())[0]?.related[0]?.span).toEqual(place(55));
  });

  it('is about peaks alone', () => {
    expectSilent(RULE, season({ plan: { competitions: [competition(day(1, 5), 'freshen')] } }));
  });

  it('asks for nothing where no day is open', () => {
    const nowhere: Partial<SeasonSpec>[] = [
      { plan: { competitions: [peak], slots: [slot(6)] } },
      { plan: { competitions: [peak], slots: [slot(1, { use: 'lifts' })] } },
      { athlete: { away: [{ range: ALWAYS, because: 'x', trained: 'none', span: place(0) }] } },
      {
        plan: {
          competitions: [peak],
          closures: [{ range: ALWAYS, because: 'x', trained: 'none', who: EVERYBODY, span: place(0) }],
        },
      },
      {
        plan: {
          competitions: [peak],
          pins: [{ range: ALWAYS, who: EVERYBODY, effects: [{ kind: 'rest' }], because: 'x', span: place(0) }],
        },
      },
      { athlete: { limits: [{ range: ALWAYS, avoid: [], contactsASession: 0, because: 'x', span: place(0) }] } },
    ];
    for (const change of nowhere) expectSilent(RULE, season(change));
  });

  it('is not put off by what bars somebody else, somewhere else or something else', () => {
    const others = { kind: 'some', squads: ['others'], athletes: [] } as const;
    const closure = { range: ALWAYS, because: 'x', trained: 'none', span: place(0) } as const;
    const pin = { range: ALWAYS, who: EVERYBODY, because: 'x', span: place(0) } as const;
    const plans: NonNullable<SeasonSpec['plan']>[] = [
      { closures: [{ ...closure, who: others }] },
      { closures: [{ ...closure, who: EVERYBODY, places: ['track'] }] },
      { pins: [{ ...pin, effects: [{ kind: 'week-kind', weekKind: 'taper' }] }] },
    ];
    for (const plan of plans) expectFinding(RULE, season({ plan: { competitions: [peak], ...plan } }), 1);
  });

  it('asks for nothing on a day that another rule keeps free', () => {
    const tuesday = [slot(1)];
    const match = competition(day(1, 0), 'through');
    expectFinding(RULE, season({ plan: { competitions: [peak], slots: tuesday } }), 1);
    expectSilent(RULE, season({ plan: { competitions: [match, peak], slots: tuesday } }));
    const monday = { competitions: [peak], slots: [slot(0)] };
    const before = { sessions: [jumps(6, 40)] };
    expectSilent(RULE, {
      plan: { ...monday, competitions: [{ ...peak, range: { from: day(2, 5), until: day(2, 5) } }] },
      weeks: [before, { kind: 'taper' }],
    });
  });
});
