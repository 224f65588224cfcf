// What tests are measured in: the kinds of units and, for each test, those it may have. Read where a plan's record of tests
// is bound. A unit of another kind is a slip, mostly of the row or of the column. C.

import { JUMP_TESTS } from './jump-tests.ts';
import type { Lift } from './types.ts';

/** Units by what they measure; the first is the one to write. */
export const UNITS_BY_KIND = {
  length: ['cm', 'm', 'in'],
  time: ['s', 'ms'],
  mass: ['kg', 'lb'],
  force: ['N', 'N/kg'],
  power: ['W', 'W/kg'],
  speed: ['m/s'],
  count: ['reps'],
  ratio: ['index'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** What one of a unit of length or of time is. */
export const METRES_A_UNIT: Readonly<Record<string, number>> = { m: 1, cm: 0.01, in: 0.0254 };
export const SECONDS_A_UNIT: Readonly<Record<string, number>> = { s: 1, ms: 0.001 };

export type UnitKind = keyof typeof UNITS_BY_KIND;

/** Height, time in the air, what a plate or a sensor says of the take-off, and the ratio of height and time. */
const JUMP: readonly UnitKind[] = ['length', 'time', 'speed', 'force', 'power', 'ratio'];

/** A pull as if to lift may be read off a scale. */
const KINDS_BY_TEST: ReadonlyMap<string, readonly UnitKind[]> = new Map<string, readonly UnitKind[]>([
  ...JUMP_TESTS.map((test) => [test, JUMP] as const),
  ['jump-and-reach', ['length']],
  ['isometric-pull', ['force', 'mass']],
  ['sprint', ['time', 'speed']],
  ['contact-time', ['time']],
  ['take-off-time', ['time']],
]);

/** Kinds a test may be measured in; what is neither in the table nor a lift is a drill. */
export function unitKindsOf(test: string, lift: Lift | undefined): readonly UnitKind[] {
  return KINDS_BY_TEST.get(test) ?? (lift === undefined ? [...JUMP, 'count'] : liftKinds(lift));
}

/** Loads, reps and the speed of the bar; how long and how far of what is held, carried, thrown or jumped with. */
function liftKinds({ held = false, pattern }: Lift): readonly UnitKind[] {
  const isTimed = held || pattern === 'trunk' || pattern === 'loaded-jump';
  return ['mass', 'count', 'speed', 'force', 'power', ...(isTimed ? (['time', 'length'] as const) : [])];
}

/** What a unit measures; undefined for one that is in no kind. */
export function kindOfUnit(unit: string): UnitKind | undefined {
  const kinds = Object.entries(UNITS_BY_KIND) as readonly (readonly [UnitKind, readonly string[]])[];
  return kinds.find(([, units]) => units.includes(unit))?.[0];
}
