// A surprise never leads to more: where more was jumped than written, or where it hurts, the rest of the week and the two
// weeks behind it have no more than they would have had if all had gone as written.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BuiltAthlete } from '../../src/build/types.ts';
import { compilePlan } from '../../src/compile.ts';
import type { DoneRow, Plan } from '../../src/plan/types.ts';
import { DAYS_A_WEEK, isoDate } from '../../src/util/days.ts';
import type { Day } from '../../src/util/days.ts';
import { HERE } from '../unit/schedule/make-plan.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan } from './random-plan.ts';

const PLANS = plansFor(120);

type Row = Omit<DoneRow, 'athlete' | 'day' | 'span'>;

/** What happens on a day, given the contacts of its sheet. */
const SURPRISES: Readonly<Record<string, (planned: number, size: number) => readonly Row[]>> = {
  'more than written': (planned, size) => [{ kind: 'session', contacts: planned + size }],
  'a session besides': (planned, size) => [
    { kind: 'session', contacts: planned },
    { kind: 'session', contacts: size, note: 'once more' },
  ],
  'a practice besides': (planned, size) => [
    { kind: 'session', contacts: planned },
    { kind: 'practice', contacts: size },
  ],
  'a match besides': (planned, size) => [
    { kind: 'session', contacts: planned },
    { kind: 'match', contacts: size },
  ],
  'pain that holds': (planned) => [{ kind: 'session', contacts: planned, pain: 4 }],
  'pain that stops': (planned) => [{ kind: 'session', contacts: planned, pain: 7 }],
};

const surprises = fc.record({
  what: fc.constantFrom(...Object.keys(SURPRISES)),
  size: fc.constantFrom(5, 20, 60, 150, 600),
  /** Which session of the season, by turns; it is of the weeks that are over or under way. */
  at: fc.nat(40),
  /** Days behind it on which the season is planned on. */
  later: fc.integer({ min: 1, max: 12 }),
});

interface Session {
  readonly day: Day;
  readonly contacts: number;
}

/** The season as it goes where everybody does what is on the sheet of the day, week by week. */
function asWritten(plan: Plan, id: string, until: Day): readonly Session[] {
  const done: Session[] = [];
  for (let monday = plan.season.starts; monday < until; monday += DAYS_A_WEEK) {
    const known = withRows(plan, id, done.map(asRow));
    const built = athleteOf(compilePlan(known, { asOf: monday }), id);
    const sheets = built.weeks.flatMap(({ sessions }) => sessions);
    done.push(
      ...sheets
        .filter(({ day, contacts }) => contacts > 0 && monday <= day && day < Math.min(until, monday + DAYS_A_WEEK))
        .map(({ day, contacts }) => ({ day, contacts })),
    );
  }
  return done;
}

const asRow = ({ day, contacts }: Session): Omit<DoneRow, 'athlete'> => ({
  day,
  kind: 'session',
  contacts,
  span: HERE,
});

const withRows = (plan: Plan, athlete: string, rows: readonly Omit<DoneRow, 'athlete'>[]): Plan => ({
  ...plan,
  record: { done: rows.map((row) => ({ ...row, athlete })), tests: [] },
});

function athleteOf(build: ReturnType<typeof compilePlan>, id: string): BuiltAthlete {
  const athlete = build.plan.athletes.find((one) => one.id === id);
  if (athlete === undefined) throw new Error('nobody of that name');
  return build.athlete(athlete);
}

/** Contacts still to come: of the rest of the week under way, and of the two behind it. */
function ahead({ weeks, blocked }: BuiltAthlete, asOf: Day): readonly number[] {
  const left = weeks.filter(({ starts }) => asOf < starts + DAYS_A_WEEK);
  return left
    .slice(0, 3)
    .map(({ week, sessions }) =>
      blocked.has(week) ? 0 : sessions.reduce((sum, { day, contacts }) => sum + (day < asOf ? 0 : contacts), 0),
    );
}

describe('a surprise', { timeout: PATIENCE }, () => {
  it('leads to no more in the rest of its week and in the next two', () => {
    const tried = new Map<string, number>();
    let less = 0;
    fc.assert(
      fc.property(randomPlan, surprises, (drawn, { what, size, at, later }) => {
        const [athlete] = drawn.athletes;
        if (athlete === undefined) return;
        const plan = { ...drawn, athletes: [athlete] };
        const all = asWritten(plan, athlete.id, plan.season.starts + 8 * DAYS_A_WEEK);
        const session = all[at % Math.max(1, all.length)];
        if (session === undefined) return;
        const asOf = session.day + later;
        const before = all.filter(({ day }) => day < asOf);
        const rows = (SURPRISES[what]?.(session.contacts, size) ?? []).map((row) => ({
          ...row,
          day: session.day,
          span: HERE,
        }));
        const surprised = before.flatMap((one) => (one === session ? rows : [asRow(one)]));
        const usual = ahead(
          athleteOf(compilePlan(withRows(plan, athlete.id, before.map(asRow)), { asOf }), athlete.id),
          asOf,
        );
        const found = ahead(athleteOf(compilePlan(withRows(plan, athlete.id, surprised), { asOf }), athlete.id), asOf);
        tried.set(what, (tried.get(what) ?? 0) + 1);
        const told = `${what} (${String(size)}) on ${isoDate(session.day)}, planned on ${isoDate(asOf)}: ${found.join(' ')}, else ${usual.join(' ')}`;
        found.forEach((contacts, week) => expect(contacts, told).toBeLessThanOrEqual(usual[week] ?? 0));
        if (found.some((contacts, week) => contacts < (usual[week] ?? 0))) less += 1;
      }),
      { numRuns: PLANS },
    );
    tell(
      `surprises: ${[...tried].map(([what, times]) => `${what} ${String(times)}`).join(', ')}; less for ${String(less)}`,
    );
    for (const what of Object.keys(SURPRISES)) expect(tried.get(what) ?? 0).toBeGreaterThan(0);
    expect(less).toBeGreaterThan(0);
  });
});
