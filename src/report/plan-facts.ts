// What a plan says about the season as a whole, as plain data: the head of a build's JSON. Competitions, closures, tests,
// and all that the coach changed: rules, pins, waivers, each with its reason and place.

import type { Pin, PinEffect, Plan, Who } from '../plan/types.ts';
import { usualJumps } from '../plan/sport-of.ts';
import type { Span } from '../source/types.ts';
import { isoDate, WEEKDAY_NAMES } from '../util/days.ts';
import type { JsonObject } from './json-value.ts';
import type { Places } from './places.ts';
import { exactKilos } from '../util/quantities.ts';

interface Dated {
  readonly range: { readonly from: number; readonly until: number };
  readonly who: Who;
  readonly span: Span;
}

/** Names as the JSON of a build has them; places are those of the plan's lines. */
export function planFacts(plan: Plan, places: Places): JsonObject {
  const common = ({ range, who, span }: Dated): JsonObject => ({
    from: isoDate(range.from),
    until: isoDate(range.until),
    ...whoObject(who),
    place: { ...places.at(span) },
  });
  return {
    season: seasonFacts(plan.season),
    files: plan.files.map(({ path }) => path),
    places: [...plan.places.values()].map(({ id, kit }) => ({
      id,
      smallest_plate_kg: exactKilos(kit.smallestPlateGrams),
    })),
    ...calendarFacts(plan, common),
    ...decisionFacts(plan, common),
  };
}

function seasonFacts(season: Plan['season']): JsonObject {
  return {
    title: season.title,
    sport: season.sport,
    starts: isoDate(season.starts),
    ends: isoDate(season.ends),
    week_starts: WEEKDAY_NAMES[season.weekStarts],
    units: season.units,
    time_zone: season.timeZone,
    in_season: season.inSeason.map(({ from, until }) => ({ from: isoDate(from), until: isoDate(until) })),
  };
}

type Common = (one: Dated) => JsonObject;

/** What stands in the calendar. */
function calendarFacts(plan: Plan, common: Common): JsonObject {
  const { competitions, closures, tests } = plan;
  return {
    competitions: competitions.map((one) => ({
      name: one.name,
      prepare: one.prepare,
      jumps: one.jumps ?? usualJumps(plan, {}),
      ...common(one),
    })),
    closures: closures.map((one) => ({
      because: one.because,
      trained: one.trained,
      places: one.places,
      ...common(one),
    })),
    tests: tests.map((one) => ({
      what: one.what,
      contacts: one.contacts,
      ...common({ ...one, range: { from: one.day, until: one.day } }),
    })),
  };
}

/** What the coach decided otherwise than footfall would. */
function decisionFacts({ ruleChanges, pins, waivers }: Plan, common: Common): JsonObject {
  return {
    rule_changes: ruleChanges.map((one) => ({
      rule: one.rule,
      parameters: Object.fromEntries(one.parameters),
      because: one.because,
      ...common(one),
    })),
    pins: pins.map((one) => ({ effects: effectsOf(one), because: one.because, ...common(one) })),
    waivers: waivers.map((one) => ({
      rule: one.rule,
      because: one.because,
      decided: one.decided,
      ...common(one),
    })),
  };
}

function whoObject(who: Who): JsonObject {
  return who.kind === 'everybody' ? {} : { squads: who.squads, athletes: who.athletes };
}

/** The kinds of what a pin sets; the numbers stand in the weeks and lines they made. */
const effectsOf = ({ effects }: Pin): readonly PinEffect['kind'][] => effects.map(({ kind }) => kind);
