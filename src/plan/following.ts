// What is found wrong in a plan only because something else couldn't be read: it isn't told, as it is gone when that is
// mended. Called by load-plan.

import type { Documents, Mistake } from '../language/decode.ts';
import type { Code } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { lineIndexOf } from '../source/source-file.ts';
import type { Span } from '../source/types.ts';

/** The problems that stand whatever the mistakes in the files hide. */
export function withoutFollowing(
  { files, mistakes = [], isIncomplete }: Documents,
  diagnostics: readonly Diagnostic[],
): readonly Diagnostic[] {
  if (mistakes.length === 0 && isIncomplete !== true) return diagnostics;
  const byPath = new Map(files.map((file) => [file.path, file]));
  const lineOf = ({ file, start }: Span): string => {
    const source = byPath.get(file);
    return `${file}:${source === undefined ? '' : String(lineIndexOf(source, start))}`;
  };
  const lines = new Set(mistakes.map(({ span }) => lineOf(span)));
  const unknown = unknownFrom(mistakes, isIncomplete === true);
  return diagnostics.filter(
    ({ code, span }) =>
      !unknown.has(code) &&
      (span === undefined || !(lines.has(lineOf(span)) || mistakes.some((mistake) => hides(mistake, code, span)))),
  );
}

function hides({ around, losesKeys }: Mistake, code: Code, { file, start }: Span): boolean {
  if (!losesKeys && !MISSING.has(code)) return false;
  return file === around.file && start >= around.start && start < around.end;
}

/** Codes that can't be trusted anywhere, as what they miss may be among what wasn't read. */
function unknownFrom(mistakes: readonly Mistake[], isIncomplete: boolean): ReadonlySet<Code> {
  const sections = mistakes.filter(({ losesKeys }) => losesKeys).map(({ section }) => section);
  const mayDefine = isIncomplete || sections.some((section) => !LISTS.has(section));
  const mayFrame = isIncomplete || sections.some((section) => section === 'competitions' || !LISTS.has(section));
  return new Set([...LACKING, ...(mayDefine ? NAMES : []), ...(mayFrame ? OUTSIDE : [])]);
}

/** Sections whose items nothing else of a plan refers to. */
const LISTS: ReadonlySet<string> = new Set([
  'footfall',
  'slots',
  'competitions',
  'closures',
  'practice',
  'tests',
  'rules',
  'pins',
  'always',
  'waivers',
  'use',
  'record',
]);

const MISSING: ReadonlySet<Code> = new Set<Code>([
  'language/missing-key',
  'language/because-missing',
  'language/empty-value',
]);

/** What says that the plan lacks something. */
const LACKING: readonly Code[] = [
  'language/version-missing',
  'plan/no-season',
  'plan/no-end',
  'plan/no-slots',
  'plan/no-athletes',
  'plan/no-level',
  'plan/level-left-out',
  'plan/now-left-out',
  'plan/now-needed',
  'plan/maxima-of-squad',
];

/** What looks up a name or what it stands for. */
const NAMES: readonly Code[] = [
  'plan/unknown-name',
  'plan/no-smallest-plate',
  'plan/not-of-exercise',
  'plan/depths-differ',
];

/** What is held against the days of the season. */
const OUTSIDE: readonly Code[] = [
  'plan/competition-outside',
  'plan/outside-season',
  'plan/impossible-age',
  'plan/max-after-season',
  'plan/too-young',
  'plan/season-too-long',
];
