// A sport by the name that a plan gives it. Called for the season's and for an athlete's own.

import type { at } from '../language/authored.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { problem } from '../diagnostics/problem.ts';
import { findSport, SPORTS } from '../library/sports.ts';
import type { SportProfile } from '../library/types.ts';
import { didYouMean } from '../util/did-you-mean.ts';

/** The profile, or undefined for a name that none has: that is told, with the nearest one. */
export function resolveSport(
  report: (diagnostic: Diagnostic) => void,
  name: string,
  place: ReturnType<typeof at>,
): SportProfile | undefined {
  const sport = findSport(name);
  if (sport !== undefined) return sport;
  const known = SPORTS.map(({ id }) => id);
  const help = didYouMean(name, known) ?? 'write general for a sport without a profile';
  report(problem('plan/unknown-name', { ...place, params: { name, kind: 'sport' }, help }));
  return undefined;
}
