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

const joined = (...parts: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};

const insert = (bytes: Uint8Array, at: number, piece: Uint8Array, cut = 0): Uint8Array =>
  joined(bytes.subarray(0, at), piece, bytes.subarray(at + cut));

/** A stretch of at most `most` bytes. */
const stretch = (bytes: Uint8Array, chance: Chance, most: number): Uint8Array => {
  const start = chance.below(bytes.length + 1);
  return bytes.subarray(start, start + chance.below(most + 1));
};

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

/** Lines as bytes that stay bytes, whatever they are. */
function byLine(change: (lines: string[], chance: Chance, at: number) => readonly string[]): Mutation {
  return (bytes, chance) => {
    const lines = latin1.decode(bytes).split('\n');
    const text = change(lines, chance, chance.below(lines.length)).join('\n');
    return Uint8Array.from(text, (unit) => unit.charCodeAt(0) % BYTES);
  };
}

const MOST_MUTATIONS = 6;

/** The bytes with one to six mutations; pieces may come from `other`. */
export function mutate(bytes: Uint8Array, other: Uint8Array, chance: Chance): Uint8Array {
  let changed = bytes;
  for (let left = 1 + chance.below(MOST_MUTATIONS); left > 0; left -= 1)
    changed = chance.of(mutations)(changed, chance, other);
  return changed;
}

/** Bytes of any kind, up to a few thousand. */
export function randomBytes(chance: Chance): Uint8Array {
  const kinds = chance.of([BYTES, 128, 16]);
  return Uint8Array.from({ length: chance.below(3000) }, () => chance.below(kinds));
}
