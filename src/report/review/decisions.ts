// What a coach has to decide, the gravest first: each with what it changes and the lines it comes from. Joins the files
// of the folder beside it.

import { blockedWeeks } from './decisions/blocked.ts';
import { DECISION_KINDS } from './decisions/decision.ts';
import type { ToldDecision } from './decisions/decision.ts';
import { endingLimits } from './decisions/limits.ts';
import { newMaximum, staleMaxima } from './decisions/maxima.ts';
import { missingRecord } from './decisions/missing-record.ts';
import { painDecision } from './decisions/pain.ts';
import { returnStage } from './decisions/return-stage.ts';
import { missingTests } from './decisions/missing-tests.ts';
import { leapUnderWay, recordLeap } from './decisions/record-leap.ts';
import type { NewMaximum } from './new-maxima.ts';
import type { Subject } from './subject.ts';
import { gathered } from './told-item.ts';

/** Of one athlete, in no order yet. */
export function decisionsAbout(subject: Subject, maxima: readonly NewMaximum[]): readonly ToldDecision[] {
  return [
    ...painDecision(subject),
    ...blockedWeeks(subject),
    ...missingRecord(subject),
    ...recordLeap(subject),
    ...leapUnderWay(subject),
    ...returnStage(subject),
    ...maxima.map((found) => newMaximum(subject, found)),
    ...staleMaxima(subject, new Set(maxima.map(({ max }) => max.lift))),
    ...missingTests(subject),
    ...endingLimits(subject),
  ];
}

/** Those that say the same as one, the gravest first, and within a kind in the order of the plan. */
export const inOrderOfWeight = (items: readonly ToldDecision[]): readonly ToldDecision[] =>
  gathered(items).toSorted((a, b) => DECISION_KINDS.indexOf(a.kind) - DECISION_KINDS.indexOf(b.kind));
