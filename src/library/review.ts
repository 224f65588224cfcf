// The numbers of the Monday page that are no rule's: days and weeks looked at, shares told. All of it is common
// practice (C). Read by report/review.

export const REVIEW = {
  /** Weeks that are looked back on, and over which the last one is set against the usual. */
  weeks: 4,
  /** Days ahead, from the day of the review, of which it speaks. */
  daysAhead: 7,
  /** Athletes tested in the same way from whom on the spread between them says something. */
  fewestForSpread: 5,
  /** The best jumpers are this share of those tested in the same way, in per cent; of fewer than the least nobody is. */
  bestShare: 25,
  fewestForBest: 4,
  /** From this age on somebody is set beside others at all. */
  adultAge: 18,
  /** A change of the planned contacts of a week that is worth telling. */
  toldContacts: 5,
} as const;
