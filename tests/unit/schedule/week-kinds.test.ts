import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeDeloads } from '../../../src/schedule/week-kinds/deloads.ts';
import type { LoadableWeek } from '../../../src/schedule/week-kinds/deloads.ts';
import type { Trained } from '../../../src/plan/types.ts';
import { day } from '../date.ts';
import { athlete, EVERYBODY, HERE, peak, plan } from './make-plan.ts';
import { stages } from './stages.ts';

const SEASON = { starts: '2027-01-04', ends: '2027-04-25' };
const ada = athlete('intermediate', 80);

const kindsOf = (change: Parameters<typeof plan>[1], who = ada): readonly string[] =>
  stages(plan(SEASON, { competitions: [peak('2027-04-24')], ...change }), who).kinds.map((week) => week.kind);

const away = (from: string, until: string, trained: Trained = 'none') => ({
  range: { from: day(from), until: day(until) },
  because: 'ill',
  trained,
  span: HERE,
});

describe('kinds of week', () => {
  it('are three rising weeks and an easy one, and two weeks of taper', () => {
    const L = 'load';
    expect(kindsOf({})).toEqual([L, L, L, 'deload', L, L, L, 'deload', L, L, L, 'deload', L, L, 'taper', 'taper']);
  });

  it('move an easy week to a week with a test', () => {
    const test = { day: day('2027-01-19'), what: [], contacts: 10, who: EVERYBODY, span: HERE };
    expect(kindsOf({ tests: [test] })[2]).toBe('deload');
  });

  it('climb the short ladder after two weeks away and the long one after four', () => {
    const two = { ...ada, away: [away('2027-01-18', '2027-01-31')] };
    expect(kindsOf({}, two).slice(2, 7)).toEqual(['empty', 'empty', 'return', 'return', 'load']);
    const four = { ...ada, away: [away('2027-01-18', '2027-02-14')] };
    expect(kindsOf({}, four).slice(6, 11)).toEqual(['return', 'return', 'return', 'return', 'load']);
  });

  it('have no ladder after one week away, or where training went on', () => {
    expect(kindsOf({}, { ...ada, away: [away('2027-01-18', '2027-01-24')] })).not.toContain('return');
    expect(kindsOf({}, { ...ada, away: [away('2027-01-18', '2027-01-31', 'some')] })).not.toContain('return');
  });

  it('leave the taper out while the ladder isn’t climbed, and say so', () => {
    const late = { ...ada, away: [away('2027-03-29', '2027-04-11')] };
    const found = stages(plan(SEASON, { competitions: [peak('2027-04-24')] }), late);
    expect(found.kinds.slice(-2).map((week) => week.kind)).toEqual(['return', 'return']);
    const told = found.diagnostics.filter((one) => one.code === 'schedule/return-in-taper');
    expect(told.map((one) => one.week)).toEqual([day('2027-04-12')]);
  });

  it('taper for a week before a peak in season that comes a month after another', () => {
    const base = plan(
      { starts: '2027-01-04', ends: '2027-03-21' },
      { competitions: [peak('2027-02-15'), peak('2027-03-15')] },
    );
    // The season opens in the week behind the first peak: four weeks up to the second, whatever there was before.
    const opens = { from: day('2027-02-22'), until: day('2027-03-21'), span: HERE };
    const inSeason = { ...base, season: { ...base.season, inSeason: [opens] } };
    const kinds = stages(inSeason, ada).kinds.map((week) => week.kind);
    expect(kinds.slice(5)).toEqual(['load', 'taper', 'load', 'load', 'load', 'taper']);
  });

  it('follow a pin', () => {
    const pin = {
      range: { from: day('2027-01-12'), until: day('2027-01-12') },
      who: EVERYBODY,
      effects: [{ kind: 'week-kind' as const, weekKind: 'deload' as const }],
      because: 'exams',
      span: HERE,
    };
    expect(kindsOf({ pins: [pin] })[1]).toBe('deload');
  });
});

describe('deloads', () => {
  const week = fc.record({
    tests: fc.nat({ max: 1 }),
    endsPhase: fc.boolean(),
    mostInRow: fc.constant(3),
    leastBetween: fc.constant(2),
  });

  it('are the best there are, against every placing', () => {
    fc.assert(
      fc.property(fc.array(week, { minLength: 1, maxLength: 11 }), (weeks) => {
        const best = everyPlacing(weeks).reduce((a, b) => (rank(weeks, b, a) < 0 ? b : a));
        expect([...placeDeloads(weeks)].toSorted((a, b) => a - b)).toEqual(best);
      }),
      { numRuns: 300 },
    );
  });
});

/** Every placing that keeps the rhythm, by trying all subsets. */
function everyPlacing(weeks: readonly LoadableWeek[]): readonly (readonly number[])[] {
  const found: number[][] = [];
  for (let bits = 0; bits < 2 ** weeks.length; bits += 1) {
    const chosen = weeks.flatMap((_, index) => ((bits >> index) & 1 ? [index] : []));
    const gaps = chosen.map((index, at) => index - (chosen[at - 1] ?? -1) - 1);
    const tail = weeks.length - 1 - (chosen.at(-1) ?? -1);
    if (gaps.every((gap) => gap >= 2 && gap <= 3) && tail <= 3) found.push(chosen);
  }
  return found;
}

function rank(weeks: readonly LoadableWeek[], a: readonly number[], b: readonly number[]): number {
  const tests = (placing: readonly number[]): number => placing.filter((at) => (weeks[at]?.tests ?? 0) > 0).length;
  const ends = (placing: readonly number[]): number => placing.filter((at) => weeks[at]?.endsPhase === true).length;
  const latest = a.map((at, index) => (b[index] ?? 0) - at).find((difference) => difference !== 0) ?? 0;
  return a.length - b.length || tests(b) - tests(a) || ends(b) - ends(a) || latest;
}
