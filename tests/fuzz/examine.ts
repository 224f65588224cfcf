// One plan in memory through everything that `footfall check`, `build` of an athlete, `why` of a week and `format` do, and
// what must hold whatever it is: nothing thrown, every diagnostic from the catalogue and inside of its file, all forms
// written, and not for long.

import type { BuiltAthlete } from '../../src/build/types.ts';
import { compileAt } from '../../src/cli/open-plan.ts';
import { findEntry } from '../../src/diagnostics/catalogue.ts';
import type { Diagnostic } from '../../src/diagnostics/types.ts';
import type { Plan } from '../../src/plan/types.ts';
import { tidyYaml } from '../../src/read/tidy-yaml.ts';
import { diagnosticsJson } from '../../src/render/diagnostics/diagnostics-json.ts';
import { diagnosticsSarif } from '../../src/render/diagnostics/diagnostics-sarif.ts';
import { diagnosticsText } from '../../src/render/diagnostics/diagnostics-text.ts';
import { renderWhyJson } from '../../src/render/json/why.ts';
import { createPalette } from '../../src/render/palette.ts';
import { renderWhy } from '../../src/render/terminal/why.ts';
import { diagnosticsView } from '../../src/report/diagnostics-view.ts';
import { reportWhy } from '../../src/report/why.ts';
import { sourceFile } from '../../src/source/source-file.ts';
import type { SourceFile } from '../../src/source/types.ts';
import { memoryFiles } from '../unit/read/memory-files.ts';
import type { Files } from '../unit/read/memory-files.ts';

/** 1 February 2027. */
const TODAY = 20_850;
export const MOST_MILLISECONDS = 2000;

export interface Examined {
  /** The codes reported, each once. */
  readonly codes: readonly string[];
}

/** Throws with the reason where something doesn't hold. The plan's folder is `/plan`. */
export function examine(files: Files): Examined {
  const started = process.cpuUsage();
  const { plan, build, diagnostics } = compileAt('/plan', { files: memoryFiles(files), today: TODAY });
  const athlete = first(build?.athletes ?? []);
  const all = [...diagnostics, ...(athlete?.diagnostics ?? [])];
  checkPlaces(all, plan.files);
  const view = diagnosticsView(all, plan.files, { folder: plan.folder });
  const text = diagnosticsText(view, createPalette(0));
  checkControls(text, 'the text');
  JSON.parse(diagnosticsJson(view));
  JSON.parse(diagnosticsSarif(view, '1.0.0'));
  checkTidy(plan.files);
  if (build !== undefined && athlete !== undefined) explainWeek(build.plan, athlete);
  const { user, system } = process.cpuUsage(started);
  const milliseconds = (user + system) / 1000;
  if (milliseconds > MOST_MILLISECONDS) throw new Error(`it took ${milliseconds.toFixed(0)} ms`);
  return { codes: [...new Set(all.map(({ code }) => code))].toSorted() };
}

/** One is enough: the others are compiled by the same code. */
function first(athletes: Iterable<BuiltAthlete>): BuiltAthlete | undefined {
  for (const athlete of athletes) return athlete;
  return undefined;
}

/** `footfall why` of a week in the middle of the season. */
function explainWeek(plan: Plan, athlete: BuiltAthlete): void {
  const week = athlete.weeks[Math.floor(athlete.weeks.length / 2)];
  if (week === undefined) return;
  const told = reportWhy(plan, athlete, week, week.starts);
  JSON.parse(renderWhyJson(told));
  for (const piece of renderWhy(told, { palette: createPalette(0), width: 80 })) checkControls(piece, 'why');
}

/** A terminal takes these for commands. */
function checkControls(text: string, where: string): void {
  if (/[\u0000-\u0008\u000B-\u001F\u007F-\u009F]/u.test(text)) throw new Error(`a control character in ${where}`);
}

function checkPlaces(diagnostics: readonly Diagnostic[], files: readonly SourceFile[]): void {
  const lengths = new Map(files.map(({ path, text }) => [path, text.length]));
  for (const { code, span, related } of diagnostics) {
    if (findEntry(code) === undefined) throw new Error(`${code} is no code`);
    for (const place of [...(span === undefined ? [] : [span]), ...related.map((other) => other.span)]) {
      const length = lengths.get(place.file);
      const isInside = length !== undefined && place.start >= 0 && place.start <= place.end && place.end <= length;
      if (!isInside) throw new Error(`${code} at ${place.file} ${String(place.start)}-${String(place.end)} is nowhere`);
    }
  }
}

/** A tidy file is tidy. */
function checkTidy(files: readonly SourceFile[]): void {
  for (const file of files.filter(({ path }) => path.endsWith('.yaml'))) {
    const { value } = tidyYaml(file);
    if (value === undefined) continue;
    if (tidyYaml(sourceFile(file.path, value)).value !== value)
      throw new Error(`${file.path} formats to something else twice`);
  }
}
