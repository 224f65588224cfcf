// Text out of a plan, made fit to stand in a sentence on a terminal: on one line, of a bearable length, and without
// characters that would move the cursor, change colours or turn the writing direction.

const LINE_BREAKS = /\s*[\r\n\u0085\u2028\u2029]\s*/gu;
const UNPRINTABLE = /[\p{Cc}\u200B\u200E\u200F\u202A-\u202E\u2060\u2066-\u2069\uFEFF]/gu;
const ASCII = /^[\u0020-\u007E]*$/u;

/** The text, at most so many UTF-16 units long; what can't be shown as U+FFFD, a line break as a space. */
export function printable(text: string, most: number): string {
  const short = shortened(text, most);
  return ASCII.test(short) ? short : short.replaceAll(LINE_BREAKS, ' ').replaceAll(UNPRINTABLE, '\uFFFD');
}

/** The text, or the beginning of it with `…`; never half a character. */
export function shortened(text: string, most: number): string {
  if (text.length <= most) return text;
  const cut = text.charCodeAt(most - 2);
  const isHalf = cut >= 0xd800 && cut <= 0xdbff;
  return `${text.slice(0, isHalf ? most - 2 : most - 1)}…`;
}
