// What is published: the built program, its schemas and licences, nothing of the workshop; and it runs from the tarball
// alone, in a folder where no package is installed.

import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

let folder = '';
let unpacked = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'footfall-package-'));
  unpacked = join(folder, 'package');
  const command = ['pack', '--silent', '--ignore-scripts', '--pack-destination', folder];
  const tarball = execFileSync('npm', command, { encoding: 'utf8' }).trim();
  execFileSync('tar', ['-xzf', join(folder, tarball), '-C', folder]);
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

test('holds the program, its schemas and its licences, and no more', () => {
  const files = readdirSync(unpacked, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(unpacked.length + 1));
  const expected =
    /^(bin\/footfall\.js|bin\/package\.json|dist\/[\w-]+\.(cjs|code)|dist\/licences\.txt|dist\/source\.sha256|schemas\/[a-z.-]+\.json|LICENSE|README\.md|package\.json)$/;
  expect(files.filter((file) => !expected.test(file))).toEqual([]);
  expect(files).toEqual(
    expect.arrayContaining(['bin/footfall.js', 'dist/start.cjs', 'dist/licences.txt', 'LICENSE', 'package.json']),
  );
});

test('needs no other package', () => {
  const { dependencies, peerDependencies } = JSON.parse(readFileSync(join(unpacked, 'package.json'), 'utf8'));
  expect([dependencies, peerDependencies]).toEqual([undefined, undefined]);
  expect(existsSync(join(folder, 'node_modules'))).toBe(false);
});

test('says its version from the tarball alone', () => {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  const run = spawnSync(process.execPath, [join(unpacked, 'bin/footfall.js'), '--version'], {
    cwd: folder,
    encoding: 'utf8',
  });
  expect({ status: run.status, stdout: run.stdout.trim(), stderr: run.stderr }).toEqual({
    status: 0,
    stdout: version,
    stderr: '',
  });
});

test('carries the licence of every package that went in', () => {
  const licences = readFileSync(join(unpacked, 'dist/licences.txt'), 'utf8');
  for (const name of ['commander', 'yaml', 'chalk'])
    expect(licences).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+$`, 'm'));
});

// V8 refuses code that was made under other flags or from another text, and the program then starts later without a word.
test.each([
  ['start', ['--help']],
  ['start season', ['build', resolve('examples/handball-spring'), '--format', 'csv', '--quiet']],
])('the scripts %s start from the code that was kept', (scripts, words) => {
  const watched = `
    const vm = require('node:vm');
    const { Script } = vm;
    const loaded = [];
    process.on('exit', () => console.error(loaded.join(' ')));
    vm.Script = class extends Script {
      constructor(...given) {
        super(...given);
        const { name } = require('node:path').parse(given[1].filename);
        loaded.push(this.cachedDataRejected === false ? name : name + ' anew');
      }
    };
    process.argv = [process.execPath, 'footfall', ...${JSON.stringify(words)}];
    require(${JSON.stringify(join(unpacked, 'bin/footfall.js'))});`;
  const run = spawnSync(process.execPath, ['-e', watched], { cwd: folder, encoding: 'utf8' });
  expect({ status: run.status, stderr: run.stderr }).toEqual({ status: 0, stderr: `${scripts}\n` });
});
