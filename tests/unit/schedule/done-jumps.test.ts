// Practice, matches and tests on the record in the place of those that were planned: what a week has of other jumps, and
// what that does to its contacts. Practice of 60 on Mondays, and of 60 more in the third week for who has the camp.

import { describe, expect, it, test } from 'vitest';
import type { BuiltAthlete } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import type { DoneRow, Plan, Practice } from '../../../src/plan/types.ts';
import { day } from '../date.ts';
import { ALWAYS, athlete, EVERYBODY, HERE, plan, slot } from './make-plan.ts';

const on = (date: string, kind: DoneRow['kind'], contacts?: number): DoneRow => ({
  day: day(date),
  athlete: 'ada',
  kind,
  ...(contacts !== undefined && { contacts }),
  span: HERE,
});

const practice = (jumps: number, weekday: Practice['day'], range = ALWAYS): Practice => ({
  day: weekday,
  jumps,
  range,
  who: EVERYBODY,
  span: HERE,
});

const CAMP = practice(60, 2, { from: day('2027-01-18'), until: day('2027-01-24') });

function season(done: readonly DoneRow[], change: Partial<Plan> = {}): Plan {
  return plan(
    { starts: '2027-01-04', ends: '2027-04-25' },
    {
      slots: [slot(1), slot(3)],
      athletes: [athlete('intermediate', 60)],
      practice: [practice(60, 0)],
      record: { done, tests: [] },
      ...change,
    },
  );
}

function built(planned: Plan, asOf: string): BuiltAthlete {
  const [found] = compilePlan(planned, { asOf: day(asOf) }).athletes;
  if (found === undefined) throw new Error('nobody was built');
  return found;
}

const otherJumps = (done: readonly DoneRow[], asOf: string): readonly number[] =>
  built(season(done), asOf)
    .weeks.map((week) => week.otherJumps)
    .slice(0, 2);

const MONDAY = '2027-01-04';
const OVER = '2027-01-11';
const UNDER_WAY = '2027-01-06';

describe('other jumps', () => {
  test.each<{ name: string; done: readonly DoneRow[]; asOf: string; first: number }>([
    { name: 'are what was done', done: [on(MONDAY, 'practice', 90)], asOf: OVER, first: 90 },
    { name: 'are fewer where less was done', done: [on(MONDAY, 'practice', 20)], asOf: OVER, first: 20 },
    { name: 'are none where practice fell out', done: [on(MONDAY, 'practice', 0)], asOf: OVER, first: 0 },
    { name: 'stay as planned without a number', done: [on(MONDAY, 'practice')], asOf: OVER, first: 60 },
    { name: 'stay beside a session', done: [on(MONDAY, 'session', 90)], asOf: OVER, first: 60 },
    { name: 'are added on another day', done: [on('2027-01-06', 'practice', 90)], asOf: OVER, first: 150 },
    { name: 'add a match and a test', done: [on(MONDAY, 'match', 30), on(MONDAY, 'test', 6)], asOf: OVER, first: 96 },
    {
      name: 'add up what was done on a day',
      done: [on(MONDAY, 'practice', 40), on(MONDAY, 'practice', 50)],
      asOf: OVER,
      first: 90,
    },
    { name: 'rise in a week under way', done: [on(MONDAY, 'practice', 90)], asOf: UNDER_WAY, first: 90 },
    { name: 'fall when it is over', done: [on(MONDAY, 'practice', 20)], asOf: UNDER_WAY, first: 60 },
    { name: 'are not those to come', done: [on('2027-01-08', 'practice', 90)], asOf: UNDER_WAY, first: 60 },
  ])('$name', ({ done, asOf, first }) => {
    expect(otherJumps(done, asOf)).toEqual([first, 60]);
  });

  it('stand in the days of the build, also where the plan has nothing', () => {
    const { days } = built(season([on('2027-01-06', 'match', 45), on(MONDAY, 'practice', 0)]), OVER);
    expect(days.slice(0, 2)).toMatchObject([
      { day: day(MONDAY), practiceJumps: 0, plannedJumps: 60 },
      { day: day('2027-01-06'), matchJumps: 45, plannedJumps: 0 },
    ]);
    expect(days[2]).not.toHaveProperty('plannedJumps');
  });
});

describe('what they do', () => {
  const sessions = ['2027-01-05', '2027-01-07', '2027-01-12', '2027-01-14'].map((date) => on(date, 'session', 60));
  const week = (number: number, planned: Plan, asOf: string): BuiltAthlete['weeks'][number] => {
    const found = built(planned, asOf).weeks[number - 1];
    if (found === undefined) throw new Error('no such week');
    return found;
  };

  it('holds a week under way at the usual volume, and its warning says so', () => {
    const plain = season(sessions);
    const heavy = season([...sessions, on('2027-01-18', 'practice', 200)]);
    expect(week(3, plain, '2027-01-19').boundBy).not.toBe('all-jumps-rise');
    expect(week(3, heavy, '2027-01-19')).toMatchObject({ contacts: 120, boundBy: 'all-jumps-rise', otherJumps: 200 });
  });

  it('leaves less of a budget', () => {
    const ruleChanges = [
      {
        rule: 'budget',
        parameters: new Map([['jumps-a-week', 180]]),
        range: ALWAYS,
        who: EVERYBODY,
        because: 'x',
        span: HERE,
      },
    ] as const;
    expect(week(1, season([], { ruleChanges }), '2027-01-05').contacts).toBe(120);
    const done = [on(MONDAY, 'practice', 100)];
    expect(week(1, season(done, { ruleChanges }), '2027-01-05')).toMatchObject({ contacts: 80, boundBy: 'budget' });
  });

  test.each([
    { done: 60, name: 'as planned' },
    { done: 900, name: 'more, to which nobody is used for having done it once' },
    { done: 20, name: 'less' },
  ])('measures the week behind against what was done: $name', ({ done }) => {
    const rows = [...sessions, on('2027-01-11', 'practice', done)];
    const camp = built(season(rows, { practice: [practice(60, 0), CAMP] }), '2027-01-18');
    expect(camp.weeks[1]?.otherJumps).toBe(done);
    expect(camp.weeks[2]).toMatchObject({ boundBy: 'all-jumps-rise', contacts: 120 });
    expect(camp.diagnostics.map(({ code }) => code)).not.toContain('audit/adapted-volume');
  });

  it('holds the week behind one whose practice fell out', () => {
    const rows = [...sessions, on('2027-01-11', 'practice', 0)];
    expect(week(3, season(rows), '2027-01-18').boundBy).toBe('all-jumps-rise');
  });
});
