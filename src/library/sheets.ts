// The numbers that printed pages add to a build. All of it is common practice (C).

export const SHEETS = {
  /** Athletes under this age stand on pages with a first name or a number only. */
  firstNameUnderAge: 16,
  /** What a lift is lightened by, in per cent, for somebody who can't do it as written today. */
  lighterPercent: 10,
  /** Pain and effort are told on a scale up to this. */
  scaleMost: 10,
  /** Days of recorded pain that are shown to whoever treats an athlete. */
  painDays: 28,
} as const;
