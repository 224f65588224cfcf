// Whatever the plan, the audit, which shares no code with the scheduler, finds no error in what the scheduler made of it;
// and contacts add up from lines to sessions to weeks.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import type { Plan, Who } from '../../src/plan/types.ts';
import { randomPlan } from './random-plan.ts';

const PLANS = 160;
/** Milliseconds for a busy machine; nothing here is timed. */
const PATIENCE = 180_000;

describe('any plan', { timeout: PATIENCE }, () => {
  it('is compiled without an error of the audit', () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const errors = [...compilePlan(plan).athletes].flatMap((built) =>
          built.diagnostics
            .filter((one) => one.severity === 'error' && one.rule !== undefined)
            .map((one) => `${one.code}: ${one.message}`),
        );
        expect(errors).toEqual([]);
      }),
      { numRuns: PLANS },
    );
  });

  it('has contacts that add up, in fives', () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        for (const built of compilePlan(plan).athletes) {
          for (const week of built.weeks) {
            // A week that can't be held as asked is said to be so, and isn't written.
            if (built.blocked.has(week.week)) continue;
            expect(week.contacts % 5).toBe(0);
            expect(sum(week.sessions.map((session) => session.contacts))).toBe(week.contacts);
            for (const session of week.sessions) {
              expect(sum(session.lines.map((line) => line.contacts))).toBe(session.contacts);
            }
          }
        }
      }),
      { numRuns: PLANS },
    );
  });

  it('gives two athletes of whom it says the same the same weeks', () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const built = [...compilePlan(withTwins(plan)).athletes];
        const half = built.length / 2;
        const contacts = (from: number): unknown =>
          built
            .slice(from, from + half)
            .map(({ weeks }) =>
              weeks.map((week) => [week.contacts, week.adapted, week.sessions.map((session) => session.day)]),
            );
        expect(contacts(half)).toEqual(contacts(0));
      }),
      { numRuns: PLANS / 4 },
    );
  });

  it('compiles to the same twice', () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        expect([...compilePlan(plan).athletes]).toEqual([...compilePlan(plan).athletes]);
      }),
      { numRuns: PLANS / 4 },
    );
  });
});

const twinOf = (id: string): string => `twin-of-${id}`;

/** Every athlete twice: what names one names the twin. */
function withTwins(plan: Plan): Plan {
  const both = <T extends { readonly who: Who }>(items: readonly T[]): readonly T[] =>
    items.map((item) =>
      item.who.kind === 'everybody'
        ? item
        : { ...item, who: { ...item.who, athletes: [...item.who.athletes, ...item.who.athletes.map(twinOf)] } },
    );
  return {
    ...plan,
    athletes: [...plan.athletes, ...plan.athletes.map((athlete) => ({ ...athlete, id: twinOf(athlete.id) }))],
    competitions: both(plan.competitions),
    closures: both(plan.closures),
    practice: both(plan.practice),
    tests: both(plan.tests),
    pins: both(plan.pins),
    ruleChanges: both(plan.ruleChanges),
    waivers: both(plan.waivers),
  };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
