// Shuffling files and keys changes nothing: a plan written down with its keys, its items and its files in another order
// means the same, has the same mark, and every athlete the same weeks, findings and sessions.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileAt } from '../../src/cli/open-plan.ts';
import type { Build } from '../../src/build/types.ts';
import { day } from '../unit/date.ts';
import { memoryFiles } from '../unit/read/memory-files.ts';
import { chance, IN_ORDER, planFiles } from './plan-files.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan } from './random-plan.ts';

const PLANS = plansFor(60);
const TODAY = day('2027-01-04');

/** Undefined for a plan with errors, which the other order has to have too. */
const buildOf = (files: Readonly<Record<string, string>>): Build | undefined =>
  compileAt('/plan', { files: memoryFiles(files), today: TODAY }).build;

/** Everything but where it is written. */
function meaningOf(build: Build): unknown {
  return [...build.athletes].map(({ athlete, weeks, blocked, diagnostics }) => ({
    athlete: athlete.id,
    weeks: JSON.parse(JSON.stringify(weeks, (key, value: unknown) => (PLACES.has(key) ? undefined : value))) as unknown,
    blocked: [...blocked],
    said: diagnostics.map(({ code, severity, message }) => `${severity} ${code} ${message}`).toSorted(),
  }));
}

const PLACES: ReadonlySet<string> = new Set(['span', 'spans', 'origin', 'slot']);

describe('a plan in another order', { timeout: PATIENCE }, () => {
  it('is the same plan', () => {
    let built = 0;
    fc.assert(
      fc.property(randomPlan, chance, (plan, deal) => {
        const [usual, other] = [buildOf(planFiles(plan, IN_ORDER)), buildOf(planFiles(plan, deal))];
        expect(other === undefined).toBe(usual === undefined);
        if (usual === undefined || other === undefined) return;
        built += 1;
        expect(meaningOf(other)).toEqual(meaningOf(usual));
        expect(other.mark).toBe(usual.mark);
      }),
      { numRuns: PLANS },
    );
    tell(`a plan in another order: ${PLANS} plans, ${built} of them without errors and the same`);
    expect(built).toBeGreaterThan(PLANS / 4);
  });
});
