// A plan whose athletes all have one sport of their own is the plan of a season of that sport: the same weeks, days and
// findings, byte for byte, whatever the season's own sport is.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BuiltAthlete } from '../../src/build/types.ts';
import { compilePlan } from '../../src/compile.ts';
import type { Athlete, Plan } from '../../src/plan/types.ts';
import { HERE } from '../unit/schedule/make-plan.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { inSport, randomPlan, SPORTS, withRecord } from './random-plan.ts';

const PLANS = plansFor(30);

const sport = fc.constantFrom(...SPORTS);

/** With others beside them, so that there are squads. */
const squads = fc.oneof(randomPlan, withRecord(randomPlan)).map((plan): Plan => ({
  ...plan,
  athletes: plan.athletes.flatMap((one) => [one, { ...one, id: `${one.id}-too`, name: `${one.name} too` }]),
}));

function withoutSport(one: Athlete): Athlete {
  const { sport: _, ...athlete } = one;
  return athlete;
}

const ofSeason = (plan: Plan, id: string): Plan => ({
  ...plan,
  season: inSport(plan.season, id),
  athletes: plan.athletes.map(withoutSport),
});

const ofAthletes = (plan: Plan, id: string, season: string): Plan => ({
  ...plan,
  season: inSport(plan.season, season),
  athletes: plan.athletes.map((one) => ({ ...one, sport: { value: id, origin: { kind: 'written', span: HERE } } })),
});

const built = (plan: Plan): readonly string[] =>
  [...compilePlan(plan).athletes].map(({ weeks, days, diagnostics, blocked }: BuiltAthlete) =>
    JSON.stringify({ weeks, days, diagnostics, blocked: [...blocked] }),
  );

describe('one sport for everybody', { timeout: PATIENCE }, () => {
  it('is the same written for the season or for each of them', () => {
    let others = 0;
    fc.assert(
      fc.property(squads, sport, sport, (plan, id, season) => {
        const alike = built(ofSeason(plan, id));
        expect(built(ofAthletes(plan, id, season))).toEqual(alike);
        others += JSON.stringify(built(ofSeason(plan, season))) === JSON.stringify(alike) ? 0 : 1;
      }),
      { numRuns: PLANS },
    );
    tell(`one sport: ${PLANS} plans, ${others} of which would be others in the season's own sport`);
    expect(others).toBeGreaterThan(PLANS / 4);
  });
});
