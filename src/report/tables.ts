// The tables `footfall build --table` knows, by name. A new table is a line here, and its name in table-names.ts.

import type { AthleteTable } from './athlete-table.ts';
import { linesTable } from './lines-table.ts';
import { seasonTable } from './season-table.ts';
import { sessionsTable } from './sessions-table.ts';
import type { TableName } from './table-names.ts';
import { weeksTable } from './weeks-table.ts';

export const TABLES: Readonly<Record<TableName, AthleteTable>> = {
  season: seasonTable,
  weeks: weeksTable,
  sessions: sessionsTable,
  lines: linesTable,
};
