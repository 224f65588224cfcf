// The drills: sound rows, families that climb, and enough of everything where a place has no kit at all.

import { describe, expect, it } from 'vitest';
import {
  contactsOfRep,
  contactsOfSets,
  isDrop,
  isLanding,
  isSingleLeg,
  isStatic,
  metresOfReps,
} from '../../../src/library/drill-facts.ts';
import { DRILLS } from '../../../src/library/drills.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { KIT_IDS } from '../../../src/library/kit.ts';
import { LIFTS } from '../../../src/library/lifts.ts';
import { getDefault } from '../../../src/library/rules.ts';
import { DIRECTIONS, LEVELS, TIERS } from '../../../src/library/types.ts';
import type { Direction, Drill } from '../../../src/library/types.ts';

const FAMILIES = [...BUILT_IN.families.values()];

function mainDirection(drill: Drill): Direction {
  return DIRECTIONS.reduce((most, one) => (drill.direction[one] > drill.direction[most] ? one : most));
}

function climbs(values: readonly number[]): boolean {
  return values.every((value, index) => index === 0 || value >= (values[index - 1] ?? 0));
}

function canMake(drill: Drill, contacts: number): boolean {
  for (let { from: sets } = drill.sets; sets <= drill.sets.to; sets++) {
    for (let { from: reps } = drill.reps; reps <= drill.reps.to; reps++) {
      if (contactsOfSets(drill, sets, reps) === contacts) return true;
    }
  }
  return false;
}

function familiesOf(fits: (drill: Drill) => boolean): readonly string[] {
  return [...new Set(DRILLS.filter(fits).map((drill) => drill.family))];
}

function isBare(drill: Drill): boolean {
  return drill.kit.length === 0 && (drill.lands === 'ground' || drill.lands === 'stick');
}

describe('every drill', () => {
  it('has an id of its own, shared with no lift and no family', () => {
    const ids = [...DRILLS, ...LIFTS].map((one) => one.id);
    expect(new Set(ids).size).toBe(ids.length);
    const families = familiesOf(() => true);
    expect(families.filter((family) => ids.includes(family))).toEqual([]);
  });

  it.each(DRILLS.map((drill) => [drill.id, drill] as const))('%s is sound', (_, drill) => {
    expect(drill.id).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
    expect(drill.direction.vertical + drill.direction.horizontal + drill.direction.lateral).toBe(100);
    expect((drill.contactsPerRep === undefined) !== (drill.metresPerContact === undefined)).toBe(true);
    expect(drill.reps.from).toBeGreaterThanOrEqual(1);
    expect(drill.reps.to).toBeGreaterThan(drill.reps.from);
    expect(drill.reps.to).toBeLessThanOrEqual(10);
    expect(drill.sets.from).toBeGreaterThanOrEqual(1);
    expect(drill.sets.to).toBeGreaterThan(drill.sets.from);
    expect(drill.restSeconds % 30).toBe(0);
    expect(drill.restSeconds).toBeGreaterThanOrEqual(60);
    expect(drill.restSeconds).toBeLessThanOrEqual(180);
    for (const id of drill.kit) expect(KIT_IDS).toContain(id);
    expect(drill.cue.length).toBeLessThan(90);
    expect(drill.stop.length).toBeLessThan(90);
    expect(drill.cue).toMatch(/\.$/);
    expect(drill.stop).toMatch(/\.$/);
  });

  it('has no id, nor a family, that a limit would read as another word', () => {
    const patterns = LIFTS.map((lift) => lift.pattern);
    const words = new Set<string>([
      'drops',
      'single-leg',
      'fast',
      'slow',
      'none',
      ...DIRECTIONS,
      ...TIERS,
      ...patterns,
    ]);
    expect(DRILLS.flatMap((drill) => [drill.id, drill.family]).filter((id) => words.has(id))).toEqual([]);
    expect(LIFTS.map((lift) => lift.id).filter((id) => words.has(id))).toEqual([]);
  });

  it('has words of its own: no two drills share a name or a cue', () => {
    expect(new Set(DRILLS.map((drill) => drill.name)).size).toBe(DRILLS.length);
    expect(new Set(DRILLS.map((drill) => drill.cue)).size).toBe(DRILLS.length);
  });

  it('has a box where it lands on one or drops from one, sand where it lands in sand', () => {
    const needy = DRILLS.filter((drill) => drill.lands === 'box' || drill.boxCm !== undefined || isDrop(drill));
    expect(needy.length).toBeGreaterThan(20);
    expect(needy.filter((drill) => !drill.kit.includes('boxes'))).toEqual([]);
    expect(DRILLS.filter((drill) => drill.lands === 'box' && drill.boxCm === undefined)).toEqual([]);
    expect(DRILLS.filter((drill) => drill.lands === 'pit' && !drill.kit.includes('sand-pit'))).toEqual([]);
  });

  it('rests longer the harder it is', () => {
    const rests = TIERS.map((tier) => {
      const ofTier = DRILLS.filter((drill) => drill.tier === tier).map((drill) => drill.restSeconds);
      return ofTier.reduce((a, b) => a + b, 0) / ofTier.length;
    });
    expect(climbs(rests)).toBe(true);
  });
});

describe('tiers, against what is published of intensity', () => {
  it('puts one leg above two: nothing hopped on one foot is low (D2, P: Ebben 2007)', () => {
    const low = DRILLS.filter((drill) => drill.legs === 'each' && drill.tier === 'low').map((drill) => drill.id);
    // A split stance lands on both feet.
    expect(low).toEqual(['small-split-jump']);
  });

  it('never calls a tuck or pike jump low (D4, P: Ebben 2007)', () => {
    const tucks = DRILLS.filter((drill) => /tuck|pike/.test(drill.id));
    expect(tucks.length).toBeGreaterThanOrEqual(3);
    expect(tucks.filter((drill) => drill.tier === 'low')).toEqual([]);
  });

  it('puts a full standing long jump above a vertical jump (D5, P: Wallace 2010: 4.22 and 3.34 body weights)', () => {
    const tier = (id: string): number => TIERS.indexOf(BUILT_IN.drills.get(id)?.tier ?? 'low');
    expect(tier('standing-long-jump')).toBeGreaterThan(tier('countermovement-jump'));
  });

  it('calls every drop jump, single-leg box or hurdle drill and bound in series high', () => {
    const hard = DRILLS.filter(
      (drill) =>
        (isDrop(drill) && drill.cycle === 'fast') ||
        (drill.legs === 'each' && (drill.kit.includes('boxes') || drill.kit.includes('hurdles'))) ||
        ['alternate-bound', 'speed-bound', 'lateral-bound-series'].includes(drill.id),
    );
    expect(hard.length).toBeGreaterThan(14);
    expect(hard.filter((drill) => drill.tier !== 'high')).toEqual([]);
  });
});

describe('families', () => {
  it('are many, and drills more', () => {
    expect(FAMILIES.length).toBeGreaterThanOrEqual(16);
    expect(DRILLS.length).toBeGreaterThanOrEqual(70);
  });

  it.each(FAMILIES.map((rungs) => [rungs[0]?.family ?? '', rungs] as const))('%s climbs', (_, rungs) => {
    expect(rungs.length).toBeGreaterThanOrEqual(3);
    expect(rungs.length).toBeLessThanOrEqual(6);
    expect(rungs.map((drill) => drill.rung)).toEqual(rungs.map((_drill, index) => index + 1));
    expect(climbs(rungs.map((drill) => TIERS.indexOf(drill.tier)))).toBe(true);
    expect(climbs(rungs.map((drill) => LEVELS.indexOf(drill.fromLevel)))).toBe(true);
    expect(climbs(rungs.map((drill) => drill.stage))).toBe(true);
    expect(climbs(rungs.map((drill) => drill.dropCm ?? 0))).toBe(true);
    expect(climbs(rungs.map((drill) => drill.boxCm ?? 0))).toBe(true);
  });

  it('keep one direction and stay fast or not fast, so that a harder rung leaves the week its mix', () => {
    for (const rungs of FAMILIES) {
      const [first] = rungs;
      for (const drill of rungs) {
        expect(drill.direction, drill.id).toEqual(first?.direction);
        expect(drill.cycle === 'fast', drill.id).toBe(first?.cycle === 'fast');
      }
    }
  });

  it('has the heights as rungs of the drop, each within reach of the level that may do it', () => {
    const rungs = BUILT_IN.families.get('drop') ?? [];
    expect(rungs.map((drill) => drill.dropCm)).toEqual([20, 30, 40, 45, 50, 60]);
    for (const drill of DRILLS.filter(isDrop)) {
      expect(drill.dropCm, drill.id).toBeLessThanOrEqual(getDefault('drop-height', drill.fromLevel));
    }
  });

  it('has the hurdle hop where a plan may expect it', () => {
    const hop = BUILT_IN.drills.get('hurdle-hop');
    expect(hop).toMatchObject({
      name: 'Hurdle hop',
      family: 'rebound',
      rung: 3,
      direction: { vertical: 100, horizontal: 0, lateral: 0 },
      cycle: 'fast',
      tier: 'moderate',
      legs: 'both',
      contactsPerRep: 1,
      lands: 'ground',
      fromLevel: 'beginner',
      kit: ['hurdles'],
      reps: { from: 3, to: 8 },
      sets: { from: 2, to: 6 },
      restSeconds: 90,
    });
  });

  it.each([
    'countermovement-jump',
    'countermovement-jump-arms',
    'squat-jump',
    'single-leg-countermovement-jump',
    'standing-long-jump',
    'drop-jump-30',
    'three-step-jump',
    'pogo',
  ])('has the test jump %s as a drill', (id) => {
    expect(BUILT_IN.drills.has(id)).toBe(true);
  });
});

describe('coverage', () => {
  const cycles = ['slow', 'fast'] as const;
  const cells = DIRECTIONS.flatMap((direction) => cycles.map((cycle) => [direction, cycle] as const));

  it.each(cells)('%s and %s: every tier has drills', (direction, cycle) => {
    for (const tier of TIERS) {
      const fits = DRILLS.filter((d) => mainDirection(d) === direction && d.cycle === cycle && d.tier === tier);
      expect(fits.length, tier).toBeGreaterThanOrEqual(2);
    }
  });

  it.each(cells)(
    '%s and %s: a beginner without any kit has at least three families of the low tier',
    (direction, cycle) => {
      const fits = familiesOf(
        (d) =>
          mainDirection(d) === direction &&
          d.cycle === cycle &&
          d.tier === 'low' &&
          d.fromLevel === 'beginner' &&
          isBare(d),
      );
      expect(fits.length).toBeGreaterThanOrEqual(3);
    },
  );

  it.each(cells)(
    '%s and %s: a beginner without any kit has at least two families to the moderate tier',
    (direction, cycle) => {
      const fits = familiesOf(
        (d) =>
          mainDirection(d) === direction &&
          d.cycle === cycle &&
          d.tier === 'moderate' &&
          d.fromLevel === 'beginner' &&
          isBare(d),
      );
      expect(fits.length).toBeGreaterThanOrEqual(2);
    },
  );

  it.each(DIRECTIONS)('%s: an advanced athlete without any kit has high-tier families', (direction) => {
    expect(familiesOf((d) => mainDirection(d) === direction && d.tier === 'high' && isBare(d)).length).toBeGreaterThan(
      1,
    );
  });

  it('uses every cycle, tier, use of the legs and landing', () => {
    expect(new Set(DRILLS.map((d) => d.cycle))).toEqual(new Set(['fast', 'slow', 'none']));
    expect(new Set(DRILLS.map((d) => d.legs))).toEqual(new Set(['both', 'each', 'alternate']));
    expect(new Set(DRILLS.map((d) => d.lands))).toEqual(new Set(['ground', 'box', 'pit', 'stick']));
  });
});

describe('stages of a return (G11, P: Buckthorpe & Della Villa 2021)', () => {
  it('starts low, on two legs and not sideways', () => {
    const first = DRILLS.filter((drill) => drill.stage === 1);
    expect(familiesOf((drill) => drill.stage === 1 && isBare(drill)).length).toBeGreaterThanOrEqual(4);
    for (const drill of first) {
      expect([drill.tier, drill.legs, drill.direction.lateral], drill.id).toEqual(['low', 'both', 0]);
    }
  });

  const early = (stage: number, fits: (drill: Drill) => boolean): readonly string[] =>
    DRILLS.filter((drill) => fits(drill) && drill.stage < stage).map((drill) => drill.id);

  it('comes to one leg and to the moderate tier with the second, sideways with the third, to the high tier last', () => {
    expect(early(2, (drill) => isSingleLeg(drill) || drill.tier === 'moderate')).toEqual([]);
    expect(early(3, (drill) => drill.direction.lateral > 0)).toEqual([]);
    expect(early(4, (drill) => drill.tier === 'high')).toEqual([]);
  });
});

describe('contacts', () => {
  it.each([10, 20, 30])('lets nearly every drill make %i exactly', (contacts) => {
    const able = DRILLS.filter((drill) => canMake(drill, contacts));
    expect(able.length / DRILLS.length).toBeGreaterThan(0.9);
  });

  it('lets nearly every drill under the high tier make 40 exactly', () => {
    const drills = DRILLS.filter((drill) => drill.tier !== 'high');
    expect(drills.filter((drill) => canMake(drill, 40)).length / drills.length).toBeGreaterThan(0.9);
  });

  it('lets every drill make some multiple of five', () => {
    expect(DRILLS.filter((drill) => ![10, 15, 20, 30].some((contacts) => canMake(drill, contacts)))).toEqual([]);
  });

  it('counts each leg, and every contact of a linked rep', () => {
    expect(contactsOfRep({ legs: 'both', contactsPerRep: 1 })).toBe(1);
    expect(contactsOfRep({ legs: 'each', contactsPerRep: 1 })).toBe(2);
    expect(contactsOfRep({ legs: 'alternate', contactsPerRep: 3 })).toBe(3);
    expect(contactsOfSets({ legs: 'each', contactsPerRep: 2 }, 2, 5)).toBe(40);
  });

  it('counts a run by its contacts and prints it in metres', () => {
    const bound = BUILT_IN.drills.get('alternate-bound');
    expect(bound === undefined ? 0 : contactsOfSets(bound, 3, 10)).toBe(30);
    expect(metresOfReps({ metresPerContact: 2 }, 10)).toBe(20);
    expect(metresOfReps({}, 10)).toBeUndefined();
  });

  it('tells landings, static drills and drops apart', () => {
    const facts = (id: string): readonly boolean[] => {
      const drill = BUILT_IN.drills.get(id);
      return drill === undefined ? [] : [isLanding(drill), isStatic(drill), isDrop(drill)];
    };
    expect(facts('snap-down')).toEqual([true, false, false]);
    expect(facts('squat-jump')).toEqual([false, true, false]);
    expect(facts('depth-landing-30')).toEqual([true, false, true]);
    expect(facts('drop-jump-30')).toEqual([false, false, true]);
    expect(facts('countermovement-jump')).toEqual([false, false, false]);
  });
});
