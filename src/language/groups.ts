// Groups of keys: a fixed set of them, or one for each thing that is named. Called by the shapes. Where a single value
// stands instead, the keys are looked for in its node, so that what is missing is told there.

import { Shape, stepBefore, wrongKind } from './shape.ts';
import type { Issue, JsonShape, Output } from './shape.ts';

/** A key may be left out where its shape is optional. */
export type Keys = Readonly<Record<string, Shape<unknown, boolean>>>;

type OptionalKeys<K extends Keys> = { [N in keyof K]: K[N] extends Shape<unknown, true> ? N : never }[keyof K];

/** What a group of these keys reads. */
export type Fields<K extends Keys> = { readonly [N in Exclude<keyof K, OptionalKeys<K>>]: Output<K[N]> } & {
  readonly [N in OptionalKeys<K>]?: Output<K[N]> | undefined;
};

/** A group with these keys and no other. */
export function group<K extends Keys>(keys: K): Shape<Fields<K>> {
  const known = Object.entries(keys);
  const read = (input: unknown, issues: Issue[]): Fields<K> | undefined => {
    if (!isGroup(input)) return refuse(issues);
    const fields: Record<string, unknown> = {};
    for (const [key, shape] of known) readKey(key, shape, input, fields, issues);
    const others = Object.keys(input).filter((key) => !Object.hasOwn(keys, key));
    if (others.length > 0) issues.push({ kind: 'unknown keys', path: [], keys: others, known: Object.keys(keys) });
    return fields as Fields<K>;
  };
  return new Shape({ kind: 'group', keys }, read, {}, false);
}

/** The keys of a group; undefined of a shape that is none. */
export function keysOf({ form }: Shape<unknown>): Keys | undefined {
  return form.kind === 'group' ? form.keys : undefined;
}

/** A value for each of several names; an editor offers those the schema knows under `name`. */
export function each<T>(value: Shape<T>, name: string): Shape<Readonly<Record<string, T>>> {
  const read = (input: unknown, issues: Issue[]): Readonly<Record<string, T>> | undefined => {
    if (!isGroup(input)) return refuse(issues);
    const fields: Record<string, unknown> = {};
    for (const key of Object.keys(input)) readKey(key, value, input, fields, issues);
    return fields as Readonly<Record<string, T>>;
  };
  return new Shape({ kind: 'each', name, value }, read, {}, false);
}

type Group = Readonly<Record<string, unknown>>;

const isGroup = (input: unknown): input is Group =>
  typeof input === 'object' && input !== null && !Array.isArray(input);

function refuse(issues: Issue[]): undefined {
  issues.push(wrongKind('a group of keys'));
}

function readKey(
  key: string,
  { read, isOptional, notes }: Shape<unknown, boolean>,
  input: Group,
  fields: Record<string, unknown>,
  issues: Issue[],
): void {
  const written = input[key];
  if (written === undefined && isOptional) return;
  const before = issues.length;
  fields[key] = read(written, issues);
  if (issues.length === before) return;
  addWords(issues, before, notes);
  stepBefore(key, issues, before);
}

/** Adds what an editor is told of the key to what says that it isn't there, or is of another kind. */
function addWords(issues: Issue[], at: number, { description }: JsonShape): void {
  const issue = issues[at];
  if (issue?.kind !== 'wrong kind' || issue.path.length > 0 || typeof description !== 'string') return;
  issues[at] = { ...issue, says: description };
}

/** For the schema: exactly one of these keys is written. The decoder leaves it to the plan, which says it in words. */
export function exactlyOne(...keys: readonly string[]): JsonShape {
  return { oneOf: keys.map((key) => ({ required: [key], properties: { [key]: true } })) };
}
