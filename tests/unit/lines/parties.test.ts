// A squad of several sports: the largest chooses its families as if it were alone, the others keep to them where they can
// and still jump in their own directions.

import { describe, expect, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import type { BuiltAthlete } from '../../../src/build/types.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { findSport } from '../../../src/library/sports.ts';
import { DIRECTIONS, LEVELS } from '../../../src/library/types.ts';
import type { Level } from '../../../src/library/types.ts';
import type { Athlete, Plan } from '../../../src/plan/types.ts';
import { chooseGroups } from '../../../src/schedule/lines.ts';
import { planOf } from '../plan/loaded.ts';
import { athlete, FIELD, HALL, HERE, JUMPING_PHASES, makePlan, strong } from './make-lines.ts';

const of = (sport: string, level: Level, ...ids: readonly string[]): readonly Athlete[] =>
  ids.map((id) =>
    strong(level, { id, squad: 'jumps', sport: { value: sport, origin: { kind: 'written', span: HERE } } }),
  );

const familiesOf = (plan: Plan, id: string): readonly (readonly string[])[] => {
  const { choice } = chooseGroups(plan);
  const who = plan.athletes.find((one) => one.id === id) ?? athlete('beginner');
  return [HALL, FIELD].flatMap((place) => JUMPING_PHASES.map((phase) => choice.of(who, place, phase).families));
};

const LONG = of('long-jump', 'intermediate', 'la', 'lo', 'lu');
const HIGH = of('high-jump', 'intermediate', 'ha', 'ho');

describe('a squad of long and high jumpers', () => {
  const mixed = makePlan({ athletes: [...HIGH, ...LONG] });

  test('has the long jumpers, who are more, do what they would alone', () => {
    const alone = makePlan({ athletes: [...LONG] });
    expect(familiesOf(mixed, 'la')).toEqual(familiesOf(alone, 'la'));
    expect(familiesOf(mixed, 'la')).toEqual(familiesOf(mixed, 'lu'));
  });

  test('leaves each their own', () => {
    expect(familiesOf(mixed, 'ha')).not.toEqual(familiesOf(mixed, 'la'));
  });

  test('chooses the same in whatever order they stand, and of equal parts the same one first', () => {
    const turned = makePlan({ athletes: [...LONG.toReversed(), ...HIGH.toReversed()] });
    for (const id of ['la', 'ha']) expect(familiesOf(turned, id)).toEqual(familiesOf(mixed, id));
    const [even, odd] = [
      [...HIGH, ...LONG.slice(1)],
      [...LONG.slice(1).toReversed(), ...HIGH],
    ];
    for (const id of ['lo', 'ha'])
      expect(familiesOf(makePlan({ athletes: even }), id)).toEqual(familiesOf(makePlan({ athletes: odd }), id));
  });

  test('counts all of them at the kit', () => {
    const { choice } = chooseGroups(mixed);
    expect(choice.people('jumps')).toBe(5);
  });
});

test('whoever are fewer do mostly the families of the others, and more of them than by chance', () => {
  let [alone, beside, all] = [0, 0, 0];
  for (const level of LEVELS) {
    for (const [most, few] of MIXES) {
      const [large, small] = [of(most, level, 'la', 'lo', 'lu'), of(few, level, 'sa', 'so')];
      const squad = makePlan({ athletes: [...large, ...small] });
      const theirs = familiesOf(squad, 'la');
      const shared = (plan: Plan): number =>
        familiesOf(plan, 'sa').reduce(
          (sum, families, index) => sum + families.filter((one) => theirs[index]?.includes(one)).length,
          0,
        );
      alone += shared(makePlan({ athletes: small }));
      beside += shared(squad);
      all += familiesOf(squad, 'sa').flat().length;
    }
  }
  expect(beside).toBeGreaterThan(alone);
  expect(beside * 4).toBeGreaterThan(all * 3);
});

const MIXES = [
  ['long-jump', 'high-jump'],
  ['high-jump', 'triple-jump'],
  ['basketball', 'long-jump'],
  ['volleyball', 'football'],
] as const;

test('sports that ask for the same directions are one', () => {
  const plan = makePlan({
    athletes: [...of('basketball', 'beginner', 'ba', 'bo'), ...of('netball', 'beginner', 'na')],
  });
  const { choice } = chooseGroups(plan);
  const [one, , other] = plan.athletes;
  expect(one && other && choice.party(one) === choice.party(other)).toBe(true);
  expect(familiesOf(plan, 'na')).toEqual(familiesOf(plan, 'ba'));
});

const CLUB = `footfall: 1
season: { title: Club, starts: 2027-01-04 }
places: { track: { surface: rubber track, kit: { hurdles: 10, boxes: [30 cm, 45 cm], mats: 2, medicine-balls: 4 } } }
slots: [{ day: tuesday, minutes: 75, place: track, use: jumps }, { day: saturday, minutes: 75, place: track, use: jumps }]
competitions: [{ name: Indoor meeting, date: 2027-03-27, prepare: peak, jumps: 8 }]
squads: { jumps: { level: intermediate, now: { contacts-a-session: 80, sessions-a-week: 2 } } }
athletes:
  la: { squad: jumps, sport: long-jump, born: 2001 }
  lo: { squad: jumps, sport: long-jump, born: 2001 }
  ha: { squad: jumps, sport: high-jump, born: 2001 }
  ho: { squad: jumps, sport: high-jump, born: 2001 }
  ta: { squad: jumps, sport: triple-jump, born: 2001 }
`;

describe('their seasons', () => {
  const built = new Map([...compilePlan(planOf(CLUB)).athletes].map((one) => [one.athlete.id, one]));
  const seasonOf = (id: string): BuiltAthlete['weeks'] => built.get(id)?.weeks ?? [];

  test('are one for two of a sport, and another for another sport', () => {
    expect(seasonOf('lo')).toBe(seasonOf('la'));
    expect(seasonOf('ho')).toBe(seasonOf('ha'));
    expect(JSON.stringify(seasonOf('ha'))).not.toBe(JSON.stringify(seasonOf('la')));
  });

  test.each(['la', 'ha', 'ta'])('%s gets what being compiled alone gives', (id) => {
    const plan = planOf(CLUB);
    const who = plan.athletes.find((one) => one.id === id);
    expect(who && compilePlan(plan).athlete(who).weeks).toEqual(seasonOf(id));
  });

  test.each([
    ['la', 'long-jump'],
    ['ha', 'high-jump'],
    ['ta', 'triple-jump'],
  ])('%s jumps in the directions of the %s', (id, sport) => {
    const wanted = findSport(sport)?.directions ?? { vertical: 0, horizontal: 0, lateral: 0 };
    const counts = { vertical: 0, horizontal: 0, lateral: 0 };
    let all = 0;
    for (const { lines } of seasonOf(id).flatMap(({ sessions }) => sessions)) {
      for (const { exercise, contacts } of lines) {
        const drill = BUILT_IN.drills.get(exercise);
        if (drill === undefined) continue;
        all += contacts;
        for (const way of DIRECTIONS) counts[way] += (contacts * drill.direction[way]) / 100;
      }
    }
    for (const way of DIRECTIONS) expect(Math.abs((counts[way] * 100) / all - wanted[way])).toBeLessThan(10);
    expect(built.get(id)?.diagnostics.filter(({ rule }) => rule === 'direction-mix')).toEqual([]);
  });
});
