// Whatever was done, and whatever hurts: the season planned from there breaks no rule, and the weeks that are over are
// what the record says. The audit works everything out again with code of its own.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import { randomPlan, withRecord } from './random-plan.ts';

const PLANS = 120;
/** Milliseconds for a busy machine; nothing here is timed. */
const PATIENCE = 240_000;

const recordedPlan = withRecord(randomPlan);

describe('any record', { timeout: PATIENCE }, () => {
  it('is planned on from without an error of the audit', () => {
    fc.assert(
      fc.property(recordedPlan, (plan) => {
        const errors = [...compilePlan(plan).athletes].flatMap((built) =>
          built.diagnostics
            .filter((one) => one.severity === 'error' && (one.rule !== undefined || one.code.startsWith('audit/')))
            .map((one) => `${one.code}: ${one.message}`),
        );
        expect(errors).toEqual([]);
      }),
      { numRuns: PLANS },
    );
  });

  it('is what the weeks behind it hold', () => {
    fc.assert(
      fc.property(recordedPlan, (plan) => {
        const asOf = (plan.record.done.at(-1)?.day ?? 0) + 1;
        for (const { athlete, weeks } of compilePlan(plan).athletes) {
          for (const week of weeks) {
            expect(week.done).toBe(week.starts + 7 <= asOf);
            if (!week.done) continue;
            const mine = plan.record.done.filter(
              (row) => row.athlete === athlete.id && row.day >= week.starts && row.day < week.starts + 7,
            );
            if (mine.length === 0 || mine.some(({ contacts }) => contacts === undefined)) continue;
            expect(week.contacts).toBe(mine.reduce((sum, { contacts = 0 }) => sum + contacts, 0));
            expect(week.sessions).toEqual([]);
          }
        }
      }),
      { numRuns: PLANS },
    );
  });
});
