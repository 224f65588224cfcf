// Lines written by hand, and what holds them: `always:`, programmes and their use. Called by resolve.ts and for the lines
// a pin adds. A line that says what can't be, a drop of a lift or a percentage of a drill, is refused.

import { at, within } from '../language/authored.ts';
import type { Item, Located } from '../language/authored.ts';
import { findWeekday } from '../language/dates.ts';
import type { ListFields, MapFields } from '../language/sections.ts';
import { DAY_KEYS } from '../language/shapes/lines.ts';
import type { LineFields } from '../language/shapes/lines.ts';
import { problem } from '../diagnostics/problem.ts';
import { isoDate } from '../util/days.ts';
import type { Weekday } from '../util/days.ts';
import { reportBrokenNames } from './broken-names.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';
import { isBound, namesOf, whoOf } from './bind-names.ts';
import { inOrder } from './in-order.ts';
import { rangeOf, warnOutside } from './ranges.ts';
import type { Scope } from './scope.ts';
import type { Always, Programme, ProgrammeDay, ProgrammeUse, ProgrammeWeek, WrittenLine } from './types.ts';

/** Reports unknown exercises in the lines of a broken item. */
export function reportBrokenLines(scope: Scope, item: Item<object>): void {
  const { drills, lifts } = scope.library;
  const known = new Map([
    ['drill', namesOf('drill', drills)],
    ['lift', namesOf('lift', lifts)],
  ]);
  reportBrokenNames(scope, item, known);
}

/** All lines, or undefined when one has a mistake. */
export function resolveLines(
  scope: Scope,
  item: Located,
  lines: readonly LineFields[],
  ...steps: readonly string[]
): readonly WrittenLine[] | undefined {
  const resolved = lines.flatMap(
    (line, index) => resolveLine(scope, within(item, ...steps, index), line, line.sets) ?? [],
  );
  return resolved.length === lines.length ? resolved : undefined;
}

function resolveLine(
  scope: Scope,
  place: Located,
  line: Omit<LineFields, 'sets'>,
  sets: number,
): WrittenLine | undefined {
  const exercise = exerciseOf(scope, place, line);
  const pair = line.pair === undefined ? undefined : resolveLine(scope, within(place, 'pair'), line.pair, sets);
  if (exercise === undefined || (line.pair !== undefined && pair === undefined)) return undefined;
  if (!isPossible(scope, place, line, exercise.kind)) return undefined;
  const { reps, percent, load, reserve, drop, rest, tempo, note } = line;
  return {
    exercise,
    sets,
    reps,
    ...(percent !== undefined && { percent }),
    ...(load !== undefined && { loadGrams: load }),
    ...(reserve !== undefined && { reserve }),
    ...(drop !== undefined && { dropCm: drop }),
    ...(rest !== undefined && { restSeconds: rest }),
    ...(tempo !== undefined && { tempo }),
    ...(note !== undefined && { note }),
    ...(pair !== undefined && { pair }),
    span: place.span,
  };
}

function exerciseOf(
  scope: Scope,
  place: Located,
  { drill, lift }: Pick<LineFields, 'drill' | 'lift'>,
): WrittenLine['exercise'] | undefined {
  if (drill !== undefined && lift === undefined) {
    return isBound(scope, namesOf('drill', scope.library.drills), drill, place, 'drill')
      ? { kind: 'drill', id: drill }
      : undefined;
  }
  if (lift !== undefined && drill === undefined) {
    return isBound(scope, namesOf('lift', scope.library.lifts), lift, place, 'lift')
      ? { kind: 'lift', id: lift }
      : undefined;
  }
  scope.report(problem('plan/drill-or-lift', at(place)));
  return undefined;
}

/** What a line of the kind can't say. */
const NOT_OF = { drill: ['percent', 'load', 'reserve'], lift: ['drop'] } as const;

function isPossible(scope: Scope, place: Located, line: Omit<LineFields, 'sets'>, kind: 'drill' | 'lift'): boolean {
  const key = NOT_OF[kind].find((name) => line[name] !== undefined);
  if (key !== undefined) {
    scope.report(problem('plan/not-of-exercise', { ...at(place, key), params: { key, kind: `a ${kind}` } }));
    return false;
  }
  if (line.percent === undefined || line.load === undefined) return true;
  scope.report(problem('plan/two-loads', at(place, 'load')));
  return false;
}

/** The items of `always:` in order of their part. One with a mistake is reported and left out. */
export function resolveAlways(scope: Scope): readonly Always[] {
  const always = scope.authored.always.flatMap((item) => {
    reportBrokenLines(scope, item);
    const range = rangeOf(scope, item, item.value);
    const who = whoOf(scope, item, item.value);
    const lines = resolveLines(scope, item, item.value.lines ?? [], 'lines');
    if (item.kind === 'broken' || range === undefined || who === undefined || lines === undefined) return [];
    warnOutside(scope, item, range, item.value.until === undefined ? 'from' : 'until');
    const { part, minutes, because } = item.value;
    return [{ part, ...(minutes !== undefined && { minutes }), lines, range, who, because, span: item.span }];
  });
  return inOrder(always, ({ part }) => part);
}

/** Programmes by id, in order of id. */
export function resolveProgrammes(scope: Scope): ReadonlyMap<string, Programme> {
  const entries = [...scope.authored.programmes].toSorted(([a], [b]) => byCodeUnit(a, b));
  return new Map(
    entries.flatMap(([id, item]): [string, Programme][] => {
      reportBrokenLines(scope, item);
      const weeks = item.kind === 'whole' ? weeksOf(scope, item, item.value) : undefined;
      return weeks === undefined ? [] : [[id, { id, weeks, span: item.span }]];
    }),
  );
}

function weeksOf(scope: Scope, item: Located, written: MapFields<'programmes'>): readonly ProgrammeWeek[] | undefined {
  const weeks: ProgrammeWeek[] = [];
  let isFine = true;
  for (const [index, week] of written.entries()) {
    const place = within(item, index);
    const days = daysOf(scope, place, week);
    if (weeks.some((other) => other.week === week.week)) {
      scope.report(problem('plan/programme-week-twice', { ...at(place, 'week'), params: { week: week.week } }));
      isFine = false;
    }
    if (days === undefined) isFine = false;
    else weeks.push({ week: week.week, days });
  }
  return isFine ? weeks.toSorted((a, b) => a.week - b.week) : undefined;
}

function daysOf(
  scope: Scope,
  place: Located,
  week: MapFields<'programmes'>[number],
): readonly ProgrammeDay[] | undefined {
  const days = new Map<Weekday, ProgrammeDay>();
  let isFine = true;
  for (const key of DAY_KEYS) {
    const written = week[key];
    const day = findWeekday(key);
    if (written === undefined || day === undefined) continue;
    if (days.has(day)) {
      scope.report(problem('plan/programme-day-twice', { ...at(place, key), params: { day: key } }));
      isFine = false;
    }
    const lines = resolveLines(scope, place, written, key);
    if (lines === undefined) isFine = false;
    else days.set(day, { day, lines, span: at(place, key).span });
  }
  return isFine ? [...days.values()].toSorted((a, b) => a.day - b.day) : undefined;
}

/** In order of first day. */
export function resolveUses(scope: Scope, programmes: ReadonlyMap<string, Programme>): readonly ProgrammeUse[] {
  const uses = scope.authored.use.flatMap((item) => resolveUse(scope, programmes, item) ?? []);
  return inOrder(uses, ({ from }) => isoDate(from));
}

function resolveUse(
  scope: Scope,
  programmes: ReadonlyMap<string, Programme>,
  item: Item<ListFields<'use'>>,
): ProgrammeUse | undefined {
  const { value } = item;
  const who = whoOf(scope, item, value);
  if (value.programme !== undefined)
    isBound(scope, namesOf('programme', scope.authored.programmes), value.programme, item, 'programme');
  if (value.from !== undefined) warnOutside(scope, item, { from: value.from, until: scope.frame.until }, 'from');
  if (item.kind === 'broken' || who === undefined) return undefined;
  const programme = programmes.get(item.value.programme);
  return programme === undefined ? undefined : { programme, from: item.value.from, who, span: item.span };
}
