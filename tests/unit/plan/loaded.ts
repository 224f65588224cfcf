// Plans from text, for tests of the language and the plan: files in memory, read and resolved as the commands do it.

import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import { readDocuments } from '../../../src/language/read-documents.ts';
import { loadPlan } from '../../../src/plan/load-plan.ts';
import type { Athlete, Plan } from '../../../src/plan/types.ts';
import type { Day } from '../../../src/util/days.ts';
import { memoryFiles } from '../read/memory-files.ts';

export interface Loaded {
  readonly plan: Plan | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

/** A plan by the paths of its files; a text alone is its season.yaml. */
export function load(files: string | Readonly<Record<string, string>>, today?: Day): Loaded {
  const all = typeof files === 'string' ? { 'season.yaml': files } : files;
  const host = memoryFiles(Object.fromEntries(Object.entries(all).map(([path, text]) => [`/plan/${path}`, text])));
  const read = readDocuments('/plan', host);
  const { value, diagnostics } = loadPlan(read.value, today);
  return { plan: value, diagnostics: [...read.diagnostics, ...diagnostics] };
}

/** A plan without errors; notices and warnings are let pass. */
export function planOf(files: string | Readonly<Record<string, string>>): Plan {
  const { plan, diagnostics } = load(files);
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  if (plan === undefined || errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
  return plan;
}

export function codesOf(files: string | Readonly<Record<string, string>>, today?: Day): readonly string[] {
  return load(files, today).diagnostics.map(({ code }) => code);
}

export function athleteOf(plan: Plan, id: string): Athlete {
  const athlete = plan.athletes.find((one) => one.id === id);
  if (athlete === undefined) throw new Error(`no athlete ${id}`);
  return athlete;
}

/** The parts of a plan that most tests don't speak of. */
export const FRAME = `footfall: 1
season: { title: Spring, starts: 2027-01-04, ends: 2027-05-02 }
places: { hall: {} }
slots: [{ day: tuesday, minutes: 75, place: hall }]
`;

/** A frame with one athlete who has these fields. */
export const withFields = (fields: string): string => `${FRAME}athletes:\n  mira: { ${fields} }\n`;
