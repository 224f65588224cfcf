// The shape of `places:`: a surface and the kit that is really there, as the library lists kit. Boxes are told by their
// heights, weights by their masses. Read by ../sections.ts.

import { KIT } from '../../library/kit.ts';
import type { KitItem } from '../../library/kit.ts';
import type { KitId } from '../../library/types.ts';
import { group } from '../groups.ts';
import { count } from '../numbers.ts';
import { length, mass } from '../quantity.ts';
import { isScalar } from '../nodes.ts';
import { either, isList, oneOrMore } from '../lists.ts';
import { text } from '../words.ts';
import type { Shape } from '../shape.ts';

const MOST_PIECES = 999;

/** A number of pieces, or for boxes their heights and for weights their masses, one each. */
export type KitValue = number | readonly number[];

function kitShape(item: KitItem): Shape<KitValue> {
  const pieces = count(0, MOST_PIECES).describe(`How many ${item.many}.`);
  if (item.listed === 'count') return pieces;
  const [each, kind] = item.listed === 'heights' ? [length(), 'height'] : [mass(), 'mass'];
  return either<readonly number[], number>((input) => isMeasured(input, item), oneOrMore(each), pieces).describe(
    `The ${kind} of each of the ${item.many}.`,
  );
}

/** `boxes: 30 cm` is one box of that height; `boxes: 3`, or 3 boxes, are three of any. */
function isMeasured(input: unknown, { one }: KitItem): boolean {
  return isList(input) || (isScalar(input) && /\p{L}/u.test(input.text) && !input.text.includes(one));
}

const kitShapes = Object.fromEntries(KIT.map((item) => [item.id, kitShape(item).optional()])) as Readonly<
  Record<KitId, Shape<KitValue, true>>
>;

export const placeShape = group({
  surface: text('a surface')
    .describe(
      'What is jumped on, and nothing else: sprung floor, rubber track, grass. On concrete, asphalt, stone or tiles no drops and no drills of the high tier are planned.',
    )
    .optional(),
  kit: group({
    ...kitShapes,
    'smallest-plate': mass().describe('The lightest plate there is a pair of: loads are made of it.').optional(),
  })
    .describe('What is really there.')
    .optional(),
}).describe('A place to train.');
