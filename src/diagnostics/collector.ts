// Gathers the diagnostics of a stage and puts those of a run in order: by place, each once. Stages make one collector
// each; the order is made once, before rendering.

import { problem } from './problem.ts';
import type { Details } from './problem.ts';
import type { Code } from './catalogue.ts';
import type { Diagnostic } from './types.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';

export interface Collector {
  /** Makes a diagnostic and keeps it. */
  readonly report: <C extends Code>(code: C, details: Details<C>) => void;
  readonly add: (diagnostics: Iterable<Diagnostic>) => void;
  /** In the order they came. */
  readonly diagnostics: readonly Diagnostic[];
}

/** A collector with nothing in it yet. `diagnostics` grows as they are reported. */
export function createCollector(): Collector {
  const diagnostics: Diagnostic[] = [];
  return {
    diagnostics,
    report: (code, details) => {
      diagnostics.push(problem(code, details));
    },
    add: (more) => {
      for (const diagnostic of more) diagnostics.push(diagnostic);
    },
  };
}

/** Whether a later stage must not go on with what this one gave. */
export const hasErrors = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some(({ severity }) => severity === 'error');

/**
 * The diagnostics of a run as they are shown: those without a place first, then the entry file, then the others by
 * path; in a file by place, then code, then message. What says the same at the same place is there once.
 */
export function orderDiagnostics(
  diagnostics: readonly Diagnostic[],
  entryFile: string | undefined,
): readonly Diagnostic[] {
  const once = new Map<string, Diagnostic>();
  for (const diagnostic of diagnostics) {
    const key = identityOf(diagnostic);
    if (!once.has(key)) once.set(key, diagnostic);
  }
  return [...once.values()].sort((a, b) => compare(a, b, entryFile));
}

const identityOf = ({ code, span, message, athlete, week }: Diagnostic): string =>
  [code, span?.file ?? '', span?.start ?? '', span?.end ?? '', athlete ?? '', week ?? '', message].join('\n');

const compare = (a: Diagnostic, b: Diagnostic, entryFile: string | undefined): number =>
  fileRank(a, entryFile) - fileRank(b, entryFile) ||
  byCodeUnit(a.span?.file ?? '', b.span?.file ?? '') ||
  (a.span?.start ?? 0) - (b.span?.start ?? 0) ||
  byCodeUnit(a.code, b.code) ||
  (a.span?.end ?? 0) - (b.span?.end ?? 0) ||
  byCodeUnit(a.message, b.message);

const fileRank = ({ span }: Diagnostic, entryFile: string | undefined): number =>
  span === undefined ? 0 : span.file === entryFile ? 1 : 2;
