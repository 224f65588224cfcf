import { describe, it } from 'vitest';
import { expectFinding, expectSilent } from './found.ts';
import { changed, heavy, jumps } from './make-build.ts';

const RULE = 'strength-always';

describe('strength-always', () => {
  it('wants a lift session in every week', () => {
    expectSilent(RULE, { weeks: [{ sessions: [jumps(1, 40), heavy(3)] }] });
    expectFinding(RULE, { weeks: [{ sessions: [jumps(1, 40)] }] }, 1);
    expectFinding(RULE, { weeks: [{ kind: 'taper', sessions: [jumps(1, 40)] }] }, 1);
    expectFinding(RULE, { weeks: [{ kind: 'deload' }] }, 1);
  });

  it('is silent in transition and empty weeks', () => {
    expectSilent(RULE, {
      weeks: [
        { kind: 'transition', phase: 'transition' },
        { kind: 'empty', phase: 'closed' },
      ],
    });
  });

  it('takes more from the plan', () => {
    const plan = changed(RULE, { least: 2 });
    expectFinding(RULE, { plan, weeks: [{ sessions: [heavy(3)] }] }, 1);
    expectSilent(RULE, { plan, weeks: [{ sessions: [heavy(1), heavy(3)] }] });
  });
});
