// How many columns a text takes on a terminal: letters with marks count once, wide letters of East Asian scripts and
// emoji twice, invisible characters not at all. Used wherever columns have to line up.

const INVISIBLE = /^[\p{M}\p{Cc}\p{Cf}]$/u;
const EMOJI = /^\p{Emoji_Presentation}$/u;
/** First and last code points of the blocks that are wide throughout, after Unicode's East Asian Width (W and F). */
const WIDE: readonly (readonly [number, number])[] = [
  [0x11_00, 0x11_5f],
  [0x2e_80, 0x30_3e],
  [0x30_41, 0x33_ff],
  [0x34_00, 0x4d_bf],
  [0x4e_00, 0x9f_ff],
  [0xa0_00, 0xa4_cf],
  [0xa9_60, 0xa9_7f],
  [0xac_00, 0xd7_a3],
  [0xf9_00, 0xfa_ff],
  [0xfe_30, 0xfe_6f],
  [0xff_00, 0xff_60],
  [0xff_e0, 0xff_e6],
  [0x2_00_00, 0x3_ff_fd],
];
const ASCII = /^[\u0020-\u007e]*$/u;
const JOINER = '\u{200d}';
const PRESENTED_AS_EMOJI = '\u{fe0f}';

/** Columns the text takes; a family joined to one emoji counts as one. */
export function displayWidth(text: string): number {
  if (ASCII.test(text)) return text.length;
  let width = 0;
  let joined = false;
  let last = 0;
  for (const character of text) {
    if (character === PRESENTED_AS_EMOJI && last === 1) {
      width += 1;
      last = 2;
      continue;
    }
    const own = joined ? 0 : characterWidth(character);
    joined = character === JOINER;
    width += own;
    if (own > 0) last = own;
  }
  return width;
}

function characterWidth(character: string): 0 | 1 | 2 {
  const point = character.codePointAt(0) ?? 0;
  if (INVISIBLE.test(character)) return 0;
  return EMOJI.test(character) || WIDE.some(([from, to]) => from <= point && point <= to) ? 2 : 1;
}

/** The text, or as much of it as fits into so many columns with `…` at its end. */
export function fitted(text: string, columns: number): string {
  if (displayWidth(text) <= columns) return text;
  let kept = '';
  for (const character of text) {
    if (displayWidth(kept + character) > columns - 1) break;
    kept += character;
  }
  return `${kept}…`;
}
