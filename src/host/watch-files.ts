// Tells when somebody saves a file of a plan, until the person at the keyboard ends it. Folders are watched, not files, as
// many editors save by renaming; saves close together are one. The only user of chokidar, loaded for `--watch` alone.

import { realpathSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { setImmediate as nextTurn, setTimeout as pause } from 'node:timers/promises';
import { watch } from 'chokidar';
import type { FSWatcher } from 'chokidar';
import { OutputFailed } from './output.ts';
import { messageOf } from './system-errors.ts';

export interface WatchRequest {
  /** The plan's folder. */
  readonly folder: string;
  /** The plan as it was named: the folder, or its entry file. */
  readonly plan: string;
  /** A folder that is written to, and so isn't watched. */
  readonly leaveOut?: string;
}

export interface Watching {
  /** Resolves behind the next save, or when the watching is ended. Throws OutputFailed where the system can't watch. */
  readonly next: () => Promise<'saved' | 'ended'>;
  /** Lets an end be heard in the midst of long work: throws WatchEnded then. */
  readonly breathe: () => Promise<void>;
  /** Leaves nothing behind that would keep the process running. */
  readonly close: () => Promise<void>;
}

/** The person has ended the watching while something was written. */
export class WatchEnded extends Error {
  override readonly name = 'WatchEnded';
}

const PLAN_FILES = /\.(ya?ml|csv)$/iu;
/** Of Ctrl-C, of a closed terminal, of whoever manages the machine. The second Ctrl-C ends the process by force. */
const ENDINGS = ['SIGINT', 'SIGHUP', 'SIGTERM'] as const;
/** Editors write in several steps: what comes so soon behind a save belongs to it. */
const SETTLED_AFTER_MILLISECONDS = 50;

/** Watches from when it resolves. Hidden files and folders and `node_modules` are left out. */
export async function watchFiles(request: WatchRequest): Promise<Watching> {
  const bell = createBell();
  const { roots, isIgnored } = scopeOf(request);
  const watcher = watch([...roots], { ignoreInitial: true, ignorePermissionErrors: true, ignored: isIgnored });
  watcher.on('all', (event) => {
    if (event !== 'addDir' && event !== 'unlinkDir') bell.save();
  });
  watcher.on('error', (error) => {
    bell.fail(messageOf(error));
  });
  for (const ending of ENDINGS) process.once(ending, bell.end);
  const close = async (): Promise<void> => {
    for (const ending of ENDINGS) process.off(ending, bell.end);
    await watcher.close();
  };
  await isReady(watcher);
  return { next: bell.next, breathe: bell.breathe, close };
}

const isReady = async (watcher: FSWatcher): Promise<void> =>
  await new Promise((ready) => {
    watcher.once('ready', ready);
  });

/** What has happened since it was last asked for. */
function createBell(): Pick<Watching, 'next' | 'breathe'> & {
  readonly save: () => void;
  readonly end: () => void;
  readonly fail: (why: string) => void;
} {
  const state: { saved: boolean; ended: boolean; failure?: string } = { saved: false, ended: false };
  let ring: () => void = () => {};
  const setting = (change: Partial<typeof state>) => (): void => {
    Object.assign(state, change);
    ring();
  };
  const isSilent = (): boolean => !state.saved && !state.ended && state.failure === undefined;
  const rung = async (): Promise<void> => {
    if (!isSilent()) return;
    await new Promise<void>((resolved) => {
      ring = resolved;
    });
  };
  const next = async (): Promise<'saved' | 'ended'> => {
    await rung();
    if (state.saved && !state.ended) await pause(SETTLED_AFTER_MILLISECONDS);
    state.saved = false;
    if (state.failure !== undefined) throw new OutputFailed(`nothing can be watched: ${state.failure}`);
    return state.ended ? 'ended' : 'saved';
  };
  const breathe = async (): Promise<void> => {
    await nextTurn();
    if (state.ended) throw new WatchEnded();
  };
  return {
    next,
    breathe,
    save: setting({ saved: true }),
    end: setting({ ended: true }),
    fail: (failure) => {
      setting({ failure })();
    },
  };
}

interface Kind {
  readonly isFile: () => boolean;
}

interface Scope {
  /** The folder above the plan's, as that may go and come again; and where the entry file is a link the one it leads to. */
  readonly roots: readonly string[];
  readonly isIgnored: (path: string, stats?: Kind) => boolean;
}

function scopeOf({ folder, plan, leaveOut }: WatchRequest): Scope {
  const home = realOf(folder);
  const entry = realOf(plan);
  const beside = isWithin(home, entry) ? undefined : dirname(entry);
  const named = resolve(plan);
  const above = dirname(resolve(folder));
  const output = leaveOut === undefined ? undefined : realOf(leaveOut);
  return {
    roots: beside === undefined ? [above] : [above, beside],
    isIgnored: (path, stats) => {
      const absolute = resolve(path);
      if ([above, named, entry, beside].includes(absolute)) return false;
      const below = relative(resolve(folder), absolute);
      const steps = below.split(sep);
      // Beside the plan's folder, and what an entry link leads to, nothing belongs to the plan.
      if (steps[0] === '..' || steps.some((step) => step.startsWith('.') || step === 'node_modules')) return true;
      if (output !== undefined && isWithin(output, join(home, below))) return true;
      return stats?.isFile() === true && !PLAN_FILES.test(path);
    },
  };
}

const isWithin = (folder: string, path: string): boolean => relative(folder, path).split(sep)[0] !== '..';

/** Behind all links; of what isn't there yet as far as it is there. */
function realOf(path: string): string {
  const absolute = resolve(path);
  try {
    return realpathSync(absolute);
  } catch {
    return dirname(absolute) === absolute ? absolute : join(realOf(dirname(absolute)), basename(absolute));
  }
}
