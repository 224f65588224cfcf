// A build's athletes as they are asked for, with their findings gathered on the way. So the compiling, the writing and
// the counting are one walk, and a big squad is never in memory.

import type { Build, BuiltAthlete } from '../build/types.ts';
import type { Diagnostic, Severity } from '../diagnostics/types.ts';
import { selectsAthlete } from '../report/selection.ts';
import type { Selection } from '../report/selection.ts';

/** Kept of each severity to be shown; all are counted. */
const MOST_KEPT = 2_000;

export interface Findings {
  /** Those of the plan as a whole. */
  readonly ofPlan: readonly Diagnostic[];
  readonly add: (diagnostics: Iterable<Diagnostic>) => void;
  readonly count: (severity: Severity) => number;
  /** The first of them, in the order they came. */
  readonly kept: (severity: Severity) => readonly Diagnostic[];
}

/** Findings to add to, beginning with those of the plan as a whole. */
export function createFindings(ofPlan: readonly Diagnostic[]): Findings {
  const counts: Record<Severity, number> = { error: 0, warning: 0, notice: 0 };
  const kept: Record<Severity, Diagnostic[]> = { error: [], warning: [], notice: [] };
  const add = (diagnostics: Iterable<Diagnostic>): void => {
    for (const diagnostic of diagnostics) {
      counts[diagnostic.severity] += 1;
      if (kept[diagnostic.severity].length < MOST_KEPT) kept[diagnostic.severity].push(diagnostic);
    }
  };
  add(ofPlan);
  return {
    ofPlan,
    add,
    count: (severity) => counts[severity],
    kept: (severity) => kept[severity],
  };
}

/** The athletes who are asked for; what is found about them is added to the findings as they pass. */
export function* walk(
  { athletes }: Pick<Build, 'athletes'>,
  selection: Selection,
  findings: Findings,
): Iterable<BuiltAthlete> {
  for (const built of athletes) {
    if (!selectsAthlete(selection, built.athlete)) continue;
    findings.add(built.diagnostics);
    yield built;
  }
}
