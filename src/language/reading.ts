// What reading one scalar gives: a value, or a refusal that waits for its place, so that each keeps its own code and words.

import type { Code } from '../diagnostics/catalogue.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Details } from '../diagnostics/problem.ts';
import type { ScalarNode } from '../read/types.ts';
import { isScalar } from './nodes.ts';
import { Shape, wrongKind } from './shape.ts';
import type { Issue, JsonShape, Refusal } from './shape.ts';

export type Reading<T> = { readonly value: T } | { readonly refused: Refusal };

/** A refusal by code, whose place and path are filled in where the scalar stands. */
export function refuse<C extends Code>(code: C, details: Details<C>): { readonly refused: Refusal } {
  return { refused: (at) => problem(code, { ...details, ...at }) };
}

/** A shape for one scalar: `readScalar` gives its value or refuses it, `json` says the same to an editor. */
export function leaf<T>(readScalar: (scalar: ScalarNode) => Reading<T>, json: JsonShape): Shape<T> {
  const read = (input: unknown, issues: Issue[]): T | undefined => {
    if (!isScalar(input)) {
      issues.push(wrongKind('a single value', wordsOf(json)));
      return undefined;
    }
    const reading = readScalar(input);
    if ('value' in reading) return reading.value;
    issues.push({ kind: 'refused', path: [], refusal: reading.refused });
    return undefined;
  };
  return new Shape({ kind: 'leaf', json }, read, {}, false);
}

/** The words of a fixed choice. */
function wordsOf({ enum: words }: JsonShape): readonly string[] {
  return Array.isArray(words) ? words.map(String) : [];
}
