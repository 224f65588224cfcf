// What a week is for, in one plain sentence to the athlete who does it. No names of phases or rules. A week's kind says
// it before its phase does: an easy week is an easy week in every phase. What somebody comes back from is nobody's matter.

import type { BuiltWeek } from '../build/types.ts';
import { getPhase } from '../library/phases.ts';
import type { WeekKind } from '../library/types.ts';

const BY_KIND: Readonly<Partial<Record<WeekKind, string>>> = {
  deload: 'An easy week: less of everything, and all of it good.',
  taper: 'Less work at full speed, so that you are fresh when it counts.',
  return: 'Less than you could do, on purpose.',
  hold: 'Stay fresh and keep what you have.',
  transition: 'Rest from jumping. Move as you like.',
};

/** The sentence, with its full stop. */
export function weekPurpose({ kind, phase }: Pick<BuiltWeek, 'kind' | 'phase'>): string {
  return BY_KIND[kind] ?? `${getPhase(phase).words}.`;
}
