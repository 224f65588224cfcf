// The clock, as little of it as anything needs: which day it is. A plan compiles to the same on every day; only a record
// of a day that hasn't come yet is told from one of the past.

import type { Day } from '../util/days.ts';
import { MILLISECONDS_A_DAY, MILLISECONDS_AN_HOUR } from '../util/units.ts';

/** Where the day begins first, in UTC+14: nobody's today is after it. */
const EARLIEST_MORNING = 14 * MILLISECONDS_AN_HOUR;

/** The latest day that it is today anywhere on earth. */
export const today = (): Day => Math.floor((Date.now() + EARLIEST_MORNING) / MILLISECONDS_A_DAY);
