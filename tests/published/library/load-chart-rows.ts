// The NSCA training load chart: most reps to failure at each share of the maximum, in per cent. Read in a secondary text
// that quotes it (S). Held against the library here and against the audit's own reading of it.

export const CHART_ROWS: readonly (readonly [reps: number, percent: number])[] = [
  [1, 100],
  [2, 95],
  [3, 93],
  [4, 90],
  [5, 87],
  [6, 85],
  [7, 83],
  [8, 80],
  [9, 77],
  [10, 75],
  [12, 70],
];
