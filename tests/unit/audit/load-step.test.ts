import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { HALL, KIT, lift, place, slot } from './make-build.ts';
import type { WeekSpec } from './make-build.ts';

const RULE = 'load-step';

const week = (kilos: number, change: Partial<WeekSpec> = {}, id = 'back-squat'): WeekSpec => ({
  sessions: [{ on: 1, lines: [lift(id, 3, 5, { loadGrams: kilos * 1000 })] }],
  ...change,
});

describe('load-step', () => {
  it('goes up by a tenth', () => {
    expectSilent(RULE, { weeks: [week(100), week(109)] });
    expectSilent(RULE, { weeks: [week(100), week(110)] });
    expectFinding(RULE, { weeks: [week(100), week(111)] }, 2);
  });

  it('goes up by the smallest plates where that is more', () => {
    expectSilent(RULE, { weeks: [week(20), week(22.5)] });
    expectFinding(RULE, { weeks: [week(20), week(23)] }, 2);
  });

  it('goes up by the next dumbbell', () => {
    const gym = { ...HALL, kit: { ...KIT, dumbbellsGrams: [10_000, 14_000, 18_000] } };
    const at = (kilos: number): WeekSpec => ({
      sessions: [
        { on: 1, slot: slot(1, { place: gym }), lines: [lift('goblet-squat', 3, 8, { loadGrams: kilos * 1000 })] },
      ],
    });
    expectSilent(RULE, { weeks: [at(10), at(14)] });
    expectFinding(RULE, { weeks: [at(10), at(18)] }, 2);
  });

  it('compares loading weeks of one block, over the easy ones between', () => {
    expectFinding(RULE, { weeks: [week(100), week(60, { kind: 'deload' }), week(111)] }, 3);
    expectSilent(RULE, { weeks: [week(100), week(120, { block: 2 })] });
    expectSilent(RULE, { weeks: [week(100), week(130, { kind: 'deload' })] });
  });

  it('compares the heaviest sets of one lift', () => {
    const two: WeekSpec = {
      sessions: [
        { on: 1, lines: [lift('back-squat', 3, 5, { loadGrams: 60_000 })] },
        { on: 3, lines: [lift('back-squat', 3, 5, { loadGrams: 100_000 })] },
      ],
    };
    expectSilent(RULE, { weeks: [two, week(110)] });
    expectSilent(RULE, { weeks: [week(60), week(90, {}, 'deadlift')] });
  });

  it('says the kilos, and points at what was written', () => {
    const line = lift('back-squat', 3, 5, { loadGrams: 120_000, origin: { kind: 'written', span: place(17) } });
    const said = found(RULE, { weeks: [week(100), { sessions: [{ on: 1, lines: [line] }] }] })[0];
    expect(said?.params).toMatchObject({ found: 120, before: 100, most: 110 });
    expect(said?.span).toEqual(place(17));
  });

  it('takes the heaviest set, wherever in the week it stands', () => {
    const two = (first: number, second: number): WeekSpec => ({
      sessions: [first, second].map((kilos, index) => ({
        on: index === 0 ? 1 : 3,
        lines: [lift('back-squat', 3, 5, { loadGrams: kilos * 1000 })],
      })),
    });
    expectSilent(RULE, { weeks: [two(100, 60), week(110)] });
    expectFinding(RULE, { weeks: [two(60, 100), two(111, 60)] }, 2);
  });

  it('goes up by the next kettlebell', () => {
    const gym = { ...HALL, kit: { ...KIT, kettlebellsGrams: [12_000, 16_000, 24_000] } };
    const at = (kilos: number): WeekSpec => ({
      sessions: [
        {
          on: 1,
          slot: slot(1, { place: gym }),
          lines: [lift('kettlebell-deadlift', 3, 8, { loadGrams: kilos * 1000 })],
        },
      ],
    });
    expectSilent(RULE, { weeks: [at(12), at(16)] });
    expectFinding(RULE, { weeks: [at(12), at(24)] }, 2);
  });
});
