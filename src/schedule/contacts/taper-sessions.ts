// A taper goes down to its end: the sessions of the peak's own week hardly larger than those of the taper week before. That
// hangs on more than A, but a taper moves neither A nor the sums, so ../contacts.ts does it behind the search, as with
// deloads. C.

import { VOLUME } from '../../library/volume.ts';
import { PERCENT } from '../../util/units.ts';
import type { WeekTerms } from './terms.ts';

/** What the sessions of a taper week are held by. */
export interface TaperBefore {
  /** Contacts of the largest session of the taper week before. */
  readonly largest: number;
  /** Most contacts of a session for it, a multiple of the step. */
  readonly session: number;
}

/**
 * What holds the sessions of a week behind a taper week with such a largest session; undefined where nothing does. Rounded
 * up, as the week before was rounded down.
 */
export function taperBefore({ sessionOver, primer }: WeekTerms, largest: number | undefined): TaperBefore | undefined {
  if (sessionOver === undefined || primer || largest === undefined) return undefined;
  const session = roundUp((largest * (PERCENT + sessionOver)) / PERCENT);
  return { largest, session: Math.max(session, VOLUME.smallestSession) };
}

/** Contacts of a week with these held; as found where the coach wrote them. */
export function underTaper({ fixed, possible }: WeekTerms, contacts: number, before: TaperBefore | undefined): number {
  if (before === undefined || fixed !== undefined) return contacts;
  return Math.min(contacts, possible * before.session);
}

/** The largest session of the last taper week, behind this one; closed weeks and primers leave it as it was. */
export function largestBehind(
  { week, primer }: WeekTerms,
  sessions: readonly number[],
  before: number | undefined,
): number | undefined {
  if (week !== 'taper' && week !== 'empty') return undefined;
  return week === 'empty' || primer || sessions.length === 0 ? before : Math.max(...sessions);
}

function roundUp(contacts: number): number {
  return Math.ceil(contacts / VOLUME.step) * VOLUME.step;
}
