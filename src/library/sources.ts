// The evidence behind the defaults: facts and figures in our own words, each with its mark and where it was read. Rules,
// profiles and formulas name these rows by id, and `footfall rules` prints them. A row that mixes marks carries the
// weaker; its text says which part is better known.

import { DRILL_SOURCES, GATE_SOURCES } from './sources/gates-and-drills.ts';
import { JUMP_VOLUME_SOURCES } from './sources/jump-volume.ts';
import { LOAD_SOURCES, PROGRESS_SOURCES } from './sources/progress-and-loads.ts';
import { MONITORING_SOURCES, TEST_SOURCES } from './sources/tests-and-monitoring.ts';
import { TIMING_SOURCES } from './sources/timing.ts';
import type { Mark, Source } from './types.ts';

/** In the order they are printed. */
export const SOURCES: readonly Source[] = [
  ...JUMP_VOLUME_SOURCES,
  ...TIMING_SOURCES,
  ...GATE_SOURCES,
  ...DRILL_SOURCES,
  ...PROGRESS_SOURCES,
  ...LOAD_SOURCES,
  ...TEST_SOURCES,
  ...MONITORING_SOURCES,
];

/** What each mark means, in words for print. */
export const MARK_WORDS: Readonly<Record<Mark, string>> = {
  P: 'published: read in the paper, its abstract or its table',
  S: 'published: read in a secondary text that quotes it',
  M: 'published: value from memory',
  C: 'common practice, no source',
};

const BY_ID: ReadonlyMap<string, Source> = new Map(SOURCES.map((source) => [source.id, source]));

/** The source of an id, if there is one. */
export function findSource(id: string): Source | undefined {
  return BY_ID.get(id);
}

/** The source of an id. Throws for an id that names none. */
export function getSource(id: string): Source {
  const source = BY_ID.get(id);
  if (source === undefined) throw new Error(`no source ${id}`);
  return source;
}
