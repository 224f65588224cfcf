// Lists that are walked one item at a time, so that nothing holds a squad at once. Called where a build is written; each
// may be walked once.

/** Each item made into another as it is asked for. */
export function* mapped<T, R>(items: Iterable<T>, to: (item: T) => R): Iterable<R> {
  for (const item of items) yield to(item);
}

/** A list that is made when its first item is asked for. */
export function* lazily<T>(make: () => Iterable<T>): Iterable<T> {
  yield* make();
}

/** One list behind the other; the second is made when the first is through. */
export function* inTurn<T>(first: Iterable<T>, second: () => Iterable<T>): Iterable<T> {
  yield* first;
  yield* second();
}
