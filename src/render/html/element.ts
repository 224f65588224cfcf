// What all pages are built of: elements that escape what they hold, and the few small things every page has. Attributes
// are HTML's own names.

import { h as createElement } from 'preact';
import type { ComponentChildren } from 'preact';
import type { GroupMark } from '../../report/group-marks.ts';

export type Content = ComponentChildren;

/** An element of a page. */
export type Element = ReturnType<typeof h>;

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element with its attributes and what it holds, all of it escaped. */
export const h = (tag: string, attributes: Attributes, ...children: readonly Content[]) =>
  createElement(tag, attributes, ...children);

/** A name as people write it, so that one written from right to left doesn't turn the words around it. */
export const name = (text: string): Element => h('bdi', { dir: 'auto' }, text);

/** Names with commas between. */
export const names = (people: readonly string[]): Content =>
  people.flatMap((person, index) => (index === 0 ? [name(person)] : [', ', name(person)]));

/** An empty box to tick or write in; nothing for those who hear the page. */
export const box = (): Element => h('span', { class: 'box', 'aria-hidden': 'true' });

/** So many boxes to tick in a row. */
export const boxes = (count: number): readonly Element[] => Array.from({ length: count }, box);

/** Strokes of each pattern across a swatch of 90 by 42. */
const PATTERNS: readonly string[] = [
  'M0 21H90',
  'M-20 62L40 -20M0 62L60 -20M20 62L80 -20M40 62L100 -20M60 62L120 -20M-40 62L20 -20',
  'M11 0V42M28 0V42M45 0V42M62 0V42M79 0V42',
  '',
  'M0 14H90M0 28H90',
  'M0 0L30 42L60 0L90 42',
  'M15 0V42M45 0V42M75 0V42M0 14H90M0 28H90',
  'M39 0V42M45 0V42M51 0V42',
];
/** The first pattern is all black. */
const SOLID_WIDTH = 60;

/** The pattern of a group, and its name in words. */
export function groupMark({ name: word, pattern }: GroupMark): Element {
  return h('span', { class: 'group' }, pattern === undefined ? null : swatch(pattern), name(word));
}

/** The pattern of a group, by its number from 0. Patterns come again where there are more groups than patterns. */
export function swatch(pattern: number): Element {
  const index = pattern % PATTERNS.length;
  return h(
    'svg',
    { class: 'swatch', viewBox: '0 0 90 42', 'aria-hidden': 'true', preserveAspectRatio: 'none' },
    h('path', {
      d: PATTERNS[index] ?? '',
      stroke: '#000',
      'stroke-width': index === 0 ? SOLID_WIDTH : 6,
      fill: 'none',
    }),
    h('rect', { x: 2, y: 2, width: 86, height: 38, fill: 'none', stroke: '#000', 'stroke-width': 4 }),
  );
}
