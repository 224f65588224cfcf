// The week that is under way on the day a season is planned. Its days so far stay as their sheets had them, and so do the
// days of what is left: what of it was done over what was written, and what the record lets the week have less, is taken
// from the sessions that are left. What was done less is not made up for. Called by first-stages.ts once the days are
// chosen; A stays that of the week as it is planned now, and is settled when it is over (contacts/settle-record.ts).

import type { Bound, Reason } from '../build/types.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { VOLUME } from '../library/volume.ts';
import { doneBy } from '../plan/done-by.ts';
import type { Athlete, DoneRow, Plan } from '../plan/types.ts';
import { DAYS_A_WEEK, isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { weekFrom } from '../plan/applies.ts';
import { getRuleValue, ruleBook } from '../plan/rule-book.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import { openingVolume, roundDown } from './contacts/bounds.ts';
import { leapFrom } from './contacts/settle-record.ts';
import { splitWeek } from './contacts/split.ts';
import { nearDone } from './near-done.ts';
import { isRiseWaived } from './record-findings.ts';
import { leapIn } from './season-terms.ts';
import type { SeasonTerms } from './season-terms.ts';
import type { AthleteSchedule, ContactsWeek, DaysWeek, ScheduledSession, WeekCells } from './types.ts';

/** A week of an athlete as the stages before the lines have it. */
interface PlannedWeek {
  readonly contacts: ContactsWeek;
  readonly days: DaysWeek;
}

/** What was done of the week before a day, and what was written for it. */
interface SoFar {
  /** That day: the first whose sessions are still to come. */
  readonly from: Day;
  /** Contacts on the record. */
  readonly done: number;
  /** Contacts on the sheets of the same days. */
  readonly written: number;
  readonly rows: readonly DoneRow[];
}

interface Running extends Pick<AthleteSchedule, 'contacts' | 'days'> {
  /** The season as it was on the week's first day, where the record of the week plans it otherwise. */
  readonly sheets: Pick<AthleteSchedule, 'contacts' | 'days'> | undefined;
}

export interface HeldSeason extends Pick<AthleteSchedule, 'contacts' | 'days'> {
  readonly diagnostics: readonly Diagnostic[];
}

/** The season with the sessions to come of the week that `asOf` is in cut by what was done of it over its sheets. */
export function holdWhatIsLeft(
  plan: Plan,
  { grid, terms }: SeasonTerms,
  asOf: Day | undefined,
  { contacts, days, sheets }: Running,
): HeldSeason {
  const { athlete, weeks } = grid;
  const running = runningWeek(weeks, asOf);
  const of = terms[running?.index ?? -1];
  const now = plannedWeek({ contacts, days }, running?.index ?? -1);
  const rows = running === undefined || asOf === undefined ? [] : rowsOf(plan, athlete, running.starts, asOf);
  const isQuiet = rows.length === 0 && sheets === undefined;
  if (running === undefined || asOf === undefined || of === undefined || now === undefined || isQuiet)
    return { contacts, days, diagnostics: [] };
  const { index, starts } = running;
  const written = sheets === undefined ? now : (plannedWeek(sheets, index) ?? now);
  // What is written by hand stands as it is, whatever the record says of it.
  const sheetsHad = written.contacts.boundBy === 'programme' ? now : written;
  const book = ruleBook(plan, athlete);
  const hurt = hurtFrom(plan, athlete, book, { starts, asOf });
  const planned = holdBehindPain(sheetsHad, now.contacts, hurt);
  const far = soFar(planned, rows, asOf);
  const held = holdRunningWeek(planned, now.contacts, far, sheetsHad.contacts);
  const hurts = isHurt(now.contacts) && !isHurt(sheetsHad.contacts) && sheetsHad.contacts.boundBy !== 'programme';
  const usual = openingVolume(of, planned.contacts.adaptedBefore);
  const leap = isRiseWaived(of) ? Infinity : leapFrom(usual, leapIn(book, grid, index));
  return {
    contacts: contacts.with(index, hurts ? { ...held.contacts, hurtsFrom: hurt.holds } : held.contacts),
    days: days.with(index, held.days),
    diagnostics: [
      ...findingsOnRunningWeek(athlete, starts, far, {
        planned,
        sheetsHad: sheetsHad.contacts,
        now: now.contacts,
        held,
        leapFrom: leap,
      }),
      ...nearDone(athlete, book, { starts, asOf, days: held.days, rows: far.rows }),
    ],
  };
}

function plannedWeek(
  { contacts, days }: Pick<AthleteSchedule, 'contacts' | 'days'>,
  index: number,
): PlannedWeek | undefined {
  const [ofWeek, daysOfWeek] = [contacts[index], days[index]];
  return ofWeek === undefined || daysOfWeek === undefined ? undefined : { contacts: ofWeek, days: daysOfWeek };
}

/** The week that a day falls into behind its first day. */
export function runningWeek(weeks: readonly WeekCells[], asOf: Day | undefined): WeekCells | undefined {
  return asOf === undefined ? undefined : weeks.find(({ starts }) => starts < asOf && asOf < starts + DAYS_A_WEEK);
}

/** Whether what is on record of the week itself changes what it may have: a morning that hurt, or more other jumps. */
export function isReplanned({ past }: SeasonTerms, { index, starts, cells }: WeekCells): boolean {
  const pain = past.painful.get(index);
  if (pain !== undefined && pain.day >= starts) return true;
  return cells.some(
    ({ practiceJumps, matchJumps, testContacts, plannedJumps }) =>
      plannedJumps !== undefined && practiceJumps + matchJumps + testContacts > plannedJumps,
  );
}

const rowsOf = ({ record }: Plan, { id }: Athlete, starts: Day, until: Day): readonly DoneRow[] =>
  doneBy(record, id).filter(({ kind, day }) => kind === 'session' && starts <= day && day < until);

/**
 * The week with its sessions to come cut by what was done over, in whole steps, as nobody counts jumps more exactly than
 * that (common practice, no source), and by what it may have less `now`. What is written by hand stays, and a week that
 * pain stopped before it began has nothing to cut.
 */
function holdRunningWeek(planned: PlannedWeek, now: ContactsWeek, far: SoFar, sheetsHad: ContactsWeek): PlannedWeek {
  const [over, less] = [overOf(far), Math.max(0, planned.contacts.contacts - now.contacts)];
  const left = jumpsLeft(planned.days, far.from);
  const { boundBy, contacts } = planned.contacts;
  if (boundBy === 'programme') return planned;
  const isCut = planned.contacts.underWay !== undefined;
  if (over + less === 0 || left.length === 0 || contacts === 0)
    return isCut ? planned : { ...planned, contacts: asPlanned(planned.contacts, now, far) };
  const sizes = sizesLeft(left, over + less, planned.contacts);
  // What leaves the week nothing weighs more than what was done over.
  const because = over > 0 && now.contacts > 0 ? reasonOf(far, sheetsHad) : lessBecause(sheetsHad, now);
  return cutTo(sizes, planned, now, far, because);
}

/** What pain lets the week have less, taken from the days behind it, however late in the week the season is planned again. */
function holdBehindPain(planned: PlannedWeek, now: ContactsWeek, { holds, stops }: HurtFrom): PlannedWeek {
  const from = now.contacts === 0 ? stops : holds;
  const less = planned.contacts.contacts - now.contacts;
  const left = jumpsLeft(planned.days, from);
  const isLess = now.boundBy === 'pain-hold' && planned.contacts.boundBy !== 'programme' && less > 0;
  if (!isLess || left.length === 0) return planned;
  const written = sumOf(planned.days.sessions.filter(({ day }) => day < from));
  const sizes = sizesLeft(left, less, planned.contacts);
  return cutTo(sizes, planned, now, { from, written }, lessBecause(planned.contacts, now));
}

function cutTo(
  sizes: ReadonlyMap<ScheduledSession, number>,
  planned: PlannedWeek,
  now: ContactsWeek,
  far: Pick<SoFar, 'from' | 'written'>,
  because: Reason,
): PlannedWeek {
  const sessions = planned.days.sessions.flatMap((one) => heldSession(one, far.from, sizes, because));
  return {
    contacts: heldContacts(planned.contacts, now, far, sizes, because),
    days: { ...planned.days, sessions },
  };
}

/** The days behind the first mornings of the week that hold or stop; what is planned on is the latest of either. */
interface HurtFrom {
  readonly holds: Day;
  readonly stops: Day;
}

function hurtFrom(
  { record }: Plan,
  { id }: Athlete,
  book: RuleBook,
  { starts, asOf }: { readonly starts: Day; readonly asOf: Day },
): HurtFrom {
  const range = weekFrom(starts);
  const rows = doneBy(record, id).filter(({ day }) => starts <= day && day < asOf);
  const behind = (parameter: 'hold' | 'stop'): Day => {
    const least = getRuleValue(book, 'pain-hold', parameter, range);
    const first = rows.find(({ pain = 0 }) => pain >= least);
    return first === undefined ? asOf : first.day + 1;
  };
  return { holds: behind('hold'), stops: behind('stop') };
}

const isHurt = ({ bounds }: ContactsWeek): boolean => bounds.some(({ by }) => by === 'pain-hold');

/** With nothing to cut the week has what its sheets had; where they had more than it may have now, that is still said. */
function asPlanned(planned: ContactsWeek, now: ContactsWeek, { from }: SoFar): ContactsWeek {
  const { contacts, boundBy, reasons } = planned;
  if (planned === now || contacts <= now.contacts) return { ...now, contacts };
  const most = Math.max(contacts, now.most);
  return { ...now, contacts, most, boundBy, reasons, underWay: { from, planned: contacts, wereLeft: 0 } };
}

interface FoundRunning {
  /** As its sheets had it, but for what a painful morning of the week took away. */
  readonly planned: PlannedWeek;
  readonly sheetsHad: ContactsWeek;
  readonly now: ContactsWeek;
  readonly held: PlannedWeek;
  readonly leapFrom: number;
}

/**
 * What is told of a week under way of which more was done than written. `leapFrom` are the contacts from which the whole
 * week would be a leap, unless the coach has waived its rise.
 */
function findingsOnRunningWeek(
  athlete: Athlete,
  starts: Day,
  far: SoFar,
  { planned, sheetsHad, now, held, leapFrom }: FoundRunning,
): readonly Diagnostic[] {
  const largest = largestOf(far.rows);
  const { boundBy, contacts: wanted } = sheetsHad;
  // What stops the week came with what was done of it, or beside it.
  const isStopped = now.contacts === 0 && (now.boundBy === 'pain-hold' || now.boundBy === 'budget');
  if (overOf(far) === 0 || largest === undefined || isStopped) return [];
  const params = {
    athlete: athlete.name,
    week: isoDate(starts),
    until: isoDate(far.from - 1),
    done: far.done,
    written: far.written,
    planned: wanted,
    before: sumOf(jumpsLeft(planned.days, far.from)),
    left: sumOf(jumpsLeft(held.days, far.from)),
    byHand: boundBy === 'programme',
    here: atMost(largest).contacts ?? ('' as const),
  };
  const severity = far.done > leapFrom ? ('warning' as const) : undefined;
  return [
    problem('schedule/week-over-plan', {
      params,
      span: atMost(largest).span,
      severity,
      athlete: athlete.id,
      week: starts,
    }),
  ];
}

/** What a row may stand for: of rows that contradict one another the larger, as nobody knows which of them is the slip. */
const atMost = (row: DoneRow): Pick<DoneRow, 'contacts' | 'span'> => row.mayBe ?? row;

/** Of equal ones the first; a row as written is the smallest, as no slip of a finger is in it. */
const largestOf = (rows: readonly DoneRow[]): DoneRow | undefined =>
  rows.reduce<DoneRow | undefined>(
    (most, row) => (most === undefined || (atMost(row).contacts ?? 0) > (atMost(most).contacts ?? 0) ? row : most),
    undefined,
  );

/** In whole steps. */
const overOf = ({ done, written }: SoFar): number => Math.max(0, roundDown(done - written));

const jumpsLeft = ({ sessions }: DaysWeek, asOf: Day): readonly ScheduledSession[] =>
  sessions.filter(({ day, contacts }) => day >= asOf && contacts > 0);

const sumOf = (sessions: readonly ScheduledSession[]): number =>
  sessions.reduce((sum, { contacts }) => sum + contacts, 0);

function soFar({ contacts, days }: PlannedWeek, rows: readonly DoneRow[], from: Day): SoFar {
  const aSession = Math.floor(contacts.contacts / Math.max(1, contacts.possible));
  const dates = [...new Set(rows.map(({ day }) => day))];
  const doneOn = (day: Day): number => {
    const sheets = days.sessions.filter((session) => session.day === day);
    // A row as written on a day without a sheet is one of the week's sessions on another day.
    const asWritten = sheets.length === 0 ? aSession : sumOf(sheets);
    const mine = rows.filter((row) => row.day === day);
    const counted = mine.reduce((sum, row) => sum + (atMost(row).contacts ?? 0), 0);
    return mine.some((row) => row.contacts === undefined) ? Math.max(counted, asWritten) : counted;
  };
  return {
    from,
    done: dates.reduce((sum, day) => sum + doneOn(day), 0),
    written: sumOf(days.sessions.filter(({ day }) => day < from)),
    rows,
  };
}

/**
 * Contacts of the sessions that are left, by session. Fewer sessions rather than tiny ones, the last of them, as those are
 * furthest from what was done; and none where what is left isn't worth one.
 */
function sizesLeft(
  left: readonly ScheduledSession[],
  cut: number,
  { sessionCeiling }: ContactsWeek,
): ReadonlyMap<ScheduledSession, number> {
  const sizes = left.map(({ contacts }) => contacts);
  const keep = Math.max(0, sumOf(left) - cut);
  const worthwhile = Math.min(
    VOLUME.leastSession,
    Math.max(VOLUME.smallestSession, Math.floor(Math.max(...sizes) / 2)),
  );
  const parts = keep < worthwhile ? [] : splitWeek(keep, Math.min(...sizes), sessionCeiling, left.length);
  const chosen = left.slice(left.length - parts.length).toSorted((a, b) => b.contacts - a.contacts);
  return new Map(left.map((session) => [session, parts[chosen.indexOf(session)] ?? 0]));
}

function reasonOf({ done, written, rows }: SoFar, { contacts }: ContactsWeek): Reason {
  const params = { done, written, planned: contacts };
  return { about: 'contacts', by: 'record', params, spans: rows.map((row) => atMost(row).span) };
}

/** What lets the week have less than its sheets had. */
function lessBecause({ contacts: planned }: ContactsWeek, { boundBy, bounds }: ContactsWeek): Reason {
  const spans = bounds.find(({ by }) => by === boundBy)?.spans ?? [];
  return { about: 'contacts', by: boundBy, params: { planned }, spans };
}

function heldContacts(
  { contacts: planned }: ContactsWeek,
  now: ContactsWeek,
  { from, written }: Pick<SoFar, 'from' | 'written'>,
  sizes: ReadonlyMap<ScheduledSession, number>,
  because: Reason,
): ContactsWeek {
  const contacts = [...sizes.values()].reduce((sum, size) => sum + size, written);
  const wereLeft = [...sizes.keys()].reduce((sum, session) => sum + session.contacts, 0);
  // What the days so far had stands, also where it is more than the week may have now.
  const most = Math.max(contacts, now.most);
  const told = { ...because, params: { ...because.params, contacts, most } };
  return {
    ...now,
    contacts,
    most,
    boundBy: because.by === 'record' ? 'record' : now.boundBy,
    underWay: { from, planned, wereLeft },
    bounds: because.by === 'record' ? [...now.bounds, boundOf(because, contacts)] : now.bounds,
    reasons: now.reasons.map((reason) => (reason.about === 'contacts' ? told : reason)),
  };
}

const boundOf = ({ params: { done, written, planned }, spans }: Reason, most: number): Bound => ({
  by: 'record',
  most,
  params: { done: Number(done), written: Number(written), planned: Number(planned) },
  spans,
});

/** Without its jumps a session still lifts, or is none. */
function heldSession(
  session: ScheduledSession,
  asOf: Day,
  sizes: ReadonlyMap<ScheduledSession, number>,
  because: Reason,
): readonly ScheduledSession[] {
  const contacts = sizes.get(session);
  if (session.day < asOf || contacts === undefined || contacts === session.contacts) return [session];
  if (contacts > 0) return [{ ...session, contacts, reasons: [...session.reasons, because] }];
  if (!session.lifts) return [];
  const reasons = session.reasons.filter(({ about }) => about !== 'day' && about !== 'drops');
  return [{ ...session, contacts, dropsAllowed: false, primer: false, reasons: [...reasons, because] }];
}
