// A plan compiled again with every save of one of its files, until it is ended. What a round does is the command's; a save
// that leaves every file as it was is none.

import type { Compiled, Standing } from './open-plan.ts';
import { compileAt } from './open-plan.ts';
import { settleForLongRun, settleForRounds } from '../host/engine.ts';
import { rememberingParse } from '../read/known-texts.ts';
import { WRONG_COMMAND } from './exit-status.ts';
import type { ExitStatus } from './exit-status.ts';
import { refuse } from './session.ts';
import type { Session } from './session.ts';
import { folderOf } from './tell-findings.ts';
import type { Watching } from '../host/watch-files.ts';

export interface Watched {
  readonly plan: string;
  /** A folder that rounds write. */
  readonly out?: string;
  readonly standing: Standing;
}

export type Round = (compiled: Compiled, breathe: Watching['breathe']) => Promise<ExitStatus>;

/**
 * The status of the last round. A first round that the command itself is to blame for is the only one: there is nothing to
 * wait for.
 */
export async function watchPlan({ plan, out, standing }: Watched, session: Session, round: Round): Promise<ExitStatus> {
  settleForLongRun();
  const folder = folderOf(plan, session);
  const parse = rememberingParse();
  const compiled = (): Compiled => compileAt(plan, session, standing, parse);
  if (session.files.stat(folder).kind !== 'folder') return await round(compiled(), async () => {});
  const { watchFiles, WatchEnded } = await import('../host/watch-files.ts');
  const watching = await watchFiles({ folder, plan, ...(out !== undefined && { leaveOut: out }) });
  let status: ExitStatus | undefined;
  try {
    let before: Read | undefined;
    // A function of its own, so that a build is let go when its round is over.
    const turn = async (): Promise<ExitStatus | undefined> => {
      const now = compiled();
      if (before !== undefined && isSame(before, now)) return undefined;
      before = { plan: now.plan, diagnostics: now.diagnostics };
      return await round(now, watching.breathe);
    };
    status = await turn();
    if (status === WRONG_COMMAND) return status;
    settleForRounds();
    await session.err.write(`footfall: watching ${folder}; Ctrl-C ends it\n`);
    while ((await watching.next()) === 'saved') status = (await turn()) ?? status;
    return status ?? (await refuse(session, NOTHING_BUILT));
  } catch (error) {
    if (!(error instanceof WatchEnded)) throw error;
    return status ?? (await refuse(session, NOTHING_BUILT));
  } finally {
    await watching.close();
  }
}

const NOTHING_BUILT = 'ended before the first build was done';

/** What a save is told from. */
type Read = Pick<Compiled, 'plan' | 'diagnostics'>;

/** The same files with the same texts, and as far readable. */
function isSame(before: Read, now: Read): boolean {
  const areAlike = <T>(was: readonly T[], is: readonly T[], alike: (a: T, b: T) => boolean): boolean =>
    was.length === is.length && was.every((one, at) => is[at] !== undefined && alike(one, is[at]));
  return (
    areAlike(before.plan.files, now.plan.files, (was, is) => was.path === is.path && was.text === is.text) &&
    areAlike(before.diagnostics, now.diagnostics, (was, is) => was.message === is.message)
  );
}
