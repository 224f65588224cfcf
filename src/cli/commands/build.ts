// `footfall build [plan]`: compiles a plan and prints it or writes it into a folder, once or with every save. Here
// options are held against each other and names against the plan; the work is in ../build-once.ts and
// ../watch-build.ts.

import { buildOnce } from '../build-once.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openPlan, plannedOn } from '../open-plan.ts';
import type { Standing } from '../open-plan.ts';
import type { BuildRequest } from '../requests.ts';
import { outsideSeason, select, shardOf } from '../select.ts';
import { refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { tellDay } from '../tell-day.ts';

/** Status 0; 1 where the plan has errors, or warnings under `--strict`; 2 where options clash or a name isn't there. */
export async function build(request: BuildRequest, session: Session): Promise<ExitStatus> {
  const clash = clashOf(request);
  if (clash !== undefined) return await refuse(session, clash);
  const standing = await standingOf(request, session);
  if (!standing.ok) return standing.status;
  if (request.watch === true) {
    const { watchBuild } = await import('../watch-build.ts');
    return await watchBuild(request, standing.value, session);
  }
  const opened = await openPlan(request.plan, session, standing.value);
  if (!opened.ok) return opened.status;
  const selected = select(request, opened.build.plan);
  if (!selected.ok) return await refuse(session, selected.problem);
  const outside = outsideSeason(request, opened.build);
  if (outside !== undefined) return await refuse(session, outside);
  const selection =
    request.shard === undefined ? selected.selection : shardOf(selected.selection, request.shard, opened.build.plan);
  const { status } = await buildOnce(request, { compiled: opened, selection }, session);
  if (request.asOf === undefined && request.quiet !== true) await tellDay(opened.build.plan, session);
  if (request.near !== undefined) {
    const { tellNoneKept } = await import('../open-built.ts');
    await tellNoneKept(request.near, opened.build.plan, standing.value, session);
  }
  return status;
}

type StandingOf = { readonly ok: true; readonly value: Standing } | { readonly ok: false; readonly status: ExitStatus };

async function standingOf({ asOf, near }: BuildRequest, session: Session): Promise<StandingOf> {
  if (near === undefined) return { ok: true, value: plannedOn(asOf) };
  const { openSheets } = await import('../open-built.ts');
  const opened = await openSheets(near, session);
  return opened.ok ? { ok: true, value: { ...plannedOn(asOf), ...opened.sheets } } : opened;
}

/** Options that don't go together, in words. */
function clashOf({ out, table, format, paper, shard, watch }: BuildRequest): string | undefined {
  if (out !== undefined && (table !== undefined || !['text', 'csv'].includes(format))) {
    return '--out writes every artefact, or with --format csv every table: leave --table and other formats out';
  }
  if (watch === true && format !== 'text' && out === undefined) {
    return `--watch tells what a save changed in words: leave --format ${format} out, or have --out write everything`;
  }
  if (table !== undefined && (format === 'html' || format === 'ics')) return `--format ${format} has no tables`;
  if (shard !== undefined && format !== 'csv') return '--shard is for --format csv, whose parts make a whole';
  if (paper !== undefined && format !== 'html' && (out === undefined || format === 'csv')) {
    return '--paper is for pages: --out and --format html';
  }
  return undefined;
}
