// The shape of whole seasons against what is published of them. Each check names its source; where a figure is common
// practice or from memory it says so.

import { describe, expect, it } from 'vitest';
import type { Level } from '../../../src/library/types.ts';
import { LEVELS } from '../../../src/library/types.ts';
import { athlete, peak, plan } from '../../unit/schedule/make-plan.ts';
import { runs, stages } from '../../unit/schedule/stages.ts';

/** Sixteen weeks to a Sunday peak, so that the last week still has a Tuesday and a Thursday. */
const season = plan({ starts: '2027-01-04', ends: '2027-04-25' }, { competitions: [peak('2027-04-25')] });
const of = (level: Level, contacts: number) => stages(season, athlete(level, contacts)).contacts;

/** Contacts in one session: Potach & Chu, in Essentials of Strength Training and Conditioning, 4th ed., 2016 (quoted). */
const BANDS: Readonly<Record<Level, readonly [number, number]>> = {
  beginner: [80, 100],
  intermediate: [100, 120],
  advanced: [120, 140],
};

describe('against published figures', () => {
  it.each(LEVELS)('the largest session of four months, %s, stands in the handbook’s band', (level) => {
    const largest = Math.max(...of(level, BANDS[level][0]).flatMap((week) => week.sessions));
    expect(largest).toBeGreaterThanOrEqual(BANDS[level][0]);
    expect(largest).toBeLessThanOrEqual(BANDS[level][1]);
  });

  it('a beginner’s first weeks have 50 to 100 contacts a session, one to three times (common practice, no source)', () => {
    const first = of('beginner', 50).slice(0, 3);
    expect(first.every((week) => week.sessions.length >= 1 && week.sessions.length <= 3)).toBe(true);
    expect(first.flatMap((week) => week.sessions).every((size) => size >= 50 && size <= 100)).toBe(true);
  });

  it('from 50 contacts a session to 80, and from 100 to 120, takes three to four months (common practice, no source)', () => {
    const reaches = (level: Level, from: number, to: number): number =>
      of(level, from).findIndex((week) => week.sessions.some((size) => size >= to)) + 1;
    expect(reaches('beginner', 50, 80)).toBeGreaterThanOrEqual(9);
    expect(reaches('beginner', 50, 80)).toBeLessThanOrEqual(16);
    expect(reaches('advanced', 100, 120)).toBeGreaterThanOrEqual(9);
    expect(reaches('advanced', 100, 120)).toBeLessThanOrEqual(16);
  });

  it.each(LEVELS)(
    'the taper, %s, lasts two weeks and cuts 41 to 60 per cent (Bosquet 2007, Med Sci Sports Exerc 39:1358)',
    (level) => {
      const weeks = of(level, BANDS[level][0]);
      const taper = weeks.slice(-2);
      expect(taper.map((week) => week.boundBy)).not.toContain('target');
      const cuts = taper.map((week) => 1 - week.contacts / week.adaptedBefore);
      // Contacts come in fives, which may cut a little deeper than the per cent asked for.
      expect(cuts.every((cut) => cut >= 0.4 && cut <= 0.62)).toBe(true);
    },
  );

  it('easy weeks come every three to eight weeks (Rogerson 2024, Sports Med Open 10:26: 5.6 ± 2.3)', () => {
    const kinds = stages(season, athlete('intermediate', 90)).kinds.map((week) => week.kind);
    const easy = kinds.flatMap((kind, at) => (kind === 'deload' ? [at] : []));
    expect(easy.length).toBeGreaterThan(1);
    easy.slice(1).forEach((at, index) => {
      expect(at - (easy[index] ?? 0)).toBeGreaterThanOrEqual(3);
      expect(at - (easy[index] ?? 0)).toBeLessThanOrEqual(8);
    });
  });

  it('four months are muscle, strength, strength and power, power (Stone 1981, J Sports Med Phys Fitness 21:342)', () => {
    expect(runs(stages(season, athlete('intermediate', 90)).phases.weeks)).toBe(
      'hypertrophy 4, strength 4, strength-power 4, power 4',
    );
  });

  it('no loading week is more than a tenth, or ten contacts, over what the athlete is used to (common practice, no source)', () => {
    for (const level of LEVELS) {
      const found = stages(season, athlete(level, 60));
      found.contacts.forEach((week, index) => {
        if (found.kinds[index]?.kind !== 'load') return;
        const most = Math.max(Math.floor(week.adaptedBefore * 1.1), week.adaptedBefore + 10);
        expect(week.contacts).toBeLessThanOrEqual(most);
      });
    }
  });
});
