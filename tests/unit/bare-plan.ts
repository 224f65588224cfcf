// A plan with a season and nothing in it, for tests that make their own to build on: what they don't name is empty.

import { BUILT_IN } from '../../src/library/index.ts';
import type { DayRange, Plan } from '../../src/plan/types.ts';
import type { Span } from '../../src/source/types.ts';

/** The season's first and last day, and the place that everything written is said to stand at. */
export function barePlan({ from, until }: DayRange, span: Span, change: Partial<Plan> = {}): Plan {
  return {
    files: [],
    season: {
      title: 'Test',
      sport: 'general',
      starts: from,
      ends: until,
      endsOrigin: { kind: 'written', span },
      weekStarts: 0,
      units: 'metric',
      inSeason: [],
      span,
    },
    library: BUILT_IN,
    places: new Map(),
    slots: [],
    competitions: [],
    closures: [],
    practice: [],
    tests: [],
    squads: new Map(),
    athletes: [],
    ruleChanges: [],
    pins: [],
    always: [],
    waivers: [],
    programmes: new Map(),
    uses: [],
    record: { done: [], tests: [] },
    ...change,
  };
}
