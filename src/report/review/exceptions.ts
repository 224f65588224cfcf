// What went otherwise than written since the last review: less, more, besides, missed, unclear; pain; jumps that rose fast; and
// what this week's sheets have because of it.

import type { BuiltWeek, UnderWay } from '../../build/types.ts';
import { REVIEW } from '../../library/review.ts';
import { getRuleValue, ruleBook } from '../../plan/rule-book.ts';
import { doneBy, painPlace } from '../../plan/done-by.ts';
import type { DoneRow } from '../../plan/types.ts';
import type { Span } from '../../source/types.ts';
import { DAYS_A_WEEK } from '../../util/days.ts';
import { mean } from '../../util/statistics.ts';
import { dayWords } from '../calendar-words.ts';
import { whyContacts } from '../week-words.ts';
import type { WeekDone } from './athlete-weeks.ts';
import type { SessionDone } from './planned-and-done.ts';
import { whoOf } from './subject.ts';
import type { Subject } from './subject.ts';
import type { ToldItem } from './told-item.ts';

/** Of one athlete, in order of day, what follows from it last. */
export function exceptionsAbout(subject: Subject): readonly ToldItem[] {
  return [
    ...subject.recent.flatMap((session) => otherwise(subject, session)),
    ...painRows(subject),
    ...jumpsRose(subject),
    ...follows(subject),
  ];
}

function otherwise(subject: Subject, session: SessionDone): readonly ToldItem[] {
  const { outcome, rows } = session;
  if (outcome === 'as written') return [];
  const notes = rows.flatMap(({ note }) => note ?? []);
  return [
    {
      kind: outcome,
      ...whoOf(subject),
      words: [sessionWords(session), ...counts(subject, session), ...notes].join('; '),
      places: placesOfRows(rows).map((span) => subject.places.words(span)),
    },
  ];
}

/** With those that say otherwise of the same session. */
const placesOfRows = (rows: readonly DoneRow[]): readonly Span[] => [
  ...new Set(rows.flatMap(({ span, mayBe = { span } }) => [span, mayBe.span])),
];

/** Of rows that contradict one another: which of them the sheets go by. */
function counts({ week }: Subject, { day, outcome }: SessionDone): readonly string[] {
  if (outcome !== 'unclear') return [];
  const isUnderWay = week !== undefined && week.starts <= day;
  return [`two rows for one session, of which the ${isUnderWay ? 'larger counts in this week' : 'smaller counts'}`];
}

function sessionWords({ day, insteadOf = day, outcome, planned = 0, done = 0, ...rest }: SessionDone): string {
  const { rows, atMost = done } = rest;
  const date = dayWords(day);
  switch (outcome) {
    case 'not recorded':
    case 'missed':
      return planned === 0 ? `${date}: lifts only` : `${date}: ${planned} planned`;
    case 'another day':
      return planned === 0
        ? `${date}: lifts, planned on ${dayWords(insteadOf)}`
        : `${date}: ${planned}, planned on ${dayWords(insteadOf)}`;
    case 'besides':
      if (rows.every(({ contacts }) => contacts === undefined))
        return `${date}: as written, and the plan as it is now has nothing that day`;
      return `${date}: ${done}, none planned`;
    case 'unclear':
      return `${date}: ${done} or ${atMost}, ${planned === 0 ? 'none' : planned} planned`;
    case 'as written':
    case 'less':
    case 'more':
      return `${date}: ${done} of ${planned}`;
  }
}

/** Any pain on record, also of the days that ask for no decision. */
function painRows(subject: Subject): readonly ToldItem[] {
  const { plan, athlete, since, day, places } = subject;
  const hurts = (row: DoneRow): boolean => row.day >= since && row.day < day && (row.pain ?? 0) > 0;
  return doneBy(plan.record, athlete.id)
    .filter(hurts)
    .map((row) => ({
      kind: 'pain',
      ...whoOf(subject),
      words: [`${row.pain ?? 0} the morning after ${dayWords(row.day)}`, ...notesOf(subject, row)].join('; '),
      places: [places.words(painPlace(row))],
    }));
}

/** The row's note, unless it is told with its session. */
function notesOf({ recent }: Subject, row: DoneRow): readonly string[] {
  const isTold = recent.some(({ outcome, rows }) => outcome !== 'as written' && rows.includes(row));
  return isTold || row.note === undefined ? [] : [row.note];
}

/** All jumps over the share of the weeks before that the rule all-jumps-rise allows. C. */
function jumpsRose(subject: Subject): readonly ToldItem[] {
  const { plan, athlete, behind, day, places } = subject;
  const last = behind.at(-1);
  const before = behind.slice(0, -1).map(({ allJumps }) => allJumps);
  if (last === undefined || before.length < REVIEW.weeks - 1) return [];
  const most = getRuleValue(ruleBook(plan, athlete), 'all-jumps-rise', 'most', { from: last.starts, until: day });
  const usual = Math.round(mean(before));
  if (last.allJumps * 100 <= most * usual) return [];
  return [
    {
      kind: 'jumps rose',
      ...whoOf(subject),
      words: `all jumps ${last.allJumps}, in the weeks before ${usual} on the average`,
      places: otherRows(subject, last).map(({ span }) => places.words(span)),
    },
  ];
}

/** Practice, matches and tests of a week that are on record with their jumps. */
const otherRows = ({ plan, athlete }: Subject, { starts }: WeekDone): readonly DoneRow[] =>
  doneBy(plan.record, athlete.id).filter(
    ({ kind, contacts, day }) =>
      kind !== 'session' && contacts !== undefined && starts <= day && day < starts + DAYS_A_WEEK,
  );

/** What is left of the week where more of it was done than written, or the record lets it have less. */
function cutUnderWay(subject: Subject, week: BuiltWeek, { from }: UnderWay): ToldItem {
  const left = week.sessions.reduce((sum, { day, contacts }) => (day < from ? sum : sum + contacts), 0);
  const rows = week.bounds.find(({ by }) => by === week.boundBy)?.spans ?? [];
  return {
    kind: 'this week',
    ...whoOf(subject),
    words: `${left} jumps are left: ${whyContacts(week)}`,
    places: rows.map((span) => subject.places.words(span)),
  };
}

/** This week's contacts where they aren't those that last week's sheets had ahead. */
function follows(subject: Subject): readonly ToldItem[] {
  const { week, expected } = subject;
  if (week?.underWay !== undefined && week.underWay.wereLeft > 0) return [cutUnderWay(subject, week, week.underWay)];
  if (week === undefined || expected === undefined || week.done) return [];
  if (Math.abs(week.contacts - expected) < REVIEW.toldContacts) return [];
  return [
    {
      kind: 'this week',
      ...whoOf(subject),
      words: `${week.contacts} jumps, and ${expected} before last week was done: ${whyContacts(week)}`,
      places: [],
    },
  ];
}
