// What waivers do to findings, and what is said of waivers that nobody needed.

import { describe, expect, it } from 'vitest';
import { auditAthlete, auditPlan } from '../../../src/audit/audit.ts';
import { day, loading, makeBuild, waiver } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';
import type { Waiver } from '../../../src/plan/types.ts';

function audit(spec: SeasonSpec) {
  const { plan, built, weeks } = makeBuild(spec);
  const { diagnostics, freed } = auditAthlete(plan, built, weeks);
  return { codes: diagnostics.map((one) => one.code), freed, plan };
}

const rising = { weeks: [loading(225), loading(300)] };

describe('waivers', () => {
  it('that free nothing are said', () => {
    const unused = waiver('weekly-rise', 1);
    const { freed, plan } = audit({ weeks: [loading(200)], plan: { waivers: [unused] } });
    expect(freed.size).toBe(0);
    const said = auditPlan(plan, freed);
    expect(said.map((one) => [one.code, one.severity, one.span])).toEqual([
      ['audit/waiver-unused', 'warning', unused.span],
    ]);
  });

  it('count for the athletes they are for', () => {
    const others: Waiver = { ...waiver('weekly-rise', 1, 2), who: { kind: 'some', squads: [], athletes: ['bo'] } };
    const { codes, freed } = audit({ ...rising, plan: { waivers: [others] } });
    expect(codes.filter((code) => code === 'rule/weekly-rise')).toHaveLength(2);
    expect(freed.size).toBe(0);
  });

  it('that overlap are both needed', () => {
    const both = [waiver('weekly-rise', 1, 2), waiver('weekly-rise', 1)];
    const { codes, freed } = audit({ ...rising, plan: { waivers: both } });
    expect(codes).not.toContain('rule/weekly-rise');
    expect(freed.size).toBe(2);
  });

  it('of one rule free no other', () => {
    const { codes } = audit({ weeks: [loading(250)], plan: { waivers: [waiver('weekly-rise', 1)] } });
    expect(codes).toContain('rule/session-ceiling');
    expect(codes).toContain('rule/session-rise');
  });

  it('that reached into weeks that are over are let be', () => {
    const weeks = [loading(200, { done: true, adapted: 200 }), loading(200)];
    expect(audit({ weeks, plan: { waivers: [waiver('weekly-rise', 1)] } }).freed.size).toBe(1);
  });
});

describe('the adapted volume of the tables', () => {
  const chain = (...adapted: number[]): SeasonSpec => ({
    weeks: [loading(220, { adapted: adapted[0] ?? 0 }), loading(120, { kind: 'deload', adapted: adapted[1] ?? 0 })],
  });

  it('is checked, and the first week that differs is said', () => {
    expect(audit(chain(220, 220)).codes).not.toContain('audit/adapted-volume');
    const { plan, built, weeks } = makeBuild(chain(221, 221));
    const said = auditAthlete(plan, built, weeks).diagnostics.filter((one) => one.code === 'audit/adapted-volume');
    expect(said.map((one) => [one.week, one.params['found'], one.params['wanted']])).toEqual([[day(1, 0), 221, 220]]);
    expect(audit(chain(220, 219)).codes).toContain('audit/adapted-volume');
  });

  it('can only be that of the build where a record says what was done, but never more than was earned', () => {
    const done = (adapted: number): SeasonSpec => ({
      weeks: [loading(180, { done: true, adapted }), loading(0, { adapted: 66 })],
    });
    expect(audit(done(200)).codes).not.toContain('audit/adapted-volume');
    expect(audit(done(260)).codes).toContain('audit/adapted-volume');
  });

  it('needs the weeks of the build', () => {
    const { plan, built } = makeBuild(chain(220, 220));
    expect(() => auditAthlete(plan, built, [])).toThrow('weeks');
  });
});
