// Why a pinned day can't be held: a smallest set of lines that can't all hold, and what would work instead. Found by
// taking lines out and choosing days again, so it runs only where there is a conflict. Handed to ../days.ts by
// first-stages.ts.

import { weekFrom } from '../../plan/applies.ts';
import type { RuleId } from '../../library/rules.ts';
import type { Pin } from '../../plan/types.ts';
import { DAYS_A_WEEK, weekdayOf } from '../../util/days.ts';
import type { Day, Weekday } from '../../util/days.ts';
import { chooseContacts } from '../contacts.ts';
import { scheduleDays } from '../days.ts';
import { weekStart } from '../grid.ts';
import { seasonTerms } from '../season-terms.ts';
import type { DaysWeek } from '../types.ts';
import { factsOf, waiving } from './facts.ts';
import type { Fact, Season } from './facts.ts';
import { isEachEnough, neededFacts } from './needed-facts.ts';

export interface DayConflict {
  /** Lines that can't all hold beside what is asked; without any one of them, and without other lines, they can. */
  readonly facts: readonly Fact[];
  /** Whether taking out any one of them alone is enough, whatever else the plan says. */
  readonly eachIsEnough: boolean;
  /** Other days of the week that could be named instead. */
  readonly instead: readonly Day[];
  /** Rules of which a waiver alone would do it. */
  readonly waivers: readonly RuleId[];
}

/** Rules that keep jump sessions from days. */
const DAY_RULES: readonly RuleId[] = ['session-spacing', 'event-gap', 'after-event', 'congested-week'];

/** The conflict of one day of an `on:` pin that holds no jump session. */
export function dayConflict(season: Season, pin: Pin, day: Day): DayConflict {
  const wish = splitPin(season, pin, day);
  const isHeld = (one: Season): boolean => jumpDays(one).has(day);
  const { facts, eachIsEnough } = linesAgainst(wish.season, wish.pin, isHeld);
  const weekOf = weekFrom(weekStart(season.plan, day));
  return {
    facts,
    eachIsEnough,
    instead: insteadOf(wish, day),
    waivers: DAY_RULES.filter((rule) => isHeld(waiving(wish.season, [rule], weekOf, season.athlete.span))),
  };
}

function linesAgainst(
  season: Season,
  wish: Pin,
  isPossible: (season: Season) => boolean,
): Pick<DayConflict, 'facts' | 'eachIsEnough'> {
  const facts = neededFacts(
    season,
    factsOf(season).filter(({ item }) => item !== wish),
    isPossible,
  );
  return { facts, eachIsEnough: isEachEnough(season, facts, isPossible) };
}

function chooseDays({ plan, athlete, asOf, unwritten }: Season): ReturnType<typeof scheduleDays> {
  const terms = seasonTerms(plan, athlete, asOf, unwritten);
  const { grid, phases, kinds } = terms;
  const contacts = chooseContacts(plan, terms, asOf);
  return scheduleDays(plan, { grid, phases, kinds: kinds.value, contacts });
}

const jumpsIn = ({ sessions }: DaysWeek): readonly Day[] =>
  sessions.flatMap(({ day, contacts }) => (contacts > 0 ? [day] : []));

const jumpDays = (season: Season): ReadonlySet<Day> => new Set(chooseDays(season).value.flatMap(jumpsIn));

interface Wish {
  readonly season: Season;
  /** The pin that names the one day, and nothing else. */
  readonly pin: Pin;
  readonly others: readonly Weekday[];
}

/** The season with the pin taken apart, so that its other days, its other weeks and what else it says can be left out. */
function splitPin({ plan, ...rest }: Season, pin: Pin, day: Day): Wish {
  const starts = weekStart(plan, day);
  const from = Math.max(pin.range.from, starts);
  const until = Math.min(pin.range.until, starts + DAYS_A_WEEK - 1);
  const named = pin.effects.flatMap((effect) => (effect.kind === 'on' ? effect.days : []));
  const others = named.filter((one) => one !== weekdayOf(day));
  const here = (effects: Pin['effects']): Pin => ({ ...pin, range: { from, until }, effects });
  const wish = here([{ kind: 'on', days: [weekdayOf(day)] }]);
  const parts: readonly Pin[] = [
    { ...pin, range: { from: pin.range.from, until: from - 1 } },
    here(pin.effects.filter(({ kind }) => kind !== 'on')),
    ...(others.length === 0 ? [] : [here([{ kind: 'on', days: others }])]),
    { ...pin, range: { from: until + 1, until: pin.range.until } },
    wish,
  ];
  const meant = parts.filter(({ range, effects }) => range.from <= range.until && effects.length > 0);
  const pins = plan.pins.flatMap((one) => (one === pin ? meant : [one]));
  return { season: { ...rest, plan: { ...plan, pins } }, pin: wish, others };
}

/** Days of the week that are held, each in place of the day that can't be, beside the other days of the pin. */
function insteadOf({ season, pin, others }: Wish, day: Day): readonly Day[] {
  const { plan } = season;
  const starts = weekStart(plan, day);
  const week = Array.from({ length: DAYS_A_WEEK }, (_, index) => starts + index);
  return week.filter((other) => {
    if (other === day || others.includes(weekdayOf(other))) return false;
    const moved: Pin = { ...pin, effects: [{ kind: 'on', days: [weekdayOf(other)] }] };
    const held = jumpDays({ ...season, plan: { ...plan, pins: plan.pins.map((one) => (one === pin ? moved : one)) } });
    const beside = week.filter((one) => others.includes(weekdayOf(one)));
    return held.has(other) && beside.every((one) => held.has(one));
  });
}
