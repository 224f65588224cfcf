// The rules' numbers that decide about days, for each week of one athlete. Looked up once; a rule that the plan leaves
// alone is read once for the season and not once a week. A waiver frees a rule in every week it touches.

import type { RuleId } from '../../library/rules.ts';
import { ageOn } from '../../plan/athlete-facts.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import type { Athlete, DayRange, Waiver } from '../../plan/types.ts';

/** Two things that may not share a day, and no more than that: what is left of a spacing rule when it is waived. */
const OTHER_DATE = 1;

export interface DayRules {
  /** Fewest days from one jump session to the next, and the waiver where one made it so. */
  readonly jumpsApart: number;
  readonly jumpsWaiver: Waiver | undefined;
  readonly liftsApart: number;
  readonly liftsWaiver: Waiver | undefined;
  /** Days before a match, and before a peak, without heavy lower-body lifting; 0 when waived. */
  readonly liftGapMatch: number;
  readonly liftGapPeak: number;
  /** Fewest days from heavy work to a test; 0 when waived. */
  readonly testApart: number;
  /** Days behind drops that stay free; 0 when waived. */
  readonly freeAfterFast: number;
  /** Other jumps from which a day is hard. */
  readonly hardJumps: number;
  /** Fewest lift sessions, whatever the phase. */
  readonly leastLifts: number;
  readonly matchDays: number;
  readonly matchesWithin: number;
  /** Most lift sessions among match days that crowd together; no bound when waived. */
  readonly crowdedLifts: number;
  /** Days of the week that stay free of everything: 0 but for the young. */
  readonly freeDays: number;
}

/** The rules of each week; `weeks` in order, without gaps. */
export function dayRules(book: RuleBook, athlete: Athlete, weeks: readonly DayRange[]): readonly DayRules[] {
  const lookup = lookupFor(book, weeks);
  const value = (rule: RuleId, parameter: string, waived?: number): readonly number[] =>
    lookup.values(rule, parameter, waived);
  const jumpsApart = value('session-spacing', 'apart', OTHER_DATE);
  const jumpsWaiver = lookup.waivers('session-spacing');
  const liftsApart = value('lift-spacing', 'apart', OTHER_DATE);
  const liftsWaiver = lookup.waivers('lift-spacing');
  const liftGapMatch = value('lift-event-gap', 'match', 0);
  const liftGapPeak = value('lift-event-gap', 'peak', 0);
  const testApart = value('test-fresh', 'apart', 0);
  const freeAfterFast = value('fast-spacing', 'free-days', 0);
  const hardJumps = value('fast-spacing', 'hard-practice');
  const leastLifts = value('strength-always', 'least', 0);
  const matchDays = value('congested-week', 'match-days');
  const matchesWithin = value('congested-week', 'within');
  const crowdedLifts = value('congested-week', 'lift-sessions', Infinity);
  const freeDays = youngFreeDays(athlete, weeks, value('rest-day', 'under'), value('rest-day', 'free-days', 0));
  const at = (values: readonly number[], week: number): number => values[week] ?? 0;
  return weeks.map((_, week) => ({
    jumpsApart: at(jumpsApart, week),
    jumpsWaiver: jumpsWaiver[week],
    liftsApart: at(liftsApart, week),
    liftsWaiver: liftsWaiver[week],
    liftGapMatch: at(liftGapMatch, week),
    liftGapPeak: at(liftGapPeak, week),
    testApart: at(testApart, week),
    freeAfterFast: at(freeAfterFast, week),
    hardJumps: at(hardJumps, week),
    leastLifts: at(leastLifts, week),
    matchDays: at(matchDays, week),
    matchesWithin: at(matchesWithin, week),
    crowdedLifts: at(crowdedLifts, week),
    freeDays: at(freeDays, week),
  }));
}

interface Lookup {
  /** By week; `waived` stands in where the rule is waived. */
  readonly values: (rule: RuleId, parameter: string, waived?: number) => readonly number[];
  readonly waivers: (rule: RuleId) => readonly (Waiver | undefined)[];
}

function lookupFor(book: RuleBook, weeks: readonly DayRange[]): Lookup {
  const season = { from: weeks[0]?.from ?? 0, until: weeks.at(-1)?.until ?? 0 };
  const waivers = (rule: RuleId): readonly (Waiver | undefined)[] =>
    book.waiver(rule, season) === undefined ? [] : weeks.map((week) => book.waiver(rule, week));
  const values = (rule: RuleId, parameter: string): readonly number[] => {
    if (book.changes(rule, season).length > 0) return weeks.map((week) => getRuleValue(book, rule, parameter, week));
    const value = getRuleValue(book, rule, parameter, season);
    return weeks.map(() => value);
  };
  return {
    waivers,
    values: (rule, parameter, waived) => {
      const freed = waived === undefined ? [] : waivers(rule);
      return values(rule, parameter).map((value, week) => (freed[week] === undefined ? value : (waived ?? value)));
    },
  };
}

function youngFreeDays(
  athlete: Athlete,
  weeks: readonly DayRange[],
  under: readonly number[],
  freeDays: readonly number[],
): readonly number[] {
  if (athlete.born === undefined) return weeks.map(() => 0);
  return weeks.map((week, index) => {
    const age = ageOn(athlete, week.from);
    return age !== undefined && age < (under[index] ?? 0) ? (freeDays[index] ?? 0) : 0;
  });
}
