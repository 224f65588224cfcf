// What `reach` tells hangs on no day: with sheets that are out, whatever days they have, each week's most and what holds it
// are the same. So it takes no `--near`.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import type { BuiltAthlete } from '../../src/build/types.ts';
import type { Plan } from '../../src/plan/types.ts';
import { reportReach } from '../../src/report/reach.ts';
import type { Reach } from '../../src/report/reach.ts';
import type { Published } from '../../src/schedule/days.ts';
import { sourceFile } from '../../src/source/source-file.ts';
import { PATIENCE, plansFor } from './plans.ts';
import { randomPlan, withProgramme, withRecord } from './random-plan.ts';

const RUNS = plansFor(50);
const OUT_OF_REACH = 100_000;

const reaches = (plan: Plan, built: Iterable<BuiltAthlete>): readonly Reach[] =>
  [...built].map((one) => reportReach(plan, one, OUT_OF_REACH, () => undefined));

const daysOf = (built: Iterable<BuiltAthlete>): readonly string[] =>
  [...built].flatMap(({ athlete, weeks }) =>
    weeks.flatMap(({ sessions }) => sessions.map(({ day }) => `${athlete.id} ${day}`)),
  );

/** Sheets with a session on each day that has none. */
const elsewhere = ({ season }: Plan, built: Iterable<BuiltAthlete>): Published =>
  new Map(
    [...built].map(({ athlete, weeks }) => {
      const taken = new Set(weeks.flatMap(({ sessions }) => sessions.map(({ day }) => day)));
      const all = Array.from({ length: season.ends - season.starts + 1 }, (_, index) => season.starts + index);
      const free = all.filter((day) => !taken.has(day));
      return [athlete.id, new Map(free.map((day) => [day, { jumps: true, lifts: true }]))];
    }),
  );

test('what is safe when is the same on other days', { timeout: PATIENCE }, () => {
  let moved = 0;
  fc.assert(
    fc.property(fc.oneof(randomPlan, withRecord(withProgramme(randomPlan))), (random) => {
      const plan = { ...random, files: [sourceFile('season.yaml', 'footfall: 1\n')] };
      const free = compilePlan(plan);
      const near = compilePlan(plan, { published: elsewhere(plan, free.athletes) });
      if (daysOf(near.athletes).join() !== daysOf(free.athletes).join()) moved += 1;
      expect(reaches(plan, near.athletes)).toEqual(reaches(plan, free.athletes));
    }),
    { numRuns: RUNS },
  );
  expect(moved).toBeGreaterThan(RUNS / 20);
});
