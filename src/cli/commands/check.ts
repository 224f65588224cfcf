// `footfall check [plan]`: reads, compiles and audits a plan and prints what was found, as text, JSON or SARIF. The
// findings are the result here, so they go to standard output.

import type { BuiltAthlete } from '../../build/types.ts';
import type { CompileOptions } from '../../compile.ts';
import { codes, findEntry } from '../../diagnostics/catalogue.ts';
import type { Entry } from '../../diagnostics/entry.ts';
import type { Diagnostic } from '../../diagnostics/types.ts';
import type { Athlete } from '../../plan/types.ts';
import { diagnosticsJson } from '../../render/diagnostics/diagnostics-json.ts';
import { diagnosticsSarif } from '../../render/diagnostics/diagnostics-sarif.ts';
import { diagnosticsText } from '../../render/diagnostics/diagnostics-text.ts';
import { watchWishes } from '../../idle-wishes.ts';
import { createPalette } from '../../render/palette.ts';
import type { Palette } from '../../render/palette.ts';
import { hanging } from '../../render/terminal/layout.ts';
import { diagnosticsView } from '../../report/diagnostics-view.ts';
import type { DiagnosticsView } from '../../report/diagnostics-view.ts';
import { EVERYTHING } from '../../report/selection.ts';
import type { SeasonMemory } from '../../reuse/season-memory.ts';
import { DONE, PLAN_HAS_ERRORS } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { compileAt, failureStatus, plannedOn } from '../open-plan.ts';
import type { Compiled } from '../open-plan.ts';
import type { CheckRequest } from '../requests.ts';
import { unknown } from '../select.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { VERSION } from '../version.ts';
import { walkAthletes } from '../walk.ts';

/**
 * Status 0; 1 where errors were found, or warnings under `--strict`; 2 where the plan can't be read, or a code or an
 * option is refused.
 */
export async function check(request: CheckRequest, session: Session): Promise<ExitStatus> {
  if (request.explain !== undefined) return await explain(request.explain, session);
  if (request.watch === true) return await watchCheck(request, session);
  return await checkOnce(request, compileAt(request.plan, session, plannedOn(request.asOf)), session);
}

async function watchCheck(request: CheckRequest, session: Session): Promise<ExitStatus> {
  if (request.format !== 'text')
    return await refuse(session, '--watch tells what it finds as text: leave --format out');
  const [{ watchPlan }, { createSeasonMemory }] = await Promise.all([
    import('../watch-plan.ts'),
    import('../../reuse/season-memory.ts'),
  ]);
  const memory = createSeasonMemory<void>();
  return await watchPlan({ ...request, standing: plannedOn(request.asOf) }, session, async (compiled) => {
    const status = await checkOnce(request, compiled, session, memory);
    if (status === DONE) await session.err.write('footfall: no errors\n');
    return status;
  });
}

async function checkOnce(
  request: CheckRequest,
  compiled: Compiled,
  session: Session,
  memory?: SeasonMemory<void>,
): Promise<ExitStatus> {
  const diagnostics = allDiagnostics(compiled, request.asOf === undefined ? {} : { asOf: request.asOf }, memory);
  const shown = request.quiet === true ? diagnostics.filter(({ severity }) => severity === 'error') : diagnostics;
  const view = diagnosticsView(shown, compiled.plan.files, { folder: compiled.plan.folder });
  await session.out.write(rendered(request, view, createPalette(session.outTerminal.colours)));
  return statusOf(request, compiled, diagnostics);
}

/** Compiles everybody, but whose season is kept from the last save; of the athletes only what was found is held. */
function allDiagnostics(
  { build, diagnostics }: Compiled,
  options: CompileOptions,
  memory: SeasonMemory<void> | undefined,
): readonly Diagnostic[] {
  if (build === undefined) return diagnostics;
  const all = [...diagnostics];
  const add = (found: readonly Diagnostic[]): void => {
    for (const diagnostic of found) all.push(diagnostic);
  };
  const wishes = watchWishes(build, options);
  const compiled = (athlete: Athlete): BuiltAthlete => {
    const built = build.athlete(athlete);
    wishes.pass(built);
    return built;
  };
  const seasonOf = memory?.open(build, wishes.pass).season ?? compiled;
  const walked = walkAthletes<Pick<BuiltAthlete, 'diagnostics' | 'freed'>>(
    build.plan,
    EVERYTHING,
    seasonOf,
    (season) => {
      add(season.diagnostics);
    },
  );
  walked.toEnd();
  add(walked.planFindings());
  add(wishes.idle(all));
  return all;
}

function rendered({ format }: CheckRequest, view: DiagnosticsView, palette: Palette): string {
  switch (format) {
    case 'json':
      return diagnosticsJson(view);
    case 'sarif':
      return diagnosticsSarif(view, VERSION);
    case 'text':
      return diagnosticsText(view, palette);
  }
}

function statusOf(
  { strict = false }: CheckRequest,
  compiled: Compiled,
  diagnostics: readonly Diagnostic[],
): ExitStatus {
  if (compiled.build === undefined) return failureStatus(compiled.diagnostics);
  const bad = diagnostics.some(({ severity }) => severity === 'error' || (strict && severity === 'warning'));
  return bad ? PLAN_HAS_ERRORS : DONE;
}

async function explain(code: string, session: Session): Promise<ExitStatus> {
  const entry = findEntry(code);
  if (entry === undefined) return await refuse(session, unknown([code], 'code', new Set(codes)) ?? code);
  await session.out.writeAll(lined(explanation(code, entry, session)));
  return DONE;
}

function explanation(code: string, entry: Entry, { outTerminal }: Session): readonly string[] {
  const palette = createPalette(outTerminal.colours);
  const example = (title: string, text: string): readonly string[] =>
    text === ''
      ? []
      : [
          '',
          palette.quiet(title),
          ...text
            .trimEnd()
            .split('\n')
            .map((line) => `  ${line}`.trimEnd()),
        ];
  return [
    `${palette[entry.severity](entry.severity)} ${palette.strong(entry.summary)} ${palette.quiet(`[${code}]`)}`,
    ...hanging('', entry.explanation, outTerminal.width),
    ...example('wrong', entry.bad),
    ...example('right', entry.good),
  ];
}
