// Reasons name each line of the plan behind a week once.

import { expect, it } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import type { Closure } from '../../../src/plan/types.ts';
import type { Day } from '../../../src/util/days.ts';
import { day } from '../date.ts';
import { athlete, EVERYBODY, HERE, plan } from './make-plan.ts';

function closed(from: Day, until: Day, file: string): Closure {
  return { range: { from, until }, because: 'ice', trained: 'none', who: EVERYBODY, span: { ...HERE, file } };
}

it('a way back names every line that closed the weeks before it, of whichever file, and each once', () => {
  const closures = [
    closed(day('2027-01-25'), day('2027-02-07'), 'a.yaml'),
    closed(day('2027-02-08'), day('2027-02-14'), 'b.yaml'),
  ];
  const season = plan(
    { starts: '2027-01-04', ends: '2027-04-25' },
    { athletes: [athlete('intermediate', 60)], closures },
  );
  const [built] = compilePlan(season).athletes;
  const week = built?.weeks.find(({ kind }) => kind === 'return');
  const reason = week?.reasons.find(({ by }) => by === 'return-ramp');
  expect(reason?.spans.map(({ file }) => file)).toEqual(['a.yaml', 'b.yaml']);
});
