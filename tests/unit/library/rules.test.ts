// The rule table as data: complete, in order, with severities, refusals and defaults, and every basis a source.

import { describe, expect, it } from 'vitest';
import { RULES, RULE_IDS, findRule, getDefault, getRule, getSessionCeiling } from '../../../src/library/rules.ts';
import { findSource } from '../../../src/library/sources.ts';

type Expected = readonly [id: string, severity: 'error' | 'warning' | 'notice', waivable: boolean];

const TABLE: readonly Expected[] = [
  ['session-ceiling', 'error', true],
  ['weekly-rise', 'warning', true],
  ['session-rise', 'warning', true],
  ['all-jumps-rise', 'warning', true],
  ['budget', 'warning', true],
  ['deload-rhythm', 'notice', true],
  ['deload-depth', 'warning', true],
  ['taper-cut', 'warning', true],
  ['last-week', 'warning', true],
  ['return-ramp', 'error', true],
  ['returning-stage', 'error', false],
  ['session-spacing', 'warning', true],
  ['fast-spacing', 'warning', true],
  ['event-gap', 'warning', true],
  ['after-event', 'warning', true],
  ['lift-spacing', 'warning', true],
  ['lift-event-gap', 'warning', true],
  ['congested-week', 'warning', true],
  ['session-frequency', 'warning', true],
  ['youth-ceiling', 'error', false],
  ['drop-age', 'error', false],
  ['drop-mass', 'error', false],
  ['drop-strength', 'warning', true],
  ['drop-clearance', 'error', false],
  ['drop-height', 'error', true],
  ['drop-count', 'warning', true],
  ['drill-level', 'error', true],
  ['new-drills', 'notice', true],
  ['limit', 'error', false],
  ['pain-hold', 'error', true],
  ['level-step', 'notice', true],
  ['high-tier-share', 'warning', true],
  ['direction-mix', 'notice', true],
  ['fast-cycle-share', 'notice', true],
  ['static-share', 'notice', true],
  ['jumps-alone', 'warning', true],
  ['strength-always', 'warning', true],
  ['eccentric-tempo', 'notice', true],
  ['stability-share', 'notice', true],
  ['load-reps', 'error', true],
  ['load-reserve', 'notice', true],
  ['load-step', 'warning', true],
  ['youth-load', 'error', false],
  ['pair-rest', 'notice', true],
  ['slot-minutes', 'warning', true],
  ['kit', 'warning', true],
  ['surface', 'warning', true],
  ['stations', 'warning', true],
  ['test-stale', 'notice', true],
  ['test-fresh', 'notice', true],
  ['test-method', 'notice', false],
  ['rest-day', 'warning', true],
];

/** `rule.parameter` and its default, an integer in the parameter's unit. */
const DEFAULTS: Readonly<Record<string, number>> = {
  'session-ceiling.beginner': 100,
  'session-ceiling.intermediate': 120,
  'session-ceiling.advanced': 140,
  'session-ceiling.in-season-beginner': 60,
  'session-ceiling.in-season-intermediate': 80,
  'session-ceiling.in-season-advanced': 100,
  'weekly-rise.most': 10,
  'weekly-rise.contacts': 10,
  'weekly-rise.severe': 30,
  'session-rise.most': 30,
  'session-rise.contacts': 15,
  'all-jumps-rise.most': 130,
  'all-jumps-rise.weeks': 4,
  'deload-rhythm.loading-weeks': 3,
  'deload-rhythm.between': 2,
  'deload-depth.most': 60,
  'taper-cut.first': 60,
  'taper-cut.last': 50,
  'taper-cut.most-cut': 60,
  'taper-cut.session-over': 25,
  'taper-cut.least-cut': 40,
  'last-week.primer': 20,
  'return-ramp.short-from': 2,
  'return-ramp.long-from': 4,
  'return-ramp.first': 50,
  'return-ramp.second': 70,
  'return-ramp.third': 80,
  'return-ramp.fourth': 90,
  'returning-stage.stage-1': 30,
  'returning-stage.stage-2': 50,
  'returning-stage.stage-3': 70,
  'returning-stage.stage-4': 90,
  'session-spacing.apart': 2,
  'fast-spacing.free-days': 2,
  'fast-spacing.hard-practice': 60,
  'event-gap.peak': 2,
  'event-gap.match': 1,
  'after-event.free-days': 1,
  'lift-spacing.apart': 2,
  'lift-spacing.heavy': 80,
  'lift-event-gap.match': 2,
  'lift-event-gap.peak': 4,
  'congested-week.match-days': 3,
  'congested-week.within': 7,
  'congested-week.lift-sessions': 1,
  'session-frequency.beginner-least': 1,
  'session-frequency.beginner-most': 3,
  'session-frequency.intermediate-least': 1,
  'session-frequency.intermediate-most': 3,
  'session-frequency.advanced-least': 1,
  'session-frequency.advanced-most': 4,
  'session-frequency.in-season-least': 0,
  'youth-ceiling.under': 14,
  'youth-ceiling.first-weeks': 4,
  'youth-ceiling.first': 60,
  'youth-ceiling.most': 100,
  'youth-ceiling.to': 15,
  'drop-age.under': 14,
  'drop-age.cleared-under': 16,
  'drop-age.most': 30,
  'drop-mass.over': 100,
  'drop-mass.most': 46,
  'drop-strength.above': 30,
  'drop-strength.strength': 120,
  'drop-strength.high-above': 45,
  'drop-strength.high-strength': 150,
  'drop-height.beginner': 30,
  'drop-height.intermediate': 40,
  'drop-height.advanced': 60,
  'drop-count.beginner': 20,
  'drop-count.intermediate': 30,
  'drop-count.advanced': 40,
  'drop-count.a-week': 2,
  'new-drills.most': 2,
  'pain-hold.hold': 4,
  'pain-hold.stop': 6,
  'level-step.weeks': 4,
  'level-step.near': 80,
  'direction-mix.points': 10,
  'direction-mix.sessions': 2,
  'fast-cycle-share.first-weeks': 4,
  'static-share.most': 20,
  'jumps-alone.most': 5,
  'strength-always.least': 1,
  'stability-share.most': 15,
  'pair-rest.least': 180,
  'slot-minutes.over': 10,
  'eccentric-tempo.most': 5,
  'load-reserve.least': 1,
  'load-step.most': 10,
  'youth-load.under': 16,
  'youth-load.most': 80,
  'youth-load.cleared': 85,
  'youth-load.least-reps': 2,
  'test-stale.weeks': 12,
  'test-stale.away': 3,
  'test-stale.share': 90,
  'test-fresh.apart': 2,
  'rest-day.under': 16,
  'rest-day.free-days': 1,
};

/** Parameters that a plan may set and that have no default. */
const OPEN = ['budget.jumps-a-week', 'high-tier-share.most', 'fast-cycle-share.least', 'fast-cycle-share.most'];

describe('the rule table', () => {
  it('holds every rule in the order of print, with its severity and whether it may be waived', () => {
    expect(RULES.map((rule) => [rule.id, rule.severity, rule.waivable])).toEqual(TABLE);
    expect(RULE_IDS).toEqual(TABLE.map(([id]) => id));
  });

  it('holds these defaults and no others', () => {
    const held = RULES.flatMap((rule) =>
      rule.parameters.flatMap((one) => (one.value === undefined ? [] : [[`${rule.id}.${one.name}`, one.value]])),
    );
    expect(Object.fromEntries(held)).toEqual(DEFAULTS);
  });

  it('leaves these parameters open until a plan sets them', () => {
    const open = RULES.flatMap((rule) =>
      rule.parameters.filter((one) => one.value === undefined).map((one) => `${rule.id}.${one.name}`),
    );
    expect(open.toSorted()).toEqual(OPEN.toSorted());
  });

  it('names each parameter once a rule, in plain words joined by hyphens, and keeps whole numbers', () => {
    for (const rule of RULES) {
      const names = rule.parameters.map((one) => one.name);
      expect(new Set(names).size, rule.id).toBe(names.length);
      for (const one of rule.parameters) {
        expect(one.name, rule.id).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
        expect(Number.isInteger(one.value ?? 0), `${rule.id}.${one.name}`).toBe(true);
        expect(one.says.length, `${rule.id}.${one.name}`).toBeGreaterThan(10);
      }
    }
  });

  it('rests every rule on sources that exist', () => {
    for (const rule of RULES) {
      for (const id of rule.basis) expect(findSource(id), `${rule.id} rests on ${id}`).toBeDefined();
    }
  });

  it('says why a rule cannot be waived, for exactly those that cannot', () => {
    for (const rule of RULES) expect(rule.refusal === undefined, rule.id).toBe(rule.waivable);
  });

  it('asks who decided where a waiver lets somebody hurt go on', () => {
    expect(RULES.filter((rule) => rule.whoDecided === true).map((rule) => rule.id)).toEqual([
      'return-ramp',
      'pain-hold',
    ]);
  });

  it('says when a finding is graver than its severity', () => {
    const graver = RULES.filter((rule) => rule.graver !== undefined).map((rule) => rule.id);
    expect(graver).toEqual(['weekly-rise', 'budget', 'drop-strength']);
  });

  it('lets an error rest on common practice or memory only where it protects a child, a landing or somebody hurt', () => {
    const weak = RULES.filter((rule) => rule.severity === 'error' && (rule.mark === 'C' || rule.mark === 'M'));
    expect(weak.map((rule) => rule.id)).toEqual([
      'return-ramp',
      'returning-stage',
      'drop-height',
      'pain-hold',
      'youth-load',
    ]);
  });

  it('leaves no mark only where the plan itself or the clock decides', () => {
    const unmarked = RULES.filter((rule) => rule.mark === null).map((rule) => rule.id);
    expect(unmarked).toEqual(['budget', 'limit', 'slot-minutes', 'kit', 'stations']);
  });
});

describe('reading the rule table', () => {
  it('gets a rule, misses an unknown one', () => {
    expect(getRule('budget').id).toBe('budget');
    expect(findRule('weekly-rice')).toBeUndefined();
    expect(() => getRule('weekly-rice')).toThrow('weekly-rice');
  });

  it('gets a default and refuses one that does not exist', () => {
    expect(getDefault('weekly-rise', 'most')).toBe(10);
    expect(() => getDefault('budget', 'jumps-a-week')).toThrow('budget');
    expect(() => getDefault('weekly-rise', 'least')).toThrow('least');
  });

  it('gives the ceiling of a level, lower in season', () => {
    expect(getSessionCeiling('intermediate', false)).toBe(120);
    expect(getSessionCeiling('intermediate', true)).toBe(80);
  });
});
