// What the pain an athlete recorded says about the days behind it. Read by the rules on pain and on the last week.
// Strong pain stops jumping until a later morning is better; less pain holds for the week behind it.

import { doneBy, lastPainBefore } from '../plan/done-by.ts';
import type { DoneRow } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import type { SeasonReading } from './season-reading.ts';
import { DAYS_A_WEEK } from '../util/days.ts';

export interface Pain {
  readonly row: DoneRow;
  /** 0 to 10, the morning after. */
  readonly pain: number;
  readonly stops: boolean;
  readonly holds: boolean;
}

/** What the last record of pain before a day says about it; undefined where it says nothing. */
export function painOn(season: SeasonReading, day: Day): Pain | undefined {
  const rows = doneBy(season.plan.record, season.athlete.id);
  const row = lastPainBefore(rows, day);
  if (row?.pain === undefined) return undefined;
  const range = { from: day, until: day };
  const stops = row.pain >= season.parameter('pain-hold', 'stop')({ range });
  const holds = row.pain >= season.parameter('pain-hold', 'hold')({ range }) && day - row.day <= DAYS_A_WEEK;
  return stops || holds ? { row, pain: row.pain, stops, holds } : undefined;
}
