// A whole build as plain data, for JSON: every number with its reasons and the places in the plan behind them. Made in
// three parts, so that it can be written while the athletes are compiled: the head, one athlete after the other, and the
// findings of the whole. Names are those of the tables where a table has them; what doesn't apply is absent. A reason of
// health stays in the plan: the document holds its place, not its words.

import type {
  Bound,
  Build,
  BuiltAthlete,
  BuiltDay,
  BuiltLine,
  BuiltSession,
  BuiltWeek,
  Reason,
} from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { sportOf, sportOriginOf } from '../plan/sport-of.ts';
import type { Origin, Plan } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import type { JsonObject } from './json-value.ts';
import { planFacts } from './plan-facts.ts';
import { createPlaces } from './places.ts';
import type { Places } from './places.ts';
import { exactKilos } from '../util/quantities.ts';
import { selectedSessions, selectedWeeks, selectsDay, selectsWeek } from './selection.ts';
import type { Selection } from './selection.ts';

export interface DocumentMaker {
  readonly head: JsonObject;
  readonly athlete: (built: BuiltAthlete) => JsonObject;
  readonly finding: (diagnostic: Diagnostic) => JsonObject;
}

/** The three parts. The selection takes weeks and sessions out; what the plan says of the season stands whole. */
export function createDocument({ plan, mark, weeks }: Omit<Build, 'athletes'>, selection: Selection): DocumentMaker {
  const places = createPlaces(plan.files);
  return {
    head: {
      format: 'footfall build',
      version: 1,
      mark,
      ...planFacts(plan, places),
      weeks: weeks
        .filter((week) => selectsWeek(selection, week))
        .map(({ week, starts }) => ({ week, starts: isoDate(starts) })),
    },
    athlete: (built) => athleteObject(plan, built, selection, places),
    finding: (diagnostic) => findingObject(diagnostic, places),
  };
}

function athleteObject(plan: Plan, built: BuiltAthlete, selection: Selection, places: Places): JsonObject {
  const { athlete, blocked, days, diagnostics } = built;
  const weeks = selectedWeeks(selection, built);
  return {
    id: athlete.id,
    name: athlete.name,
    squad: athlete.squad,
    group: athlete.group,
    sport: { id: sportOf(plan, athlete).id, origin: originObject(sportOriginOf(plan, athlete), places) },
    levels: athlete.levels.map(({ is, from }) => ({ is, from: from === undefined ? undefined : isoDate(from) })),
    now: {
      contacts_a_session: athlete.now.value.contactsASession,
      sessions_a_week: athlete.now.value.sessionsAWeek,
      origin: originObject(athlete.now.origin, places),
    },
    goal:
      athlete.goal === undefined
        ? undefined
        : { contacts_a_session: athlete.goal.value, origin: originObject(athlete.goal.origin, places) },
    place: { ...places.at(athlete.span) },
    blocked: [...blocked].toSorted((a, b) => a - b),
    weeks: weeks.map((week) => weekObject(week, selection, places)),
    days: days.filter(({ day }) => selectsDay(selection, day)).map(dayObject),
    findings: diagnostics.map((diagnostic) => findingObject(diagnostic, places)),
  };
}

function weekObject(week: BuiltWeek, selection: Selection, places: Places): JsonObject {
  return {
    week: week.week,
    starts: isoDate(week.starts),
    phase: week.phase,
    kind: week.kind,
    block: week.block,
    week_of_block: week.weekOfBlock,
    contacts: week.contacts,
    target: week.target,
    most_contacts: week.mostContacts,
    adapted_before: week.adaptedBefore,
    adapted: week.adapted,
    other_jumps: week.otherJumps,
    bound_by: week.boundBy,
    bounds: week.bounds.map((bound) => boundObject(bound, places)),
    possible: week.possible,
    lift_sessions_wanted: week.liftSessionsWanted,
    done: week.done,
    reasons: reasonObjects(week.reasons, places),
    sessions: selectedSessions(selection, week).map((session) => sessionObject(session, places)),
  };
}

function boundObject({ by, most, rule, otherwise, params, spans = [] }: Bound, places: Places): JsonObject {
  return {
    by,
    most,
    rule,
    otherwise,
    params: params === undefined ? undefined : { ...params },
    places: spans.length === 0 ? undefined : spans.map((span) => ({ ...places.at(span) })),
  };
}

function sessionObject(session: BuiltSession, places: Places): JsonObject {
  return {
    date: isoDate(session.day),
    slot: session.slot.id,
    at_minute: session.slot.at,
    place: session.slot.place.id,
    slot_minutes: session.slot.minutes,
    kind: session.kind,
    contacts: session.contacts,
    jumps: session.jumps,
    lifts: session.lifts,
    heavy: session.heavy,
    minutes: session.minutes,
    lines: session.lines.map((line) => lineObject(line, places)),
    short_on_time: session.shortOnTime,
    left_out: session.leftOut,
    reasons: reasonObjects(session.reasons, places),
  };
}

function lineObject(line: BuiltLine, places: Places): JsonObject {
  return {
    order: line.order,
    part: line.part,
    exercise: line.exercise,
    kind: line.kind,
    sets: line.sets,
    reps: line.reps,
    contacts: line.contacts,
    load_kg: kilosIfAny(line.loadGrams),
    per_side_kg: kilosIfAny(line.perSideGrams),
    bar_kg: kilosIfAny(line.barGrams),
    percent: line.percent,
    reserve: line.reserve,
    drop_cm: line.dropCm,
    rest_s: line.restSeconds,
    tempo: line.tempo,
    note: line.note,
    family: line.family,
    own: line.own,
    estimated: line.estimated,
    paired_with: line.pairedWith,
    origin: originObject(line.origin, places),
    reasons: reasonObjects(line.reasons, places),
  };
}

const kilosIfAny = (grams: number | undefined): number | undefined =>
  grams === undefined ? undefined : exactKilos(grams);

function dayObject(day: BuiltDay): JsonObject {
  return {
    date: isoDate(day.day),
    practice_jumps: day.practiceJumps,
    match_jumps: day.matchJumps,
    test_contacts: day.testContacts,
    competition: day.competition?.name,
    tests: day.test?.what,
  };
}

function findingObject(diagnostic: Diagnostic, places: Places): JsonObject {
  const { code, severity, message, rule, athlete, week, span } = diagnostic;
  return {
    code,
    severity,
    message,
    rule,
    athlete,
    week: week === undefined ? undefined : isoDate(week),
    place: span === undefined ? undefined : { ...places.at(span) },
  };
}

function reasonObjects(reasons: readonly Reason[], places: Places): readonly JsonObject[] {
  return reasons.map(({ about, by, params, spans }) => ({
    about,
    by,
    params: { ...params },
    places: spans.map((span) => ({ ...places.at(span) })),
  }));
}

function originObject(origin: Origin, places: Places): JsonObject {
  switch (origin.kind) {
    case 'written':
      return { kind: 'written', place: { ...places.at(origin.span) } };
    case 'default':
      return { kind: 'default', basis: origin.basis };
    case 'derived':
      return { kind: 'derived', rule: origin.rule };
  }
}
