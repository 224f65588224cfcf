// Sharing out a session: exact for any contacts, and never dearer than what a plain walk over all ways finds.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contactsOfRep } from '../../../src/library/drill-facts.ts';
import { ALLOTTING } from '../../../src/library/families.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import type { Drill } from '../../../src/library/types.ts';
import { allot } from '../../../src/schedule/lines/allot.ts';
import type { Aim } from '../../../src/schedule/lines/allot-target.ts';
import type { Candidate } from '../../../src/schedule/lines/choices.ts';
import { EMPTY_TALLY } from '../../../src/schedule/lines/tally.ts';
import { getDrill } from './make-lines.ts';

const NO_MORE = Number.POSITIVE_INFINITY;

const aim = (contacts: number): Aim => ({
  key: '',
  directions: { vertical: 50, horizontal: 25, lateral: 25 },
  fast: { from: 10, to: 30 },
  points: 10,
  contacts,
});

const free = (drill: Drill): Candidate => ({ drill, most: NO_MORE, keep: false });

const someDrills = fc.uniqueArray(fc.constantFrom(...BUILT_IN.drills.values()), {
  minLength: 2,
  maxLength: 4,
  selector: (drill) => drill.family,
});

test('the lines add up exactly, in the sets and reps of their drills', () => {
  fc.assert(
    fc.property(someDrills, fc.integer({ min: 4, max: 28 }), (drills, fives) => {
      fc.pre(drills.some((drill) => contactsOfRep(drill) === 1));
      const contacts = fives * 5;
      const made = allot(drills.map(free), contacts, EMPTY_TALLY, aim(contacts));
      expect(made).toBeDefined();
      let sum = 0;
      made?.choices.forEach((choice, index) => {
        const drill = drills[index];
        if (choice === undefined || drill === undefined) return;
        sum += choice.sets * choice.reps * contactsOfRep(drill);
        if (made.widened) return;
        expect(choice.sets).toBeGreaterThanOrEqual(drill.sets.from);
        expect(choice.sets).toBeLessThanOrEqual(drill.sets.to);
        expect(choice.reps).toBeGreaterThanOrEqual(drill.reps.from);
        expect(choice.reps).toBeLessThanOrEqual(drill.reps.to);
      });
      expect(sum).toBe(contacts);
    }),
  );
});

interface Way {
  readonly sets: number;
  readonly reps: number;
}

/** Every sets and reps of a drill that make a step of contacts, and leaving it out. */
function waysOf(drill: Drill, step: number): readonly (Way | undefined)[] {
  const ways: (Way | undefined)[] = [undefined];
  for (let sets = drill.sets.from; sets <= drill.sets.to; sets += 1) {
    for (let reps = drill.reps.from; reps <= drill.reps.to; reps += 1) {
      const contacts = sets * reps * contactsOfRep(drill);
      const whole = step > 1 || contacts >= ALLOTTING.leastUneven;
      if (contacts % step === 0 && whole) ways.push({ sets, reps });
    }
  }
  return ways;
}

/** The stated cost of one way to share out the last session of a week that has no other. */
function costOf(drills: readonly Drill[], ways: readonly (Way | undefined)[], contacts: number): number {
  const wanted = aim(contacts);
  const got = { vertical: 0, horizontal: 0, lateral: 0, fast: 0 };
  let cost = 0;
  let sum = 0;
  drills.forEach((drill, index) => {
    const way = ways[index];
    if (way === undefined) {
      cost += ALLOTTING.leftOut;
      return;
    }
    const own = way.sets * way.reps * contactsOfRep(drill);
    sum += own;
    got.vertical += (drill.direction.vertical * own) / 100;
    got.horizontal += (drill.direction.horizontal * own) / 100;
    got.lateral += (drill.direction.lateral * own) / 100;
    got.fast += drill.cycle === 'fast' ? own : 0;
    const odd = Math.max(0, ALLOTTING.usualSets.from - way.sets, way.sets - ALLOTTING.usualSets.to);
    cost += odd * ALLOTTING.oddSets + way.sets * ALLOTTING.set + (own % 5 === 0 ? 0 : ALLOTTING.uneven);
    cost += (own - contacts / drills.length) ** 2 * ALLOTTING.even;
  });
  if (sum !== contacts) return Number.POSITIVE_INFINITY;
  for (const direction of ['vertical', 'horizontal', 'lateral'] as const) {
    const off = got[direction] - (wanted.directions[direction] * contacts) / 100;
    cost += off ** 2 * ALLOTTING.direction;
    if (Math.abs(off) > (wanted.points * contacts) / 100 + 1e-9) cost += ALLOTTING.directionNamed;
  }
  const least = (wanted.fast.from * contacts) / 100;
  const most = (wanted.fast.to * contacts) / 100;
  const outside = Math.max(0, least - got.fast, got.fast - most);
  return cost + outside ** 2 * ALLOTTING.fast + (outside > 0 ? ALLOTTING.fastNamed : 0);
}

function cheapest(drills: readonly Drill[], contacts: number, step: number): number {
  let best = Number.POSITIVE_INFINITY;
  const walk = (index: number, ways: readonly (Way | undefined)[]): void => {
    const drill = drills[index];
    if (drill === undefined) {
      best = Math.min(best, costOf(drills, ways, contacts));
      return;
    }
    for (const way of waysOf(drill, step)) walk(index + 1, [...ways, way]);
  };
  walk(0, []);
  return best;
}

test('no other way to share out the session costs less', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.constantFrom(...BUILT_IN.drills.values()), {
        minLength: 2,
        maxLength: 3,
        selector: (drill) => drill.family,
      }),
      fc.integer({ min: 4, max: 20 }),
      (drills, fives) => {
        const contacts = fives * 5;
        const neat = cheapest(drills, contacts, 5);
        const best = neat > ALLOTTING.goodEnough ? Math.min(neat, cheapest(drills, contacts, 1)) : neat;
        fc.pre(best < Number.POSITIVE_INFINITY);
        const made = allot(drills.map(free), contacts, EMPTY_TALLY, aim(contacts));
        expect(costOf(drills, made?.choices ?? [], contacts)).toBeCloseTo(best, 6);
      },
    ),
    { numRuns: 60 },
  );
});

test('no drill gets more than its most', () => {
  const candidates = [
    { drill: getDrill('drop-jump-20'), most: 20, keep: false },
    free(getDrill('countermovement-jump')),
    free(getDrill('standing-long-jump')),
  ];
  const made = allot(candidates, 100, EMPTY_TALLY, { ...aim(100), fast: { from: 80, to: 100 } });
  expect(made?.choices[0]?.contacts).toBe(20);
});

test('what the week already holds is made up for', () => {
  const drills = ['countermovement-jump', 'standing-long-jump', 'side-jump-stick'].map(getDrill);
  const vertical = { ...EMPTY_TALLY, contacts: 50, vertical: 5000 };
  const made = allot(drills.map(free), 50, vertical, { ...aim(100), fast: { from: 0, to: 100 } });
  const contacts = made?.choices.map((choice) => choice?.contacts ?? 0) ?? [];
  expect(contacts[0]).toBeLessThan(contacts[1] ?? 0);
  expect(contacts[0]).toBeLessThan(contacts[2] ?? 0);
});

test('pinned sets are kept, and reps make the session', () => {
  const candidates = [{ ...free(getDrill('pogo')), sets: 2, keep: true }, free(getDrill('countermovement-jump'))];
  const made = allot(candidates, 40, EMPTY_TALLY, aim(40));
  expect(made?.choices[0]?.sets).toBe(2);
  expect(made?.choices.reduce((sum, choice) => sum + (choice?.contacts ?? 0), 0)).toBe(40);
});

test('ranges widen only when nothing else adds up', () => {
  const pogo = [free(getDrill('pogo'))];
  expect(allot(pogo, 60, EMPTY_TALLY, aim(60))?.widened).toBe(false);
  expect(allot(pogo, 65, EMPTY_TALLY, aim(65))?.widened).toBe(true);
});

test('a drill done on each leg alone makes no odd number of contacts', () => {
  expect(allot([free(getDrill('single-leg-pogo'))], 15, EMPTY_TALLY, aim(15))).toBeUndefined();
});

test('where time is short there are fewer sets', () => {
  const drills = ['countermovement-jump', 'standing-long-jump', 'side-jump-stick'].map(getDrill).map(free);
  const sizes = [50, 60, 70, 80, 90, 100];
  const sets = (contacts: number, brief: boolean): number =>
    allot(drills, contacts, EMPTY_TALLY, aim(contacts), brief)?.choices.reduce(
      (sum, choice) => sum + (choice?.sets ?? 0),
      0,
    ) ?? 0;
  const total = (brief: boolean): number => sizes.reduce((sum, contacts) => sum + sets(contacts, brief), 0);
  for (const contacts of sizes) expect(sets(contacts, true)).toBeLessThanOrEqual(sets(contacts, false));
  expect(total(true)).toBeLessThan(total(false));
});
