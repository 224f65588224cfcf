// What a season of contacts is worth, and whether it is allowed, asked of whole numbers without a division: a week fits
// or it doesn't. Nothing of the scheduler's own sums is used. The answers of the solver and of the search are put to it.

import { VOLUME } from '../../../src/library/volume.ts';
import type { WeekTerms } from '../../../src/schedule/contacts/terms.ts';

export interface Worth {
  /** Contacts under the target in the decisive weeks. */
  readonly shortfall: number;
  /** Contacts off the target in all weeks. */
  readonly distance: number;
}

const PERCENT = 100;

/** Undefined where a week isn't allowed. */
export function worthOf(weeks: readonly WeekTerms[], start: number, contacts: readonly number[]): Worth | undefined {
  let shortfall = 0;
  let distance = 0;
  let adapted = start;
  for (const [index, week] of weeks.entries()) {
    const planned = contacts[index] ?? -1;
    const opening = wholePart(week.openingPercent * adapted, PERCENT);
    if (!isAllowed(week, opening, planned)) return undefined;
    const under = (week.target ?? planned) - planned;
    if (week.decisive) shortfall += Math.max(0, under);
    distance += Math.abs(under);
    adapted = adaptedAfter(week, opening, planned);
  }
  return { shortfall, distance };
}

function isAllowed(week: WeekTerms, opening: number, planned: number): boolean {
  const { fixed, target, reach } = week;
  if (fixed !== undefined && planned !== fixed.contacts) return false;
  if (fixed !== undefined && fixed.kind !== 'pin') return true;
  if (planned % VOLUME.step !== 0 || !fits(week, opening, planned)) return false;
  if (fixed !== undefined) return true;
  return target === undefined ? !fits(week, opening, planned + VOLUME.step) : planned <= reach;
}

/** Whether no bound is under so many contacts. */
function fits(week: WeekTerms, opening: number, planned: number): boolean {
  if (planned === 0) return true;
  if (planned < 0 || week.weekCeilings.some(({ most }) => planned > most)) return false;
  if (week.held !== undefined && planned > opening) return false;
  if (!week.primer && !fitsBesideOthers(week, opening, planned)) return false;
  return fitsGrowth(week, opening, planned) && (week.primer || fitsSessions(week, opening, planned));
}

function fitsBesideOthers({ allJumps }: WeekTerms, opening: number, planned: number): boolean {
  if (allJumps === undefined) return true;
  const { percent, weeks, before, other } = allJumps;
  const isWithin = (planned + other) * weeks * PERCENT <= percent * (opening * weeks + before);
  return isWithin || planned * PERCENT <= VOLUME.leastBesideOthers * opening;
}

function fitsGrowth({ growth }: WeekTerms, opening: number, planned: number): boolean {
  if (growth.kind === 'free') return true;
  if (growth.kind === 'share') return planned * PERCENT <= growth.percent * opening;
  return planned * PERCENT <= (PERCENT + growth.percent) * opening || planned <= opening + growth.contacts;
}

/** The largest of equal sessions in whole steps has to be allowed. */
function fitsSessions(week: WeekTerms, opening: number, planned: number): boolean {
  if (week.possible === 0) return false;
  let session = 0;
  while (session * week.possible < planned) session += VOLUME.step;
  return session <= week.sessionCeiling && fitsSessionGrowth(week, opening, session);
}

function fitsSessionGrowth({ sessionGrowth, usualSessions }: WeekTerms, opening: number, session: number): boolean {
  if (sessionGrowth.kind === 'free' || usualSessions === 0) return true;
  const usual = wholePart(opening, usualSessions);
  if (sessionGrowth.kind === 'share') return session * PERCENT <= sessionGrowth.percent * usual;
  return session * PERCENT <= (PERCENT + sessionGrowth.percent) * usual || session <= usual + sessionGrowth.contacts;
}

function adaptedAfter({ keep }: WeekTerms, opening: number, planned: number): number {
  if (keep.kind === 'fade') return wholePart(keep.leftPercent * opening, PERCENT);
  if (keep.kind === 'stay' || planned >= opening) return Math.max(planned, opening);
  const { keepOwn, keepPlanned } = VOLUME;
  return wholePart(keepOwn * opening + keepPlanned * planned, keepOwn + keepPlanned);
}

const wholePart = (of: number, by: number): number => (of - (of % by)) / by;
