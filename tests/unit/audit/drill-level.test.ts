import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { day, drill, place } from './make-build.ts';
import type { Level } from '../../../src/library/types.ts';

const RULE = 'drill-level';

describe('drill-level', () => {
  const weeks = [{ sessions: [{ on: 1, lines: [drill('drop-jump-40', 2, 5)] } as const] }];
  const at = (level: Level) => ({ athlete: { levels: [{ is: level, span: place(0) }] }, weeks });

  it('holds a drill to the level it is for', () => {
    expectFinding(RULE, at('beginner'), 1);
    expectSilent(RULE, at('intermediate'));
    expectSilent(RULE, at('advanced'));
  });

  it('goes by the day a level is signed off', () => {
    const signed = (from: number) => [
      { is: 'beginner' as const, span: place(0) },
      { is: 'intermediate' as const, from, span: place(0) },
    ];
    expectSilent(RULE, { athlete: { levels: signed(day(1, 1)) }, weeks });
    expectFinding(RULE, { athlete: { levels: signed(day(1, 2)) }, weeks }, 1);
  });
});
