// All lines have one shape in V8, whichever file made them: a field of a line is then found where it was found before. Of
// lines with shapes of their own each field is looked up anew, which was half the time of a build with many maxima.

import { setFlagsFromString } from 'node:v8';
import { runInThisContext } from 'node:vm';
import { expect, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import type { BuiltLine } from '../../../src/build/types.ts';
import { EXAMPLES, filesOf, planWith } from '../report/example-plans.ts';

setFlagsFromString('--allow-natives-syntax');
const haveSameShape = runInThisContext('(one, other) => %HaveSameMap(one, other)') as (
  one: object,
  other: object,
) => boolean;

/** One line of each shape. */
function shapesOf(lines: Iterable<BuiltLine>): readonly BuiltLine[] {
  const shapes: BuiltLine[] = [];
  for (const line of lines) if (!shapes.some((shape) => haveSameShape(shape, line))) shapes.push(line);
  return shapes;
}

test('two objects with the same fields may have two shapes', () => {
  expect(haveSameShape({ sets: 1, reps: 2 }, { reps: 2, sets: 1 })).toBe(false);
});

test('the lines of all examples have one', { timeout: 120_000 }, () => {
  const lines = EXAMPLES.flatMap((example) =>
    [...compilePlan(planWith(filesOf(example))).athletes].flatMap(({ weeks }) =>
      weeks.flatMap(({ sessions }) => sessions.flatMap((session) => session.lines)),
    ),
  );
  expect(lines.length).toBeGreaterThan(1000);
  expect(shapesOf(lines).map(({ exercise }) => exercise)).toHaveLength(1);
});
