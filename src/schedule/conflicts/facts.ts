// The lines of a plan that can stand in the way of an athlete's season, each of which can be taken out to see what is
// possible without it. Called by the other files of this folder; nothing here changes the plan it is given.

import type { RuleId } from '../../library/rules.ts';
import { appliesTo } from '../../plan/applies.ts';
import type { Athlete, DayRange, Pin, Plan, Waiver, Who } from '../../plan/types.ts';
import type { Span } from '../../source/types.ts';
import type { Day } from '../../util/days.ts';

/** Lists of the plan whose items can be taken out, those that are least likely meant first. */
const PLAN_LISTS = ['competitions', 'practice', 'tests', 'ruleChanges', 'uses', 'closures'] as const;
const ATHLETE_LISTS = ['away', 'returning', 'limits'] as const;

export type FactKind = (typeof PLAN_LISTS)[number] | (typeof ATHLETE_LISTS)[number] | 'pins';

export interface Fact {
  readonly kind: FactKind;
  readonly span: Span;
  /** The item itself: it is recognised by being the same object. */
  readonly item: object;
}

export interface Season {
  readonly plan: Plan;
  readonly athlete: Athlete;
  /** Weeks wholly before this day are what the record says; no line can be taken out of that. */
  readonly asOf: Day | undefined;
  /** First days of weeks written by hand that the audit bars. */
  readonly unwritten?: ReadonlySet<Day>;
}

/** All lines that are for the athlete, in the order in which a conflict would rather do without them. */
export function factsOf({ plan, athlete }: Season): readonly Fact[] {
  const inPlan = PLAN_LISTS.flatMap((kind) =>
    plan[kind]
      .filter((item: { readonly who: Who }) => appliesTo(item.who, athlete))
      .map((item): Fact => ({ kind, span: item.span, item })),
  );
  const own = ATHLETE_LISTS.flatMap((kind) => athlete[kind].map((item): Fact => ({ kind, span: item.span, item })));
  const pins = plan.pins
    .filter((pin) => appliesTo(pin.who, athlete) && bearsOnContacts(pin))
    .map((pin): Fact => ({ kind: 'pins', span: pin.span, item: pin }));
  return [...inPlan, ...own, ...pins];
}

const BEARING: ReadonlySet<string> = new Set(['contacts', 'phase', 'rest', 'week-kind', 'on']);

const bearsOnContacts = ({ effects }: Pin): boolean => effects.some(({ kind }) => BEARING.has(kind));

/** The season without some of its lines. */
export function without({ plan, athlete, ...standing }: Season, out: ReadonlySet<object>): Season {
  const left = <T extends object>(items: readonly T[]): readonly T[] => items.filter((item) => !out.has(item));
  return {
    ...standing,
    plan: {
      ...plan,
      competitions: left(plan.competitions),
      practice: left(plan.practice),
      tests: left(plan.tests),
      ruleChanges: left(plan.ruleChanges),
      uses: left(plan.uses),
      closures: left(plan.closures),
      pins: left(plan.pins),
    },
    athlete: {
      ...athlete,
      away: left(athlete.away),
      returning: left(athlete.returning),
      limits: left(athlete.limits),
    },
  };
}

/** The season with rules waived for the athlete; what a waiver would stand at is where `span` is. */
export function waiving(season: Season, rules: readonly RuleId[], range: DayRange, span: Span): Season {
  const { plan, athlete } = season;
  const who = { kind: 'some', squads: [], athletes: [athlete.id] } as const;
  const waivers = rules.map((rule): Waiver => ({ rule, range, who, because: '', span }));
  return { ...season, plan: { ...plan, waivers: [...plan.waivers, ...waivers] } };
}

const FACT_WORDS: Readonly<Record<FactKind, string>> = {
  competitions: 'this competition stands against it',
  practice: 'the jumps of this practice stand against it',
  tests: 'this test day stands against it',
  ruleChanges: 'this changed rule stands against it',
  uses: 'this programme stands against it',
  closures: 'this closure stands against it',
  away: 'this absence stands against it',
  returning: 'this stage of the return stands against it',
  limits: 'this limit stands against it',
  pins: 'this other pin stands against it',
};

/** What a line is to what is asked for, beside its place. */
export const factWords = ({ kind }: Pick<Fact, 'kind'>): string => FACT_WORDS[kind];
