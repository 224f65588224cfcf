// A plan from its path to a build, for every command that takes one. What is wrong with it is told, and the status that
// follows is given instead of a build.

import { compile } from '../compile.ts';
import type { CompiledPlan, CompileOptions } from '../compile.ts';
import { hasErrors } from '../diagnostics/collector.ts';
import { limitKinds } from '../diagnostics/limit-kinds.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import { readDocuments } from '../language/read-documents.ts';
import { bornLeftOut } from '../plan/born-left-out.ts';
import { noFirstDrop } from '../plan/no-first-drop.ts';
import { returningCompetes } from '../plan/returning-competes.ts';
import type { Parse } from '../read/known-texts.ts';
import type { Documents } from '../read/types.ts';
import type { Day } from '../util/days.ts';
import { PLAN_HAS_ERRORS, WRONG_COMMAND } from './exit-status.ts';
import type { ExitStatus } from './exit-status.ts';
import type { Session } from './session.ts';
import { folderOf, tellFindings } from './tell-findings.ts';
import type { PlanFiles } from './tell-findings.ts';

export interface Compiled {
  /** Absent where the plan has errors. */
  readonly build?: CompiledPlan;
  readonly plan: PlanFiles;
  /** What was found before any athlete is compiled. */
  readonly diagnostics: readonly Diagnostic[];
}

/** The day it is planned on, and the sheets that are out. */
export type Standing = Pick<CompileOptions, 'asOf' | 'published'>;

/** Reads and compiles the plan at a path; `parse` is for who reads the same files again and again. */
export function compileAt(
  path: string,
  session: Pick<Session, 'files' | 'today'>,
  standing: Standing = {},
  parse?: Parse,
): Compiled {
  const documents = readDocuments(path, session.files, parse);
  const compiled = compileDocuments(documents.value, {
    // Whoever plans on a day that is still to come has a record up to it.
    today: Math.max(session.today, standing.asOf ?? session.today),
    ...standing,
  });
  const diagnostics = limitKinds([...documents.diagnostics, ...compiled.diagnostics]);
  const build = hasErrors(diagnostics) ? undefined : compiled.value;
  const plan = { files: documents.value.files, folder: folderOf(path, session) };
  if (build === undefined) return { plan, diagnostics };
  return {
    plan,
    diagnostics: [
      ...diagnostics,
      ...bornLeftOut(build.plan),
      ...noFirstDrop(build.plan),
      ...returningCompetes(build.plan),
    ],
    build,
  };
}

/** Without an entry file there is nothing to compile, and the reading has said why. */
function compileDocuments(documents: Documents, options: CompileOptions): Staged<CompiledPlan | undefined> {
  return documents.documents.length === 0 ? { value: undefined, diagnostics: [] } : compile(documents, options);
}

export type Opened = ({ readonly ok: true } & Required<Compiled>) | { readonly ok: false; readonly status: ExitStatus };

/** As `compileAt`, with the errors of a plan told on standard error. */
export async function openPlan(path: string, session: Session, standing: Standing = {}): Promise<Opened> {
  const { build, plan, diagnostics } = compileAt(path, session, standing);
  if (build !== undefined) return { ok: true, build, plan, diagnostics };
  await tellFindings(diagnostics, plan, session);
  return { ok: false, status: failureStatus(diagnostics) };
}

/** The standing in which a day was named, or not. */
export const plannedOn = (asOf: Day | undefined): Standing => (asOf === undefined ? {} : { asOf });

/** Without a place the plan itself couldn't be read: the path on the command line is wrong. */
export function failureStatus(diagnostics: readonly Diagnostic[]): ExitStatus {
  const unread = diagnostics.some(({ severity, span }) => severity === 'error' && span === undefined);
  return unread ? WRONG_COMMAND : PLAN_HAS_ERRORS;
}
