// Texts of the command line to values. A value that can't be read is refused in the words of the command line, and the
// command ends with the status of a wrong command.

import { InvalidArgumentError } from 'commander';
import { parseIsoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';

/** Of `2027-03-01`. */
export function parseDate(text: string): Day {
  const day = parseIsoDate(text);
  if (day === undefined) throw new InvalidArgumentError('A date is written 2027-03-01, and must exist.');
  return day;
}

/** Adds to the list so far: an option may be given again, and names several things with commas between. */
export function parseNames(text: string, before: readonly string[] = []): readonly string[] {
  const names = text.split(',').map((name) => name.trim());
  if (names.includes('')) throw new InvalidArgumentError('Names stand with a comma between: mira,tuva.');
  return [...before, ...names];
}
