// Where in the plan a field of an athlete or of the season was changed: the line of the absence, the maximum, the
// limit. Asked by edits.ts for each field that differs.

import type { Span } from '../source/types.ts';
import { plainText } from './plain.ts';

/** The place of the first member that only the later item has, else of the value; undefined where none is known. */
export function changedSpan(before: object, after: object, field: string): Span | undefined {
  const is = memberOf(after, field);
  if (typeof is !== 'object' || is === null) return undefined;
  if ('origin' in is) return writtenSpan(is.origin);
  const were = new Set(membersOf(memberOf(before, field)).map(plainText));
  return membersOf(is)
    .filter((member) => !were.has(plainText(member)))
    .flatMap((member) => spanOf(member) ?? [])
    .at(0);
}

const memberOf = (value: object, name: string): unknown => (Object(value) as Readonly<Record<string, unknown>>)[name];

function membersOf(value: unknown): readonly unknown[] {
  if (value instanceof Map) return [...(value as ReadonlyMap<string, unknown>).values()];
  return Array.isArray(value) ? value : [];
}

function spanOf(value: unknown): Span | undefined {
  return typeof value === 'object' && value !== null && 'span' in value ? (value.span as Span) : undefined;
}

const writtenSpan = (origin: unknown): Span | undefined =>
  typeof origin === 'object' && origin !== null && 'kind' in origin && origin.kind === 'written'
    ? spanOf(origin)
    : undefined;
