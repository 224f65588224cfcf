// Diagnostics for scripts and editors: the same list as the text, places as the Language Server Protocol counts them,
// lines and UTF-16 units from 0.

import type { DiagnosticsView, ViewDiagnostic, ViewPlace } from '../../report/diagnostics-view.ts';

/** One JSON document, two spaces deep, ending with a line end. */
export function diagnosticsJson(view: DiagnosticsView): string {
  const { error: errors, warning: warnings, notice: notices } = view.counts;
  const document = { diagnostics: view.diagnostics.map((one) => jsonOf(one)), errors, warnings, notices };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}

const jsonOf = ({ place, related, severity, code, message, ...rest }: ViewDiagnostic): object => ({
  ...(place !== undefined && placeOf(place)),
  severity,
  code,
  message,
  ...rest,
  related: related.map((other) => ({ ...placeOf(other.place), message: other.message })),
});

const placeOf = ({ file, start, end }: ViewPlace): object => ({ file, range: { start, end } });
