// A diary told Monday by Monday: what the review of the example with a record says in each of its weeks.

import { describe, expect, it } from 'vitest';
import { reviewBuilds } from '../../../src/cli/review-builds.ts';
import { createReview } from '../../../src/report/review.ts';
import type { Review } from '../../../src/report/review.ts';
import { EVERYTHING } from '../../../src/report/selection.ts';
import { day } from '../date.ts';
import { filesOf, planWith } from './example-plans.ts';

const plan = planWith(filesOf('harbour-diary'));
const on = (date: string): Review => createReview(reviewBuilds(plan, day(date)), EVERYTHING, day(date));

const told = ({ decisions, ahead }: Review): readonly string[] =>
  [...decisions, ...ahead].map(({ kind, athletes }) => `${kind}: ${athletes.join(', ')}`);
const otherwise = ({ exceptions }: Review): readonly string[] =>
  exceptions.map(({ kind, athletes, words }) => `${kind}: ${athletes.join(', ')}: ${words}`);

describe('Mondays of the harbour diary', () => {
  it('before the season: a return that waits, and nothing behind', () => {
    const review = on('2025-01-06');
    expect(told(review)).toContain('return stage: erik');
    expect(review.weeks).toEqual([]);
    expect(otherwise(review)).toEqual([]);
  });

  it('13 January: all went as written', () => {
    const review = on('2025-01-13');
    expect(otherwise(review)).toEqual([]);
    expect(review.recorded).toEqual({ complete: 7, of: 7 });
    expect(told(review)).toEqual(['return stage: erik', 'coming back week: erik']);
  });

  it('20 January: an easy week is announced to all who build', () => {
    expect(told(on('2025-01-20'))).toContain('easy week: alma, berit, cato, dina');
  });

  it('27 January: pain of 3 goes on, and is told', () => {
    const review = on('2025-01-27');
    expect(otherwise(review)).toEqual(['pain: dina: 3 the morning after Fri 24 Jan']);
    expect(told(review).filter((one) => one.startsWith('pain'))).toEqual([]);
  });

  it('3 February: the flu, one who did less, one who is not on record, and what follows', () => {
    const review = on('2025-02-03');
    expect(otherwise(review)).toEqual([
      'missed: erik: Fri 31 Jan: 50 planned; flu',
      expect.stringMatching(/^this week: erik: \d+ jumps, and \d+ before last week was done/u),
      'not recorded: fia: Tue 28 Jan: 60 planned',
      'not recorded: fia: Fri 31 Jan: 60 planned',
      expect.stringMatching(/^this week: fia/u),
      'less: gus: Fri 31 Jan: 40 of 60',
      expect.stringMatching(/^this week: gus/u),
    ]);
    expect(told(review)).toContain('record missing: fia');
  });

  it('10 February: pain first, then what else is to decide', () => {
    const review = on('2025-02-10');
    expect(told(review)).toEqual([
      'pain stop: berit',
      'pain hold: dina',
      'record missing: fia',
      'return stage: erik',
      'limit ends: dina',
      'new maximum: alma',
      'new maximum: dina',
      'test missing: cato, gus',
      'test missing: erik, fia',
      'coming back week: erik',
    ]);
    expect(otherwise(review)).toContain('jumps rose: alma: all jumps 335, in the weeks before 198 on the average');
    const berit = review.athletes.find(({ id }) => id === 'berit');
    expect(berit?.weeks.at(-1)).toMatchObject({ planned: 95, done: 95 });
  });

  it('behind the season: nothing that is ahead', () => {
    const review = on('2025-04-07');
    expect(review.week).toBeUndefined();
    expect(told(review).filter((one) => /due|week/u.test(one))).toEqual([]);
  });
});
