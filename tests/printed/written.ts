// Builds written for the tests of this folder: real examples and hard cases, into memory or a folder on disk.

import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { compileAt } from '../../src/cli/open-plan.ts';
import { writeBuild } from '../../src/cli/write-build.ts';
import type { Build } from '../../src/build/types.ts';
import { lastingBytes } from '../../src/host/growing-files.ts';
import type { Piece } from '../../src/host/growing-files.ts';
import { fileSystem } from '../../src/host/files.ts';
import type { Paper } from '../../src/render/html/paper.ts';
import { EVERYTHING } from '../../src/report/selection.ts';

export function exampleBuild(name: string): Build {
  const { build } = compileAt(`examples/${name}`, { files: fileSystem, today: 1_000_000 });
  if (build === undefined) throw new Error(`the example ${name} has errors`);
  return build;
}

const SILENT = { tell: () => {}, end: () => {} };

/** Every file of a written build, by path. */
export async function writtenFiles(
  build: Build,
  paper: Paper,
  last: ReadonlyMap<string, string> = new Map(),
): Promise<ReadonlyMap<string, string>> {
  const files = new Map<string, string>();
  const folder = {
    readLast: (path: string) => last.get(path),
    append: (path: string, piece: Piece) => {
      files.set(path, (files.get(path) ?? '') + new TextDecoder().decode(lastingBytes(piece)));
    },
  };
  await writeBuild(folder, { build, selection: EVERYTHING, paper, findings: () => [], progress: SILENT });
  return files;
}

export function putOnDisk(folder: string, files: ReadonlyMap<string, string>): void {
  for (const [path, text] of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}
