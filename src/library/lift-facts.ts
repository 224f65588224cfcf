// What follows from a lift's row. Read by the gates and by what is told of limits.

import type { Lift } from './types.ts';

/**
 * Whether a lift is the one of that id or a kind of it: one that goes by its maximum, as a box squat by the back squat's, or
 * that the library calls one.
 */
export const isKindOf = ({ id, maxOf, kindOf }: Lift, other: string): boolean =>
  id === other || maxOf === other || kindOf === other;
