// A return that waits for the next stage to be signed. Stages open by criteria, never by a date: G11 (P).

import { getSource } from '../../../library/sources.ts';
import { returnStageOn } from '../../../plan/athlete-facts.ts';
import type { ReturnStage } from '../../../plan/types.ts';
import { dateWords } from '../../calendar-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import type { ToldDecision } from './decision.ts';

/** One at most: the stage in force and who signed it. */
export function returnStage(subject: Subject): readonly ToldDecision[] {
  const { athlete, day, places } = subject;
  const stage = returnStageOn(athlete, day);
  if (stage === undefined) return [];
  if (day < stage.since) return [toBeSigned(subject, stage)];
  return [
    {
      kind: 'return stage',
      ...whoOf(subject),
      words: `stage ${stage.stage} of ${stage.of} since ${dateWords(stage.since)}, signed by ${stage.signed}: is the next one signed?`,
      changes: `drills and volume stay those of stage ${stage.stage} until it is; criteria open a stage, no date does (G11, ${getSource('G11').mark})`,
      places: [places.words(stage.span)],
    },
  ];
}

/** A return of which nothing is signed yet by that day. */
function toBeSigned(subject: Subject, { since, signed, stage, of, span }: ReturnStage): ToldDecision {
  const counts = stage === 0 ? 'nothing is jumped' : `drills and volume are those of stage ${stage} of ${of}`;
  return {
    kind: 'return stage',
    ...whoOf(subject),
    words: `no stage is signed before ${dateWords(since)}, by ${signed}: does that day stand?`,
    changes: `${counts} until then; criteria open a stage, no date does (G11, ${getSource('G11').mark})`,
    places: [subject.places.words(span)],
  };
}
