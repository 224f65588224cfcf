// One grid for all of a squad who have nothing of their own in it, and the same one as if it were laid for each.

import { describe, expect, it } from 'vitest';
import { itemsOf } from '../../../src/plan/items-of.ts';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import type { Athlete, Plan, Who } from '../../../src/plan/types.ts';
import { layGrid } from '../../../src/schedule/grid.ts';
import { gridOf } from '../../../src/schedule/shared-grid.ts';
import type { WeekCells } from '../../../src/schedule/types.ts';
import { day } from '../date.ts';
import { ALWAYS, athlete, EVERYBODY, HERE, peak, plan } from './make-plan.ts';

const named = (...athletes: readonly string[]): Who => ({ kind: 'some', squads: [], athletes });

const member = (id: string, change: Partial<Athlete> = {}): Athlete =>
  athlete('intermediate', 80, { id, squad: 's', ...change });

const first = member('first');
const named1 = { range: ALWAYS, who: named('swapped'), because: 'knee', span: HERE };

const SEASON: Plan = plan(
  { starts: '2027-01-04', ends: '2027-03-07' },
  {
    competitions: [peak('2027-02-27')],
    closures: [
      {
        range: { from: day('2027-01-18'), until: day('2027-01-24') },
        because: 'hall',
        who: EVERYBODY,
        trained: 'none',
        span: HERE,
      },
      {
        range: { from: day('2027-02-01'), until: day('2027-02-07') },
        because: 'camp',
        who: named('camper'),
        trained: 'full',
        span: HERE,
      },
    ],
    pins: [
      { ...named1, effects: [{ kind: 'swap', swaps: new Map([['back-squat', 'front-squat']]) }] },
      { ...named1, who: named('resting'), effects: [{ kind: 'rest' }] },
    ],
  },
);

const weeksOf = (who: Athlete): readonly WeekCells[] => gridOf(SEASON, who, ruleBook(SEASON, who)).weeks;

describe('the grid of a squad', () => {
  it('is one for who has nothing of their own, and for whose pins keep no day free', () => {
    expect(weeksOf(member('second'))).toBe(weeksOf(first));
    expect(weeksOf(member('swapped'))).toBe(weeksOf(first));
    expect(gridOf(SEASON, member('second'), ruleBook(SEASON, first)).athlete.id).toBe('second');
  });

  it.each([
    ['rests by a pin', member('resting')],
    ['has a closure of her own', member('camper')],
    [
      'is away',
      member('away', {
        away: [
          {
            range: { from: day('2027-01-11'), until: day('2027-01-17') },
            because: 'exams',
            trained: 'none',
            span: HERE,
          },
        ],
      }),
    ],
    [
      'is stopped by a limit',
      member('hurt', { limits: [{ range: ALWAYS, avoid: [], contactsASession: 0, because: 'knee', span: HERE }] }),
    ],
  ])('is another for who %s', (_, who) => {
    expect(weeksOf(who)).not.toEqual(weeksOf(first));
    expect(weeksOf(who)).toEqual(layGrid(SEASON, who, ruleBook(SEASON, who)).weeks);
  });

  it('is another for who has other jumps on a day of competition, where the plan writes none', () => {
    const sporting = (id: string, value: string): Athlete =>
      member(id, { sport: { value, origin: { kind: 'written', span: HERE } } });
    const { jumps: _, ...cup } = peak('2027-02-27');
    const unwritten = { ...SEASON, competitions: [cup] };
    const matchJumps = (of: Plan, who: Athlete): number =>
      gridOf(of, who, ruleBook(of, who))
        .weeks.flatMap(({ cells }) => cells)
        .reduce((sum, one) => sum + one.matchJumps, 0);
    expect(matchJumps(unwritten, member('general'))).toBe(0);
    expect(matchJumps(unwritten, sporting('long', 'long-jump'))).toBe(20);
    expect(matchJumps(unwritten, sporting('volley', 'volleyball'))).toBe(80);
    expect(matchJumps(SEASON, sporting('written', 'volleyball'))).toBe(0);
    const weeks = (who: Athlete): readonly WeekCells[] => gridOf(unwritten, who, ruleBook(unwritten, who)).weeks;
    expect(weeks(sporting('high', 'high-jump'))).toBe(weeks(sporting('longer', 'long-jump')));
  });

  it('is another in another plan', () => {
    const other = { ...SEASON, competitions: [] };
    expect(gridOf(other, first, ruleBook(other, first)).weeks).not.toEqual(weeksOf(first));
  });
});

describe('the items of somebody who is named', () => {
  it('are the squad’s own lists where they hold the same', () => {
    const squad = itemsOf(SEASON, first);
    const swapped = itemsOf(SEASON, member('swapped'));
    expect(swapped.closures).toBe(squad.closures);
    expect(swapped.pins).toHaveLength(1);
    expect(itemsOf(SEASON, member('camper')).closures).toHaveLength(2);
    expect(itemsOf(SEASON, member('swapped')).pins).toEqual(swapped.pins);
  });
});
