// Makes a diagnostic out of a code and what was found. Called by every stage. The words come from the catalogue, and
// the compiler refuses a code that isn't there or a parameter the code doesn't have.

import { catalogue } from './catalogue.ts';
import type { Catalogue, Code } from './catalogue.ts';
import type { Entry, Param, ParamsField, Severity } from './entry.ts';
import type { Span } from '../source/types.ts';
import { printable, shortened } from '../util/printable.ts';
import type { Diagnostic, RelatedPlace } from './types.ts';

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

/** Units of a text from a plan that a report repeats, and of a whole sentence of it. */
const MOST_OF_PARAM = 300;
const MOST_OF_SENTENCE = 2000;

/**
 * One diagnostic: `problem('files/missing', { params: { wanted: 'squad/a.yaml' }, span })`. Texts from a plan may be
 * handed over as they are: overlong ones are shortened, and nothing in them reaches a terminal as a command to it.
 */
export function problem<C extends Code>(code: C, details: Details<C>): Diagnostic {
  const entry: Entry = catalogue[code];
  const params = mapTexts(details.params ?? {}, shortened);
  const words = mapTexts(params, printable) as never;
  const label = details.label ?? entry.label?.(words);
  const help = details.help ?? entry.help?.(words);
  return {
    code,
    severity: details.severity ?? entry.severity,
    message: entry.message(words),
    params,
    related: details.related ?? [],
    ...(details.span !== undefined && { span: details.span }),
    ...(label !== undefined && { label: printable(label, MOST_OF_SENTENCE) }),
    ...(details.path !== undefined && { path: details.path }),
    ...(help !== undefined && { help: printable(help, MOST_OF_SENTENCE) }),
    ...(details.rule !== undefined && { rule: details.rule }),
    ...(details.athlete !== undefined && { athlete: details.athlete }),
    ...(details.week !== undefined && { week: details.week }),
  };
}

type Params = Readonly<Record<string, Param>>;

function mapTexts(params: Params, made: (text: string, most: number) => string): Params {
  const mapped: Record<string, Param> = {};
  const fit = (text: string): string => made(text, MOST_OF_PARAM);
  for (const [name, value] of Object.entries(params)) {
    if (typeof value === 'string') mapped[name] = fit(value);
    else mapped[name] = typeof value === 'object' ? value.map(fit) : value;
  }
  return mapped;
}
