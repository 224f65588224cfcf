// Words that a coach reads on several pages: why a week has its contacts, names of drills with a height, notes to a table.

import { describe, expect, it } from 'vitest';
import { BUILT_IN } from '../../../src/library/index.ts';
import { exerciseName } from '../../../src/report/exercise-words.ts';
import type { Review } from '../../../src/report/review.ts';
import { lastWeek } from '../../../src/report/review/sections/load-sections.ts';
import { whyContacts } from '../../../src/report/week-words.ts';
import { week } from './made-build.ts';

describe('a week on the way back', () => {
  const words = (contacts: number, adaptedBefore: number): string =>
    whyContacts(week(1, [], { kind: 'return', boundBy: 'return-ramp', contacts, adaptedBefore }));

  it('is told by its share of what was usual while it is below, and by what it rises from above', () => {
    expect(words(25, 50)).toBe('coming back: 50 % of the usual 50 for now');
    expect(words(35, 25)).toBe('coming back: a step up from 25');
    expect(words(20, 0)).toBe('coming back: 20 contacts for now');
  });
});

describe('the name of a drill', () => {
  it('has its height in the units of the plan', () => {
    expect(exerciseName(BUILT_IN, 'box-jump-60')).toBe('Box jump, 60 cm');
    expect(exerciseName(BUILT_IN, 'box-jump-60', 'imperial')).toBe('Box jump, 23.5 in');
    expect(exerciseName(BUILT_IN, 'hurdle-hop', 'imperial')).toBe('Hurdle hop');
  });
});

describe('the table of last week', () => {
  const sections = (ratio?: number): ReturnType<typeof lastWeek> => {
    const last = { allJumps: 100, felt: { gaps: 0 }, ...(ratio !== undefined && { ratio }) };
    const athletes = [{ name: 'Ada', weeks: [last] }] as unknown as Review['athletes'];
    return lastWeek({ athletes });
  };
  const notes = (ratio?: number): string =>
    sections(ratio)
      .flatMap((section) => section.notes)
      .join(' ');
  const columns = (ratio?: number): readonly string[] =>
    sections(ratio).flatMap((section) => section.columns.map(({ title }) => title));

  it('has a ratio, and explains it, where there is one', () => {
    expect(columns(1.1)).toContain('ratio');
    expect(notes(1.1)).toContain('Ratio:');
    expect(columns()).not.toContain('ratio');
    expect(notes()).toContain('All jumps:');
    expect(notes()).not.toContain('Ratio:');
  });
});
