// `footfall build [plan]`: compiles a plan and prints it or writes it into a folder, once or with every save.

import { buildOnce } from '../build-once.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openPlan } from '../open-plan.ts';
import type { BuildRequest } from '../requests.ts';
import { select, shardOf } from '../select.ts';
import { refuse } from '../session.ts';
import type { Session } from '../session.ts';

export async function build(request: BuildRequest, session: Session): Promise<ExitStatus> {
  const clash = clashOf(request);
  if (clash !== undefined) return await refuse(session, clash);
  if (request.watch === true) {
    const { watchBuild } = await import('../watch-build.ts');
    return await watchBuild(request, session);
  }
  const opened = await openPlan(request.plan, session, request.asOf);
  if (!opened.ok) return opened.status;
  const selected = select(request, opened.build.plan);
  if (!selected.ok) return await refuse(session, selected.problem);
  const selection =
    request.shard === undefined ? selected.selection : shardOf(selected.selection, request.shard, opened.build.plan);
  const { status } = await buildOnce(request, { compiled: opened, selection }, session);
  return status;
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
