// What stands in the week ahead and asks for no decision: tests, and a week that isn't like others: easy, a taper, a way
// back. Called for each athlete of the review.

import { REVIEW } from '../../library/review.ts';
import { appliesTo } from '../../plan/applies.ts';
import { returnStageOn } from '../../plan/athlete-facts.ts';
import { dateWords, dayWords } from '../calendar-words.ts';
import { testNames } from '../card.ts';
import { weekPurpose } from '../week-purpose.ts';
import { kindWords, LEFT_OUT, whyContacts } from '../week-words.ts';
import { whoOf } from './subject.ts';
import type { Subject } from './subject.ts';
import { inParts } from './told-item.ts';
import type { ToldItem } from './told-item.ts';
import { boundSpans } from '../places.ts';
import type { BuiltWeek, BuiltAthlete } from '../../build/types.ts';

const TOLD: ReadonlySet<BuiltWeek['kind']> = new Set(['deload', 'taper', 'return', 'hold']);

/** Of one athlete, the tests first. */
export const weekAhead = (subject: Subject): readonly ToldItem[] => [
  ...testsDue(subject),
  ...leftOutWeek(subject),
  ...kindOfWeek(subject),
];

function testsDue(subject: Subject): readonly ToldItem[] {
  const { plan, athlete, day, places } = subject;
  return plan.tests
    .filter(({ who, day: on }) => appliesTo(who, athlete) && day <= on && on < day + REVIEW.daysAhead)
    .map((test) => ({
      kind: 'test due',
      ...whoOf(subject),
      words: `${dayWords(test.day)}: ${testNames(plan, test.what)}. No jump session that day, ${test.contacts} contacts of its own`,
      places: [places.words(test.span)],
    }));
}

/** A week that an error keeps from the sheets; what the error is stands among the decisions. */
function leftOutWeek(subject: Subject): readonly ToldItem[] {
  const { weeks, blocked } = subject.built;
  return weeks
    .filter((week) => blocked.has(week.week) && isAhead(week, subject))
    .map((week) => ({
      kind: 'no sheets',
      ...whoOf(subject),
      words: `week ${week.week}, from ${dateWords(week.starts)}, is ${LEFT_OUT}`,
      places: placesOf(subject, week),
    }));
}

/** One at most: the kind of week, its contacts and why they are what they are. */
function kindOfWeek(subject: Subject): readonly ToldItem[] {
  const week = nextWeek(subject.built, subject);
  if (week === undefined || !TOLD.has(week.kind) || week.contacts === 0) return [];
  return [
    {
      kind: `${kindWords(week.kind)} week`,
      ...whoOf(subject),
      ...inParts(
        `week ${week.week}, from ${dateWords(week.starts)}. ${weekPurpose(week)} `,
        `${week.contacts} jumps, ${whyContacts(week)}`,
        '',
      ),
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
function nextWeek({ weeks, blocked }: BuiltAthlete, subject: Subject): BuiltWeek | undefined {
  return weeks.find((week) => isAhead(week, subject) && !blocked.has(week.week));
}

const isAhead = ({ starts }: BuiltWeek, { day }: Subject): boolean => day <= starts && starts < day + REVIEW.daysAhead;
