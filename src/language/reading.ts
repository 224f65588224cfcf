// What reading one scalar gives: a value, or a refusal that waits for its place. Refusals travel through zod as the
// params of an issue, so that each keeps its own code and words instead of zod's.

import * as z from 'zod';
import type { Code } from '../diagnostics/catalogue.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Details } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { ScalarNode } from '../read/types.ts';
import type { Span } from '../source/types.ts';
import { isScalar } from './nodes.ts';

export interface At {
  readonly span: Span;
  readonly path: string;
}

export type Refusal = (at: At) => Diagnostic;

export type Reading<T> = { readonly value: T } | { readonly refused: Refusal };

/** A refusal by code, whose place and path are filled in where the scalar stands. */
export function refuse<C extends Code>(code: C, details: Details<C>): { readonly refused: Refusal } {
  return { refused: (at) => problem(code, { ...details, ...at }) };
}

/** A fragment of JSON Schema: what an editor is told of a value. */
export type JsonShape = Readonly<Record<string, unknown>>;

/** A shape for one scalar: `read` gives its value or refuses it, `json` says the same to an editor. */
export function leaf<T>(read: (scalar: ScalarNode) => Reading<T>, json: JsonShape): z.ZodType<T> {
  return (
    z
      .custom<ScalarNode>(isScalar, { params: { wanted: 'scalar', words: json['enum'] } })
      .transform((scalar, context): T => {
        const reading = read(scalar);
        if ('value' in reading) return reading.value;
        context.issues.push({ code: 'custom', input: scalar, params: { refused: reading.refused } });
        return z.NEVER;
      })
      // Where `meta` would make a second shape to say it of.
      .register(z.globalRegistry, json)
  );
}

/** The words that would fit where a leaf of a fixed choice is missing. */
export function wordsThatFit(issue: z.core.$ZodIssue): readonly string[] {
  const words: unknown = issue.code === 'custom' ? issue.params?.['words'] : undefined;
  return Array.isArray(words) ? words.map(String) : [];
}

/** The refusal an issue carries, if it came from a leaf. */
export function findRefusal(issue: z.core.$ZodIssue): Refusal | undefined {
  if (issue.code !== 'custom') return undefined;
  const refused: unknown = issue.params?.['refused'];
  return typeof refused === 'function' ? (refused as Refusal) : undefined;
}
