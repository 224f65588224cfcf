// Documents → Plan: decoding and resolving, one after the other. Called by the pipeline. Problems come in the order of
// their places, so that the order in which they were found can't be seen.

import { decode } from '../language/decode.ts';
import type { Documents } from '../language/decode.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import { lineIndexOf } from '../source/source-file.ts';
import type { Span } from '../source/types.ts';
import type { Day } from '../util/days.ts';
import { resolve } from './resolve.ts';
import type { Plan } from './types.ts';

/**
 * The plan, or undefined where there is no season to plan in. Nothing may be planned from it while an error stands. Where
 * a file couldn't be read no name is looked up, as it may be defined there. `today` tells a record of the future from one
 * of the past; without it none is refused for its date.
 */
export function loadPlan(documents: Documents, today?: Day): Staged<Plan | undefined> {
  if (documents.documents.length === 0) return { value: undefined, diagnostics: [] };
  const authored = decode(documents);
  const plan = documents.isIncomplete === true ? NOT_RESOLVED : resolve(authored.value, today);
  const found = withoutFollowing(documents, [...authored.diagnostics, ...plan.diagnostics]);
  return { value: plan.value, diagnostics: inOrderOfPlace(documents, found) };
}

/** Without what only follows from a value that couldn't be read: what is on its line, and what lacks in its file. */
function withoutFollowing(
  { files, mistakes = [] }: Documents,
  diagnostics: readonly Diagnostic[],
): readonly Diagnostic[] {
  if (mistakes.length === 0) return diagnostics;
  const byPath = new Map(files.map((file) => [file.path, file]));
  const lineOf = ({ file, start }: Span): string => {
    const source = byPath.get(file);
    return `${file}:${source === undefined ? '' : String(lineIndexOf(source, start))}`;
  };
  const lines = new Set(mistakes.map(lineOf));
  const marred = new Set(mistakes.map(({ file }) => file));
  return diagnostics.filter(
    ({ code, span }) =>
      span === undefined || !(lines.has(lineOf(span)) || (LACKING.has(code) && marred.has(span.file))),
  );
}

/** What says that something isn't there: in a file with mistakes it may be. */
const LACKING: ReadonlySet<string> = new Set([
  'language/missing-key',
  'language/empty-value',
  'language/version-missing',
  'plan/no-season',
  'plan/no-end',
  'plan/no-slots',
  'plan/no-athletes',
  'plan/no-level',
  'plan/level-left-out',
  'plan/now-left-out',
  'plan/now-needed',
]);

const NOT_RESOLVED: Staged<undefined> = { value: undefined, diagnostics: [] };

function inOrderOfPlace(documents: Documents, diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const rank = new Map(documents.files.map((file, index) => [file.path, index]));
  const rankOf = ({ span }: Diagnostic): number => (span === undefined ? -1 : (rank.get(span.file) ?? rank.size));
  return diagnostics.toSorted((a, b) => rankOf(a) - rankOf(b) || (a.span?.start ?? 0) - (b.span?.start ?? 0));
}
