// Who differs from somebody by loads alone is told what was found of that somebody, but for the rules that ask for loads.
// Whatever the season: nothing else is asked of loads, and nobody is told what being audited alone wouldn't give.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { auditAthlete } from '../../src/audit/audit.ts';
import { readSeason } from '../../src/audit/read-season.ts';
import { AUDIT_RULES } from '../../src/audit/rules.ts';
import { sharedVerdict } from '../../src/audit/shared-verdict.ts';
import type { BuiltAthlete, BuiltLine, BuiltSession, BuiltWeek } from '../../src/build/types.ts';
import { compilePlan } from '../../src/compile.ts';
import type { Athlete, LiftMax, Plan } from '../../src/plan/types.ts';
import { buildAthlete } from '../../src/schedule/build-athlete.ts';
import { HERE } from '../unit/schedule/make-plan.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan, withProgramme } from './random-plan.ts';

const PLANS = plansFor(40);

const maximum = (lift: string, grams: number): LiftMax => ({ lift, grams, estimated: false, span: HERE });

/** Athletes with a maximum, and with nothing that keeps others from being like them. */
const lifters = fc.oneof(randomPlan, withProgramme(randomPlan)).map((plan): Plan => ({
  ...plan,
  athletes: plan.athletes.map((athlete, at) => ({
    ...athlete,
    limits: [],
    away: [],
    returning: [],
    lifts: new Map([...athlete.lifts, ['back-squat', maximum('back-squat', 80_000 + 20_000 * at)]]),
  })),
}));

/** How an athlete's own loads differ: kilos and shares in per cent, plates, what is heavy, the maximum itself. */
const loads = fc.record({
  percent: fc.constantFrom(40, 90, 105, 150, 300),
  plates: fc.constantFrom(0, 0, 125),
  isHeavy: fc.boolean(),
  maximum: fc.constantFrom(20_000, 90_000, 250_000),
});
type Loads = typeof loads extends fc.Arbitrary<infer T> ? T : never;

const ofLine =
  ({ percent, plates }: Loads) =>
  (line: BuiltLine): BuiltLine =>
    line.percent === undefined && line.loadGrams === undefined
      ? line
      : {
          ...line,
          ...(line.percent !== undefined && { percent: Math.floor((line.percent * percent) / 100) }),
          ...(line.loadGrams !== undefined && { loadGrams: Math.floor((line.loadGrams * percent) / 100) }),
          ...(line.perSideGrams !== undefined && { perSideGrams: line.perSideGrams + plates }),
        };

const ofSession =
  (own: Loads) =>
  (session: BuiltSession): BuiltSession =>
    session.lifts ? { ...session, heavy: own.isHeavy, lines: session.lines.map(ofLine(own)) } : session;

/** The season of somebody with other loads. */
function withLoads(built: BuiltAthlete, own: Loads): BuiltAthlete {
  const { athlete, weeks } = built;
  return {
    ...built,
    athlete: {
      ...athlete,
      id: `${athlete.id}-other`,
      lifts: new Map([...athlete.lifts, ['back-squat', maximum('back-squat', own.maximum)]]),
    },
    weeks: weeks.map((week) => ({ ...week, sessions: week.sessions.map(ofSession(own)) })),
  };
}

/** Another value in one field of a week, a session or a line. */
interface Edit {
  readonly of: 'week' | 'session' | 'line';
  readonly at: number;
  readonly field: number;
  readonly value: number;
}

const edit: fc.Arbitrary<Edit> = fc.record({
  of: fc.constantFrom('week', 'session', 'line'),
  at: fc.nat(1000),
  field: fc.nat(30),
  value: fc.constantFrom(-20, -1, 1, 7, 60, 600),
});

const LEFT = new Set(['sessions', 'lines', 'starts', 'day', 'slot', 'reasons', 'bounds', 'origin', 'boundBy']);

/** Strings come from the same field of another. */
function edited<T extends object>(one: T, others: readonly T[], { field, value }: Edit): T {
  const names = Object.keys(one).filter((name) => !LEFT.has(name));
  const name = names[field % names.length] ?? '';
  const was: unknown = Reflect.get(one, name);
  if (typeof was === 'number') return { ...one, [name]: Math.max(0, was + value) };
  if (typeof was === 'boolean') return { ...one, [name]: !was };
  return { ...one, [name]: Reflect.get(others[Math.abs(value) % others.length] ?? one, name) };
}

function withEdit(built: BuiltAthlete, one: Edit): BuiltAthlete {
  const sessions = built.weeks.flatMap((week) => week.sessions);
  const lines = sessions.flatMap((session) => session.lines);
  const all: readonly object[] = one.of === 'week' ? built.weeks : one.of === 'session' ? sessions : lines;
  const meant = all[one.at % Math.max(1, all.length)];
  const changed = <T extends object>(value: T, others: readonly T[]): T =>
    value === meant ? edited(value, others, one) : value;
  const week = (value: BuiltWeek): BuiltWeek => ({
    ...changed(value, built.weeks),
    sessions: value.sessions.map((session) => ({
      ...changed(session, sessions),
      lines: session.lines.map((line) => changed(line, lines)),
    })),
  });
  return { ...built, weeks: built.weeks.map(week) };
}

function isGiven(plan: Plan, built: BuiltAthlete): boolean {
  let given = false;
  const stop = new Error('enough');
  try {
    sharedVerdict(plan, built, (unloaded) => {
      given = unloaded !== undefined;
      throw stop;
    });
  } catch (error) {
    if (error !== stop) throw error;
  }
  return given;
}

describe('an athlete who differs from another by loads', { timeout: PATIENCE }, () => {
  it('is told what being audited alone gives', () => {
    const counts = { seasons: 0, shared: 0, edits: 0, sharedEdits: 0 };
    fc.assert(
      fc.property(lifters, loads, fc.array(edit, { minLength: 6, maxLength: 6 }), (plan, own, edits) => {
        const { context, weeks } = compilePlan(plan);
        for (const athlete of plan.athletes) {
          const built = buildAthlete(context, athlete);
          auditAthlete(plan, built, weeks);
          const alone = (one: BuiltAthlete): unknown => auditAthlete({ ...plan }, one, weeks);
          const other = withLoads(built, own);
          counts.seasons += 1;
          counts.shared += isGiven(plan, other) ? 1 : 0;
          expect(auditAthlete(plan, other, weeks)).toEqual(alone(other));
          for (const one of edits) {
            const changed = withEdit(other, one);
            counts.edits += 1;
            counts.sharedEdits += isGiven(plan, changed) ? 1 : 0;
            expect(auditAthlete(plan, changed, weeks)).toEqual(alone(changed));
          }
        }
      }),
      { numRuns: PLANS },
    );
    tell(
      `other loads: ${PLANS} plans, ${counts.seasons} seasons, ${counts.shared} told what is true of another, as ${counts.sharedEdits} of ${counts.edits} edited ones`,
    );
    expect(counts.shared).toBeGreaterThan(PLANS / 5);
  });

  it('has loads and maxima asked for by the rules that say so alone', () => {
    let asked = 0;
    fc.assert(
      fc.property(lifters, (plan) => {
        for (const built of compilePlan(plan).athletes) {
          for (const rule of AUDIT_RULES) {
            const read = new Set<string>();
            rule.check(watched(readSeason(plan, built, new Set()), built.athlete, read));
            if (!rule.asksLoads) expect([rule.id, ...read]).toEqual([rule.id]);
            asked += read.size > 0 ? 1 : 0;
          }
        }
      }),
      { numRuns: Math.ceil(PLANS / 4) },
    );
    tell(`other loads: ${asked} times a rule asked for loads`);
    expect(asked).toBeGreaterThan(0);
  });
});

const OF_LOADS = new Set(['loadGrams', 'perSideGrams', 'barGrams', 'percent', 'estimated', 'heavy']);

/** Gives what is read of loads, however deep in the season; each object has one stand-in. */
function watched<T extends object>(season: T, athlete: Athlete, read: Set<string>): T {
  const known = new WeakMap<object, unknown>();
  const standIn = (value: unknown): unknown => {
    if (typeof value === 'function') return (...given: readonly unknown[]) => standIn(value(...given));
    if (typeof value !== 'object' || value === null || value instanceof Map || value instanceof Set) return value;
    const made = known.get(value) ?? new Proxy(value, { get });
    known.set(value, made);
    return made;
  };
  const get = (target: object, field: string | symbol): unknown => {
    if (OF_LOADS.has(String(field)) || (target === athlete && field === 'lifts')) read.add(String(field));
    const value: unknown = Reflect.get(target, field);
    return typeof value === 'function' && Array.isArray(target) ? value : standIn(value);
  };
  return standIn(season) as T;
}
