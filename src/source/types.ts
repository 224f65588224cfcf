// A file as it was read, and a stretch of it. Every later stage points into files only through Span, so that a
// diagnostic can always show the line. Offsets count UTF-16 code units, as editors do.

export interface SourceFile {
  /** Path relative to the plan's folder, with forward slashes on every system. */
  readonly path: string;
  readonly text: string;
  /** Offset of the first character of each line; CRLF, LF and lone CR all end a line. */
  readonly lineStarts: readonly number[];
}

export interface Span {
  /** A SourceFile's path. */
  readonly file: string;
  /** Offset of the first UTF-16 unit. */
  readonly start: number;
  /** Offset behind the last UTF-16 unit; at least `start`. */
  readonly end: number;
}

/** A span as people count: from 1, columns in UTF-16 units. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}
