import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { drill, lift } from './make-build.ts';
import type { BuiltLine } from '../../../src/build/types.ts';

const RULE = 'pair-rest';

describe('pair-rest', () => {
  const pair = (heavy: Partial<BuiltLine>, jump: Partial<BuiltLine> = { pairedWith: 1 }) => {
    const lines = [lift('back-squat', 3, 3, { percent: 90, ...heavy }), drill('countermovement-jump', 3, 3, jump)];
    return { weeks: [{ sessions: [{ on: 1, lines } as const] }] };
  };

  // Dobbs 2019, J Strength Cond Res 33(7):2009–2018: three to seven minutes.
  it('rests three minutes between the heavy set and the jumps', () => {
    expectSilent(RULE, pair({ restSeconds: 181 }));
    expectSilent(RULE, pair({ restSeconds: 180 }));
    expectFinding(RULE, pair({ restSeconds: 179 }), 1);
  });

  it('reads the pair from either of its lines', () => {
    expectFinding(RULE, pair({ restSeconds: 90, pairedWith: 2 }, {}), 1);
    expectFinding(RULE, pair({ restSeconds: 90, pairedWith: 2 }, { pairedWith: 1 }), 1);
    expectSilent(RULE, pair({ restSeconds: 90 }, {}));
  });

  it('is about heavy sets', () => {
    expectSilent(RULE, pair({ restSeconds: 90, percent: 79 }));
    expectFinding(RULE, pair({ restSeconds: 90, percent: 80 }), 1);
  });

  it('leaves marked clusters alone', () => {
    expectSilent(RULE, pair({ restSeconds: 20, note: 'cluster: jumps inside the set' }));
    expectSilent(RULE, pair({ restSeconds: 20 }, { pairedWith: 1, note: 'Cluster' }));
  });

  it('is about jumps, and no second lift', () => {
    const lines = [
      lift('back-squat', 3, 3, { percent: 90, restSeconds: 90 }),
      lift('romanian-deadlift', 3, 5, { pairedWith: 1 }),
    ];
    expectSilent(RULE, { weeks: [{ sessions: [{ on: 1, lines }] }] });
  });
});
