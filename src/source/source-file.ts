// Text to lines, offsets to lines and columns, and back. Used by the readers to make files and by whoever shows a
// place. CRLF, LF and a lone CR all end a line, so that no text is ever outside of a line.

import type { Place, SourceFile, Span } from './types.ts';

const LINE_FEED = 10;
const CARRIAGE_RETURN = 13;

/** A file as read; `text` without a byte order mark. */
export const sourceFile = (path: string, text: string): SourceFile => ({ path, text, lineStarts: lineStartsOf(text) });

function lineStartsOf(text: string): readonly number[] {
  const starts = [0];
  if (!text.includes('\r')) {
    for (let end = text.indexOf('\n'); end !== -1; end = text.indexOf('\n', end + 1)) starts.push(end + 1);
    return starts;
  }
  for (let offset = 0; offset < text.length; offset += 1) {
    const unit = text.charCodeAt(offset);
    const ends = unit === LINE_FEED || (unit === CARRIAGE_RETURN && text.charCodeAt(offset + 1) !== LINE_FEED);
    if (ends) starts.push(offset + 1);
  }
  return starts;
}

/** Index, from 0, of the line an offset is in; an offset behind the text is in the last line. */
export function lineIndexOf(file: SourceFile, offset: number): number {
  let low = 0;
  let high = file.lineStarts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((file.lineStarts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Offset of the first character of a line, by its index from 0. */
export const lineStart = (file: SourceFile, index: number): number => file.lineStarts[index] ?? file.text.length;

/** A line by its index from 0, without its end; empty for an index outside the file. */
export function lineText(file: SourceFile, index: number): string {
  const start = lineStart(file, index);
  let end = lineStart(file, index + 1);
  while (end > start && isLineEnd(file.text.charCodeAt(end - 1))) end -= 1;
  return file.text.slice(start, end);
}

const isLineEnd = (unit: number): boolean => unit === LINE_FEED || unit === CARRIAGE_RETURN;

/** A span as people count: lines and columns from 1, columns in UTF-16 units. */
export function placeOf(file: SourceFile, span: Span): Place {
  const line = lineIndexOf(file, span.start);
  const endLine = lineIndexOf(file, span.end);
  return {
    file: file.path,
    line: line + 1,
    column: span.start - lineStart(file, line) + 1,
    endLine: endLine + 1,
    endColumn: span.end - lineStart(file, endLine) + 1,
  };
}

/** The text a span covers. */
export const textOf = (file: SourceFile, span: Span): string => file.text.slice(span.start, span.end);
