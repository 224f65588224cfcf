// The stages of somebody's return on the library's scale, for the contacts and for the gates alike.

import type { ReturnStage } from '../plan/types.ts';

const LIBRARY_STAGES = 4;

/**
 * The stage of a return on the library's scale of four: of another number of stages the one reached by the same share of
 * the way counts, if that is lower. The first where none is signed yet.
 */
export function libraryStage({ stage, of }: Pick<ReturnStage, 'stage' | 'of'>): number {
  return Math.max(1, Math.min(stage, Math.floor((stage * LIBRARY_STAGES) / of)));
}
