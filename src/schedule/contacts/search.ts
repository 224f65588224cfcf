// The contacts of all weeks together. Everything allowed rises with A, so A alone is the state and dynamic programming
// is exact: least shortfall in the decisive weeks, then least distance from the targets, then the least contacts week by
// week. Called by ../contacts.ts.

import { VOLUME } from '../../library/volume.ts';
import { mostAllowed, nextVolume, openingVolume, roundDown } from './bounds.ts';
import type { WeekTerms } from './terms.ts';

/** Larger than any season's distance from its targets, so that one contact of shortfall outweighs it. */
const SHORTFALL_WEIGHT = 1_000_000;

/** The best that is left of a season: from one week on, at one A before it. */
interface Outlook {
  readonly cost: number;
  /** Of the week itself. */
  readonly contacts: number;
  /** A after the week. */
  readonly adapted: number;
}

const SEASON_OVER: Outlook = { cost: 0, contacts: 0, adapted: 0 };

/** V of every week from the given A on, or undefined where fixed weeks can't be met. */
export function searchContacts(weeks: readonly WeekTerms[], adapted: number): readonly number[] | undefined {
  const outlookAt = outlooksOf(weeks);
  const contacts: number[] = [];
  let state = adapted;
  for (let week = 0; week < weeks.length; week += 1) {
    const best = outlookAt(week, state);
    if (best.cost === Infinity) return undefined;
    contacts.push(best.contacts);
    state = best.adapted;
  }
  return contacts;
}

/** Each is worked out when it is first asked for, with those behind it. */
function outlooksOf(weeks: readonly WeekTerms[]): (week: number, before: number) => Outlook {
  const known = weeks.map(() => new Map<number, Outlook>());
  const outlookAt = (week: number, before: number): Outlook => {
    const terms = weeks[week];
    if (terms === undefined) return SEASON_OVER;
    const found = known[week]?.get(before);
    if (found !== undefined) return found;
    const made = bestFrom(terms, before, (after) => outlookAt(week + 1, after).cost);
    known[week]?.set(before, made);
    return made;
  };
  return outlookAt;
}

/** Of what costs the same the least. The cost is endless where a pin can't be met. */
function bestFrom(terms: WeekTerms, before: number, costAfter: (adapted: number) => number): Outlook {
  const opening = openingVolume(terms, before);
  const { least, most } = contactsWorthTrying(terms, opening);
  let best: Outlook = { cost: Infinity, contacts: 0, adapted: 0 };
  for (let contacts = least; contacts <= most; contacts += VOLUME.step) {
    const adapted = nextVolume(terms, opening, contacts);
    const cost = weekCost(terms, contacts) + costAfter(adapted);
    if (cost < best.cost) best = { cost, contacts, adapted };
  }
  return best;
}

/** From the least to the most in steps; nothing where the most is less. */
interface Contacts {
  readonly least: number;
  readonly most: number;
}

/**
 * Less than the target is never better where the target is allowed: it is further off now, and every later bound is no
 * higher for it. So only the target itself, or the most allowed under it, and what lies between it and the reach.
 */
function contactsWorthTrying(terms: WeekTerms, opening: number): Contacts {
  const { fixed, target } = terms;
  if (fixed !== undefined && fixed.kind !== 'pin') return { least: fixed.contacts, most: fixed.contacts };
  const most = mostAllowed(terms, opening);
  if (fixed !== undefined) return { least: fixed.contacts, most: Math.min(most, fixed.contacts) };
  if (target === undefined) return { least: most, most };
  return { least: Math.min(most, roundDown(target)), most: Math.min(most, roundDown(terms.reach)) };
}

/** Both levels of the objective in one number. */
export function weekCost(terms: WeekTerms, contacts: number): number {
  if (terms.target === undefined) return 0;
  const shortfall = terms.decisive ? Math.max(0, terms.target - contacts) : 0;
  return shortfall * SHORTFALL_WEIGHT + Math.abs(contacts - terms.target);
}

export interface CeilingWeek {
  /** The highest safe volume. */
  readonly most: number;
  /** A as the week begins, when every week before it had its most. */
  readonly opening: number;
}

/** The highest safe volume of each week: always the most, whatever the targets, pins and programmes. */
export function ceilingLine(weeks: readonly WeekTerms[], adapted: number): readonly CeilingWeek[] {
  let state = adapted;
  return weeks.map((week) => {
    const { fixed, ...free } = week;
    const terms = fixed?.kind === 'record' ? week : free;
    const opening = openingVolume(terms, state);
    const most = fixed?.kind === 'record' ? fixed.contacts : mostAllowed(terms, opening);
    state = nextVolume(terms, opening, most);
    return { most, opening };
  });
}
