// What a coach has pinned for the lines of one athlete on one day: drills and lifts swapped, left out, kept, added, sets
// and loads set. Of two pins for one exercise the later in the plan counts. Looked up for every session.

import { holds } from '../../plan/applies.ts';
import type { Athlete, Part, Pin, PinEffect, Plan, WrittenLine } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';
import { itemsOf } from '../../plan/items-of.ts';

export interface Pinned<T> {
  readonly value: T;
  readonly pin: Pin;
}

export interface DayPins {
  readonly leaveOut: ReadonlyMap<string, Pin>;
  readonly swaps: ReadonlyMap<string, Pinned<string>>;
  readonly keep: ReadonlyMap<string, Pin>;
  readonly sets: ReadonlyMap<string, Pinned<number>>;
  readonly loads: ReadonlyMap<string, Pinned<number>>;
  readonly add: readonly { readonly part: Part; readonly lines: readonly WrittenLine[]; readonly pin: Pin }[];
}

export const NO_PINS: DayPins = {
  leaveOut: new Map(),
  swaps: new Map(),
  keep: new Map(),
  sets: new Map(),
  loads: new Map(),
  add: [],
};

/** The pins of the plan that touch this athlete's lines. */
export function linePins(plan: Plan, athlete: Athlete): readonly Pin[] {
  return itemsOf(plan, athlete).pins.filter(({ effects }) => effects.some(touchesLines));
}

function touchesLines(effect: PinEffect): boolean {
  switch (effect.kind) {
    case 'swap':
    case 'leave-out':
    case 'keep':
    case 'add':
    case 'sets':
    case 'load':
      return true;
    case 'contacts':
    case 'phase':
    case 'rest':
    case 'week-kind':
    case 'on':
      return false;
  }
}

/** The pins in force on a day; loads in grams. */
export function pinsOn(pins: readonly Pin[], day: Day): DayPins {
  const inForce = pins.length === 0 ? pins : pins.filter((pin) => holds(pin.range, day));
  if (inForce.length === 0) return NO_PINS;
  const leaveOut = new Map<string, Pin>();
  const swaps = new Map<string, Pinned<string>>();
  const keep = new Map<string, Pin>();
  const sets = new Map<string, Pinned<number>>();
  const loads = new Map<string, Pinned<number>>();
  const add: { part: Part; lines: readonly WrittenLine[]; pin: Pin }[] = [];
  for (const pin of inForce) {
    for (const effect of pin.effects) {
      if (effect.kind === 'leave-out') for (const id of effect.exercises) leaveOut.set(id, pin);
      if (effect.kind === 'keep') for (const id of effect.exercises) keep.set(id, pin);
      if (effect.kind === 'swap') for (const [from, to] of effect.swaps) swaps.set(from, { value: to, pin });
      if (effect.kind === 'sets') for (const [id, value] of effect.sets) sets.set(id, { value, pin });
      if (effect.kind === 'load') for (const [id, value] of effect.loadsGrams) loads.set(id, { value, pin });
      if (effect.kind === 'add') add.push({ part: effect.part, lines: effect.lines, pin });
    }
  }
  return { leaveOut, swaps, keep, sets, loads, add };
}
