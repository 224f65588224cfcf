import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { drill } from './make-build.ts';

const RULE = 'static-share';

describe('static-share', () => {
  const week = (id: string, contacts: number) => ({
    weeks: [
      { sessions: [{ on: 1, lines: [drill('small-jump', 1, 100 - contacts), drill(id, 1, contacts)] } as const] },
    ],
  });

  it('keeps jumps without a counter-movement to a fifth', () => {
    expectSilent(RULE, week('squat-jump', 19));
    expectSilent(RULE, week('squat-jump', 20));
    expectFinding(RULE, week('squat-jump', 21), 1);
  });

  it('does not count landings', () => {
    expectSilent(RULE, week('snap-down', 80));
    expectSilent(RULE, week('depth-landing-20', 80));
  });
});
