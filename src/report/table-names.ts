// The names of the tables of a build, apart from the tables, for whoever only offers them.

export const TABLE_NAMES = ['season', 'weeks', 'sessions', 'lines'] as const;

export type TableName = (typeof TABLE_NAMES)[number];
