// YAML to nodes, held against the yaml package: what we read, it reads alike; what it refuses, we refuse.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isAlias, isMap, isScalar, isSeq, parseAllDocuments } from 'yaml';
import type { Document, ParsedNode } from 'yaml';
import { parseYaml } from '../../../src/read/parse-yaml.ts';
import type { ParsedYaml } from '../../../src/read/parse-yaml.ts';
import type { Staged } from '../../../src/diagnostics/types.ts';
import { sourceFile, textOf } from '../../../src/source/source-file.ts';
import { allNodes, plainValue } from './plain-value.ts';
import type { PlainValue } from './plain-value.ts';
import { anyYaml } from './yaml-pieces.ts';

const parsed = (text: string): Staged<ParsedYaml> => parseYaml(sourceFile('season.yaml', text));
const codesOf = (text: string): readonly string[] => parsed(text).diagnostics.map(({ code }) => code);
function valueOf(text: string): PlainValue {
  const { value, diagnostics } = parsed(text);
  expect(diagnostics).toEqual([]);
  return plainValue(value.root);
}
const map = (...pairs: readonly (readonly [string, PlainValue])[]): PlainValue => ({ map: pairs });

describe('values', () => {
  // The core schema of YAML 1.2.2, section 10.3.2; the texts in the second half are values in YAML 1.1 only.
  it.each<readonly [string, PlainValue]>([
    ['null', null],
    ['~', null],
    ['', null],
    ['true', true],
    ['FALSE', false],
    ['12', 12],
    ['-3', -3],
    ['0o17', 15],
    ['0x1F', 31],
    ['1.50', 1.5],
    ['.5', 0.5],
    ['12e03', 12_000],
    ['-.inf', Number.NEGATIVE_INFINITY],
    ['"12"', '12'],
    ["'it''s'", "it's"],
    ['"a\\tb\\u00e9"', 'a\tbé'],
    ['no', 'no'],
    ['yes', 'yes'],
    ['on', 'on'],
    ['2027-01-04', '2027-01-04'],
    ['18:30', '18:30'],
    ['0b11', '0b11'],
    ['1_000', '1_000'],
    ['017', 17],
    ['=', '='],
  ])('%s', (text, value) => {
    expect(valueOf(`key: ${text}`)).toEqual(map(['key', value]));
  });

  it('keep the text as written', () => {
    const { root } = parsed('mass: 68.50 kg\ntimes: 007\nname: "x"').value;
    expect(root.kind === 'map' ? root.entries.map(({ value }) => value) : []).toMatchObject([
      { text: '68.50 kg', quoted: false },
      { text: '007', value: 7, quoted: false },
      { text: 'x', quoted: true },
    ]);
  });

  it('are what a BOM, CRLF and a directive of YAML 1.2 leave them', () => {
    expect(valueOf('%YAML 1.2\r\n---\r\na: no\r\nb:\r\n  - c\r\n...\r\n')).toEqual(map(['a', 'no'], ['b', ['c']]));
  });
});

describe('places', () => {
  it('are those of the words', () => {
    const text = 'squads:\n  seniors: { level: beginner, now: [1, 2] }\n  juniors:\n    - "x y"\nend: |\n  text\n';
    const file = sourceFile('season.yaml', text);
    const { root } = parseYaml(file).value;
    const words = Array.from(allNodes(root), ({ span }) => textOf(file, span));
    expect(words).toEqual([
      text,
      text.slice(text.indexOf('seniors'), text.indexOf('\nend')),
      '{ level: beginner, now: [1, 2] }',
      'beginner',
      '[1, 2]',
      '1',
      '2',
      '- "x y"',
      '"x y"',
      '|\n  text\n',
    ]);
  });

  it('of a value left out is right behind the colon', () => {
    const { root } = parsed('a:\nb: 1').value;
    expect(root.kind === 'map' && root.entries[0]?.value.span).toEqual({ file: 'season.yaml', start: 2, end: 2 });
  });
});

describe('anchors and aliases', () => {
  it('repeat what was marked, at the place of the alias', () => {
    const text = 'a: &kit { hurdles: 8 }\nb: *kit\n';
    const { root } = parsed(text).value;
    expect(plainValue(root)).toEqual(map(['a', map(['hurdles', 8])], ['b', map(['hurdles', 8])]));
    expect(root.kind === 'map' && root.entries[1]?.value.span.start).toBe(text.indexOf('*kit'));
  });

  it('may repeat one value many times', () => {
    expect(codesOf(`a: &x [1, 2]\nb: [${'*x, '.repeat(1000)}]\n`)).toEqual([]);
  });

  it.each([
    ['a: *b', 'yaml/unknown-alias'],
    ['a: &b [*b]', 'yaml/unknown-alias'],
    ['a: *b\nc: &b 1', 'yaml/unknown-alias'],
    ['a: & 1', 'yaml/anchor'],
    ['&a k: v', 'yaml/anchor'],
    ['a: &b *c', 'yaml/anchor'],
    ['b: &x 1\n*x : 2', 'yaml/key-not-text'],
  ])('%j is refused', (text, code) => {
    expect(codesOf(text)).toContain(code);
  });

  it('of aliases end in a diagnostic, and soon', () => {
    const levels = Array.from({ length: 30 }, (_, level) => `a${level + 1}: &a${level + 1} [*a${level}, *a${level}]\n`);
    expect(codesOf(`a0: &a0 x\n${levels.join('')}`)).toEqual(['yaml/alias-too-large']);
    const chain = Array.from({ length: 80 }, (_, level) => `a${level + 1}: &a${level + 1} [*a${level}]\n`);
    expect(codesOf(`a0: &a0 x\n${chain.join('')}`)).toEqual(['yaml/too-deep']);
  });
});

describe('the yaml package', () => {
  it('reads what we read alike, and takes nothing we take for wrong the other way', () => {
    fc.assert(
      fc.property(anyYaml, (text) => {
        const { value, diagnostics } = parsed(text);
        expect(value.isBroken).toBe(diagnostics.length > 0);
        if (value.isBroken || endsInTabs(text)) return;
        const documents = parseAllDocuments(text, {
          version: '1.2',
          schema: 'core',
          uniqueKeys: true,
          logLevel: 'silent',
        });
        const [document] = Array.isArray(documents) ? documents : [];
        expect(documents.length).toBeLessThanOrEqual(1);
        expect(document?.errors.map(({ code }) => code) ?? []).toEqual([]);
        expect(plainValue(value.root)).toEqual(document === undefined ? null : theirValue(document.contents, document));
      }),
      { numRuns: 1000 },
    );
  });
});

/** A line of nothing but tabs at the end of a text: they refuse it and we don't. */
const endsInTabs = (text: string): boolean => /\t\s*$/u.test(text);

function theirValue(node: ParsedNode | null, document: Document.Parsed): PlainValue {
  if (node === null) return null;
  if (isAlias(node)) return theirValue((node.resolve(document) as ParsedNode | undefined) ?? null, document);
  if (isSeq(node)) return node.items.map((item) => theirValue(item, document));
  if (isMap(node))
    return { map: node.items.map(({ key, value }) => [theirKey(key), theirValue(value, document)] as const) };
  return isScalar(node) ? (node.value as PlainValue) : null;
}

function theirKey(key: ParsedNode): string {
  if (!isScalar(key)) return 'no word';
  return typeof key.value === 'string' ? key.value : (key.source ?? '');
}

describe('whatever the text', () => {
  it('nothing is thrown, and every place lies in the file', () => {
    fc.assert(
      fc.property(anyYaml, (text) => {
        const { value, diagnostics } = parsed(text);
        const spans = [...diagnostics.map(({ span }) => span), ...Array.from(allNodes(value.root), ({ span }) => span)];
        for (const span of spans) {
          expect(span).toBeDefined();
          expect(span?.start).toBeGreaterThanOrEqual(0);
          expect(span?.end).toBeGreaterThanOrEqual(span?.start ?? 0);
          expect(span?.end).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('slips', () => {
  it('are all reported in one run', () => {
    const text = 'a: "x\nb: {c: 1 d: 2}\ne: x: y\nf g\nh: [1\ni: @j\nk: l\nk: m\n';
    expect(codesOf(text).toSorted()).toEqual([
      'yaml/colon-in-text',
      'yaml/duplicate-key',
      'yaml/missing-colon',
      'yaml/missing-comma',
      'yaml/reserved-character',
      'yaml/unclosed-bracket',
      'yaml/unclosed-quote',
    ]);
  });

  it('beyond a hundred are left for the next run', () => {
    const codes = codesOf('a: x: y\n'.repeat(500));
    expect(codes).toHaveLength(101);
    expect(codes.at(-1)).toBe('yaml/more');
  });
});

/** Processor time, so that a busy machine makes no difference. */
function seconds(run: () => unknown): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1_000_000;
}

const athletes = (count: number): string =>
  `athletes:\n${Array.from({ length: count }, (_, index) => `  a${String(index)}: { mass: 68 kg, now: { contacts-a-session: 80 } }\n`).join('')}`;

describe('large files', () => {
  it('of ten thousand keys are read, and a double among them found', () => {
    const { root } = parsed(athletes(10_000)).value;
    expect(root.kind === 'map' && root.entries[0]?.value.kind === 'map' && root.entries[0].value.entries).toHaveLength(
      10_000,
    );
    expect(codesOf(`${athletes(10_000)}  a77: {}\n`)).toEqual(['yaml/duplicate-key']);
  });

  it('take time in proportion to their size', () => {
    parsed(athletes(2000));
    const small = seconds(() => parsed(athletes(4000)));
    const large = seconds(() => parsed(athletes(32_000)));
    expect(large / small).toBeLessThan(8 * 3);
  });

  it('of more values than any plan has are given up', () => {
    const { diagnostics } = parseYaml(sourceFile('season.yaml', 'a:\n- b\n- c\n- d\n'), 6);
    expect(diagnostics.map(({ code, span }) => [code, span?.start])).toEqual([['yaml/too-long', 11]]);
  });

  it.each([
    ['lists in brackets', '['.repeat(1_000_000)],
    ['groups in braces', '{a: '.repeat(500_000)],
    ['dashes', '- '.repeat(500_000)],
    ['indented keys', Array.from({ length: 1000 }, (_, level) => `${' '.repeat(level)}a:\n`).join('')],
  ])('a thousand levels deep of %s are refused at once', (_, text) => {
    const took = seconds(() => {
      expect(codesOf(text)).toEqual(['yaml/too-deep']);
    });
    expect(took).toBeLessThan(2);
  });

  it.each([
    ['quotes', '"'.repeat(30_000)],
    ['apostrophes', "'".repeat(30_001)],
    ['open quotes on every line', 'a: "x\n'.repeat(20_000)],
    ['colons', ': '.repeat(30_000)],
    ['anchors', '&a '.repeat(30_000)],
    ['aliases', '*a '.repeat(30_000)],
    ['backslashes', `"${'\\'.repeat(30_000)}`],
    ['block headers', '|\n'.repeat(30_000)],
    ['no-break spaces', '\u00A0'.repeat(30_000)],
    ['control characters', '\u0001'.repeat(30_000)],
    ['tabs', '\t\n'.repeat(30_000)],
    ['document marks', '---\n'.repeat(30_000)],
    ['commas', `[${','.repeat(30_000)}`],
  ])('of nothing but %s end within two seconds', (_, text) => {
    const took = seconds(() => {
      expect(parsed(text).value.root).toBeDefined();
    });
    expect(took).toBeLessThan(2);
  });
});
