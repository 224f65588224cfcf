// The bounds of one week at a given A, and what A becomes. Every bound rises with A, which is what makes the search in
// search.ts exact over A alone. Integer arithmetic throughout.

import type { Bound, BoundRule } from '../../build/types.ts';
import { VOLUME } from '../../library/volume.ts';
import { PERCENT } from '../../util/units.ts';
import type { AllJumps, WeekTerms } from './terms.ts';

/** Largest multiple of the step of contacts that is not over `contacts`. */
export function roundDown(contacts: number): number {
  return Math.floor(contacts / VOLUME.step) * VOLUME.step;
}

/** Whole part of so many per cent. */
export function share(percent: number, of: number): number {
  return Math.floor((percent * of) / PERCENT);
}

/** A as the week begins: less than before it only on the first rung of a ladder. */
export function openingVolume(terms: WeekTerms, adapted: number): number {
  return share(terms.openingPercent, adapted);
}

/** Most contacts the week may rise to; `adapted` is A as the week begins. */
export function growthBound(terms: WeekTerms, adapted: number): number {
  const most = growthAt(terms.growth, adapted);
  return terms.held === undefined ? most : Math.min(most, adapted);
}

function growthAt(growth: WeekTerms['growth'], adapted: number): number {
  if (growth.kind === 'free') return Infinity;
  if (growth.kind === 'share') return share(growth.percent, adapted);
  return Math.max(share(PERCENT + growth.percent, adapted), adapted + growth.contacts);
}

/** Most contacts one session may have by what the athlete is used to, a multiple of the step. */
export function sessionBound(terms: WeekTerms, adapted: number): number {
  return sessionAt(terms.sessionGrowth, terms.usualSessions, adapted);
}

/** The same as in a loading week, where an easy week has less. */
export function loadingSessionBound({ sessionGrowth, usualSessions }: WeekTerms, adapted: number): number {
  const growth = sessionGrowth.kind === 'share' ? (sessionGrowth.otherwise ?? sessionGrowth) : sessionGrowth;
  return sessionAt(growth, usualSessions, adapted);
}

function sessionAt(sessionGrowth: WeekTerms['sessionGrowth'], usualSessions: number, adapted: number): number {
  if (sessionGrowth.kind === 'free' || usualSessions === 0) return Infinity;
  const usual = Math.floor(adapted / usualSessions);
  if (sessionGrowth.kind === 'share') return roundDown(share(sessionGrowth.percent, usual));
  return roundDown(Math.max(share(PERCENT + sessionGrowth.percent, usual), usual + sessionGrowth.contacts));
}

/**
 * What other jumps leave of all that the athlete may do in the week, and no less than a share of A: the rest of a steep
 * rise is practice, which no plan of contacts can cut. Common practice (C).
 */
function besideOthers({ percent, weeks, before, other }: AllJumps, adapted: number): number {
  const all = Math.floor((percent * (adapted * weeks + before)) / (PERCENT * weeks));
  return Math.max(all - other, share(VOLUME.leastBesideOthers, adapted));
}

/** The most the week may have, a multiple of the step; never negative. */
export function mostAllowed(terms: WeekTerms, adapted: number): number {
  // Without a day there is nothing, however much a waiver would leave to a session.
  if (terms.possible === 0 && !terms.primer) return 0;
  let most = growthBound(terms, adapted);
  if (!terms.primer) {
    most = Math.min(most, terms.possible * Math.min(sessionBound(terms, adapted), terms.sessionCeiling));
    if (terms.allJumps !== undefined) most = Math.min(most, besideOthers(terms.allJumps, adapted));
  }
  for (const bound of terms.weekCeilings) most = Math.min(most, bound.most);
  return Math.max(0, roundDown(most));
}

/** Every bound of the week by name, for the reasons; the first of the lowest is the one that holds. */
export function boundsOf(terms: WeekTerms, adapted: number): readonly Bound[] {
  const bounds: Bound[] = [];
  if (terms.growth.kind !== 'free') bounds.push(growthTold(terms.growth, adapted));
  if (terms.held !== undefined) bounds.push({ ...terms.held, most: adapted, params: { adapted } });
  bounds.push(...terms.weekCeilings);
  if (terms.primer) return bounds;
  if (terms.allJumps !== undefined) bounds.push(besideOthersTold(terms.allJumps, adapted));
  const { possible } = terms;
  for (const { by, rule, most, params, otherwise, spans } of terms.sessionCeilings) {
    const told = Object.assign({}, params, { session: most, possible });
    bounds.push({ by, rule, most: most * possible, params: told, otherwise, spans });
  }
  const session = sessionBound(terms, adapted);
  if (session !== Infinity) bounds.push(sessionTold(terms, session, adapted));
  return bounds;
}

function besideOthersTold(allJumps: AllJumps, adapted: number): Bound {
  const { percent, weeks, before, other, spans = [] } = allJumps;
  const params = { percent, adapted, usual: Math.round(before / weeks), other };
  return { by: 'all-jumps-rise', most: besideOthers(allJumps, adapted), params, spans };
}

function growthTold(growth: Exclude<WeekTerms['growth'], { kind: 'free' }>, adapted: number): Bound {
  const { by, percent, spans } = growth;
  const contacts = growth.kind === 'rise' ? { contacts: growth.contacts } : {};
  const otherwise = growth.kind === 'share' && growth.otherwise !== undefined ? growthAt(growth.otherwise, adapted) : 0;
  return {
    by,
    most: growthAt(growth, adapted),
    params: { percent, adapted, ...contacts },
    spans: spans ?? [],
    ...finite(otherwise),
  };
}

function sessionTold(terms: WeekTerms, session: number, adapted: number): Bound {
  const { sessionGrowth: growth, possible, usualSessions } = terms;
  const by = sessionBy(terms);
  const after = growth.kind === 'share' ? growth.otherwise : undefined;
  const otherwise = after === undefined ? 0 : sessionAt(after, usualSessions, adapted);
  const rule = ruleOf(growth);
  const grows = growth.kind === 'free' ? {} : { percent: growth.percent };
  const contacts = growth.kind === 'rise' ? { contacts: growth.contacts } : {};
  return {
    by,
    most: session * possible,
    ...(rule === undefined || by === rule ? {} : { rule }),
    ...finite(otherwise * possible),
    params: { session, possible, usual: Math.floor(adapted / usualSessions), usualSessions, ...grows, ...contacts },
    spans: [
      ...(growth.kind === 'free' ? [] : (growth.spans ?? [])),
      ...(by === 'open-days' ? (terms.closedBy ?? []) : []),
    ],
  };
}

function ruleOf(growth: WeekTerms['sessionGrowth']): Bound['rule'] {
  if (growth.kind === 'rise') return 'session-rise';
  if (growth.kind === 'free' || growth.by === 'hold') return undefined;
  return growth.by === 'taper-cut' ? 'taper-cut' : 'deload-depth';
}

const finite = (otherwise: number): Pick<Bound, 'otherwise'> =>
  otherwise > 0 && otherwise < Infinity ? { otherwise } : {};

/** A session bound holds a week back by itself, or because the week has fewer days than are usual. */
function sessionBy(terms: WeekTerms): BoundRule {
  if (terms.possible < terms.usualSessions) return 'open-days';
  return terms.sessionGrowth.kind === 'share' ? terms.sessionGrowth.by : 'session-rise';
}

/** A after the week: what was done, or what is kept of before, whichever is more. */
export function nextVolume(terms: WeekTerms, adapted: number, contacts: number): number {
  const { keep } = terms;
  if (keep.kind === 'fade') return share(keep.leftPercent, adapted);
  const earned = Math.min(contacts, mostEarned(terms, adapted, contacts));
  if (keep.kind === 'stay') return Math.max(earned, adapted);
  const { keepOwn, keepPlanned } = VOLUME;
  return Math.max(earned, Math.floor((adapted * keepOwn + earned * keepPlanned) / (keepOwn + keepPlanned)));
}

/** Whether a week on record is so far over A that it is hardly true. Where A fades, what was done says nothing to it. */
export function isLeap({ fixed, keep }: WeekTerms, contacts: number): boolean {
  return keep.kind !== 'fade' && contacts > (fixed?.leapsFrom ?? Infinity);
}

/** Whether more was done in a week on record than counts. */
export function isOverPlan({ fixed, keep }: WeekTerms, contacts: number): boolean {
  return keep.kind !== 'fade' && contacts > (fixed?.earnsAtMost ?? Infinity);
}

/** What the athlete may get used to by a week of so many contacts. */
function mostEarned(terms: WeekTerms, adapted: number, contacts: number): number {
  return isTooMuchByHand(terms, adapted, contacts) ? adapted : (terms.fixed?.earnsAtMost ?? Infinity);
}

/** A week written by hand that isn't written, for its rise or what is in it: nobody is used to it for having been asked. */
function isTooMuchByHand({ fixed, growth }: WeekTerms, adapted: number, contacts: number): boolean {
  const { blocked, unwritten } = fixed ?? {};
  if (unwritten === true) return true;
  if (blocked === undefined) return false;
  if (growth.kind === 'share' && growth.by === 'return-ramp') return contacts > growthAt(growth, adapted);
  return contacts > growthAt(blocked.rise, adapted) && contacts * PERCENT > (PERCENT + blocked.severe) * adapted;
}

/** The lowest bound in whole steps; of equal ones the first. */
export function holding(bounds: readonly Bound[]): Bound | undefined {
  return bounds.reduce<Bound | undefined>(
    (least, bound) => (least === undefined || roundDown(bound.most) < roundDown(least.most) ? bound : least),
    undefined,
  );
}
