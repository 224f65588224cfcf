// Bytes to text: what is no text, what is too much, and where the first wrong byte is.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import type { FileHost } from '../../../src/read/file-host.ts';
import { decodeText, loadFile, MOST_YAML_BYTES } from '../../../src/read/load-file.ts';
import { readPlan } from '../../../src/read/read-plan.ts';
import { memoryFiles } from './memory-files.ts';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const codesOf = (bytes: Uint8Array): readonly string[] =>
  decodeText('season.yaml', bytes).diagnostics.map(({ code }) => code);

describe('text', () => {
  it('comes out as it is, without a byte order mark', () => {
    const { file, sound } = decodeText('season.yaml', bytesOf('\uFEFFname: Zoé 🏐'));
    expect(sound).toBe(true);
    expect(file.text).toBe('name: Zoé 🏐');
  });

  it('in Latin-1 is shown with the first wrong byte marked', () => {
    const bytes = new Uint8Array([...bytesOf('é: Fr'), 0xfc, ...bytesOf('hling')]);
    const { file, sound, diagnostics } = decodeText('season.yaml', bytes);
    expect(sound).toBe(false);
    expect(file.text).toBe('é: Frühling'.replace('é', 'é'));
    expect(diagnostics).toMatchObject([
      {
        code: 'source/not-utf8',
        params: { byte: '0xFC', guess: '; in Latin-1 it would be ü' },
        span: { start: 5, end: 6 },
      },
    ]);
  });

  it('cut off within a character is marked at that character', () => {
    const bytes = bytesOf('abc 🏐').slice(0, -1);
    expect(decodeText('season.yaml', bytes).diagnostics[0]?.span?.start).toBe(4);
  });

  it.each([
    ['a zip archive', [0x50, 0x4b, 0x03, 0x04, 1], 'source/binary'],
    ['a picture', [0x89, 0x50, 0x4e, 0x47], 'source/binary'],
    ['zero bytes', [0x61, 0, 0x62], 'source/binary'],
    ['UTF-16 from the little end', [0xff, 0xfe, 0x61, 0], 'source/utf16'],
    ['UTF-16 from the big end', [0xfe, 0xff, 0, 0x61], 'source/utf16'],
  ])('that is %s is refused', (_, bytes, code) => {
    expect(codesOf(new Uint8Array(bytes))).toEqual([code]);
  });

  it('is refused exactly where another decoder refuses it, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
        const { file, sound, diagnostics } = decodeText('season.yaml', bytes);
        const again = Buffer.from(Buffer.from(bytes).toString('utf8'), 'utf8');
        const isUtf8 = again.equals(bytes);
        const [first] = diagnostics;
        expect(diagnostics).toHaveLength(sound ? 0 : 1);
        expect(first?.span?.end ?? 0).toBeLessThanOrEqual(file.text.length);
        expect(isUtf8 || !sound).toBe(true);
        expect(first?.code === 'source/not-utf8' && isUtf8).toBe(false);
      }),
    );
  });
});

describe('a file of 50 MB', () => {
  const neverRead: FileHost = {
    ...memoryFiles({ '/plan/season.yaml': 'footfall: 1' }),
    stat: (path) => (path === '/plan' ? { kind: 'folder', bytes: 0 } : { kind: 'file', bytes: 50_000_000 }),
    readFile: () => {
      throw new Error('read, though it is too large');
    },
  };

  it('is refused without being read', () => {
    const { value, diagnostics } = readPlan('/plan', neverRead);
    expect(diagnostics.map(({ message }) => message)).toEqual(['this file has 50 MB, and at most 16 MB are read']);
    expect(value.documents).toEqual([]);
    expect(value.files.map(({ path }) => path)).toEqual(['season.yaml']);
  });

  it('that grew while it was looked at is refused too', () => {
    const grown: FileHost = {
      ...neverRead,
      stat: () => ({ kind: 'file', bytes: 10 }),
      readFile: () => ({ ok: true, value: new Uint8Array(MOST_YAML_BYTES + 1) }),
    };
    const wanted = { location: '/plan/a.yaml', path: 'a.yaml', wanted: 'a.yaml', mostBytes: MOST_YAML_BYTES };
    expect(loadFile(wanted, grown)).toMatchObject({ sound: false, diagnostics: [{ code: 'source/too-large' }] });
  });
});

describe('what is no file', () => {
  const code = (state: ReturnType<FileHost['stat']>): string => {
    const host: FileHost = { ...memoryFiles({}), stat: () => state };
    const loaded = loadFile({ location: '/a', path: 'a', wanted: 'a', mostBytes: 10 }, host);
    const diagnostic: Diagnostic | undefined = 'file' in loaded ? loaded.diagnostics[0] : loaded;
    return diagnostic?.code ?? '';
  };

  it('is named', () => {
    expect(code({ kind: 'missing' })).toBe('files/missing');
    expect(code({ kind: 'folder', bytes: 0 })).toBe('files/folder');
    expect(code({ kind: 'other', bytes: 0 })).toBe('files/not-a-file');
    expect(code({ kind: 'denied', reason: 'permission denied' })).toBe('files/unreadable');
    expect(code({ kind: 'file', bytes: 1 })).toBe('files/unreadable');
  });
});
