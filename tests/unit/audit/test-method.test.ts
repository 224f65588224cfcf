import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { day, loading, place } from './make-build.ts';
import type { TestRow } from '../../../src/plan/types.ts';

const RULE = 'test-method';

type Measured = Partial<Pick<TestRow, 'method' | 'arms' | 'test'>>;

function season(...rows: readonly Measured[]) {
  const tests = rows.map((row, index): TestRow => ({
    day: day(1, 0) - 50 + index,
    athlete: 'ada',
    test: 'countermovement-jump',
    trial: 1,
    value: 40,
    unit: 'cm',
    span: place(100 + index),
    ...row,
  }));
  return { plan: { record: { done: [], tests } }, weeks: [loading(100)] };
}

describe('test-method', () => {
  // Baumgart 2017, Asian J Sports Med 8(4):e12921, and Vaverka 2016, J Hum Kinet 53:41–50.
  it('holds one method', () => {
    expectSilent(RULE, season({ method: 'flight-time' }, { method: 'flight-time' }));
    expectFinding(RULE, season({ method: 'flight-time' }, { method: 'reach' }), 1);
  });

  it('holds one use of the arms', () => {
    expectSilent(RULE, season({ arms: false }, { arms: false }));
    expectFinding(RULE, season({ arms: false }, { arms: true }), 1);
  });

  it('compares tests of one kind, and what was written down', () => {
    expectSilent(RULE, season({ method: 'flight-time' }, { method: 'reach', test: 'squat-jump' }));
    expectSilent(RULE, season({ method: 'flight-time' }, {}));
  });

  it('says it once for a test, at the row that differs', () => {
    const said = found(RULE, season({ method: 'a' }, { method: 'b' }, { method: 'c' }));
    expect(said.map((one) => one.span)).toEqual([place(101)]);
    expect(said[0]?.related[0]?.span).toEqual(place(100));
  });

  it('compares the arms where a method is missing, and the method where the arms are', () => {
    expectFinding(RULE, season({ arms: false }, { arms: true, method: 'mat' }), 1);
    expectFinding(RULE, season({ method: 'mat' }, { arms: true, method: 'reach' }), 1);
    expectSilent(RULE, season({ arms: false, method: 'mat' }, { method: 'mat' }));
    expectSilent(RULE, season({ arms: false, method: 'mat' }, { arms: false }));
  });
});
