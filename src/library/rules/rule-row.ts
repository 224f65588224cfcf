// The row of the rule table as the files beside this one write it, and the two ways to write a parameter. A rule's
// mark is that of the default it mainly stands on; the sources it names carry marks of their own, which may be better.

import type { Rule, RuleParameter, Unit } from '../types.ts';
import type { RuleId } from './ids.ts';

export interface RuleRow extends Rule {
  readonly id: RuleId;
}

/** Which way is stricter. */
type Stricter = RuleParameter['stricter'];

/** A parameter with a default, an integer in `unit`. */
export function parameter(name: string, value: number, unit: Unit, stricter: Stricter, says: string): RuleParameter {
  return { name, value, unit, stricter, says };
}

/** A parameter without a default: it bounds nothing, or the phase's own number holds, until a plan sets it. */
export function openParameter(name: string, unit: Unit, stricter: Stricter, says: string): RuleParameter {
  return { name, unit, stricter, says };
}
