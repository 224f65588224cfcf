// A build as one JSON document, written while it is compiled: a line for each part of the head, a line for each athlete,
// a line for each finding of the whole.

import type { JsonObject } from '../../report/json-value.ts';

export interface BuildParts {
  readonly head: JsonObject;
  readonly athletes: Iterable<JsonObject>;
  /** Walked after the athletes. */
  readonly findings: Iterable<JsonObject>;
}

/** The document in pieces of a line. */
export function* renderBuild({ head, athletes, findings }: BuildParts): Iterable<string> {
  yield '{\n';
  for (const [name, value] of Object.entries(head)) {
    if (value !== undefined) yield `${JSON.stringify(name)}:${JSON.stringify(value)},\n`;
  }
  yield '"athletes":';
  yield* list(athletes);
  yield ',\n"findings":';
  yield* list(findings);
  yield '\n}\n';
}

function* list(items: Iterable<JsonObject>): Iterable<string> {
  let before = '[\n';
  for (const item of items) {
    yield before + JSON.stringify(item);
    before = ',\n';
  }
  yield before === '[\n' ? '[]' : '\n]';
}
