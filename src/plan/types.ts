// The plan as the scheduler reads it: ids bound, squads' defaults filled in, units made one (whole days, centimetres,
// grams, seconds), every item with its place. Made by plan/resolve.ts from the authored files; never changed after.

import type { Library } from '../library/index.ts';
import type { SourceFile } from '../source/types.ts';
import type { Closure, Competition, Practice, Season, Slot, TestDay, TrainingPlace } from './calendar-types.ts';
import type { Athlete, Squad } from './athlete-types.ts';
import type { Always, Pin, Programme, ProgrammeUse, RuleChange, Waiver } from './wish-types.ts';
import type { SeasonRecord } from './record-types.ts';

export type * from './common-types.ts';
export type * from './calendar-types.ts';
export type * from './athlete-types.ts';
export type * from './wish-types.ts';
export type * from './record-types.ts';

export interface Plan {
  readonly files: readonly SourceFile[];
  readonly season: Season;
  readonly library: Library;
  readonly places: ReadonlyMap<string, TrainingPlace>;
  /** In order of day, time, name. */
  readonly slots: readonly Slot[];
  /** In order of first day, name. */
  readonly competitions: readonly Competition[];
  readonly closures: readonly Closure[];
  readonly practice: readonly Practice[];
  readonly tests: readonly TestDay[];
  readonly squads: ReadonlyMap<string, Squad>;
  /** In order of id (by code unit). */
  readonly athletes: readonly Athlete[];
  readonly ruleChanges: readonly RuleChange[];
  readonly pins: readonly Pin[];
  readonly always: readonly Always[];
  readonly waivers: readonly Waiver[];
  readonly programmes: ReadonlyMap<string, Programme>;
  readonly uses: readonly ProgrammeUse[];
  readonly record: SeasonRecord;
}
