// What the load chart says of reps and shares of a maximum. Read by the rules on loads and by what is heavy.

import { LOAD_CHART } from '../library/load-chart.ts';

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
