// A text with its slips of the pen mended, and the way back from places in it to those in the real one. Called by
// parse-yaml: what a slip hides is read in the mended text and told at the place where it really stands.

import type { Diagnostic } from '../diagnostics/types.ts';
import type { Span } from '../source/types.ts';
import type { Node } from './types.ts';

/** `cut` units of the text at an offset, and what stands there instead. */
export interface Edit {
  readonly at: number;
  readonly cut: number;
  readonly put: string;
}

/** The offset in the real text of an offset in the mended one. */
export type Back = (offset: number) => number;

export interface MendedText {
  readonly text: string;
  readonly back: Back;
}

interface Step {
  /** Where what was put begins and ends in the mended text. */
  readonly from: number;
  readonly until: number;
  readonly edit: Edit;
}

/** The text with edits made that don't touch each other, in their order. */
export function mendText(text: string, edits: readonly Edit[]): MendedText {
  const steps: Step[] = [];
  const pieces: string[] = [];
  let kept = 0;
  let length = 0;
  for (const edit of edits) {
    const before = text.slice(kept, edit.at);
    pieces.push(before, edit.put);
    const from = length + before.length;
    length = from + edit.put.length;
    steps.push({ from, until: length, edit });
    kept = edit.at + edit.cut;
  }
  return { text: pieces.join('') + text.slice(kept), back: (offset) => realOffset(steps, offset) };
}

/** Inside of what was put it is at most the end of what was cut. */
function realOffset(steps: readonly Step[], offset: number): number {
  const step = lastBefore(steps, offset);
  if (step === undefined) return offset;
  const { from, until, edit } = step;
  return offset < until ? Math.min(edit.at + offset - from, edit.at + edit.cut) : edit.at + edit.cut + offset - until;
}

function lastBefore(steps: readonly Step[], offset: number): Step | undefined {
  let low = 0;
  let high = steps.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((steps[middle]?.from ?? 0) <= offset) low = middle + 1;
    else high = middle;
  }
  return steps[low - 1];
}

/** A place of the mended text as one of the real text. */
export const spanBack = (span: Span, back: Back): Span => ({ ...span, start: back(span.start), end: back(span.end) });

/** A tree with the places of the real text. */
export function nodeBack(node: Node, back: Back): Node {
  const span = spanBack(node.span, back);
  switch (node.kind) {
    case 'scalar':
      return { ...node, span };
    case 'sequence':
      return { ...node, span, items: node.items.map((item) => nodeBack(item, back)) };
    case 'map':
      return {
        ...node,
        span,
        entries: node.entries.map(({ key, keySpan, value }) => ({
          key,
          keySpan: spanBack(keySpan, back),
          value: nodeBack(value, back),
        })),
      };
  }
}

/** A diagnostic of the mended text with all its places in the real one. */
export const diagnosticBack = (diagnostic: Diagnostic, back: Back): Diagnostic => ({
  ...diagnostic,
  ...(diagnostic.span !== undefined && { span: spanBack(diagnostic.span, back) }),
  related: diagnostic.related.map(({ span, message }) => ({ span: spanBack(span, back), message })),
});
