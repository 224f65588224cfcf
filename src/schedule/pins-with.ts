// The pins that have an effect of one kind, such as rest or days of their own. Called by the stages that look at such pins.

import type { Pin, PinEffect } from '../plan/types.ts';

/** In the order of the list. */
export const pinsWith = (pins: readonly Pin[], kind: PinEffect['kind']): readonly Pin[] =>
  pins.filter(({ effects }) => effects.some((effect) => effect.kind === kind));
