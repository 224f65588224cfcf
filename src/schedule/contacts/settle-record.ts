// Puts what the record says in the place of what was planned, for the weeks that are over: the weeks behind are planned
// from there. A week without a record counts as the lower of planned and the last recorded week. Called by ../contacts.ts.

import type { RecordedWeek } from '../types.ts';
import { mostAllowed, nextVolume, openingVolume, roundDown } from './bounds.ts';
import { searchContacts } from './search.ts';
import type { WeekTerms } from './terms.ts';

/** The terms with every week that is over fixed at what counts of it. `adapted` is A before the first week. */
export function settleRecord(
  terms: readonly WeekTerms[],
  adapted: number,
  recorded: readonly RecordedWeek[],
): readonly WeekTerms[] {
  const settled = [...terms];
  let state = adapted;
  let last: number | undefined;
  for (const [index, record] of recorded.entries()) {
    const week = terms[index];
    if (week === undefined) break;
    const contacts = countedContacts(terms.slice(index), state, record, last);
    if (record.sessions > 0) last = contacts;
    const [span] = record.spans;
    const { fixedSessions: _, ...rest } = week;
    const over: WeekTerms = { ...rest, fixed: { contacts, kind: 'record', ...(span !== undefined && { span }) } };
    settled[index] = over;
    state = nextVolume(over, openingVolume(over, state), contacts);
  }
  return settled;
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
