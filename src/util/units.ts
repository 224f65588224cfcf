// How much of one unit of measure is another. Kept whole wherever the plan keeps whole numbers; called by every room that
// reads or shows a quantity.

/** A whole in per cent. */
export const PERCENT = 100;
export const GRAMS_A_KILO = 1000;
/** Exact (international yard and pound agreement of 1959; from memory), as is the inch. */
export const GRAMS_A_POUND = 453.592_37;
export const CENTIMETRES_A_METRE = 100;
export const CENTIMETRES_AN_INCH = 2.54;
export const SECONDS_A_MINUTE = 60;
export const MINUTES_AN_HOUR = 60;
export const MINUTES_A_DAY = 24 * MINUTES_AN_HOUR;
export const MILLISECONDS_AN_HOUR = 3_600_000;
export const MILLISECONDS_A_DAY = 86_400_000;
