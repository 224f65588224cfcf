// Finds the files a glob of `files:` means: `*` any part of one name, `?` one character, `**` any folders. Walks only
// the folders the pattern can reach, never follows a link found by `**`, and leaves names that begin with a dot aside
// unless the pattern names them. The result is in order of path, whatever order the machine lists in.

import type { FileHost, FolderEntry } from './file-host.ts';

/** Files and folders a glob may look through before it is taken for a slip. */
export const MOST_LOOKED_AT = 50_000;

/** Whether a path is a pattern. There is no way to escape one: files aren't called so. */
export const isGlob = (path: string): boolean => /[*?]/u.test(path);

export interface Matches {
  /** Paths from the plan's folder, in the order of their text. */
  readonly paths: readonly string[];
  /** Folders that are there and can't be looked into, as what is in them would else be left out without a word. */
  readonly unlisted: readonly Unlisted[];
  readonly tooMany: boolean;
}

export interface Unlisted {
  /** Its path from the plan's folder. */
  readonly wanted: string;
  readonly reason: string;
}

/** The files below `folder` that match the parts of a pattern. */
export function matchFiles(parts: readonly string[], folder: string, host: FileHost): Matches {
  const walk: Walk = { host, folder, found: new Set(), unlisted: new Map(), seen: new Set(), looked: 0 };
  matchFrom(walk, [], parts);
  return {
    paths: [...walk.found].sort(),
    unlisted: [...walk.unlisted].sort(byPath).map(([wanted, reason]) => ({ wanted, reason })),
    tooMany: walk.looked > MOST_LOOKED_AT,
  };
}

const byPath = ([a]: readonly [string, string], [b]: readonly [string, string]): number => (a < b ? -1 : 1);

interface Walk {
  readonly host: FileHost;
  readonly folder: string;
  readonly found: Set<string>;
  /** The reason by the path. */
  readonly unlisted: Map<string, string>;
  /** Folders and rests of the pattern already tried: `**` twice would else try everything many times over. */
  readonly seen: Set<string>;
  looked: number;
}

function matchFrom(walk: Walk, at: readonly string[], rest: readonly string[]): void {
  const key = `${rest.join('/')}\n${at.join('/')}`;
  const [part, ...further] = rest;
  if (part === undefined || walk.seen.has(key) || walk.looked > MOST_LOOKED_AT) return;
  walk.seen.add(key);
  if (part !== '**') {
    matchPart(walk, at, part, further);
    return;
  }
  matchFrom(walk, at, further.length === 0 ? ['*'] : further);
  for (const { name, kind } of entriesOf(walk, at)) {
    if (kind === 'folder' && !name.startsWith('.')) matchFrom(walk, [...at, name], rest);
  }
}

function matchPart(walk: Walk, at: readonly string[], part: string, further: readonly string[]): void {
  const names = isGlob(part) ? matchingNames(walk, at, part) : [part];
  for (const name of names) {
    const path = [...at, name];
    if (further.length > 0) matchFrom(walk, path, further);
    else if (isThere(walk, path)) walk.found.add(path.join('/'));
  }
}

/** What can't be read is found too, so that it is reported instead of left out. */
function isThere(walk: Walk, path: readonly string[]): boolean {
  const { kind } = walk.host.stat(joined(walk.folder, path));
  return kind !== 'folder' && kind !== 'missing';
}

const matchingNames = (walk: Walk, at: readonly string[], part: string): readonly string[] =>
  entriesOf(walk, at)
    .map(({ name }) => name)
    .filter((name) => (part.startsWith('.') || !name.startsWith('.')) && matchesName(name, part));

function entriesOf(walk: Walk, at: readonly string[]): readonly FolderEntry[] {
  const path = joined(walk.folder, at);
  const listed = walk.host.list(path);
  if (!listed.ok) {
    if (walk.host.stat(path).kind === 'folder') walk.unlisted.set(at.join('/') || '.', listed.reason);
    return [];
  }
  walk.looked += listed.value.length + 1;
  return walk.looked > MOST_LOOKED_AT ? [] : listed.value;
}

const joined = (folder: string, parts: readonly string[]): string => [folder, ...parts].join('/');

/** One name against one part of a pattern, in time of their product: no pattern makes it slow. */
export function matchesName(name: string, pattern: string): boolean {
  let at = 0;
  let read = 0;
  let star = -1;
  let retry = 0;
  while (at < name.length) {
    if (pattern[read] === '*') {
      star = read;
      read += 1;
      retry = at;
    } else if (pattern[read] === '?' || pattern[read] === name[at]) {
      at += 1;
      read += 1;
    } else if (star >= 0) {
      read = star + 1;
      retry += 1;
      at = retry;
    } else {
      return false;
    }
  }
  return /^\**$/u.test(pattern.slice(read));
}
