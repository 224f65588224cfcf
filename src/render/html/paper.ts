// The paper pages are printed on, in millimetres: what is left inside the margins that every printer can reach. Read by
// everything that is laid out.

export type Paper = 'a4' | 'letter';

export interface PaperSize {
  /** As the page rule of a stylesheet names it. */
  readonly name: string;
  /** Of the upright sheet. */
  readonly width: number;
  readonly height: number;
}

export const PAPERS: Readonly<Record<Paper, PaperSize>> = {
  a4: { name: 'A4', width: 210, height: 297 },
  letter: { name: 'letter', width: 215.9, height: 279.4 },
};

/** Margins on all sides. */
export const MARGIN = 7.5;

/** Width and height that can be printed on. */
export function printable(paper: Paper, orientation: 'portrait' | 'landscape'): { width: number; height: number } {
  const { width, height } = PAPERS[paper];
  const upright = { width: width - 2 * MARGIN, height: height - 2 * MARGIN };
  return orientation === 'portrait' ? upright : { width: upright.height, height: upright.width };
}
