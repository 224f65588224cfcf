// What a limit avoids, put as the plan knows it. Called by resolve-fields.ts. A word that names several things at once, a
// family and a drill say, bars them all: a limit is never read as less than it may mean.

import type { Located } from '../language/authored.ts';
import { AVOID_WORDS } from '../language/shapes/athletes.ts';
import { DIRECTIONS, TIERS } from '../library/types.ts';
import { isBound, namesOf, sortedUnique } from './scope.ts';
import type { Scope } from './scope.ts';
import type { Avoid } from './types.ts';

/** Undefined when a word isn't known. */
export function resolveAvoid(scope: Scope, limit: Located, words: readonly string[]): readonly Avoid[] | undefined {
  const { drills, lifts, families } = scope.library;
  const patterns = new Set<string>([...lifts.values()].map(({ pattern }) => pattern));
  const known = namesOf('something a limit can avoid', new Set(AVOID_WORDS), families, drills, lifts, patterns);
  const bound = words.filter((word, index) => isBound(scope, known, word, limit, 'avoid', index));
  if (bound.length < words.length) return undefined;
  return sortedUnique(bound).flatMap((word) => meaningsOf(scope, patterns, word));
}

function meaningsOf({ library }: Scope, patterns: ReadonlySet<string>, word: string): readonly Avoid[] {
  const kinds: readonly (readonly [Exclude<Avoid['kind'], 'drops' | 'single-leg'>, boolean])[] = [
    ['direction', DIRECTIONS.some((direction) => direction === word)],
    ['cycle', word === 'fast' || word === 'slow'],
    ['tier', TIERS.some((tier) => tier === word)],
    ['family', library.families.has(word)],
    ['drill', library.drills.has(word)],
    ['pattern', patterns.has(word)],
    ['lift', library.lifts.has(word)],
  ];
  const named = kinds.flatMap(([kind, isOne]): Avoid[] => (isOne ? [{ kind, id: word }] : []));
  return word === 'drops' || word === 'single-leg' ? [{ kind: word }, ...named] : named;
}
