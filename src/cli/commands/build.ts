// `footfall build [plan]`: compiles a plan and prints it as pages, a table or JSON, then tells on standard error what was
// found. Athletes are compiled, printed and forgotten one by one.

import type { Build } from '../../build/types.ts';
import { drawTable } from '../../report/athlete-table.ts';
import type { Selection } from '../../report/selection.ts';
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
import type { Findings } from '../walk.ts';

export async function build(request: BuildRequest, session: Session): Promise<ExitStatus> {
  const opened = await openPlan(request.plan, session);
  if (!opened.ok) return opened.status;
  const selected = select(request, opened.build.plan);
  if (!selected.ok) return await refuse(session, selected.problem);
  const findings = createFindings(opened.diagnostics);
  await session.out.writeAll(await rendered(request, opened.build, selected.selection, findings, session));
  await tellSummary(findings, opened.plan, request.quiet, session);
  return statusOf(request, findings);
}

function statusOf({ strict }: Pick<BuildRequest, 'strict'>, findings: Findings): ExitStatus {
  const bad = findings.count('error') > 0 || (strict && findings.count('warning') > 0);
  return bad ? PLAN_HAS_ERRORS : DONE;
}

/** What goes to standard output, piece by piece; walking it compiles the athletes and fills the findings. */
async function rendered(
  request: BuildRequest,
  compiled: Build,
  selection: Selection,
  findings: Findings,
  session: Session,
): Promise<Iterable<string>> {
  const passing = passAthletes(compiled, selection, findings);
  switch (request.format) {
    case 'csv':
      return await csvTable(request, passing, selection);
    case 'json':
      return request.table === undefined
        ? await jsonBuild(passing, selection, findings)
        : await jsonTable(request, passing, selection);
    case 'text':
      return await pages(request, passing, selection, session);
  }
}

/** The build with only the athletes who are asked for, whose findings are noted as they pass. */
function passAthletes(compiled: Build, selection: Selection, findings: Findings): Build {
  return {
    plan: compiled.plan,
    weeks: compiled.weeks,
    get mark() {
      return compiled.mark;
    },
    athletes: { [Symbol.iterator]: () => walk(compiled, selection, findings)[Symbol.iterator]() },
  };
}

async function csvTable(
  { table = 'weeks' }: BuildRequest,
  compiled: Build,
  selection: Selection,
): Promise<Iterable<string>> {
  const { renderCsv } = await import('../../render/csv/csv.ts');
  return renderCsv(drawTable(TABLES[table], compiled, selection));
}

async function jsonTable(
  { table = 'weeks' }: BuildRequest,
  compiled: Build,
  selection: Selection,
): Promise<Iterable<string>> {
  const { renderJsonTable } = await import('../../render/json/json-table.ts');
  return renderJsonTable(drawTable(TABLES[table], compiled, selection));
}

async function jsonBuild(compiled: Build, selection: Selection, findings: Findings): Promise<Iterable<string>> {
  const { renderBuild } = await import('../../render/json/build.ts');
  const { createDocument } = await import('../../report/build-document.ts');
  const document = createDocument(compiled, selection);
  return renderBuild({
    head: document.head,
    athletes: mapped(compiled.athletes, document.athlete),
    findings: mapped(findings.ofPlan, document.finding),
  });
}

function* mapped<T, R>(items: Iterable<T>, to: (item: T) => R): Iterable<R> {
  for (const item of items) yield to(item);
}

async function pages(
  request: BuildRequest,
  compiled: Build,
  selection: Selection,
  session: Session,
): Promise<Iterable<string>> {
  const { textPages } = await import('../text-pages.ts');
  const single = request.athletes.length === 1 && request.squads.length === 0;
  const page = { single, ...(request.table !== undefined && { table: request.table }) };
  return lined(textPages(page, compiled, selection, session.outTerminal));
}
