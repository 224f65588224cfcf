// A plan's files gathered: which, in which order, from where, and never from outside the plan's folder.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FileHost } from '../../../src/read/file-host.ts';
import { readPlan } from '../../../src/read/read-plan.ts';
import { memoryFiles } from './memory-files.ts';
import type { Files } from './memory-files.ts';
import { anyYaml } from './yaml-pieces.ts';

function read(files: Files, entry = '/plan'): { paths: readonly string[]; codes: readonly string[] } {
  const { value, diagnostics } = readPlan(entry, memoryFiles(files));
  return { paths: value.documents.map(({ file }) => file.path), codes: diagnostics.map(({ code }) => code) };
}

const squad: Files = {
  '/plan/season.yaml': 'footfall: 1\nfiles: [squad/*.yaml, drills.yaml]\nroster: squad/roster.csv\n',
  '/plan/squad/seniors.yaml': 'athletes: {}\n',
  '/plan/squad/juniors.yaml': 'files: [more.yaml]\n',
  '/plan/squad/roster.csv': 'id\nmira\n',
  '/plan/drills.yaml': 'drills: {}\n',
  '/plan/more.yaml': 'files: [season.yaml, "*.yaml", squad/seniors.yaml]\nlifts: {}\n',
};

describe('a plan', () => {
  it('is its entry file and what that names, and what those name, by path', () => {
    const { paths, codes } = read(squad);
    expect(paths).toEqual([
      'season.yaml',
      'drills.yaml',
      'more.yaml',
      'squad/juniors.yaml',
      'squad/roster.csv',
      'squad/seniors.yaml',
    ]);
    expect(codes).toEqual(['files/listed-twice', 'files/listed-twice', 'files/listed-twice']);
  });

  it('is the same however the machine lists its folders', () => {
    const listing = fc.array(fc.nat(), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(listing, (keys) => {
        const host = memoryFiles(squad);
        const shuffled: FileHost = {
          ...host,
          list: (path) => {
            const listed = host.list(path);
            if (!listed.ok) return listed;
            const order = listed.value.map((entry, index) => ({ entry, key: keys[index % keys.length] ?? 0 }));
            return { ok: true, value: order.toSorted((a, b) => a.key - b.key).map(({ entry }) => entry) };
          },
        };
        expect(readPlan('/plan', shuffled)).toEqual(readPlan('/plan', host));
      }),
    );
  });

  it('is the same by its folder and by its entry file', () => {
    expect(read(squad, '/plan/season.yaml')).toEqual(read(squad));
    expect(read(squad, '/plan/')).toEqual(read(squad));
  });

  it('may have another entry file', () => {
    expect(read({ '/plan/autumn.yaml': 'footfall: 1' }, '/plan/autumn.yaml')).toEqual({
      paths: ['autumn.yaml'],
      codes: [],
    });
  });

  it('has no documents if its entry file is left unread, and the mistakes of the others all the same', () => {
    const { paths, codes } = read({
      '/plan/season.yaml': `files: [a.yaml]\nb: ${'['.repeat(100)}\n`,
      '/plan/a.yaml': 'd: *e\n',
    });
    expect(paths).toEqual([]);
    expect(codes).toEqual(['yaml/too-deep', 'yaml/unknown-alias']);
  });

  it('says of a mistake how far it reaches', () => {
    const season = 'files: [a.yaml]\nplaces:\n  hall:\n    kit: *c\n  track: {}\n';
    const { value } = readPlan('/plan', memoryFiles({ '/plan/season.yaml': season, '/plan/a.yaml': 'd: 1\n' }));
    const around = season.slice(season.indexOf('  hall'), season.indexOf('  track'));
    const [mistake] = value.mistakes ?? [];
    expect(mistake).toMatchObject({ losesKeys: true, section: 'places' });
    expect(season.slice(mistake?.around.start, mistake?.around.end)).toBe(around);
    expect(value.isIncomplete).toBeUndefined();
  });

  it('has the documents of the files that are sound', () => {
    const { value, diagnostics } = readPlan(
      '/plan',
      memoryFiles({
        '/plan/season.yaml': 'files: [a.yaml, b.yaml]\n',
        '/plan/a.yaml': `d: ${'['.repeat(100)}\n`,
        '/plan/b.yaml': 'c: 1\n',
      }),
    );
    expect(value.documents.map(({ file }) => file.path)).toEqual(['season.yaml', 'b.yaml']);
    expect(value.files.map(({ path }) => path)).toEqual(['season.yaml', 'a.yaml', 'b.yaml']);
    expect(diagnostics).toHaveLength(1);
  });

  it.each<readonly [string, Files, string, readonly string[]]>([
    ['nothing at all', {}, '/plan', ['files/missing']],
    ['a folder without an entry', { '/plan/a.yaml': '' }, '/plan', ['files/no-season']],
    ['an empty entry', { '/plan/season.yaml': '' }, '/plan', ['source/empty']],
    ['a folder called season.yaml', { '/plan/season.yaml/x': '' }, '/plan', ['files/folder']],
    [
      'an entry nobody may read',
      { '/plan/season.yaml': { denied: 'permission denied' } },
      '/plan',
      ['files/unreadable'],
    ],
  ])('that is %s is reported', (_, files, entry, codes) => {
    expect(read(files, entry)).toEqual({ paths: [], codes });
  });

  it.each([
    ['/', '/season.yaml'],
    ['.', 'season.yaml'],
    ['./', 'season.yaml'],
    ['/plan', '/plan/season.yaml'],
    ['plan//', 'plan/season.yaml'],
    ['./plan', './plan/season.yaml'],
    ['plan/season.yaml', 'plan/season.yaml'],
  ])('given as %s has an entry file nobody may read: that one is named', (given, named) => {
    const denied = { denied: 'permission denied' };
    const { diagnostics } = readPlan(given, memoryFiles({ '/season.yaml': denied, '/plan/season.yaml': denied }));
    expect(diagnostics.map(({ message }) => message)).toEqual([`"${named}" cannot be read: permission denied`]);
  });
});

describe('links', () => {
  const entry = 'files: [away.yaml, near.yaml, folder/b.yaml, "linked/*.yaml"]\n';

  it('are followed inside the folder and refused where they lead out of it', () => {
    const { value, diagnostics } = readPlan(
      '/plan',
      memoryFiles({
        '/plan/season.yaml': entry,
        '/plan/away.yaml': { link: '/secret/a.yaml' },
        '/plan/near.yaml': { link: '/plan/squad/a.yaml' },
        '/plan/folder': { link: '/secret' },
        '/plan/linked': { link: '/plan/squad' },
        '/plan/squad/a.yaml': 'athletes: {}\n',
        '/plan/squad/c.yaml': 'athletes: {}\n',
        '/secret/a.yaml': 'athletes: {}\n',
        '/secret/b.yaml': 'athletes: {}\n',
      }),
    );
    expect(value.documents.map(({ file }) => file.path)).toEqual(['season.yaml', 'linked/c.yaml', 'near.yaml']);
    expect(diagnostics.map(({ code, span }) => [code, entry.slice(span?.start, span?.end)])).toEqual([
      ['files/outside', 'away.yaml'],
      ['files/outside', 'folder/b.yaml'],
    ]);
  });

  it('to a folder whose name only begins like that of the plan lead out of it', () => {
    const files = {
      '/plan/season.yaml': 'files: [a.yaml]\n',
      '/plan/a.yaml': { link: '/plan-b/a.yaml' },
      '/plan-b/a.yaml': '',
    };
    expect(read(files).codes).toEqual(['files/outside']);
  });

  it('that lead nowhere are reported as missing', () => {
    const files = { '/plan/season.yaml': 'files: [a.yaml]\n', '/plan/a.yaml': { link: '/plan/gone.yaml' } };
    expect(read(files).codes).toEqual(['files/missing']);
  });
});

describe('paths', () => {
  it.each([
    '../a.yaml',
    'squad/../../a.yaml',
    '/a.yaml',
    '~/a.yaml',
    'C:/a.yaml',
    'c:a.yaml',
    'C:\\a.yaml',
    '\\\\host\\a.yaml',
    '//host/a.yaml',
    '\\a.yaml',
    '..\\a.yaml',
    'squad\\..\\..\\a.yaml',
    'file:///a.yaml',
    '../**/*.yaml',
    '*/../../*.yaml',
  ])('%s leads out', (path) => {
    const host = memoryFiles({ '/plan/season.yaml': `files: ['${path}']\n`, '/a.yaml': 'athletes: {}\n' });
    const { value, diagnostics } = readPlan('/plan', host);
    expect(diagnostics.map(({ code }) => code)).toEqual(['files/outside']);
    expect(value.files).toHaveLength(1);
  });

  it.each(['./squad/a.yaml', 'squad/../squad/a.yaml', 'squad//a.yaml', 'gone/../squad/a.yaml'])(
    '%s stays inside',
    (path) => {
      const files = { '/plan/season.yaml': `files: ['${path}']\n`, '/plan/squad/a.yaml': 'athletes: {}\n' };
      expect(read(files)).toEqual({ paths: ['season.yaml', 'squad/a.yaml'], codes: [] });
    },
  );

  it('whatever is written, nothing outside the folder is asked for', () => {
    const path = fc.string({
      unit: fc.constantFrom('.', '..', '/', '\\', 'a', '*', '**', '~', 'C:', '?', ' ', 'secret'),
      maxLength: 8,
    });
    fc.assert(
      fc.property(path, (written) => {
        const asked: string[] = [];
        const host = memoryFiles({
          '/home/plan/season.yaml': `files: ['${written}']\n`,
          '/home/plan/a/a.yaml': '',
          '/home/secret/a.yaml': '',
          '/secret': '',
        });
        const watching: FileHost = {
          ...host,
          readFile: (location) => {
            asked.push(location);
            return host.readFile(location);
          },
          list: (location) => {
            asked.push(location);
            return host.list(location);
          },
        };
        readPlan('/home/plan', watching);
        expect(
          asked.filter((location) => !location.startsWith('/home/plan') || location.split('/').includes('..')),
        ).toEqual([]);
      }),
    );
  });
});

describe('whatever the bytes', () => {
  it('a plan ends in documents or diagnostics, all of them in its files', () => {
    const content = fc.oneof(anyYaml, fc.uint8Array({ maxLength: 60 }));
    fc.assert(
      fc.property(content, content, content, (entry, included, roster) => {
        const host = memoryFiles({
          '/plan/season.yaml': entry,
          '/plan/b.yaml': 'files: [a.yaml]\nroster: r.csv\n',
          '/plan/a.yaml': included,
          '/plan/r.csv': roster,
        });
        for (const path of ['/plan', '/plan/b.yaml']) {
          const { value, diagnostics } = readPlan(path, host);
          expect(value.documents.length + diagnostics.length).toBeGreaterThan(0);
          for (const { span } of diagnostics) {
            const file = value.files.find((each) => each.path === span?.file);
            expect(file?.text.length).toBeGreaterThanOrEqual(span?.end ?? 0);
          }
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('a folder that can not be looked into', () => {
  const files = {
    '/plan/season.yaml': 'files: ["squad/*/all.yaml"]\n',
    '/plan/squad/juniors/all.yaml': 'athletes: {}\n',
    '/plan/squad/seniors/all.yaml': 'athletes: {}\n',
  };

  it('is told by a glob that finds others, as its files would be left out without a word', () => {
    const host = memoryFiles({ ...files, '/plan/season.yaml': 'files: ["squad/*/*.yaml"]\n' });
    const list: typeof host.list = (path) =>
      path === '/plan/squad/seniors' ? { ok: false, reason: 'permission denied' } : host.list(path);
    const { value, diagnostics } = readPlan('/plan', { ...host, list });
    expect(value.documents.map(({ file }) => file.path)).toEqual(['season.yaml', 'squad/juniors/all.yaml']);
    expect(diagnostics.map(({ code, message }) => [code, message])).toEqual([
      ['files/unreadable', '"squad/seniors" cannot be read: permission denied'],
    ]);
    expect(value.isIncomplete).toBe(true);
  });

  it('is told instead of a glob that finds nothing', () => {
    const host = memoryFiles(files);
    const { diagnostics } = readPlan('/plan', { ...host, list: () => ({ ok: false, reason: 'permission denied' }) });
    expect(diagnostics.map(({ message }) => message)).toEqual(['"squad" cannot be read: permission denied']);
  });

  it('is not said to be missing where nobody may see whether it is there', () => {
    const host = memoryFiles({ '/plan/season.yaml': 'files: ["squad/*.yaml"]\n', '/plan/squad': { denied: 'no' } });
    const { diagnostics } = readPlan('/plan', host);
    expect(diagnostics.map(({ code, help }) => [code, help])).toEqual([
      ['files/no-match', 'the folder squad cannot be read: no'],
    ]);
  });
});
