// The tables `footfall build --table` knows, by name.

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
