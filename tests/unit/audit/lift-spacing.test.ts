import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { heavy, lift, squatMax } from './make-build.ts';
import type { SessionSpec } from './make-build.ts';

const RULE = 'lift-spacing';

describe('lift-spacing', () => {
  const both = (first: SessionSpec, second: SessionSpec) => ({ weeks: [{ sessions: [first, second] }] });
  const squats = (percent: number): SessionSpec => ({ on: 2, lines: [lift('back-squat', 3, 3, { percent })] });

  it('wants two days between heavy leg work', () => {
    expectSilent(RULE, both(heavy(1), heavy(4)));
    expectSilent(RULE, both(heavy(1), heavy(3)));
    expectFinding(RULE, both(heavy(1), heavy(2)), 1);
  });

  it('is heavy from eighty per cent', () => {
    expectSilent(RULE, both(heavy(1), squats(79.5)));
    expectFinding(RULE, both(heavy(1), squats(80)), 1);
  });

  it('works the share out from the kilos', () => {
    const kilos = (loadGrams: number) => both(heavy(1), { on: 2, lines: [lift('back-squat', 3, 3, { loadGrams })] });
    expectSilent(RULE, { athlete: squatMax(100_000), ...kilos(79_000) });
    expectFinding(RULE, { athlete: squatMax(100_000), ...kilos(80_000) }, 1);
  });

  it('is about legs and hips', () => {
    const bench: SessionSpec = { on: 2, lines: [lift('bench-press', 3, 3, { percent: 90 })] };
    expectSilent(RULE, both(heavy(1), bench));
  });

  it('looks over the end of a week', () => {
    expectFinding(RULE, { weeks: [{ sessions: [heavy(6)] }, { sessions: [heavy(0)] }] }, 2);
  });
});
