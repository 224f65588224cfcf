// What the parts of the wall chart share: sizes of type, where each week stands, and words set at a point. Measures are
// millimetres.

import { scaleBand } from 'd3-scale';
import { h } from './element.ts';
import type { Element } from './element.ts';

/** Where the first week begins. */
export const LEFT = 25;
/** Type of nine points and more, in millimetres. */
export const SMALL = 3.3;
export const USUAL = 3.9;
export const LARGE = 5.2;

export interface Across {
  readonly left: (week: number) => number;
  readonly middle: (week: number) => number;
  readonly width: number;
}

/** So many weeks of one width between LEFT and the right edge, in mm. */
export function weeksAcross(count: number, width: number): Across {
  const scale = scaleBand<number>()
    .domain(Array.from({ length: count }, (_, index) => index))
    .range([LEFT, width]);
  const left = (week: number): number => round(scale(week) ?? LEFT);
  return { left, middle: (week) => round(left(week) + scale.bandwidth() / 2), width: round(scale.bandwidth()) };
}

/** To hundredths, which no printer shows. */
export const round = (value: number): number => Math.round(100 * value) / 100;

/** Words with their base line at a point, in mm. */
export const text = (
  x: number,
  y: number,
  size: number,
  words: string | number,
  attributes: Record<string, string> = {},
): Element => h('text', { x: round(x), y: round(y), 'font-size': size, ...attributes }, words);

export const centred = { 'text-anchor': 'middle' };
export const bold = { 'font-weight': 'bold' };
