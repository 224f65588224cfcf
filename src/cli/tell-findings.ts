// What was found about a plan, told on standard error. A plan that can't be built gets everything at full length; after a
// build there are the errors, a line for each kind of warning, and the command that shows the rest.

import type { Diagnostic } from '../diagnostics/types.ts';
import { diagnosticsText } from '../render/diagnostics/diagnostics-text.ts';
import { createPalette } from '../render/palette.ts';
import { diagnosticsView, summaryOf } from '../report/diagnostics-view.ts';
import type { SourceFile } from '../source/types.ts';
import type { Session } from './session.ts';
import type { Findings } from './walk.ts';

/** The plan they are about: its files, and its folder as it was named. */
export interface PlanFiles {
  readonly files: readonly SourceFile[];
  readonly folder: string;
}

/** The folder of the plan at a path, as the path names it. */
export function folderOf(path: string, { files }: Pick<Session, 'files'>): string {
  const trimmed = path.replace(/(?<=.)\/+$/u, '');
  if (files.stat(trimmed).kind === 'folder') return trimmed;
  const slash = trimmed.lastIndexOf('/');
  return slash < 0 ? '.' : trimmed.slice(0, Math.max(1, slash));
}

/** All of them at full length. */
export async function tellFindings(
  diagnostics: readonly Diagnostic[],
  plan: PlanFiles,
  session: Session,
): Promise<void> {
  const view = diagnosticsView(diagnostics, plan.files, { folder: plan.folder });
  await session.err.write(diagnosticsText(view, createPalette(session.errTerminal.colours)));
}

/** After a build: the errors at full length, the warnings by kind, the counts. Nothing where nothing was found. */
export async function tellSummary(
  findings: Findings,
  plan: PlanFiles,
  quiet: boolean,
  session: Session,
): Promise<void> {
  const errors = findings.kept('error');
  if (errors.length > 0) await tellFindings(errors, plan, session);
  if (quiet) return;
  const counts = { error: 0, warning: findings.count('warning'), notice: findings.count('notice') };
  if (counts.warning + counts.notice === 0) return;
  const kinds = findings.kinds('warning').map((line) => `  ${line}\n`);
  await session.err.write(`${summaryOf(counts)}; footfall check shows them whole\n${kinds.join('')}`);
}
