// One plan with every key of the language, read without a problem: what a coach has written once must keep building.

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { isoDate } from '../../../src/util/days.ts';
import { athleteOf, load, planOf } from './loaded.ts';

const FILES = {
  'season.yaml': readFileSync('tests/unit/plan/every-key.yaml', 'utf8'),
  'drills.yaml': 'drills: {}\n',
  'squad/juniors.yaml': 'squads:\n  juniors: { level: beginner }\n',
  'record/done.csv': 'date,athlete,kind,contacts,minutes,effort,pain,note\n',
  'record/tests.csv': 'date,athlete,test,trial,value,unit,method,arms,note\n',
};

test('it has no problem at all', () => {
  expect(load(FILES).diagnostics).toEqual([]);
});

test('and all of it is in the plan', () => {
  const plan = planOf(FILES);
  expect(plan.slots.map(({ id }) => id)).toEqual(['tuesday', 'thursday', 'saturday']);
  expect(plan.competitions.map(({ name, jumps }) => [name, jumps])).toEqual([
    ['League round 1', 60],
    ['County cup final', undefined],
  ]);
  expect(plan.places.get('hall')?.kit).toMatchObject({
    boxesCm: [30, 45],
    barsGrams: [15_000, 20_000],
    smallestPlateGrams: 1250,
  });
  expect(plan.pins).toHaveLength(6);
  expect(plan.always).toHaveLength(1);
  expect(plan.waivers.map(({ rule }) => rule)).toEqual(['session-spacing']);
  expect(plan.uses.map(({ programme }) => programme.id)).toEqual(['pairs-block']);
  expect(plan.library.lifts.get('half-squat')?.name).toBe('Half squat');
  const mira = athleteOf(plan, 'mira');
  expect(mira).toMatchObject({
    name: 'Mira K.',
    squad: 'seniors',
    group: 'blue',
    sport: { value: 'volleyball' },
    sex: 'female',
    massGrams: 68_000,
  });
  expect(mira.goal?.value).toBe(110);
  expect(mira.returning).toMatchObject([{ stage: 2, of: 4, signed: 'physio' }]);
  expect(mira.limits.map(({ range }) => isoDate(range.until))).toEqual(['2027-02-01']);
});
