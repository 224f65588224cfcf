// What the examples of sources, files, YAML and CSV need around them.

import { MOST_LOOKED_AT } from '../../../src/read/glob.ts';
import type { Files } from '../../unit/read/memory-files.ts';
import type { Setting } from './example-plan.ts';

const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

const utf16 = (text: string): Uint8Array => new Uint8Array(Buffer.from(`\uFEFF${text}`, 'utf16le'));

/** Characters that an example writes as `\x07`, `\u00A0` or `\r`, as what they stand for. */
const unescaped = (text: string): string =>
  text.replaceAll(/\\(?:x([0-9A-F]{2})|u([0-9A-F]{4})|r)/gu, (_, byte: string | undefined, unit: string | undefined) =>
    String.fromCharCode(parseInt(byte ?? unit ?? '0D', 16)),
  );

const MANY = 1200;
const TOO_LARGE = 50_000_000;

/** The example, which is all that the file holds. */
const alone = (example: string): string => `${example}\n`;

const aliases = Array.from(
  { length: 20 },
  (_, index) => `c${index + 1}: &c${index + 1} [${Array.from({ length: 9 }, () => `*c${index || ''}`).join(', ')}]`,
).join('\n');
const manyFiles = (): Files =>
  Object.fromEntries(Array.from({ length: MOST_LOOKED_AT }, (_, index) => [`/plan/old/${String(index)}.txt`, '']));

export const readingSettings = {
  'source/binary': { wrongFiles: { '/plan/squad/roster.csv': Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0, 8, 0) } },
  'source/not-utf8': { bytes: (text) => latin1(unescaped(text)) },
  'source/utf16': { bytes: utf16 },
  'source/too-large': { files: { '/plan/backup.yaml': new Uint8Array(TOO_LARGE).fill(0x23) } },
  'source/empty': { entry: alone },
  'source/control-character': { bytes: unescaped },
  'source/no-break-space': { bytes: unescaped },
  'source/invisible-character': { bytes: unescaped },
  'source/lone-carriage-return': { bytes: unescaped },

  'files/not-a-file': { files: { '/plan/control.pipe': { pipe: true } } },
  'files/unreadable': {
    files: { '/plan/locked.yaml': 'tests: []' },
    wrongFiles: { '/plan/locked.yaml': { denied: 'permission denied' } },
  },
  'files/too-many': { files: manyFiles() },

  'csv/decimal-comma': { home: 'roster of masses' },
  'csv/missing-column': { home: 'roster' },
  'csv/separator': { home: 'roster' },
  'csv/stray-quote': { home: 'roster of names' },
  'csv/unclosed-quote': { home: 'roster of names and squads' },

  'yaml/more': { entry: () => Array.from({ length: MANY }, (_, index) => `x${index}: y: z\n`).join(''), also: ['yaml/colon-in-text'] },
  'yaml/duplicate-key': { also: ['plan/level-left-out', 'plan/now-left-out'] },
  'yaml/decimal-comma': { also: ['plan/level-left-out', 'plan/now-left-out'] },
  'yaml/indent': { plan: { athletes: 'athletes: { mira: { squad: seniors } }' } },
  'yaml/directive': { home: 'top of the file' },
  'yaml/too-deep': { dots: '['.repeat(MANY) + ']'.repeat(MANY) },
  'yaml/too-long': { dots: '[], '.repeat(900_000) },
  'yaml/alias-too-large': { dots: aliases },
  'yaml/long-key': { home: 'athletes' },
} as const satisfies Record<string, Setting>;
