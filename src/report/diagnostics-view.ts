// The diagnostics of a run, arranged for whoever shows them: in order, each with its place in lines and columns and the
// line itself. Text, JSON and SARIF are all written from this one view, so that they can't say different things.

import { findEntry } from '../diagnostics/catalogue.ts';
import { orderDiagnostics } from '../diagnostics/collector.ts';
import type { Param, Severity } from '../diagnostics/entry.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { lineIndexOf, lineStart, lineText } from '../source/source-file.ts';
import type { SourceFile, Span } from '../source/types.ts';
import { isoDate } from '../util/days.ts';
import { createFindingKinds } from './finding-kinds.ts';

/** A place as editors count: lines and UTF-16 units from 0, the end behind the last unit. */
export interface ViewPlace {
  /** As somebody at the command line would name it. */
  readonly file: string;
  readonly start: Position;
  readonly end: Position;
  /** The line the place begins in, without its end. */
  readonly sourceLine: string;
}

export interface Position {
  readonly line: number;
  readonly character: number;
}

export interface ViewRelated {
  readonly place: ViewPlace;
  readonly message: string;
}

export interface ViewDiagnostic {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly params: Readonly<Record<string, Param>>;
  readonly place?: ViewPlace;
  readonly label?: string;
  readonly related: readonly ViewRelated[];
  readonly path?: string;
  readonly help?: string;
  readonly rule?: string;
  readonly athlete?: string;
  /** ISO date of the first day of the week. */
  readonly week?: string;
}

/** A code that is among the diagnostics, as the catalogue has it. */
export interface ViewCode {
  readonly code: string;
  readonly severity: Severity;
  readonly summary: string;
  readonly explanation: string;
}

export interface DiagnosticsView {
  readonly diagnostics: readonly ViewDiagnostic[];
  readonly codes: readonly ViewCode[];
  readonly counts: Readonly<Record<Severity, number>>;
  /** "3 errors, 1 warning"; "no problems" if there are none. */
  readonly summary: string;
  /** Of a list too long to be seen at once, what kinds there are: how often, of whom and in which weeks. */
  readonly kinds: readonly string[];
}

export interface ViewOptions {
  /** Put before each file's path: the plan's folder, as it was named, without a slash at its end. */
  readonly folder?: string | undefined;
}

/** The view of a run; `files` are those of the plan, the entry file first. */
export function diagnosticsView(
  diagnostics: readonly Diagnostic[],
  files: readonly SourceFile[],
  options: ViewOptions = {},
): DiagnosticsView {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const placed = placer(byPath, options.folder);
  const ordered = orderDiagnostics(diagnostics, files[0]?.path).map((diagnostic) => viewOf(diagnostic, placed));
  const counts = countsOf(ordered);
  return {
    diagnostics: ordered,
    codes: codesOf(ordered),
    counts,
    summary: summaryOf(counts),
    kinds: kindsOf(diagnostics),
  };
}

type Placer = (span: Span) => ViewPlace;

const placer =
  (files: ReadonlyMap<string, SourceFile>, folder: string | undefined): Placer =>
  (span) => {
    const file = files.get(span.file);
    if (file === undefined) throw new Error(`a place in ${span.file}, which is no file of the plan`);
    return {
      file: folder === undefined || folder === '.' || folder === '' ? span.file : `${folder}/${span.file}`,
      start: positionOf(file, span.start),
      end: positionOf(file, span.end),
      sourceLine: lineText(file, lineIndexOf(file, span.start)),
    };
  };

function positionOf(file: SourceFile, offset: number): Position {
  const line = lineIndexOf(file, offset);
  return { line, character: offset - lineStart(file, line) };
}

function viewOf(diagnostic: Diagnostic, placed: Placer): ViewDiagnostic {
  const { span, related, week, ...rest } = diagnostic;
  return {
    ...rest,
    related: related.map((place) => ({ place: placed(place.span), message: place.message })),
    ...(span !== undefined && { place: placed(span) }),
    ...(week !== undefined && { week: isoDate(week) }),
  };
}

function countsOf(diagnostics: readonly ViewDiagnostic[]): Record<Severity, number> {
  const counts = { error: 0, warning: 0, notice: 0 };
  for (const { severity } of diagnostics) counts[severity] += 1;
  return counts;
}

const codesOf = (diagnostics: readonly ViewDiagnostic[]): readonly ViewCode[] =>
  [...new Set(diagnostics.map(({ code }) => code))].sort().flatMap((code) => {
    const entry = findEntry(code);
    if (entry === undefined) return [];
    return [{ code, severity: entry.severity, summary: entry.summary, explanation: entry.explanation }];
  });

/** About what a screen shows. */
const MOST_AT_ONCE = 20;
/** Of fewer than so many of a kind a line for each would be as long as the list. */
const OFTEN = 4;

const SEVERITIES = ['error', 'warning', 'notice'] as const;

function kindsOf(diagnostics: readonly Diagnostic[]): readonly string[] {
  if (diagnostics.length <= MOST_AT_ONCE) return [];
  const kinds = createFindingKinds();
  for (const diagnostic of diagnostics) kinds.add(diagnostic);
  const lines = SEVERITIES.flatMap(kinds.lines);
  return lines.length * OFTEN > diagnostics.length ? [] : lines;
}

/** "3 errors, 1 warning"; "no problems" if there are none. */
export function summaryOf(counts: Readonly<Record<Severity, number>>): string {
  const parts = SEVERITIES.flatMap((severity) => {
    const count = counts[severity];
    return count === 0 ? [] : [`${String(count)} ${severity}${count === 1 ? '' : 's'}`];
  });
  return parts.length === 0 ? 'no problems' : parts.join(', ');
}
