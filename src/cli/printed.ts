// How commands print: on a canvas as wide and as colourful as the terminal, and tables as text for people or as CSV and
// JSON for scripts. Loaded with a command and never at the start, as the colours are.

import { renderCsv } from '../render/csv/csv.ts';
import { renderJsonTable } from '../render/json/json-table.ts';
import { createPalette } from '../render/palette.ts';
import type { Canvas } from '../render/terminal/canvas.ts';
import type { Terminal } from '../host/terminal.ts';
import type { Table } from '../report/table.ts';
import { lined } from './session.ts';

/** What pages are rendered for, from the terminal they go to. */
export const canvasOf = ({ colours, width }: Terminal): Canvas => ({ palette: createPalette(colours), width });

/** The table for scripts, or the lines that a person reads in its place; only what is asked for is made. */
export function tableOrLines(
  format: 'text' | 'csv' | 'json',
  table: () => Table,
  lines: () => Iterable<string>,
): Iterable<string> {
  switch (format) {
    case 'csv':
      return renderCsv(table());
    case 'json':
      return renderJsonTable(table());
    case 'text':
      return lined(lines());
  }
}
