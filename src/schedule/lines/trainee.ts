// What the writing of lines carries from session to session for one athlete, and what it knows of the running week.
// Made by scheduleLines for each athlete; the only state that lives while a season is written.

import type { Diagnostic } from '../../diagnostics/types.ts';
import type { Always, Athlete, Pin, Plan, ProgrammeUse } from '../../plan/types.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import type { DirectionShares, PhaseId, PhaseRow } from '../../library/types.ts';
import type { Day } from '../../util/days.ts';
import type { ContactsWeek, DaysWeek, KindWeek } from '../types.ts';
import type { Aim } from './allot-target.ts';
import type { Groups } from './workshop.ts';
import type { KnownDrills } from './known-drills.ts';
import type { LineRules } from './line-rules.ts';
import type { LoadHistory } from './load-history.ts';
import type { GateValues, Standing } from './standing.ts';

export interface Trainee {
  readonly plan: Plan;
  readonly groups: Groups;
  readonly athlete: Athlete;
  readonly book: RuleBook;
  readonly pins: readonly Pin[];
  readonly always: readonly Always[];
  readonly uses: readonly ProgrammeUse[];
  /** Days on which training began again after a long absence. */
  readonly returns: readonly Day[];
  readonly known: KnownDrills;
  readonly history: LoadHistory;
  readonly people: number;
  /** By the athlete's sport; undefined: the phase's own. */
  readonly directions: DirectionShares | undefined;
  readonly standingOn: (day: Day, values: GateValues) => Standing;
  readonly report: (key: string, make: (days: readonly Day[]) => Diagnostic, day?: Day) => void;
}

export interface TrainingWeek {
  /** From 0. */
  readonly index: number;
  readonly starts: Day;
  readonly phase: PhaseId;
  readonly row: PhaseRow;
  readonly kind: KindWeek;
  readonly contacts: ContactsWeek;
  readonly days: DaysWeek;
  readonly rules: LineRules;
  readonly aim: Aim;
  /** From 1 within the block. */
  readonly loadingWeek: number;
  /** One of a novice's first weeks of jumping. */
  readonly novice: boolean;
}
