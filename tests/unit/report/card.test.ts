// What a card says beside the lines: how long a session takes and what its slot holds where it runs over, and what
// the athlete is to leave out in the week.

import { describe, expect, test } from 'vitest';
import { sessionFacts } from '../../../src/render/html/card-layout.ts';
import { createCards } from '../../../src/report/card.ts';
import type { Athlete } from '../../../src/plan/types.ts';
import { athlete, builtAthlete, day, HERE, line, madeBuild, session, week } from './made-build.ts';

test.each([
  [75, '75 min, the first 12 warm-up'],
  [76, '76 min (slot 75), 12 warm-up'],
])('a session of %d minutes in a slot of 75 is "%s"', (minutes, words) => {
  const built = builtAthlete([week(1, [session('2027-01-05', [line('countermovement-jump')], { minutes })])]);
  const [card] = createCards(madeBuild([built]), { who: { kind: 'everybody' } })(built);
  expect(card?.sessions.map(sessionFacts)).toEqual([words]);
});

describe('what somebody is to leave out', () => {
  const limit = (
    from: string,
    until: string,
    change: Partial<Athlete['limits'][number]>,
  ): Athlete['limits'][number] => ({
    range: { from: day(from), until: day(until) },
    avoid: [],
    because: 'sore knee',
    span: HERE,
    ...change,
  });
  const limits = [
    limit('2026-12-20', '2027-01-19', { avoid: [{ kind: 'drops' }] }),
    limit('2026-12-28', '2027-01-19', { avoid: [{ kind: 'direction', id: 'lateral' }, { kind: 'drops' }] }),
    limit('2027-01-07', '2027-06-30', { contactsASession: 60 }),
    limit('2027-01-12', '2027-01-13', { avoid: [{ kind: 'single-leg' }] }),
  ];
  const cardsWith = (change: Partial<Athlete>): readonly (readonly string[])[] => {
    const sessions = ['2027-01-05', '2027-01-12'].map((date) => [session(date, [line('countermovement-jump')])]);
    const built = builtAthlete(
      sessions.map((those, index) => week(index + 1, those)),
      { athlete: athlete('intermediate', 50, change) },
    );
    return createCards(madeBuild([built]), { who: { kind: 'everybody' } })(built).map((card) => card.limits);
  };

  test('is told week by week, those of the same days together, and never why', () => {
    expect(cardsWith({ limits })).toEqual([
      ['No drops from a box, no sideways jumps, until 19 Jan.', 'At most 60 jumps a session, from Thu 7 Jan.'],
      [
        'No drops from a box, no sideways jumps, until 19 Jan.',
        'At most 60 jumps a session.',
        'No single-leg work, from Tue 12 Jan, until Wed 13 Jan.',
      ],
    ]);
  });

  test('is all that is harder for whoever comes back, up to the last stage', () => {
    const returning = [2, 3].map((stage) => ({
      stage,
      of: 3,
      since: day(stage === 2 ? '2027-01-01' : '2027-01-11'),
      signed: 'physio',
      span: HERE,
    }));
    expect(cardsWith({ returning })).toEqual([['Nothing harder than what is written.'], []]);
  });
});
