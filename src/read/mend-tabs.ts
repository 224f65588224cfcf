// Lines indented with tabs, put where the editor of whoever wrote them showed them. Called by parse-yaml, so that a tab
// is the only thing that is said of such a file.

import type { Edit } from './mend-text.ts';

/** Columns of white space that are looked through at the beginning of a line. */
const MOST_INDENT = 1000;

/** `tabs` are offsets of the first tab of each line indented with one, in order; stops are `columns` apart. */
export function tabEdits(text: string, tabs: readonly number[], columns: number): readonly Edit[] {
  return tabs.map((tab) => {
    const start = text.lastIndexOf('\n', tab) + 1;
    const [indent = ''] = /^[ \t]*/u.exec(text.slice(start, tab + MOST_INDENT)) ?? [];
    return { at: start, cut: indent.length, put: ' '.repeat(widthOf(indent, columns)) };
  });
}

function widthOf(indent: string, columns: number): number {
  let width = 0;
  for (const unit of indent) width += unit === '\t' ? columns - (width % columns) : 1;
  return width;
}
