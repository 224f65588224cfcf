// Pins: the coach's own numbers and choices, each turned into its effects. Called by resolve.ts. A contacts pin is rounded
// down to the step contacts are planned in, with a notice: when in doubt less.

import { at, entriesOf } from '../language/authored.ts';
import type { Item } from '../language/authored.ts';
import type { ListFields } from '../language/sections.ts';
import { problem } from '../diagnostics/problem.ts';
import { VOLUME } from '../library/volume.ts';
import { isoDate } from '../util/days.ts';
import { reportBrokenLines, resolveLines } from './resolve-lines.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';
import { boundNames, isBound, isKeyBound, namesOf, whoOf } from './bind-names.ts';
import { inOrder } from './in-order.ts';
import { rangeOf, warnOutside } from './ranges.ts';
import type { KnownNames } from './bind-names.ts';
import type { Scope } from './scope.ts';
import type { Part, Pin, PinEffect, WrittenLine } from './types.ts';
import { groupsByKey } from '../util/grouped.ts';

type PinItem = Item<ListFields<'pins'>>;

/** In order of first day. */
export function resolvePins(scope: Scope): readonly Pin[] {
  const pins = scope.authored.pins.flatMap((item) => resolvePin(scope, item) ?? []);
  return inOrder(pins, ({ range }) => isoDate(range.from));
}

function resolvePin(scope: Scope, item: PinItem): Pin | undefined {
  reportBrokenLines(scope, item);
  const { value } = item;
  const who = whoOf(scope, item, value);
  const range = rangeOf(scope, item, value);
  const effects = effectsOf(scope, item);
  const isDated = isDatedWell(scope, item);
  if (item.kind === 'broken') return undefined;
  if (effects?.length === 0) {
    scope.report(problem('plan/pin-of-nothing', at(item)));
    return undefined;
  }
  if (who === undefined || range === undefined || effects === undefined || !isDated) return undefined;
  const dated = (['week', 'date', 'until', 'from'] as const).find((key) => value[key] !== undefined);
  if (dated !== undefined) warnOutside(scope, item, range, dated);
  return { range, who, effects, because: item.value.because, span: item.span };
}

/** Choices of exercises may stand for a whole season; a number, a phase, a kind or a rest belongs to its days. */
const DATED_KEYS = ['contacts-a-week', 'phase', 'rest', 'kind', 'on'] as const;

function isDatedWell(scope: Scope, item: PinItem): boolean {
  const { value } = item;
  if (value.week !== undefined || value.date !== undefined || value.from !== undefined || value.until !== undefined)
    return true;
  if (item.kind === 'broken') return false;
  const key = DATED_KEYS.find((one) => value[one] !== undefined);
  if (key === undefined) return true;
  scope.report(problem('plan/pin-undated', { ...at(item, key), params: { key } }));
  return false;
}

/** All effects in a fixed order, or undefined when one has a mistake. */
function effectsOf(scope: Scope, item: PinItem): readonly PinEffect[] | undefined {
  const { value } = item;
  const exercises = namesOf('drill or lift', scope.library.drills, scope.library.lifts);
  const simple: readonly (PinEffect | undefined)[] = [
    value['contacts-a-week'] === undefined ? undefined : contactsEffect(scope, item, value['contacts-a-week']),
    value.phase === undefined ? undefined : { kind: 'phase', phase: value.phase },
    value.rest === true ? { kind: 'rest' } : undefined,
    value.kind === undefined ? undefined : { kind: 'week-kind', weekKind: value.kind },
    value.on === undefined ? undefined : { kind: 'on', days: [...new Set(value.on)].toSorted((a, b) => a - b) },
  ];
  const bound: readonly (readonly PinEffect[] | undefined)[] = [
    value.swap === undefined ? [] : swapEffect(scope, item, value.swap),
    listEffect(scope, item, exercises, 'leave-out'),
    listEffect(scope, item, exercises, 'keep'),
    addEffects(scope, item),
    value.sets === undefined
      ? []
      : mapEffect(scope, item, exercises, 'sets', value.sets, (sets) => ({ kind: 'sets', sets })),
    value.load === undefined
      ? []
      : mapEffect(scope, item, namesOf('lift', scope.library.lifts), 'load', value.load, (loadsGrams) => ({
          kind: 'load',
          loadsGrams,
        })),
  ];
  const all = bound.map((effects) => effects ?? 'bad');
  if (all.includes('bad')) return undefined;
  return [...simple.filter((effect) => effect !== undefined), ...bound.flatMap((effects) => effects ?? [])];
}

function contactsEffect(scope: Scope, item: PinItem, written: number): PinEffect {
  const contactsAWeek = written - (written % VOLUME.step);
  if (contactsAWeek !== written) {
    const params = { found: written, rounded: contactsAWeek, step: VOLUME.step };
    scope.report(problem('plan/pin-rounded', { ...at(item, 'contacts-a-week'), params }));
  }
  return { kind: 'contacts', contactsAWeek };
}

function swapEffect(
  scope: Scope,
  item: PinItem,
  swap: Readonly<Record<string, string>>,
): readonly PinEffect[] | undefined {
  const { drills, lifts } = scope.library;
  const pairs = Object.entries(swap).toSorted(([a], [b]) => byCodeUnit(a, b));
  const good = pairs.filter(([from, to]) => {
    if (!isKeyBound(scope, namesOf('drill or lift', drills, lifts), from, item, 'swap')) return false;
    const same = drills.has(from) ? namesOf('drill', drills) : namesOf('lift', lifts);
    return isBound(scope, same, to, item, 'swap', from);
  });
  return good.length === pairs.length ? [{ kind: 'swap', swaps: new Map(pairs) }] : undefined;
}

function listEffect(
  scope: Scope,
  item: PinItem,
  known: KnownNames,
  key: 'leave-out' | 'keep',
): readonly PinEffect[] | undefined {
  const written = item.value[key];
  if (written === undefined) return [];
  const exercises = boundNames(scope, known, written, item, key);
  return exercises === undefined ? undefined : [{ kind: key, exercises }];
}

function mapEffect(
  scope: Scope,
  item: PinItem,
  known: KnownNames,
  key: 'sets' | 'load',
  written: Readonly<Record<string, number>>,
  effect: (values: ReadonlyMap<string, number>) => PinEffect,
): readonly PinEffect[] | undefined {
  const entries = Object.entries(written).toSorted(([a], [b]) => byCodeUnit(a, b));
  const good = entries.filter(([name]) => isKeyBound(scope, known, name, item, key));
  return good.length === entries.length ? [effect(new Map(entries))] : undefined;
}

function addEffects(scope: Scope, item: PinItem): readonly PinEffect[] | undefined {
  const { add, part } = item.value;
  if (add === undefined) {
    if (part === undefined || entriesOf(item).some(({ key }) => key === 'add')) return [];
    scope.report(problem('plan/part-without-lines', at(item, 'part')));
    return undefined;
  }
  const lines = resolveLines(scope, item, add, 'add');
  if (lines === undefined) return undefined;
  const byPart = groupsByKey(lines, (line) => part ?? partOf(scope, line));
  return [...byPart].map(([its, added]) => ({ kind: 'add', part: its, lines: added }));
}

function partOf(scope: Scope, { exercise }: WrittenLine): Part {
  if (exercise.kind === 'drill') return 'jumps';
  return scope.library.lifts.get(exercise.id)?.role === 'trunk' ? 'trunk' : 'lifts';
}
