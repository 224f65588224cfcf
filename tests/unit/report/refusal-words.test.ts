import { expect, test } from 'vitest';
import { BUILT_IN } from '../../../src/library/index.ts';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import type { Athlete, Born, Limit } from '../../../src/plan/types.ts';
import { createPlaces } from '../../../src/report/places.ts';
import { refusalWords } from '../../../src/report/refusal-words.ts';
import { drillPlaceRefusal, drillRefusal, liftRefusal } from '../../../src/schedule/lines/gates.ts';
import { gateValues, standingOn } from '../../../src/schedule/lines/standing.ts';
import { HALL } from '../schedule/make-plan.ts';
import { athlete, day, HERE, madePlan, STARTS } from './made-build.ts';

const born = (year: number): Born => ({ earliest: day(`${year}-01-01`), latest: day(`${year}-12-31`) });
const limit: Limit = {
  range: { from: STARTS, until: STARTS },
  avoid: [
    { kind: 'tier', id: 'high' },
    { kind: 'pattern', id: 'squat' },
  ],
  because: '',
  span: HERE,
};

/** Athletes who between them meet every gate. */
const PEOPLE: readonly Partial<Athlete>[] = [
  {},
  { born: born(2016) },
  { born: born(2012), cleared: new Set(['drops']) },
  { cleared: new Set(['drops']), massGrams: 110_000 },
  {
    cleared: new Set(['drops', 'depth-landing-20', 'depth-landing-30', 'depth-landing-40', 'depth-landing-50']),
    massGrams: 70_000,
  },
  { levels: [{ is: 'advanced', span: HERE }], cleared: new Set(['drops', 'depth-landing-40', 'depth-landing-50']) },
  { limits: [limit] },
  { returning: [{ stage: 2, of: 4, since: STARTS, signed: 'physio', span: HERE }] },
];

test('whatever holds an exercise back is said in words, with its numbers', () => {
  const plan = madePlan();
  const places = createPlaces(plan.files);
  const rules = new Set<string>();
  const texts = PEOPLE.flatMap((change) => {
    const person = athlete('intermediate', 50, change);
    const standing = standingOn(person, STARTS, gateValues(ruleBook(plan, person), { from: STARTS, until: STARTS }));
    const drills = [...BUILT_IN.drills.values()].flatMap((drill) => [
      drillRefusal(drill, standing),
      drillPlaceRefusal(drill, HALL),
    ]);
    const lifts = [...BUILT_IN.lifts.values()].flatMap((lift) =>
      (['strength', 'power'] as const).map((phase) => liftRefusal(lift, standing, phase)),
    );
    return [...drills, ...lifts].flatMap((refused) => {
      if (refused === undefined) return [];
      rules.add(refused.by);
      return [refusalWords(refused, places, 'metric'), refusalWords(refused, places, 'imperial')];
    });
  });
  expect(texts.filter((text) => /undefined|NaN|\[object/.test(text))).toEqual([]);
  expect([...rules].toSorted()).toEqual([
    'drill-level',
    'drop-age',
    'drop-clearance',
    'drop-height',
    'drop-mass',
    'drop-strength',
    'first-drop',
    'kit',
    'limit',
    'phase',
    'returning-stage',
    'youth-load',
  ]);
});

test('words that are wanted and not there are a bug', () => {
  expect(() => refusalWords({ by: 'whim', params: {}, spans: [] }, createPlaces([]), 'metric')).toThrow('whim');
});
