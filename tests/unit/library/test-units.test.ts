// What a test may be measured in: every unit of the record is of one kind, and a lift's kinds follow from what it is.

import { expect, test } from 'vitest';
import { TEST_NAMES } from '../../../src/language/known-names.ts';
import { TEST_UNITS } from '../../../src/language/shapes/record.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { kindOfUnit, unitKindsOf, UNITS_BY_KIND } from '../../../src/library/test-units.ts';

test('every unit of the record measures one thing, and none is left over', () => {
  expect(TEST_UNITS.filter((unit) => kindOfUnit(unit) === undefined)).toEqual([]);
  expect(Object.values(UNITS_BY_KIND).flat().toSorted()).toEqual([...TEST_UNITS].toSorted());
});

test.each([
  ['back-squat', ['mass', 'count', 'speed', 'force', 'power']],
  ['plank', ['mass', 'count', 'speed', 'force', 'power', 'time', 'length']],
  ['jump-squat', ['mass', 'count', 'speed', 'force', 'power', 'time', 'length']],
  ['standing-long-jump', ['length', 'time', 'speed', 'force', 'power', 'ratio', 'count']],
  ['sprint', ['time', 'speed']],
])('%s is measured in %j', (name, kinds) => {
  expect(unitKindsOf(name, BUILT_IN.lifts.get(name))).toEqual(kinds);
});

test('nothing but lifts and a pull is measured in kilos', () => {
  const names = [...TEST_NAMES, ...BUILT_IN.drills.keys(), ...BUILT_IN.lifts.keys()];
  const inKilos = names.filter((name) => unitKindsOf(name, BUILT_IN.lifts.get(name)).includes('mass'));
  expect(inKilos.toSorted()).toEqual(['isometric-pull', ...BUILT_IN.lifts.keys()].toSorted());
});
