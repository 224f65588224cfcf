// Whatever the plan, the audit, which shares no code with the scheduler, finds no error in what the scheduler made of it;
// and contacts add up from lines to sessions to weeks.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import type { BuiltAthlete, BuiltWeek } from '../../src/build/types.ts';
import type { Diagnostic } from '../../src/diagnostics/types.ts';
import type { Plan, Who } from '../../src/plan/types.ts';
import type { PublishedDay } from '../../src/schedule/days.ts';
import type { Day } from '../../src/util/days.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan, withProgramme, withRecord } from './random-plan.ts';

const PLANS = plansFor(160);
/** The rest asks the same of every plan: there is less to find. */
const FEWER = Math.ceil(PLANS / 4);

const plans = fc.oneof(
  { weight: 3, arbitrary: randomPlan },
  { weight: 1, arbitrary: withProgramme(randomPlan) },
  { weight: 1, arbitrary: withRecord(randomPlan) },
  { weight: 1, arbitrary: withRecord(withProgramme(randomPlan)) },
);

/** Warnings that the scheduler never has a reason to earn. */
const isNever = ({ code, params }: Diagnostic): boolean =>
  code === 'rule/lift-event-gap' || (code === 'rule/taper-cut' && params['breach'] === 'session');

/** What the audit finds wrong with the scheduler's own weeks. */
function errorsOf({ weeks, diagnostics }: BuiltAthlete): readonly string[] {
  return diagnostics
    .filter((one) => (one.severity === 'error' && /^(?:rule|audit)\//.test(one.code)) || isNever(one))
    .filter(
      (one) =>
        !isCoachsOwn(
          one,
          weeks.find(({ starts }) => starts === one.week),
        ),
    )
    .map(({ code, message }) => `${code}: ${message}`);
}

/** A week written by hand is the coach's, and so is a budget that practice and matches alone are over. */
function isCoachsOwn({ rule }: Diagnostic, week: BuiltWeek | undefined): boolean {
  if (week === undefined) return false;
  const byHand = week.sessions.some(({ lines }) => lines.some(({ origin }) => origin.kind === 'written'));
  return byHand || (rule === 'budget' && week.contacts === 0);
}

function expectAddsUp({ weeks, blocked }: BuiltAthlete): void {
  for (const week of weeks) {
    // A week that can't be held as asked is said to be so, and isn't written; of one that is over there is the sum.
    if (blocked.has(week.week) || week.done || week.boundBy === 'programme') continue;
    expect(week.contacts % 5).toBe(0);
    expect(sum(week.sessions.map((session) => session.contacts))).toBe(week.contacts);
    for (const session of week.sessions) expect(sum(session.lines.map((line) => line.contacts))).toBe(session.contacts);
  }
}

describe('any plan', { timeout: PATIENCE }, () => {
  it('is compiled without an error of the audit, and its contacts add up, in fives', () => {
    let athletes = 0;
    let weeks = 0;
    fc.assert(
      fc.property(plans, (plan) => {
        for (const built of compilePlan(plan).athletes) {
          athletes += 1;
          weeks += built.weeks.length;
          expect(errorsOf(built)).toEqual([]);
          expectAddsUp(built);
        }
      }),
      { numRuns: PLANS },
    );
    tell(`any plan: ${PLANS} plans, ${athletes} athletes, ${weeks} weeks, no error of the audit`);
    expect(weeks).toBeGreaterThan(PLANS);
  });

  it('breaks no rule for the sake of sheets that are out, and moves no contacts to another week', () => {
    fc.assert(
      fc.property(plans, fc.integer({ min: -3, max: 3 }), (plan, shift) => {
        const free = [...compilePlan(plan).athletes];
        const published = new Map(free.map((built) => [built.athlete.id, daysOf(built, shift)]));
        [...compilePlan(plan, { published }).athletes].forEach((built, index) => {
          expect(errorsOf(built)).toEqual([]);
          expectAddsUp(built);
          // What a row without a number says was done hangs on the day its session stood on.
          if (plan.record.done.length === 0) expect(contactsOf(built)).toEqual(contactsOf(free[index] ?? built));
        });
      }),
      { numRuns: FEWER },
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
      { numRuns: FEWER },
    );
  });

  it('compiles to the same twice', () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        expect([...compilePlan(plan).athletes]).toEqual([...compilePlan(plan).athletes]);
      }),
      { numRuns: FEWER },
    );
  });
});

const contactsOf = ({ weeks }: BuiltAthlete): readonly number[] => weeks.map((week) => week.contacts);

/** Days of sheets that are out: each some days off where the session stands now, by turns. */
function daysOf({ weeks }: BuiltAthlete, shift: number): ReadonlyMap<Day, PublishedDay> {
  const sessions = weeks.flatMap((week) => week.sessions);
  return new Map(
    sessions.map(({ day, jumps, lifts }, index) => [day + (index % 3 === 0 ? shift : 0), { jumps, lifts }]),
  );
}

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
