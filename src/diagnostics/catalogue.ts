// Every diagnostic footfall can give, by code `area/what-is-wrong`: one file per area under catalogue/, joined here.
// `problem()` takes its words from here, the command line explains a code from here, and a test walks the whole list. A
// code is never used again for something else; a new area is a new file and a line below.

import { csvEntries } from './catalogue/csv.ts';
import { filesEntries } from './catalogue/files.ts';
import { languageEntries } from './catalogue/language.ts';
import { linesEntries } from './catalogue/lines.ts';
import { planEntries } from './catalogue/plan.ts';
import { rulesEntries } from './catalogue/rules.ts';
import { scheduleEntries } from './catalogue/schedule.ts';
import { sourceEntries } from './catalogue/source.ts';
import { yamlEntries } from './catalogue/yaml.ts';
import type { Entries, Entry } from './entry.ts';

export const catalogue = {
  ...sourceEntries,
  ...yamlEntries,
  ...filesEntries,
  ...csvEntries,
  ...languageEntries,
  ...planEntries,
  ...scheduleEntries,
  ...linesEntries,
  ...rulesEntries,
} as const satisfies Entries;

export type Catalogue = typeof catalogue;

/** A code that is in the catalogue. */
export type Code = keyof Catalogue;

/** All codes, in the order of their text. */
export const codes: readonly Code[] = (Object.keys(catalogue) as Code[]).sort();

/** The entry of a code, or undefined for a text that is no code. */
export const findEntry = (code: string): Entry | undefined =>
  Object.hasOwn(catalogue, code) ? catalogue[code as Code] : undefined;
