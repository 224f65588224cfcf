// What lies in the tree: what may stand at the top, how files are called, and what no file may say.

import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const MADE_BY_TOOLS = ['.git', 'node_modules', 'dist', 'coverage'];

const AT_THE_TOP = new Set([
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'bin',
  'src',
  'examples',
  'tests',
  'schemas',
  '.ci',
  '.gitattributes',
  '.gitignore',
  '.npmrc',
  '.oxfmtrc.json',
  '.oxlintrc.json',
]);

const top = readdirSync('.').filter((name) => !MADE_BY_TOOLS.includes(name) && !/^dist\.\d+$/.test(name));

function filesOf(name: string): readonly string[] {
  const entries = readdirSync('.', { withFileTypes: true }).filter((entry) => entry.name === name);
  if (entries.some((entry) => entry.isFile())) return [name];
  return readdirSync(name, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

const files = top.flatMap(filesOf).toSorted();

test('the top level holds what belongs there and nothing else', () => {
  expect(top.filter((name) => !AT_THE_TOP.has(name))).toEqual([]);
});

test('source files are named in kebab-case', () => {
  const own = files.filter((file) => /^(src|tests)\/.*\.(ts|mjs)$/.test(file));
  expect(own.length).toBeGreaterThan(0);
  expect(own.filter((file) => !/^([a-z0-9]+(-[a-z0-9]+)*\/)*[a-z0-9]+([-.][a-z0-9]+)*\.(ts|mjs)$/.test(file))).toEqual(
    [],
  );
});

interface Forbidden {
  readonly what: string;
  readonly pattern: RegExp;
  readonly within: RegExp;
}

const EVERYWHERE = /./;
const FORBIDDEN: readonly Forbidden[] = [
  {
    what: 'a path of one machine',
    pattern: /(?<![\w.])\/(work|root|Users)\/\w|\b[A-Z]:\\Users\\/,
    within: EVERYWHERE,
  },
  {
    what: 'unfinished work',
    pattern: /\b(TODO|FIXME|XXX|HACK)\b|lorem ipsum|not (yet )?implemented/i,
    within: EVERYWHERE,
  },
  {
    what: 'a silenced tool',
    pattern: /@ts-(ignore|expect-error|nocheck)|(es|ox)lint-disable|(c8|v8|istanbul) ignore|(prettier|oxfmt)-ignore/,
    within: /\.(ts|mjs|js)$/,
  },
  { what: 'a test that is set aside', pattern: /\b(test|it|describe)\.(only|skip|todo|fails)\b/, within: /\.ts$/ },
  { what: 'a registry host', pattern: /\bregistry\.[a-z]|\/npm\/-\/|"resolved"/, within: EVERYWHERE },
  {
    what: 'how the work was handed out',
    pattern:
      /\b[1-8]-(job|language|scheduling|rules|outputs|architecture|pages|season)\.md\b|\bissue #?\d|\b(the|this) brief\b/i,
    within: EVERYWHERE,
  },
  { what: 'the clock', pattern: /new Date\(\)/, within: /^src\/(?!host\/)/ },
];

describe('no file holds', () => {
  const texts = files
    .filter((file) => file !== 'tests/architecture/tree.test.ts' && !file.endsWith('.png'))
    .map((file) => ({ file, lines: readFileSync(file, 'latin1').split('\n') }));

  test.each(FORBIDDEN)('$what', ({ pattern, within }) => {
    const found = texts
      .filter(({ file }) => within.test(file))
      .flatMap(({ file, lines }) =>
        lines.flatMap((line, at) => (pattern.test(line) ? [`${file}:${at + 1}: ${line}`] : [])),
      );
    expect(found).toEqual([]);
  });
});

test('the lock file names no host but where authors take donations', () => {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8'));
  const withoutFunding = Object.entries(packages).map(([path, entry]) => [path, { ...Object(entry), funding: null }]);
  expect(withoutFunding.length).toBeGreaterThan(100);
  expect(JSON.stringify(withoutFunding).match(/https?:\/\/[^/"]+/g) ?? []).toEqual([]);
});

test('every package is pinned to one version', () => {
  const { dependencies = {}, devDependencies = {} } = JSON.parse(readFileSync('package.json', 'utf8'));
  const versions = Object.entries({ ...dependencies, ...devDependencies });
  expect(versions.length).toBeGreaterThan(0);
  expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+(-[a-z]+\.\d+)?$/.test(String(version)))).toEqual([]);
});
