// A build that was written before, found again by its path: a folder of `build --out`, or the JSON in it. Opened for
// `diff` and wherever `--near` is taken, which refuse what they can't read.

import type { CompileOptions } from '../compile.ts';
import { readBuilt } from '../diff/read-built.ts';
import type { WrittenBuild } from '../diff/read-built.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import type { ExitStatus } from './exit-status.ts';
import { refuse } from './session.ts';
import type { Session } from './session.ts';

export type OpenedBuilt =
  | { readonly ok: true; readonly value: WrittenBuild }
  | { readonly ok: false; readonly status: ExitStatus };

const BUILT = 'plan.json';

/** The file of a build at a path; undefined where what is there is no build. */
export function findBuilt(path: string, { files }: Pick<Session, 'files'>): string | undefined {
  const inside = `${path.replace(/(?<=.)\/+$/u, '')}/${BUILT}`;
  if (files.stat(path).kind === 'folder') return files.stat(inside).kind === 'file' ? inside : undefined;
  return files.stat(path).kind === 'file' && /\.json$/iu.test(path) ? path : undefined;
}

/** Reads the build in a file, or says all that is wrong with it. */
export async function openBuilt(path: string, session: Session): Promise<OpenedBuilt> {
  const bytes = session.files.readFile(path);
  if (!bytes.ok) return { ok: false, status: await refuse(session, `${path} can't be read: ${bytes.reason}`) };
  const read = readBuilt(new TextDecoder().decode(bytes.value));
  if (read.ok) return read;
  return { ok: false, status: await refuse(session, read.problems.map((words) => `${path}: ${words}`).join('\n')) };
}

/** The sheets that are out, with their days, where a folder of them is named; refused where it holds none. */
export async function openSheets(near: string | undefined, session: Session): Promise<OpenedSheets> {
  if (near === undefined) return { ok: true, sheets: {} };
  const opened = await openNear(near, session);
  return opened.ok ? { ok: true, sheets: { published: opened.value.days }, out: opened.value } : opened;
}

/** Whether sheets that are out have a day of these athletes in a season, which is one that could be kept. */
export function keepsAny(
  athletes: readonly Pick<Athlete, 'id'>[],
  { starts, ends }: Plan['season'],
  { published }: SheetsOut,
): boolean {
  return athletes.some(({ id }) => [...(published?.get(id)?.keys() ?? [])].some((day) => starts <= day && day <= ends));
}

/** Told on standard error where sheets that are out have no day that a plan could keep. */
export async function tellNoneKept(
  near: string,
  { athletes, season }: Pick<Plan, 'athletes' | 'season'>,
  sheets: SheetsOut,
  { err }: Session,
): Promise<void> {
  if (keepsAny(athletes, season, sheets)) return;
  await err.write(`footfall: nobody of this plan has a session of this season in ${near}: no day is kept\n`);
}

/** What a season is compiled with for the sake of sheets that are out. */
export type SheetsOut = Pick<CompileOptions, 'published'>;

export type OpenedSheets =
  | { readonly ok: true; readonly sheets: SheetsOut; readonly out?: WrittenBuild }
  | { readonly ok: false; readonly status: ExitStatus };

/** The build that the folder behind `--near` holds. */
async function openNear(folder: string, session: Session): Promise<OpenedBuilt> {
  const path = findBuilt(folder, session);
  if (path !== undefined) return await openBuilt(path, session);
  const what = session.files.stat(folder).kind === 'missing' ? 'is not there' : `holds no ${BUILT}`;
  return { ok: false, status: await refuse(session, `--near: ${folder} ${what}; it takes a folder of build --out`) };
}
