// Lists, lists whose only item may stand without brackets, and either of two shapes. Called by the shapes.

import { isScalar } from './nodes.ts';
import { Shape, stepBefore, wrongKind } from './shape.ts';
import type { Issue } from './shape.ts';

/** Several of something. */
export function list<T>(item: Shape<T>): Shape<readonly T[]> {
  return new Shape({ kind: 'list', item }, (input, issues) => readItems(item, input, issues), {}, false);
}

/** Several of something, or one written without the brackets. */
export function oneOrMore<T>(item: Shape<T>): Shape<readonly T[]> {
  const read = (input: unknown, issues: Issue[]): readonly T[] | undefined =>
    readItems(item, isList(input) ? input : [input], issues);
  return new Shape({ kind: 'one or more', item }, read, {}, false);
}

function readItems<T>({ read }: Shape<T>, input: unknown, issues: Issue[]): readonly T[] | undefined {
  if (!isList(input)) {
    issues.push(wrongKind('a list'));
    return undefined;
  }
  return input.map((item, index) => {
    const before = issues.length;
    const value = read(item, issues);
    if (issues.length > before) stepBefore(index, issues, before);
    return value as T;
  });
}

/** Either of two shapes, told apart by what is written before one is read, so that problems keep their paths. */
export function either<A, B>(isFirst: (input: unknown) => boolean, first: Shape<A>, second: Shape<B>): Shape<A | B> {
  const read = (input: unknown, issues: Issue[]): A | B | undefined =>
    (isFirst(input) ? first : second).read(input, issues);
  return new Shape<A | B>({ kind: 'either', choices: [first, second] }, read, {}, false);
}

/** Whether a plain value was written as a list. */
export const isList = (input: unknown): input is readonly unknown[] => Array.isArray(input);

/** Whether a plain value was written as a single word, number or text. */
export const isWord = (input: unknown): boolean => isScalar(input);
