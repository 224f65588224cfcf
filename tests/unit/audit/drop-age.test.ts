import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { aged, drill } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';

const RULE = 'drop-age';

describe('drop-age', () => {
  const season = (age: number, id: string, cleared: readonly string[] = ['drops']): SeasonSpec => ({
    athlete: { ...aged(age), cleared: new Set(cleared) },
    weeks: [{ sessions: [{ on: 1, lines: [drill(id, 2, 5)] }] }],
  });

  it('lets nobody drop under fourteen, cleared or not', () => {
    expectFinding(RULE, season(13, 'drop-jump-20'), 1);
    expectFinding(RULE, season(13, 'depth-landing-20'), 1);
    expectSilent(RULE, season(13, 'tuck-jump'));
  });

  it.each([14, 15])('lets those of %i drop thirty centimetres when cleared', (age) => {
    expectSilent(RULE, season(age, 'drop-jump-20'));
    expectSilent(RULE, season(age, 'drop-jump-30'));
    expectFinding(RULE, season(age, 'drop-jump-40'), 1);
    expectFinding(RULE, season(age, 'drop-jump-20', []), 1);
  });

  it('takes a clearance for the drill itself', () => {
    expectSilent(RULE, season(15, 'drop-jump-30', ['drop-jump-30']));
    expectFinding(RULE, season(15, 'drop-jump-30', ['drop-jump-20']), 1);
  });

  it('is silent from sixteen on', () => {
    expectSilent(RULE, season(16, 'drop-jump-60', []));
  });

  it('goes by the box of the line', () => {
    const lines = [drill('drop-jump-20', 2, 5, { dropCm: 31 })];
    const spec: SeasonSpec = {
      athlete: { ...aged(15), cleared: new Set(['drops']) },
      weeks: [{ sessions: [{ on: 1, lines }] }],
    };
    expect(found(RULE, spec)[0]?.params).toMatchObject({ cm: 31, most: 30 });
  });
});
