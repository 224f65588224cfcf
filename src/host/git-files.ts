// The files of a git revision, as the readers ask for files. Read from git's own store, so that nothing is checked out and
// nobody's working tree is touched. Paths are those of the working directory, as if the revision were checked out there.

import { execaSync } from 'execa';
import type { Answer, FileHost, FileState, FolderEntry } from '../read/file-host.ts';

interface TreeFile {
  readonly kind: 'file' | 'link' | 'other';
  readonly object: string;
  readonly bytes: number;
}

type Tree = ReadonlyMap<string, TreeFile | ReadonlyMap<string, FolderEntry>>;

const MOST_LINKS = 40;
const LINK_MODE = '120000';
const MOST_BYTES = 1_000_000_000;

/** The files of a revision, or why there are none: no git, no repository, no such revision. */
export function openRevision(revision: string): Answer<FileHost> {
  const commit = git(['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`]);
  if (!commit.ok) return { ok: false, reason: commit.reason === '' ? 'git knows no such revision' : commit.reason };
  const prefix = git(['rev-parse', '--show-prefix']);
  const top = git(['rev-parse', '--show-toplevel']);
  const listed = git(['ls-tree', '-r', '-z', '-l', '--full-tree', commit.value.trim()]);
  if (!prefix.ok) return prefix;
  if (!top.ok) return top;
  if (!listed.ok) return listed;
  return { ok: true, value: hostOf(treeOf(listed.value), prefix.value.trimEnd(), top.value.trimEnd()) };
}

function git(args: readonly string[]): Answer<string> {
  const ran = execaSync('git', [...args], { reject: false, maxBuffer: MOST_BYTES, env: { GIT_OPTIONAL_LOCKS: '0' } });
  if (ran.exitCode === 0) return { ok: true, value: ran.stdout };
  if (ran.exitCode === undefined) return { ok: false, reason: 'git is not there' };
  return { ok: false, reason: ran.stderr.split('\n')[0]?.replace(/^fatal: /u, '') ?? '' };
}

/** Of `mode type object size<tab>path`, each ended by a zero byte. */
function treeOf(listed: string): Tree {
  const tree = new Map<string, TreeFile | Map<string, FolderEntry>>([['', new Map()]]);
  for (const line of listed.split('\0')) {
    const [, mode = '', type = '', object = '', size = '', path] =
      /^(\S+) (\S+) (\S+) +(\S+)\t(.*)$/su.exec(line) ?? [];
    if (path === undefined) continue;
    const kind = type !== 'blob' ? 'other' : mode === LINK_MODE ? 'link' : 'file';
    tree.set(path, { kind, object, bytes: Number(size) || 0 });
    addToFolders(tree, path, kind);
  }
  return tree;
}

function addToFolders(
  tree: Map<string, TreeFile | Map<string, FolderEntry>>,
  path: string,
  kind: FolderEntry['kind'],
): void {
  const slash = path.lastIndexOf('/');
  const folder = slash < 0 ? '' : path.slice(0, slash);
  const name = path.slice(slash + 1);
  const there = tree.get(folder);
  if (there instanceof Map) {
    there.set(name, { name, kind });
    return;
  }
  tree.set(folder, new Map([[name, { name, kind }]]));
  addToFolders(tree, folder, 'folder');
}

function hostOf(tree: Tree, prefix: string, top: string): FileHost {
  const find = (path: string): string | undefined => resolved(tree, inRepository(path, prefix, top));
  const blob = (file: TreeFile): Uint8Array =>
    execaSync('git', ['cat-file', 'blob', file.object], { encoding: 'buffer', maxBuffer: MOST_BYTES }).stdout;
  return {
    stat: (path) => stateOf(tree, find(path)),
    readFile: (path) => {
      const file = tree.get(find(path) ?? OUTSIDE);
      return file === undefined || !('object' in file) ? NOT_THERE : { ok: true, value: blob(file) };
    },
    list: (path) => {
      const folder = tree.get(find(path) ?? OUTSIDE);
      return folder === undefined || 'object' in folder ? NOT_THERE : { ok: true, value: [...folder.values()] };
    },
    realPath: (path) => {
      const real = find(path);
      return real === undefined || !tree.has(real) ? NOT_THERE : { ok: true, value: `/${real}` };
    },
  };
}

const NOT_THERE = { ok: false, reason: 'it is not there' } as const;
/** No path of a tree. */
const OUTSIDE = '\0';

function stateOf(tree: Tree, path: string | undefined): FileState {
  const found = path === undefined ? undefined : tree.get(path);
  if (found === undefined) return { kind: 'missing' };
  if (!('object' in found)) return { kind: 'folder', bytes: 0 };
  return { kind: found.kind === 'file' ? 'file' : 'other', bytes: found.bytes };
}

/** The names on the way from the top of the repository; `..` out of it stays as it is and leads nowhere. */
function inRepository(path: string, prefix: string, top: string): readonly string[] {
  const forward = path.replaceAll('\\', '/');
  if (forward === top || forward.startsWith(`${top}/`)) return forward.slice(top.length).split('/');
  return `${prefix}${forward}`.split('/');
}

/** The path with links followed; undefined where it leads out of the repository, or in a circle. */
function resolved(tree: Tree, names: readonly string[]): string | undefined {
  const left = [...names].toReversed();
  let at: readonly string[] = [];
  let links = 0;
  for (let name = left.pop(); name !== undefined; name = left.pop()) {
    if (name === '' || name === '.') continue;
    if (name === '..') {
      if (at.length === 0) return undefined;
      at = at.slice(0, -1);
      continue;
    }
    const next = [...at, name];
    const file = tree.get(next.join('/'));
    if (file === undefined || !('object' in file) || file.kind !== 'link') {
      at = next;
      continue;
    }
    links += 1;
    const target = execaSync('git', ['cat-file', 'blob', file.object], { stripFinalNewline: false }).stdout;
    if (links > MOST_LINKS || target.startsWith('/')) return undefined;
    left.push(...target.split('/').toReversed());
  }
  return at.join('/');
}
