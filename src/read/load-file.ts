// Bytes to text: what every file goes through before it is parsed. Refuses what is no UTF-8 text or far too large, and
// strips a byte order mark without a word. A file that is refused keeps its path and, where there is any, the text that
// can be shown beside the problem.

import { problem } from '../diagnostics/problem.ts';
import { sourceFile } from '../source/source-file.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { SourceFile, Span } from '../source/types.ts';
import type { FileHost } from './file-host.ts';

/** Ten thousand athletes take five to eight megabytes of YAML; a season of their training takes several times that as CSV. */
export const MOST_YAML_BYTES = 16_000_000;
export const MOST_CSV_BYTES = 64_000_000;

export interface LoadedFile {
  readonly file: SourceFile;
  /** False if the text must not be parsed. */
  readonly sound: boolean;
  readonly diagnostics: readonly Diagnostic[];
}

export interface FileToLoad {
  /** Where it is, for the host. */
  readonly location: string;
  /** What it is called, relative to the plan's folder. */
  readonly path: string;
  /** As the plan or the command line writes it. */
  readonly wanted: string;
  /** Where the plan names it; absent for the entry file. */
  readonly namedAt?: Span | undefined;
  readonly mostBytes: number;
}

/** The text of an ordinary file, or why there is none; undefined if there is no file to show anything of. */
export function loadFile(wanted: FileToLoad, host: FileHost): LoadedFile | Diagnostic {
  const state = host.stat(wanted.location);
  const span = wanted.namedAt;
  if (state.kind === 'missing') return problem('files/missing', { params: { wanted: wanted.wanted }, span });
  if (state.kind === 'denied') return unreadable(wanted, state.reason);
  if (state.kind === 'folder') return problem('files/folder', { params: { wanted: wanted.wanted }, span });
  if (state.kind === 'other') return problem('files/not-a-file', { params: { wanted: wanted.wanted }, span });
  if (state.bytes > wanted.mostBytes) return tooLarge(wanted, state.bytes);
  const read = host.readFile(wanted.location);
  if (!read.ok) return unreadable(wanted, read.reason);
  return read.value.length > wanted.mostBytes
    ? tooLarge(wanted, read.value.length)
    : decodeText(wanted.path, read.value);
}

const unreadable = ({ wanted, namedAt }: FileToLoad, reason: string): Diagnostic =>
  problem('files/unreadable', { params: { wanted, reason }, span: namedAt });

function tooLarge({ path, mostBytes }: FileToLoad, bytes: number): LoadedFile {
  const params = { size: megabytes(bytes), most: megabytes(mostBytes) };
  return refused(sourceFile(path, ''), problem('source/too-large', { params, span: { file: path, start: 0, end: 0 } }));
}

const megabytes = (bytes: number): string => `${(bytes / 1_000_000).toFixed(1).replace(/\.0$/u, '')} MB`;

const refused = (file: SourceFile, diagnostic: Diagnostic): LoadedFile => ({
  file,
  sound: false,
  diagnostics: [diagnostic],
});

/** UTF-8 bytes to text. The text of a binary file is left out: nobody wants it on a terminal. */
export function decodeText(path: string, bytes: Uint8Array): LoadedFile {
  const start = { file: path, start: 0, end: 0 };
  const utf16 = utf16Order(bytes);
  if (utf16 !== undefined) return refused(sourceFile(path, ''), problem('source/utf16', { span: start }));
  const found = binarySign(bytes);
  if (found !== undefined) {
    return refused(sourceFile(path, ''), problem('source/binary', { params: { found }, span: start }));
  }
  try {
    // A byte order mark is stripped here, and a later one is a character like any other.
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { file: sourceFile(path, text), sound: true, diagnostics: [] };
  } catch {
    return notUtf8(path, bytes);
  }
}

function utf16Order(bytes: Uint8Array): 'little' | 'big' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'little';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'big' : undefined;
}

const SIGNATURES: readonly (readonly [string, readonly number[]])[] = [
  ['it is a zip archive, as .xlsx and .ods files are', [0x50, 0x4b, 0x03, 0x04]],
  ['it is a PDF', [0x25, 0x50, 0x44, 0x46, 0x2d]],
  ['it is an old spreadsheet or document', [0xd0, 0xcf, 0x11, 0xe0]],
  ['it is a picture', [0x89, 0x50, 0x4e, 0x47]],
  ['it is a picture', [0xff, 0xd8, 0xff]],
  ['it is a compressed file', [0x1f, 0x8b]],
];

function binarySign(bytes: Uint8Array): string | undefined {
  for (const [name, signature] of SIGNATURES) {
    if (signature.every((byte, index) => bytes[index] === byte)) return name;
  }
  return bytes.includes(0) ? 'it holds zero bytes' : undefined;
}

function notUtf8(path: string, bytes: Uint8Array): LoadedFile {
  const at = firstBadByte(bytes);
  const byte = bytes[at] ?? 0;
  // Windows-1252 gives every byte a character of one unit, so offsets behind the sound part stay right.
  const sound = new TextDecoder('utf-8').decode(bytes.subarray(0, at));
  const rest = new TextDecoder('windows-1252').decode(bytes.subarray(at));
  const file = sourceFile(path, sound + rest);
  const span = { file: path, start: sound.length, end: sound.length + 1 };
  const guess = byte >= 0xa0 ? `; in Latin-1 it would be ${rest.charAt(0)}` : '';
  const params = { byte: `0x${byte.toString(16).toUpperCase().padStart(2, '0')}`, guess };
  return refused(file, problem('source/not-utf8', { params, span }));
}

/** Index of the first byte that belongs to no character; found by halving, as a prefix of a sound text is sound. */
function firstBadByte(bytes: Uint8Array): number {
  let sound = 0;
  let unsound = bytes.length;
  while (unsound - sound > 1) {
    const middle = (sound + unsound) >> 1;
    if (isSoundPrefix(bytes.subarray(0, middle))) sound = middle;
    else unsound = middle;
  }
  return characterStart(bytes, sound);
}

/** With `stream`, a character cut off at the end is no fault. */
function isSoundPrefix(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}

/** From the byte where decoding fails back to the lead byte of the character it breaks. */
function characterStart(bytes: Uint8Array, at: number): number {
  let start = at;
  while (start > 0 && at - start < 3 && !isWhole(bytes.subarray(0, start))) start -= 1;
  return start;
}

function isWhole(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}
