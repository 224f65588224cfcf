// Picks the diagnostics of one code out of many, with the parameters that its message asks for. Called by whoever goes on
// from what was found instead of telling it.

import type { Catalogue, Code } from './catalogue.ts';
import type { ParamsOf } from './entry.ts';
import type { Diagnostic } from './types.ts';

type OfCode<C extends Code> = Diagnostic & { readonly code: C; readonly params: ParamsOf<Catalogue[C]> };

/** Whether a diagnostic is of a code. All of one code have the same parameters, as `problem()` asks for them. */
export const isOf = <C extends Code>(diagnostic: Diagnostic, code: C): diagnostic is OfCode<C> =>
  diagnostic.code === code;
