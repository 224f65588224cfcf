// Names bound to what they stand for, and whom an item is for. Called by every file that resolves a part of the plan.
// Binding a name either finds it or reports it, once, with the nearest known name.

import { at, keyPlaceOf } from '../language/authored.ts';
import type { Authored, Located } from '../language/authored.ts';
import type { Step } from '../language/nodes.ts';
import { meantHelp } from '../language/words.ts';
import { problem } from '../diagnostics/problem.ts';
import { inWords } from '../util/in-words.ts';
import { sortedUnique } from './in-order.ts';
import type { Scope } from './scope.ts';
import type { Who } from './types.ts';

const MOST_GUESSES = 50;

/** Guesses for one plan: the first fifty names are searched for, the others not. */
export function limitedGuesses(): Scope['guess'] {
  let left = MOST_GUESSES;
  return (name, known) => {
    left -= 1;
    return left < 0 ? undefined : meantHelp(name, known).help;
  };
}

/** Names of one kind of thing. */
export interface KnownNames {
  /** `squad`. */
  readonly kind: string;
  readonly has: (name: string) => boolean;
  readonly all: () => Iterable<string>;
  /** Where the known ones are told, when there are too many to list. */
  readonly hint?: string;
}

/** The names of one or several maps as those of one kind of thing; `kind` is its word in messages. */
export function namesOf(
  kind: string,
  ...maps: readonly { readonly has: (name: string) => boolean; readonly keys: () => Iterable<string> }[]
): KnownNames {
  return {
    kind,
    has: (name) => maps.some((map) => map.has(name)),
    // One by one, as whoever asks mostly needs a few, and there may be ten thousand.
    *all() {
      for (const map of maps) yield* map.keys();
    },
  };
}

const MOST_LISTED = 12;

/** Whether the name at this place is known; reports it when not. */
export function isBound(
  scope: Scope,
  known: KnownNames,
  name: string,
  item: Located,
  ...steps: readonly Step[]
): boolean {
  return known.has(name) || reportUnknown(scope, known, name, at(item, ...steps));
}

/** As isBound, for a name that is a key of a group. */
export function isKeyBound(
  scope: Scope,
  known: KnownNames,
  name: string,
  item: Located,
  ...steps: readonly Step[]
): boolean {
  if (known.has(name)) return true;
  const span = keyPlaceOf(item, ...steps, name);
  return reportUnknown(scope, known, name, { ...at(item, ...steps, name), span });
}

function reportUnknown(scope: Scope, known: KnownNames, name: string, place: ReturnType<typeof at>): false {
  // Where the section of such names isn't what it should be, that is told, and the name may be in it.
  if (known.kind.split(/, | or /u).some((kind) => scope.authored.misshapen.has(`${kind}s`))) return false;
  const id = known.kind === 'athlete' ? idsByName(scope.authored).get(folded(name)) : undefined;
  const help =
    id === undefined ? helpFor(known, scope.guess(name, known.all())) : `athletes are named by their id: write ${id}`;
  scope.report(problem('plan/unknown-name', { ...place, params: { name, kind: known.kind }, help }));
  return false;
}

const knownIds = new WeakMap<Authored, ReadonlyMap<string, string>>();

/** The ids of athletes by the name that is printed; of two with one name neither is meant. */
function idsByName(authored: Authored): ReadonlyMap<string, string> {
  const known = knownIds.get(authored);
  if (known !== undefined) return known;
  const ids = new Map<string, string>();
  const twice = new Set<string>();
  for (const [id, { value }] of authored.athletes) {
    if (value.name === undefined) continue;
    const name = folded(value.name);
    if (ids.has(name)) twice.add(name);
    ids.set(name, id);
  }
  for (const name of twice) ids.delete(name);
  knownIds.set(authored, ids);
  return ids;
}

const folded = (name: string): string => name.trim().toLowerCase();

/** What lists the known ones, where they are too many to name. */
const LISTED_BY: Readonly<Record<string, string>> = {
  rule: '`footfall rules` lists them',
  drill: '`footfall library --kind drill` lists them',
  lift: '`footfall library --kind lift` lists them',
  'drill or lift': '`footfall library` lists them',
};

function helpFor(known: KnownNames, near: string | undefined): string | undefined {
  if (near !== undefined) return near;
  const all = firstOf(known.all(), MOST_LISTED + 1);
  if (all.length === 0) return `the plan names none`;
  return all.length > MOST_LISTED
    ? (known.hint ?? LISTED_BY[known.kind])
    : `known here: ${inWords(all.toSorted(), 'and')}`;
}

function firstOf(names: Iterable<string>, most: number): readonly string[] {
  const first: string[] = [];
  for (const name of names) {
    if (first.length === most) break;
    first.push(name);
  }
  return first;
}

/** Names of a list that are all known, or undefined when one isn't. */
export function boundNames(
  scope: Scope,
  known: KnownNames,
  names: readonly string[],
  item: Located,
  key: string,
): readonly string[] | undefined {
  const bound = names.filter((name, index) => isBound(scope, known, name, item, key, index));
  return bound.length === names.length ? sortedUnique(bound) : undefined;
}

export interface WhoKeys {
  readonly squads?: readonly string[] | undefined;
  readonly athletes?: readonly string[] | undefined;
}

/** Whom an item is for, or undefined when a name isn't known. */
export function whoOf(scope: Scope, item: Located, { squads, athletes }: WhoKeys): Who | undefined {
  if (squads === undefined && athletes === undefined) return { kind: 'everybody' };
  const boundSquads = boundNames(scope, namesOf('squad', scope.authored.squads), squads ?? [], item, 'squads');
  const boundAthletes = boundNames(
    scope,
    namesOf('athlete', scope.authored.athletes),
    athletes ?? [],
    item,
    'athletes',
  );
  if (boundSquads === undefined || boundAthletes === undefined) return undefined;
  if (boundSquads.length + boundAthletes.length === 0) {
    scope.report(problem('plan/for-nobody', at(item, squads === undefined ? 'athletes' : 'squads')));
    return undefined;
  }
  return { kind: 'some', squads: boundSquads, athletes: boundAthletes };
}
