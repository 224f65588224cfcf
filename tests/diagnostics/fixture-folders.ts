// The fixtures by name, `area/what`: every folder two levels below this one.

import { readdirSync } from 'node:fs';
import { join } from 'node:path';

export const here = 'tests/diagnostics';

const foldersOf = (path: string): readonly string[] =>
  readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();

export const fixtures: readonly string[] = foldersOf(here).flatMap((area) =>
  foldersOf(join(here, area)).map((what) => `${area}/${what}`),
);
