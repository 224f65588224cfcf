import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { ALWAYS, drill, lift, place } from './make-build.ts';

const RULE = 'stability-share';

describe('stability-share', () => {
  const season = (unstable: number, others: number) => ({
    weeks: [
      { sessions: [{ on: 1, lines: [drill('pad-snap-down', unstable, 5), drill('pogo', others, 10)] } as const] },
    ],
  });

  it('keeps unstable ground to 15 per cent of the sets', () => {
    expectSilent(RULE, season(14, 86));
    expectSilent(RULE, season(15, 85));
    expectFinding(RULE, season(16, 84), 1);
  });

  it('counts lifts on a pad', () => {
    const lines = [lift('pad-split-squat', 1, 8), lift('back-squat', 4, 5)];
    expectFinding(RULE, { weeks: [{ sessions: [{ on: 1, lines }] }] }, 1);
  });

  it('does not count rehabilitation', () => {
    const returning = [{ stage: 2, of: 4, since: ALWAYS.from, signed: 'physio', span: place(0) }];
    expectSilent(RULE, { ...season(50, 50), athlete: { returning } });
  });
});
