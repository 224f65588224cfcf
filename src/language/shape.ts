// The shape of what a coach may write: how a plain value is read, and what an editor is told of it. Shapes are made by
// groups.ts, lists.ts and reading.ts, read by decode-item.ts, and written as JSON Schema by schema.ts. Each is a small
// object, as every run makes all of them.

import type { Diagnostic } from '../diagnostics/types.ts';
import type { Span } from '../source/types.ts';
import type { Step } from './nodes.ts';

/** A fragment of JSON Schema: what an editor is told of a value. */
export type JsonShape = Readonly<Record<string, unknown>>;

export interface At {
  readonly span: Span;
  readonly path: string;
}

/** A problem that waits for its place. */
export type Refusal = (at: At) => Diagnostic;

export type Wanted = 'a single value' | 'a list' | 'a group of keys';

/** What is wrong in a value, and the steps to it from the value that is read. */
export type Issue = { readonly path: Step[] } & IssueKind;

type IssueKind = UnknownKeys | WrongKind | Refused;

export interface UnknownKeys {
  readonly kind: 'unknown keys';
  readonly keys: readonly string[];
  /** All that the group has. */
  readonly known: readonly string[];
}

/** Something else than is wanted, or nothing. */
export interface WrongKind {
  readonly kind: 'wrong kind';
  readonly wanted: Wanted;
  /** The words that would fit. */
  readonly words: readonly string[];
  /** What an editor is told of the key. */
  readonly says?: string;
}

interface Refused {
  readonly kind: 'refused';
  readonly refusal: Refusal;
}

/** What a shape is made of. */
export type Form =
  | { readonly kind: 'leaf'; readonly json: JsonShape }
  | { readonly kind: 'group'; readonly keys: Readonly<Record<string, Shape<unknown, boolean>>> }
  | { readonly kind: 'each'; readonly name: string; readonly value: Shape<unknown, boolean> }
  | { readonly kind: 'list'; readonly item: Shape<unknown> }
  | { readonly kind: 'one or more'; readonly item: Shape<unknown> }
  | { readonly kind: 'either'; readonly choices: readonly Shape<unknown>[] }
  /** A shape that has an id, with a description of its own. */
  | { readonly kind: 'same'; readonly as: Shape<unknown, boolean> };

/** Gives the value, or adds to the issues. `input` is a plain value, or undefined where nothing is written. */
export type Read<T> = (input: unknown, issues: Issue[]) => T | undefined;

/** A shape of T; as a key of a group it may be left out where it is optional. */
export class Shape<T, O extends boolean = false> {
  readonly form: Form;
  readonly read: Read<T>;
  /** What an editor is told beside the form: `id`, under which others refer to it, `description` and more. */
  readonly notes: JsonShape;
  readonly isOptional: O;

  constructor(form: Form, read: Read<T>, notes: JsonShape, isOptional: O) {
    this.form = form;
    this.read = read;
    this.notes = notes;
    this.isOptional = isOptional;
  }

  /** The same with words for an editor. */
  describe(description: string): Shape<T, O> {
    return this.meta({ description });
  }

  /** The same with more for an editor. What has an id is said once, and referred to by what is added. */
  meta(notes: JsonShape): Shape<T, O> {
    const hasId = 'id' in this.notes || (this.form.kind === 'leaf' && 'id' in this.form.json);
    return hasId
      ? new Shape({ kind: 'same', as: this }, this.read, notes, this.isOptional)
      : new Shape(this.form, this.read, { ...this.notes, ...notes }, this.isOptional);
  }

  /** The same for a key that may be left out. */
  optional(): Shape<T, true> {
    return new Shape(this.form, this.read, this.notes, true);
  }
}

/** What a shape reads. */
export type Output<S> = S extends Shape<infer T, boolean> ? T : never;

export type Parsed<T> = { readonly value: T } | { readonly issues: readonly Issue[] };

/** A plain value read by its shape. */
export function parse<T>({ read }: Shape<T, boolean>, input: unknown): Parsed<T> {
  const issues: Issue[] = [];
  const value = read(input, issues);
  return issues.length === 0 ? { value: value as T } : { issues };
}

/** Puts a step before the paths of the issues that were found since there were so many. */
export function stepBefore(step: Step, issues: readonly Issue[], since: number): void {
  for (const { path } of issues.slice(since)) path.unshift(step);
}

/** Something else stands where this is wanted, or nothing. */
export function wrongKind(wanted: Wanted, words: readonly string[] = []): Issue {
  return { kind: 'wrong kind', path: [], wanted, words };
}
