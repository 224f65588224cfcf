import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { drill } from './make-build.ts';

const RULE = 'drop-mass';

describe('drop-mass', () => {
  // NSCA position statement 1993, item 6: over 100 kg (220 lb) no drop above 46 cm (18 in).
  const season = (kilos: number, dropCm: number) => ({
    athlete: { massGrams: kilos * 1000 },
    weeks: [{ sessions: [{ on: 1, lines: [drill('drop-jump-45', 2, 5, { dropCm })] } as const] }],
  });

  it('keeps heavy athletes to 46 cm', () => {
    expectSilent(RULE, season(101, 45));
    expectSilent(RULE, season(101, 46));
    expectFinding(RULE, season(101, 47), 1);
  });

  it('is about athletes over a hundred kilos', () => {
    expectSilent(RULE, season(100, 60));
    expectFinding(RULE, season(100.001, 60), 1);
  });
});
