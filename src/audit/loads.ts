// The lines with a share of a maximum, in per cent, and what the load chart says to it. Walked by the rules on loads.

import { LOAD_CHART } from '../library/load-chart.ts';
import type { Lift } from '../library/types.ts';
import type { LineReading } from './line-reading.ts';
import type { SessionReading } from './session-reading.ts';
import type { SeasonReading } from './season-reading.ts';

export interface LoadedLine {
  readonly session: SessionReading;
  readonly line: LineReading;
  readonly lift: Lift;
  /** Share of the maximum, in per cent. */
  readonly percent: number;
}

/** Calls `each` for every line of a lift whose share of a maximum is known. */
export function forEachLoad(season: SeasonReading, each: (loaded: LoadedLine) => void): void {
  for (const session of season.sessions) {
    if (!session.lifts) continue;
    for (const line of session.lines) {
      const { lift, percent } = line;
      if (lift !== undefined && percent > 0) each({ session, line, lift, percent });
    }
  }
}

/**
 * Most reps to failure at a share of the maximum, by the chart (S); 0 over the whole maximum. Infinity under the chart's
 * lightest row, about which it says nothing.
 */
export function chartReps(percent: number): number {
  let most = 0;
  let lightest = Infinity;
  for (const row of LOAD_CHART) {
    if (row.percent >= percent) most = Math.max(most, row.reps);
    lightest = Math.min(lightest, row.percent);
  }
  return percent < lightest ? Infinity : most;
}

/** The share of the maximum with which so many reps are the most, by the chart (S); 0 beyond its last row. */
export function chartPercent(reps: number): number {
  return LOAD_CHART.reduce((most, row) => (row.reps >= reps ? Math.max(most, row.percent) : most), 0);
}

/** A share as it is printed. */
export function shownPercent(percent: number): number {
  return Math.round(percent * 10) / 10;
}
