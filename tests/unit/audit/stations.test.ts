import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { ALWAYS, HALL, KIT, lift, makeAthlete, place, slot, WRITTEN } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';
import type { Athlete } from '../../../src/plan/types.ts';

const RULE = 'stations';

/** So many athletes alike, who squat five sets of five at so many racks. */
function season(athletes: number, racks: number, minutes: number, change: Partial<Athlete> = {}): SeasonSpec {
  const kit = { ...KIT, counts: new Map([...KIT.counts, ['racks', racks] as const]) };
  const line = lift('back-squat', 5, 5, { restSeconds: 120 });
  const session = { on: 1, minutes, slot: slot(1, { place: { ...HALL, kit } }), lines: [line] } as const;
  const others = Array.from({ length: athletes }, (_, index) =>
    makeAthlete({ athlete: { ...change, id: `a${index}` } }),
  );
  return { athlete: change, plan: { athletes: others }, weeks: [{ sessions: [session] }] };
}

describe('stations', () => {
  // Eight minutes of warm-up; five sets of twenty seconds with two minutes between: 17 minutes and 40 seconds. With six
  // at a rack, five others take 20 + 25 seconds each, 105 seconds more than the rest, four times: 24 minutes and 40.
  it('has the waiting in the minutes', () => {
    expectSilent(RULE, season(6, 1, 24));
    expectSilent(RULE, season(6, 1, 23));
    expectFinding(RULE, season(6, 1, 22), 1);
    expect(found(RULE, season(6, 1, 22))[0]?.params).toMatchObject({ wanted: 24, sharing: 6, stations: 1 });
  });

  it('shares the athletes out over the stations', () => {
    expectSilent(RULE, season(6, 2, 17));
    expectFinding(RULE, season(12, 2, 22), 1);
  });

  it('counts those who are sure to do the same', () => {
    const spec = season(6, 1, 17);
    const others = spec.plan?.athletes?.map((one, index) => (index === 0 ? one : { ...one, group: 'blue' })) ?? [];
    expectSilent(RULE, { ...spec, plan: { athletes: others } });
    const limits = [{ range: ALWAYS, avoid: [], because: 'x', span: place(0) }];
    expectSilent(RULE, season(6, 1, 17, { limits }));
    const sport = { value: 'high-jump', origin: WRITTEN };
    const inSports = spec.plan?.athletes?.map((one, index) => (index === 0 ? one : { ...one, sport })) ?? [];
    expectSilent(RULE, { ...spec, plan: { athletes: inSports } });
    expectFinding(RULE, season(6, 1, 17, { sport }), 1);
  });

  it('counts nobody who is away or coming back for sure', () => {
    const away = [{ range: ALWAYS, because: 'x', trained: 'none', span: place(0) } as const];
    expectSilent(RULE, season(6, 1, 17, { away }));
    const returning = [{ stage: 2, of: 4, since: ALWAYS.from, signed: 'physio', span: place(0) }];
    expectSilent(RULE, season(6, 1, 17, { returning }));
  });

  it("counts no line that is the athlete's own", () => {
    const spec = season(6, 1, 17);
    const own = spec.weeks.map((week) => ({
      ...week,
      sessions: (week.sessions ?? []).map((session) => ({
        ...session,
        lines: (session.lines ?? []).map((line) => ({ ...line, own: true })),
      })),
    }));
    expectSilent(RULE, { ...spec, weeks: own });
  });
});
