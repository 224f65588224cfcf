// How far a mistake in a YAML file reaches: what else is wrong on its line may only follow from it, and some mistakes take
// other keys of their group with them. Called by parse-yaml; used when a plan's problems are put together.

import type { Code } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { lineIndexOf, lineStart, lineText } from '../source/source-file.ts';
import type { SourceFile, Span } from '../source/types.ts';
import type { Mistake } from './types.ts';

/** Mistakes inside of one value: the keys around it are read as they were meant. */
const WITHIN_VALUES: ReadonlySet<Code> = new Set<Code>([
  'source/no-break-space',
  'source/invisible-character',
  'source/control-character',
  'source/lone-carriage-return',
  'yaml/tab-indent',
  'yaml/extra-comma',
  'yaml/colon-in-text',
  'yaml/reserved-character',
  'yaml/bad-escape',
  'yaml/tag',
  'yaml/directive',
  'yaml/duplicate-key',
]);

/** Mistakes behind which everything is read as it was meant. */
const HARMLESS: ReadonlySet<Code> = new Set<Code>(['yaml/duplicate-key', 'yaml/extra-comma', 'yaml/tab-indent']);

/** Whether every key around it was read in spite of it. */
export const losesNoKey = ({ code, severity }: Diagnostic): boolean => severity !== 'error' || WITHIN_VALUES.has(code);

interface Told {
  /** Mended so that the rest could be read, and not for certain as it was meant. */
  readonly mended: readonly Diagnostic[];
  readonly others: readonly Diagnostic[];
}

/** The lines of a file on which other problems may only follow from these. What has no place reaches nowhere. */
export function mistakesOf(file: SourceFile, { mended, others }: Told): readonly Mistake[] {
  const made = (diagnostic: Diagnostic, losesKeys: boolean): readonly Mistake[] =>
    diagnostic.span === undefined ? [] : [mistakeAt(file, diagnostic.span, losesKeys)];
  return [
    ...mended.flatMap((one) => made(one, false)),
    ...others.filter(isHarmful).flatMap((one) => made(one, !losesNoKey(one))),
  ];
}

const isHarmful = ({ code, severity }: Diagnostic): boolean => severity === 'error' && !HARMLESS.has(code);

function mistakeAt(file: SourceFile, span: Span, losesKeys: boolean): Mistake {
  const line = lineIndexOf(file, span.start);
  const first = groupStart(file, line);
  const around = { file: file.path, start: lineStart(file, first), end: lineStart(file, groupEnd(file, first)) };
  return { span, around, losesKeys, section: sectionAt(file, first) };
}

/** Lines looked through in each direction. */
const MOST_LINES = 20_000;

/** The line the group around a line belongs to; the line itself at the left edge, or where it begins a list item. */
function groupStart(file: SourceFile, line: number): number {
  const indent = indentOf(file, line) ?? 0;
  if (indent === 0 || /^ *- /u.test(lineText(file, line))) return line;
  for (let above = line - 1; above >= Math.max(0, line - MOST_LINES); above -= 1) {
    if ((indentOf(file, above) ?? indent) < indent) return above;
  }
  return 0;
}

/** The first line behind what belongs to a line. */
function groupEnd(file: SourceFile, line: number): number {
  const indent = indentOf(file, line) ?? 0;
  const last = Math.min(file.lineStarts.length, line + MOST_LINES);
  for (let below = line + 1; below < last; below += 1)
    if ((indentOf(file, below) ?? indent + 1) <= indent) return below;
  return file.lineStarts.length;
}

/** Spaces before a line; undefined for one that holds nothing or a comment. */
function indentOf(file: SourceFile, line: number): number | undefined {
  const text = lineText(file, line);
  const indent = text.search(/[^ ]/u);
  return indent === -1 || text.charAt(indent) === '#' ? undefined : indent;
}

/** The word at the left edge that a line belongs to. */
function sectionAt(file: SourceFile, line: number): string {
  for (let above = line; above >= Math.max(0, line - MOST_LINES); above -= 1) {
    const word = /^["']?([\w-]+)/u.exec(lineText(file, above))?.[1];
    if (word !== undefined && !word.startsWith('-')) return word;
  }
  return '';
}
