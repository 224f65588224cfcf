// A part of the Monday page as every format of it shows it: a table of texts, or lines, with notes below.

export interface SectionColumn {
  readonly title: string;
  readonly align: 'left' | 'right';
  /** Left out first where room is short and it is highest; absent: never. */
  readonly spare?: number;
  /** Gives its room to the others and wraps; for one column at most. */
  readonly wraps?: boolean;
}

export interface ReviewSection {
  readonly title: string;
  /** Without columns each row is a line of its own. */
  readonly columns: readonly SectionColumn[];
  /** A text for each column, in their order; the first names the row. */
  readonly rows: readonly (readonly string[])[];
  readonly notes: readonly string[];
}

/** A column with what it says of a row. */
export interface Said<T> extends SectionColumn {
  readonly text: (row: T) => string;
}

/** The section of some rows; nothing where there are none. */
export function sectionOf<T>(
  title: string,
  rows: readonly T[],
  said: readonly Said<T>[],
  notes: readonly string[] = [],
): readonly ReviewSection[] {
  if (rows.length === 0) return [];
  return [{ title, columns: said, rows: rows.map((row) => said.map(({ text }) => text(row))), notes }];
}

/** A section of lines in the place of a table; none where there are no lines. */
export const linesSection = (
  title: string,
  lines: readonly string[],
  notes: readonly string[] = [],
): readonly ReviewSection[] =>
  lines.length === 0 ? [] : [{ title, columns: [], rows: lines.map((line) => [line]), notes }];

/** The words for what there is; empty where there is nothing. */
export const optional = <T>(value: T | undefined, words: (value: T) => string): string =>
  value === undefined ? '' : words(value);

/** `+3`, `-3`, `0`. */
export const signed = (value: number, text: string): string => (value > 0 ? `+${text}` : text);
