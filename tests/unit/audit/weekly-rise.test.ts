import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { changed, day, EVERYBODY, jumps, loading, makeBuild, place, waiver } from './make-build.ts';
import { auditAthlete } from '../../../src/audit/audit.ts';

const RULE = 'weekly-rise';

describe('weekly-rise', () => {
  it('lets a week rise by a tenth', () => {
    expectSilent(RULE, { now: [100, 2], weeks: [loading(219)] });
    expectSilent(RULE, { now: [100, 2], weeks: [loading(220)] });
    expectFinding(RULE, { now: [100, 2], weeks: [loading(221)] }, 1);
  });

  it('lets a small week rise by ten contacts', () => {
    expectSilent(RULE, { now: [20, 2], weeks: [loading(50)] });
    expectFinding(RULE, { now: [20, 2], weeks: [loading(51)] }, 1);
  });

  it('is graver over thirty per cent', () => {
    expectFinding(RULE, { now: [100, 2], weeks: [loading(260)] }, 1, 'warning');
    expectFinding(RULE, { now: [100, 2], weeks: [loading(261)] }, 1, 'error');
  });

  it('goes by what the weeks before were, not by what the build says of them', () => {
    const weeks = [loading(200), loading(220), loading(243, { adaptedBefore: 230 })];
    expect(found(RULE, { weeks })[0]?.params).toMatchObject({ found: 243, most: 242, adapted: 220 });
  });

  it('lets the usual volume fall after a small loading week', () => {
    // (200 + 2 x 50) / 3 = 100, of which 110 is a tenth more.
    expectSilent(RULE, { weeks: [loading(50), loading(110)] });
    expectFinding(RULE, { weeks: [loading(50), loading(111)] }, 2);
  });

  it('keeps the usual volume through easy weeks', () => {
    const weeks = (contacts: number) => [loading(220), loading(120, { kind: 'deload' }), loading(contacts)];
    expectSilent(RULE, { weeks: weeks(242) });
    expectFinding(RULE, { weeks: weeks(243) }, 3);
  });

  it.each([
    ['none', 198],
    ['some', 198],
    ['full', 220],
  ] as const)('counts one empty week trained %s', (trained, most) => {
    const closures = [
      { range: { from: day(1, 0), until: day(1, 6) }, because: 'x', trained, who: EVERYBODY, span: place(0) },
    ];
    const weeks = (contacts: number) => [{ kind: 'empty', phase: 'closed' } as const, loading(contacts)];
    expectSilent(RULE, { plan: { closures }, weeks: weeks(most) });
    expectFinding(RULE, { plan: { closures }, weeks: weeks(most + 1) }, 2);
  });

  it('takes a tenth off for a week of transition', () => {
    const weeks = (contacts: number) => [{ kind: 'transition', phase: 'transition' } as const, loading(contacts)];
    expectSilent(RULE, { weeks: weeks(198) });
    expectFinding(RULE, { weeks: weeks(199) }, 2);
  });

  it('takes a stricter number from the plan, and leaves the other as it is', () => {
    const plan = changed(RULE, { most: 8 });
    expectSilent(RULE, { plan, weeks: [loading(216)] });
    expectFinding(RULE, { plan, weeks: [loading(217)] }, 1);
    expectSilent(RULE, { plan, now: [20, 2], weeks: [loading(50)] });
  });

  it('says what a published programme does', () => {
    // Miller 2006, J Sports Sci Med 5:459–465, from memory: 90, 120, 120, 140, 140, 120 contacts a session, two a week.
    const weeks = [90, 120, 120, 140, 140, 120].map((contacts) => ({
      sessions: [jumps(1, contacts), jumps(3, contacts)],
    }));
    const said = found(RULE, { now: [90, 2], weeks });
    // The second week rises by a third and isn't written, so the ones behind it still rise from 180.
    expect(said.map((one) => [one.week, one.severity])).toEqual([2, 3, 4, 5, 6].map((week) => [day(week, 0), 'error']));
    const waived = found(RULE, { now: [90, 2], weeks, plan: { waivers: [waiver(RULE, 2)] } });
    expect(waived.map((one) => [one.week, one.severity])).toEqual([[day(4, 0), 'warning']]);
  });

  it('counts a week that rises too far to be written as one that nobody got used to', () => {
    const weeks = (contacts: number) => [loading(261), loading(contacts)];
    expect(found(RULE, { weeks: weeks(220) }).map((one) => one.week)).toEqual([day(1, 0)]);
    expect(found(RULE, { weeks: weeks(221) }).map((one) => one.week)).toEqual([day(1, 0), day(2, 0)]);
  });

  it('stays silent through the worked seasons', () => {
    // Two seasons that go up as fast as the rules let them: a beginner from 50 x 2, an advanced athlete from 100 x 2.
    const beginner = [110, 110, 115, 65, 125, 135, 140, 80, 150, 160, 160, 95, 160, 160, 95, 60];
    const advanced = [170, 170, 180, 105, 195, 210, 230, 135, 250, 275, 300, 180, 330, 360, 215, 90];
    for (const [now, contacts] of [
      [50, beginner],
      [100, advanced],
    ] as const) {
      const weeks = contacts.map((one, index) =>
        loading(one, { kind: index >= 14 ? 'taper' : index % 4 === 3 && index < 12 ? 'deload' : 'load' }),
      );
      expectSilent(RULE, { now: [now, 2], weeks });
    }
  });

  it('finds nothing in weeks that are over, and keeps what was done in mind', () => {
    const weeks = [loading(260, { done: true, adapted: 260 }), loading(286), loading(315)];
    expect(found(RULE, { weeks }).map((one) => one.week)).toEqual([day(3, 0)]);
  });

  it('takes nobody for used to a leap that was done', () => {
    const weeks = [loading(400, { done: true, adapted: 260 }), loading(286), loading(440)];
    expect(found(RULE, { weeks }).map((one) => one.week)).toEqual([day(3, 0)]);
  });

  it('frees only the weeks of a waiver', () => {
    const { plan, built, weeks } = makeBuild({
      weeks: [loading(300), loading(400)],
      plan: { waivers: [waiver(RULE, 1)] },
    });
    const said = auditAthlete(plan, built, weeks).diagnostics.filter((one) => one.rule === RULE);
    expect(said.map((one) => one.week)).toEqual([day(2, 0)]);
  });

  it('leaves no part of a contact over', () => {
    expectSilent(RULE, { now: [205, 1], weeks: [loading(225)] });
    expectFinding(RULE, { now: [205, 1], weeks: [loading(226)] }, 1);
  });

  it.each(['deload', 'taper', 'hold'] as const)('holds a week that only calls itself a %s', (kind) => {
    expectSilent(RULE, { weeks: [loading(220, { kind })] });
    expectFinding(RULE, { weeks: [loading(221, { kind })] }, 1, 'warning');
    expectFinding(RULE, { weeks: [loading(261, { kind })] }, 1, 'error');
  });

  it('leaves ladders and signed stages to their own rules', () => {
    const empty = { kind: 'empty', phase: 'closed' } as const;
    expectSilent(RULE, { weeks: [empty, empty, loading(400, { kind: 'return' })] });
    const returning = [{ stage: 2, of: 4, since: day(1, 0), signed: 'physio', span: place(0) }];
    expectSilent(RULE, { athlete: { returning }, weeks: [loading(400, { kind: 'return' })] });
    expectFinding(RULE, { athlete: { returning }, weeks: [loading(400)] }, 1, 'error');
  });

  it('holds a week that only calls itself a return', () => {
    expectSilent(RULE, { weeks: [loading(220, { kind: 'return' })] });
    expectFinding(RULE, { weeks: [loading(221, { kind: 'return' })] }, 1);
  });
});
