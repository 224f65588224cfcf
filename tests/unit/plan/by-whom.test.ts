// What is for whom, found by name, against asking each item of the list.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { appliesTo } from '../../../src/plan/applies.ts';
import { byWhom } from '../../../src/plan/by-whom.ts';
import type { Who } from '../../../src/plan/types.ts';

const squad = fc.constantFrom('jumpers', 'throwers', 'keepers');
const athlete = fc.constantFrom('ada', 'bea', 'jumpers');
const person = fc.record({ id: athlete, squad }, { requiredKeys: ['id'] });
const who: fc.Arbitrary<Who> = fc.oneof(
  fc.constant<Who>({ kind: 'everybody' }),
  fc.record({ kind: fc.constant('some' as const), squads: fc.array(squad), athletes: fc.array(athlete) }),
);

test('an item is found once, in its place, by everybody it is for and nobody else', () => {
  fc.assert(
    fc.property(fc.array(who), person, (whos, somebody) => {
      const items = whos.map((one, number) => ({ who: one, number }));
      expect(byWhom(items)(somebody)).toEqual(items.filter((item) => appliesTo(item.who, somebody)));
    }),
  );
});
