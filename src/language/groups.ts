// Groups of keys: a fixed set of them, or one for each thing that is named. Called by the shapes. zod says nothing of
// which keys would have been right, so a group's own known keys travel as the message of its complaint.

import * as z from 'zod';
import type { JsonShape } from './reading.ts';

/** A group with these keys and no other. */
export function group<S extends z.core.$ZodLooseShape>(shape: S): z.ZodObject<S, z.core.$strict> {
  const known = Object.keys(shape).join(' ');
  return z.strictObject(shape, { error: (issue) => (issue.code === 'unrecognized_keys' ? known : undefined) });
}

/** The keys a group knows, out of its complaint about one it doesn't. */
export function knownKeys(issue: z.core.$ZodIssueUnrecognizedKeys): readonly string[] {
  return issue.message.split(' ');
}

/** A value for each of several names; an editor offers those the schema knows under `name`. */
export function each<T>(value: z.ZodType<T>, name: string): z.ZodType<Readonly<Record<string, T>>> {
  return z.record(z.string().meta({ $ref: `#/$defs/${name}` }), value);
}

/** For the schema: exactly one of these keys is written. The decoder leaves it to the plan, which says it in words. */
export function exactlyOne(...keys: readonly string[]): JsonShape {
  return { oneOf: keys.map((key) => ({ required: [key], properties: { [key]: true } })) };
}
