// A number with what it counts, in one of its two forms. For messages and for pages.

/** `1 session`, `2 sessions`; `many` where an s isn't enough. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
