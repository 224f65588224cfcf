// Pain on the record, 0 to 10, that stops or holds an athlete's jumps on the day of the review. Called by
// ../decisions.ts.

import { doneBy, lastPainBefore, painPlace } from '../../../plan/done-by.ts';
import { getRuleValue, ruleBook } from '../../../plan/rule-book.ts';
import { DAYS_A_WEEK } from '../../../util/days.ts';
import { dayWords } from '../../calendar-words.ts';
import { ruleWords } from '../rule-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import type { ToldDecision } from './decision.ts';

/** By the last row with pain, as the rule pain-hold has it; G12 (S), as a rule C. */
export function painDecision(subject: Subject): readonly ToldDecision[] {
  const { plan, athlete, day, places } = subject;
  const row = lastPainBefore(doneBy(plan.record, athlete.id), Number.POSITIVE_INFINITY);
  const book = ruleBook(plan, athlete);
  const range = { from: day, until: day };
  if (row?.pain === undefined || book.waiver('pain-hold', range) !== undefined) return [];
  const stops = row.pain >= getRuleValue(book, 'pain-hold', 'stop', range);
  const holds = row.pain >= getRuleValue(book, 'pain-hold', 'hold', range) && day - row.day <= DAYS_A_WEEK;
  if (!stops && !holds) return [];
  const note = row.note === undefined ? '' : ` (${row.note})`;
  return [
    {
      kind: stops ? 'pain stop' : 'pain hold',
      ...whoOf(subject),
      words: `pain of ${row.pain} the morning after ${dayWords(row.day)}${note}: ${
        stops ? 'who sees it, and may the jumps begin again?' : 'how is it now?'
      }`,
      changes: stops
        ? `no jumps until a later morning on the record is better (${ruleWords('pain-hold')})`
        : `no rise, no fast and no high drills up to ${dayWords(row.day + DAYS_A_WEEK)} (${ruleWords('pain-hold')})`,
      places: [places.words(painPlace(row))],
    },
  ];
}
