// Where a jump may stand after a programme of jump training: the averages of published groups laid on one athlete's test.
// A range to talk about and no promise: groups gained this much, a person may gain more, less or nothing.

import { TRAINING_GAINS } from '../library/jump-tests.ts';
import type { JumpTest } from '../library/jump-tests.ts';
import { PERCENT } from '../util/units.ts';

export interface Forecast {
  /** In the unit of the height given. */
  readonly mean: number;
  /** Ends of the 95 % interval of the groups' mean. */
  readonly low: number;
  readonly high: number;
}

/**
 * From a height before; undefined where nothing is published for the test done this way. J15 (P): Markovic 2007,
 * Br J Sports Med 41:349–355, programmes of 4 to 24 weeks (the weeks from memory, M).
 */
export function forecastHeight(test: JumpTest, arms: boolean, height: number): Forecast | undefined {
  const gain = TRAINING_GAINS.find((one) => one.test === test && one.arms === arms);
  if (gain === undefined) return undefined;
  const after = (percent: number): number => height * (1 + percent / PERCENT);
  return { mean: after(gain.mean), low: after(gain.low), high: after(gain.high) };
}
