// Makes a checkout able to run: installs the packages when they are missing or not those of the lock file, and builds
// dist/ when it isn't the build of the present source. Called first by `npm test`, `npm run demo` and `npm run check`.
// Uses nothing but Node before the packages are there, and says what it does on stderr, so that stdout stays the job's.

import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** @param {string} file @returns {Record<string, {version?: string, optional?: boolean}> | undefined} */
function lockedPackages(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

// Optional packages are those of other machines as well, so only the others have to be there.
function packagesAreInstalled() {
  const wanted = lockedPackages('package-lock.json');
  const found = lockedPackages('node_modules/.package-lock.json');
  if (wanted === undefined || found === undefined) return false;
  return Object.entries(wanted).every(
    ([path, { version, optional }]) => path === '' || optional === true || found[path]?.version === version,
  );
}

function install() {
  console.error('footfall: installing the packages (npm ci)');
  const { status } = spawnSync('npm', ['ci', '--include=dev'], { stdio: ['ignore', 2, 2] });
  if (status !== 0) {
    console.error('footfall: npm ci failed; see above');
    process.exit(1);
  }
}

if (!packagesAreInstalled()) install();
const { build, isBuilt } = await import('./build.mjs');
if (!isBuilt()) {
  console.error('footfall: building dist/');
  await build();
}
