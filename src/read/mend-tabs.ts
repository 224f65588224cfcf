// Text indented with tabs, as the editor of whoever wrote it showed it: tabs at the beginning of lines made spaces, and
// the way back from places in the mended text to those in the real one. Called by parse-yaml, so that a tab is the only
// thing that is said of such a file.

import type { Diagnostic } from '../diagnostics/types.ts';
import type { Span } from '../source/types.ts';
import type { Node } from './types.ts';

export interface MendedText {
  readonly text: string;
  /** The offset in the real text of an offset in the mended one. */
  readonly back: (offset: number) => number;
}

/** `tabs` are offsets of the first tab of each line indented with one, in order; stops are `columns` apart. */
export function mendTabs(text: string, tabs: readonly number[], columns: number): MendedText {
  const steps: { readonly from: number; readonly added: number }[] = [];
  let mended = '';
  let kept = 0;
  for (const tab of tabs) {
    const start = text.lastIndexOf('\n', tab) + 1;
    const end = start + (/^[ \t]*/u.exec(text.slice(start, tab + MOST_INDENT))?.[0].length ?? 0);
    mended += text.slice(kept, start) + ' '.repeat(widthOf(text.slice(start, end), columns));
    kept = end;
    steps.push({ from: mended.length, added: mended.length - end });
  }
  return { text: mended + text.slice(kept), back: (offset) => offset - addedBefore(steps, offset) };
}

/** Columns of white space that are looked through at the beginning of a line. */
const MOST_INDENT = 1000;

function widthOf(indent: string, columns: number): number {
  let width = 0;
  for (const unit of indent) width += unit === '\t' ? columns - (width % columns) : 1;
  return width;
}

/** What the last step at or before an offset has added in all. */
function addedBefore(steps: readonly { readonly from: number; readonly added: number }[], offset: number): number {
  let low = 0;
  let high = steps.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((steps[middle]?.from ?? 0) <= offset) low = middle + 1;
    else high = middle;
  }
  return steps[low - 1]?.added ?? 0;
}

type Back = MendedText['back'];

const spanBack = (span: Span, back: Back): Span => ({ ...span, start: back(span.start), end: back(span.end) });

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

export const diagnosticBack = (diagnostic: Diagnostic, back: Back): Diagnostic => ({
  ...diagnostic,
  ...(diagnostic.span !== undefined && { span: spanBack(diagnostic.span, back) }),
  related: diagnostic.related.map(({ span, message }) => ({ span: spanBack(span, back), message })),
});
