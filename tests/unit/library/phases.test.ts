// Phases, paths, levels and sports as data: shares that add up, bands that are bands, steps that lead somewhere.

import { describe, expect, it } from 'vitest';
import { DEFAULT_NOW, GOAL_FOOT } from '../../../src/library/levels.ts';
import { PATH_PHASES, PATH_STEPS, PHASES, SINGLE_WEEK_PHASE, getPhase } from '../../../src/library/phases.ts';
import { getSessionCeiling } from '../../../src/library/rules.ts';
import { SPORTS, findSport } from '../../../src/library/sports.ts';
import { findSource } from '../../../src/library/sources.ts';
import { LEVELS } from '../../../src/library/types.ts';
import type { DirectionShares } from '../../../src/library/types.ts';

function sum(shares: DirectionShares): number {
  return shares.vertical + shares.horizontal + shares.lateral;
}

describe('the phases', () => {
  it('has these rows: share of goal, jump sessions by level, lift sessions', () => {
    const rows = PHASES.map(({ id, goalShare, jumpSessions, liftSessions }) => [
      id,
      goalShare,
      jumpSessions === undefined ? undefined : LEVELS.map((level) => jumpSessions[level]),
      liftSessions,
    ]);
    expect(rows).toEqual([
      ['foundation', 60, [2, 2, 2], 2],
      ['hypertrophy', 70, [2, 2, 2], 3],
      ['strength', 85, [2, 2, 2], 3],
      ['strength-power', 100, [2, 2, 3], 2],
      ['power', 100, [2, 3, 3], 2],
      ['maintenance', 50, [1, 1, 2], 1],
      ['sharpening', 60, [1, 2, 2], 1],
      ['hold', undefined, [1, 2, 2], 1],
      ['transition', undefined, undefined, 0],
      ['closed', undefined, undefined, 0],
    ]);
  });

  it('has these shares: directions, fast cycle, high tier', () => {
    const rows = PHASES.flatMap(({ id, directions, fastShare, highShareMost }) =>
      directions === undefined || fastShare === undefined
        ? []
        : [
            [
              id,
              directions.vertical,
              directions.horizontal,
              directions.lateral,
              fastShare.from,
              fastShare.to,
              highShareMost,
            ],
          ],
    );
    expect(rows).toEqual([
      ['foundation', 50, 25, 25, 0, 20, 0],
      ['hypertrophy', 50, 25, 25, 0, 20, 0],
      ['strength', 50, 30, 20, 10, 30, 10],
      ['strength-power', 50, 30, 20, 25, 50, 25],
      ['power', 55, 25, 20, 35, 60, 35],
      ['maintenance', 50, 25, 25, 30, 60, 20],
      ['sharpening', 55, 25, 20, 35, 60, 35],
      ['hold', 50, 25, 25, 30, 60, 20],
    ]);
  });

  it('gives contacts a minute in tenths, fewer as jumps get harder', () => {
    const path = PATH_PHASES.map(({ id }) => getPhase(id).contactsPerMinuteTenths);
    expect(path).toEqual([40, 35, 30, 25]);
    const others = PHASES.filter(({ id }) => !PATH_PHASES.some((one) => one.id === id));
    expect(new Set(others.map((row) => row.contactsPerMinuteTenths))).toEqual(new Set([25]));
  });

  it('has easy weeks on the path only, and reach before power only', () => {
    expect(PHASES.filter((row) => row.deloads).map((row) => row.id)).toEqual(PATH_PHASES.map((row) => row.id));
    expect(PHASES.filter((row) => row.reach).map((row) => row.id)).toEqual([
      'hypertrophy',
      'strength',
      'strength-power',
    ]);
  });

  it('speaks of each in a few plain words', () => {
    for (const { id, words } of PHASES) {
      expect(words.length, id).toBeLessThanOrEqual(45);
      expect(words.toLowerCase(), id).not.toMatch(/hypertrophy|meso|plyo|contacts/);
    }
  });

  it('refuses a phase that has no row', () => {
    expect(() => getPhase('rest' as 'hold')).toThrow('rest');
  });
});

describe('the path', () => {
  it('has lengths in order and weights in tenths', () => {
    expect(PATH_PHASES.map((row) => [row.id, row.least, row.ideal, row.most, row.weightTenths])).toEqual([
      ['hypertrophy', 2, 4, 6, 10],
      ['strength', 3, 4, 6, 12],
      ['strength-power', 2, 4, 5, 10],
      ['power', 2, 4, 5, 20],
    ]);
  });

  it('leads from the start through every phase to the end', () => {
    const reached = new Set<string>(['start']);
    for (const step of PATH_STEPS) if (reached.has(step.from)) reached.add(step.to);
    expect(reached).toEqual(new Set(['start', ...PATH_PHASES.map((row) => row.id), 'end']));
    expect(PATH_STEPS.map((step) => step.costTenths)).toEqual([0, 60, 200, 290, 0, 0, 90, 60, 0, 30, 0]);
    expect(PATH_STEPS.filter((step) => step.to === 'end').map((step) => step.from)).toEqual([SINGLE_WEEK_PHASE]);
  });
});

describe('levels', () => {
  it('aims at the foot of the band, under the ceiling, and starts under the aim', () => {
    expect(LEVELS.map((level) => GOAL_FOOT[level])).toEqual([80, 100, 120]);
    expect(LEVELS.map((level) => DEFAULT_NOW[level])).toEqual([
      { contactsASession: 40, sessionsAWeek: 2 },
      { contactsASession: 70, sessionsAWeek: 2 },
      { contactsASession: 90, sessionsAWeek: 2 },
    ]);
    for (const level of LEVELS) {
      expect(GOAL_FOOT[level]).toBeLessThan(getSessionCeiling(level, false));
      expect(DEFAULT_NOW[level].contactsASession).toBeLessThan(GOAL_FOOT[level]);
    }
  });
});

describe('sport profiles', () => {
  it('adds up to a hundred everywhere', () => {
    const all = [...SPORTS, ...PHASES].flatMap(({ directions }) => directions ?? []);
    expect(all.length).toBeGreaterThan(20);
    expect(all.map(sum).filter((total) => total !== 100)).toEqual([]);
  });

  it('leaves the general profile to the phase', () => {
    expect(findSport('general')?.directions).toBeUndefined();
    expect(findSport('general')?.practiceJumps).toBeUndefined();
  });

  it.each([
    ['volleyball', 65, 15, 20],
    ['basketball', 50, 25, 25],
    ['handball', 45, 30, 25],
    ['long-jump', 30, 70, 0],
    ['high-jump', 65, 35, 0],
  ])('%s jumps %i / %i / %i', (id, vertical, horizontal, lateral) => {
    expect(findSport(id)?.directions).toEqual({ vertical, horizontal, lateral });
  });

  it('is common practice throughout, with ids once and sources that exist', () => {
    expect(new Set(SPORTS.map((sport) => sport.id)).size).toBe(SPORTS.length);
    for (const sport of SPORTS) {
      expect(sport.mark, sport.id).toBe('C');
      for (const id of sport.basis) expect(findSource(id), id).toBeDefined();
    }
    expect(findSport('chess')).toBeUndefined();
  });
});
