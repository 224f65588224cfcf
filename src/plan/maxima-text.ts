// An athlete's maxima as one text, for telling who has the same. Called for every athlete of a build.

import type { Athlete, LiftMax } from './types.ts';

type Maxima = Athlete['lifts'];

const texts = new WeakMap<Maxima, string>();

/**
 * Equal where all maxima are: lift, grams, how they were found, and the place in the plan. Kept with the maxima, as those
 * a squad has are one object for all its members.
 */
export function maximaText(maxima: Maxima): string {
  const known = texts.get(maxima);
  if (known !== undefined) return known;
  const made = JSON.stringify([...maxima].map(([id, max]) => [id, fieldsOf(max)]));
  texts.set(maxima, made);
  return made;
}

const fieldsOf = ({ lift, grams, estimated, on, span }: LiftMax): readonly unknown[] => [
  lift,
  grams,
  estimated,
  on,
  span.file,
  span.start,
];
