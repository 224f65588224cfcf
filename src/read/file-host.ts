// What the readers ask of the machine: what stands at a path, and its bytes. Implemented over the file system in
// src/host and in memory by tests, so that reading a plan can be tried without a disk. Paths have forward slashes on
// every system, and nothing here throws for what a file system may answer.

export type FileKind = 'file' | 'folder' | 'other';

export type FileState =
  | { readonly kind: FileKind; readonly bytes: number }
  | { readonly kind: 'missing' }
  /** There may be something, and the system says nothing about it. */
  | { readonly kind: 'denied'; readonly reason: string };

export interface FolderEntry {
  readonly name: string;
  /** A link is a link here, whatever it leads to. */
  readonly kind: FileKind | 'link';
}

export type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

export interface FileHost {
  /** What stands at a path, links followed. */
  readonly stat: (path: string) => FileState;
  /** The bytes of a file. */
  readonly readFile: (path: string) => Answer<Uint8Array>;
  /** What is in a folder, in any order. */
  readonly list: (path: string) => Answer<readonly FolderEntry[]>;
  /** The absolute path behind all links. */
  readonly realPath: (path: string) => Answer<string>;
}
