// A line of the page that is about somebody: what to decide, or what went otherwise. Lines that say the same of several
// athletes become one.

import { grouped } from '../../util/grouped.ts';

type Parts = readonly [before: string, own: string, after: string];

export interface ToldItem {
  readonly kind: string;
  /** Ids, in the order of the plan. */
  readonly athletes: readonly string[];
  /** As the page names them. */
  readonly names: readonly string[];
  readonly words: string;
  /** The words in three: of several athletes' items that differ in the middle alone a page makes one line. */
  readonly parts?: Parts;
  /** What it changes in the plan, or what happens until it is decided. */
  readonly changes?: string;
  /** `record/done.csv:12`. */
  readonly places: readonly string[];
}

/** The words of an item in three parts: what stands before, what is the athlete's own, and what stands behind. */
export const inParts = (...parts: Parts): Required<Pick<ToldItem, 'words' | 'parts'>> => ({
  words: parts.join(''),
  parts,
});

/** Items that say the same as one, where the first of them stands. */
export function gathered<T extends ToldItem>(items: readonly T[]): readonly T[] {
  const found = new Map<string, T>();
  for (const item of items) {
    const key = JSON.stringify([item.kind, item.words, item.changes]);
    const before = found.get(key);
    found.set(
      key,
      before === undefined
        ? item
        : {
            ...before,
            athletes: [...before.athletes, ...item.athletes],
            names: [...before.names, ...item.names],
            places: [...new Set([...before.places, ...item.places])],
          },
    );
  }
  return [...found.values()];
}

/** A page has no room for the lines of a whole squad. */
const MOST_PLACES = 6;

/**
 * For a page: items that differ in what is the athlete's own alone as one, where the first of them stands, with that told
 * for each. `order` are the ids of the athletes as they stand in the plan.
 */
export function inOneLine(items: readonly ToldItem[], order: readonly string[]): readonly ToldItem[] {
  const alike = grouped(items, ({ kind, changes, words, parts: [before, , after] = [words, '', ''] }) =>
    JSON.stringify([kind, changes, before, after]),
  );
  return alike.map((group) => withFewPlaces(merged(group, order)));
}

function merged(group: readonly ToldItem[], order: readonly string[]): ToldItem {
  const [first, ...others] = group;
  if (first === undefined) throw new Error('a group of items is never empty');
  if (first.parts === undefined || others.length === 0) return first;
  const people = group
    .flatMap(({ athletes, names }) => athletes.map((id, index) => ({ id, name: names[index] ?? id })))
    .toSorted((a, b) => order.indexOf(a.id) - order.indexOf(b.id));
  const [before, , after] = first.parts;
  const own = group.map(({ parts, names }) => `${parts?.[1] ?? ''} (${names.join(', ')})`);
  return {
    ...first,
    athletes: people.map(({ id }) => id),
    names: people.map(({ name }) => name),
    words: `${before}${own.join('; ')}${after}`,
    places: [...new Set(group.flatMap(({ places }) => places))],
  };
}

function withFewPlaces(item: ToldItem): ToldItem {
  const more = item.places.length - MOST_PLACES;
  return more <= 0 ? item : { ...item, places: [...item.places.slice(0, MOST_PLACES), `and ${more} more`] };
}
