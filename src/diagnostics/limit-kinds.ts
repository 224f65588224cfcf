// Keeps a run readable: of one kind of problem in one file a hundred are shown, and one more that says how many there
// are. Called when a plan has been read; a slip that repeats itself in ten thousand lines is mended once.

import { problem } from './problem.ts';
import type { Diagnostic } from './types.ts';

const MOST_OF_A_KIND = 100;

/** The problems as they came, without those of a kind that is told often enough; these are counted at the last that is. */
export function limitKinds(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const kinds = new Map<string, Kind>();
  const shown: Diagnostic[] = [];
  for (const diagnostic of diagnostics) {
    const kind = `${diagnostic.code}\n${diagnostic.span?.file ?? ''}`;
    const found = kinds.get(kind) ?? { count: 0, last: diagnostic };
    kinds.set(kind, found);
    found.count += 1;
    if (found.count <= MOST_OF_A_KIND) shown.push(diagnostic);
    if (found.count === MOST_OF_A_KIND) found.last = diagnostic;
  }
  return [...shown, ...[...kinds.values()].flatMap((kind) => restOf(kind))];
}

interface Kind {
  count: number;
  /** The last that is shown. */
  last: Diagnostic;
}

function restOf({ count, last: { code, severity, span } }: Kind): readonly Diagnostic[] {
  if (count <= MOST_OF_A_KIND) return [];
  const params = { code, count: count - MOST_OF_A_KIND };
  return [problem('plan/more', { params, severity, span })];
}
