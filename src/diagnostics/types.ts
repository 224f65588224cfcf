// A problem is data with a place; words are made when it is reported, by the catalogue, and shaped when it is rendered.
// Made by every stage through `problem()`, rendered by render/diagnostics. `code` is the identity, never the text: the
// compiler knows them all, so that nobody asks for one that isn't there.

import type { Span } from '../source/types.ts';
import type { Code } from './catalogue.ts';
import type { Param, Severity } from './entry.ts';

export interface RelatedPlace {
  readonly span: Span;
  /** What this place has to do with it: "the competition is here". */
  readonly message: string;
}

export interface Diagnostic {
  readonly code: Code;
  readonly severity: Severity;
  /** What is wrong, with the value found and the value wanted. One or two sentences. */
  readonly message: string;
  readonly params: Readonly<Record<string, Param>>;
  /** Where it is. Absent only where no file exists to point into (a missing plan, a bad command line). */
  readonly span?: Span;
  /** A few words set under the marked span. */
  readonly label?: string;
  readonly related: readonly RelatedPlace[];
  /** Logical path in the plan: `athletes.mira.mass`, `competitions[0].date`. */
  readonly path?: string;
  /** What would be right: a sentence, a command or a replacement. */
  readonly help?: string;
  /** Id of the rule it comes from, for findings of the audit and refusals of the scheduler. */
  readonly rule?: string;
  /** The athlete and the first day of the week it concerns, for findings of the audit. */
  readonly athlete?: string;
  readonly week?: number;
}

/** What each stage returns. */
export interface Staged<T> {
  readonly value: T;
  readonly diagnostics: readonly Diagnostic[];
}
