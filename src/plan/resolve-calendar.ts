// Slots, competitions, closures, practice and tests, with their names bound and their days held against the season.
// Called by resolve.ts. Each list comes out in an order of its own meaning.

import { at } from '../language/authored.ts';
import type { Item } from '../language/authored.ts';
import type { ListFields } from '../language/sections.ts';
import { TEST_NAMES } from '../language/known-names.ts';
import { problem } from '../diagnostics/problem.ts';
import { isoDate, WEEKDAY_NAMES } from '../util/days.ts';
import { boundNames, isBound, namesOf, whoOf } from './bind-names.ts';
import { inOrder } from './in-order.ts';
import { rangeOf, reportEndBeforeStart, seasonWords, warnOutside } from './ranges.ts';
import type { Scope } from './scope.ts';
import type { Closure, Competition, Practice, Slot, TestDay, TrainingPlace } from './types.ts';

/** In order of day, time, name. */
export function resolveSlots(scope: Scope, places: ReadonlyMap<string, TrainingPlace>): readonly Slot[] {
  const slots = scope.authored.slots.flatMap((item) => resolveSlot(scope, places, item) ?? []);
  return inOrder(slots, ({ day, at: time, id }) => `${String(day)} ${String(time ?? 0).padStart(4, '0')} ${id}`);
}

function resolveSlot(
  scope: Scope,
  places: ReadonlyMap<string, TrainingPlace>,
  item: Item<ListFields<'slots'>>,
): Slot | undefined {
  const { value } = item;
  const range = rangeOf(scope, item, value);
  const who = whoOf(scope, item, value);
  if (value.place !== undefined) isBound(scope, namesOf('place', scope.authored.places), value.place, item, 'place');
  if (range !== undefined) warnOutside(scope, item, range, value.until === undefined ? 'from' : 'until');
  if (item.kind === 'broken' || range === undefined || who === undefined) return undefined;
  const place = places.get(item.value.place);
  if (place === undefined) return undefined;
  const { day, name, at: time, minutes, use } = item.value;
  return {
    id: slotId(WEEKDAY_NAMES[day], name),
    day,
    ...(name !== undefined && { name }),
    ...(time !== undefined && { at: time }),
    minutes,
    place,
    use: use ?? 'both',
    range,
    who,
    span: item.span,
  };
}

function slotId(day: string, name: string | undefined): string {
  if (name === undefined) return day;
  return `${day}-${name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '')}`;
}

/** In order of first day, name. */
export function resolveCompetitions(scope: Scope): readonly Competition[] {
  const competitions = scope.authored.competitions.flatMap((item) => resolveCompetition(scope, item) ?? []);
  return inOrder(competitions, ({ range, name }) => `${isoDate(range.from)} ${name}`);
}

function resolveCompetition(scope: Scope, item: Item<ListFields<'competitions'>>): Competition | undefined {
  const { value } = item;
  const who = whoOf(scope, item, value);
  const isInside = value.date === undefined || isInSeason(scope, item, value.date, value.until ?? value.date);
  if (item.kind === 'broken' || who === undefined || !isInside) return undefined;
  const { name, date, until, prepare, jumps } = item.value;
  return {
    name,
    range: { from: date, until: until ?? date },
    prepare,
    ...(jumps !== undefined && { jumps }),
    who,
    span: item.span,
  };
}

function isInSeason(scope: Scope, item: Item<ListFields<'competitions'>>, from: number, until: number): boolean {
  if (until < from) {
    reportEndBeforeStart(scope, item, { start: 'date', end: 'until' }, { from, until });
    return false;
  }
  if (from >= scope.frame.from && until <= scope.frame.until) return true;
  const key = from < scope.frame.from || item.value.until === undefined ? 'date' : 'until';
  const params = {
    name: item.value.name ?? 'this competition',
    date: isoDate(key === 'date' ? from : until),
    ...seasonWords(scope),
  };
  const season = scope.authored.season;
  const related = season === undefined ? [] : [{ span: season.span, message: 'the season is set here' }];
  scope.report(problem('plan/competition-outside', { ...at(item, key), params, related }));
  return false;
}

/** In order of first day. */
export function resolveClosures(scope: Scope): readonly Closure[] {
  const closures = scope.authored.closures.flatMap((item) => resolveClosure(scope, item) ?? []);
  return inOrder(closures, ({ range }) => isoDate(range.from));
}

function resolveClosure(scope: Scope, item: Item<ListFields<'closures'>>): Closure | undefined {
  const { value } = item;
  const range = rangeOf(scope, item, value);
  const who = whoOf(scope, item, value);
  const places = boundNames(scope, namesOf('place', scope.authored.places), value.places ?? [], item, 'places');
  if (item.kind === 'broken' || range === undefined || who === undefined || places === undefined) return undefined;
  warnOutside(scope, item, range, 'until');
  return {
    range,
    because: item.value.because ?? 'closed',
    trained: item.value.trained ?? 'none',
    ...(item.value.places !== undefined && { places }),
    who,
    span: item.span,
  };
}

/** In order of day of the week. */
export function resolvePractice(scope: Scope): readonly Practice[] {
  const practice = scope.authored.practice.flatMap((item) => {
    const range = rangeOf(scope, item, item.value);
    const who = whoOf(scope, item, item.value);
    if (range !== undefined) warnOutside(scope, item, range, item.value.until === undefined ? 'from' : 'until');
    if (item.kind === 'broken' || range === undefined || who === undefined) return [];
    return [{ day: item.value.day, jumps: item.value.jumps, range, who, span: item.span }];
  });
  return inOrder(practice, ({ day }) => day);
}

/** In order of day. */
export function resolveTests(scope: Scope): readonly TestDay[] {
  const tests = scope.authored.tests.flatMap((item) => resolveTest(scope, item) ?? []);
  return inOrder(tests, ({ day }) => isoDate(day));
}

function resolveTest(scope: Scope, item: Item<ListFields<'tests'>>): TestDay | undefined {
  const { value } = item;
  const who = whoOf(scope, item, value);
  const known = namesOf('drill, lift or test', scope.library.drills, scope.library.lifts, new Set(TEST_NAMES));
  const what = boundNames(scope, known, value.what ?? [], item, 'what');
  if (value.date !== undefined) warnOutside(scope, item, { from: value.date, until: value.date }, 'date');
  if (item.kind === 'broken' || who === undefined || what === undefined) return undefined;
  const contacts = contactsOf(scope, item.value.contacts, what);
  if (contacts === undefined) {
    scope.report(problem('plan/test-contacts', at(item, 'what')));
    return undefined;
  }
  return { day: item.value.date, what, contacts, who, span: item.span };
}

/** Lifts alone leave the ground for no contact; a jump does, so its contacts must be written. */
function contactsOf(scope: Scope, written: number | undefined, what: readonly string[]): number | undefined {
  return written ?? (what.every((name) => scope.library.lifts.has(name)) ? 0 : undefined);
}
