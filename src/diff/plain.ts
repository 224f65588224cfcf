// A part of a plan as plain data that says what it means and not where it stands, to be compared and told. Maps become
// groups of keys, sets become lists in order.

/** Say where something is written, or how it came to be known; not what it says. */
const PLACES: ReadonlySet<string> = new Set(['span', 'keySpan', 'origin', 'endsOrigin', 'levelOrigin', 'sportOrigin']);

/** A value without its places; keys in order, so that equal meanings have equal texts. */
export function plainOf(value: unknown): unknown {
  if (value instanceof Map) return plainOf(Object.fromEntries(value as ReadonlyMap<string, unknown>));
  if (value instanceof Set) return [...(value as ReadonlySet<string>)].toSorted().map(plainOf);
  if (Array.isArray(value)) return value.map(plainOf);
  if (typeof value !== 'object' || value === null) return value;
  // A value with its origin says no more than the value.
  if ('origin' in value && 'value' in value) return plainOf(value.value);
  const entries = Object.entries(value).filter(([key, member]) => !PLACES.has(key) && member !== undefined);
  return Object.fromEntries(entries.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([key, one]) => [key, plainOf(one)]));
}

/** One line of JSON that is equal for two parts of a plan exactly where they mean the same. */
export const plainText = (value: unknown): string => JSON.stringify(plainOf(value)) ?? '';
