// The load chart: the most repetitions to failure at a share of the one-repetition maximum. Read by the choice of loads
// and by the audit. NSCA training load chart, read in a secondary text that quotes it (S). This chart has no row for 11;
// a textbook prints other rows from 11 on (from memory), and the two are not mixed: 11 takes the row of 12, the lighter.

export interface ChartRow {
  readonly reps: number;
  /** Whole per cent of the one-repetition maximum. */
  readonly percent: number;
}

/** Most reps first to fewest load: ascending in reps, descending in per cent. */
export const LOAD_CHART: readonly ChartRow[] = [
  { reps: 1, percent: 100 },
  { reps: 2, percent: 95 },
  { reps: 3, percent: 93 },
  { reps: 4, percent: 90 },
  { reps: 5, percent: 87 },
  { reps: 6, percent: 85 },
  { reps: 7, percent: 83 },
  { reps: 8, percent: 80 },
  { reps: 9, percent: 77 },
  { reps: 10, percent: 75 },
  { reps: 12, percent: 70 },
];

/**
 * The heaviest load, in whole per cent of the maximum, that the chart gives for this many reps to failure (1 or more).
 * Reps between two rows take the row of more reps. Undefined past the chart's last row: there the chart says nothing.
 */
export function percentForReps(reps: number): number | undefined {
  return LOAD_CHART.find((row) => row.reps >= reps)?.percent;
}

/**
 * The most reps the chart allows at this share of the maximum, in per cent. 0 above 100 %; never more than the chart's
 * last row, however light the load, as the chart says nothing beyond it.
 */
export function repsAtPercent(percent: number): number {
  let most = 0;
  for (const row of LOAD_CHART) if (row.percent >= percent) most = row.reps;
  return most;
}
