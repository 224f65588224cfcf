// Lays out columns of text on a terminal of any width: numbers to the right, words to the left, the last column wrapped.
// What doesn't fit is left out column by column, the least needed first. Colour goes on after everything is measured.

import { displayWidth, fitted } from '../../util/display-width.ts';

export interface LayoutColumn<T> {
  readonly title: string;
  readonly align: 'left' | 'right';
  readonly text: (row: T) => string;
  /** Applied to the text after it has been padded. */
  readonly paint?: (text: string, row: T) => string;
  /** Left out first where it is highest; absent: never. */
  readonly spare?: number;
  /** Gives its room to the others down to this width, and wraps; for one column at most. */
  readonly wrapAt?: number;
}

const GAP = '  ';
const LEAST_WRAPPED = 20;

interface Measured<T> {
  readonly column: LayoutColumn<T>;
  readonly width: number;
}

/** The lines of a table with its header, none wider than `width` unless what can't be left out is. */
export function layOut<T>(
  rows: readonly T[],
  all: readonly LayoutColumn<T>[],
  width: number,
  paintHeader: (text: string) => string,
): readonly string[] {
  const measured = fit(measure(rows, all), width);
  const header = measured.map(({ column, width: own }) => pad(column.title, own, column.align)).join(GAP);
  return [paintHeader(header.trimEnd()), ...rows.flatMap((row) => rowLines(row, measured))];
}

function measure<T>(rows: readonly T[], all: readonly LayoutColumn<T>[]): readonly Measured<T>[] {
  return all
    .map((column) => ({
      column,
      width: rows.reduce((widest, row) => Math.max(widest, displayWidth(column.text(row))), displayWidth(column.title)),
    }))
    .filter(
      ({ column }) => column.spare === undefined || rows.length === 0 || rows.some((row) => column.text(row) !== ''),
    );
}

const total = <T>(measured: readonly Measured<T>[]): number =>
  measured.reduce((sum, { width }) => sum + width, 0) + GAP.length * Math.max(0, measured.length - 1);

/** First wraps the column that may be wrapped, then drops spare columns until the rest fits. */
function fit<T>(measured: readonly Measured<T>[], width: number): readonly Measured<T>[] {
  const narrowed = narrow(measured, width);
  if (total(narrowed) <= width) return narrowed;
  const spare = Math.max(...measured.map(({ column }) => column.spare ?? 0));
  if (spare === 0) return narrowed;
  return fit(
    measured.filter(({ column }) => column.spare !== spare),
    width,
  );
}

function narrow<T>(measured: readonly Measured<T>[], width: number): readonly Measured<T>[] {
  const over = total(measured) - width;
  if (over <= 0) return measured;
  return measured.map((one) =>
    one.column.wrapAt === undefined
      ? one
      : { ...one, width: Math.max(one.column.wrapAt, displayWidth(one.column.title), one.width - over) },
  );
}

function rowLines<T>(row: T, measured: readonly Measured<T>[]): readonly string[] {
  const cells = measured.map(({ column, width }) =>
    column.wrapAt === undefined ? [column.text(row)] : wrap(column.text(row), width),
  );
  const height = Math.max(1, ...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    measured
      .map(({ column, width }, index) => {
        const padded = pad(cells[index]?.[line] ?? '', width, column.align);
        return column.paint === undefined ? padded : column.paint(padded, row);
      })
      .join(GAP)
      .trimEnd(),
  );
}

/** Filled up with spaces to a width; a longer text stays as it is. */
export function pad(text: string, width: number, align: 'left' | 'right'): string {
  const filling = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return align === 'left' ? text + filling : filling + text;
}

/** Lines of whole words, none wider than `width`; a word that is wider by itself is shortened. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (displayWidth(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = fitted(word, width);
  }
  return [...lines, line];
}

/** As `wrap`, with `before` in front of the first line and the others set in as far. */
export function hanging(
  before: string,
  text: string,
  width: number,
  paintBefore: (text: string) => string = (plain) => plain,
): readonly string[] {
  const inset = displayWidth(before);
  const lines = wrap(text, Math.max(LEAST_WRAPPED, width - inset));
  return lines.map((line, index) => (index === 0 ? paintBefore(before) : ' '.repeat(inset)) + line);
}
