// A plan from its path through everything `footfall check` does with it, without a command line: read, resolved, compiled,
// audited. Every day is the first of February 2027, so that a later record is one of the future.

import { compileAt } from '../../src/cli/open-plan.ts';
import { planFindings } from '../../src/compile.ts';
import type { Diagnostic } from '../../src/diagnostics/types.ts';
import { watchWishes } from '../../src/idle-wishes.ts';
import { fileSystem } from '../../src/host/files.ts';
import type { FileHost } from '../../src/read/file-host.ts';
import type { SourceFile } from '../../src/source/types.ts';
import { dayOf } from '../../src/util/days.ts';
import type { Day } from '../../src/util/days.ts';

export interface Found {
  readonly files: readonly SourceFile[];
  readonly diagnostics: readonly Diagnostic[];
}

const firstOfFebruary = dayOf({ year: 2027, month: 2, day: 1 });

export function diagnose(entry: string, files: FileHost = fileSystem, today: Day = firstOfFebruary): Found {
  const { plan, build, diagnostics } = compileAt(entry, { files, today });
  if (build === undefined) return { files: plan.files, diagnostics };
  const athletes = [...build.athletes];
  const found = athletes.flatMap((athlete) => athlete.diagnostics);
  const told = [...diagnostics, ...found, ...planFindings(build.plan, athletes)];
  return { files: plan.files, diagnostics: [...told, ...watchWishes(build).idle(told)] };
}
