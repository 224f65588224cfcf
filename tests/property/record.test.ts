// Whatever was done, and whatever hurts: the weeks that are over are what the record says. That the season planned on from
// there breaks no rule is asked in no-rule-broken.test.ts.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Reason } from '../../src/build/types.ts';
import { reviewBuilds } from '../../src/cli/review-builds.ts';
import { compilePlan } from '../../src/compile.ts';
import { holds } from '../../src/plan/applies.ts';
import { getRuleValue, ruleBook } from '../../src/plan/rule-book.ts';
import type { RuleBook } from '../../src/plan/rule-book.ts';
import type { DayRange, Plan, Waiver } from '../../src/plan/types.ts';
import { renderReviewJson } from '../../src/render/json/review.ts';
import { createReview } from '../../src/report/review.ts';
import { EVERYTHING } from '../../src/report/selection.ts';
import { sourceFile } from '../../src/source/source-file.ts';
import { EVERYBODY, HERE } from '../unit/schedule/make-plan.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
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

  it('leaves of a week under way no more than it was planned at, unless it is written by hand', () => {
    const counts = { cut: 0, over: 0 };
    fc.assert(
      fc.property(recordedPlan, (plan) => {
        const [largest] = plan.record.done.toSorted((a, b) => (b.contacts ?? 0) - (a.contacts ?? 0));
        const asOf = (largest?.day ?? 0) + 1;
        for (const { athlete, weeks, diagnostics } of compilePlan(plan, { asOf }).athletes) {
          const told = diagnostics.filter(({ code }) => code === 'schedule/week-over-plan');
          for (const { starts, sessions, underWay, boundBy } of weeks) {
            if (underWay === undefined) continue;
            expect(starts < asOf && asOf < starts + 7).toBe(true);
            // A morning that hurts cuts a week as well, and is told elsewhere.
            if (boundBy === 'record') expect(told.map(({ week }) => week)).toEqual([starts]);
            else expect(boundBy === 'pain-hold' || underWay.wereLeft === 0).toBe(true);
            counts.cut += 1;
            const mine = plan.record.done.filter(
              (row) => row.athlete === athlete.id && row.day >= starts && row.day < asOf,
            );
            if (mine.some(({ contacts }) => contacts === undefined)) continue;
            const done = mine.reduce((sum, { contacts = 0 }) => sum + contacts, 0);
            const left = sessions.reduce((sum, { day, contacts }) => sum + (day < asOf ? 0 : contacts), 0);
            // Less than a step over is no difference.
            expect(left === 0 || done + left < underWay.planned + 5).toBe(true);
            if (done > underWay.planned && boundBy === 'record') counts.over += 1;
          }
        }
      }),
      { numRuns: PLANS },
    );
    tell(`weeks under way: ${String(counts.cut)} cut, ${String(counts.over)} of them beyond the whole week`);
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(0);
  });

  it('is told of a week exactly where it is over the severe rise, and nobody has waived its rise', () => {
    const counts = { told: 0, full: 0, waived: 0 };
    fc.assert(
      fc.property(recordedPlan, fc.boolean(), (drawn, waives) => {
        const plan = waives ? { ...drawn, waivers: [...drawn.waivers, firstWeeksOf(drawn)] } : drawn;
        for (const { athlete, weeks, diagnostics } of compilePlan(plan).athletes) {
          const leaps = diagnostics.filter(({ code }) => code === 'schedule/record-leap');
          expect(leaps.every(({ week }) => weeks.some(({ starts, done }) => done && starts === week))).toBe(true);
          for (const { starts, done, kind, contacts, reasons } of weeks) {
            const isFading = kind === 'empty' || kind === 'transition';
            const range = { from: starts, until: starts + 6 };
            const mine = plan.record.done.filter((row) => row.athlete === athlete.id && holds(range, row.day));
            if (!done || mine.length === 0) continue;
            const book = ruleBook(plan, athlete);
            const isLeap = !isFading && contacts > severeFrom(book, range, openingOf(reasons));
            const isWaived = book.waiver('weekly-rise', range) !== undefined;
            const told = leaps.filter((leap) => leap.week === starts).length;
            expect(told).toBe(isLeap && !isWaived ? 1 : 0);
            if (isLeap && isWaived) counts.waived += 1;
            else counts[told === 1 ? 'told' : 'full'] += 1;
          }
        }
      }),
      { numRuns: PLANS },
    );
    tell(`leaps: ${String(counts.told)} told, ${String(counts.waived)} waived, ${String(counts.full)} weeks in full`);
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(0);
  });
});

const firstWeeksOf = ({ season }: Plan): Waiver => ({
  rule: 'weekly-rise',
  range: { from: season.starts, until: season.starts + 27 },
  who: EVERYBODY,
  because: 'camp',
  span: HERE,
});

/** A as the week began. */
const openingOf = (reasons: readonly Reason[]): number =>
  Number(reasons.find(({ about }) => about === 'adapted')?.params['opening']);

function severeFrom(book: RuleBook, range: DayRange, adapted: number): number {
  const value = (name: string): number => getRuleValue(book, 'weekly-rise', name, range);
  return Math.max(
    Math.floor((adapted * (100 + Math.max(value('severe'), value('most')))) / 100),
    adapted + value('contacts'),
  );
}
