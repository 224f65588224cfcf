// `footfall diff [old] [new]`: two builds compared, each from a git revision or from a plan. What is wrong with either is
// told as for a build; the names of files are those of the plan.

import { openRevision } from '../../host/git-files.ts';
import { sideOf } from '../../diff/side.ts';
import { DONE, PLAN_HAS_ERRORS } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openPlan } from '../open-plan.ts';
import type { Opened } from '../open-plan.ts';
import type { DiffRequest } from '../requests.ts';
import { refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { tellDiff } from '../tell-diff.ts';

export async function diff(request: DiffRequest, session: Session): Promise<ExitStatus> {
  const old = await openSide(request.old, request.plan, session);
  if (!old.ok) return old.status;
  const fresh = await openSide(request.fresh ?? request.plan, request.plan, session);
  if (!fresh.ok) return fresh.status;
  const { printed } = request;
  const sides = { before: sideOf(old.build), after: sideOf(fresh.build), ...(printed !== undefined && { printed }) };
  const differs = await tellDiff(sides, request.format, session);
  return differs && request.exitCode === true ? PLAN_HAS_ERRORS : DONE;
}

/** What is there as a file or a folder is a plan, anything else a revision. */
async function openSide(side: string, plan: string, session: Session): Promise<Opened> {
  if (session.files.stat(side).kind !== 'missing') return await openPlan(side, session);
  const files = openRevision(side);
  if (files.ok) return await openPlan(plan, { ...session, files: files.value });
  return { ok: false, status: await refuse(session, `"${side}" is no plan, and no revision: ${files.reason}`) };
}
