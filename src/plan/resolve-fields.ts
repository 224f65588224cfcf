// The fields an athlete may have, or a squad give its athletes: read from one item, squad or athlete, into what the plan
// keeps. Called by resolve-athletes.ts, which puts a squad's fields under its athletes'. A squad is read once.

import { at, entriesOf, within } from '../language/authored.ts';
import type { Item } from '../language/authored.ts';
import type { MapFields } from '../language/sections.ts';
import { problem } from '../diagnostics/problem.ts';
import { findClearance, CLEARANCES } from '../library/clearances.ts';
import { inWords } from '../util/in-words.ts';
import { canEstimate, ESTIMATE_REPS, estimateOneRepMax } from '../library/one-rep-max.ts';
import { LEVELS } from '../library/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { reportBrokenNames } from './broken-names.ts';
import { avoidable, resolveAvoid } from './resolve-avoid.ts';
import { resolveSport } from './resolve-sport.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';
import { boundNames, isKeyBound, namesOf } from './bind-names.ts';
import { inOrder } from './in-order.ts';
import { rangeOf, warnOutside } from './ranges.ts';
import type { RangeKeys } from './ranges.ts';
import type { Scope } from './scope.ts';
import type { Athlete, Away, DayRange, LevelStep, LiftMax, Limit, ReturnStage, Sourced, Volume } from './types.ts';

export type FieldsItem = Item<MapFields<'squads'>>;

/** What is written; a field with a mistake is left out. */
export interface Fields {
  readonly group: Athlete['group'];
  readonly sport: Sourced<string> | undefined;
  readonly born: Athlete['born'];
  readonly sex: Athlete['sex'];
  readonly massGrams: Athlete['massGrams'];
  readonly levels: readonly LevelStep[] | undefined;
  readonly now: Sourced<Volume> | undefined;
  readonly goal: Sourced<number> | undefined;
  readonly lifts: ReadonlyMap<string, LiftMax> | undefined;
  readonly cleared: ReadonlySet<string> | undefined;
  readonly limits: readonly Limit[];
  readonly returning: readonly ReturnStage[] | undefined;
  readonly away: readonly Away[];
  /** Whether all that is written could be read. */
  readonly whole: boolean;
}

/**
 * The fields of one item: masses in grams, days as days. What is wrong with a field is reported, and `whole` is false
 * then.
 */
export function resolveFields(scope: Scope, item: FieldsItem): Fields {
  reportBrokenNames(scope, item, new Map([['avoid', avoidable(scope)]]));
  let whole = item.kind === 'whole';
  const kept = <T>(value: T | undefined): T | undefined => {
    if (value === undefined) whole = false;
    return value;
  };
  const { value } = item;
  const sport = value.sport === undefined ? undefined : kept(sportOf(scope, item, value.sport));
  const levels = value.level === undefined ? undefined : kept(levelsOf(scope, item));
  const lifts = value.lifts === undefined ? undefined : kept(liftsOf(scope, item));
  const cleared = value.cleared === undefined ? undefined : kept(clearedOf(scope, item));
  const returning = value.returning === undefined ? undefined : kept(returningOf(scope, item));
  const limits = (value.limits ?? []).flatMap((_, index) => kept(limitOf(scope, item, index)) ?? []);
  const away = (value.away ?? []).flatMap((_, index) => kept(awayOf(scope, item, index)) ?? []);
  const { now, goal } = value;
  return {
    group: value.group,
    sport,
    born: value.born,
    sex: value.sex,
    massGrams: value.mass,
    levels,
    now: now === undefined ? undefined : written(item, 'now', volumeOf(now)),
    goal: goal === undefined ? undefined : written(item, 'goal', goal['contacts-a-session']),
    lifts,
    cleared,
    limits: inOrder(limits, ({ range }) => isoDate(range.from)),
    returning,
    away: inOrder(away, ({ range }) => isoDate(range.from)),
    whole,
  };
}

const volumeOf = (now: NonNullable<FieldsItem['value']['now']>): Volume => ({
  contactsASession: now['contacts-a-session'],
  sessionsAWeek: now['sessions-a-week'],
});

function written<T>(item: FieldsItem, key: string, value: T): Sourced<T> {
  return { value, origin: { kind: 'written', span: at(item, key).span } };
}

function sportOf(scope: Scope, item: FieldsItem, name: string): Sourced<string> | undefined {
  const sport = resolveSport(scope.report, name, at(item, 'sport'));
  return sport === undefined ? undefined : written(item, 'sport', sport.id);
}

/** In order of date; undefined when the steps can't be told apart or lead down. */
function levelsOf(scope: Scope, item: FieldsItem): readonly LevelStep[] | undefined {
  const { level } = item.value;
  if (level === undefined) return undefined;
  if (typeof level === 'string') return [{ is: level, span: at(item, 'level').span }];
  if (level.length === 0) {
    scope.report(problem('plan/no-level', at(item, 'level')));
    return undefined;
  }
  const steps = level.map(({ is, from }, index) => ({
    is,
    ...(from !== undefined && { from }),
    ...at(item, 'level', index),
  }));
  steps.sort((a, b) => (a.from ?? -Infinity) - (b.from ?? -Infinity));
  let isFine = true;
  for (const [index, step] of steps.entries()) {
    const before = steps[index - 1];
    if (before === undefined) continue;
    isFine = isStepUp(scope, before, step) && isFine;
  }
  if (!isFine) return undefined;
  const signed = steps.map(({ is, from, span }) => ({ is, ...(from !== undefined && { from }), span }));
  return [...beforeSigned(scope, signed[0]), ...signed];
}

/**
 * The level until the first one is signed off, where that is within the season: a level goes up one at a time, so it is the
 * one below.
 */
function beforeSigned({ frame }: Scope, first: LevelStep | undefined): readonly LevelStep[] {
  if (first?.from === undefined || first.from <= frame.from) return [];
  const below = LEVELS[LEVELS.indexOf(first.is) - 1];
  return below === undefined ? [] : [{ is: below, span: first.span }];
}

interface PlacedStep extends LevelStep {
  readonly path: string;
}

function isStepUp(scope: Scope, before: PlacedStep, step: PlacedStep): boolean {
  const place = { span: step.span, path: step.path, related: [{ span: before.span, message: 'the level before it' }] };
  if (step.from === before.from) {
    scope.report(problem('plan/levels-undated', { ...place, params: { level: step.is, other: before.is } }));
    return false;
  }
  if (LEVELS.indexOf(step.is) >= LEVELS.indexOf(before.is)) return true;
  scope.report(problem('plan/level-steps-down', { ...place, params: { level: step.is, before: before.is } }));
  return false;
}

function liftsOf(scope: Scope, item: FieldsItem): ReadonlyMap<string, LiftMax> | undefined {
  const known = namesOf('lift', scope.library.lifts);
  const ids = Object.keys(item.value.lifts ?? {}).toSorted(byCodeUnit);
  const lifts = ids.flatMap((lift): [string, LiftMax][] => {
    const max = isKeyBound(scope, known, lift, item, 'lifts') ? maxOf(scope, item, lift) : undefined;
    return max === undefined ? [] : [[lift, max]];
  });
  return lifts.length === ids.length ? new Map(lifts) : undefined;
}

function maxOf(scope: Scope, item: FieldsItem, lift: string): LiftMax | undefined {
  const { max, did, on } = item.value.lifts?.[lift] ?? {};
  const place = at(item, 'lifts', lift);
  if ((max === undefined) === (did === undefined)) {
    scope.report(problem('plan/max-or-did', { ...place, params: { lift } }));
    return undefined;
  }
  if (did !== undefined && !canEstimate(did.reps)) {
    scope.report(
      problem('plan/too-many-reps', {
        ...at(item, 'lifts', lift, 'did'),
        params: { reps: did.reps, most: ESTIMATE_REPS.to },
      }),
    );
    return undefined;
  }
  return {
    lift,
    grams: max ?? (did === undefined ? 0 : Math.floor(estimateOneRepMax(did.grams, did.reps))),
    estimated: did !== undefined && did.reps > 1,
    ...(on !== undefined && isInTime(scope, item, lift, on) && { on }),
    span: place.span,
  };
}

/** A maximum of after the season can't be behind it: the date is a slip, and without it the maximum counts as undated. */
function isInTime(scope: Scope, item: FieldsItem, lift: string, on: Day): boolean {
  if (!scope.isFramed || on <= scope.frame.until) return true;
  const params = { lift, on: isoDate(on), ends: isoDate(scope.frame.until) };
  scope.report(problem('plan/max-after-season', { ...at(item, 'lifts', lift, 'on'), params }));
  return false;
}

function clearedOf(scope: Scope, item: FieldsItem): ReadonlySet<string> | undefined {
  const words = {
    has: (name: string) => findClearance(name) !== undefined,
    keys: () => CLEARANCES.map(({ id }) => id),
  };
  const hint = `write ${inWords([...words.keys()], 'or')}, or the id of a drill`;
  const known = { ...namesOf('clearance', words, scope.library.drills), hint };
  const bound = boundNames(scope, known, item.value.cleared ?? [], item, 'cleared');
  return bound === undefined ? undefined : new Set(bound);
}

function limitOf(scope: Scope, item: FieldsItem, index: number): Limit | undefined {
  const limit = item.value.limits?.[index];
  if (limit === undefined) return undefined;
  const located = within(item, 'limits', index);
  const range = rangeOf(scope, located, limit, limitFrame(scope, limit));
  const avoid = resolveAvoid(scope, located, limit.avoid ?? []);
  const session = limit['contacts-a-session'];
  const week = limit['contacts-a-week'];
  if (limit.avoid === undefined && session === undefined && week === undefined) {
    scope.report(problem('plan/limit-of-nothing', at(located)));
    return undefined;
  }
  if (range === undefined || avoid === undefined) return undefined;
  warnOutside(scope, located, range, lastKeyOf(limit));
  return {
    range,
    avoid,
    ...(session !== undefined && { contactsASession: session }),
    ...(week !== undefined && { contactsAWeek: week }),
    because: limit.because,
    span: located.span,
  };
}

/** Which key of a range tells that it lies outside of the season, for the place of a warning. */
function lastKeyOf({ week, until }: RangeKeys): string {
  if (week !== undefined) return 'week';
  return until === undefined ? 'from' : 'until';
}

/**
 * A limit may be over before the season starts, or begin behind its end: it stays on record and bars nothing. That is told,
 * as the year of a limit is easily last year's.
 */
function limitFrame({ frame }: Scope, { from, until }: RangeKeys): DayRange {
  return { from: Math.min(frame.from, until ?? frame.from), until: Math.max(frame.until, from ?? frame.until) };
}

/** In order of `since`. */
function returningOf(scope: Scope, item: FieldsItem): readonly ReturnStage[] | undefined {
  const stages = (item.value.returning ?? []).map((stage, index) => ({
    ...stage,
    span: at(item, 'returning', index).span,
    index,
  }));
  stages.sort((a, b) => a.since - b.since);
  let isFine = true;
  for (const [position, { stage, of, since, index }] of stages.entries()) {
    const before = stages[position - 1];
    const related = before === undefined ? [] : [{ span: before.span, message: 'the stage before it' }];
    if (stage > of) {
      scope.report(problem('plan/stage-over', { ...at(item, 'returning', index, 'stage'), params: { stage, of } }));
      isFine = false;
    }
    if (before !== undefined && (before.since === since || before.of !== of)) {
      scope.report(
        problem('plan/stages-clash', {
          ...at(item, 'returning', index),
          params: { stage, other: before.stage },
          related,
        }),
      );
      isFine = false;
    }
  }
  return isFine ? stages.map(({ stage, of, since, signed, span }) => ({ stage, of, since, signed, span })) : undefined;
}

function awayOf(scope: Scope, item: FieldsItem, index: number): Away | undefined {
  const away = item.value.away?.[index];
  if (away === undefined) return undefined;
  const located = within(item, 'away', index);
  const range = rangeOf(scope, located, away);
  if (range === undefined) return undefined;
  warnOutside(scope, located, range, lastKeyOf(away));
  return { range, because: away.because ?? 'away', trained: away.trained ?? 'none', span: located.span };
}

/** Whether a field is written at all, well or badly. */
export function isWritten(item: FieldsItem, key: string): boolean {
  return entriesOf(item).some((entry) => entry.key === key);
}
