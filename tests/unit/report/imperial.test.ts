// A plan in pounds and inches is spoken of in them on every page that has words: limits, pairs, distances, the coach's own
// numbers, edits, diffs, jump tests. What is found in such a plan is asked for in tests/diagnostics/catalogue.

import { expect, test } from 'vitest';
import type { Edit } from '../../../src/diff/types.ts';
import type { RuleChange } from '../../../src/plan/types.ts';
import { doseWords } from '../../../src/report/exercise-words.ts';
import { decisionsOf } from '../../../src/report/decision-words.ts';
import type { DiffGroup } from '../../../src/report/diff-report.ts';
import { pointWords } from '../../../src/report/diff-words.ts';
import { editNotes } from '../../../src/report/edit-words.ts';
import { limitWords } from '../../../src/report/limit-words.ts';
import { pairOf } from '../../../src/report/pair-words.ts';
import { amountWords } from '../../../src/report/rule-report.ts';
import type { Review } from '../../../src/report/review.ts';
import { forecastSection, trendSection } from '../../../src/report/review/sections/test-sections.ts';
import { EVERYBODY } from '../bare-plan.ts';
import { day, HERE, line, madePlan, session, STARTS } from './made-build.ts';

const metric = madePlan();
const imperial = { ...metric, season: { ...metric.season, units: 'imperial' as const } };
const range = { from: day('2027-01-04'), until: day('2027-01-31') };

test('limits and pairs name heights', () => {
  const limit = { range, avoid: [{ kind: 'drill', id: 'drop-jump-40' } as const], because: 'x', span: HERE };
  expect([metric, imperial].map((plan) => limitWords(plan, limit))).toEqual([
    'no drop jump, 40 cm',
    'no drop jump, 15.5 in',
  ]);
  const { lines } = session('2027-01-05', [line('back-squat', { pairedWith: 2 }), line('box-jump-60')]);
  expect([metric, imperial].map((plan) => pairOf(plan, lines[0] ?? line('back-squat'), lines)?.name)).toEqual([
    'box jump, 60 cm',
    'box jump, 23.5 in',
  ]);
});

test('doses name distances', () => {
  const bounds = line('alternate-bound', { sets: 3, reps: 10 });
  expect(doseWords(metric.library, bounds, 'metric')).toMatch(/ \([\d.]+ m\)$/u);
  expect(doseWords(metric.library, bounds, 'imperial')).toMatch(/ \(\d+ ft\)$/u);
});

test("the coach's own numbers", () => {
  const change: RuleChange = {
    rule: 'drop-height',
    parameters: new Map([['beginner', 25]]),
    who: EVERYBODY,
    range,
    because: 'low boxes',
    span: HERE,
  };
  const told = [metric, imperial].map((plan) => decisionsOf({ ...plan, ruleChanges: [change] }, () => '')[0]?.what);
  expect(told).toEqual([
    'drop height: highest drop of a beginner 25 cm',
    'drop height: highest drop of a beginner 10 in',
  ]);
  expect(amountWords(100, 'kg', 'imperial')).toBe('220 lb');
});

test('edits and how far loads moved', () => {
  const edit: Edit = {
    section: 'athlete',
    what: 'changed',
    name: 'Mira',
    fields: [
      { name: 'massGrams', before: 68_000, after: 68_039 },
      { name: 'dropCm', before: 30, after: 46 },
    ],
    who: EVERYBODY,
    part: {},
  };
  expect((['metric', 'imperial'] as const).map((units) => editNotes([[edit]], units)[0]?.words)).toEqual([
    'athlete Mira: mass 68 kg → 68.039 kg; drop 30 cm → 46 cm',
    'athlete Mira: mass 149.91 lb → 150 lb; drop 12 in → 18 in',
  ]);
  const group: DiffGroup = {
    starts: STARTS,
    point: { kind: 'load', subject: 'Back squat', before: 'a', after: 'b' },
    athletes: ['a', 'b'],
    names: ['A', 'B'],
    range: { least: -2500, most: 4536 },
  };
  expect((['metric', 'imperial'] as const).map((units) => pointWords(group, { units }))).toEqual([
    'Back squat -2.5 to +4.53 kg',
    'Back squat -5.5 to +10 lb',
  ]);
});

test('jump tests and what groups gained', () => {
  const group = { test: 'countermovement-jump', measure: 'height', day: STARTS, values: [0.381], trials: [] };
  const trend = { group, mean: 0.381, before: { group, mean: 0.3556 }, change: 0.0254, typicalError: 0.019 };
  const forecast = { group, mean: 0.381, after: { low: 0.381, high: 0.4064 }, weeks: 8, contacts: 900 };
  const athletes = [{ name: 'Mira', trends: [trend], forecasts: [forecast] }] as unknown as Review['athletes'];
  const cells = (units: 'metric' | 'imperial'): readonly string[] =>
    [...trendSection({ athletes, units }), ...forecastSection({ athletes, units })].flatMap(({ rows }) =>
      rows.map((row) => row.join(' | ')),
    );
  expect(cells('metric')[0]).toContain('35.6 | 38.1 | cm | +2.5 | 1.9');
  expect(cells('imperial')[0]).toContain('14.0 | 15.0 | in | +1.0 | 0.7');
  expect(cells('imperial')[1]).toContain('15.0 | 15.0 to 16.0 in');
});
