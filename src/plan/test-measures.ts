// Whether a row of the record of tests says what its test can measure. Called by resolve-record.ts.

import { problem } from '../diagnostics/problem.ts';
import { at } from '../language/authored.ts';
import type { Item } from '../language/authored.ts';
import type { TestRowFields } from '../language/shapes/record.ts';
import { JUMP_TESTS, LEAST_JUMP_METRES, MOST_JUMP_METRES, STANDARD_GRAVITY } from '../library/jump-tests.ts';
import { kindOfUnit, METRES_A_UNIT, SECONDS_A_UNIT, unitKindsOf, UNITS_BY_KIND } from '../library/test-units.ts';
import { inWords } from '../util/in-words.ts';
import type { Scope } from './scope.ts';

/** False where the unit measures something else; of a jump that nobody jumps it is told alone. */
export function isMeasureSound(scope: Scope, item: Item<TestRowFields>): boolean {
  const { test, unit, value } = item.value;
  if (test === undefined || unit === undefined) return true;
  const kinds = unitKindsOf(test, scope.library.lifts.get(test));
  const kind = kindOfUnit(unit);
  if (kind === undefined || !kinds.includes(kind)) {
    const help = `write ${inWords(
      kinds.flatMap((one) => UNITS_BY_KIND[one]),
      'or',
    )}`;
    scope.report(problem('plan/unit-of-test', { ...at(item, 'unit'), params: { test, unit }, help }));
    return false;
  }
  if (value !== undefined && value > 0 && JUMPS.has(test) && !isJump(value, unit)) {
    const help = test === REACH ? { help: 'write how much higher the hand comes than standing' } : {};
    scope.report(problem('plan/no-such-jump', { ...at(item, 'value'), params: { test, value, unit }, ...help }));
  }
  return true;
}

const REACH = 'jump-and-reach';
const JUMPS: ReadonlySet<string> = new Set([...JUMP_TESTS, REACH]);

/** Half of the time in the air is the way down. */
const HEIGHT_OF_FLIGHT = STANDARD_GRAVITY / 8;

/** Of a unit of neither height nor time nothing is said. */
function isJump(value: number, unit: string): boolean {
  const metres = METRES_A_UNIT[unit];
  const seconds = SECONDS_A_UNIT[unit];
  const height = metres === undefined ? seconds && HEIGHT_OF_FLIGHT * (value * seconds) ** 2 : value * metres;
  return height === undefined || (LEAST_JUMP_METRES <= height && height <= MOST_JUMP_METRES);
}
