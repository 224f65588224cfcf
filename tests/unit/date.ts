// A date of a test as a day. One that doesn't exist is a slip of the test, and stops it.

import { parseIsoDate } from '../../src/util/days.ts';
import type { Day } from '../../src/util/days.ts';

export function day(iso: string): Day {
  const found = parseIsoDate(iso);
  if (found === undefined) throw new Error(`${iso} is no date`);
  return found;
}
