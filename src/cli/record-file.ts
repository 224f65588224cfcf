// A file of the record, of what was done or of tests, as a plan names it: where it is, what is in it, and how it would read
// with rows added. So that rows are judged by the reading of the plan itself before any of them is written.

import { recordPath } from '../language/read-documents.ts';
import { DONE_COLUMNS, TEST_COLUMNS } from '../language/shapes/record.ts';
import type { FileHost } from '../read/file-host.ts';
import { parsePlanPath } from '../read/plan-path.ts';
import type { Documents } from '../read/types.ts';

/** As the plan's `record:` names them. */
export type RecordKey = 'done' | 'tests';

const COLUMNS = { done: DONE_COLUMNS, tests: TEST_COLUMNS };

export interface RecordFile {
  readonly key: RecordKey;
  /** As the plan calls it. */
  readonly path: string;
  /** Where it is, for the host. */
  readonly location: string;
  /** Empty where there is no such file yet. */
  readonly bytes: Uint8Array;
}

const EMPTY = new Uint8Array();

/** Undefined where the plan names none, or none that can be read: the reading has told why. */
export function findRecordFile(
  documents: Documents,
  key: RecordKey,
  folder: string,
  files: FileHost,
): RecordFile | undefined {
  const written = recordPath(documents, key);
  if (written === undefined) return undefined;
  const path = parsePlanPath(written.text, written.span);
  if (!('kind' in path)) return undefined;
  const location = `${folder}/${path.path}`;
  const read = files.stat(location).kind === 'missing' ? { ok: true as const, value: EMPTY } : files.readFile(location);
  return read.ok ? { key, path: path.path, location, bytes: read.value } : undefined;
}

/** The cells of one row, by column. */
export type RecordRow = Readonly<Partial<Record<string, string>>>;

/** What has to be added to the file for the rows to stand below the others: in its columns and with its line ends. */
export function addition({ key, bytes }: RecordFile, rows: readonly RecordRow[]): string {
  const text = new TextDecoder('utf-8').decode(bytes);
  const isNew = text.trim() === '';
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  const header = isNew ? COLUMNS[key].map(({ name }) => name) : headerOf(text);
  const lines = [...(isNew ? [header.join(',')] : []), ...rows.map((row) => lineOf(row, header))];
  const before = text === '' || /[\r\n]$/u.test(text) ? '' : end;
  return before + lines.map((line) => line + end).join('');
}

const headerOf = (text: string): readonly string[] =>
  (/^[^\r\n]*/u.exec(text)?.[0] ?? '').split(',').map((cell) => cell.trim().replace(/^"(.*)"$/u, '$1'));

const lineOf = (row: RecordRow, header: readonly string[]): string =>
  header.map((column) => quoted(row[column] ?? '')).join(',');

const quoted = (cell: string): string => (/[",\r\n]/u.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** The files with text at the end of the record; with no text, a record that isn't there yet has its header alone. */
export function withAddition(files: FileHost, record: RecordFile, folder: string, text: string): FileHost {
  const added = new TextEncoder().encode(text);
  const bytes = new Uint8Array(record.bytes.length + added.length);
  bytes.set(record.bytes);
  bytes.set(added, record.bytes.length);
  const isMissing = files.stat(record.location).kind === 'missing';
  return {
    ...files,
    stat: (path) => (path === record.location ? { kind: 'file', bytes: bytes.length } : files.stat(path)),
    readFile: (path) => (path === record.location ? { ok: true, value: bytes } : files.readFile(path)),
    realPath: (path) =>
      path === record.location && isMissing ? realMissing(files, record, folder) : files.realPath(path),
  };
}

/** Behind the links of the folders that are there. */
function realMissing(files: FileHost, { path }: RecordFile, folder: string): ReturnType<FileHost['realPath']> {
  const parts = path.split('/');
  for (let count = parts.length - 1; count >= 0; count -= 1) {
    const there = [folder, ...parts.slice(0, count)].join('/');
    const real = files.realPath(there);
    if (real.ok) return { ok: true, value: [real.value.replace(/\/$/u, ''), ...parts.slice(count)].join('/') };
  }
  return files.realPath(folder);
}
