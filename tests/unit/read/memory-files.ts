// A plan folder in memory, for tests of the readers: paths to contents. A content may also be a link, a pipe, or something that
// can't be read.

import type { Answer, FileHost, FileState, FolderEntry } from '../../../src/read/file-host.ts';

/** Files by absolute path, such as `/plan/season.yaml`. */
export type Files = Readonly<
  Record<
    string,
    string | Uint8Array | { readonly link: string } | { readonly denied: string } | { readonly pipe: true }
  >
>;

const bytesOf = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content;

const isContent = (content: Files[string] | undefined): content is string | Uint8Array =>
  typeof content === 'string' || content instanceof Uint8Array;

function normal(path: string): string {
  const parts: string[] = [];
  for (const part of path.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '' && part !== '.') parts.push(part);
  }
  return `/${parts.join('/')}`;
}

export function memoryFiles(files: Files): FileHost {
  const folders = new Set(['/']);
  for (const path of Object.keys(files)) {
    for (let cut = path.lastIndexOf('/'); cut > 0; cut = path.lastIndexOf('/', cut - 1))
      folders.add(path.slice(0, cut));
  }

  const behindLinks = (path: string): string | undefined => {
    let at = '/';
    for (const part of normal(path).split('/').slice(1)) {
      const next = at === '/' ? `/${part}` : `${at}/${part}`;
      const content = files[next];
      at = typeof content === 'object' && 'link' in content ? (behindLinks(content.link) ?? '/nowhere/at/all') : next;
    }
    return folders.has(at) || files[at] !== undefined ? at : undefined;
  };

  const stat = (path: string): FileState => {
    const real = behindLinks(path);
    if (real === undefined) return { kind: 'missing' };
    const content = files[real];
    if (content === undefined) return { kind: 'folder', bytes: 0 };
    if (isContent(content)) return { kind: 'file', bytes: bytesOf(content).length };
    return 'denied' in content ? { kind: 'denied', reason: content.denied } : { kind: 'other', bytes: 0 };
  };

  const readFile = (path: string): Answer<Uint8Array> => {
    const content = files[behindLinks(path) ?? ''];
    return isContent(content) ? { ok: true, value: bytesOf(content) } : { ok: false, reason: 'it is not there' };
  };

  const list = (path: string): Answer<readonly FolderEntry[]> => {
    const real = behindLinks(path);
    if (real === undefined || !folders.has(real)) return { ok: false, reason: 'it is not there' };
    const prefix = real === '/' ? '/' : `${real}/`;
    const entries = new Map<string, FolderEntry>();
    for (const [each, content] of Object.entries(files)) {
      if (!each.startsWith(prefix)) continue;
      const [name = '', ...deeper] = each.slice(prefix.length).split('/');
      const link = typeof content === 'object' && 'link' in content;
      entries.set(name, { name, kind: deeper.length > 0 ? 'folder' : link ? 'link' : 'file' });
    }
    return { ok: true, value: [...entries.values()] };
  };

  const realPath = (path: string): Answer<string> => {
    const real = behindLinks(path);
    return real === undefined ? { ok: false, reason: 'it is not there' } : { ok: true, value: real };
  };

  return { stat, readFile, list, realPath };
}
