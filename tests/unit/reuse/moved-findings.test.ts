// Findings follow their places; where no single place is known for one, none is made up.

import { expect, test } from 'vitest';
import { problem } from '../../../src/diagnostics/problem.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import { movedFindings, movesBetween, pointInto } from '../../../src/reuse/moved-findings.ts';
import type { Span } from '../../../src/source/types.ts';

const at = (start: number): Span => ({ file: 'season.yaml', start, end: start + 1 });

const finding = (span: Span, related: readonly Span[] = []): Diagnostic =>
  problem('schedule/pin-idle', { span, related: related.map((one) => ({ span: one, message: 'here' })) });

test('a finding and what is told beside it go where their places went', () => {
  const moves = [movesBetween([at(1)], [at(11)]), movesBetween([at(2), at(3)], [at(2), at(30)])];
  expect(movedFindings([finding(at(1), [at(2), at(3)])], moves)).toEqual([finding(at(11), [at(2), at(30)])]);
});

test('a finding without a place stays as it is', () => {
  const placeless = problem('schedule/pin-idle', {});
  expect(movedFindings([placeless], [])).toEqual([placeless]);
});

test.each([
  { name: 'a place that is nowhere in the plan', moves: [movesBetween([at(5)], [at(6)])] },
  { name: 'a place that went to two', moves: [movesBetween([at(1), at(1)], [at(6), at(7)])] },
  {
    name: 'a place that two parts tell apart',
    moves: [movesBetween([at(1)], [at(6)]), movesBetween([at(1)], [at(7)])],
  },
])('$name can not be followed', ({ moves }) => {
  expect(movedFindings([finding(at(1))], moves)).toBeUndefined();
  expect(movedFindings([finding(at(5), [at(1)])], [...moves, movesBetween([at(5)], [at(6)])])).toBeUndefined();
  expect(pointInto([finding(at(1))], moves)).toBe(false);
});

test('a place that two things have may go on being one', () => {
  expect(movedFindings([finding(at(1))], [movesBetween([at(1), at(1)], [at(6), at(6)])])).toEqual([finding(at(6))]);
});
