// The seed of every property test, so that a run can be repeated: fixed, unless FOOTFALL_SEED names another.

const FIXED_SEED = 20270104;

/** Throws when FOOTFALL_SEED is set to something that isn't a whole number. */
export function propertySeed(): number {
  const wanted = process.env['FOOTFALL_SEED'];
  if (wanted === undefined || wanted === '') return FIXED_SEED;
  const seed = Number(wanted);
  if (!Number.isInteger(seed)) throw new Error(`FOOTFALL_SEED must be a whole number, not "${wanted}"`);
  return seed;
}
