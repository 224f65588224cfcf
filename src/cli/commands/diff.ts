// `footfall diff [old] [new]`: two builds compared, each from a git revision, a plan, or what a build wrote. What is wrong
// with either is told as for a build; the names of files are those of the plan.

import { diffBuilds } from '../../diff/diff-builds.ts';
import type { WrittenBuild } from '../../diff/read-built.ts';
import { sideOf } from '../../diff/side.ts';
import type { Side } from '../../diff/side.ts';
import type { Build } from '../../build/types.ts';
import { settleForLongRun } from '../../host/engine.ts';
import { openRevision } from '../../host/git-files.ts';
import { DONE, PLAN_HAS_ERRORS } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { findBuilt, openBuilt, openSheets, tellNoneKept } from '../open-built.ts';
import { openPlan, plannedOn } from '../open-plan.ts';
import type { Standing } from '../open-plan.ts';
import type { DiffRequest } from '../requests.ts';
import { refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { tellTwoDays } from '../tell-day.ts';
import { tellDiff } from '../tell-diff.ts';

/** Status 0; with `--exit-code` 1 where something changed; 1 where a side has errors, 2 where one can't be opened. */
export async function diff(request: DiffRequest, session: Session): Promise<ExitStatus> {
  const { asOf, near, printed } = request;
  const out = await openSheets(near, session);
  if (!out.ok) return out.status;
  const standing = { ...plannedOn(asOf), ...out.sheets };
  const old = await openSide(request.old, request, standing, session);
  if (!old.ok) return old.status;
  const fresh = await openSide(request.fresh ?? request.plan, request, standing, session);
  if (!fresh.ok) return fresh.status;
  const plan = fresh.value.plan ?? old.value.plan;
  if (asOf !== undefined && plan === undefined)
    return await refuse(session, '--as-of is for plans: what a build wrote was planned on its own day');
  if (near !== undefined && plan === undefined)
    return await refuse(session, '--near is for plans: what a build wrote has its days');
  const sides = { before: old.value, after: fresh.value, standing, ...(printed !== undefined && { printed }) };
  // Each edit is tried alone, which may be a season for each of them.
  settleForLongRun();
  const differs = await tellDiff(sides, request.format, session);
  if (asOf === undefined) await tellTwoDays(old.value.plan, fresh.value.plan, session);
  if (near !== undefined && plan !== undefined) await tellNoneKept(near, plan, out.sheets, session);
  if (differs && near !== undefined && old.build !== undefined)
    await tellAlreadyNew(near, out.out, fresh.build, session);
  return differs && request.exitCode === true ? PLAN_HAS_ERRORS : DONE;
}

/** The old plan stays on the days of the new one where its sheets are out: what moved between them can't be told. */
async function tellAlreadyNew(
  near: string,
  out: WrittenBuild | undefined,
  fresh: Build | undefined,
  { err }: Session,
): Promise<void> {
  if (out === undefined || fresh === undefined || diffBuilds(out, sideOf(fresh)).athletes.length > 0) return;
  await err.write(
    `footfall: ${near} holds the sheets of the new side already, and both sides stay on their days: a session that moved ` +
      'when they were written is not told; ask before they are written anew, or name a copy of those before\n',
  );
}

type OpenedSide =
  | { readonly ok: true; readonly value: Side; readonly build?: Build }
  | { readonly ok: false; readonly status: ExitStatus };

/** What is there as a file or a folder is a plan or what a build wrote, anything else a revision. */
async function openSide(
  side: string,
  { plan }: DiffRequest,
  standing: Standing,
  session: Session,
): Promise<OpenedSide> {
  if (session.files.stat(side).kind === 'missing') return await openOld(side, plan, standing, session);
  const built = isPlan(side, session) ? undefined : findBuilt(side, session);
  return built === undefined ? await compiled(side, standing, session) : await openBuilt(built, session);
}

/** A folder that has both is a plan whose builds are written into it. */
const isPlan = (path: string, { files }: Session): boolean => files.stat(`${path}/season.yaml`).kind === 'file';

async function openOld(revision: string, plan: string, standing: Standing, session: Session): Promise<OpenedSide> {
  const files = openRevision(revision);
  if (files.ok) return await compiled(plan, standing, { ...session, files: files.value });
  return { ok: false, status: await refuse(session, `"${revision}" is no plan, and no revision: ${files.reason}`) };
}

async function compiled(plan: string, standing: Standing, session: Session): Promise<OpenedSide> {
  const opened = await openPlan(plan, session, standing);
  return opened.ok ? { ok: true, value: sideOf(opened.build), build: opened.build } : opened;
}
