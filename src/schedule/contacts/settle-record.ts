// Puts what the record says in the place of what was planned, for the weeks that are over: the weeks behind are planned
// from there. A week without a record counts as the lower of planned and the last recorded week. Called by ../contacts.ts.

import { PERCENT } from '../../util/units.ts';
import type { RecordedWeek } from '../types.ts';
import { mostAllowed, nextVolume, openingVolume, roundDown, share } from './bounds.ts';
import { searchContacts } from './search.ts';
import type { WeekTerms } from './terms.ts';

/** How far over A a week may be before it is no step but a leap. */
export interface Leap {
  readonly percent: number;
  /** For small volumes. */
  readonly contacts: number;
}

/**
 * The terms with every week that is over fixed at what counts of it. `adapted` is A before the first week. Nobody is used
 * to a leap for having made it once, or for a slip in the record: A follows what was done up to the leap of each week.
 * Common practice, no source.
 */
export function settleRecord(
  terms: readonly WeekTerms[],
  adapted: number,
  recorded: readonly RecordedWeek[],
  leapOf: (week: number) => Leap,
): readonly WeekTerms[] {
  const settled = [...terms];
  let state = adapted;
  let last: number | undefined;
  for (const [index, record] of recorded.entries()) {
    const week = terms[index];
    if (week === undefined) break;
    const contacts = countedContacts(terms.slice(index), state, record, last);
    if (record.sessions > 0) last = contacts;
    const span = record.rows[0]?.span;
    const { fixedSessions: _, ...rest } = week;
    const opening = openingVolume(week, state);
    const earnsAtMost = leapFrom(opening, leapOf(index));
    const fixed = { contacts, kind: 'record', earnsAtMost, ...(span !== undefined && { span }) } as const;
    const over: WeekTerms = { ...rest, fixed };
    settled[index] = over;
    state = nextVolume(over, opening, contacts);
  }
  return settled;
}

/** The most contacts that are no leap for who is used to `adapted` a week. */
export function leapFrom(adapted: number, { percent, contacts }: Leap): number {
  return Math.max(share(PERCENT + percent, adapted), adapted + contacts);
}

/** Of the first of the weeks. Where nothing was recorded before it either, not more than the athlete is used to. */
function countedContacts(
  weeks: readonly WeekTerms[],
  adapted: number,
  { sessions, contacts, asWritten }: RecordedWeek,
  last: number | undefined,
): number {
  if (sessions > 0 && asWritten === 0) return contacts;
  const planned = plannedContacts(weeks, adapted);
  if (sessions === 0) return Math.min(planned, last ?? adapted);
  const possible = weeks[0]?.possible ?? 1;
  const aSession = Math.floor(planned / Math.max(1, possible));
  // A row without a number may be of lifts alone: no more of them are jump sessions than the week had room for.
  const unnumbered = Math.max(0, possible - (sessions - asWritten));
  return contacts + Math.min(asWritten, unnumbered) * aSession;
}

/** What the week would have had, planned from what was done before it. */
function plannedContacts(weeks: readonly WeekTerms[], adapted: number): number {
  const [week] = weeks;
  const found = searchContacts(weeks, adapted)?.[0];
  if (found !== undefined || week === undefined) return found ?? 0;
  return Math.min(mostAllowed(week, openingVolume(week, adapted)), roundDown(week.reach));
}
