// Puts what the record says in the place of what was planned, for the weeks that are over: the weeks behind are planned
// from there. A week without a record counts as the lower of planned and the last recorded week. Called by season-terms.ts.

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
  /** How far the week may rise where nothing is waived, in per cent; it may by the contacts as well. */
  readonly rise: number;
}

/** What settles a record. */
export interface Settling {
  /** The terms of the weeks as they are known now. */
  readonly terms: readonly WeekTerms[];
  /** The same without what only happened in the weeks themselves: what their sheets went by. */
  readonly sheets: readonly WeekTerms[];
  /** A before the first week. */
  readonly adapted: number;
  readonly recorded: readonly RecordedWeek[];
  readonly leapOf: (week: number) => Leap;
}

/**
 * The terms with every week that is over fixed at what counts of it. Nobody is planned more for having done more than was
 * written, or for a slip in the record: A follows what was done up to what the week was planned at, and never further than
 * the leap of the week. Common practice, no source.
 */
export function settleRecord({ terms, sheets, adapted, recorded, leapOf }: Settling): readonly WeekTerms[] {
  const settled = [...terms];
  const [onSheets, asKnown] = [plannedContacts(sheets), plannedContacts(terms)];
  let state = adapted;
  let last: number | undefined;
  for (const [index, record] of recorded.entries()) {
    const week = terms[index];
    if (week === undefined) break;
    const planned = onSheets(index, state);
    // Of a week in which it began to hurt less counts where no number is written.
    const known = week === sheets[index] ? planned : Math.min(planned, asKnown(index, state));
    const contacts = countedContacts(week, known, state, record, last);
    if (record.sessions > 0) last = Math.min(contacts, planned);
    const span = record.rows[0]?.span;
    const { fixedSessions: _, ...rest } = week;
    const opening = openingVolume(week, state);
    const leap = leapOf(index);
    const leapsFrom = leapFrom(opening, leap);
    const earnsAtMost = Math.min(leapsFrom, planned, riseUnwaived(week, opening, leap));
    const fixed = { contacts, kind: 'record', earnsAtMost, leapsFrom, ...(span !== undefined && { span }) } as const;
    const over: WeekTerms = { ...rest, fixed };
    settled[index] = over;
    state = nextVolume(over, opening, contacts);
  }
  return settled;
}

/** The most contacts that are no leap for who is used to `adapted` a week. */
export function leapFrom(adapted: number, { percent, contacts }: Pick<Leap, 'percent' | 'contacts'>): number {
  return Math.max(share(PERCENT + percent, adapted), adapted + contacts);
}

/** A waiver may be the answer to a warning, and asks for no more volume; a number of the coach's own does. */
function riseUnwaived({ growth, fixed }: WeekTerms, adapted: number, { rise, contacts }: Leap): number {
  return growth.kind === 'free' && fixed === undefined
    ? roundDown(leapFrom(adapted, { percent: rise, contacts }))
    : Infinity;
}

/** Of a week. Where nothing was recorded before it either, not more than the athlete is used to. */
function countedContacts(
  { possible }: WeekTerms,
  planned: number,
  adapted: number,
  { sessions, contacts, asWritten }: RecordedWeek,
  last: number | undefined,
): number {
  if (sessions > 0 && asWritten === 0) return contacts;
  if (sessions === 0) return Math.min(planned, last ?? adapted);
  const aSession = Math.floor(planned / Math.max(1, possible));
  // A row without a number may be of lifts alone: no more of them are jump sessions than the week had room for.
  const unnumbered = Math.max(0, possible - (sessions - asWritten));
  return contacts + Math.min(asWritten, unnumbered) * aSession;
}

/**
 * What a week had, planned from what was done before it. As long as the weeks go as they were planned, one search is that
 * of them all.
 */
function plannedContacts(weeks: readonly WeekTerms[]): (week: number, adapted: number) => number {
  const ahead = new Map<number, { readonly adapted: number; readonly contacts: number }>();
  return (index, adapted) => {
    const known = ahead.get(index);
    if (known?.adapted === adapted) return known.contacts;
    const [week] = weeks.slice(index);
    const found = searchContacts(weeks.slice(index), adapted);
    if (week === undefined) return 0;
    if (found === undefined) return Math.min(mostAllowed(week, openingVolume(week, adapted)), roundDown(week.reach));
    let state = adapted;
    for (const [at, contacts] of found.entries()) {
      const one = weeks[index + at] ?? week;
      ahead.set(index + at, { adapted: state, contacts });
      state = nextVolume(one, openingVolume(one, state), contacts);
    }
    return found[0] ?? 0;
  };
}
