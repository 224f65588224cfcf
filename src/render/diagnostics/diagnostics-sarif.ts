// Diagnostics as SARIF 2.1.0, for services that show the findings of checks beside the lines of a change. Source of the
// format: OASIS, Static Analysis Results Interchange Format 2.1.0,
// https://docs.oasis-open.org/sarif/sarif/v2.1.0/sarif-v2.1.0.html

import type { DiagnosticsView, ViewDiagnostic, ViewPlace } from '../../report/diagnostics-view.ts';
import type { Severity } from '../../diagnostics/entry.ts';

const levels: Readonly<Record<Severity, string>> = { error: 'error', warning: 'warning', notice: 'note' };

/** One SARIF log with one run, ending with a line end; `version` is that of footfall. */
export function diagnosticsSarif(view: DiagnosticsView, version: string): string {
  const indexes = new Map(view.codes.map(({ code }, index) => [code, index]));
  const run = {
    tool: { driver: { name: 'footfall', semanticVersion: version, rules: view.codes.map(ruleOf) } },
    columnKind: 'utf16CodeUnits',
    results: view.diagnostics.map((diagnostic) => resultOf(diagnostic, indexes)),
  };
  const log = { $schema: 'https://json.schemastore.org/sarif-2.1.0.json', version: '2.1.0', runs: [run] };
  return `${JSON.stringify(log, undefined, 2)}\n`;
}

const ruleOf = ({ code, severity, summary, explanation }: DiagnosticsView['codes'][number]): object => ({
  id: code,
  shortDescription: { text: summary },
  fullDescription: { text: explanation },
  defaultConfiguration: { level: levels[severity] },
});

function resultOf(diagnostic: ViewDiagnostic, indexes: ReadonlyMap<string, number>): object {
  const { code, severity, message, help, place, path, related } = diagnostic;
  const ruleIndex = indexes.get(code);
  const logicalLocations = path === undefined ? undefined : [{ fullyQualifiedName: path }];
  const location = {
    ...(place !== undefined && { physicalLocation: physicalLocation(place) }),
    ...(logicalLocations !== undefined && { logicalLocations }),
  };
  return {
    ruleId: code,
    ...(ruleIndex !== undefined && { ruleIndex }),
    level: levels[severity],
    message: { text: help === undefined ? message : `${message}. Help: ${help}` },
    ...(Object.keys(location).length > 0 && { locations: [location] }),
    ...(related.length > 0 && { relatedLocations: related.map(relatedLocation) }),
  };
}

const relatedLocation = (related: ViewDiagnostic['related'][number], index: number): object => ({
  id: index + 1,
  physicalLocation: physicalLocation(related.place),
  message: { text: related.message },
});

const physicalLocation = ({ file, start, end }: ViewPlace): object => ({
  artifactLocation: { uri: file.split('/').map(encodeURIComponent).join('/') },
  region: {
    startLine: start.line + 1,
    startColumn: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
  },
});
