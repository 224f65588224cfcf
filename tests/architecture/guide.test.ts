// The contributors' guide against the tree: each file, folder and npm script it names is there, each link leads somewhere,
// and every room of the sources stands in its table.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };

const guide = readFileSync('DEVELOPERS.md', 'utf8');
const prose = guide.replaceAll(/^ {4}.*$/gm, '');

const below = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((path) => `${folder}/${path}`);

const tree = ['bin', 'examples', 'schemas', 'src', 'tests'].flatMap(below);

const quoted = [...prose.matchAll(/`([^`\n]+)`/g)].map(([, text = '']) => text);

/** A file with an ending of ours, or a path below a folder of ours; what is made or only stands for a name is neither. */
const isPath = (text: string): boolean =>
  /^[\w./*-]+$/.test(text) &&
  !text.startsWith('dist/') &&
  (/\.(ts|mjs|js|json|md|yaml)$/.test(text) || /^(src|tests|examples|schemas|bin)\//.test(text));

/** Made by a build, or written by a coach. */
const NO_FILES_OF_OURS = new Set(['plan.json']);

function isThere(path: string): boolean {
  if (existsSync(path)) return true;
  const ending = new RegExp(`(^|/)${path.replaceAll('.', '\\.').replaceAll('*', '[^/]+')}$`);
  return tree.some((one) => ending.test(one));
}

test('every file and folder the guide names is there', () => {
  const named = quoted.filter((text) => isPath(text) && !NO_FILES_OF_OURS.has(text));
  expect(named.length).toBeGreaterThan(50);
  expect(named.filter((path) => !isThere(path))).toEqual([]);
});

test('every link of the guide leads to a file', () => {
  const links = [...prose.matchAll(/\]\(([^)#]+)\)/g)].map(([, to = '']) => to);
  expect(links).not.toEqual([]);
  expect(links.filter((to) => !existsSync(to))).toEqual([]);
});

test('every npm script the guide names is one', () => {
  const scripts = [...prose.matchAll(/npm run (\w+)/g)].map(([, name = '']) => name);
  expect(scripts.filter((name) => !(name in manifest.scripts))).toEqual([]);
});

test('every room of the sources stands in the table of rooms', () => {
  const [, table = ''] = /\| room \| holds \|\n([\s\S]*?)\n\n/.exec(guide) ?? [];
  const rooms = [...table.matchAll(/^\| ([^|]+) \|/gm)].flatMap(([, cell = '']) =>
    [...cell.matchAll(/`([a-z]+)`/g)].map(([, room = '']) => room),
  );
  const folders = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(new Set(rooms)).toEqual(new Set(folders.map(({ name }) => name)));
});
