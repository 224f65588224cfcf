// Who is given the same season as somebody else. A squad is full of athletes of whom the last stage asks the same, and
// who differ by name, birthday and mass alone, or by the kilos of their maxima. Called by build-athlete.ts for each athlete.

import { ageOn, ageThrough, levelOn } from '../plan/athlete-facts.ts';
import { itemsOf } from '../plan/items-of.ts';
import type { AthleteItems } from '../plan/items-of.ts';
import { maximaText } from '../plan/maxima-text.ts';
import { ruleBook } from '../plan/rule-book.ts';
import { directionsKey, directionsOf } from '../plan/sport-of.ts';
import type { Athlete, DayRange, Pin, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { lineRules } from './lines/line-rules.ts';
import { isGate, standingOn } from './lines/standing.ts';
import type { Body } from './lines/standing.ts';
import type { Groups } from './lines/workshop.ts';
import type { AthleteSchedule } from './types.ts';

/**
 * Equal for athletes whose first stages are one object and whose lines are the same. Who has the same first stages has the
 * same slots, rules, pins, squad, levels and volume; to these come the directions of the sport, clearances, maxima and what
 * the gates ask of age, mass and strength.
 */
export function keyOfSeason(plan: Plan, groups: Groups, schedule: AthleteSchedule): string {
  return `${keyOfDraft(plan, groups, schedule)}|${maximaText(schedule.grid.athlete.lifts)}`;
}

/**
 * Equal for athletes who differ from such by their maxima alone, and of whom the same ones are known: how high they are, how
 * old and how they were found says nothing but kilos and what is told of them.
 */
export function keyOfDraft(plan: Plan, groups: Groups, { grid, days }: AthleteSchedule): string {
  const { athlete, range } = grid;
  const cleared = [...athlete.cleared].toSorted().join(',');
  const known = [...athlete.lifts.keys()].toSorted().join(',');
  const body = bodyKey(plan, groups, athlete, range);
  const directions = directionsKey(directionsOf(plan, athlete));
  return [numberOf(days), athlete.now.origin.kind, directions, cleared, known, body].join('|');
}

const numbers = new WeakMap<AthleteSchedule['days'], number>();
let lastNumber = 0;

/** Each object has a number of its own, from 1. */
function numberOf(days: AthleteSchedule['days']): number {
  const known = numbers.get(days);
  if (known !== undefined) return known;
  lastNumber += 1;
  numbers.set(days, lastNumber);
  return lastNumber;
}

/** Bands of age, mass and strength where they are the same from end to end of the season, else the numbers themselves. */
function bodyKey(plan: Plan, { usualRules }: Groups, athlete: Athlete, { from, until }: DayRange): string {
  const items = itemsOf(plan, athlete);
  const drops = mayDrop(athlete, items);
  const age = ageThrough(athlete, { from, until });
  const own = drops ? `${age}/${athlete.massGrams ?? ''}/${maximaText(athlete.lifts)}` : age;
  if (items.ruleChanges.some(({ rule }) => isGate(rule))) return own;
  const { gates } = usualRules(() => lineRules(ruleBook(plan, athlete), { from, until: from }));
  const asked = drops ? athlete : ofAnyMass(athlete);
  const first = standingOn(asked, from, gates).key;
  return isSteady(athlete, from, until) || first === standingOn(asked, until, gates).key ? first : `${first}|${own}`;
}

/**
 * Mass and strength are asked of drops alone, and after the clearance for them: of somebody who is cleared for nothing,
 * for whom no drill is written by hand and nothing waived, they say nothing.
 */
function mayDrop({ cleared }: Athlete, { pins, always, uses, waivers }: AthleteItems): boolean {
  return cleared.size + always.length + uses.length + waivers.length > 0 || pins.some(namesDrills);
}

const namesDrills = ({ effects }: Pin): boolean =>
  effects.some(({ kind }) => kind === 'swap' || kind === 'keep' || kind === 'add');

function ofAnyMass({ id, levels, born, lifts, cleared, limits, returning }: Athlete): Body {
  return { id, levels, born, massGrams: ANY_MASS_GRAMS, lifts, cleared, limits, returning };
}

/** The same for all of whom it isn't asked. */
const ANY_MASS_GRAMS = 1;

/** Nothing that a standing is worked out from is another at the end: two of them needn't be compared. */
const isSteady = (athlete: Athlete, from: Day, until: Day): boolean =>
  athlete.limits.length === 0 &&
  athlete.returning.length === 0 &&
  levelOn(athlete, from) === levelOn(athlete, until) &&
  ageOn(athlete, from) === ageOn(athlete, until);
