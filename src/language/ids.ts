// What an id may be made of, for the decoder, for the schema and for what is suggested instead of one that can't be.

const MOST_LETTERS = 64;

/** As a pattern of the schema. */
export const ID_PATTERN = `^[\\p{L}\\p{N}][\\p{L}\\p{N}\\p{M}_-]{0,${MOST_LETTERS - 1}}$`;

/** Asked first, as most ids are such and the letters of all scripts are a pattern that takes long to make. */
const PLAIN_ID = new RegExp(`^[A-Za-z\\d][\\w-]{0,${MOST_LETTERS - 1}}$`);

let anyId: RegExp | undefined;

/** Whether a key can be an id. */
export function isId(text: string): boolean {
  if (PLAIN_ID.test(text)) return true;
  anyId ??= new RegExp(ID_PATTERN, 'u');
  return anyId.test(text);
}

/** An id made of a text that can't be one; undefined where nothing is left of it. */
export function suggestedId(text: string): string | undefined {
  const id = text
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}\p{M}_-]+/gu, '-')
    .replaceAll(/^[^\p{L}\p{N}]+|-+$/gu, '')
    .slice(0, MOST_LETTERS);
  return id === '' ? undefined : id;
}
