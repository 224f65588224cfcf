// The real file system behind the readers, in a folder made for it.

import { chmodSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileSystem } from '../../../src/host/files.ts';
import { readPlan } from '../../../src/read/read-plan.ts';

const root = mkdtempSync(join(tmpdir(), 'footfall-read-'));
const plan = join(root, 'plan');

beforeAll(() => {
  mkdirSync(join(plan, 'squad'), { recursive: true });
  writeFileSync(join(root, 'outside.yaml'), 'athletes: {}\n');
  writeFileSync(join(plan, 'season.yaml'), 'files: [squad/*.yaml, linked.yaml, loop.yaml, nowhere.yaml]\n');
  writeFileSync(join(plan, 'squad', 'a.yaml'), 'athletes: {}\n');
  symlinkSync(join(root, 'outside.yaml'), join(plan, 'linked.yaml'));
  symlinkSync(join(plan, 'loop.yaml'), join(plan, 'loop.yaml'));
  symlinkSync(join(plan, 'gone.yaml'), join(plan, 'nowhere.yaml'));
});

afterAll(() => {
  chmodSync(plan, 0o700);
  rmSync(root, { recursive: true });
});

describe('the file system', () => {
  it('says what stands at a path', () => {
    expect(fileSystem.stat(plan)).toMatchObject({ kind: 'folder' });
    expect(fileSystem.stat(join(plan, 'squad', 'a.yaml'))).toEqual({ kind: 'file', bytes: 13 });
    expect(fileSystem.stat(join(plan, 'gone.yaml'))).toEqual({ kind: 'missing' });
    expect(fileSystem.stat(join(plan, 'season.yaml', 'x'))).toEqual({ kind: 'missing' });
    expect(fileSystem.stat('/dev/null')).toMatchObject({ kind: 'other' });
    expect(fileSystem.stat(join(plan, 'loop.yaml'))).toEqual({ kind: 'denied', reason: 'its links lead in a circle' });
    expect(fileSystem.stat(join(plan, 'nowhere.yaml'))).toEqual({ kind: 'denied', reason: 'the link leads nowhere' });
    expect(fileSystem.stat(join(plan, 'x'.repeat(5000)))).toEqual({ kind: 'missing' });
    expect(fileSystem.stat('a\0b')).toEqual({ kind: 'missing' });
  });

  it('answers in words where it can not answer otherwise', () => {
    expect(fileSystem.readFile(join(plan, 'gone.yaml'))).toEqual({ ok: false, reason: 'it is not there' });
    expect(fileSystem.readFile(plan)).toEqual({ ok: false, reason: 'it is a folder' });
    expect(fileSystem.readFile('/dev/null')).toEqual({ ok: false, reason: 'it is a pipe, a device or the like' });
    expect(fileSystem.list(join(plan, 'gone'))).toEqual({ ok: false, reason: 'it is not there' });
    expect(fileSystem.realPath(join(plan, 'loop.yaml'))).toEqual({ ok: false, reason: 'its links lead in a circle' });
  });

  it('lists links as links', () => {
    const listed = fileSystem.list(plan);
    expect(listed.ok && listed.value.toSorted((a, b) => (a.name < b.name ? -1 : 1))).toEqual([
      { name: 'linked.yaml', kind: 'link' },
      { name: 'loop.yaml', kind: 'link' },
      { name: 'nowhere.yaml', kind: 'link' },
      { name: 'season.yaml', kind: 'file' },
      { name: 'squad', kind: 'folder' },
    ]);
  });
});

describe('a plan on disk', () => {
  it('is read, with its links judged by where they lead', () => {
    const { value, diagnostics } = readPlan(plan, fileSystem);
    expect(value.documents.map(({ file }) => file.path)).toEqual(['season.yaml', 'squad/a.yaml']);
    expect(diagnostics.map(({ code, params }) => [code, params['wanted']])).toEqual([
      ['files/outside', 'linked.yaml'],
      ['files/unreadable', 'loop.yaml'],
      ['files/unreadable', 'nowhere.yaml'],
    ]);
  });
});
