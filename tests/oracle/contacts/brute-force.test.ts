// Stage 4 against a brute force that tries every multiple of five of every week, on small random seasons.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mostAllowed, nextVolume, openingVolume } from '../../../src/schedule/contacts/bounds.ts';
import { searchContacts } from '../../../src/schedule/contacts/search.ts';
import { splitWeek } from '../../../src/schedule/contacts/split.ts';
import { possibleSessions } from '../../../src/schedule/contacts/possible.ts';
import type { PossibleWeek } from '../../../src/schedule/contacts/possible.ts';
import type { Growth, Keep, SessionGrowth, WeekTerms } from '../../../src/schedule/contacts/terms.ts';

const STEP = 5;

interface Drawn {
  readonly kind: 'load' | 'deload' | 'taper' | 'return' | 'empty';
  readonly possible: number;
  readonly ceiling: number;
  readonly share: number;
  readonly reach: boolean;
  readonly decisive: boolean;
  readonly pin: number | undefined;
}

const drawn: fc.Arbitrary<Drawn> = fc.record({
  kind: fc.constantFrom('load', 'load', 'load', 'deload', 'taper', 'return', 'empty'),
  possible: fc.integer({ min: 0, max: 2 }),
  ceiling: fc.integer({ min: 2, max: 9 }).map((steps) => steps * STEP),
  share: fc.integer({ min: 10, max: 45 }),
  reach: fc.boolean(),
  decisive: fc.boolean(),
  pin: fc.option(
    fc.integer({ min: 1, max: 8 }).map((steps) => steps * STEP),
    { nil: undefined, freq: 8 },
  ),
});

const GROWTH: Readonly<Record<Drawn['kind'], Growth>> = {
  load: { kind: 'rise', by: 'weekly-rise', percent: 10, contacts: 10 },
  deload: { kind: 'share', by: 'deload-depth', percent: 60 },
  taper: { kind: 'share', by: 'taper-cut', percent: 50 },
  return: { kind: 'share', by: 'return-ramp', percent: 140 },
  empty: { kind: 'share', by: 'open-days', percent: 0 },
};

const KEEP: Readonly<Record<Drawn['kind'], Keep>> = {
  load: { kind: 'follow' },
  deload: { kind: 'stay' },
  taper: { kind: 'stay' },
  return: { kind: 'stay' },
  empty: { kind: 'fade', leftPercent: 90 },
};

const RISING: SessionGrowth = { kind: 'rise', percent: 30, contacts: 15 };
const EASY: SessionGrowth = { kind: 'share', by: 'deload-depth', percent: 75 };

function termsOf(one: Drawn): WeekTerms {
  const target = one.kind === 'empty' ? 0 : Math.min(one.share, one.ceiling) * one.possible;
  const aims = one.kind === 'load' || one.kind === 'return' || one.kind === 'empty';
  return {
    week: one.kind,
    phase: 'strength',
    level: 'beginner',
    possible: one.possible,
    frequency: 2,
    usualSessions: 2,
    openingPercent: 100,
    growth: GROWTH[one.kind],
    sessionGrowth: aims ? RISING : EASY,
    keep: KEEP[one.kind],
    sessionCeilings: [{ by: 'session-ceiling', most: one.ceiling }],
    sessionCeiling: one.ceiling,
    weekCeilings: [],
    target: aims ? target : undefined,
    reach: one.reach ? Math.floor((115 * target) / 100) : target,
    primer: false,
    decisive: one.decisive && one.kind === 'load',
    ...(one.pin === undefined || one.kind === 'empty'
      ? {}
      : { fixed: { contacts: one.pin, kind: 'pin', span: { file: 'a', start: 0, end: 0 } } as const }),
  };
}

interface Found {
  readonly shortfall: number;
  readonly distance: number;
  readonly contacts: readonly number[];
}

/** Every plan the bounds allow; a week that takes the most allowed is left no choice. */
function everyPlan(weeks: readonly WeekTerms[], at: number, adapted: number, before: Found): readonly Found[] {
  const terms = weeks[at];
  if (terms === undefined) return [before];
  const opening = openingVolume(terms, adapted);
  const most = mostAllowed(terms, opening);
  const found: Found[] = [];
  for (let contacts = 0; contacts <= most; contacts += STEP) {
    if (terms.fixed !== undefined && terms.fixed.contacts !== contacts) continue;
    if (terms.fixed === undefined && terms.target === undefined && contacts !== most) continue;
    if (terms.fixed === undefined && terms.target !== undefined && contacts > terms.reach) continue;
    const target = terms.target ?? contacts;
    const next = {
      shortfall: before.shortfall + (terms.decisive ? Math.max(0, target - contacts) : 0),
      distance: before.distance + Math.abs(contacts - target),
      contacts: [...before.contacts, contacts],
    };
    found.push(...everyPlan(weeks, at + 1, nextVolume(terms, opening, contacts), next));
  }
  return found;
}

function compare(a: Found, b: Found): number {
  const first = a.contacts
    .map((contacts, at) => contacts - (b.contacts[at] ?? 0))
    .find((difference) => difference !== 0);
  return a.shortfall - b.shortfall || a.distance - b.distance || (first ?? 0);
}

describe('the contacts of all weeks together', () => {
  it('are the best there are, in all three levels of the objective', () => {
    let impossible = 0;
    fc.assert(
      fc.property(fc.array(drawn, { minLength: 1, maxLength: 5 }), fc.integer({ min: 10, max: 60 }), (weeks, start) => {
        const terms = weeks.map(termsOf);
        const all = everyPlan(terms, 0, start, { shortfall: 0, distance: 0, contacts: [] });
        const best = all.length === 0 ? undefined : all.reduce((least, one) => (compare(one, least) < 0 ? one : least));
        if (best === undefined) impossible += 1;
        expect(searchContacts(terms, start)).toEqual(best?.contacts);
      }),
      { numRuns: 600 },
    );
    expect(impossible).toBeGreaterThan(0);
  });
});

describe('possible sessions', () => {
  const week: fc.Arbitrary<{ days: readonly number[]; frequency: number }> = fc.record({
    days: fc
      .uniqueArray(fc.integer({ min: 0, max: 6 }), { maxLength: 7 })
      .map((days) => days.toSorted((a, b) => a - b)),
    frequency: fc.integer({ min: 1, max: 3 }),
  });

  it('are the best there are, against every choice of days', () => {
    fc.assert(
      fc.property(fc.array(week, { minLength: 1, maxLength: 3 }), (drawnWeeks) => {
        const weeks = drawnWeeks.map((one, at): PossibleWeek => ({
          until: at * 7 + 6,
          days: one.days.map((day) => day + at * 7),
          frequency: one.frequency,
          apart: 2,
          open: one.days.length > 0,
        }));
        expect(possibleSessions(weeks)).toEqual(bestCounts(weeks));
      }),
      { numRuns: 300 },
    );
  });
});

/** By trying all sets of days of the whole season. */
function bestCounts(weeks: readonly PossibleWeek[]): readonly number[] {
  const days = weeks.flatMap((week) => week.days);
  let best: readonly number[] = weeks.map(() => 0);
  for (let bits = 0; bits < 2 ** days.length; bits += 1) {
    const chosen = days.filter((_, at) => (bits >> at) & 1);
    if (chosen.some((day, at) => at > 0 && day - (chosen[at - 1] ?? 0) < 2)) continue;
    const counts = weeks.map((week) => chosen.filter((day) => week.days.includes(day)).length);
    if (counts.some((count, at) => count > (weeks[at]?.frequency ?? 0))) continue;
    if (compareCounts(weeks, counts, best) < 0) best = counts;
  }
  return best;
}

const total = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);

function compareCounts(weeks: readonly PossibleWeek[], a: readonly number[], b: readonly number[]): number {
  const without = (counts: readonly number[]): number =>
    counts.filter((count, at) => count === 0 && weeks[at]?.open === true).length;
  const later = a.map((count, at) => (b[at] ?? 0) - count).findLast((difference) => difference !== 0);
  return total(b) - total(a) || without(a) - without(b) || (later ?? 0);
}

describe('a week shared among its sessions', () => {
  it('adds up, larger first, in fives', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 1, max: 4 }), (steps, possible) => {
        const contacts = steps * STEP;
        const most = Math.ceil(steps / possible) * STEP;
        const sizes = splitWeek(contacts, most, most, possible);
        expect(total(sizes)).toBe(contacts);
        expect(sizes.every((size) => size % STEP === 0 && size > 0 && size <= most)).toBe(true);
        expect(sizes).toEqual(sizes.toSorted((a, b) => b - a));
        expect(sizes.length).toBeLessThanOrEqual(possible);
      }),
    );
  });

  it('takes more sessions while each is worth coming for', () => {
    expect(splitWeek(110, 70, 100, 2)).toEqual([55, 55]);
    expect(splitWeek(90, 100, 100, 3)).toEqual([30, 30, 30]);
    expect(splitWeek(85, 100, 100, 3)).toEqual([45, 40]);
    expect(splitWeek(40, 100, 100, 2)).toEqual([40]);
    expect(splitWeek(40, 40, 40, 2)).toEqual([20, 20]);
  });
});
