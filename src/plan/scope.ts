// What every file that resolves a part of the plan needs: the authored items, the season's days, the library, and where
// problems go. Made once by resolve.ts. Binding a name either finds it or reports it, once, with the nearest known name.

import { overlap, weekFrom } from './applies.ts';
import { at, keyPlaceOf } from '../language/authored.ts';
import type { Authored, Located } from '../language/authored.ts';
import type { Step } from '../language/nodes.ts';
import { inWords } from '../util/in-words.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Library } from '../library/index.ts';
import { isoDate, startOfWeek } from '../util/days.ts';
import type { Day, Weekday } from '../util/days.ts';
import { meantHelp } from '../language/words.ts';
import type { DayRange, Who } from './types.ts';
import type { Units } from '../util/quantities.ts';

export interface Scope {
  readonly authored: Authored;
  readonly library: Library;
  /** Patterns of the library's lifts. */
  readonly patterns: ReadonlySet<string>;
  /** First to last day of the season; everything there is, when the season itself has mistakes. */
  readonly frame: DayRange;
  /** Whether those days are the season's. */
  readonly isFramed: boolean;
  readonly weekStarts: Weekday;
  readonly units: Units;
  readonly report: (diagnostic: Diagnostic) => void;
  /** `did you mean …?` for a name that isn't known; asked for the first few only, as each is a search through all. */
  readonly guess: (name: string, known: Iterable<string>) => string | undefined;
}

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

/** Each name once, in order of code units. */
export function sortedUnique(names: readonly string[]): readonly string[] {
  return [...new Set(names)].toSorted(byCodeUnit);
}

/** Order of texts that no locale changes. */
export const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

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

export interface RangeKeys {
  readonly from?: Day | undefined;
  readonly until?: Day | undefined;
  readonly week?: Day | undefined;
  readonly date?: Day | undefined;
}

/** The days an item names, up to the ends of the season (or of `frame`) where it leaves one out; undefined when they contradict. */
export function rangeOf(
  scope: Scope,
  item: Located,
  keys: RangeKeys,
  frame: DayRange = scope.frame,
): DayRange | undefined {
  const { week, date } = keys;
  const ways = [
    week !== undefined && 'week',
    date !== undefined && 'date',
    keys.from !== undefined && 'from',
    keys.until !== undefined && 'until',
  ];
  const written = ways.filter((way) => way !== false);
  if (written.length > 1 && (week !== undefined || date !== undefined)) {
    scope.report(
      problem('plan/two-times', { ...at(item, written[1] ?? ''), params: { ways: inWords(written, 'and') } }),
    );
    return undefined;
  }
  if (date !== undefined) return { from: date, until: date };
  if (week !== undefined) return weekOf(scope, week);
  return orderedRange(scope, item, { from: keys.from ?? frame.from, until: keys.until ?? frame.until }, keys);
}

/** First to last day of the plan's week that holds a day. */
export function weekOf(scope: Pick<Scope, 'weekStarts'>, day: Day): DayRange {
  const from = startOfWeek(day, scope.weekStarts);
  return weekFrom(from);
}

/** The range, or undefined with a report when both ends are written and the end is the earlier. */
export function orderedRange(scope: Scope, item: Located, range: DayRange, keys: RangeKeys): DayRange | undefined {
  if (range.from <= range.until) return range;
  if (keys.from === undefined || keys.until === undefined)
    return reportNever(scope, item, keys.from === undefined ? 'until' : 'from');
  reportEndBeforeStart(scope, item, { start: 'from', end: 'until' }, range);
  return undefined;
}

/** Reports an end that lies before its start, at the end, with the start beside it. `keys` are as the item has them. */
export function reportEndBeforeStart(
  scope: Pick<Scope, 'report'>,
  item: Located,
  keys: { readonly start: string; readonly end: string },
  { from, until }: DayRange,
): void {
  const params = { start: keys.start, from: isoDate(from), end: keys.end, until: isoDate(until) };
  const related = [{ span: at(item, keys.start).span, message: 'the start is here' }];
  scope.report(problem('plan/end-before-start', { ...at(item, keys.end), params, related }));
}

/** An open range that lies wholly before or after the season. */
function reportNever(scope: Scope, item: Located, key: string): undefined {
  scope.report(problem('plan/outside-season', { ...at(item, key), params: seasonWords(scope) }));
}

/** The season's first and last day in ISO form, for messages. */
export function seasonWords({ frame }: Pick<Scope, 'frame'>): { readonly starts: string; readonly ends: string } {
  return { starts: isoDate(frame.from), ends: isoDate(frame.until) };
}

/** Says so when an item lies outside of the season and so does nothing. */
export function warnOutside(scope: Scope, item: Located, range: DayRange, key: string): void {
  if (overlap(range, scope.frame)) return;
  scope.report(problem('plan/outside-season', { ...at(item, key), params: seasonWords(scope) }));
}

/** Sorted by a text that says all of an item's meaning, so that the order of files can't matter. */
export function inOrder<T extends object>(
  items: readonly T[],
  first: (item: T) => string | number = () => 0,
): readonly T[] {
  if (items.length < 2) return items;
  const keyed = items.map((item) => ({ item, first: first(item), rest: meaningOf(item) }));
  keyed.sort((a, b) => compare(a.first, b.first) || compare(a.rest, b.rest));
  return keyed.map(({ item }) => item);
}

const compare = <T extends string | number>(a: T, b: T): number => (a < b ? -1 : a > b ? 1 : 0);

/** An item as text, its places left out. */
function meaningOf(item: object): string {
  return JSON.stringify(item, (key, value: unknown) => {
    if (key === 'span' || key === 'origin') return undefined;
    return value instanceof Map || value instanceof Set ? [...value] : value;
  });
}
