// The lifts: sound rows, something for every pattern in a place without kit, and maxima that serve with care.

import { describe, expect, it } from 'vitest';
import { KIT_IDS } from '../../../src/library/kit.ts';
import { LIFTS } from '../../../src/library/lifts.ts';
import { getDefault } from '../../../src/library/rules.ts';
import { LIFT_PATTERNS } from '../../../src/library/types.ts';
import type { Lift } from '../../../src/library/types.ts';

const byId: ReadonlyMap<string, Lift> = new Map(LIFTS.map((lift) => [lift.id, lift]));

describe('every lift', () => {
  it('stands with at least fifty others, over all patterns', () => {
    expect(LIFTS.length).toBeGreaterThanOrEqual(50);
    expect(new Set(LIFTS.map((lift) => lift.pattern))).toEqual(new Set(LIFT_PATTERNS));
  });

  it.each(LIFTS.map((lift) => [lift.id, lift] as const))('%s is sound', (_, lift) => {
    expect(lift.id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    for (const id of lift.kit) expect(KIT_IDS).toContain(id);
    expect(lift.reps.from).toBeGreaterThanOrEqual(1);
    expect(lift.reps.to).toBeGreaterThan(lift.reps.from);
    expect(lift.eccentricSeconds).toBeLessThanOrEqual(getDefault('eccentric-tempo', 'most'));
    expect(lift.cue.length).toBeLessThan(90);
    expect(lift.stop.length).toBeLessThan(90);
    expect(lift.cue).toMatch(/\.$/);
    expect(lift.stop).toMatch(/\.$/);
    expect(lift.maxShare === undefined).toBe(lift.maxOf === undefined);
  });

  it.each([
    ['bar', 'bars'],
    ['trap-bar', 'trap-bars'],
    ['dumbbells', 'dumbbells'],
    ['kettlebell', 'kettlebells'],
  ] as const)('loaded by %s needs %s', (loading, kit) => {
    const loaded = LIFTS.filter((lift) => lift.loading === loading);
    expect(loaded.length).toBeGreaterThan(0);
    expect(loaded.filter((lift) => !lift.kit.includes(kit))).toEqual([]);
  });
});

describe('patterns', () => {
  it.each(LIFT_PATTERNS.filter((one) => one !== 'loaded-jump' && one !== 'pull-from-floor'))(
    '%s has a lift that a beginner does without any kit',
    (id) => {
      const bare = LIFTS.filter(
        (lift) =>
          lift.pattern === id && lift.loading === 'body' && lift.kit.length === 0 && lift.fromLevel === 'beginner',
      );
      expect(bare.length).toBeGreaterThanOrEqual(1);
    },
  );

  it('carries a phase by a main lift for squat, hinge and single leg, also without kit', () => {
    for (const id of ['squat', 'hinge', 'single-leg'] as const) {
      const main = LIFTS.filter((lift) => lift.pattern === id && lift.role === 'main' && lift.kit.length === 0);
      expect(main.length, id).toBeGreaterThanOrEqual(1);
    }
  });

  it('brings half squats and loaded jumps in with strength-power', () => {
    expect(byId.get('half-squat')?.fromPhase).toBe('strength-power');
    for (const lift of LIFTS.filter((one) => one.pattern === 'loaded-jump')) {
      expect(lift.fromPhase, lift.id).toBe('strength-power');
    }
  });

  it('lowers the Nordic for three to five seconds', () => {
    for (const id of ['nordic-hamstring', 'assisted-nordic']) {
      expect(byId.get(id)?.eccentricSeconds).toBeGreaterThanOrEqual(3);
    }
  });
});

describe('maxima', () => {
  it('borrows only from a lift with a maximum of its own, and never more than the whole of it', () => {
    for (const lift of LIFTS.filter((one) => one.maxOf !== undefined)) {
      const lender = byId.get(lift.maxOf ?? '');
      expect(lender?.maxOf, lift.id).toBe(lender?.id);
      expect(lender?.maxShare, lift.id).toBe(100);
      expect(lift.maxShare, lift.id).toBeLessThanOrEqual(100);
    }
  });

  it('never serves another squat depth (P12, P: Rhea 2016, Hartmann 2012)', () => {
    for (const lift of LIFTS.filter((one) => one.pattern === 'squat' && one.maxOf !== undefined)) {
      expect(byId.get(lift.maxOf ?? '')?.depth, lift.id).toBe(lift.depth);
    }
  });

  it('loads a jump squat by at most 30 % of the back squat (P11, P: Soriano 2015, Cormie 2007)', () => {
    expect(byId.get('jump-squat')?.maxOf).toBe('back-squat');
    expect(byId.get('jump-squat')?.maxShare).toBeLessThanOrEqual(30);
  });
});
