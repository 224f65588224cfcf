// The programs of the system that tests read footfall's outputs with. Where one is missing its tests are left out, loudly;
// in CI, which installs them all, they fail instead.

import { spawnSync } from 'node:child_process';

export type Program =
  | 'chromium'
  | 'pdfinfo'
  | 'pdftotext'
  | 'pdftohtml'
  | 'pdftoppm'
  | 'soffice'
  | 'python3-vobject'
  | 'mount';

const PROBES: Readonly<Record<Program, readonly [string, ...string[]]>> = {
  chromium: ['/usr/bin/chromium', '--version'],
  pdfinfo: ['pdfinfo', '-v'],
  pdftotext: ['pdftotext', '-v'],
  pdftohtml: ['pdftohtml', '-v'],
  pdftoppm: ['pdftoppm', '-v'],
  soffice: ['soffice', '--version'],
  'python3-vobject': ['/usr/bin/python3', '-c', 'import vobject'],
  mount: [
    'sh',
    '-c',
    'd=$(mktemp -d) && mount -t tmpfs -o size=64k tmpfs "$d" && umount "$d"; s=$?; rmdir "$d"; exit $s',
  ],
};

function isThere(program: Program): boolean {
  const [command, ...args] = PROBES[program];
  return spawnSync(command, args, { stdio: 'ignore' }).status === 0;
}

/** Whether the programs are all there; in CI they count as there, so that tests without them fail. Says so loudly if not. */
export function haveAll(...programs: readonly Program[]): boolean {
  const missing = programs.filter((program) => !isThere(program));
  if (missing.length === 0) return true;
  process.stderr.write(`\n*** LEFT OUT: tests that need ${missing.join(', ')}, which is not installed ***\n\n`);
  return process.env['CI'] === 'true';
}
