// What a limit avoids, put as the plan knows it. Called by resolve-fields.ts. A word that names several things at once, a
// family and a drill say, bars them all: a limit is never read as less than it may mean.

import type { Located } from '../language/authored.ts';
import { inWords } from '../util/in-words.ts';
import { AVOID_WORDS } from '../language/shapes/athletes.ts';
import { DIRECTIONS, TIERS } from '../library/types.ts';
import { isBound, namesOf } from './bind-names.ts';
import { sortedUnique } from './in-order.ts';
import type { KnownNames } from './bind-names.ts';
import type { Scope } from './scope.ts';
import type { Avoid } from './types.ts';

/** Undefined when a word isn't known. */
export function resolveAvoid(scope: Scope, limit: Located, words: readonly string[]): readonly Avoid[] | undefined {
  const known = avoidable(scope);
  const bound = words.filter((word, index) => isBound(scope, known, word, limit, 'avoid', index));
  return bound.length < words.length ? undefined : sortedUnique(bound).flatMap((word) => meaningsOf(scope, word));
}

/** Everything a limit can name. */
export function avoidable({ library, patterns }: Scope): KnownNames {
  const { drills, lifts, families } = library;
  const kind = 'word, drill, family, lift or pattern to avoid';
  const known = namesOf(kind, new Set(AVOID_WORDS), families, drills, lifts, patterns);
  return { ...known, hint: `write ${inWords(AVOID_WORDS, 'or')}, or a name of the library` };
}

function meaningsOf({ library, patterns }: Scope, word: string): readonly Avoid[] {
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
