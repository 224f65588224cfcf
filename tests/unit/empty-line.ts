// The fields of a line that most lines leave empty, for the lines that tests make by hand.

/** A line has all of its fields, also those that say nothing. */
export const NOTHING_SAID = {
  loadGrams: undefined,
  perSideGrams: undefined,
  barGrams: undefined,
  percent: undefined,
  reserve: undefined,
  dropCm: undefined,
  tempo: undefined,
  note: undefined,
  family: undefined,
  pairedWith: undefined,
};
