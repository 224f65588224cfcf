// Who is cleared for drops and trains where no box is low enough to begin on, so that none are ever planned. Asked for
// once a plan has no errors, as the clearance is no slip of the coach's.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { isDrop } from '../library/drill-facts.ts';
import { ALLOTTING } from '../library/families.ts';
import { itemsOf } from './items-of.ts';
import { idsInWords } from './ids-in-words.ts';
import type { Athlete, PinEffect, Plan, ProgrammeUse, TrainingPlace } from './types.ts';

/** One notice for all of them. */
export function noFirstDrop(plan: Plan): readonly Diagnostic[] {
  const barred = plan.athletes.filter((athlete) => isCleared(plan, athlete) && !hasFirstBox(plan, athlete));
  const [first] = barred;
  if (first === undefined) return [];
  const params = { athletes: idsInWords(barred), cm: ALLOTTING.firstDropCm, units: plan.season.units };
  return [problem('plan/no-first-drop', { span: first.span, path: `athletes.${first.id}`, params })];
}

/** For drops as such: who is cleared for one by its name, or is asked to do it, needn't begin with the first. */
function isCleared(plan: Plan, athlete: Athlete): boolean {
  if (!athlete.cleared.has('drops')) return false;
  const isNamed = (id: string): boolean => {
    const drill = plan.library.drills.get(id);
    return drill !== undefined && isDrop(drill);
  };
  const { pins, uses } = itemsOf(plan, athlete);
  const asked = pins.flatMap(({ effects }) => effects.flatMap(exercisesOf));
  return ![...athlete.cleared, ...asked, ...uses.flatMap(writtenIn)].some(isNamed);
}

const writtenIn = ({ programme }: ProgrammeUse): readonly string[] =>
  programme.weeks.flatMap(({ days }) => days.flatMap(({ lines }) => lines.map(({ exercise }) => exercise.id)));

function exercisesOf(effect: PinEffect): readonly string[] {
  if (effect.kind === 'keep') return effect.exercises;
  if (effect.kind === 'swap') return [...effect.swaps.values()];
  return effect.kind === 'add' ? effect.lines.map(({ exercise }) => exercise.id) : [];
}

function hasFirstBox(plan: Plan, athlete: Athlete): boolean {
  return itemsOf(plan, athlete).slots.some(({ use, place }) => use !== 'lifts' && isLowEnough(place));
}

const isLowEnough = ({ kit }: TrainingPlace): boolean =>
  kit.boxesCm.some((box) => {
    const over = box - ALLOTTING.firstDropCm;
    return over >= -ALLOTTING.boxLowerCm && over <= ALLOTTING.boxHigherCm;
  });
