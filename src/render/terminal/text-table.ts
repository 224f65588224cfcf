// Any table as aligned text. The widths need all rows, so this is for tables a person reads; big ones go out as CSV.

import type { Cell, Column, Row, Table } from '../../report/table.ts';
import type { Canvas } from './canvas.ts';
import { layOut } from './layout.ts';
import type { LayoutColumn } from './layout.ts';

/** Nothing is left out to fit the window: lines longer than it are the reader's to wrap. */
export function renderTextTable({ columns, rows }: Table, { palette }: Canvas): readonly string[] {
  return layOut([...rows], columns.map(layoutColumn), Infinity, palette.quiet);
}

function layoutColumn({ name, kind }: Column, index: number): LayoutColumn<Row> {
  const isNumber = kind === 'integer' || kind === 'decimal';
  return { title: name, align: isNumber ? 'right' : 'left', text: (row) => cellText(row[index]) };
}

const cellText = (cell: Cell): string => (cell === undefined ? '' : String(cell));
