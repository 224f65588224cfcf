// Diagnostics for people at a terminal: a first line in the form of the GNU coding standards, which editors turn into a
// jump, then the line of the plan with the stretch marked, what would be right, and the other places that have to do
// with it in the same form.

import type { DiagnosticsView, ViewDiagnostic, ViewPlace } from '../../report/diagnostics-view.ts';
import type { Palette } from '../palette.ts';
import { markedLine } from './source-line.ts';

/** All diagnostics, the count of them and of many the kinds, ending with a line end; nothing at all if there are none. */
export function diagnosticsText(view: DiagnosticsView, palette: Palette): string {
  if (view.diagnostics.length === 0) return '';
  const parts = view.diagnostics.map((diagnostic) => linesOf(diagnostic, palette).join('\n'));
  const kinds = view.kinds.map((line) => `  ${line}\n`).join('');
  return `${parts.join('\n\n')}\n\n${palette.strong(view.summary)}\n${kinds}`;
}

function linesOf(diagnostic: ViewDiagnostic, palette: Palette): readonly string[] {
  const { code, severity, message, place, label, help, related } = diagnostic;
  const paint = palette[severity];
  const head = `${whereOf(place)} ${paint(`${severity}:`)} ${palette.strong(message)} ${palette.quiet(`[${code}]`)}`;
  return [
    head,
    ...(place === undefined ? [] : snippet(place, paint, palette, label)),
    ...(help === undefined ? [] : [`  ${palette.accent('help:')} ${help}`]),
    ...related.flatMap((other) => [
      `${whereOf(other.place)} ${palette.notice('note:')} ${other.message}`,
      ...snippet(other.place, palette.notice, palette),
    ]),
  ];
}

const whereOf = (place: ViewPlace | undefined): string =>
  place === undefined
    ? 'footfall:'
    : `${place.file}:${String(place.start.line + 1)}:${String(place.start.character + 1)}:`;

function snippet(
  place: ViewPlace,
  paint: (text: string) => string,
  palette: Palette,
  label?: string,
): readonly string[] {
  if (place.sourceLine.trim() === '' && place.start.character === 0) return [];
  const end = place.end.line === place.start.line ? place.end.character : place.sourceLine.length;
  const { text, indent, width } = markedLine(place.sourceLine, place.start.character, end);
  const number = String(place.start.line + 1).padStart(5);
  const mark = '^'.repeat(width) + (label === undefined ? '' : ` ${label}`);
  return [
    `${palette.quiet(`${number} |`)} ${text}`.trimEnd(),
    `${palette.quiet(`${' '.repeat(number.length)} |`)} ${' '.repeat(indent)}${paint(mark)}`,
  ];
}
