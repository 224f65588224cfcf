import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/plan/types.ts';
import type { Barred, WeekCells } from '../../../src/schedule/types.ts';
import { day } from '../date.ts';
import { athlete, EVERYBODY, HALL, HERE, peak, plan, slot } from './make-plan.ts';
import { stages } from './stages.ts';

const SEASON = { starts: '2027-01-04', ends: '2027-01-31' };
const DAYS = [0, 1, 2, 3, 4, 5, 6] as const;
const everyDay = DAYS.map((weekday) => slot(weekday));

const weeksOf = (change: Partial<Plan>, who = athlete('intermediate', 80)): readonly WeekCells[] =>
  stages(plan(SEASON, { slots: everyDay, ...change }), who).grid.weeks;

/** What bars each day of a week, `-` for a usable one. */
const bars = (week: WeekCells | undefined): readonly (Barred | '-')[] =>
  (week?.cells ?? []).map((cell) => cell.barred ?? '-');

describe('the grid', () => {
  it('has the weeks from the one holding the first day to the one holding the last', () => {
    const weeks = stages(plan({ starts: '2027-01-06', ends: '2027-01-19' }), athlete('beginner', 40)).grid.weeks;
    expect(weeks.map((week) => week.starts)).toEqual([day('2027-01-04'), day('2027-01-11'), day('2027-01-18')]);
    expect(bars(weeks[0])[1]).toBe('out-of-season');
    expect(bars(weeks[0])[3]).toBe('-');
    expect(bars(weeks[2])[3]).toBe('out-of-season');
  });

  it('starts its weeks on the season’s own weekday', () => {
    const base = plan(SEASON);
    const sundays = { ...base, season: { ...base.season, weekStarts: 6 as const } };
    expect(stages(sundays, athlete('beginner', 40)).grid.weeks[0]?.starts).toBe(day('2027-01-03'));
  });

  it('keeps two days free before a peak and everything behind it in its week', () => {
    const week = weeksOf({ competitions: [peak('2027-01-14')] })[1];
    expect(bars(week)).toEqual([
      '-',
      'event-gap',
      'event-gap',
      'competition',
      'after-peak',
      'after-peak',
      'after-peak',
    ]);
  });

  it('keeps one day free before and one behind any other competition', () => {
    const match = peak('2027-01-14', { prepare: 'through', jumps: 60 });
    const week = weeksOf({ competitions: [match] })[1];
    expect(bars(week)).toEqual(['-', '-', 'event-gap', 'competition', 'after-event', '-', '-']);
    expect(week?.otherJumps).toBe(60);
  });

  it('takes the gaps from the rules as the plan has them', () => {
    const match = peak('2027-01-14', { prepare: 'through' });
    const change = {
      rule: 'event-gap' as const,
      parameters: new Map([['match', 2]]),
      range: { from: day('2027-01-04'), until: day('2027-01-31') },
      who: EVERYBODY,
      because: 'long bus rides',
      span: HERE,
    };
    expect(bars(weeksOf({ competitions: [match], ruleChanges: [change] })[1]).slice(0, 3)).toEqual([
      '-',
      'event-gap',
      'event-gap',
    ]);
    const waiver = { rule: 'event-gap' as const, range: change.range, who: EVERYBODY, because: 'friendly', span: HERE };
    expect(bars(weeksOf({ competitions: [match], waivers: [waiver] })[1])[2]).toBe('-');
  });

  it('has no jump session between crowded matches', () => {
    const dates = ['2027-01-11', '2027-01-12', '2027-01-17'];
    const matches = dates.map((date) => peak(date, { prepare: 'through' }));
    expect(bars(weeksOf({ competitions: matches })[1])).toEqual([
      'competition',
      'competition',
      'after-event',
      'congested',
      'congested',
      'congested',
      'competition',
    ]);
  });

  it('bars closed places, absences, tests and pinned rest', () => {
    const on = (from: string, until = from) => ({ range: { from: day(from), until: day(until) }, span: HERE });
    const week = weeksOf(
      {
        closures: [{ ...on('2027-01-04'), because: 'concert', trained: 'none', places: ['hall'], who: EVERYBODY }],
        tests: [{ day: day('2027-01-05'), what: [], contacts: 12, who: EVERYBODY, span: HERE }],
        pins: [{ ...on('2027-01-06'), who: EVERYBODY, effects: [{ kind: 'rest' }], because: 'travel' }],
        slots: everyDay.map((one) => (one.day === 3 ? { ...one, use: 'lifts' as const } : one)),
      },
      athlete('beginner', 40, { away: [{ ...on('2027-01-08'), because: 'exam', trained: 'none' }] }),
    )[0];
    expect(bars(week)).toEqual(['closed', 'test', 'rest-pin', 'lifts-only', 'away', '-', '-']);
    expect(week?.otherJumps).toBe(12);
  });

  it('leaves a place open that the closure doesn’t name', () => {
    const track = { ...HALL, id: 'track' };
    const closure = {
      range: { from: day('2027-01-04'), until: day('2027-01-10') },
      because: 'concert',
      trained: 'none' as const,
      places: ['hall'],
      who: EVERYBODY,
      span: HERE,
    };
    const week = weeksOf({ closures: [closure], slots: [slot(1), slot(3, { place: track })] })[0];
    expect(bars(week)[1]).toBe('closed');
    expect(bars(week)[3]).toBe('-');
  });

  it('counts no practice while an athlete is away or everything is closed, unless training goes on', () => {
    const practice = {
      day: 2 as const,
      jumps: 60,
      range: { from: day('2027-01-01'), until: day('2027-12-31') },
      who: EVERYBODY,
      span: HERE,
    };
    const week = (trained: 'none' | 'some') =>
      weeksOf(
        { practice: [practice] },
        athlete('beginner', 40, {
          away: [{ range: { from: day('2027-01-04'), until: day('2027-01-10') }, because: 'ill', trained, span: HERE }],
        }),
      )[0]?.otherJumps;
    expect(week('none')).toBe(0);
    expect(week('some')).toBe(60);
  });

  it('calls a week empty when nothing is usable, but never the week of a peak', () => {
    const closure = {
      range: { from: day('2027-01-04'), until: day('2027-01-31') },
      because: 'flooded',
      trained: 'some' as const,
      who: EVERYBODY,
      span: HERE,
    };
    const weeks = weeksOf({ closures: [closure], competitions: [peak('2027-01-30')] });
    expect(weeks.map((week) => week.empty)).toEqual([true, true, true, false]);
    expect(weeks[0]).toMatchObject({ trained: 'some', closedBy: [HERE] });
  });

  it('calls a week not trained where a limit stops the jumps of a day that nothing closes', () => {
    const on = (date: string) => ({ range: { from: day(date), until: day(date) }, span: HERE });
    const closure = { ...on('2027-01-05'), because: 'concert', trained: 'full' as const, who: EVERYBODY };
    const rest = { ...on('2027-01-07'), who: EVERYBODY, effects: [{ kind: 'rest' as const }], because: 'travel' };
    const limit = { ...on('2027-01-07'), avoid: [], contactsASession: 0, because: 'knee' };
    const change = { slots: [slot(1), slot(3)], closures: [closure], pins: [rest] };
    expect(weeksOf(change)[0]).toMatchObject({ empty: true, trained: 'full' });
    const limited = athlete('intermediate', 80, { limits: [limit] });
    expect(weeksOf(change, limited)[0]).toMatchObject({ empty: true, trained: 'none' });
    const away = { ...on('2027-01-07'), because: 'camp', trained: 'full' as const };
    expect(weeksOf(change, { ...limited, away: [away] })[0]).toMatchObject({ empty: true, trained: 'full' });
  });
});
