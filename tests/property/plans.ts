// How many random plans a property is tried on: a few hundred with the tests, FOOTFALL_PROPERTY_PLANS=10000 for more.

/** `usual` unless the environment names another number. Throws where that is none. */
export function plansFor(usual: number): number {
  const wanted = process.env['FOOTFALL_PROPERTY_PLANS'];
  if (wanted === undefined || wanted === '') return usual;
  const plans = Number(wanted);
  if (!Number.isInteger(plans) || plans < 1) throw new Error(`FOOTFALL_PROPERTY_PLANS is a number, not "${wanted}"`);
  return plans;
}

/** Milliseconds for a busy machine; nothing here is timed. */
export const PATIENCE = 4 * 3_600_000;

/** What was tried, in one line of the test's output. */
export function tell(line: string): void {
  process.stdout.write(`${line}\n`);
}
