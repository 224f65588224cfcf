// The file system as the readers ask for it: the only way in which a plan is read from the disk. Made once by the command
// line and handed down. What the system refuses comes back as an answer in words, never as an exception.

import { lstatSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import type { Dirent } from 'node:fs';
import type { Answer, FileHost, FileKind, FileState, FolderEntry } from '../read/file-host.ts';
import { settleForLongRun } from './engine.ts';
import { codeOf, reasonOf } from './system-errors.ts';

/** A file of so many bytes takes long to read by itself. */
const LONG_FILE = 500_000;

/** The real file system; paths relative to the working directory. */
export const fileSystem: FileHost = {
  stat: (path) => stateOf(path),
  readFile: (path) =>
    mayWait(path)
      ? { ok: false, reason: 'it is a pipe, a device or the like' }
      : answer(() => {
          const bytes = readFileSync(path);
          if (bytes.length > LONG_FILE) settleForLongRun();
          return bytes;
        }),
  list: (path) => answer(() => readdirSync(path, { withFileTypes: true }).map((entry) => folderEntry(entry))),
  realPath: (path) => answer(() => withForwardSlashes(realpathSync(path))),
};

/** The system has found something, or doesn't let anybody look. */
const DENYING: ReadonlySet<string> = new Set(['EACCES', 'EPERM', 'ELOOP']);

function stateOf(path: string): FileState {
  try {
    const stats = statSync(path);
    return { kind: kindOf(stats), bytes: stats.size };
  } catch (error) {
    return DENYING.has(codeOf(error)) ? { kind: 'denied', reason: reasonOf(error) } : missingOrLink(path);
  }
}

/** Whoever reads a pipe waits for whoever writes it, and some devices never end. */
const mayWait = (path: string): boolean => stateOf(path).kind === 'other';

/** A link that leads nowhere is something and can't be read. */
function missingOrLink(path: string): FileState {
  try {
    return lstatSync(path).isSymbolicLink()
      ? { kind: 'denied', reason: 'the link leads nowhere' }
      : { kind: 'missing' };
  } catch {
    return { kind: 'missing' };
  }
}

interface Kinds {
  readonly isFile: () => boolean;
  readonly isDirectory: () => boolean;
}

const kindOf = (stats: Kinds): FileKind => (stats.isFile() ? 'file' : stats.isDirectory() ? 'folder' : 'other');

const folderEntry = (entry: Dirent): FolderEntry => ({
  name: entry.name,
  kind: entry.isSymbolicLink() ? 'link' : kindOf(entry),
});

const withForwardSlashes = (path: string): string => (path.includes('\\') ? path.replaceAll('\\', '/') : path);

function answer<T>(ask: () => T): Answer<T> {
  try {
    return { ok: true, value: ask() };
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  }
}
