// What the oracles share: how many random plans each is asked about, and the line that says what was seen.

/** `usual` unless FOOTFALL_ORACLE_PLANS names another number. Throws where that is none. */
export function oraclePlans(usual: number): number {
  const wanted = process.env['FOOTFALL_ORACLE_PLANS'];
  if (wanted === undefined || wanted === '') return usual;
  const plans = Number(wanted);
  if (!Number.isInteger(plans) || plans < 1) throw new Error(`FOOTFALL_ORACLE_PLANS is a number, not "${wanted}"`);
  return plans;
}

/** With the milliseconds it took. */
export function timed<T>(work: () => T): { readonly value: T; readonly took: number } {
  const from = performance.now();
  const value = work();
  return { value, took: performance.now() - from };
}

/** Milliseconds of both. */
export interface Spent {
  readonly solver: number;
  readonly ours: number;
}

/** One line of the test's output; nothing hangs on the times. */
export function tellRatio(stage: string, seen: string, { solver, ours }: Spent): void {
  process.stdout.write(
    `${stage} against the mixed-integer oracle: ${seen}; solver ${(solver / 1000).toFixed(1)} s, ` +
      `ours ${(ours / 1000).toFixed(3)} s, ${Math.round(solver / ours)} : 1\n`,
  );
}
