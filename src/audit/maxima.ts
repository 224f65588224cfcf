// What is told of an athlete's maxima once the season stands: one that no lift of the season goes by, one that stands too
// far behind a lift to serve it, kilos that are written for a lift of which none is known, and kilos that the kit makes far
// under their share. Called by audit.ts for
// each athlete, as all of them are everybody's own.

import type { BuiltAthlete, BuiltLine, BuiltSession } from '../build/types.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Library } from '../library/index.ts';
import type { Lift } from '../library/types.ts';
import { ageOn } from '../plan/athlete-facts.ts';
import type { Athlete, LiftMax, Plan } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { GRAMS_A_KILO } from '../util/units.ts';
import { isUnknownShare, maxBehind } from './line-reading.ts';
import { readParameters } from './parameters.ts';

/** Notices: of maxima in their order, then of kilos in order of day, those without a maximum first. */
export function findingsOnMaxima(plan: Plan, built: BuiltAthlete): readonly Diagnostic[] {
  const loaded = loadedLines(plan, built.weeks);
  return [
    ...unusedMaxima(plan, built, loaded),
    ...maximaTooFar(plan, built.athlete, loaded),
    ...kilosOfNoMaximum(plan, built.athlete, loaded),
    ...kilosFarUnder(plan, built.athlete, loaded),
  ];
}

/** None while weeks are over, as of those nobody knows any more what was lifted; nor of those that a whole squad has. */
function unusedMaxima(plan: Plan, { athlete, weeks }: BuiltAthlete, { lifts }: LoadedLines): readonly Diagnostic[] {
  const unused = new Set(athlete.lifts.keys());
  // The strength for high drops goes by a squat.
  if (athlete.cleared.size > 0) for (const id of unused) if (isSquat(plan.library, id)) unused.delete(id);
  if (unused.size === 0 || weeks.some(({ done }) => done)) return [];
  for (const lift of lifts.values()) unused.delete(maxBehind(athlete, lift)?.lift ?? '');
  return [...unused].flatMap((lift) => {
    const max = athlete.lifts.get(lift);
    if (max === undefined || max.ofSquad === true) return [];
    const params = { athlete: athlete.id, lift, lifts: goingBy(plan.library, lift) };
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
 * A maximum serves the lifts that name it and none that name those: two shares one behind the other would be a guess, and
 * the lift between may hide another squat depth. Told once of each lift.
 */
function maximaTooFar({ library }: Plan, athlete: Athlete, { lifts }: LoadedLines): readonly Diagnostic[] {
  if (athlete.lifts.size === 0) return [];
  return [...lifts.values()].flatMap((lift) => {
    const { id, maxOf } = lift;
    if (maxOf === undefined || maxBehind(athlete, lift) !== undefined) return [];
    const far = maximumBehind(athlete, maxOf, library);
    if (far === undefined) return [];
    const params = { athlete: athlete.id, lift: id, of: maxOf, behind: far.lift };
    return [problem('audit/maximum-too-far', { params, span: far.span, athlete: athlete.id })];
  });
}

/** The first maximum of the athlete behind a lift of which none is known, by the lifts that go by one another. */
function maximumBehind(athlete: Athlete, from: string, { lifts }: Library): LiftMax | undefined {
  const met = new Set([from]);
  for (const id of met) {
    const max = athlete.lifts.get(id);
    if (max !== undefined) return max;
    const next = lifts.get(id)?.maxOf;
    if (next !== undefined) met.add(next);
  }
  return undefined;
}

/**
 * Kilos by hand are the coach's word; without a maximum nothing says how heavy they are. Told once of each lift. For who
 * is known to be young they are an error of youth-load.
 */
function kilosOfNoMaximum(plan: Plan, athlete: Athlete, { lifts, kilos }: LoadedLines): readonly Diagnostic[] {
  const unknown = [...kilos].filter(([id, { line }]) => {
    const lift = lifts.get(id);
    return lift !== undefined && isUnknownShare(athlete, line, lift);
  });
  if (unknown.length === 0) return [];
  const under = readParameters(plan, athlete).parameter('youth-load', 'under');
  return unknown.flatMap(([lift, { line, session, days }]) => {
    const { day } = session;
    const age = ageOn(athlete, day);
    if (age !== undefined && age < under({ range: { from: day, until: day } })) return [];
    const params = {
      athlete: athlete.id,
      lift,
      kilos: (line.loadGrams ?? 0) / GRAMS_A_KILO,
      units: plan.season.units,
      date: isoDate(day),
      days: days.size,
    };
    const span = line.origin.kind === 'written' ? line.origin.span : athlete.span;
    return [problem('audit/kilos-of-no-maximum', { params, span, athlete: athlete.id })];
  });
}

/** Told once of each lift and place: of the first day, with the number of the others. */
function kilosFarUnder({ season }: Plan, athlete: Athlete, { lifts, coarse }: LoadedLines): readonly Diagnostic[] {
  return [...coarse.values()].map(({ line, session, days }) => {
    const lift = lifts.get(line.exercise);
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
      units: season.units,
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

/** The first of lines that are told of together, with the days of all. */
interface Told {
  readonly line: BuiltLine;
  readonly session: BuiltSession;
  readonly days: Set<Day>;
}

/** What of a season maxima and kilos are asked about, each in the order in which it first comes. */
interface LoadedLines {
  /** The lifts that are planned, by id. */
  readonly lifts: ReadonlyMap<string, Lift>;
  /** Lines with kilos, by lift. */
  readonly kilos: ReadonlyMap<string, Told>;
  /** Those of which the kit makes far less than was asked for, by lift and place. */
  readonly coarse: ReadonlyMap<string, Told>;
}

const known = new WeakMap<BuiltAthlete['weeks'], LoadedLines>();

/** Gathered once for all who have the very same weeks. */
function loadedLines({ library }: Plan, weeks: BuiltAthlete['weeks']): LoadedLines {
  const found = known.get(weeks) ?? gatherLines(library, weeks);
  known.set(weeks, found);
  return found;
}

function gatherLines({ lifts: all }: Library, weeks: BuiltAthlete['weeks']): LoadedLines {
  const lifts = new Map<string, Lift>();
  const kilos = new Map<string, Told>();
  const coarse = new Map<string, Told>();
  for (const { sessions } of weeks) {
    for (const session of sessions) {
      for (const line of session.lines) {
        const lift = line.kind === 'lift' ? all.get(line.exercise) : undefined;
        if (lift === undefined) continue;
        lifts.set(lift.id, lift);
        if (line.loadGrams === undefined) continue;
        tell(kilos, lift.id, line, session);
        if (platesOf(line) !== undefined) tell(coarse, `${lift.id} ${session.slot.place.id}`, line, session);
      }
    }
  }
  return { lifts, kilos, coarse };
}

function tell(told: Map<string, Told>, key: string, line: BuiltLine, session: BuiltSession): void {
  const first = told.get(key) ?? { line, session, days: new Set() };
  told.set(key, first);
  first.days.add(session.day);
}
