// Whatever was done, and whatever hurts: the season planned from there breaks no rule, and the weeks that are over are
// what the record says. The audit works everything out again with code of its own.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import type { DoneRow, Plan } from '../../src/plan/types.ts';
import { randomPlan } from './random-plan.ts';

const PLANS = 120;
/** Milliseconds for a busy machine; nothing here is timed. */
const PATIENCE = 240_000;

interface Row {
  readonly day: number;
  readonly who: number;
  readonly contacts: number | undefined;
  readonly pain: number | undefined;
}

const rows = fc.array(
  fc.record({
    day: fc.integer({ min: 0, max: 90 }),
    who: fc.nat(3),
    contacts: fc.option(fc.constantFrom(0, 0, 40, 65, 80, 120, 200), { nil: undefined }),
    pain: fc.option(fc.constantFrom(0, 2, 4, 5, 6, 9), { nil: undefined, freq: 2 }),
  }),
  { minLength: 1, maxLength: 30 },
);

function withRecord(plan: Plan, recorded: readonly Row[]): Plan {
  const done = recorded.map(({ day, who, contacts, pain }): DoneRow => {
    const athlete = plan.athletes[who % plan.athletes.length];
    if (athlete === undefined) throw new Error('a plan without athletes');
    return {
      day: plan.season.starts + day,
      athlete: athlete.id,
      kind: 'session',
      ...(contacts !== undefined && { contacts }),
      ...(pain !== undefined && { pain }),
      span: athlete.span,
    };
  });
  return { ...plan, record: { done: done.toSorted((a, b) => a.day - b.day), tests: [] } };
}

const recordedPlan = fc.tuple(randomPlan, rows).map(([plan, recorded]) => withRecord(plan, recorded));

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
