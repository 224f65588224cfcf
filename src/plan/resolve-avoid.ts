// What a limit avoids, put as the plan knows it. Called by resolve-fields.ts. A word that names several things at once, a
// family and a drill say, bars them all: a limit is never read as less than it may mean.

import type { Located } from '../language/authored.ts';
import { inWords } from '../util/in-words.ts';
import { AVOID_WORDS, AVOIDABLE_CYCLES, AVOIDABLE_WORK } from '../language/shapes/athletes.ts';
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
  const { families, drills, lifts } = library;
  return [
    ...named(AVOIDABLE_WORK, word).map((kind) => ({ kind })),
    ...named(DIRECTIONS, word).map((id) => ({ kind: 'direction', id }) as const),
    ...named(AVOIDABLE_CYCLES, word).map((id) => ({ kind: 'cycle', id }) as const),
    ...named(TIERS, word).map((id) => ({ kind: 'tier', id }) as const),
    ...(families.has(word) ? [{ kind: 'family', id: word } as const] : []),
    ...(drills.has(word) ? [{ kind: 'drill', id: word } as const] : []),
    ...(patterns.has(word) ? [{ kind: 'pattern', id: word } as const] : []),
    ...(lifts.has(word) ? [{ kind: 'lift', id: word } as const] : []),
  ];
}

/** Those of the words that are this one. */
const named = <W extends string>(words: readonly W[], word: string): readonly W[] =>
  words.filter((one) => one === word);
