import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { day, drill, place } from './make-build.ts';
import type { Level } from '../../../src/library/types.ts';

const RULE = 'drop-height';

describe('drop-height', () => {
  const weeks = (dropCm: number) => [
    { sessions: [{ on: 1, lines: [drill('drop-jump-20', 2, 5, { dropCm })] } as const] },
  ];
  const season = (level: Level, dropCm: number) => ({
    athlete: { levels: [{ is: level, span: place(0) }] },
    weeks: weeks(dropCm),
  });

  // Common practice, no source.
  it.each([
    ['beginner', 30],
    ['intermediate', 40],
    ['advanced', 60],
  ] as const)('holds %s athletes', (level, most) => {
    expectSilent(RULE, season(level, most - 1));
    expectSilent(RULE, season(level, most));
    expectFinding(RULE, season(level, most + 1), 1);
  });

  it('goes by the level of the day', () => {
    const levels = [
      { is: 'beginner' as const, span: place(0) },
      { is: 'intermediate' as const, from: day(1, 2), span: place(0) },
    ];
    expectFinding(RULE, { athlete: { levels }, weeks: weeks(40) }, 1);
  });
});
