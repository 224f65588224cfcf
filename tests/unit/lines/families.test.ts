// The families that phases are usually built of are families of the library.

import { expect, test } from 'vitest';
import { usualFamilies } from '../../../src/library/families.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { PHASES } from '../../../src/library/phases.ts';

test.each(PHASES.filter((row) => row.directions !== undefined))('$id names families that there are', ({ id }) => {
  expect(usualFamilies(id).length).toBeGreaterThanOrEqual(4);
  for (const family of usualFamilies(id)) expect(BUILT_IN.families.has(family)).toBe(true);
});
