import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { jumps, loading, place, waiver } from './make-build.ts';
import type { WeekSpec } from './make-build.ts';

const RULE = 'session-rise';

describe('session-rise', () => {
  // Two sessions a week in the strength phase: used to 200 is 100 a session.
  const week = (contacts: number, change: Partial<WeekSpec> = {}) => ({ weeks: [loading(contacts, change)] });

  it('lets a session be three tenths bigger than the usual one', () => {
    expectSilent(RULE, week(129));
    expectSilent(RULE, week(130));
    expectFinding(RULE, week(131), 1);
  });

  it('lets a small session be fifteen contacts bigger', () => {
    expectSilent(RULE, { now: [20, 2], ...week(35) });
    expectFinding(RULE, { now: [20, 2], ...week(36) }, 1);
  });

  it.each(['taper', 'hold', 'deload'] as const)('holds the sessions of a %s under the usual one', (kind) => {
    expectSilent(RULE, week(75, { kind }));
    expectFinding(RULE, week(76, { kind }), 1);
  });

  it('lets an easy session be fifteen contacts where three quarters are less', () => {
    expectSilent(RULE, { now: [10, 2], ...week(15, { kind: 'deload' }) });
    expectFinding(RULE, { now: [10, 2], ...week(16, { kind: 'deload' }) }, 1);
    expectSilent(RULE, { now: [24, 2], ...week(18, { kind: 'deload' }) });
    expectFinding(RULE, { now: [24, 2], ...week(19, { kind: 'deload' }) }, 1);
  });

  it.each([
    ['deload', 'deload-depth'],
    ['taper', 'taper-cut'],
  ] as const)('holds the sessions of a %s like those of a loading week where %s is waived', (kind, rule) => {
    const plan = { waivers: [waiver(rule, 1)] };
    expectSilent(RULE, { plan, ...week(130, { kind }) });
    expectFinding(RULE, { plan, ...week(131, { kind }) }, 1);
    expectFinding(RULE, { plan: { waivers: [waiver(rule, 2)] }, ...week(76, { kind }) }, 1);
    expectFinding(RULE, { plan, ...week(76, { kind: 'hold' }) }, 1);
  });

  it('shares the usual week over the sessions that the phase has for the level', () => {
    const advanced = { levels: [{ is: 'advanced' as const, span: place(0) }] };
    // Three a week: used to 200 is 66 a session.
    expectSilent(RULE, { athlete: advanced, ...week(85, { phase: 'power', possible: 3 }) });
    expectFinding(RULE, { athlete: advanced, ...week(86, { phase: 'power', possible: 3 }) }, 1);
  });

  it('shares it over fewer where no loading week of the block has room for as many', () => {
    const advanced = { levels: [{ is: 'advanced' as const, span: place(0) }] };
    expectSilent(RULE, { athlete: advanced, ...week(130, { phase: 'power', possible: 2 }) });
    expectFinding(RULE, { athlete: advanced, ...week(131, { phase: 'power', possible: 2 }) }, 1);
  });

  it('leaves a primer alone', () => {
    expectSilent(RULE, { now: [2, 1], weeks: [{ kind: 'empty', sessions: [jumps(4, 20, { kind: 'primer' })] }] });
  });

  it('leaves no part of a contact over', () => {
    // 202 a week is 101 a session; three quarters are 75.75.
    expectSilent(RULE, { now: [101, 2], ...week(75, { kind: 'taper' }) });
    expectFinding(RULE, { now: [101, 2], ...week(76, { kind: 'taper' }) }, 1);
  });

  it('leaves the sessions of a signed stage to the stage', () => {
    const returning = [{ stage: 3, of: 4, since: 0, signed: 'physio', span: place(0) }];
    expectSilent(RULE, { now: [10, 2], athlete: { returning }, ...week(70, { kind: 'return' }) });
    expectFinding(RULE, { now: [10, 2], athlete: { returning }, ...week(70) }, 1);
  });
});
