// Stage 3 three ways: every placing of easy weeks tried, a mixed-integer solver on longer runs, and all kinds of a season,
// its ladders and tapers too, laid anew from their description.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import { layGrid } from '../../../src/schedule/grid.ts';
import { planPhases } from '../../../src/schedule/phases.ts';
import { chooseWeekKinds } from '../../../src/schedule/week-kinds.ts';
import { placeDeloads } from '../../../src/schedule/week-kinds/deloads.ts';
import type { LoadableWeek } from '../../../src/schedule/week-kinds/deloads.ts';
import { randomPlan } from '../../property/random-plan.ts';
import { propertySeed } from '../../tools/seed.ts';
import { loadSolver } from '../contacts/integer-program.ts';
import { oraclePlans, timed, tellRatio } from '../oracle-plans.ts';
import { bestOfAllPlacings, worthOf } from './every-placing.ts';
import type { RunWeek } from './every-placing.ts';
import { solvePlacing } from './placing-program.ts';
import { plainKinds } from './plain-kinds.ts';

const PLANS = oraclePlans(30);
const PATIENCE = 600_000;

/** Mostly as the rule has it; in some runs other numbers hold from a week on, or none. */
const runOf = (least: number, most: number): fc.Arbitrary<readonly RunWeek[]> =>
  fc
    .record({
      weeks: fc.array(
        fc.record({
          test: fc.nat({ max: 5 }).map((one) => one === 0),
          last: fc.nat({ max: 4 }).map((one) => one === 0),
          pinned: fc.option(fc.constantFrom('easy' as const, 'load' as const), { nil: undefined, freq: 12 }),
        }),
        { minLength: least, maxLength: most },
      ),
      pins: fc.boolean(),
      from: fc.nat({ max: 3 * most }),
      changed: fc.record({ most: fc.integer({ min: 1, max: 5 }), least: fc.integer({ min: 0, max: 3 }) }),
    })
    .map(({ weeks, pins, from, changed }) =>
      weeks.map(({ pinned, ...week }, at) => ({
        ...week,
        ...(pinned === undefined || !pins ? {} : { pinned }),
        ...(at >= from ? changed : { most: 3, least: 2 }),
      })),
    );

const asked = (run: readonly RunWeek[]): readonly LoadableWeek[] =>
  run.map(({ test, last, pinned, most, least }) => ({
    tests: test ? 1 : 0,
    endsPhase: last,
    ...(pinned === undefined ? {} : { pinned: pinned === 'easy' }),
    mostInRow: most,
    leastBetween: least,
  }));

const placed = (run: readonly RunWeek[]): readonly number[] => [...placeDeloads(asked(run))].toSorted((a, b) => a - b);

describe('easy weeks', { timeout: PATIENCE }, () => {
  it('are the best there are, against every placing', () => {
    let broken = 0;
    fc.assert(
      fc.property(runOf(1, 13), (run) => {
        const best = bestOfAllPlacings(run);
        if (worthOf(run, best)[0] > 0) broken += 1;
        expect(placed(run)).toEqual(best);
      }),
      { numRuns: 10 * PLANS },
    );
    expect(broken).toBeGreaterThan(0);
  });

  it(`are as good as a solver's, in ${PLANS} runs of up to 40 weeks`, async () => {
    const solve = await loadSolver();
    const spent = { solver: 0, ours: 0 };
    let broken = 0;
    for (const run of fc.sample(runOf(8, 40), { numRuns: PLANS, seed: propertySeed() })) {
      const ours = timed(() => placed(run));
      const solver = timed(() => solvePlacing(solve, run, ours.value));
      spent.ours += ours.took;
      spent.solver += solver.took;
      expect(worthOf(run, ours.value)).toEqual(solver.value.worth);
      expect(solver.value.later).toBeUndefined();
      if (solver.value.worth[0] > 0) broken += 1;
    }
    tellRatio('easy weeks', `${PLANS} runs; equal in all levels, ${broken} with a rhythm no placing keeps`, spent);
    expect(broken).toBeGreaterThan(0);
  });

  it('would be found by the solver where they aren’t the latest', async () => {
    const solve = await loadSolver();
    const run: readonly RunWeek[] = Array.from({ length: 6 }, () => ({ test: false, last: false, most: 3, least: 2 }));
    expect(placed(run)).toEqual([3]);
    expect(solvePlacing(solve, run, [2]).later).toEqual([3]);
  });
});

describe('the kinds of a season', { timeout: PATIENCE }, () => {
  it('are laid the same from their description', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(randomPlan, (plan) => {
        for (const athlete of plan.athletes) {
          const book = ruleBook(plan, athlete);
          const grid = layGrid(plan, athlete, book);
          const phases = planPhases(plan, grid);
          const kinds = chooseWeekKinds(plan, book, grid, phases).value;
          const plain = plainKinds(
            plan,
            grid,
            phases.weeks.map(({ phase }) => phase),
          );
          expect(kinds.map(({ kind }) => kind)).toEqual(plain.map(({ kind }) => kind));
          for (const [at, { kind, step, pinnedBy }] of kinds.entries()) {
            met.add(kind);
            if (pinnedBy === undefined) expect(step).toBe(plain[at]?.step);
          }
        }
      }),
      { numRuns: 10 * PLANS },
    );
    expect(met.size).toBe(7);
  });
});
