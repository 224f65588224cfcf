// Whatever was done, and whatever hurts: the weeks that are over are what the record says. That the season planned on from
// there breaks no rule is asked in no-rule-broken.test.ts.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reviewBuilds } from '../../src/cli/review-builds.ts';
import { compilePlan } from '../../src/compile.ts';
import { renderReviewJson } from '../../src/render/json/review.ts';
import { createReview } from '../../src/report/review.ts';
import { EVERYTHING } from '../../src/report/selection.ts';
import { sourceFile } from '../../src/source/source-file.ts';
import { PATIENCE, plansFor } from './plans.ts';
import { randomPlan, withRecord } from './random-plan.ts';

const PLANS = plansFor(100);
/** Each is compiled again for every week it looks back on. */
const REVIEWS = 25;

const recordedPlan = withRecord(randomPlan);

describe('any record', { timeout: PATIENCE }, () => {
  it('makes a review whose numbers are the rows, and whose athletes stand in the order of the plan', () => {
    fc.assert(
      fc.property(recordedPlan, (bare) => {
        const plan = { ...bare, files: [sourceFile('season.yaml', 'footfall: 1\n')] };
        const on = (plan.record.done.at(-1)?.day ?? plan.season.starts) + 1;
        const review = createReview(reviewBuilds(plan, on), EVERYTHING, on);
        expect(review.athletes.map(({ id }) => id)).toEqual(plan.athletes.map(({ id }) => id));
        expect(renderReviewJson(review)).not.toMatch(/NaN|undefined|Infinity/u);
        for (const { id, weeks } of review.athletes) {
          for (const { starts, done, sessions } of weeks) {
            const rows = plan.record.done.filter(
              (row) => row.athlete === id && row.kind === 'session' && starts <= row.day && row.day < starts + 7,
            );
            expect(sessions.flatMap((one) => one.rows)).toHaveLength(rows.length);
            if (rows.some(({ contacts }) => contacts === undefined)) continue;
            const sum = rows.reduce((total, { contacts = 0 }) => total + contacts, 0);
            expect(done).toBe(rows.length === 0 ? undefined : sum);
          }
        }
      }),
      { numRuns: REVIEWS },
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
