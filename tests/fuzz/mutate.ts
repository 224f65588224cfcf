// Texts spoilt in the ways that hands, editors, spreadsheets and bad luck spoil them: bytes, words, lines and indentation
// are changed, and pieces of other files are put in.

import type { Chance } from './random.ts';

const utf8 = new TextEncoder();
const latin1 = new TextDecoder('latin1');

/** What means something to YAML, to CSV or to the plan language, and some of what means trouble. */
const PIECES = [
  [
    '\t',
    '\r',
    '\r\n',
    '\n',
    '  ',
    '    ',
    '\u00A0',
    '\u200B',
    '\uFEFF',
    '\u0000',
    '\u001B[31m',
    '\u2028',
    '🏐',
    'e\u0301',
  ],
  [
    ': ',
    '- ',
    '? ',
    ', ',
    '{',
    '}',
    '[',
    ']',
    '|',
    '>',
    '|9',
    '"',
    "'",
    '#',
    ' #',
    '%YAML 1.1',
    '---',
    '...',
    '!!',
    '!a ',
  ],
  [
    '&a ',
    '*a',
    '<<: *a',
    '<<: {}',
    '@',
    '`',
    '\\',
    '\\u00',
    '""',
    ';',
    '~',
    'null',
    'no',
    'on',
    'yes',
    'true',
    '.inf',
    '.nan',
  ],
  [
    '0',
    '-1',
    '1e99',
    '1_000',
    '0x10',
    '92,5',
    '1.76 kg',
    '68 kg',
    '0 kg',
    '176 cm',
    '12 in',
    '90 s',
    '8 %',
    '1.5 %',
    '10 lb',
  ],
  [
    '2027-02-30',
    '2027-01-04',
    '0000-00-00',
    '9999-12-31',
    '2027-13-01',
    '04.01.2027',
    '25:00',
    'monday',
    'mon',
    'peak',
  ],
  ['athletes:', 'squads:', 'season:', 'pins:', 'files: [**]', 'files: [../a]', 'roster: a.csv', 'rules:', 'waivers:'],
  [
    'use:',
    'programmes:',
    'drills:',
    'record: { done: a.csv }',
    '__proto__: 1',
    'constructor:',
    'toString:',
    '__proto__',
  ],
].flat();

type Mutation = (bytes: Uint8Array, chance: Chance, other: Uint8Array) => Uint8Array;

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

const insert = (bytes: Uint8Array, at: number, piece: Uint8Array, cut = 0): Uint8Array =>
  joined(bytes.subarray(0, at), piece, bytes.subarray(at + cut));

/** A stretch of at most `most` bytes. */
function stretch(bytes: Uint8Array, chance: Chance, most: number): Uint8Array {
  const start = chance.below(bytes.length + 1);
  return bytes.subarray(start, start + chance.below(most + 1));
}

const MOST_STRETCH = 200;
const MOST_REPEATS = 20;
const BYTES = 256;

const mutations: readonly Mutation[] = [
  (bytes, chance) => insert(bytes, chance.below(bytes.length + 1), Uint8Array.of(chance.below(BYTES)), chance.below(2)),
  (bytes, chance) => insert(bytes, chance.below(bytes.length + 1), utf8.encode(chance.of(PIECES)), chance.below(4)),
  (bytes, chance) => insert(bytes, chance.below(bytes.length + 1), utf8.encode(chance.of(PIECES))),
  (bytes, chance) => insert(bytes, chance.below(bytes.length + 1), new Uint8Array(), chance.below(MOST_STRETCH)),
  (bytes, chance, other) => insert(bytes, chance.below(bytes.length + 1), stretch(other, chance, MOST_STRETCH)),
  (bytes, chance) => insert(bytes, chance.below(bytes.length + 1), stretch(bytes, chance, MOST_STRETCH)),
  (bytes, chance) => {
    const piece = stretch(bytes, chance, MOST_STRETCH);
    const times = chance.below(MOST_REPEATS);
    return insert(bytes, chance.below(bytes.length + 1), joined(...Array.from({ length: times }, () => piece)));
  },
  byLine((lines, _, at) => lines.toSpliced(at, 1)),
  byLine((lines, chance, at) => lines.toSpliced(at, 0, lines[chance.below(lines.length)] ?? '')),
  byLine((lines, chance, at) => lines.with(at, ' '.repeat(chance.below(7)) + (lines[at] ?? '').trimStart())),
  byLine((lines, _, at) => lines.with(at, `\t${(lines[at] ?? '').trimStart()}`)),
  byLine((lines, chance, at) => lines.with(at, (lines[at] ?? '').replace(/[\w.-]+(?=[^\w.-]*$)/u, chance.of(PIECES)))),
  byLine((lines, chance, at) =>
    lines.with(
      at,
      (lines[at] ?? '').replace(/\d+/u, () => String(chance.below(100_000))),
    ),
  ),
];

/** Mutations that know what a plan and a table look like: a block is a line with those below it that stand further in. */
const structured: readonly Mutation[] = [
  // A block gone, twice, elsewhere, at another depth, or in the place of another.
  byLine((lines, _, at) => lines.toSpliced(at, blockLength(lines, at))),
  byLine((lines, _, at) => lines.toSpliced(at, 0, ...blockAt(lines, at))),
  byLine((lines, chance, at) => {
    const block = blockAt(lines, at);
    const rest = lines.toSpliced(at, block.length);
    return rest.toSpliced(chance.below(rest.length + 1), 0, ...block);
  }),
  byLine((lines, chance, at) => {
    const block = blockAt(lines, at);
    const by = ' '.repeat(1 + chance.below(4));
    const moved = block.map((line) => (chance.below(8) === 0 ? line : by + line));
    return lines.toSpliced(at, block.length, ...moved);
  }),
  byLine((lines, chance, at) => {
    const other = chance.below(lines.length);
    return lines.toSpliced(at, blockLength(lines, at), ...blockAt(lines, other));
  }),
  // A value of another kind, or one that no plan has.
  byLine((lines, chance, at) => {
    const value = chance.of(VALUES);
    return lines.with(
      at,
      (lines[at] ?? '').replace(/(: )[^,{}[\]]*/u, (_, colon: string) => colon + value),
    );
  }),
  byLine((lines, chance, at) => {
    const pieces = (lines[at] ?? '').split(/(?<=, )/u);
    const value = chance.of(VALUES);
    const changed = pieces.with(chance.below(pieces.length), `${chance.of(['a: ', 'mass: ', 'week: ', ''])}${value}, `);
    return lines.with(at, changed.join(''));
  }),
  // Cells moved, gone, twice, quoted.
  byLine((lines, chance, at) => {
    const cells = (lines[at] ?? '').split(',');
    const cell = chance.below(cells.length);
    const text = cells[cell] ?? '';
    const put = chance.of([[], [text, text], [`"${text}"`], [`"${text}`], [''], [chance.of(VALUES)]]);
    return lines.with(at, cells.toSpliced(cell, 1, ...put).join(','));
  }),
  byLine((lines, chance) => {
    const separator = chance.of([';', '\t', ', ', ' ,']);
    return lines.map((line) => line.replaceAll(',', separator));
  }),
  // A whole file as another editor saves it.
  byLine((lines, chance) => [lines.join(chance.of(['\r', '\r\n', '\n\n']))]),
  (bytes) => joined(utf8.encode('\uFEFF'), bytes),
  byLine((lines) => lines.map((line) => line.replace(/^ +/u, (spaces) => '\t'.repeat(spaces.length / 2)))),
];

const VALUES = [
  ['[]', '{}', '[[a]]', '{ a: { b: [c] } }', '~', '""', "''", '&a 1', '*a', '!!str 1', '|', '>-'],
  ['999999999999999999999', '1e308', '-1', '-0', '0.1', '1/2', '2027-01-04', '2027-02-29', '"18:00"', '120 %'],
  ['monday', '[monday, monday]', '4 Jan 2027', '99999999 kg', '0.0001 kg', '\u0663', '\uFF11', 'a'.repeat(300)],
].flat();

const indentOf = (line: string): number => line.search(/[^ ]|$/u);

function blockLength(lines: readonly string[], at: number): number {
  const indent = indentOf(lines[at] ?? '');
  const behind = lines.slice(at + 1).findIndex((line) => line.trim() !== '' && indentOf(line) <= indent);
  return behind === -1 ? lines.length - at : behind + 1;
}

const blockAt = (lines: readonly string[], at: number): readonly string[] =>
  lines.slice(at, at + blockLength(lines, at));

/** Lines as bytes that stay bytes, whatever they are. */
function byLine(change: (lines: string[], chance: Chance, at: number) => readonly string[]): Mutation {
  return (bytes, chance) => {
    const lines = latin1.decode(bytes).split('\n');
    const text = change(lines, chance, chance.below(lines.length)).join('\n');
    return Uint8Array.from(text, (unit) => unit.charCodeAt(0) % BYTES);
  };
}

const MOST_MUTATIONS = 6;

/** The bytes with one to six mutations, blind ones and such as know the form; pieces may come from `other`. */
export function mutate(bytes: Uint8Array, other: Uint8Array, chance: Chance): Uint8Array {
  let changed = bytes;
  for (let left = 1 + chance.below(MOST_MUTATIONS); left > 0; left -= 1)
    changed = chance.of(chance.below(2) === 0 ? mutations : structured)(changed, chance, other);
  return changed;
}

/** Bytes of any kind, up to a few thousand. */
export function randomBytes(chance: Chance): Uint8Array {
  const kinds = chance.of([BYTES, 128, 16]);
  return Uint8Array.from({ length: chance.below(3000) }, () => chance.below(kinds));
}
