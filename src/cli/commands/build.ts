// `footfall build [plan]`: compiles a plan and prints it as pages, a table or JSON, then tells on standard error what was
// found. Athletes are compiled, printed and forgotten one by one.

import type { Diagnostic } from '../../diagnostics/types.ts';
import { drawTable } from '../../report/athlete-table.ts';
import type { Selection } from '../../report/selection.ts';
import type { TableName } from '../../report/table-names.ts';
import { TABLES } from '../../report/tables.ts';
import { DONE, PLAN_HAS_ERRORS } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openPlan } from '../open-plan.ts';
import type { BuildRequest } from '../requests.ts';
import { select, shardOf } from '../select.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { tellSummary } from '../tell-findings.ts';
import { createFindings, walk } from '../walk.ts';
import type { Findings, Walk } from '../walk.ts';

export async function build(request: BuildRequest, session: Session): Promise<ExitStatus> {
  const clash = clashOf(request);
  if (clash !== undefined) return await refuse(session, clash);
  const opened = await openPlan(request.plan, session, request.asOf);
  if (!opened.ok) return opened.status;
  const selected = select(request, opened.build.plan);
  if (!selected.ok) return await refuse(session, selected.problem);
  const selection =
    request.shard === undefined ? selected.selection : shardOf(selected.selection, request.shard, opened.build.plan);
  const findings = createFindings();
  findings.add(opened.diagnostics);
  const walked = walk(opened.build, selection, findings.add);
  const job: Job = { request, walked, selection, ofPlan: opened.diagnostics, session };
  if (request.out === undefined) await session.out.writeAll(await rendered(job));
  else await writeFolder(request.out, job);
  findings.add(walked.planFindings());
  await tellSummary(findings, opened.plan, request.quiet === true, session);
  return statusOf(request, findings);
}

/** Everything a way of printing may need. */
interface Job {
  readonly request: BuildRequest;
  readonly walked: Walk;
  readonly selection: Selection;
  /** What was found before any athlete was compiled. */
  readonly ofPlan: readonly Diagnostic[];
  readonly session: Session;
}

function statusOf({ strict = false }: BuildRequest, findings: Findings): ExitStatus {
  const bad = findings.count('error') > 0 || (strict && findings.count('warning') > 0);
  return bad ? PLAN_HAS_ERRORS : DONE;
}

/** Options that don't go together, in words. */
function clashOf({ out, table, format, paper, shard }: BuildRequest): string | undefined {
  if (out !== undefined && (table !== undefined || format !== 'text')) {
    return '--out writes every artefact: leave --table and --format out';
  }
  if (table !== undefined && (format === 'html' || format === 'ics')) return `--format ${format} has no tables`;
  if (shard !== undefined && format !== 'csv') return '--shard is for --format csv, whose parts make a whole';
  if (paper !== undefined && out === undefined && format !== 'html') return '--paper is for --out and --format html';
  return undefined;
}

/** Everything into a folder. */
async function writeFolder(path: string, { request, walked, selection, ofPlan }: Job): Promise<void> {
  const [{ writeOutputFolder }, { errorProgress }, { writeBuild }] = await Promise.all([
    import('../../host/output-folder.ts'),
    import('../../host/progress.ts'),
    import('../write-build.ts'),
  ]);
  const progress = errorProgress('athletes');
  const { paper = 'a4' } = request;
  const findings = (): readonly Diagnostic[] => [...ofPlan, ...walked.planFindings()];
  try {
    await writeOutputFolder(path, async (folder) => {
      await writeBuild(folder, { build: walked.build, selection, paper, findings, progress });
    });
  } finally {
    progress.end();
  }
}

/** What goes to standard output, piece by piece; walking it compiles the athletes and tells their findings. */
async function rendered(job: Job): Promise<Iterable<string>> {
  const { table, format } = job.request;
  switch (format) {
    case 'csv':
      return await csvTable(job, table ?? 'weeks');
    case 'json':
      return await (table === undefined ? jsonBuild(job) : jsonTable(job, table));
    case 'html':
      return await htmlPage(job);
    case 'ics':
      return await calendarFile(job);
    case 'text':
      return await pages(job);
  }
}

const isSingle = ({ athletes, squads }: BuildRequest): boolean => athletes.length === 1 && squads.length === 0;

async function htmlPage({ request, walked, selection }: Job): Promise<Iterable<string>> {
  const { htmlPage: render } = await import('../one-page.ts');
  return render(walked.build, selection, isSingle(request), request.paper ?? 'a4');
}

async function calendarFile({ request, walked, selection }: Job): Promise<Iterable<string>> {
  const { calendarFile: render } = await import('../one-page.ts');
  return render(walked.build, selection, isSingle(request));
}

async function csvTable({ request, walked, selection }: Job, table: TableName): Promise<Iterable<string>> {
  const { renderCsv } = await import('../../render/csv/csv.ts');
  return renderCsv(drawTable(TABLES[table], walked.build, selection), (request.shard?.part ?? 1) === 1);
}

async function jsonTable({ walked, selection }: Job, table: TableName): Promise<Iterable<string>> {
  const { renderJsonTable } = await import('../../render/json/json-table.ts');
  return renderJsonTable(drawTable(TABLES[table], walked.build, selection));
}

async function jsonBuild({ walked, selection, ofPlan }: Job): Promise<Iterable<string>> {
  const { renderBuild } = await import('../../render/json/build.ts');
  const { createDocument } = await import('../../report/build-document.ts');
  const document = createDocument(walked.build, selection);
  return renderBuild({
    head: document.head,
    athletes: mapped(walked.build.athletes, document.athlete),
    findings: mapped(inTurn(ofPlan, walked.planFindings), document.finding),
  });
}

function* mapped<T, R>(items: Iterable<T>, to: (item: T) => R): Iterable<R> {
  for (const item of items) yield to(item);
}

/** The second list is made when the first is through. */
function* inTurn<T>(first: Iterable<T>, second: () => Iterable<T>): Iterable<T> {
  yield* first;
  yield* second();
}

async function pages({ request, walked, selection, session }: Job): Promise<Iterable<string>> {
  const { textPages } = await import('../text-pages.ts');
  const page = { single: isSingle(request), ...(request.table !== undefined && { table: request.table }) };
  return lined(textPages(page, walked.build, selection, session.outTerminal));
}
