// The examples as plans in memory, so that lines can be added to one and the season planned again.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plan } from '../../../src/plan/types.ts';
import type { AddedLine } from '../../../src/report/why/advice.ts';
import { planOf } from '../plan/loaded.ts';

export const EXAMPLES = readdirSync('examples').toSorted();

/** Contents by path within the plan's folder. */
export type PlanFiles = Readonly<Record<string, string>>;

export function filesOf(example: string): PlanFiles {
  const folder = join('examples', example);
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((path) =>
    /\.(?:yaml|csv)$/u.test(path),
  );
  return Object.fromEntries(paths.map((path) => [path, readFileSync(join(folder, path), 'utf8')]));
}

/** The plan with items added to its lists, as a file of its own. */
export function planWith(files: PlanFiles, adds: readonly AddedLine[] = []): Plan {
  if (adds.length === 0) return planOf(files);
  const season = files['season.yaml'] ?? '';
  const named = season.includes('\nfiles: [')
    ? season.replace('\nfiles: [', '\nfiles: [added.yaml, ')
    : `${season}\nfiles: [added.yaml]\n`;
  const lists = ['pins', 'waivers'].flatMap((list) => {
    const items = adds.filter((one) => one.list === list).map(({ item }) => `  - ${item}\n`);
    return items.length === 0 ? [] : [`${list}:\n${items.join('')}`];
  });
  return planOf({ ...files, 'season.yaml': named, 'added.yaml': lists.join('') });
}
