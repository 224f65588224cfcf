// What the week ahead is where it isn't a week like others: easy, a taper, a way back. Called by ../decisions.ts.

import { returnStageOn } from '../../../plan/athlete-facts.ts';
import { REVIEW } from '../../../library/review.ts';
import { dateWords } from '../../calendar-words.ts';
import { weekPurpose } from '../../week-purpose.ts';
import { kindWords, whyContacts } from '../../week-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import type { ToldItem } from '../told-item.ts';
import { boundSpans } from '../../places.ts';
import type { BuiltWeek, BuiltAthlete } from '../../../build/types.ts';

const TOLD: ReadonlySet<BuiltWeek['kind']> = new Set(['deload', 'taper', 'return', 'hold']);

/** One at most: the kind of week, its contacts and why they are what they are. */
export function weekAhead(subject: Subject): readonly ToldItem[] {
  const week = nextWeek(subject.built, subject);
  if (week === undefined || !TOLD.has(week.kind) || week.contacts === 0) return [];
  return [
    {
      kind: `${kindWords(week.kind)} week`,
      ...whoOf(subject),
      words: `week ${week.week}, from ${dateWords(week.starts)}. ${weekPurpose(week)}`,
      changes: `${week.contacts} jumps, ${whyContacts(week)}`,
      places: placesOf(subject, week),
    },
  ];
}

/** The lines that hold the week; where no line does it is the athlete's own. */
function placesOf({ athlete, places, day }: Subject, week: BuiltWeek): readonly string[] {
  const stage = week.kind === 'return' ? returnStageOn(athlete, day)?.span : undefined;
  const spans = [...boundSpans(week), ...(stage === undefined ? [] : [stage])];
  return (spans.length === 0 ? [athlete.span] : spans).map((span) => places.words(span));
}

/** The week that begins in the days ahead. */
function nextWeek({ weeks, blocked }: BuiltAthlete, { day }: Subject): BuiltWeek | undefined {
  return weeks.find((week) => day <= week.starts && week.starts < day + REVIEW.daysAhead && !blocked.has(week.week));
}
