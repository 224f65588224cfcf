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
import { select } from '../select.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { tellSummary } from '../tell-findings.ts';
import { createFindings, walk } from '../walk.ts';
import type { Findings, Walk } from '../walk.ts';

export async function build(request: BuildRequest, session: Session): Promise<ExitStatus> {
  const opened = await openPlan(request.plan, session);
  if (!opened.ok) return opened.status;
  const selected = select(request, opened.build.plan);
  if (!selected.ok) return await refuse(session, selected.problem);
  const findings = createFindings();
  findings.add(opened.diagnostics);
  const walked = walk(opened.build, selected.selection, findings.add);
  const job: Job = { request, walked, selection: selected.selection, ofPlan: opened.diagnostics, session };
  await session.out.writeAll(await rendered(job));
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

/** What goes to standard output, piece by piece; walking it compiles the athletes and tells their findings. */
async function rendered(job: Job): Promise<Iterable<string>> {
  const { table, format } = job.request;
  switch (format) {
    case 'csv':
      return await csvTable(job, table ?? 'weeks');
    case 'json':
      return await (table === undefined ? jsonBuild(job) : jsonTable(job, table));
    case 'text':
      return await pages(job);
  }
}

async function csvTable({ walked, selection }: Job, table: TableName): Promise<Iterable<string>> {
  const { renderCsv } = await import('../../render/csv/csv.ts');
  return renderCsv(drawTable(TABLES[table], walked.build, selection));
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
  const single = request.athletes.length === 1 && request.squads.length === 0;
  const page = { single, ...(request.table !== undefined && { table: request.table }) };
  return lined(textPages(page, walked.build, selection, session.outTerminal));
}
