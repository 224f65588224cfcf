// Finds the known word nearest to one that isn't known, for "did you mean". Used by whoever reports an unknown key,
// name, drill or day. A word too far from all of them gets no answer: a wrong guess is worse than none.

/** Edits allowed: one for short words, about a third of the letters for longer ones. */
const mostEdits = (length: number): number => (length <= 2 ? 0 : length <= 5 ? 1 : Math.min(4, Math.floor(length / 3)));

/** Longer ones are texts, not misspelt names. */
const LONGEST_WORD = 100;

/**
 * The candidate with the fewest edits (letters put in, left out, changed, two neighbours swapped) from `word`, letter
 * case and the difference between `-`, `_` and a space aside; undefined if none is near. Of equally near ones the one of
 * which the word only lacks letters, as typing does that most, then the first in the order of their text. Time grows with the number of candidates: for thousands of words against thousands of
 * candidates, ask only for the first few.
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  if (word.length > LONGEST_WORD) return undefined;
  const wanted = folded(word);
  const most = mostEdits(wanted.length);
  let best: string | undefined;
  let bestDistance = most + 1;
  for (const candidate of candidates) {
    const distance = editDistance(wanted, folded(candidate), bestDistance);
    const isAsNear = distance === bestDistance && distance <= most && best !== undefined;
    if (distance < bestDistance || (isAsNear && isLikelier(candidate, best ?? '', wanted))) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

function isLikelier(candidate: string, best: string, wanted: string): boolean {
  const [lacks, bestLacks] = [candidate, best].map((one) => hasInOrder(folded(one), wanted));
  return lacks === bestLacks ? candidate < best : lacks === true;
}

/** Whether a text has the letters of another in their order, with others between. */
function hasInOrder(text: string, letters: string): boolean {
  let found = 0;
  for (const letter of text) if (letter === letters.charAt(found)) found += 1;
  return found === letters.length;
}

/** `did you mean "…"?`, or undefined if nothing known is near. */
export function didYouMean(word: string, candidates: Iterable<string>): string | undefined {
  const found = nearest(word, candidates);
  return found === undefined ? undefined : `did you mean "${found}"?`;
}

const folded = (text: string): string => text.toLowerCase().replaceAll(/[_\s]/gu, '-');

/** Edits between two texts (optimal string alignment), or any number above `most` once it is known to be more. */
export function editDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let row = 1; row <= a.length; row += 1) {
    const current = nextRow(a, b, row, last, beforeLast);
    if (current.every((edits) => edits > most)) return most + 1;
    beforeLast = last;
    last = current;
  }
  return last[b.length] ?? 0;
}

function nextRow(a: string, b: string, row: number, last: readonly number[], beforeLast: readonly number[]): number[] {
  const current = [row];
  for (let column = 1; column <= b.length; column += 1) {
    const same = a[row - 1] === b[column - 1];
    let edits = Math.min(
      (last[column] ?? 0) + 1,
      (current[column - 1] ?? 0) + 1,
      (last[column - 1] ?? 0) + (same ? 0 : 1),
    );
    const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
    if (swapped) edits = Math.min(edits, (beforeLast[column - 2] ?? 0) + 1);
    current.push(edits);
  }
  return current;
}
