// `footfall format [plan]`: the YAML files of a plan in one tidy shape. A folder means all of them, a file that file
// alone, `-` standard input to standard output. Files with mistakes are told and nothing is written.

import { hasErrors } from '../../diagnostics/collector.ts';
import type { Diagnostic } from '../../diagnostics/types.ts';
import { readStandardInput } from '../../host/input.ts';
import { replaceFile } from '../../host/replace-file.ts';
import { decodeText } from '../../read/load-file.ts';
import { readPlan } from '../../read/read-plan.ts';
import { tidyYaml } from '../../read/tidy-yaml.ts';
import type { SourceFile } from '../../source/types.ts';
import { DONE, PLAN_HAS_ERRORS } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import type { FormatRequest } from '../file-requests.ts';
import { failureStatus } from '../open-plan.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { folderOf, tellFindings } from '../tell-findings.ts';

const STANDARD_INPUT = '-';
const YAML = /\.ya?ml$/iu;

/** A file of another kind: a table or a page of notes is YAML to a parser, and wouldn't be itself any more. */
const isOther = (plan: string, { files }: Session): boolean =>
  plan !== STANDARD_INPUT && files.stat(plan).kind === 'file' && !YAML.test(plan);

/**
 * Names the files that changed, or with `check` would; then the status says that there are some. Status 2 for a file that
 * isn't YAML.
 */
export async function format(request: FormatRequest, session: Session): Promise<ExitStatus> {
  const { plan, check = false } = request;
  if (isOther(plan, session)) return await refuse(session, `${plan} is no YAML file by its name, and is left as it is`);
  const { files, folder, diagnostics } = plan === STANDARD_INPUT ? typed() : filesAt(plan, session);
  const tidied = files.map((file) => ({ file, tidy: tidyYaml(file) }));
  const found = [...diagnostics, ...tidied.flatMap(({ tidy }) => tidy.diagnostics)];
  if (hasErrors(found)) {
    await tellFindings(found, { files, folder }, session);
    return failureStatus(found);
  }
  if (plan === STANDARD_INPUT && !check) {
    for (const { tidy } of tidied) await session.out.write(tidy.value ?? '');
    return DONE;
  }
  const changed = tidied.filter(({ file, tidy }) => tidy.value !== undefined && tidy.value !== file.text);
  const named = changed.map(({ file, tidy }) => ({ path: pathOf(folder, file), text: tidy.value ?? '' }));
  if (!check) for (const { path, text } of named) replaceFile(path, text);
  await session.out.writeAll(lined(named.map(({ path }) => path)));
  return check && named.length > 0 ? PLAN_HAS_ERRORS : DONE;
}

interface PlanTexts {
  readonly files: readonly SourceFile[];
  readonly folder: string;
  readonly diagnostics: readonly Diagnostic[];
}

function typed(): PlanTexts {
  const loaded = decodeText('standard input', readStandardInput());
  return { files: [loaded.file], folder: '.', diagnostics: loaded.diagnostics };
}

/** The YAML files of a folder's plan, or the one file; of the mistakes those that aren't found by tidying. */
function filesAt(plan: string, session: Session): PlanTexts {
  const { value, diagnostics } = readPlan(plan, session.files);
  const isWhole = session.files.stat(plan).kind === 'folder';
  const yaml = value.files.filter(({ path }) => YAML.test(path));
  const files = isWhole ? yaml : value.files.slice(0, 1);
  const paths = new Set(files.map(({ path }) => path));
  const own = diagnostics.filter(({ span }) => span === undefined || paths.has(span.file));
  return { files, folder: folderOf(plan, session), diagnostics: own.filter(({ code }) => !isOfYaml(code)) };
}

/** Those that `tidyYaml` gives again. */
const isOfYaml = (code: string): boolean => code.startsWith('yaml/');

const pathOf = (folder: string, { path }: SourceFile): string => (folder === '.' ? path : `${folder}/${path}`);
