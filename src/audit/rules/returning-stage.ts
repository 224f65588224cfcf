// returning-stage: nothing above the stage that is signed, neither drills nor lifts nor contacts. G11 (P), its numbers C.
// Where a return has another number of stages than the library, the stage reached by the same share of the way counts,
// if that is lower.

import type { ReturnStage } from '../../plan/types.ts';
import { returnStageOn } from '../../plan/athlete-facts.ts';
import { isoDate } from '../../util/days.ts';
import { jumpPlace, weekPlace, writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

const STAGES = ['stage-1', 'stage-2', 'stage-3', 'stage-4'] as const;

export const returningStage = auditRule('returning-stage', (season, find) => {
  if (season.athlete.returning.length === 0) return;
  const ceilings = STAGES.map((name) => season.parameter('returning-stage', name));
  for (const session of season.sessions) {
    const signed = returnStageOn(season.athlete, session.day);
    if (signed === undefined) continue;
    const week = season.weekOf(session);
    const stage = libraryStage(signed);
    const date = isoDate(session.day);
    const related = [{ span: signed.span, message: 'the stage that is open' }];
    // Before the first stage is signed nobody jumps.
    const most = signed.stage === 0 ? 0 : (ceilings[stage - 1]?.(week) ?? 0);
    if (session.contacts > most) {
      find(week, {
        params: { date, stage: signed.stage, exercise: '', found: session.contacts, most },
        span: jumpPlace(session) ?? weekPlace(season, week),
        related,
      });
    }
    for (const line of session.lines) {
      const found = (line.drill ?? line.lift)?.stage ?? 0;
      if (found <= stage) continue;
      find(week, {
        params: { date, stage: signed.stage, exercise: line.line.exercise, found, most: stage },
        span: writtenPlace(line),
        related,
      });
    }
  }
});

function libraryStage({ stage, of }: ReturnStage): number {
  return Math.max(1, Math.min(stage, Math.floor((stage * STAGES.length) / of)));
}
