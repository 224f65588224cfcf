// Stage 4 against a mixed-integer solver, on random seasons of 6 to 16 weeks: the same shortfall in the decisive weeks,
// the same distance from the targets, and nothing as good that is lexicographically less. The program is built from the
// terms of the weeks with sums of its own (contacts-program.ts).

import { expect, it } from 'vitest';
import { propertySeed } from '../../tools/seed.ts';
import { compareContacts } from './compare.ts';
import { loadSolver } from './integer-program.ts';

/** FOOTFALL_ORACLE_PLANS=N asks for another number; the solver needs a third of a second for each. */
const PLANS = Number(process.env['FOOTFALL_ORACLE_PLANS'] ?? 100);
/** Milliseconds for a busy machine. */
const PATIENCE = 600_000;

it(`the contacts of ${PLANS} random seasons are as good as a solver's`, { timeout: PATIENCE }, async () => {
  const compared = compareContacts(await loadSolver(), PLANS, propertySeed());
  const { milliseconds } = compared;
  process.stdout.write(
    `contacts against the mixed-integer oracle: ${compared.plans} plans, ${compared.weeks} weeks; equal in all levels, ` +
      `${compared.impossible} impossible by both, ${compared.short} with a shortfall; ` +
      `solver ${(milliseconds.solver / 1000).toFixed(1)} s, search ${(milliseconds.search / 1000).toFixed(3)} s, ` +
      `${Math.round(milliseconds.solver / milliseconds.search)} : 1\n`,
  );
  expect(compared.plans).toBe(PLANS);
  expect(compared.impossible).toBeGreaterThan(0);
  expect(compared.short).toBeGreaterThan(0);
  expect(compared.least + compared.impossible).toBeGreaterThan(PLANS / 2);
});
