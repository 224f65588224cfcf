// Globs: what they find, in which order, and how far they look.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FileHost } from '../../../src/read/file-host.ts';
import { isGlob, matchesName, matchFiles } from '../../../src/read/glob.ts';
import { memoryFiles } from './memory-files.ts';

const host = memoryFiles({
  '/plan/season.yaml': '',
  '/plan/squad/b.yaml': '',
  '/plan/squad/a.yaml': '',
  '/plan/squad/.hidden.yaml': '',
  '/plan/squad/notes.txt': '',
  '/plan/squad/old/c.yaml': '',
  '/plan/.git/d.yaml': '',
  '/plan/linked.yaml': { link: '/plan/squad/a.yaml' },
});

const found = (pattern: string): readonly string[] => matchFiles(pattern.split('/'), '/plan', host).paths;

describe('a glob', () => {
  it.each([
    ['squad/*.yaml', ['squad/a.yaml', 'squad/b.yaml']],
    ['squad/*', ['squad/a.yaml', 'squad/b.yaml', 'squad/notes.txt']],
    ['*/a.yaml', ['squad/a.yaml']],
    ['squad/?.yaml', ['squad/a.yaml', 'squad/b.yaml']],
    ['**/*.yaml', ['linked.yaml', 'season.yaml', 'squad/a.yaml', 'squad/b.yaml', 'squad/old/c.yaml']],
    ['**', ['linked.yaml', 'season.yaml', 'squad/a.yaml', 'squad/b.yaml', 'squad/notes.txt', 'squad/old/c.yaml']],
    ['**/**/c.yaml', ['squad/old/c.yaml']],
    ['squad/**/c.yaml', ['squad/old/c.yaml']],
    ['squad/.*.yaml', ['squad/.hidden.yaml']],
    ['squad/*.YAML', []],
    ['squads/*.yaml', []],
    ['*.csv', []],
  ])('%s finds %j', (pattern, paths) => {
    expect(found(pattern)).toEqual(paths);
  });

  it('gives up where there is far too much to look through', () => {
    const endless: FileHost = {
      ...host,
      list: () => ({
        ok: true,
        value: Array.from({ length: 100 }, (_, index) => ({ name: `f${index}`, kind: 'folder' })),
      }),
    };
    expect(matchFiles(['**', '*.yaml'], '/plan', endless).tooMany).toBe(true);
  });

  it('is known by its stars and question marks', () => {
    expect(['a/*.yaml', 'a?', '**'].every((path) => isGlob(path))).toBe(true);
    expect(isGlob('squad/a[1]{2}.yaml')).toBe(false);
  });
});

describe('a name', () => {
  it('matches as a regular expression of the same meaning does', () => {
    const name = fc.string({ unit: fc.constantFrom('a', 'b', '.'), maxLength: 8 });
    const pattern = fc.string({ unit: fc.constantFrom('a', 'b', '.', '*', '?'), maxLength: 6 });
    fc.assert(
      fc.property(name, pattern, (text, glob) => {
        const expression = glob.replaceAll('.', '\\.').replaceAll('?', '.').replaceAll(/\*+/gu, '.*');
        expect(matchesName(text, glob)).toBe(new RegExp(`^${expression}$`, 'u').test(text));
      }),
    );
  });

  it('is matched soon, whatever the pattern', () => {
    expect(matchesName('a'.repeat(255), `${'a*'.repeat(120)}b`)).toBe(false);
  });
});
