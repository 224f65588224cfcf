// Whether two parts of plans say the same, wherever they stand: every value counts but places, and whether a value was
// written or a default counts as well. Called for what is built anew with a save, and for what was edited. Where order may
// not matter it counts all the same: two that are told apart here may still mean one thing, never the other way round.

import type { Span } from '../source/types.ts';
import type { Athlete } from './types.ts';

/** `moved`: they say the same, and some of it stands elsewhere. */
export type Likeness = 'same' | 'moved' | 'differs';

/** Of any two values of plans, by a walk through both at once that ends at the first that differs. */
export function likenessOf(before: unknown, after: unknown): Likeness {
  let moved = false;
  const says = isSame(before, after, {
    visit: (was, is) => {
      moved ||= was.start !== is.start || was.end !== is.end || was.file !== is.file;
    },
    isKnown: (was, is) => was === is,
  });
  if (!says) return 'differs';
  return moved ? 'moved' : 'same';
}

const verdicts = new WeakMap<Athlete, { readonly before: Athlete; readonly likeness: Likeness }>();

/** As `likenessOf`; the last answer for an athlete is kept, as whoever watches asks it of each of a squad twice a save. */
export function athleteLikeness(before: Athlete, after: Athlete): Likeness {
  const known = verdicts.get(after);
  if (known?.before === before) return known.likeness;
  const likeness = likenessOf(before, after);
  verdicts.set(after, { before, likeness });
  return likeness;
}

/** Each place of the one beside its place in the other, for two that say the same. */
export function eachPlace(before: unknown, after: unknown, visit: (was: Span, is: Span) => void): void {
  isSame(before, after, { visit, isKnown: () => false });
}

interface Walk {
  readonly visit: (was: Span, is: Span) => void;
  /** Two that needn't be looked into. */
  readonly isKnown: (was: object, is: object) => boolean;
}

function isSame(before: unknown, after: unknown, walk: Walk): boolean {
  if (typeof before !== 'object' || typeof after !== 'object' || before === null || after === null)
    return Object.is(before, after);
  if (walk.isKnown(before, after)) return true;
  if (Array.isArray(before)) return Array.isArray(after) && areSame(before, after, walk);
  if (before instanceof Map) return after instanceof Map && haveSameEntries(before, after, walk);
  if (before instanceof Set) return after instanceof Set && areSame([...before], [...after], walk);
  if (isPlace(before) && isPlace(after)) {
    walk.visit(before, after);
    return true;
  }
  return haveSameFields(before, after, walk);
}

function areSame(before: readonly unknown[], after: readonly unknown[], walk: Walk): boolean {
  if (before.length !== after.length) return false;
  for (let at = 0; at < before.length; at += 1) if (!isSame(before[at], after[at], walk)) return false;
  return true;
}

function haveSameEntries(
  before: ReadonlyMap<unknown, unknown>,
  after: ReadonlyMap<unknown, unknown>,
  walk: Walk,
): boolean {
  if (before.size !== after.size) return false;
  const others = after.entries();
  for (const [key, was] of before) {
    const [name, is]: readonly unknown[] = others.next().value ?? [];
    if (!isSame(key, name, walk) || !isSame(was, is, walk)) return false;
  }
  return true;
}

type Fields = Readonly<Record<string, unknown>>;

function haveSameFields(before: object, after: object, walk: Walk): boolean {
  if (Array.isArray(after) || after instanceof Map || after instanceof Set) return false;
  // Counted on the way, as a list of the names would be new memory for each of thousands.
  let more = 0;
  for (const _ in after) more += 1;
  for (const name in before) {
    const is = (after as Fields)[name];
    if (is === undefined && !Object.hasOwn(after, name)) return false;
    if (!isSame((before as Fields)[name], is, walk)) return false;
    more -= 1;
  }
  return more === 0;
}

function isPlace(value: object): value is Span {
  return 'file' in value && 'start' in value && 'end' in value;
}
