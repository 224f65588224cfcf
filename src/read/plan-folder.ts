// Where a plan is: the folder everything it reads lies in, and its entry file. Used by read-plan and read-table. Judges
// where a path of the plan really leads, links followed, before any file is opened.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Span } from '../source/types.ts';
import { nearest } from '../util/did-you-mean.ts';
import type { FileHost } from './file-host.ts';
import type { PlanPath } from './plan-path.ts';

/** The entry file a folder stands for. */
export const ENTRY_NAME = 'season.yaml';

export interface PlanFolder {
  readonly kind: 'folder';
  /** As the host knows it, without a slash at its end. */
  readonly location: string;
  /** The same behind all links. */
  readonly real: string;
  /** Name of the entry file in it. */
  readonly entry: string;
  /** The entry file as somebody at the command line would name it. */
  readonly entryPath: string;
}

/** The folder and entry file of a plan given as a file or a folder. */
export function findPlanFolder(entryPath: string, host: FileHost): PlanFolder | Diagnostic {
  const given = entryPath.length > 1 ? entryPath.replace(/\/+$/u, '') : entryPath;
  const state = host.stat(given);
  if (state.kind === 'missing') {
    return problem('files/missing', {
      params: { wanted: entryPath },
      help: helpForMissing(given.split('/'), '', host),
    });
  }
  if (state.kind === 'denied') {
    return problem('files/unreadable', { params: { wanted: entryPath, reason: state.reason } });
  }
  if (state.kind !== 'folder') {
    return planFolder({ location: folderOf(given), entry: nameOf(given), entryPath }, host);
  }
  if (host.stat(`${given}/${ENTRY_NAME}`).kind === 'missing') return noSeason(entryPath, given, host);
  return planFolder({ location: given, entry: ENTRY_NAME, entryPath: entryIn(given) }, host);
}

function planFolder(found: Omit<PlanFolder, 'kind' | 'real'>, host: FileHost): PlanFolder | Diagnostic {
  const location = found.location === '' ? '/' : found.location;
  const real = host.realPath(location);
  if (!real.ok) return problem('files/unreadable', { params: { wanted: location, reason: real.reason } });
  return { kind: 'folder', ...found, real: real.value };
}

function entryIn(folder: string): string {
  if (folder === '.') return ENTRY_NAME;
  return folder.endsWith('/') ? `${folder}${ENTRY_NAME}` : `${folder}/${ENTRY_NAME}`;
}

/** Whoever writes the name of a file means one. */
function noSeason(entryPath: string, given: string, host: FileHost): Diagnostic {
  if (YAML_ENDING.test(given)) return problem('files/folder', { params: { wanted: entryPath } });
  return problem('files/no-season', { params: { folder: entryPath }, help: helpForNoSeason(given, host) });
}

const YAML_ENDING = /\.ya?ml$/iu;

const folderOf = (path: string): string => (path.includes('/') ? path.slice(0, path.lastIndexOf('/')) : '.');

const nameOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1);

function helpForNoSeason(folder: string, host: FileHost): string {
  const listed = host.list(folder);
  const files = listed.ok ? listed.value.filter(({ kind }) => kind !== 'folder') : [];
  const yaml = files.map(({ name }) => name).filter((name) => YAML_ENDING.test(name));
  const [first] = yaml.sort();
  if (first !== undefined) return `name the entry file itself: ${folder}/${first}`;
  return `begin a plan with: footfall new ${folder}`;
}

/** Where a path of the plan leads: for the host, and behind all links. */
export interface Target {
  readonly kind: 'target';
  readonly location: string;
  readonly path: string;
  readonly real: string;
}

/** The file a path of a plan leads to, or why it can't be read. */
export function findTarget(folder: PlanFolder, path: PlanPath, span: Span, host: FileHost): Target | Diagnostic {
  const location = `${folder.location}/${path.path}`;
  const real = host.realPath(location);
  if (real.ok) {
    const inside = real.value.startsWith(folder.real.endsWith('/') ? folder.real : `${folder.real}/`);
    if (inside || real.value === folder.real) return { kind: 'target', location, path: path.path, real: real.value };
    const way = 'is a link that leads out of the plan folder';
    return problem('files/outside', { params: { wanted: path.path, way }, span });
  }
  const state = host.stat(location);
  if (state.kind !== 'missing') {
    const reason = state.kind === 'denied' ? state.reason : real.reason;
    return problem('files/unreadable', { params: { wanted: path.path, reason }, span });
  }
  const help = helpForMissing(path.parts, `${folder.location}/`, host);
  return problem('files/missing', { params: { wanted: path.path }, span, help });
}

/** The path with its first wrong part mended, if something near it is there. */
export function helpForMissing(parts: readonly string[], base: string, host: FileHost): string | undefined {
  for (const [index, part] of parts.entries()) {
    const before = parts.slice(0, index);
    const here = base + [...before, part].join('/');
    if (part === '' || part === '.' || part === '..' || host.stat(here).kind !== 'missing') continue;
    const listed = host.list(base + before.join('/') || '.');
    const names = listed.ok ? listed.value.map(({ name }) => name) : [];
    const near = nearest(part, names);
    return near === undefined ? undefined : `did you mean "${[...before, near, ...parts.slice(index + 1)].join('/')}"?`;
  }
  return undefined;
}
