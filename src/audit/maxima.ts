// What is told of an athlete's maxima once the season stands: one that no lift of the season goes by, kilos that are
// written for a lift of which none is known, and kilos that the kit makes far under their share. Called by audit.ts for
// each athlete, as all of them are everybody's own.

import type { BuiltAthlete, BuiltLine, BuiltSession } from '../build/types.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Library } from '../library/index.ts';
import type { Lift } from '../library/types.ts';
import { ageOn } from '../plan/athlete-facts.ts';
import type { Plan } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { GRAMS_A_KILO } from '../util/units.ts';
import { isUnknownShare, maxBehind } from './line-reading.ts';
import { readParameters } from './parameters.ts';

/** Notices: of maxima in their order, then of kilos in order of day, those without a maximum first. */
export function findingsOnMaxima(plan: Plan, built: BuiltAthlete): readonly Diagnostic[] {
  return [...unusedMaxima(plan, built), ...kilosOfNoMaximum(plan, built), ...kilosFarUnder(plan, built)];
}

/** None while weeks are over, as of those nobody knows any more what was lifted; nor of those that a whole squad has. */
function unusedMaxima(plan: Plan, { athlete, weeks }: BuiltAthlete): readonly Diagnostic[] {
  const unused = new Set(athlete.lifts.keys());
  // The strength for high drops goes by a squat.
  if (athlete.cleared.size > 0) for (const id of unused) if (isSquat(plan.library, id)) unused.delete(id);
  if (unused.size === 0 || weeks.some(({ done }) => done)) return [];
  for (const { lines } of sessionsOf(weeks)) {
    for (const line of lines) {
      const lift = liftOf(plan.library, line);
      const used = lift === undefined ? undefined : maxBehind(athlete, lift)?.lift;
      if (used !== undefined && unused.delete(used) && unused.size === 0) return [];
    }
  }
  return [...unused].flatMap((lift) => {
    const max = athlete.lifts.get(lift);
    if (max === undefined || max.ofSquad === true) return [];
    const lifts = goingBy(plan.library, lift);
    const params = { athlete: athlete.id, lift, lifts };
    return [problem('audit/maximum-unused', { params, span: max.span, athlete: athlete.id })];
  });
}

const isSquat = ({ lifts }: Library, id: string): boolean => lifts.get(id)?.pattern === 'squat';

/** Ids of the lifts that a maximum may be behind. */
const goingBy = ({ lifts }: Library, max: string): readonly string[] =>
  [...lifts.values()]
    .filter(({ id, maxOf }) => maxOf === max || (id === max && maxOf !== undefined))
    .map(({ id }) => id);

/**
 * Kilos by hand are the coach's word; without a maximum nothing says how heavy they are. Told once of each lift. For who
 * is known to be young they are an error of youth-load.
 */
function kilosOfNoMaximum(plan: Plan, { athlete, weeks }: BuiltAthlete): readonly Diagnostic[] {
  const first = new Map<string, { readonly line: BuiltLine; readonly day: Day; readonly days: Set<Day> }>();
  for (const { day, lines } of sessionsOf(weeks)) {
    for (const line of lines) {
      const lift = liftOf(plan.library, line);
      if (lift === undefined || !isUnknownShare(athlete, line, lift)) continue;
      const known = first.get(lift.id) ?? { line, day, days: new Set() };
      first.set(lift.id, known);
      known.days.add(day);
    }
  }
  if (first.size === 0) return [];
  const under = readParameters(plan, athlete).parameter('youth-load', 'under');
  return [...first].flatMap(([lift, { line, day, days }]) => {
    const age = ageOn(athlete, day);
    if (age !== undefined && age < under({ range: { from: day, until: day } })) return [];
    const kilos = (line.loadGrams ?? 0) / GRAMS_A_KILO;
    const params = { athlete: athlete.id, lift, kilos, date: isoDate(day), days: days.size };
    const span = line.origin.kind === 'written' ? line.origin.span : athlete.span;
    return [problem('audit/kilos-of-no-maximum', { params, span, athlete: athlete.id })];
  });
}

/** Told once of each lift and place: of the first day, with the number of the others. */
function kilosFarUnder({ library }: Plan, { athlete, weeks }: BuiltAthlete): readonly Diagnostic[] {
  const found = new Map<
    string,
    { readonly line: BuiltLine; readonly session: BuiltSession; readonly days: Set<Day> }
  >();
  for (const session of sessionsOf(weeks)) {
    for (const line of session.lines) {
      if (line.loadGrams === undefined || platesOf(line) === undefined) continue;
      const key = `${line.exercise} ${session.slot.place.id}`;
      const known = found.get(key) ?? { line, session, days: new Set() };
      found.set(key, known);
      known.days.add(session.day);
    }
  }
  return [...found.values()].map(({ line, session, days }) => {
    const lift = liftOf(library, line);
    const { percent = 0, grams = 0 } = platesOf(line) ?? {};
    const params = {
      athlete: athlete.id,
      lift: line.exercise,
      place: session.slot.place.id,
      date: isoDate(session.day),
      days: days.size,
      asked: Number(percent),
      wanted: Math.floor(Number(grams) / HALF_KILO) / 2,
      kilos: (line.loadGrams ?? 0) / GRAMS_A_KILO,
    };
    const max = lift === undefined ? undefined : maxBehind(athlete, lift);
    const related = max === undefined ? [] : [{ span: max.span, message: 'the maximum is here' }];
    return problem('audit/plates-too-coarse', { params, span: session.slot.place.span, related, athlete: athlete.id });
  });
}

const HALF_KILO = GRAMS_A_KILO / 2;

/** What was asked for, where the kit makes far less. */
const platesOf = ({ reasons }: BuiltLine): BuiltLine['reasons'][number]['params'] | undefined =>
  reasons.find(({ about, by }) => about === 'load' && by === 'plates')?.params;

function* sessionsOf(weeks: BuiltAthlete['weeks']): Generator<BuiltSession> {
  for (const { sessions } of weeks) yield* sessions;
}

const liftOf = ({ lifts }: Library, { kind, exercise }: BuiltLine): Lift | undefined =>
  kind === 'lift' ? lifts.get(exercise) : undefined;
