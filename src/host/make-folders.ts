// Makes a folder and those above it that aren't there. Node's own way of doing so never comes back where a folder that is
// there takes no new one, as in /proc, so each missing one is made by itself. Called by whatever writes files.

import { mkdirSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

/** Throws what the system says where one of them can't be made or looked at, or something else is in its place. */
export function makeFolders(path: string): void {
  for (const folder of missingFolders(resolve(path)).toReversed()) {
    try {
      mkdirSync(folder);
    } catch (error) {
      // Somebody else may have made it meanwhile.
      if (!isFolder(folder)) throw error;
    }
  }
}

/** From the path upwards to the first that is there. */
function missingFolders(path: string): readonly string[] {
  const missing: string[] = [];
  for (let at = path; !isFolder(at); at = dirname(at)) {
    missing.push(at);
    if (dirname(at) === at) break;
  }
  return missing;
}

/** Throws where something else stands there. */
function isFolder(path: string): boolean {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) return false;
  if (!there.isDirectory()) throw Object.assign(new Error(`ENOTDIR: ${path} is no folder`), { code: 'ENOTDIR' });
  return true;
}
