// Makes a diagnostic out of a code and what was found. Called by every stage. The words come from the catalogue, and
// the compiler refuses a code that isn't there or a parameter the code doesn't have.

import { catalogue } from './catalogue.ts';
import type { Catalogue, Code } from './catalogue.ts';
import type { Entry, ParamsField } from './entry.ts';
import type { Span } from '../source/types.ts';
import type { Diagnostic, Param, RelatedPlace, Severity } from './types.ts';

interface Circumstances {
  /** Left out only where there is no file to point into. */
  readonly span?: Span | undefined;
  readonly label?: string | undefined;
  readonly related?: readonly RelatedPlace[] | undefined;
  readonly path?: string | undefined;
  readonly help?: string | undefined;
  readonly rule?: string | undefined;
  readonly athlete?: string | undefined;
  /** First day of the week, as a day number. */
  readonly week?: number | undefined;
  /** Only where one code is graver in one place than in another. */
  readonly severity?: Severity | undefined;
}

export type Details<C extends Code> = Circumstances & ParamsField<Catalogue[C]>;

/** One diagnostic: `problem('files/missing', { params: { wanted: 'squad/a.yaml' }, span })`. */
export const problem = <C extends Code>(code: C, details: Details<C>): Diagnostic => {
  const entry: Entry = catalogue[code];
  const params: Readonly<Record<string, Param>> = details.params ?? {};
  const label = details.label ?? entry.label?.(params as never);
  const help = details.help ?? entry.help?.(params as never);
  return {
    code,
    severity: details.severity ?? entry.severity,
    message: entry.message(params as never),
    params,
    related: details.related ?? [],
    ...(details.span !== undefined && { span: details.span }),
    ...(label !== undefined && { label }),
    ...(details.path !== undefined && { path: details.path }),
    ...(help !== undefined && { help }),
    ...(details.rule !== undefined && { rule: details.rule }),
    ...(details.athlete !== undefined && { athlete: details.athlete }),
    ...(details.week !== undefined && { week: details.week }),
  };
};
