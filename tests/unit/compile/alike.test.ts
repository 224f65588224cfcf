// Athletes of one squad who differ by what the gates of drops ask for, and by nothing else: none gets the season of another
// who may drop higher. The limits are those of the rules drop-mass (P), drop-strength (S), drop-age (S), drop-clearance (S).
// And athletes who differ by a pin or by their maxima: nobody lifts by those of another.

import { describe, expect, test } from 'vitest';
import type { BuiltAthlete } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { planOf } from '../plan/loaded.ts';

const CLEARED = 'cleared: [drops, drop-jump-30, drop-jump-40, drop-jump-60]';
const STRONG = 'lifts: { back-squat: { max: 150 kg, on: 2026-12-28 } }';

/** The light and grown one stands first, so that hers is the season to be shared. */
const ATHLETES = `
  light: { squad: s, born: 1999-04, mass: 70 kg, ${CLEARED} }
  heavy: { squad: s, born: 1999-04, mass: 105 kg, ${CLEARED} }
  weak: { squad: s, born: 1999-04, mass: 70 kg, ${CLEARED}, lifts: { back-squat: { max: 80 kg, on: 2026-12-28 } } }
  young: { squad: s, born: 2012-04, mass: 70 kg, ${CLEARED} }
  unweighed: { squad: s, born: 1999-04, ${CLEARED} }
  uncleared: { squad: s, born: 1999-04, mass: 70 kg }
  another: { squad: s, born: 1998-05, mass: 71 kg, ${CLEARED} }`;

const plan = () =>
  planOf(`footfall: 1
season: { title: Drops, sport: volleyball, starts: 2027-01-04 }
places: { gym: { surface: wood, kit: { boxes: [20 cm, 30 cm, 40 cm, 60 cm], hurdles: 6, racks: 2, bars: [20 kg], smallest-plate: 1.25 kg } } }
slots: [{ day: monday, minutes: 75, place: gym }, { day: thursday, minutes: 75, place: gym }]
competitions: [{ name: Cup, date: 2027-03-27, prepare: peak }]
squads: { s: { level: advanced, now: { contacts-a-session: 100, sessions-a-week: 2 }, ${STRONG} } }
athletes:${ATHLETES}
pins: [{ from: 2027-02-01, until: 2027-03-21, swap: { box-jump-60: drop-jump-60 }, because: drops }]
`);

const seasons = new Map([...compilePlan(plan()).athletes].map((built) => [built.athlete.id, built]));
const seasonOf = (id: string): BuiltAthlete => {
  const built = seasons.get(id);
  if (built === undefined) throw new Error(`nobody is ${id}`);
  return built;
};

/** cm; 0 without any. */
const highestDrop = ({ weeks }: BuiltAthlete): number =>
  Math.max(
    0,
    ...weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ lines }) => lines.map(({ exercise }) => BUILT_IN.drills.get(exercise)?.dropCm ?? 0)),
    ),
  );

describe('of a squad that drops', () => {
  test('who is light, strong, grown and cleared does', () => {
    expect(highestDrop(seasonOf('light'))).toBe(60);
  });

  test.each(['heavy', 'weak', 'young', 'unweighed', 'uncleared'])('who is %s doesn’t drop so high', (id) => {
    expect(highestDrop(seasonOf(id))).toBeLessThan(60);
  });

  test('who is like the first has the very same weeks', () => {
    expect(seasonOf('another').weeks).toBe(seasonOf('light').weeks);
  });

  test.each([...seasons.keys()])('%s gets what being compiled alone gives', (id) => {
    const alone = plan();
    const athlete = alone.athletes.find((one) => one.id === id);
    if (athlete === undefined) throw new Error(`nobody is ${id}`);
    const { weeks, diagnostics } = compilePlan(alone).athlete(athlete);
    expect(seasonOf(id).weeks).toEqual(weeks);
    expect(seasonOf(id).diagnostics).toEqual(diagnostics);
  });
});

describe('of a squad of whom one has a pinned load', () => {
  const pinned = planOf(`footfall: 1
season: { title: Loads, sport: volleyball, starts: 2027-01-04 }
places: { gym: { surface: wood, kit: { racks: 2, bars: [20 kg], smallest-plate: 1.25 kg } } }
slots: [{ day: monday, minutes: 75, place: gym }, { day: thursday, minutes: 75, place: gym }]
competitions: [{ name: Cup, date: 2027-03-27, prepare: peak }]
squads: { s: { level: advanced, now: { contacts-a-session: 100, sessions-a-week: 2 } } }
athletes: { first: { squad: s, born: 1999-04, mass: 70 kg }, second: { squad: s, born: 1999-04, mass: 70 kg } }
pins: [{ athletes: [first], from: 2027-01-04, until: 2027-01-31, load: { back-squat: 60 kg }, because: trust me }]
`);
  const squats = new Map(
    [...compilePlan(pinned).athletes].map(({ athlete, weeks }) => [
      athlete.id,
      weeks.flatMap(({ sessions }) =>
        sessions.flatMap(({ lines }) => lines.filter(({ exercise }) => exercise === 'back-squat')),
      ),
    ]),
  );

  test('she lifts it', () => {
    expect(squats.get('first')?.some(({ loadGrams }) => loadGrams === 60_000)).toBe(true);
  });

  test('and nobody else does', () => {
    expect(squats.get('second')?.length).toBeGreaterThan(0);
    expect(squats.get('second')?.filter(({ loadGrams }) => loadGrams !== undefined)).toEqual([]);
  });
});
