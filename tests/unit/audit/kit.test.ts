import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { drill, HALL, KIT, lift, place, slot } from './make-build.ts';
import type { BuiltLine } from '../../../src/build/types.ts';
import type { Kit } from '../../../src/plan/types.ts';

const RULE = 'kit';

describe('kit', () => {
  const at = (kit: Partial<Kit>, line: BuiltLine) => ({
    weeks: [
      { sessions: [{ on: 1, slot: slot(1, { place: { ...HALL, kit: { ...KIT, ...kit } } }), lines: [line] } as const] },
    ],
  });
  const none = { counts: new Map() };

  it('wants what a line needs at the place', () => {
    expectSilent(RULE, at({}, drill('hurdle-hop', 3, 5)));
    expectFinding(RULE, at(none, drill('hurdle-hop', 3, 5)), 1);
    expectSilent(RULE, at(none, drill('pogo', 3, 5)));
    expectSilent(RULE, at({}, lift('back-squat', 3, 5)));
    expectFinding(RULE, at({ counts: new Map([['bars', 2]]) }, lift('back-squat', 3, 5)), 1);
  });

  it('wants a box of the height that is dropped from', () => {
    expectSilent(RULE, at({ boxesCm: [30] }, drill('drop-jump-30', 2, 5)));
    expectSilent(RULE, at({ boxesCm: [31] }, drill('drop-jump-30', 2, 5)));
    expectSilent(RULE, at({ boxesCm: [25] }, drill('drop-jump-30', 2, 5)));
    expectFinding(RULE, at({ boxesCm: [32] }, drill('drop-jump-30', 2, 5)), 1);
    expectFinding(RULE, at({ boxesCm: [24] }, drill('drop-jump-30', 2, 5)), 1);
    expectSilent(RULE, at({ boxesCm: [] }, drill('drop-jump-30', 2, 5)));
  });

  it('wants kilos that the bars and plates make', () => {
    const loaded = (barGrams: number, perSideGrams: number, loadGrams: number) =>
      at({}, lift('back-squat', 3, 5, { barGrams, perSideGrams, loadGrams }));
    expectSilent(RULE, loaded(20_000, 21_250, 62_500));
    expectFinding(RULE, loaded(20_000, 21_000, 62_000), 1);
    expectFinding(RULE, loaded(20_000, 21_250, 65_000), 1);
    expectFinding(RULE, loaded(10_000, 21_250, 52_500), 1);
  });

  it('says what is missing, and where', () => {
    const said = found(RULE, at(none, drill('hurdle-hop', 3, 5)))[0];
    expect(said?.params).toMatchObject({ missing: 'hurdles', place: 'hall', exercise: 'hurdle-hop' });
    expect(said?.related[0]?.span).toEqual(place(2));
  });

  it('wants one piece of each', () => {
    const one = { counts: new Map([['hurdles', 1] as const]) };
    expectSilent(RULE, at(one, drill('hurdle-hop', 3, 5)));
    expectFinding(RULE, at({ counts: new Map([['hurdles', 0] as const]) }, drill('hurdle-hop', 3, 5)), 1);
  });
});
