// Inputs made to be too much, in a process of their own whose heap is capped: it ends with a diagnostic, never with a
// trace of the program or for want of memory. How long it takes is measured by `npm run fuzz`.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { heavy } from './heavy.ts';

const MOST_MEGABYTES = 400;
const PATIENCE = 120_000;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-heavy-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const INPUTS = [
  '50 MB of comments',
  '16 MB of random bytes',
  '16 MB of random letters',
  '16 MB of opening brackets',
  'ten thousand keys',
  'ten thousand athletes with the same slip',
  'a thousand levels',
  'a thousand brackets',
  'an alias bomb',
  'a hundred thousand aliases',
  'a long number',
] as const;

test.each(INPUTS)(
  '%s',
  (name) => {
    writeFileSync(join(folder, 'season.yaml'), heavy[name]?.() ?? '');
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [`--max-old-space-size=${MOST_MEGABYTES}`, 'bin/footfall.js', 'check', folder],
      { encoding: 'utf8', maxBuffer: 100_000_000 },
    );
    expect(stderr).not.toMatch(/^\s+at |heap|bug/mu);
    expect(status).toBe(1);
    expect(stdout).toMatch(/: error: .*\[[a-z]+\/[a-z-]+\]$/mu);
  },
  PATIENCE,
);
