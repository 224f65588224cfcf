// Each gate just inside and just outside. Drops of every height are made here, so that the edges can be met exactly.

import { describe, expect, test } from 'vitest';
import { BUILT_IN, extendLibrary } from '../../../src/library/index.ts';
import type { Drill, Lift } from '../../../src/library/types.ts';
import type { Athlete, Avoid } from '../../../src/plan/types.ts';
import {
  drillPlaceRefusal,
  drillRefusal,
  liftRefusal,
  pinnedDrillRefusals,
} from '../../../src/schedule/lines/gates.ts';
import {
  athlete,
  bornOn,
  FIELD,
  FULL_KIT,
  getDrill,
  getLift,
  HALL,
  HERE,
  limit,
  max,
  standing,
  START,
} from './make-lines.ts';

const drop = (dropCm: number): Drill => ({
  ...getDrill('drop-jump-20'),
  id: `drop-${dropCm}`,
  dropCm,
  fromLevel: 'beginner',
});

/** Cleared for this drop by name, strong, light and advanced, unless the test says otherwise. */
function jumper(dropCm: number, change: Partial<Athlete> = {}): Athlete {
  return athlete('advanced', {
    massGrams: 70_000,
    lifts: new Map([max('back-squat', 140)]),
    cleared: new Set(['drops', `drop-${dropCm}`]),
    ...change,
  });
}

const dropBar = (dropCm: number, change: Partial<Athlete> = {}): string | undefined =>
  drillRefusal(drop(dropCm), standing(jumper(dropCm, change)))?.by;

describe('drop-age', () => {
  test.each([
    ['the day before the 14th birthday nobody drops', '2013-01-05', 20, 'drop-age'],
    ['on the 14th birthday a cleared athlete may', '2013-01-04', 20, undefined],
    ['at 15 a drop of 30 cm stands', '2011-01-05', 30, undefined],
    ['at 15 one of 31 cm does not', '2011-01-05', 31, 'drop-age'],
    ['at 16 it does', '2011-01-04', 31, undefined],
  ])('%s', (_words, born, cm, by) => {
    expect(dropBar(cm, { born: bornOn(born) })).toBe(by);
  });

  test('at 14 without clearance nothing is dropped from', () => {
    expect(dropBar(20, { born: bornOn('2013-01-04'), cleared: new Set() })).toBe('drop-clearance');
  });

  test('a year alone is read as its last day, the younger reading', () => {
    const born = { earliest: START - 365 * 14 - 100, latest: START - 365 * 14 + 100 };
    expect(dropBar(20, { born })).toBe('drop-age');
  });
});

describe('drop-clearance', () => {
  test.each([
    ['nothing cleared', [], 'drop-clearance'],
    ['drops cleared', ['drops'], undefined],
    ['this drill cleared by name', ['drop-20'], undefined],
    ['another drill cleared', ['drop-jump-30'], 'drop-clearance'],
  ])('%s', (_words, cleared, by) => {
    expect(dropBar(20, { cleared: new Set(cleared) })).toBe(by);
  });

  test.each([
    ['single-leg-hurdle-hop', [], 'drop-clearance'],
    ['single-leg-hurdle-hop', ['single-leg-high'], undefined],
    ['single-leg-hurdle-hop', ['single-leg-hurdle-hop'], undefined],
    ['long-lateral-bound', [], 'drop-clearance'],
    ['high-hurdle-hop', [], undefined],
    ['single-leg-pogo', [], undefined],
  ])('%s with %j', (id, cleared, by) => {
    expect(drillRefusal(getDrill(id), standing(athlete('advanced', { cleared: new Set(cleared) })))?.by).toBe(by);
  });
});

describe('the first drop', () => {
  test('is 20 cm, and 21 cm needs the drill to be cleared by name', () => {
    const cleared = new Set(['drops']);
    expect(dropBar(20, { cleared })).toBeUndefined();
    expect(dropBar(21, { cleared })).toBe('first-drop');
    expect(dropBar(21)).toBeUndefined();
  });

  test('a pin goes higher, but opens no other gate', () => {
    const named = standing(jumper(21, { cleared: new Set(['drops']) }));
    expect(pinnedDrillRefusals(drop(21), named, () => false)).toEqual([]);
    const beginner = standing(athlete('beginner', { cleared: new Set(['drops']), massGrams: 70_000 }));
    expect(pinnedDrillRefusals(drop(31), beginner, () => false)[0]?.by).toBe('drop-height');
    expect(pinnedDrillRefusals(drop(31), beginner, (rule) => rule === 'drop-height')[0]?.by).toBe('drop-strength');
  });
});

describe('drop-height', () => {
  test.each([
    ['beginner', 30, undefined],
    ['beginner', 31, 'drop-height'],
    ['intermediate', 40, undefined],
    ['intermediate', 41, 'drop-height'],
    ['advanced', 60, undefined],
    ['advanced', 61, 'drop-height'],
  ] as const)('%s, %i cm', (level, cm, by) => {
    expect(dropBar(cm, { levels: [{ is: level, span: HERE }] })).toBe(by);
  });
});

describe('drop-mass', () => {
  test.each([
    [100_000, 46, undefined],
    [100_000, 47, undefined],
    [100_001, 46, undefined],
    [100_001, 47, 'drop-mass'],
    [undefined, 47, 'drop-mass'],
  ])('%s g, %i cm', (massGrams, cm, by) => {
    const lifts = new Map([max('back-squat', 160)]);
    const strong = { lifts, cleared: new Set(['drops', `drop-${cm}`, 'drop-strength']) };
    const mass = massGrams === undefined ? {} : { massGrams };
    const who = athlete('advanced', { ...strong, ...mass });
    expect(drillRefusal(drop(cm), standing(who))?.by).toBe(by);
  });
});

describe('drop-strength', () => {
  test.each([
    ['no squat known, 30 cm', undefined, 30, undefined],
    ['no squat known, 31 cm', undefined, 31, 'drop-strength'],
    ['1.19 x body mass, 31 cm', 83.3, 31, 'drop-strength'],
    ['1.20 x body mass, 31 cm', 84, 31, undefined],
    ['1.20 x body mass, 45 cm', 84, 45, undefined],
    ['1.49 x body mass, 46 cm', 104.3, 46, 'drop-strength'],
    ['1.50 x body mass, 46 cm', 105, 46, undefined],
  ])('%s', (_words, kilos, cm, by) => {
    const lifts = new Map(kilos === undefined ? [] : [max('back-squat', kilos)]);
    expect(dropBar(cm, { lifts })).toBe(by);
  });

  test('an equal that is cleared stands for it, a half squat does not', () => {
    expect(dropBar(46, { lifts: new Map(), cleared: new Set(['drops', 'drop-46', 'drop-strength']) })).toBeUndefined();
    expect(dropBar(46, { lifts: new Map([max('half-squat', 200)]) })).toBe('drop-strength');
  });
});

describe('drill-level', () => {
  test.each([
    ['beginner', 'tuck-jump', 'drill-level'],
    ['intermediate', 'tuck-jump', undefined],
    ['intermediate', 'pike-jump', 'drill-level'],
    ['advanced', 'pike-jump', undefined],
  ] as const)('%s, %s', (level, id, by) => {
    expect(drillRefusal(getDrill(id), standing(athlete(level)))?.by).toBe(by);
  });

  test('a dated level counts from its day', () => {
    const levels = [
      { is: 'beginner' as const, span: HERE },
      { is: 'intermediate' as const, from: START + 1, span: HERE },
    ];
    const who = athlete('beginner', { levels });
    expect(drillRefusal(getDrill('tuck-jump'), standing(who, START))?.by).toBe('drill-level');
    expect(drillRefusal(getDrill('tuck-jump'), standing(who, START + 1))).toBeUndefined();
  });
});

describe('returning-stage', () => {
  const back = (stage: number, of: number): Athlete =>
    athlete('advanced', { returning: [{ stage, of, since: START, signed: 'physio', span: HERE }] });

  test.each([
    [1, 4, 'snap-down', undefined],
    [1, 4, 'pogo', 'returning-stage'],
    [2, 4, 'pogo', undefined],
    [2, 4, 'high-pogo', 'returning-stage'],
    [3, 4, 'high-pogo', undefined],
    [3, 4, 'pike-jump', 'returning-stage'],
    [4, 4, 'pike-jump', undefined],
    [2, 3, 'high-pogo', 'returning-stage'],
    [3, 5, 'high-pogo', 'returning-stage'],
  ])('stage %i of %i, %s', (stage, of, id, by) => {
    expect(drillRefusal(getDrill(id), standing(back(stage, of)))?.by).toBe(by);
  });

  test('opens nothing before the day it is signed', () => {
    const signedLater = (stage: number): Athlete =>
      athlete('advanced', { returning: [{ stage, of: 4, since: START + 1, signed: 'physio', span: HERE }] });
    for (const stage of [2, 3, 4]) {
      expect(drillRefusal(getDrill('snap-down'), standing(signedLater(stage)))).toBeUndefined();
      expect(drillRefusal(getDrill('pogo'), standing(signedLater(stage)))?.by).toBe('returning-stage');
    }
  });

  test('holds lifts back too', () => {
    expect(liftRefusal(getLift('front-squat'), standing(back(2, 4)), 'strength')?.by).toBe('returning-stage');
    expect(liftRefusal(getLift('front-squat'), standing(back(3, 4)), 'strength')).toBeUndefined();
  });
});

describe('limits', () => {
  const bars = (avoid: Avoid, id: string): string | undefined =>
    drillRefusal(
      getDrill(id),
      standing(athlete('advanced', { limits: [limit([avoid])], cleared: new Set(['drops', 'single-leg-high']) })),
    )?.by;

  test.each([
    [{ kind: 'drops' }, 'drop-jump-20', 'pogo'],
    [{ kind: 'drops' }, 'depth-landing-20', 'snap-down'],
    [{ kind: 'single-leg' }, 'single-leg-pogo', 'pogo'],
    [{ kind: 'single-leg' }, 'lateral-bound', 'side-jump-stick'],
    [{ kind: 'direction', id: 'lateral' }, 'straddle-hop', 'pogo'],
    [{ kind: 'direction', id: 'horizontal' }, 'one-step-jump', 'countermovement-jump'],
    [{ kind: 'cycle', id: 'fast' }, 'pogo', 'countermovement-jump'],
    [{ kind: 'tier', id: 'high' }, 'pike-jump', 'tuck-jump'],
    [{ kind: 'tier', id: 'moderate' }, 'tuck-jump', 'pogo'],
    [{ kind: 'tier', id: 'moderate' }, 'pike-jump', 'pogo'],
    [{ kind: 'family', id: 'tuck' }, 'tuck-jump', 'pogo'],
    [{ kind: 'drill', id: 'tuck-jump' }, 'tuck-jump', 'tuck-jump-stick'],
  ] satisfies readonly [Avoid, string, string][])('%j bars %s and not %s', (avoid, barred, free) => {
    expect(bars(avoid, barred)).toBe('limit');
    expect(bars(avoid, free)).toBeUndefined();
  });

  test.each([
    [{ kind: 'pattern', id: 'squat' }, 'back-squat', 'romanian-deadlift'],
    [{ kind: 'lift', id: 'back-squat' }, 'back-squat', 'front-squat'],
    [{ kind: 'lift', id: 'back-squat' }, 'box-squat', 'goblet-squat'],
    [{ kind: 'lift', id: 'back-squat' }, 'half-squat', 'trap-bar-jump'],
    [{ kind: 'lift', id: 'back-squat' }, 'jump-squat', 'dumbbell-jump'],
    [{ kind: 'lift', id: 'box-squat' }, 'box-squat', 'back-squat'],
    [{ kind: 'lift', id: 'power-clean' }, 'hang-high-pull', 'deadlift'],
    [{ kind: 'single-leg' }, 'split-squat', 'back-squat'],
    [{ kind: 'direction', id: 'vertical' }, 'jump-squat', 'back-squat'],
    [{ kind: 'cycle', id: 'slow' }, 'jump-squat', 'back-squat'],
    [{ kind: 'tier', id: 'moderate' }, 'jump-squat', 'back-squat'],
  ] satisfies readonly [Avoid, string, string][])('%j bars the lift %s and not %s', (avoid, barred, free) => {
    const held = standing(athlete('advanced', { limits: [limit([avoid])] }));
    expect(liftRefusal(getLift(barred), held, 'power')?.by).toBe('limit');
    expect(liftRefusal(getLift(free), held, 'power')).toBeUndefined();
  });

  describe('a lift with the kinds of its kinds', () => {
    const own = (id: string, maxOf: string): Lift => ({ ...getLift('back-squat'), id, maxOf });
    const { lifts } = extendLibrary(
      BUILT_IN,
      [],
      [
        own('pin-squat', 'chain-squat'),
        own('chain-squat', 'back-squat'),
        own('box-half', 'half-squat'),
        own('low-bar', 'high-bar'),
        own('high-bar', 'low-bar'),
      ],
    );
    const heldBy = (avoid: string, id: string): string | undefined => {
      const held = standing(athlete('advanced', { limits: [limit([{ kind: 'lift', id: avoid }])] }));
      return liftRefusal(lifts.get(id) ?? getLift(id), held, 'power')?.by;
    };

    test.each([
      ['back-squat', 'pin-squat', 'limit'],
      ['back-squat', 'box-half', 'limit'],
      ['chain-squat', 'pin-squat', 'limit'],
      ['low-bar', 'high-bar', 'limit'],
      ['high-bar', 'low-bar', 'limit'],
      ['pin-squat', 'chain-squat', undefined],
      ['back-squat', 'low-bar', undefined],
    ])('%s and %s', (avoid, id, by) => {
      expect(heldBy(avoid, id)).toBe(by);
    });
  });

  test('hold on their first and last day and not beyond', () => {
    const limits = [limit([{ kind: 'drill', id: 'pogo' }], { range: { from: START, until: START + 1 } })];
    const who = athlete('beginner', { limits });
    const by = (on: number): string | undefined => drillRefusal(getDrill('pogo'), standing(who, on))?.by;
    expect([START - 1, START, START + 1, START + 2].map(by)).toEqual([undefined, 'limit', 'limit', undefined]);
  });

  test('carry the line of the plan that says so', () => {
    const span = { file: 'squad.yaml', start: 5, end: 9 };
    const who = athlete('beginner', { limits: [limit([{ kind: 'drill', id: 'pogo' }], { span })] });
    expect(drillRefusal(getDrill('pogo'), standing(who))?.spans).toEqual([span]);
  });
});

describe('kit', () => {
  const place = (boxesCm: readonly number[]) => ({ ...HALL, kit: { ...FULL_KIT, boxesCm } });

  test.each([
    ['a box of the height', [45], undefined],
    ['a box 1 cm higher', [46], undefined],
    ['a box 2 cm higher', [47], 'kit'],
    ['a box 5 cm lower', [40], undefined],
    ['a box 6 cm lower', [39], 'kit'],
  ])('%s', (_words, boxes, by) => {
    expect(drillPlaceRefusal(getDrill('box-jump-45'), place(boxes))?.by).toBe(by);
  });

  test('a drop needs its own height too', () => {
    expect(drillPlaceRefusal(getDrill('drop-jump-20'), place([30]))?.by).toBe('kit');
    expect(drillPlaceRefusal(getDrill('drop-jump-20'), place([20]))).toBeUndefined();
  });

  test('a drill without kit needs none', () => {
    expect(drillPlaceRefusal(getDrill('pogo'), FIELD)).toBeUndefined();
    expect(drillPlaceRefusal(getDrill('hurdle-hop'), FIELD)?.params).toMatchObject({ kit: 'hurdles', place: 'field' });
  });
});

describe('surface', () => {
  const yard = { ...HALL, kit: FULL_KIT, surface: 'concrete' };

  test.each(['high-hurdle-hop', 'drop-jump-20', 'depth-landing-30'])('%s lands hard', (id) => {
    expect(drillPlaceRefusal(getDrill(id), yard)?.by).toBe('surface');
    expect(drillPlaceRefusal(getDrill(id), { ...yard, surface: 'grass' })?.by).not.toBe('surface');
    expect(drillPlaceRefusal(getDrill(id), yard, (rule) => rule === 'surface')?.by).not.toBe('surface');
  });

  test('lower rungs and a sand pit are left', () => {
    expect(drillPlaceRefusal(getDrill('hurdle-hop'), yard)).toBeUndefined();
    expect(drillPlaceRefusal({ ...getDrill('high-hurdle-hop'), kit: ['sand-pit'] }, yard)?.by).not.toBe('surface');
  });
});

describe('lifts', () => {
  test.each([
    ['half-squat', 'strength', 'phase'],
    ['half-squat', 'strength-power', undefined],
    ['quarter-squat', 'strength-power', 'phase'],
    ['quarter-squat', 'power', undefined],
    ['jump-squat', 'maintenance', 'phase'],
    ['jump-squat', 'sharpening', undefined],
  ] as const)('%s in %s', (id, phase, by) => {
    expect(liftRefusal(getLift(id), standing(athlete('advanced')), phase)?.by).toBe(by);
  });

  test.each([
    ['2011-01-05', 'youth-load'],
    ['2011-01-04', undefined],
  ])('no loaded jumps under 16: born %s', (born, by) => {
    const who = athlete('advanced', { born: bornOn(born) });
    expect(liftRefusal(getLift('jump-squat'), standing(who), 'power')?.by).toBe(by);
  });
});
