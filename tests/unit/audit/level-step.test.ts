import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { day, loading, place } from './make-build.ts';
import type { Level } from '../../../src/library/types.ts';

const RULE = 'level-step';

function season(contacts: readonly number[], to: Level = 'intermediate', now = 40) {
  const from = day(contacts.length, 1);
  const levels = [
    { is: 'beginner' as const, span: place(0) },
    { is: to, from, span: place(61) },
  ];
  return { athlete: { levels }, now: [now, 2] as const, weeks: contacts.map((one) => loading(one)) };
}

describe('level-step', () => {
  it('wants four weeks at four fifths of the ceiling below', () => {
    expectSilent(RULE, season([80, 80, 80, 80, 80]));
    expectFinding(RULE, season([80, 80, 80, 79, 80]), 5);
    expect(found(RULE, season([80, 79, 80, 79, 80]))[0]?.params).toMatchObject({ found: 2, wanted: 4 });
  });

  it('takes the weeks before the season for enough', () => {
    expectSilent(RULE, season([50, 50], 'intermediate', 80));
    expectFinding(RULE, season([50, 50], 'intermediate', 79), 2);
  });

  it('goes up one at a time', () => {
    expectFinding(RULE, season([80, 80, 80, 80, 80], 'advanced'), 5);
    expect(found(RULE, season([80, 80, 80, 80, 80], 'advanced'))[0]?.span).toEqual(place(61));
  });

  it('has nothing to say of a level that was signed before the season', () => {
    const levels = [
      { is: 'beginner' as const, span: place(0) },
      { is: 'advanced' as const, from: day(0, 0), span: place(0) },
    ];
    expectSilent(RULE, { athlete: { levels }, weeks: [loading(50)] });
  });
});
