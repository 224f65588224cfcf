// The terms of random seasons of 6 to 16 weeks, as the stages before the contacts make them of plans: seasons as a coach
// plans them, with a peak at the end, and seasons as odd as random plans get. Pins of contacts, waivers, changed rules
// and budgets are laid on both.

import fc from 'fast-check';
import type { RuleId } from '../../../src/library/rules.ts';
import { DEFAULT_NOW } from '../../../src/library/levels.ts';
import type { Level } from '../../../src/library/types.ts';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import type { Athlete, DayRange, Pin, Plan, RuleChange, Waiver } from '../../../src/plan/types.ts';
import type { WeekTerms } from '../../../src/schedule/contacts/terms.ts';
import { BOUNDING_RULES, weekTerms } from '../../../src/schedule/contacts/week-terms.ts';
import { layGrid } from '../../../src/schedule/grid.ts';
import { planPhases } from '../../../src/schedule/phases.ts';
import { chooseWeekKinds } from '../../../src/schedule/week-kinds.ts';
import { isoDate } from '../../../src/util/days.ts';
import type { Weekday } from '../../../src/util/days.ts';
import { randomPlan } from '../../property/random-plan.ts';
import { day } from '../../unit/date.ts';
import { athlete, EVERYBODY, HERE, peak, plan, slot } from '../../unit/schedule/make-plan.ts';

export interface RandomWeeks {
  readonly weeks: readonly WeekTerms[];
  /** Contacts a week before the first. */
  readonly start: number;
}

const MONDAY = day('2027-01-04');
const LEAST_WEEKS = 6;
const MOST_WEEKS = 16;
const DAYS = MOST_WEEKS * 7;

const range: fc.Arbitrary<DayRange> = fc
  .tuple(fc.integer({ min: 0, max: DAYS - 1 }), fc.integer({ min: 0, max: 30 }))
  .map(([from, length]) => ({ from: MONDAY + from, until: MONDAY + from + length }));

const about = { who: EVERYBODY, span: HERE, because: 'so' };

const pin: fc.Arbitrary<Pin> = fc
  .tuple(fc.integer({ min: 0, max: MOST_WEEKS - 1 }), fc.integer({ min: 0, max: 50 }))
  .map(([week, steps]) => ({
    ...about,
    range: { from: MONDAY + week * 7, until: MONDAY + week * 7 + 6 },
    effects: [{ kind: 'contacts', contactsAWeek: steps * 5 }],
  }));

const waiver: fc.Arbitrary<Waiver> = fc
  .record({ rule: fc.constantFrom(...BOUNDING_RULES), range })
  .map((one) => ({ ...about, ...one, decided: 'the coach' }));

const change = (rule: RuleId, name: string, least: number, most: number): fc.Arbitrary<RuleChange> =>
  fc
    .tuple(range, fc.integer({ min: least, max: most }))
    .map(([when, value]) => ({ ...about, rule, parameters: new Map([[name, value]]), range: when }));

const changes = fc.oneof(
  change('weekly-rise', 'most', 0, 30),
  change('weekly-rise', 'contacts', 0, 20),
  change('session-rise', 'most', 0, 40),
  change('session-rise', 'contacts', 0, 25),
  change('session-ceiling', 'intermediate', 30, 120),
  change('deload-depth', 'most', 30, 80),
  change('taper-cut', 'last', 20, 60),
  change('budget', 'jumps-a-week', 50, 400),
);

const laidOn = fc.record({
  pins: fc.array(pin, { maxLength: 2 }),
  waivers: fc.array(waiver, { maxLength: 2 }),
  ruleChanges: fc.array(changes, { maxLength: 2 }),
});

const usualPlan: fc.Arbitrary<Plan> = fc
  .record({
    weeks: fc.integer({ min: LEAST_WEEKS, max: MOST_WEEKS }),
    days: fc.uniqueArray(fc.constantFrom<Weekday>(0, 1, 2, 3, 4, 5), { minLength: 2, maxLength: 4 }),
    minutes: fc.integer({ min: 50, max: 120 }),
    level: fc.constantFrom<Level>('beginner', 'intermediate', 'advanced'),
    contacts: fc.integer({ min: 30, max: 120 }),
    goal: fc.option(fc.integer({ min: 60, max: 140 }), { nil: undefined }),
    lays: fc.option(laidOn, { nil: undefined }),
  })
  .map(({ weeks, days, minutes, level, contacts, goal, lays }) => {
    const ends = MONDAY + weeks * 7 - 1;
    const written = { kind: 'written', span: HERE } as const;
    const jumper = athlete(level, contacts, goal === undefined ? {} : { goal: { value: goal, origin: written } });
    return plan(
      { starts: isoDate(MONDAY), ends: isoDate(ends) },
      {
        slots: days.toSorted((a, b) => a - b).map((one) => slot(one, { minutes })),
        competitions: [peak(isoDate(ends))],
        athletes: [jumper],
        ...lays,
      },
    );
  });

const oddPlan: fc.Arbitrary<Plan> = fc
  .tuple(randomPlan, laidOn)
  .map(([odd, { pins, ...rest }]) => ({ ...odd, pins: [...odd.pins, ...pins], ...rest }));

/** The terms of a plan's first athlete. */
export const randomWeeks: fc.Arbitrary<RandomWeeks> = fc
  .oneof(usualPlan, oddPlan)
  .map((drawn) => weeksOf(drawn, drawn.athletes[0] ?? athlete('beginner', DEFAULT_NOW.beginner.contactsASession)));

function weeksOf(drawn: Plan, jumper: Athlete): RandomWeeks {
  const book = ruleBook(drawn, jumper);
  const grid = layGrid(drawn, jumper, book);
  const phases = planPhases(drawn, grid);
  const kinds = chooseWeekKinds(drawn, book, grid, phases).value;
  const { contactsASession, sessionsAWeek } = jumper.now.value;
  return {
    weeks: weekTerms(drawn, book, grid, phases, kinds).slice(0, MOST_WEEKS),
    start: contactsASession * sessionsAWeek,
  };
}
