import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { day, loading } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';

const RULE = 'all-jumps-rise';

/** Weeks with these planned contacts, and practice of so many jumps each monday. */
function season(contacts: readonly number[], practice: readonly number[]): SeasonSpec {
  return {
    weeks: contacts.map((one) => loading(one)),
    days: practice.map((practiceJumps, index) => ({ day: day(index + 1, 0), practiceJumps })),
  };
}

describe('all-jumps-rise', () => {
  it('holds planned contacts in a week in which other jumping rises by more than a fifth', () => {
    expectSilent(RULE, season([200, 220], [100, 120]));
    expectSilent(RULE, season([200, 200], [100, 121]));
    expectFinding(RULE, season([200, 201], [100, 121]), 2);
  });

  it('measures a rise against no more than was planned, and against what was done where that was less', () => {
    const before = (practiceJumps: number, plannedJumps: number): SeasonSpec => ({
      weeks: [loading(200), loading(201)],
      days: [
        { day: day(1, 0), practiceJumps, plannedJumps },
        { day: day(2, 0), practiceJumps: 121 },
      ],
    });
    expectFinding(RULE, before(900, 100), 2);
    expectSilent(RULE, before(900, 101));
    expectFinding(RULE, before(100, 900), 2);
  });

  it('holds easy weeks by their own rules', () => {
    const spec = season([200, 120], [100, 160]);
    expectSilent(RULE, { ...spec, weeks: [loading(200), loading(120, { kind: 'deload' })] });
  });

  it('keeps all jumping near what is usual, A and the mean of other jumps of four weeks', () => {
    // A is 200 and the mean 100, and 390 is three tenths more than both.
    expectSilent(RULE, season([200, 200, 200, 200, 200], [100, 100, 100, 100, 190]));
    expectFinding(RULE, season([200, 200, 200, 200, 200], [100, 100, 100, 100, 191]), 5);
  });

  it('counts matches and tests as well', () => {
    const spec = season([200, 200, 200, 200, 200], [100, 100, 100, 100, 100]);
    const days = [...(spec.days ?? []), { day: day(5, 5), matchJumps: 80, testContacts: 11 }];
    expectFinding(RULE, { ...spec, days }, 5);
    expect(found(RULE, { ...spec, days })[0]?.params).toMatchObject({ found: 391, most: 390, before: 300 });
  });

  it('advises what can be done: matches are what they are, and few planned contacts make up for little', () => {
    const advice = (contacts: number, matchJumps: number, practice = 100): string | undefined => {
      const spec = season([200, 200, 200, 200, contacts], [100, 100, 100, 100, practice]);
      return found(RULE, { ...spec, days: [...(spec.days ?? []), { day: day(5, 5), matchJumps }] })[0]?.help;
    };
    expect(advice(200, 0, 191)).toBe('let practice rise more slowly, or plan fewer contacts beside it');
    expect(advice(200, 100)).toBe(
      '100 of the jumps are those of matches and tests: cut jumps out of practice that week, or plan fewer contacts beside it',
    );
    expect(advice(20, 300)).toBe(
      '300 of the jumps are those of matches and tests: cut jumps out of practice that week',
    );
    expect(advice(20, 400, 0)).toBe('400 of the jumps are those of matches and tests: let others play a part of it');
  });

  it('leaves planned contacts that rise alone to the weekly rise', () => {
    expectSilent(RULE, season([100, 100, 100, 100, 200], [50, 50, 50, 50, 50]));
  });

  it('waits for four weeks, and leaves weeks without jumps out of the mean', () => {
    expectSilent(RULE, season([200, 200, 200, 200], [100, 100, 100, 195]));
    const away = { kind: 'empty', phase: 'closed' } as const;
    expectSilent(RULE, {
      // Back from a closed week used to nine tenths: no more than that, as practice begins again.
      weeks: [loading(200), loading(200), loading(200), loading(200), away, loading(180)],
      days: [1, 2, 3, 4, 6].map((week) => ({ day: day(week, 0), practiceJumps: 100 })),
    });
  });

  it('takes an easy week for no less than what is usual', () => {
    const spec = season([200, 200, 200, 120, 200], [100, 100, 100, 100, 190]);
    const easy = spec.weeks.with(3, loading(120, { kind: 'deload' }));
    expectSilent(RULE, { ...spec, weeks: easy });
  });

  it('measures by no more other jumps than were planned', () => {
    const spec = season([200, 200, 200, 200, 200], [100, 100, 100, 0, 191]);
    const slip = { day: day(4, 0), practiceJumps: 900, plannedJumps: 100 };
    const days = [...(spec.days ?? []).filter((one) => one.day !== slip.day), slip];
    const late = found(RULE, { ...spec, days }).filter(({ week }) => week === day(5, 0));
    expect(late[0]?.params).toMatchObject({ most: 390 });
  });

  it('is a notice where the plan has cut to half and other jumps alone are within it', () => {
    const severity = (contacts: number, practice: number): unknown =>
      found(RULE, season([200, 200, 200, 200, contacts], [100, 100, 100, 100, practice]))[0]?.severity;
    expect(severity(100, 291)).toBe('notice');
    expect(severity(101, 291)).toBe('warning');
    expect(severity(100, 390)).toBe('notice');
    expect(severity(100, 391)).toBe('warning');
  });

  it('leaves no part of a jump over', () => {
    // What is usual is 300.5, and it allows 390.65 jumps.
    const days = (last: number) => [100, 100, 100, 102, last];
    expectSilent(RULE, season([200, 200, 200, 200, 200], days(190)));
    expect(found(RULE, season([200, 200, 200, 200, 200], days(191)))[0]?.params['most']).toBe(390);
  });
});
