// However competitions crowd a season, the scheduler's own sessions keep lifting off sore legs before each of them: the
// audit, which looks with code of its own, finds nothing.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import type { BuiltAthlete } from '../../src/build/types.ts';
import { EVE_DAYS } from '../../src/library/leg-sparing.ts';
import type { Competition, Plan } from '../../src/plan/types.ts';
import { DAYS_A_WEEK } from '../../src/util/days.ts';
import { EVERYBODY, HERE } from '../unit/schedule/make-plan.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan } from './random-plan.ts';

const PLANS = plansFor(60);

const MOST_COMPETITIONS = 40;

/** Days between one competition and the next, and how it is gone into. */
const spaced = fc.array(
  fc.record({
    days: fc.integer({ min: 1, max: 5 }),
    prepare: fc.constantFrom<Competition['prepare']>('freshen', 'freshen', 'through', 'peak'),
  }),
  { minLength: MOST_COMPETITIONS, maxLength: MOST_COMPETITIONS },
);

/** A plan with a competition or several in each week but the first, and in those far behind. */
const crowded = fc.tuple(randomPlan, spaced).map(([plan, drawn]): Plan => {
  const { starts, ends } = plan.season;
  let day = starts + DAYS_A_WEEK;
  const competitions = drawn.map(({ days, prepare }): Competition => {
    day += days;
    return { name: 'Event', range: { from: day, until: day }, prepare, jumps: 0, who: EVERYBODY, span: HERE };
  });
  return { ...plan, competitions: competitions.filter(({ range }) => range.until <= ends) };
});

function liftsOnEves({ weeks }: BuiltAthlete, { competitions }: Plan): number {
  const lifting = weeks.flatMap(({ sessions }) => sessions).filter((session) => session.lifts);
  return lifting.filter(({ day }) =>
    competitions.some(({ range, prepare }) => range.from > day && range.from - day <= EVE_DAYS[prepare]),
  ).length;
}

it('no plan of its own has sore legs in a competition', { timeout: PATIENCE }, () => {
  let sessions = 0;
  fc.assert(
    fc.property(crowded, (plan) => {
      for (const built of compilePlan(plan).athletes) {
        expect(built.diagnostics.filter(({ code }) => code === 'rule/lift-event-gap')).toEqual([]);
        sessions += liftsOnEves(built, plan);
      }
    }),
    { numRuns: PLANS },
  );
  tell(
    `eves: ${PLANS} plans, ${sessions} lift sessions on the eve of a competition, none with more than a light main lift`,
  );
  expect(sessions).toBeGreaterThan(PLANS / 4);
});
