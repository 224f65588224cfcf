// Stage 5 against a mixed-integer solver, on random seasons of 4 to 9 weeks: the same cost on every floor, and nothing that
// costs the same with an earlier day. What the solver answers is weighed again by brute-force.ts.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scheduleDays } from '../../../src/schedule/days.ts';
import { inputOf } from '../../unit/days/make-season.ts';
import { propertySeed } from '../../tools/seed.ts';
import { atMost, copied, loadSolver } from '../contacts/integer-program.ts';
import type { Solve } from '../contacts/integer-program.ts';
import { oraclePlans, timed, tellRatio } from '../oracle-plans.ts';
import { costOfSeason } from './brute-force.ts';
import type { PlainChoice, PlainWeek } from './brute-force.ts';
import { daysProgram, earlierProgram, readDays } from './days-program.ts';
import { chosenDays, plainWeeks } from './plain-weeks.ts';
import { randomSeason } from './random-seasons.ts';

const PLANS = oraclePlans(25);
const PATIENCE = 3_600_000;

interface Solved {
  readonly days: readonly PlainChoice[];
  readonly cost: number;
  /** As cheap and earlier; undefined where there is nothing. */
  readonly earlier: readonly PlainChoice[] | undefined;
}

function solveDays(solve: Solve, weeks: readonly PlainWeek[], found: readonly PlainChoice[]): Solved {
  const asked = daysProgram(weeks);
  const program = copied(asked.program);
  const most: number[] = [];
  let days: readonly PlainChoice[] = [];
  for (const { parts, constant } of asked.levels) {
    const answer = solve(program, parts);
    if (answer.status === 'none') throw new Error('the solver found no days at all');
    const least = parts.reduce((sum, [times, name]) => sum + times * (answer.values.get(name) ?? Number.NaN), 0);
    most.push(least + constant);
    if (parts.length > 0) atMost(program, parts, least);
    days = readDays(asked, weeks, answer.values);
  }
  const cost = asked.levels.reduce((sum, { unit }, at) => sum + unit * (most[at] ?? 0), 0);
  const answer = solve(earlierProgram(asked, weeks, found, most), []);
  return { days, cost, earlier: answer.status === 'none' ? undefined : readDays(asked, weeks, answer.values) };
}

describe('the days of a season', { timeout: PATIENCE }, () => {
  it(`cost as little as a solver's, in ${PLANS} random seasons`, async () => {
    const solve = await loadSolver();
    const spent = { solver: 0, ours: 0 };
    let weeks = 0;
    let short = 0;
    for (const { season, published } of fc.sample(randomSeason(4, 9), { numRuns: PLANS, seed: propertySeed() })) {
      const { plan, input } = inputOf(season);
      const plain = plainWeeks(plan, input, published);
      const ours = timed(() => chosenDays(scheduleDays(plan, input, new Map([['ada', published]])).value));
      const solver = timed(() => solveDays(solve, plain, ours.value));
      spent.ours += ours.took;
      spent.solver += solver.took;
      weeks += plain.length;
      const cost = costOfSeason(plain, ours.value);
      expect(cost).toBe(solver.value.cost);
      expect(costOfSeason(plain, solver.value.days)).toBe(cost);
      expect(solver.value.earlier).toBeUndefined();
      if (plain.some(({ jumps }, at) => (ours.value[at]?.jumps.length ?? 0) < jumps.wanted)) short += 1;
    }
    tellRatio(
      'days',
      `${PLANS} seasons, ${weeks} weeks; equal on every floor, ${short} with a session not held`,
      spent,
    );
    expect(short).toBeGreaterThan(0);
  });

  it('would be found by the solver where they aren’t the earliest', async () => {
    const solve = await loadSolver();
    const { plan, input } = inputOf({ weeks: [{ sessions: [60] }, { sessions: [60] }] });
    const plain = plainWeeks(plan, input, new Map()).map((week) => ({
      ...week,
      jumps: { ...week.jumps, usual: week.jumps.dates },
      lifts: { ...week.lifts, wanted: 0 },
    }));
    const early = plain.map(({ starts }) => ({ jumps: [starts + 1], lifts: [] }));
    const late = plain.map(({ starts }) => ({ jumps: [starts + 3], lifts: [] }));
    expect(costOfSeason(plain, late)).toBe(costOfSeason(plain, early));
    expect(solveDays(solve, plain, late).earlier).toEqual(early);
    expect(solveDays(solve, plain, early).earlier).toBeUndefined();
  });
});
