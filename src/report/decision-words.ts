// What a coach decided beside the plan itself, in words: pins, changed rules, waivers, each with whom it is for and when.
// The reason is kept apart, so that a page on a wall can leave it out.

import { findParameter } from '../library/rules.ts';
import type { Athlete, DayRange, Pin, PinEffect, Plan, RuleChange, Waiver, Who } from '../plan/types.ts';
import { WEEKDAY_NAMES } from '../util/days.ts';
import { dateWords } from './calendar-words.ts';
import { exerciseName } from './exercise-words.ts';
import { loadWords } from '../util/quantities.ts';
import { amountWords } from './rule-report.ts';
import { kindWords } from './week-words.ts';

export interface Decision {
  /** `150 jumps a week`. */
  readonly what: string;
  readonly who: string;
  /** `1 Mar – 7 Mar`. */
  readonly when: string;
  /** As the coach wrote it; may be a reason of health. */
  readonly because: string;
}

/** What an athlete is called on the page. */
export type NameOf = (athlete: Athlete) => string;

/** Pins, then changed rules, in the order of the plan. `nameOf` says what athletes are called on the page. */
export const decisionsOf = (plan: Plan, nameOf: NameOf): readonly Decision[] => [
  ...plan.pins.map((pin) => decision(plan, pin, pinWords(plan, pin), nameOf)),
  ...plan.ruleChanges.map((change) => decision(plan, change, ruleWords(plan, change), nameOf)),
];

/** Waivers in the order of the plan, for the season as a whole; who only wants those in force picks by their days. */
export const waiversOf = (plan: Plan, nameOf: NameOf): readonly Decision[] =>
  plan.waivers.map((waiver) => decision(plan, waiver, waiverWords(waiver), nameOf));

type Dated = { readonly who: Who; readonly range: DayRange; readonly because: string };

function decision(plan: Plan, { who, range, because }: Dated, what: string, nameOf: NameOf): Decision {
  return { what, who: whoWords(plan, who, nameOf), when: rangeInSeason(plan, range), because };
}

/** Names, squads, or everybody. */
export function whoWords({ athletes }: Pick<Plan, 'athletes'>, who: Who, nameOf: NameOf): string {
  if (who.kind === 'everybody') return 'everybody';
  const named = athletes.filter(({ id }) => who.athletes.includes(id));
  return [...who.squads, ...named.map(nameOf)].join(', ');
}

/** What of a range lies in the season; all of it is `all season`. */
export function rangeInSeason({ season }: Pick<Plan, 'season'>, range: DayRange): string {
  const from = Math.max(range.from, season.starts);
  const until = Math.min(range.until, season.ends);
  if (from <= season.starts && until >= season.ends) return 'all season';
  return from === until ? dateWords(from) : `${dateWords(from)} – ${dateWords(until)}`;
}

/** A rule's id without its dashes reads as what it is about. */
const ruleName = (id: string): string => id.replaceAll('-', ' ');

const waiverWords = ({ rule, decided }: Waiver): string =>
  `${ruleName(rule)} waived${decided === undefined ? '' : `, decided by ${decided}`}`;

/** `weekly rise: most rise over the adapted volume 8 %`. */
function ruleWords({ season }: Plan, { rule, parameters }: RuleChange): string {
  const values = [...parameters].map(([name, value]) => {
    const known = findParameter(rule, name);
    return known === undefined ? `${name} ${value}` : `${known.says} ${amountWords(value, known.unit, season.units)}`;
  });
  return `${ruleName(rule)}: ${values.join(', ')}`;
}

const pinWords = (plan: Plan, { effects }: Pin): string =>
  effects.map((effect) => effectWords(plan, effect)).join('; ');

function effectWords({ library, season }: Plan, effect: PinEffect): string {
  const nameOf = (id: string): string => exerciseName(library, id, season.units).toLowerCase();
  switch (effect.kind) {
    case 'contacts':
      return `${effect.contactsAWeek} jumps a week`;
    case 'phase':
      return `${effect.phase} phase`;
    case 'rest':
      return 'no session';
    case 'week-kind':
      return `week of kind: ${kindWords(effect.weekKind)}`;
    case 'swap':
      return [...effect.swaps].map(([from, to]) => `${nameOf(to)} for ${nameOf(from)}`).join(', ');
    case 'leave-out':
      return `without ${effect.exercises.map(nameOf).join(', ')}`;
    case 'keep':
      return `keeps ${effect.exercises.map(nameOf).join(', ')}`;
    case 'add':
      return `adds ${effect.lines.map(({ exercise }) => nameOf(exercise.id)).join(', ')}`;
    case 'sets':
      return [...effect.sets].map(([id, sets]) => `${nameOf(id)} ${sets} sets`).join(', ');
    case 'load':
      return [...effect.loadsGrams].map(([id, grams]) => `${nameOf(id)} ${loadWords(grams, season.units)}`).join(', ');
    case 'on':
      return `jumps on ${effect.days.map((day) => WEEKDAY_NAMES[day]).join(', ')}`;
  }
}
