// Why a pin of contacts can't be met: a set of lines of the plan that can't all hold, none of them to spare, and what would
// work instead. Found by taking lines out one by one and planning again (a deletion filter), so it runs only when there
// is a conflict. Called by contacts/meet-pins.ts.

import type { RuleId } from '../../library/rules.ts';
import { RULES } from '../../library/rules.ts';
import type { Span } from '../../source/types.ts';
import { searchContacts } from '../contacts/search.ts';
import type { WeekTerms } from '../contacts/terms.ts';
import { BOUNDING_RULES } from '../contacts/week-terms.ts';
import { MOST_PERCENT, withRise } from '../reach.ts';
import { seasonTerms } from '../season-terms.ts';
import type { SeasonTerms } from '../season-terms.ts';
import { factsOf, waiving } from './facts.ts';
import type { Fact, Season } from './facts.ts';
import { isEachEnough, neededFacts } from './needed-facts.ts';

export interface WantedWeek {
  /** From 0. */
  readonly week: number;
  readonly contacts: number;
  /** The pin that asks for it. */
  readonly span: Span;
}

export interface ContactsConflict {
  /** Lines that can't all hold beside the pin; without any one of them, and without other lines, they can. */
  readonly facts: readonly Fact[];
  /** Whether taking out any one of them alone is enough, whatever else the plan says. */
  readonly eachIsEnough: boolean;
  /** First later week, from 0, in which the number can be pinned; absent where there is none. */
  readonly earliest?: number;
  /** The weekly rise in per cent that would do it, alone. */
  readonly rise?: number;
  /** Rules that would have to be waived, all of them, up to that week; absent where waivers don't do it. */
  readonly waivers?: readonly RuleId[];
}

/** The conflict of a pinned week that can't be met. */
export function contactsConflict(season: Season, wanted: WantedWeek): ContactsConflict {
  const isMet = (one: Season): boolean => isPossible(one, wanted);
  const others = factsOf(season).filter((fact) => !isSamePlace(fact.span, wanted.span));
  const facts = neededFacts(season, others, isMet);
  const earliest = earliestWeek(season, wanted);
  const rise = riseNeeded(season, wanted);
  const waivers = waiversNeeded(season, wanted);
  return {
    facts,
    eachIsEnough: isEachEnough(season, facts, isMet),
    ...(earliest !== undefined && { earliest }),
    ...(rise !== undefined && { rise }),
    ...(waivers !== undefined && { waivers }),
  };
}

/** The first later week in which the number can be pinned, the other pins as they are. */
function earliestWeek(season: Season, { week, contacts, span }: WantedWeek): number | undefined {
  const { terms: pinned, start } = seasonOf(season);
  const terms = pinned.map((one, index) => (index === week ? unpinned(one) : one));
  for (let later = week + 1; later < terms.length; later += 1) {
    const moved = terms
      .slice(0, later + 1)
      .map((one, index): WeekTerms => (index === later ? { ...one, fixed: { contacts, kind: 'pin', span } } : one));
    if (searchContacts(moved, start) !== undefined) return later;
  }
  return undefined;
}

function unpinned({ fixed, ...rest }: WeekTerms): WeekTerms {
  return fixed === undefined || fixed.kind === 'pin' ? rest : { ...rest, fixed };
}

function riseNeeded(season: Season, { week }: WantedWeek): number | undefined {
  const { terms, start } = seasonOf(season);
  for (let percent = 1; percent <= MOST_PERCENT; percent += 1) {
    const rising = terms.slice(0, week + 1).map((one) => withRise(one, percent));
    if (searchContacts(rising, start) !== undefined) return percent;
  }
  return undefined;
}

const isSamePlace = (a: Span, b: Span): boolean => a.file === b.file && a.start === b.start;

const seasonOf = ({ plan, athlete, asOf, unwritten }: Season): SeasonTerms =>
  seasonTerms(plan, athlete, asOf, unwritten);

/** Whether the pins up to the wanted week can all be met. */
export function isPossible(season: Season, { week }: Pick<WantedWeek, 'week'>): boolean {
  const { terms, start } = seasonOf(season);
  return searchContacts(terms.slice(0, week + 1), start) !== undefined;
}

const BOUNDING: ReadonlySet<string> = new Set(BOUNDING_RULES);

/** All waivers that can be, then without each that isn't needed. */
function waiversNeeded(season: Season, wanted: WantedWeek): readonly RuleId[] | undefined {
  const { starts: from, ends: until } = season.plan.season;
  const isPossibleWaiving = (rules: readonly RuleId[]): boolean =>
    isPossible(waiving(season, rules, { from, until }, wanted.span), wanted);
  let rules = RULES.filter(({ id, waivable }) => waivable && BOUNDING.has(id)).map(({ id }) => id);
  if (!isPossibleWaiving(rules)) return undefined;
  for (const rule of rules) {
    const fewer = rules.filter((one) => one !== rule);
    if (isPossibleWaiving(fewer)) rules = fewer;
  }
  return rules;
}
