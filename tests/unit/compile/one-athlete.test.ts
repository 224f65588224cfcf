// An athlete compiled alone is the athlete of the whole squad: what is shared between athletes doesn't hang on who came
// first. Each is taken from a build of its own, so that nobody was compiled before.

import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import { EXAMPLES, filesOf, planWith } from '../report/example-plans.ts';

describe.each(EXAMPLES)('%s', (example) => {
  it('gives the same for one as for all', { timeout: 60_000 }, () => {
    const plan = planWith(filesOf(example));
    const walked = [...compilePlan(plan).athletes];
    for (const built of walked.toReversed()) expect(compilePlan(plan).athlete(built.athlete)).toEqual(built);
  });
});
