// The names of the tables of a build, apart from the tables, so that the command line offers them without loading what
// makes them.

export const TABLE_NAMES = ['season', 'weeks', 'sessions', 'lines'] as const;

export type TableName = (typeof TABLE_NAMES)[number];
