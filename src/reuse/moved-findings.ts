// Findings of a season that is kept, pointing to where the lines of the plan are now. Called by season-memory.ts for plans
// that say the same and stand elsewhere.

import type { Diagnostic } from '../diagnostics/types.ts';
import { eachPlace } from '../plan/same-meaning.ts';
import type { Span } from '../source/types.ts';

/** Where each place is now; undefined for one that went to two, which no single place stands for. */
export type Moves = ReadonlyMap<string, Span | undefined>;

/** Of two parts of plans that say the same. */
export function movesBetween(before: unknown, after: unknown): Moves {
  const moves = new Map<string, Span | undefined>();
  eachPlace(before, after, (was, is) => {
    const key = placeKey(was);
    const known = moves.get(key);
    if (!moves.has(key)) moves.set(key, is);
    else if (known !== undefined && placeKey(known) !== placeKey(is)) moves.set(key, undefined);
  });
  return moves;
}

/** Whether all they point to is told of in the parts. */
export function pointInto(findings: readonly Diagnostic[], parts: readonly Moves[]): boolean {
  return movedFindings(findings, parts) !== undefined;
}

const placeKey = ({ file, start, end }: Span): string => `${start} ${end} ${file}`;

/** Undefined where one of them points to what none of the moves tells, or where two of these tell different things. */
export function movedFindings(
  findings: readonly Diagnostic[],
  moves: readonly Moves[],
): readonly Diagnostic[] | undefined {
  const moved: Diagnostic[] = [];
  for (const finding of findings) {
    const span = finding.span === undefined ? undefined : movedPlace(finding.span, moves);
    const related = finding.related.map((one) => ({ ...one, span: movedPlace(one.span, moves) }));
    if ((span === undefined && finding.span !== undefined) || !related.every(isPlaced)) return undefined;
    moved.push({ ...finding, related, ...(span !== undefined && { span }) });
  }
  return moved;
}

const isPlaced = <T extends { readonly span: Span | undefined }>(one: T): one is T & { readonly span: Span } =>
  one.span !== undefined;

function movedPlace(span: Span, moves: readonly Moves[]): Span | undefined {
  const key = placeKey(span);
  const [first, ...others] = moves.filter((one) => one.has(key)).map((one) => one.get(key));
  if (first === undefined) return undefined;
  return others.every((other) => other !== undefined && placeKey(other) === placeKey(first)) ? first : undefined;
}
