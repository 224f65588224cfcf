import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { ALWAYS, changed, drill, makeBuild, place, WRITTEN } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';
import type { Avoid } from '../../../src/plan/types.ts';

const RULE = 'direction-mix';

/** Two sessions, and so many contacts in each direction. */
function week(vertical: number, horizontal: number, lateral: number): SeasonSpec {
  const first = { on: 1, lines: [drill('small-jump', 1, vertical)] } as const;
  const second = { on: 3, lines: [drill('half-long-jump', 1, horizontal), drill('skater-step', 1, lateral)] } as const;
  return { weeks: [{ phase: 'strength', sessions: [first, second] }] };
}

describe('direction-mix', () => {
  // In strength 50 / 30 / 20, ten points more or less.
  it('comes within ten points of each direction', () => {
    expectSilent(RULE, week(50, 30, 20));
    expectSilent(RULE, week(60, 20, 20));
    expectFinding(RULE, week(61, 19, 20), 1);
    expect(found(RULE, week(61, 19, 20)).map((one) => one.params['direction'])).toEqual(['vertical', 'horizontal']);
    expectSilent(RULE, week(40, 30, 30));
    expectFinding(RULE, week(40, 29, 31), 1);
  });

  it("takes the sport's directions in place of the phase's", () => {
    const { plan } = makeBuild(week(50, 30, 20));
    const season = { ...plan.season, directions: { vertical: 30, horizontal: 70, lateral: 0 } };
    expectSilent(RULE, { ...week(30, 70, 0), plan: { season } });
    expectFinding(RULE, { ...week(50, 30, 20), plan: { season } }, 1);
  });

  it("takes those of the athlete's own sport before them", () => {
    const { plan } = makeBuild(week(50, 30, 20));
    const season = { ...plan.season, directions: { vertical: 30, horizontal: 70, lateral: 0 } };
    const sport = (value: string) => ({ sport: { value, origin: WRITTEN } });
    expectSilent(RULE, { ...week(65, 35, 0), plan: { season }, athlete: sport('high-jump') });
    expectFinding(RULE, { ...week(30, 70, 0), plan: { season }, athlete: sport('high-jump') }, 1);
    // Those of strength, as the general profile has none of its own.
    expectSilent(RULE, { ...week(50, 30, 20), plan: { season }, athlete: sport('general') });
  });

  it('looks at weeks with two sessions or more', () => {
    const sessions = [{ on: 1, lines: [drill('small-jump', 1, 100)] } as const];
    expectSilent(RULE, { weeks: [{ phase: 'strength', sessions }] });
    expectFinding(RULE, { plan: changed(RULE, { sessions: 1 }), weeks: [{ phase: 'strength', sessions }] }, 1);
  });

  it('is silent where a limit forbids a direction, and while a stage is signed', () => {
    const limit = (avoid: Avoid) => [{ range: ALWAYS, avoid: [avoid], because: 'x', span: place(0) }];
    expectSilent(RULE, { ...week(70, 30, 0), athlete: { limits: limit({ kind: 'direction', id: 'lateral' }) } });
    expectFinding(RULE, { ...week(70, 30, 0), athlete: { limits: limit({ kind: 'drops' }) } }, 1);
    const returning = [{ stage: 1, of: 4, since: ALWAYS.from, signed: 'physio', span: place(0) }];
    expectSilent(RULE, { ...week(70, 30, 0), athlete: { returning } });
  });
});
