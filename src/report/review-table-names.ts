// The tables of the Monday page, named where the command line can read them without loading what makes them.

export const REVIEW_TABLE_NAMES = [
  'decisions',
  'exceptions',
  'ahead',
  'weeks',
  'tests',
  'figures',
  'forecast',
  'kilos',
] as const;

export type ReviewTableName = (typeof REVIEW_TABLE_NAMES)[number];
