// The contacts of all weeks together. Everything allowed rises with A, so A alone is the state and dynamic programming
// is exact: least shortfall in the decisive weeks, then least distance from the targets, then the least contacts week by
// week. Called by ../contacts.ts.

import { VOLUME } from '../../library/volume.ts';
import { mostAllowed, nextVolume, openingVolume, roundDown } from './bounds.ts';
import type { WeekTerms } from './terms.ts';

/** Larger than any season's distance from its targets, so that one contact of shortfall outweighs it. */
const SHORTFALL_WEIGHT = 1_000_000;

interface Option {
  readonly contacts: number;
  /** A after the week. */
  readonly adapted: number;
}

interface Outlook {
  readonly cost: number;
  readonly best: Option | undefined;
}

/** V of every week from the given A on, or undefined where fixed weeks can't be met. */
export function searchContacts(weeks: readonly WeekTerms[], adapted: number): readonly number[] | undefined {
  const ways = waysThrough(weeks, adapted);
  const outlooks: ReadonlyMap<number, Outlook>[] = [];
  for (let week = weeks.length - 1; week >= 0; week -= 1) {
    const terms = weeks[week];
    if (terms !== undefined) outlooks[week] = outlooksOf(terms, ways[week] ?? NO_WAYS, outlooks[week + 1]);
  }
  return readOff(weeks, adapted, outlooks);
}

/** What a week may have, by A before it. */
type Ways = ReadonlyMap<number, readonly Option[]>;

const NO_WAYS: Ways = new Map();

/** Of each week, for every A that can come before it. */
function waysThrough(weeks: readonly WeekTerms[], adapted: number): readonly Ways[] {
  let states = new Set([adapted]);
  return weeks.map((terms) => {
    const ways = new Map<number, readonly Option[]>();
    const after = new Set<number>();
    for (const state of states) {
      const options = optionsAt(terms, state);
      ways.set(state, options);
      for (const option of options) after.add(option.adapted);
    }
    states = after;
    return ways;
  });
}

function outlooksOf(
  terms: WeekTerms,
  ways: Ways,
  later: ReadonlyMap<number, Outlook> | undefined,
): ReadonlyMap<number, Outlook> {
  const outlooks = new Map<number, Outlook>();
  for (const [state, options] of ways) outlooks.set(state, bestOption(terms, options, later));
  return outlooks;
}

function bestOption(
  terms: WeekTerms,
  options: readonly Option[],
  later: ReadonlyMap<number, Outlook> | undefined,
): Outlook {
  let least = Infinity;
  let best: Option | undefined;
  for (const option of options) {
    const cost = weekCost(terms, option.contacts) + (later?.get(option.adapted)?.cost ?? 0);
    if (cost >= least) continue;
    least = cost;
    best = option;
  }
  return { cost: least, best };
}

/**
 * The contacts worth considering, ascending. Less than the target is never better where the target is allowed: it is
 * further off now, and every later bound is no higher for it. So only the target itself, or the most allowed under it,
 * and what lies between it and the reach.
 */
function optionsAt(terms: WeekTerms, before: number): readonly Option[] {
  const adapted = openingVolume(terms, before);
  const option = (contacts: number): Option => ({ contacts, adapted: nextVolume(terms, adapted, contacts) });
  if (terms.fixed !== undefined && terms.fixed.kind !== 'pin') return [option(terms.fixed.contacts)];
  const most = mostAllowed(terms, adapted);
  if (terms.fixed !== undefined) return terms.fixed.contacts <= most ? [option(terms.fixed.contacts)] : [];
  if (terms.target === undefined) return [option(most)];
  const options: Option[] = [];
  const last = Math.min(most, roundDown(terms.reach));
  for (let contacts = Math.min(most, roundDown(terms.target)); contacts <= last; contacts += VOLUME.step) {
    options.push(option(contacts));
  }
  return options;
}

/** Both levels of the objective in one number. */
export function weekCost(terms: WeekTerms, contacts: number): number {
  if (terms.target === undefined) return 0;
  const shortfall = terms.decisive ? Math.max(0, terms.target - contacts) : 0;
  return shortfall * SHORTFALL_WEIGHT + Math.abs(contacts - terms.target);
}

function readOff(
  weeks: readonly WeekTerms[],
  adapted: number,
  outlooks: readonly ReadonlyMap<number, Outlook>[],
): readonly number[] | undefined {
  const contacts: number[] = [];
  let state = adapted;
  for (let week = 0; week < weeks.length; week += 1) {
    const best = outlooks[week]?.get(state)?.best;
    if (best === undefined) return undefined;
    contacts.push(best.contacts);
    state = best.adapted;
  }
  return contacts;
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
