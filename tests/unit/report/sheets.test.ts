// What sheets say: plates, names, what to do instead, names of files, and lines as they stand on paper.

import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { BUILT_IN } from '../../../src/library/index.ts';
import type { Drill } from '../../../src/library/types.ts';
import { limitWords } from '../../../src/report/limit-words.ts';
import { findEasierRung, lighterLoad } from '../../../src/report/easier-rung.ts';
import { createFileNames } from '../../../src/report/file-names.ts';
import { plateWords } from '../../../src/report/plates.ts';
import { sheetLine } from '../../../src/report/sheet-line.ts';
import { createSheetNames } from '../../../src/report/sheet-names.ts';
import type { Athlete, Kit, Pin, PinEffect, TrainingPlace } from '../../../src/plan/types.ts';
import { athlete, day, HERE, line, madePlan } from './made-build.ts';

const KIT: Kit = {
  counts: new Map([
    ['boxes', 2],
    ['hurdles', 6],
    ['racks', 2],
  ]),
  boxesCm: [20, 30],
  barsGrams: [20_000],
  smallestPlateGrams: 1250,
  dumbbellsGrams: [10_000, 14_000, 18_000],
  kettlebellsGrams: [],
};
const GYM: TrainingPlace = { id: 'gym', kit: KIT, span: HERE };

describe('plates', () => {
  test.each([
    [0, 1250, ''],
    [28_750, 1250, '25 + 2.5 + 1.25 kg'],
    [35_000, 1250, '25 + 10 kg'],
    [4000, 2000, '2 + 2 kg'],
    [45 * 453.59237, 2.5 * 453.59237, '45 lb'],
    [57.5 * 453.59237, 2.5 * 453.59237, '45 + 10 + 2.5 lb'],
  ])('%d g with %d g the smallest is "%s"', (grams, smallest, words) => {
    expect(plateWords(grams, smallest)).toBe(words);
  });

  test('nothing is said that does not add up', () => {
    expect(plateWords(1000, 1250)).toBeUndefined();
    expect(plateWords(5000, 777)).toBeUndefined();
  });

  test('what is said adds up to the side, and no plate is lighter than the smallest', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.constantFrom(1250, 2500, 5000, 500), (count, smallest) => {
        const words = plateWords(count * smallest, smallest) ?? '';
        const plates = words.replace(' kg', '').split(' + ').map(Number);
        expect(plates.reduce((sum, plate) => sum + plate * 1000, 0)).toBe(count * smallest);
        expect(Math.min(...plates) * 1000).toBeGreaterThanOrEqual(smallest);
      }),
    );
  });
});

describe('names', () => {
  const born = (date: string): Athlete['born'] => ({ earliest: day(date), latest: day(date) });
  const named = (id: string, name: string, birth?: string): Athlete => {
    const birthday = birth === undefined ? undefined : born(birth);
    return athlete('beginner', 40, { id, name, ...(birthday !== undefined && { born: birthday }) });
  };
  const people = [
    named('a', 'Kit Longname', '2013-02-01'),
    named('b', 'Longname, Bo', '2013-02-01'),
    named('c', '山田 花子', '2013-02-01'),
    named('d', 'Ada One', '2013-02-01'),
    named('e', 'Ada Two', '2013-02-01'),
    named('f', 'Grown Up', '2011-03-01'),
    named('g', 'No Birthday'),
    named('h', 'Ada Three'),
  ];
  const names = createSheetNames({ athletes: people });
  const on = (date: string): readonly string[] => people.map((one) => names.on(one, day(date)));

  test('are first names or numbers under 16 and of an unknown age, and as written from then on', () => {
    expect(on('2027-02-28')).toEqual('Kit, Bo, No. 3, Ada (no. 4), Ada (no. 5), Grown, No, Ada (no. 8)'.split(', '));
    expect(names.on(people[5] ?? athlete('beginner', 1), day('2027-03-01'))).toBe('Grown Up');
  });

  test('of grown people who share one have a number as well', () => {
    const alike = [
      named('a', 'Kit L.', '2001-02-01'),
      named('b', 'kit  l.', '2002-02-01'),
      named('c', 'Kit M.', '2002-02-01'),
    ];
    const told = createSheetNames({ athletes: alike });
    const shown = alike.slice(0, 2).map((one) => [told.on(one, day('2027-03-01')), told.short(one, day('2027-03-01'))]);
    expect(shown).toEqual([
      ['Kit L. (no. 1)', 'Kit L. (no. 1)'],
      ['kit  l. (no. 2)', 'kit  l. (no. 2)'],
    ]);
  });
});

test.each([
  ['back-squat', 'no back squat of any kind'],
  ['front-squat', 'no front squat'],
])('a limit of %s says "%s"', (id, words) => {
  const range = { from: day('2027-01-04'), until: day('2027-02-01') };
  const limit = { range, avoid: [{ kind: 'lift', id } as const], because: 'x', span: HERE };
  expect(limitWords(madePlan(), limit)).toContain(words);
});

describe('what to do instead', () => {
  const easier = (id: string, limits: Athlete['limits'] = []): string | undefined => {
    const drill = BUILT_IN.drills.get(id);
    return drill === undefined ? undefined : findEasierRung(BUILT_IN, drill, GYM, { limits })?.id;
  };

  test('is the next easier rung', () => {
    expect(easier('hurdle-hop')).toBe('rebound-jump-series');
    expect(easier('rebound-jump')).toBeUndefined();
  });

  test('passes over a drill the athlete is barred from', () => {
    const avoid = [{ kind: 'drill', id: 'rebound-jump-series' } as const];
    const range = { from: 0, until: 1 };
    expect(easier('hurdle-hop', [{ range, avoid, because: 'x', span: HERE }])).toBe('rebound-jump');
  });

  test('is no drill that an athlete is barred from by its kind, for any drill there is', () => {
    const range = { from: 0, until: 1 };
    const all = [...BUILT_IN.drills.values()];
    for (const cycle of ['slow', 'fast'] as const) {
      const limits = [{ range, avoid: [{ kind: 'cycle', id: cycle } as const], because: 'x', span: HERE }];
      const offered = all.flatMap((drill) =>
        drill.cycle === cycle ? [] : (findEasierRung(BUILT_IN, drill, GYM, { limits }) ?? []),
      );
      expect(offered.filter((one) => one.cycle === cycle)).toEqual([]);
    }
    expect(easier('single-leg-snap-down')).toBe('jump-and-stick');
    const slow = [{ range, avoid: [{ kind: 'cycle', id: 'slow' } as const], because: 'x', span: HERE }];
    expect(easier('single-leg-snap-down', slow)).not.toBe('jump-and-stick');
  });

  test('is no drill that the coach has taken out', () => {
    const one = athlete('intermediate', 80, { id: 'mira' });
    const pin = (effect: PinEffect, who: Pin['who'] = { kind: 'everybody' }): Pin => ({
      range: { from: 0, until: 1 },
      who,
      effects: [effect],
      because: 'shins',
      span: HERE,
    });
    const insteadOf = (...pins: readonly Pin[]): string =>
      sheetLine({ plan: { ...madePlan(), pins }, athlete: one, place: GYM, lines: [] }, line('hurdle-hop')).instead;
    const leaveOut: PinEffect = { kind: 'leave-out', exercises: ['rebound-jump-series'] };
    const swap: PinEffect = { kind: 'swap', swaps: new Map([['rebound-jump-series', 'pogo']]) };
    const others: Pin['who'] = { kind: 'some', squads: [], athletes: ['tuva'] };
    expect(insteadOf()).toBe('rebound jumps for height');
    expect(insteadOf(pin(leaveOut, others))).toBe('rebound jumps for height');
    expect(insteadOf(pin(leaveOut))).toBe('rebound jump');
    expect(insteadOf(pin(swap))).toBe('rebound jump');
  });

  test('is never harder in any way, for any drill there is', () => {
    const tiers = ['low', 'moderate', 'high'];
    for (const drill of BUILT_IN.drills.values()) {
      const other: Drill | undefined = findEasierRung(BUILT_IN, drill, GYM, { limits: [] });
      if (other === undefined) continue;
      expect(tiers.indexOf(other.tier)).toBeLessThanOrEqual(tiers.indexOf(drill.tier));
      expect(other.stage).toBeLessThanOrEqual(drill.stage);
      expect(other.dropCm ?? 0).toBeLessThanOrEqual(drill.dropCm ?? 0);
      expect(drill.legs === 'both' && other.legs !== 'both').toBe(false);
      expect(other.kit.filter((item) => !KIT.counts.has(item))).toEqual([]);
    }
  });

  test('is a lighter load that the place can make, never a heavier one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 16, max: 160 }), (steps) => {
        const loadGrams = steps * 1250 * 2;
        const lighter = lighterLoad({ loadGrams, barGrams: 20_000 }, 'bar', KIT);
        if (loadGrams <= 20_000) return;
        expect(lighter?.grams).toBeLessThan(loadGrams);
        expect(((lighter?.grams ?? 0) - 20_000) % 2500).toBe(0);
      }),
    );
    // A trap bar's own weight isn't known: the same plates come off both sides.
    expect(lighterLoad({ loadGrams: 77_500, barGrams: undefined }, 'trap-bar', KIT)).toEqual({ grams: 67_500 });
    expect(lighterLoad({ loadGrams: 18_000, barGrams: undefined }, 'dumbbells', KIT)).toEqual({ grams: 14_000 });
    expect(lighterLoad({ loadGrams: 10_000, barGrams: undefined }, 'dumbbells', KIT)).toBeUndefined();
  });
});

describe('a line on paper', () => {
  const plan = madePlan();
  const paper = (exercise: string, change: Parameters<typeof line>[1] = {}, units: 'metric' | 'imperial' = 'metric') =>
    sheetLine(
      {
        plan: { ...plan, season: { ...plan.season, units } },
        athlete: athlete('intermediate', 80),
        place: GYM,
        lines: [],
      },
      line(exercise, change),
    );

  test('says what is on the bar, and what to take instead', () => {
    const squat = { loadGrams: 77_500, barGrams: 20_000, perSideGrams: 28_750, restSeconds: 180, estimated: true };
    expect(paper('back-squat', squat)).toMatchObject({
      name: 'Back squat',
      dose: '3 × 5',
      load: '77.5 kg',
      made: 'bar 20 kg, each side 25 + 2.5 + 1.25 kg',
      rest: '3 min',
      notes: [],
      estimated: true,
      instead: '67.5 kg (20 + 2.5 + 1.25 kg a side)',
    });
  });

  test('says how hard where no load does, and counts each side and seconds', () => {
    expect(paper('pull-up', { reserve: 3 })).toMatchObject({
      effort: '3 left',
      picksLoad: false,
      instead: 'one set less',
    });
    expect(paper('bench-press', { reserve: 2, sets: 1 })).toMatchObject({
      effort: '2 left',
      picksLoad: true,
      instead: 'skip it',
    });
    expect(paper('plank', { reps: 30 }).dose).toBe('3 × 30 s');
    expect(paper('single-leg-long-jump', { sets: 2 }).dose).toBe('2 × 5 each');
  });

  test('has heights in the units of the plan', () => {
    expect(paper('drop-jump-40', { dropCm: 40 }).name).toBe('Drop jump, 40 cm');
    expect(paper('drop-jump-40', { dropCm: 40 }, 'imperial').name).toBe('Drop jump, 15.5 in');
  });
});

describe('names of files', () => {
  test('are safe, and never two the same where case does not count', () => {
    const ids = ['mira', 'Mira', 'MIRA', 'łucja', 'con', 'a-b_c', 'x'.repeat(64), `${'x'.repeat(63)}y`];
    const names = createFileNames(ids);
    const made = ids.map((id) => names.of(id));
    expect(made.slice(0, 3)).toEqual(['mira', 'mira-2', 'mira-3']);
    expect(made[4]).toBe('_con');
    expect(made[5]).toBe('a-b_c');
    expect(new Set(made).size).toBe(ids.length);
    for (const name of made) expect(name).toMatch(/^[a-z0-9_~-]{1,64}$/u);
  });

  test('are different for any different ids', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.string({ minLength: 1, maxLength: 70 }), { maxLength: 20 }), (ids) => {
        const names = createFileNames(ids);
        expect(new Set(ids.map((id) => names.of(id))).size).toBe(ids.length);
      }),
    );
  });
});
