// A percentage is shown as one of the maximum that was tested: 60 % of the jump squat's 30 % of a back squat are 18 % of
// the squat (P11, P: loads of 0 to 30 %).

import { describe, expect, test } from 'vitest';
import { bestWords, percentOf, percentWords } from '../../../src/report/percent-of.ts';
import { planOf } from '../plan/loaded.ts';
import { line } from './made-build.ts';

function athleteWith(lifts: string) {
  const plan = planOf(`footfall: 1
season: { title: Spring, starts: 2027-01-04, ends: 2027-02-28 }
places: { hall: {} }
slots: [{ day: tuesday, minutes: 75, place: hall }]
athletes: { mira: { level: intermediate, lifts: { ${lifts} } } }
`);
  const [athlete] = plan.athletes;
  if (athlete === undefined) throw new Error('nobody is in the plan');
  return { plan, athlete };
}

const SQUAT = 'back-squat: { max: 90 kg, on: 2026-12-20 }';

describe('the per cent of a jump squat', () => {
  const { plan, athlete } = athleteWith(SQUAT);
  const jump = line('jump-squat', { percent: 60 });

  test('is told as one of the squat, rounded down', () => {
    expect(percentOf(plan, athlete, 'jump-squat')).toEqual({ of: 'back-squat', share: 30 });
    expect(percentWords(plan, athlete, jump)).toBe('18 % of back squat');
    expect(percentWords(plan, athlete, line('jump-squat', { percent: 63 }))).toBe('18 % of back squat');
    expect(bestWords(plan, athlete, jump)).toBe('18 % of your best back squat');
  });

  test('is its own where the athlete has a maximum of it', () => {
    const own = athleteWith(`${SQUAT}, jump-squat: { max: 40 kg, on: 2026-12-20 }`);
    expect(percentWords(own.plan, own.athlete, jump)).toBe('60 %');
    expect(bestWords(own.plan, own.athlete, jump)).toBe('60 % of your best');
  });
});

test('the squat itself, a drill and a lift by feel are of nothing else', () => {
  const { plan, athlete } = athleteWith(SQUAT);
  for (const exercise of ['back-squat', 'pogo', 'dumbbell-jump']) {
    expect(percentOf(plan, athlete, exercise)).toBeUndefined();
  }
  expect(percentWords(plan, athlete, line('back-squat', { percent: 75 }))).toBe('75 %');
});
