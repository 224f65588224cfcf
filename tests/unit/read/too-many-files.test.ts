// A glob that reaches into far more than a plan: given up with its place, before it takes long.

import { expect, test } from 'vitest';
import { MOST_LOOKED_AT } from '../../../src/read/glob.ts';
import { readPlan } from '../../../src/read/read-plan.ts';
import { memoryFiles } from './memory-files.ts';

test('a glob that looks through too many files is refused at its place', () => {
  const text = 'footfall: 1\nfiles: ["**/*.yaml"]\n';
  const host = memoryFiles({ '/plan/season.yaml': text });
  const many = Array.from({ length: MOST_LOOKED_AT + 1 }, (_, index) => ({
    name: `${String(index)}.txt`,
    kind: 'file' as const,
  }));
  const { diagnostics } = readPlan('/plan', { ...host, list: () => ({ ok: true, value: many }) });
  expect(diagnostics.map(({ code, span }) => [code, span?.start])).toEqual([['files/too-many', text.indexOf('"**')]]);
});
