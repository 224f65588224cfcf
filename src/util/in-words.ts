// Lists put into words for messages: `kg or lb`, `peak, freshen or through`. Used by shapes, by what resolves
// names, and by reports.

/** Joined with commas and a last word; a long list is cut and ends with how many more there are. */
export function inWords(items: readonly string[], last: 'and' | 'or', most = 12): string {
  if (items.length > most) {
    return `${items.slice(0, most).join(', ')}, and ${String(items.length - most)} more`;
  }
  if (items.length <= 1) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1) ?? ''}`;
}
