// How contacts are counted, against programmes whose totals are in print.

import { describe, expect, it } from 'vitest';
import { contactsOfSets } from '../../../src/library/drill-facts.ts';
import { BUILT_IN } from '../../../src/library/index.ts';

function contacts(id: string, sets: number, reps: number): number {
  const drill = BUILT_IN.drills.get(id);
  if (drill === undefined) throw new Error(`no drill ${id}`);
  return contactsOfSets(drill, sets, reps);
}

describe('contacts', () => {
  // J Sports Sci Med 2018;17:348, Table 1 (P): three counter-movement jumps in each of 3, 4, 5 and 3 sets. The paper
  // prints reps x body mass, 827, 1,103, 1,378 and 827 kg, at a mean of 91.9 kg.
  it.each([
    [3, 827],
    [4, 1103],
    [5, 1378],
    [3, 827],
  ])('of %i sets of three jumps make %i kg', (sets, kilos) => {
    expect(Math.abs(contacts('countermovement-jump', sets, 3) * 91.9 - kilos)).toBeLessThan(1);
  });

  // Interv Med Appl Sci 2014;6(3):125–130 (P): 5 x 20 drop jumps, twice a week for 6 weeks, 1,200 in all.
  it('of drop jumps count one a rep', () => {
    expect(contacts('drop-jump-40', 5, 20) * 2 * 6).toBe(1200);
  });
});
