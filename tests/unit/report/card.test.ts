// How long a session of a card takes, and what its slot holds where it runs over.

import { expect, test } from 'vitest';
import { sessionFacts } from '../../../src/render/html/card-layout.ts';
import { createCards } from '../../../src/report/card.ts';
import { builtAthlete, line, madeBuild, session, week } from './made-build.ts';

test.each([
  [75, '75 min, the first 12 warm-up'],
  [76, '76 min (slot 75), 12 warm-up'],
])('a session of %d minutes in a slot of 75 is "%s"', (minutes, words) => {
  const built = builtAthlete([week(1, [session('2027-01-05', [line('countermovement-jump')], { minutes })])]);
  const [card] = createCards(madeBuild([built]), { who: { kind: 'everybody' } })(built);
  expect(card?.sessions.map(sessionFacts)).toEqual([words]);
});
