// Tests that were and have no result on record. Called by ../decisions.ts.

import { appliesTo, holds } from '../../../plan/applies.ts';
import type { TestDay } from '../../../plan/types.ts';
import { dayWords } from '../../calendar-words.ts';
import { testNames } from '../../card.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import { inParts } from '../told-item.ts';
import type { ToldDecision } from './decision.ts';

/** Those of the weeks looked back on without a result, then those of the days ahead. */
export function missingTests(subject: Subject): readonly ToldDecision[] {
  const { plan, athlete, day, behind } = subject;
  const from = behind[0]?.starts ?? day;
  const mine = plan.tests.filter(({ who }) => appliesTo(who, athlete));
  return mine.filter((test) => from <= test.day && test.day < day).flatMap((test) => withoutResult(subject, test));
}

function withoutResult(subject: Subject, test: TestDay): readonly ToldDecision[] {
  const { plan, athlete, places } = subject;
  if (athlete.away.some(({ range }) => holds(range, test.day))) return [];
  const missing = test.what.filter(
    (what) => !plan.record.tests.some((row) => row.athlete === athlete.id && row.day === test.day && row.test === what),
  );
  if (missing.length === 0) return [];
  return [
    {
      kind: 'test missing',
      ...whoOf(subject),
      ...inParts(`no result of the test on ${dayWords(test.day)}: `, testNames(plan, missing), ''),
      changes: 'loads and the jump trend stand on the test before it',
      places: [places.words(test.span)],
    },
  ];
}
