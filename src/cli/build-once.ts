// A compiled plan printed as pages, a table or JSON, or written into a folder; then what was found is told on standard
// error. Athletes are compiled, printed and forgotten one by one. Called by `build`, and for each save by its `--watch`.

import type { BuiltAthlete } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Filling, OutputFolder } from '../host/output-folder.ts';
import type { Progress } from '../host/progress.ts';
import { drawTable } from '../report/athlete-table.ts';
import type { Selection } from '../report/selection.ts';
import type { TableName } from '../report/table-names.ts';
import { TABLES } from '../report/tables.ts';
import { DONE, PLAN_HAS_ERRORS } from './exit-status.ts';
import type { ExitStatus } from './exit-status.ts';
import type { Compiled } from './open-plan.ts';
import type { BuildRequest } from './requests.ts';
import { lined } from './session.ts';
import type { Session } from './session.ts';
import { tellSummary } from './tell-findings.ts';
import { createFindings, walk } from './walk.ts';
import type { Findings, Walk } from './walk.ts';
import { inTurn, mapped } from '../util/lazily.ts';

/** A plan without errors, and who of it is asked for. */
export interface ToBuild {
  readonly compiled: Required<Compiled>;
  readonly selection: Selection;
}

export interface BuildHooks {
  /** Given each athlete as it is compiled. */
  readonly pass?: (built: BuiltAthlete) => void;
  /** Waited for between athletes; what it throws ends the build with nothing written. */
  readonly breathe?: () => Promise<void>;
}

export interface BuildOutcome {
  readonly status: ExitStatus;
  /** Whether something found is an error. */
  readonly hasErrors: boolean;
}

/**
 * Prints or writes what the request asks for and tells what was found. Status 1 where there are errors, with `--strict`
 * warnings too; throws OutputFailed and ReaderGone.
 */
export async function buildOnce(
  request: BuildRequest,
  { compiled, selection }: ToBuild,
  session: Session,
  hooks: BuildHooks = {},
): Promise<BuildOutcome> {
  const findings = createFindings();
  findings.add(compiled.diagnostics);
  const walked = walk(compiled.build, selection, (built) => {
    findings.add(built.diagnostics);
    hooks.pass?.(built);
  });
  const job = { request, walked, selection, ofPlan: compiled.diagnostics, session, hooks };
  if (request.out === undefined) await session.out.writeAll(await rendered(job));
  else await writeFolder(request.out, job);
  findings.add(walked.planFindings());
  return await concluded(request, findings, compiled, session);
}

/** Tells what was found, and what follows from it. */
export async function concluded(
  request: BuildRequest,
  findings: Findings,
  { plan }: Pick<Compiled, 'plan'>,
  session: Session,
): Promise<BuildOutcome> {
  await tellSummary(findings, plan, request.quiet === true, session);
  return { status: statusOf(request, findings), hasErrors: findings.count('error') > 0 };
}

/** Everything a way of printing may need. */
interface Job {
  readonly request: BuildRequest;
  readonly walked: Walk;
  readonly selection: Selection;
  /** What was found before any athlete was compiled. */
  readonly ofPlan: readonly Diagnostic[];
  readonly session: Session;
  readonly hooks: BuildHooks;
}

function statusOf({ strict = false }: BuildRequest, findings: Findings): ExitStatus {
  const bad = findings.count('error') > 0 || (strict && findings.count('warning') > 0);
  return bad ? PLAN_HAS_ERRORS : DONE;
}

/** Everything, or all tables, into a folder. */
async function writeFolder(path: string, job: Job): Promise<void> {
  const write = job.request.format === 'csv' ? writeTables : writeEverything;
  await fillFolder(path, (folder, progress) => write(folder, job, progress));
}

/** Has a folder written whole or not at all, and tells on a terminal how far it is. Throws OutputFailed. */
export async function fillFolder(
  path: string,
  fill: (folder: OutputFolder, progress: Progress) => Promise<void>,
  filling?: Filling,
): Promise<void> {
  const [{ writeOutputFolder }, { errorProgress }] = await Promise.all([
    import('../host/output-folder.ts'),
    import('../host/progress.ts'),
  ]);
  const progress = errorProgress('athletes');
  try {
    await writeOutputFolder(path, (folder) => fill(folder, progress), filling);
  } finally {
    progress.end();
  }
}

async function writeEverything(
  folder: OutputFolder,
  { request, walked, selection, ofPlan, hooks }: Job,
  progress: Progress,
): Promise<void> {
  const { writeBuild } = await import('./write-build.ts');
  const { paper = 'a4' } = request;
  const findings = (): readonly Diagnostic[] => [...ofPlan, ...walked.planFindings()];
  await writeBuild(folder, { build: walked.build, selection, paper, findings, progress, ...breathing(hooks) });
}

async function writeTables(
  folder: OutputFolder,
  { request, walked, selection, hooks }: Job,
  progress: Progress,
): Promise<void> {
  const { createRows, writeTables: write } = await import('./write-tables.ts');
  const { plan, athletes } = walked.build;
  const rows = mapped(athletes, createRows({ plan, selection }));
  await write(folder, {
    rows,
    athletes: plan.athletes.length,
    headed: isHeaded(request),
    progress,
    ...breathing(hooks),
  });
}

const breathing = ({ breathe }: BuildHooks): Pick<BuildHooks, 'breathe'> => (breathe === undefined ? {} : { breathe });

/** Only the first of several shards says the names of the columns. */
const isHeaded = ({ shard }: BuildRequest): boolean => (shard?.part ?? 1) === 1;

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
  const { htmlPage: render } = await import('./one-page.ts');
  return render(walked.build, selection, isSingle(request), request.paper ?? 'a4');
}

async function calendarFile({ request, walked, selection }: Job): Promise<Iterable<string>> {
  const { calendarFile: render } = await import('./one-page.ts');
  return render(walked.build, selection, isSingle(request));
}

async function csvTable({ request, walked, selection }: Job, table: TableName): Promise<Iterable<string>> {
  const [{ renderCsv }, { tableRows }] = await Promise.all([import('../render/csv/csv.ts'), import('./table-rows.ts')]);
  const { name, columns } = TABLES[table];
  const rowsOf = tableRows(TABLES[table], { plan: walked.build.plan, selection });
  const head = renderCsv({ name, columns, rows: [] }, isHeaded(request));
  return inTurn(head, () => mapped(walked.build.athletes, rowsOf));
}

async function jsonTable({ walked, selection }: Job, table: TableName): Promise<Iterable<string>> {
  const { renderJsonTable } = await import('../render/json/json-table.ts');
  return renderJsonTable(drawTable(TABLES[table], walked.build, selection));
}

async function jsonBuild({ walked, selection, ofPlan }: Job): Promise<Iterable<string>> {
  const { renderBuild } = await import('../render/json/build.ts');
  const { createDocument } = await import('../report/build-document.ts');
  const document = createDocument(walked.build, selection);
  return renderBuild({
    head: document.head,
    athletes: mapped(walked.build.athletes, document.athlete),
    findings: mapped(inTurn(ofPlan, walked.planFindings), document.finding),
  });
}

async function pages({ request, walked, selection, session }: Job): Promise<Iterable<string>> {
  const { textPages } = await import('./text-pages.ts');
  const page = { single: isSingle(request), ...(request.table !== undefined && { table: request.table }) };
  return lined(textPages(page, walked.build, selection, session.outTerminal));
}
