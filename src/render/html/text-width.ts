// How wide a text will be on paper, near enough to know how many lines it takes before a browser has laid it out. Errs on
// the wide side, so that what is expected to fit does.

/** Thousandths of the type size for the characters 32 to 126 of a plain grotesque (Helvetica, Arial, Liberation Sans). */
const WIDTHS = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
  556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
  260, 334, 584,
];
const FIRST = 32;
/** Of letters outside ASCII, and of wide ones of East Asian scripts. */
const USUAL = 620;
const WIDE = 1000;
const WIDE_FROM = 0x11_00;
/** Characters beyond it are two units of a text. */
const ONE_UNIT = 0xff_ff;
const BOLD = 1.08;
const MILLIMETRES_A_POINT = 25.4 / 72;

export interface Type {
  readonly points: number;
  readonly bold?: boolean;
}

/** Millimetres a text takes on one line. */
export function textWidth(text: string, type: Type): number {
  return partWidth(text, 0, text.length, type);
}

/** Millimetres of a text from one place to another. Boards ask for it so often that nothing is cut out for it. */
function partWidth(text: string, from: number, until: number, { points, bold = false }: Type): number {
  let thousandths = 0;
  let at = from;
  while (at < until) {
    const point = text.codePointAt(at) ?? 0;
    thousandths += WIDTHS[point - FIRST] ?? (point >= WIDE_FROM ? WIDE : USUAL);
    at += point > ONE_UNIT ? 2 : 1;
  }
  return (thousandths / 1000) * points * MILLIMETRES_A_POINT * (bold ? BOLD : 1);
}

/** A piece of a text in a type of its own. */
export interface Run {
  readonly text: string;
  readonly type: Type;
}

/** Lines a text takes in so many millimetres, broken at spaces; a word that is too long is broken anywhere. */
export function linesNeeded(text: string, millimetres: number, type: Type): number {
  return linesOfRuns([{ text, type }], millimetres);
}

/** The same of a text in several types, which may be broken between them; lines may differ in width, counted from 0. */
export function linesOfRuns(runs: readonly Run[], millimetres: number | ((line: number) => number)): number {
  const widthOf = typeof millimetres === 'number' ? (): number => millimetres : millimetres;
  let lines = 1;
  let used = 0;
  for (const { text, type } of runs) {
    const space = textWidth(' ', type);
    for (let from = 0; from <= text.length;) {
      const until = wordEnd(text, from);
      const width = partWidth(text, from, until, type);
      from = until + 1;
      if (used > 0 && used + space + width > widthOf(lines - 1)) {
        lines += 1;
        used = 0;
      }
      used += (used > 0 ? space : 0) + width;
      while (used > widthOf(lines - 1)) {
        used -= widthOf(lines - 1);
        lines += 1;
      }
    }
  }
  return lines;
}

function wordEnd(text: string, from: number): number {
  const space = text.indexOf(' ', from);
  return space === -1 ? text.length : space;
}
