// What a coach may sign off for an athlete under `cleared:`, beside the id of any single drill. Read by the plan
// language, which knows no other words, and by whatever tells a coach what would open a gate.

import type { RuleId } from './rules.ts';

export interface Clearance {
  readonly id: string;
  /** What the coach says with it. */
  readonly words: string;
  /** The rules whose gate it opens. */
  readonly opens: readonly RuleId[];
}

export const CLEARANCES: readonly Clearance[] = [
  {
    id: 'drops',
    words: 'lands well from a box and may do drops up to the height of the level',
    opens: ['drop-clearance', 'drop-age'],
  },
  {
    id: 'single-leg-high',
    words: 'lands well on one leg and may do single-leg drills of the high tier',
    opens: ['drop-clearance'],
  },
  {
    id: 'drop-strength',
    words: 'has shown strength equal to the squat that higher drops ask for',
    opens: ['drop-strength'],
  },
  {
    id: 'loads',
    words: 'lifts with good technique and may go a little heavier below the age at which loads are free',
    opens: ['youth-load'],
  },
];

const BY_ID: ReadonlyMap<string, Clearance> = new Map(CLEARANCES.map((one) => [one.id, one]));

/** The clearance of an id a person wrote, if it is one; the id of a drill is none of these and clears that drill. */
export function findClearance(id: string): Clearance | undefined {
  return BY_ID.get(id);
}
