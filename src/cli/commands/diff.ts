// `footfall diff [old] [new]`: two builds compared, each from a git revision or from a plan. What is wrong with either is
// told as for a build; the names of files are those of the plan.

import type { Build } from '../../build/types.ts';
import { diffBuilds } from '../../diff/diff-builds.ts';
import { openRevision } from '../../host/git-files.ts';
import { createPalette } from '../../render/palette.ts';
import { renderDiffJson } from '../../render/json/diff.ts';
import { renderDiffMarkdown } from '../../render/markdown/diff.ts';
import { renderDiff } from '../../render/terminal/diff.ts';
import { reportDiff } from '../../report/diff-report.ts';
import type { DiffReport } from '../../report/diff-report.ts';
import { DONE, PLAN_HAS_ERRORS } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openPlan } from '../open-plan.ts';
import type { Opened } from '../open-plan.ts';
import type { DiffRequest } from '../requests.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';

export async function diff(request: DiffRequest, session: Session): Promise<ExitStatus> {
  const old = await openSide(request.old, request.plan, session);
  if (!old.ok) return old.status;
  const fresh = await openSide(request.fresh ?? request.plan, request.plan, session);
  if (!fresh.ok) return fresh.status;
  const found = diffBuilds(old.build, fresh.build);
  const printed = request.printed ?? lastRecorded(fresh.build);
  const report = reportDiff(found, {
    before: old.build.plan,
    after: fresh.build.plan,
    ...(printed !== undefined && { printed }),
  });
  if (report === undefined) return DONE;
  await session.out.writeAll(rendered(request, report, session));
  return request.exitCode === true ? PLAN_HAS_ERRORS : DONE;
}

const lastRecorded = ({ plan }: Build): number | undefined => plan.record.done.at(-1)?.day;

/** What is there as a file or a folder is a plan, anything else a revision. */
async function openSide(side: string, plan: string, session: Session): Promise<Opened> {
  if (session.files.stat(side).kind !== 'missing') return await openPlan(side, session);
  const files = openRevision(side);
  if (files.ok) return await openPlan(plan, { ...session, files: files.value });
  return { ok: false, status: await refuse(session, `"${side}" is no plan, and no revision: ${files.reason}`) };
}

function rendered({ format }: DiffRequest, report: DiffReport, { outTerminal }: Session): Iterable<string> {
  switch (format) {
    case 'json':
      return [renderDiffJson(report)];
    case 'markdown':
      return lined(renderDiffMarkdown(report));
    case 'text':
      return lined(renderDiff(report, { palette: createPalette(outTerminal.colours), width: outTerminal.width }));
  }
}
