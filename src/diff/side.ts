// One side of a comparison: whose sheets there are, and the plan behind them where it is at hand. Made of a build here, and
// of what a build wrote by read-built.ts.

import type { Build, BuiltAthlete } from '../build/types.ts';
import type { Athlete, Plan, Season } from '../plan/types.ts';
import { sheetOf } from './sheet.ts';
import type { SheetWeek } from './types.ts';

export type SheetAthlete = Pick<Athlete, 'id' | 'name' | 'squad'>;

export interface AthleteSheet {
  readonly athlete: SheetAthlete;
  readonly weeks: readonly SheetWeek[];
}

export interface Side {
  /** In order of id, by code unit. */
  readonly athletes: readonly SheetAthlete[];
  /** Likewise; walked once. */
  readonly sheets: Iterable<AthleteSheet>;
  /** What quantities are told in. */
  readonly units: Season['units'];
  /** Absent where only the sheets are known. */
  readonly plan?: Plan;
}

/** The side of a build, whose athletes are compiled as the sheets are walked. */
export function sideOf({ plan, athletes }: Build): Side {
  return { plan, units: plan.season.units, athletes: plan.athletes, sheets: sheetsOf(athletes) };
}

function* sheetsOf(athletes: Iterable<BuiltAthlete>): Iterable<AthleteSheet> {
  for (const built of athletes) yield athleteSheet(built);
}

/** An athlete as one side has them: their weeks, with nothing in those that are blocked. */
export const athleteSheet = (built: BuiltAthlete): AthleteSheet => ({ athlete: built.athlete, weeks: sheetOf(built) });
