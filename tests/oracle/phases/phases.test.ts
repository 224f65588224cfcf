// Stage 2 three ways: every path tried on segments of up to 24 weeks, pinned ones among them; a mixed-integer solver on
// segments of up to 60 weeks; and the whole season, with peaks, in-season parts, closed weeks and pins, laid anew.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import { layGrid } from '../../../src/schedule/grid.ts';
import { planPhases } from '../../../src/schedule/phases.ts';
import { choosePath } from '../../../src/schedule/phases/path.ts';
import { randomPlan } from '../../property/random-plan.ts';
import { athlete } from '../../unit/schedule/make-plan.ts';
import { propertySeed } from '../../tools/seed.ts';
import { loadSolver } from '../contacts/integer-program.ts';
import { oraclePlans, timed, tellRatio } from '../oracle-plans.ts';
import { bestOfAllPaths, comparePaths, costOfPath, ROWS, runsOf } from './every-path.ts';
import type { PathRun, PathWeek } from './every-path.ts';
import { betterPath, pathProgram, readPath } from './path-program.ts';
import { plainPhases } from './plain-phases.ts';

const PLANS = oraclePlans(25);
const PATIENCE = 600_000;
/** Shortest pinned stretches that most phases can hold. */
const LEAST_PIN = 2;

/** Weeks of a segment, with one or two stretches pinned in some. */
const segment = (least: number, most: number): fc.Arbitrary<readonly (PathWeek | undefined)[]> =>
  fc
    .record({
      weeks: fc.integer({ min: least, max: most }),
      pins: fc.array(
        fc.record({
          phase: fc.constantFrom(...ROWS),
          from: fc.nat({ max: most - 1 }),
          length: fc.integer({ min: 1, max: LEAST_PIN }),
        }),
        { maxLength: 2 },
      ),
    })
    .map(({ weeks, pins }) =>
      Array.from(
        { length: weeks },
        (_, week) => pins.find(({ from, length }) => from <= week && week < from + length)?.phase,
      ),
    );

describe('the path of a segment', { timeout: PATIENCE }, () => {
  it('is the best of all there are, pins or none', () => {
    let impossible = 0;
    fc.assert(
      fc.property(segment(2, 18), (fixed) => {
        const best = bestOfAllPaths(fixed);
        const found = choosePath(fixed);
        if (best === undefined) impossible += 1;
        expect(found === undefined ? undefined : runsOf(found)).toEqual(best);
      }),
      { numRuns: 10 * PLANS },
    );
    expect(impossible).toBeGreaterThan(0);
  });

  it('is the best of all there are for every length up to 24 weeks', () => {
    for (let weeks = 2; weeks <= 24; weeks += 1) {
      const fixed = Array.from({ length: weeks }, () => undefined);
      expect(runsOf(choosePath(fixed) ?? [])).toEqual(bestOfAllPaths(fixed));
    }
  });

  it(`is as good as a solver's, in ${PLANS} segments of up to 60 weeks`, async () => {
    const solve = await loadSolver();
    const spent = { solver: 0, ours: 0 };
    let impossible = 0;
    for (const fixed of fc.sample(segment(10, 60), { numRuns: PLANS, seed: propertySeed() })) {
      const ours = timed(() => choosePath(fixed));
      const asked = pathProgram(fixed);
      const answer = timed(() => solve(asked.program, asked.cost));
      spent.ours += ours.took;
      spent.solver += answer.took;
      expect(answer.value.status === 'none').toBe(ours.value === undefined);
      if (answer.value.status === 'none' || ours.value === undefined) {
        impossible += 1;
        continue;
      }
      const found = runsOf(ours.value);
      const best = readPath(asked, answer.value.values);
      expect(costOfPath(found)).toBe(costOfPath(best));
      expect(comparePaths(found, best)).toBeLessThanOrEqual(0);
      // A tie as good, and better by the rules for ties, there is none.
      const tie = timed(() => solve(betterPath(asked, found, costOfPath(found) ?? 0), []));
      spent.solver += tie.took;
      expect(tie.value.status).toBe('none');
    }
    tellRatio('phases', `${PLANS} segments; cost and ties equal, ${impossible} impossible by both`, spent);
    expect(impossible).toBeGreaterThan(0);
    expect(impossible).toBeLessThan(PLANS / 2);
  });

  it('would be found by the solver where it isn’t the best', async () => {
    const solve = await loadSolver();
    const eleven = pathProgram(Array.from({ length: 11 }, () => undefined));
    const path = (...lengths: readonly [strength: number, strengthPower: number, power: number]): readonly PathRun[] =>
      lengths.map((length, at) => ({ phase: ROWS[at + 1] ?? 'power', length }));
    // A month of strength, three weeks and a month cost less than a month, a month and three weeks, and end later.
    expect(solve(betterPath(eleven, path(4, 4, 3), costOfPath(path(4, 4, 3)) ?? 0), []).status).toBe('best');
    expect(solve(betterPath(eleven, path(4, 3, 4), costOfPath(path(4, 3, 4)) ?? 0), []).status).toBe('none');
  });
});

describe('the phases of a season', { timeout: PATIENCE }, () => {
  it('are laid the same from their description', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(randomPlan, (plan) => {
        for (const one of plan.athletes.length === 0 ? [athlete('beginner', 40)] : plan.athletes) {
          const grid = layGrid(plan, one, ruleBook(plan, one));
          const { weeks, segments } = planPhases(plan, grid);
          const phases = weeks.map(({ phase, segment: at }, week) => {
            const built = segments[at];
            const last = built !== undefined && built.form !== 'hold' && week >= built.lastPhaseFrom;
            return { phase, last: last && grid.weeks[week]?.empty === false };
          });
          expect(phases).toEqual(plainPhases(plan, grid));
          for (const { phase } of phases) met.add(phase);
        }
      }),
      { numRuns: 12 * PLANS },
    );
    expect(met.size).toBe(10);
  });
});
