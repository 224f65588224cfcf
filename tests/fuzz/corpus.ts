// The plans that mutations start from: every example and every fixture, as files in memory.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Bytes by path below `/plan`. */
export type PlanBytes = Readonly<Record<string, Uint8Array>>;

const foldersIn = (path: string): readonly string[] =>
  readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => join(path, name))
    .toSorted();

function planIn(folder: string): PlanBytes {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Object.fromEntries(
    files.map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [`/plan/${path.slice(folder.length + 1)}`, new Uint8Array(readFileSync(path))];
    }),
  );
}

export function corpus(): readonly PlanBytes[] {
  const fixtures = foldersIn('tests/diagnostics')
    .flatMap(foldersIn)
    .map((folder) => join(folder, 'plan'));
  const folders = [...foldersIn('examples'), ...fixtures.filter((folder) => existsSync(folder))];
  return folders.map(planIn).filter((plan) => Object.keys(plan).length > 0);
}
