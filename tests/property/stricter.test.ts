// A stricter rule never raises volume. Of rules that say how much, that is: the number in one of them made stricter, or a
// waiver of one taken back, leaves every week's phase and kind as it was, and then
//
// - no week's ceiling is higher, and neither is what the athlete is used to along the ceiling line;
// - of the contacts that the decisive weeks want (the loading weeks of each segment's last phase) no more are planned.
//
// A single week may be planned higher: where a rise is slower, earlier weeks reach over their target for the same height.
// Rules of when and how often (spacing, gaps, frequency, the rhythm of easy weeks, how long the way back is) move sessions
// and easy weeks from one week to another, and promise nothing of a single week.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findParameter, getRule } from '../../src/library/rules.ts';
import type { RuleId } from '../../src/library/rules.ts';
import type { Plan, RuleChange } from '../../src/plan/types.ts';
import { BOUNDING_RULES } from '../../src/schedule/contacts/week-terms.ts';
import { EVERYBODY, HERE } from '../unit/schedule/make-plan.ts';
import { contactsOf } from './contacts-of.ts';
import type { ContactsSeason } from './contacts-of.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan, withProgramme } from './random-plan.ts';

const PLANS = plansFor(150);

/** Lengths of the ladder and ages decide which weeks a rule is about, not how much it allows. */
const NOT_HOW_MUCH: readonly string[] = ['short-from', 'long-from', 'severe', 'most-cut', 'least-cut', 'weeks'];

const HOW_MUCH: readonly (readonly [rule: RuleId, parameter: string])[] = (
  [
    'session-ceiling',
    'weekly-rise',
    'session-rise',
    'budget',
    'deload-depth',
    'taper-cut',
    'last-week',
    'return-ramp',
    'returning-stage',
    'youth-ceiling',
  ] as const
).flatMap((rule) =>
  getRule(rule)
    .parameters.filter(({ name, unit }) => !NOT_HOW_MUCH.includes(name) && unit !== 'years' && unit !== 'weeks')
    .map(({ name }): readonly [RuleId, string] => [rule, name]),
);

interface Stricter {
  readonly of: readonly [rule: RuleId, parameter: string];
  /** Per cent of the usual number, or of a budget of 300. */
  readonly percent: number;
  readonly from: number;
  readonly days: number;
}

const stricter: fc.Arbitrary<Stricter> = fc.record({
  of: fc.constantFrom(...HOW_MUCH),
  percent: fc.integer({ min: 0, max: 99 }),
  from: fc.integer({ min: -7, max: 150 }),
  days: fc.integer({ min: 0, max: 180 }),
});

const BUDGET = 300;

function withStricter(plan: Plan, { of: [rule, name], percent, from, days }: Stricter): Plan {
  const usual = findParameter(rule, name)?.value ?? BUDGET;
  const starts = plan.season.starts + from;
  const change: RuleChange = {
    rule,
    parameters: new Map([[name, Math.floor((usual * percent) / 100)]]),
    range: { from: starts, until: starts + days },
    who: EVERYBODY,
    because: 'in doubt less',
    span: HERE,
  };
  // Where the plan has loosened the rule already, the number would be in force in weeks that another one held.
  const others = plan.ruleChanges.filter((one) => one.rule !== rule);
  return { ...plan, ruleChanges: [...others, change] };
}

const without = (plan: Plan, { of: [rule] }: Stricter): Plan => ({
  ...plan,
  ruleChanges: plan.ruleChanges.filter((one) => one.rule !== rule),
});

/** Contacts the decisive weeks want and have; what they want is the looser season's. */
function wanted(loose: ContactsSeason, season: ContactsSeason): number {
  return season.terms.reduce(
    (sum, { decisive }, week) =>
      decisive ? sum + Math.min(loose.weeks[week]?.target ?? 0, season.weeks[week]?.contacts ?? 0) : sum,
    0,
  );
}

const kindsOf = ({ kinds, phases }: ContactsSeason): unknown =>
  kinds.value.map(({ kind, step }, week) => [phases.weeks[week]?.phase, kind, step]);

/** Counts weeks in which the stricter season's ceiling is lower: a property about nothing would pass as well. */
function expectNoMore(loose: ContactsSeason, strict: ContactsSeason): number {
  expect(kindsOf(strict)).toEqual(kindsOf(loose));
  const ceilings = strict.weeks.map(({ most }, week) => most - (loose.weeks[week]?.most ?? 0));
  expect(ceilings.filter((more) => more > 0)).toEqual([]);
  if (loose.unmet.length === 0 && strict.unmet.length === 0)
    expect(wanted(loose, strict)).toBeLessThanOrEqual(wanted(loose, loose));
  return ceilings.filter((more) => more < 0).length;
}

const plans = fc.oneof({ weight: 3, arbitrary: randomPlan }, { weight: 1, arbitrary: withProgramme(randomPlan) });

describe('a stricter rule', { timeout: PATIENCE }, () => {
  it('never raises volume where it says how much', () => {
    let lower = 0;
    fc.assert(
      fc.property(plans, stricter, (plan, change) => {
        const [loose, strict] = [without(plan, change), withStricter(plan, change)];
        for (const athlete of plan.athletes)
          lower += expectNoMore(contactsOf(loose, athlete), contactsOf(strict, athlete));
      }),
      { numRuns: PLANS },
    );
    tell(`a stricter number: ${PLANS} plans, ${lower} weeks with a lower ceiling, none with a higher one`);
    expect(lower).toBeGreaterThan(PLANS / 10);
  });

  it('never raises volume where its waiver is taken back', () => {
    let lower = 0;
    const rule = fc.constantFrom(...BOUNDING_RULES.filter((one) => one !== 'return-ramp'));
    fc.assert(
      fc.property(plans, rule, stricter, (plan, waived, { from, days }) => {
        const starts = plan.season.starts + from;
        const range = { from: starts, until: starts + days };
        const waiver = { rule: waived, range, who: EVERYBODY, because: 'so', decided: 'the coach', span: HERE };
        for (const athlete of plan.athletes) {
          const loose = contactsOf({ ...plan, waivers: [...plan.waivers, waiver] }, athlete);
          lower += expectNoMore(loose, contactsOf(plan, athlete));
        }
      }),
      { numRuns: PLANS },
    );
    tell(`a waiver taken back: ${PLANS} plans, ${lower} weeks with a lower ceiling, none with a higher one`);
    expect(lower).toBeGreaterThan(PLANS / 10);
  });
});
