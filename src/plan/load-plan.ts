// Documents → Plan: decoding and resolving, one after the other. Called by the pipeline. Problems come in the order of
// their places, so that the order in which they were found can't be seen.

import { decode } from '../language/decode.ts';
import type { Documents } from '../language/decode.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { Day } from '../util/days.ts';
import { withoutFollowing } from './following.ts';
import { resolve } from './resolve.ts';
import type { Plan } from './types.ts';

/**
 * The plan, or undefined where there is no season to plan in. Nothing may be planned from it while an error stands. Where
 * a file couldn't be read, what it may hold isn't said to be missing. `today` tells a record of the future from one of the
 * past; without it none is refused for its date.
 */
export function loadPlan(documents: Documents, today?: Day): Staged<Plan | undefined> {
  if (documents.documents.length === 0) return { value: undefined, diagnostics: [] };
  const authored = decode(documents);
  const plan = resolve(authored.value, today);
  const found = withoutFollowing(documents, [...authored.diagnostics, ...plan.diagnostics]);
  return { value: plan.value, diagnostics: inOrderOfPlace(documents, found) };
}

function inOrderOfPlace(documents: Documents, diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const rank = new Map(documents.files.map((file, index) => [file.path, index]));
  const rankOf = ({ span }: Diagnostic): number => (span === undefined ? -1 : (rank.get(span.file) ?? rank.size));
  return diagnostics.toSorted((a, b) => rankOf(a) - rankOf(b) || (a.span?.start ?? 0) - (b.span?.start ?? 0));
}
