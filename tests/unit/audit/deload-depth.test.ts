import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { loading } from './make-build.ts';

const RULE = 'deload-depth';

describe('deload-depth', () => {
  const season = (contacts: number, before: readonly number[] = [200]) => ({
    weeks: [...before.map((one) => loading(one)), loading(contacts, { kind: 'deload' })],
  });

  it('keeps an easy week at three fifths of the usual volume', () => {
    expectSilent(RULE, season(119));
    expectSilent(RULE, season(120));
    expectFinding(RULE, season(121), 2);
  });

  it('keeps an easy week under every loading week before it', () => {
    expectSilent(RULE, season(79, [200, 80, 155]));
    expectFinding(RULE, season(80, [200, 80, 155]), 4);
    expect(found(RULE, season(80, [200, 80, 155]))[0]?.params).toMatchObject({ run: true, most: 80 });
  });

  it('looks no further back than the run', () => {
    const weeks = [loading(60), loading(50, { kind: 'deload' }), loading(137), loading(82, { kind: 'deload' })];
    expectSilent(RULE, { weeks });
  });

  it('has nothing to say of an easy week without jumps', () => {
    expectSilent(RULE, { weeks: [loading(0), loading(0, { kind: 'deload' })] });
  });

  it('leaves loading weeks without jumps out of the run', () => {
    expectSilent(RULE, season(39, [200, 0]));
  });

  it('leaves no part of a contact over', () => {
    expectSilent(RULE, season(120, [201]));
    expectFinding(RULE, season(121, [201]), 2);
  });

  it('is about easy weeks alone', () => {
    expectSilent(RULE, { weeks: [loading(100), loading(150, { kind: 'hold' })] });
  });
});
