// Athletes of one squad who differ by what the gates of drops ask for, and by nothing else: none gets the season of another
// who may drop higher. The limits are those of the rules drop-mass (P), drop-strength (S), drop-age (S), drop-clearance (S).
// And athletes who differ by a pin or by their maxima: nobody lifts by those of another.

import { describe, expect, test } from 'vitest';
import type { BuiltAthlete } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import type { Plan } from '../../../src/plan/types.ts';
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

/** Nobody was compiled with the plan before. */
function aloneIn(alone: Plan, id: string): BuiltAthlete {
  const athlete = alone.athletes.find((one) => one.id === id);
  if (athlete === undefined) throw new Error(`nobody is ${id}`);
  return compilePlan(alone).athlete(athlete);
}

const seasons = new Map([...compilePlan(plan()).athletes].map((built) => [built.athlete.id, built]));
function seasonOf(id: string): BuiltAthlete {
  const built = seasons.get(id);
  if (built === undefined) throw new Error(`nobody is ${id}`);
  return built;
}

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
    const { weeks, diagnostics } = aloneIn(plan(), id);
    expect(seasonOf(id).weeks).toEqual(weeks);
    expect(seasonOf(id).diagnostics).toEqual(diagnostics);
  });
});

describe('of a squad of juniors', () => {
  const juniors = () =>
    planOf(`footfall: 1
season: { title: Juniors, sport: volleyball, starts: 2027-01-04 }
places: { gym: { surface: wood, kit: { boxes: [20 cm, 30 cm], hurdles: 6 } } }
slots: [{ day: monday, minutes: 75, place: gym }, { day: thursday, minutes: 75, place: gym }]
competitions: [{ name: Cup, date: 2027-03-27, prepare: peak }]
squads: { s: { level: beginner, now: { contacts-a-session: 60, sessions-a-week: 2 } } }
athletes:
  first: { squad: s, born: 2011-05-30, mass: 55 kg }
  of-the-same-age: { squad: s, born: 2011-12-04, mass: 105 kg }
  younger: { squad: s, born: 2013-12-04, mass: 55 kg }
  growing: { squad: s, born: 2012-02-10, mass: 55 kg }
  grown-later: { squad: s, born: 2012-03-10, mass: 55 kg }
  uncertain: { squad: s, born: 2013, mass: 55 kg }
  unwritten: { squad: s, mass: 55 kg }
rules: { weekly-rise: [{ most: 8 %, squads: [s], because: grown 4 cm }] }
pins: [{ week: 2027-02-15, leave-out: [lateral-bound], because: no room }]
`);
  const built = new Map([...compilePlan(juniors()).athletes].map((one) => [one.athlete.id, one]));

  test('who is of the same age all season long has the very same weeks', () => {
    expect(built.get('of-the-same-age')?.weeks).toBe(built.get('first')?.weeks);
  });

  test.each([...built.keys()])('%s gets what being compiled alone gives', (id) => {
    const { weeks, diagnostics } = aloneIn(juniors(), id);
    expect(JSON.stringify(built.get(id)?.weeks)).toBe(JSON.stringify(weeks));
    expect(built.get(id)?.diagnostics).toEqual(diagnostics);
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

describe('of a squad whose members lift by maxima of their own', () => {
  const lifters = () =>
    planOf(`footfall: 1
season: { title: Loads, sport: volleyball, starts: 2027-01-04 }
places: { gym: { surface: wood, kit: { hurdles: 6, racks: 4, benches: 2, bars: [20 kg], smallest-plate: 1.25 kg } } }
slots: [{ day: monday, minutes: 90, place: gym }, { day: thursday, minutes: 90, place: gym }]
closures: [{ from: 2027-02-08, until: 2027-03-07, because: floor laid anew, trained: none }]
competitions: [{ name: Cup, date: 2027-05-22, prepare: peak }]
squads: { s: { level: advanced, now: { contacts-a-session: 100, sessions-a-week: 2 } } }
athletes:
  strong: { squad: s, born: 1999-04, mass: 70 kg, lifts: { back-squat: { max: 120 kg, on: 2026-12-28 } } }
  middling: { squad: s, born: 1999-05, mass: 70 kg, lifts: { back-squat: { max: 85 kg, on: 2026-12-28 } } }
  in-pounds: { squad: s, born: 1999-05, mass: 70 kg, lifts: { back-squat: { max: 225 lb, on: 2026-12-28 } } }
  weak: { squad: s, born: 1999-06, mass: 70 kg, lifts: { back-squat: { max: 26 kg, on: 2026-12-28 } } }
  weakest: { squad: s, born: 1999-06, mass: 70 kg, lifts: { back-squat: { max: 15 kg, on: 2026-12-28 } } }
  none: { squad: s, born: 1999-07, mass: 70 kg }
  did: { squad: s, born: 1999-07, mass: 70 kg, lifts: { back-squat: { did: 75 kg x 5, on: 2026-12-28 } } }
  stale: { squad: s, born: 1999-07, mass: 70 kg, lifts: { back-squat: { max: 90 kg, on: 2026-09-28 } } }
  tested: { squad: s, born: 1999-07, mass: 70 kg, lifts: { back-squat: { max: 90 kg, on: 2027-03-08 } } }
  pressing: { squad: s, born: 1999-07, mass: 70 kg, lifts: { bench-press: { max: 50 kg, on: 2026-12-28 } } }
  both: { squad: s, born: 1999-07, mass: 70 kg, lifts: { back-squat: { max: 90 kg, on: 2026-12-28 }, bench-press: { max: 50 kg, on: 2026-12-28 } } }
  both-but-weak: { squad: s, born: 1999-07, mass: 70 kg, lifts: { back-squat: { max: 95 kg, on: 2026-12-28 }, bench-press: { max: 24 kg, on: 2026-12-28 } } }
  limited: { squad: s, born: 1999-07, mass: 70 kg, lifts: { back-squat: { max: 90 kg, on: 2026-12-28 } }, limits: [{ avoid: [drops], because: knee }] }
  stronger: { squad: s, born: 1999-07, mass: 70 kg, lifts: { back-squat: { max: 122.5 kg, on: 2026-12-28 } } }
  light: { squad: s, born: 1999-07, mass: 70 kg, lifts: { back-squat: { max: 60 kg, on: 2026-12-28 } } }
pins: [{ from: 2027-01-11, until: 2027-01-24, load: { back-squat: 50 kg }, because: shown the week before }]
always: [{ squads: [s], part: lifts, lines: [{ lift: front-squat, sets: 2, reps: 3, percent: 50 % }], because: for the rack }]
`);
  const built = new Map([...compilePlan(lifters()).athletes].map((one) => [one.athlete.id, one]));
  const weeksOf = (id: string): BuiltAthlete['weeks'] => built.get(id)?.weeks ?? [];
  const isDraftOf = (id: string, of: string): boolean =>
    weeksOf(id) !== weeksOf(of) && weeksOf(id)[0]?.reasons === weeksOf(of)[0]?.reasons;

  test.each([...built.keys()])('%s gets what being compiled alone gives', (id) => {
    const { weeks, diagnostics } = aloneIn(lifters(), id);
    expect(JSON.stringify(weeksOf(id))).toBe(JSON.stringify(weeks));
    expect(built.get(id)?.diagnostics).toEqual(diagnostics);
  });

  test.each([
    ['stronger', 'strong'],
    ['middling', 'in-pounds'],
    ['middling', 'did'],
    ['middling', 'stale'],
    ['middling', 'tested'],
  ])('%s does what %s does, with kilos of her own', (id, of) => {
    expect(isDraftOf(id, of)).toBe(true);
    expect(JSON.stringify(weeksOf(id))).not.toBe(JSON.stringify(weeksOf(of)));
  });

  test('a session that hangs on no maximum is one for both', () => {
    const sessions = weeksOf('strong').flatMap((week) => week.sessions);
    const others = weeksOf('stronger').flatMap((week) => week.sessions);
    expect(sessions.some((session, index) => session === others[index])).toBe(true);
  });

  test.each([
    ['weak', 'light'],
    ['both-but-weak', 'both'],
    ['limited', 'middling'],
    ['pressing', 'middling'],
    ['none', 'middling'],
    ['light', 'middling'],
  ])('%s does not do what %s does', (id, of) => {
    expect(isDraftOf(id, of)).toBe(false);
  });
});
