// Small words the messages of the rules share. Used by the files beside this one.

/** What every finding of a rule says: the athlete's id and the first date of the week. */
export type At = { readonly athlete: string; readonly week: string };

/** The same with the date of a session or another day. */
export type On = At & { readonly date: string };

/** What a notice adds when the same holds in further weeks: it is said once for an athlete. */
export function inFurtherWeeks(count: number): string {
  return count === 0 ? '' : `; and so in ${count === 1 ? 'one more week' : `${count} more weeks`}`;
}
