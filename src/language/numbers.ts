// Plain numbers, for keys whose name says what is counted: contacts, minutes, sets. Called by the shapes. A number with
// a unit behind it is refused with the number alone as the answer.

import type { ScalarNode } from '../read/types.ts';
import type { Range } from '../library/types.ts';
import { leaf, refuse } from './reading.ts';
import type { Reading } from './reading.ts';
import type { Shape } from './shape.ts';

const WHOLE = /^\d{1,9}$/;
const DECIMAL = /^\d{1,6}(?:\.\d{1,3})?$/;
const WITH_WORDS = /^(\d+(?:\.\d+)?)\s*\D+$/;

/** A whole number within two bounds, both included. */
export function count(from: number, to: number): Shape<number> {
  const wanted = `a whole number from ${String(from)} to ${String(to)}`;
  return leaf((scalar) => readNumber(scalar, WHOLE, { from, to, wanted }), {
    type: 'integer',
    minimum: from,
    maximum: to,
  });
}

/** A number with up to three decimals within two bounds, both included. */
export function decimal(from: number, to: number): Shape<number> {
  const wanted = `a number from ${String(from)} to ${String(to)}`;
  return leaf((scalar) => readNumber(scalar, DECIMAL, { from, to, wanted }), {
    type: 'number',
    minimum: from,
    maximum: to,
  });
}

interface Wanted extends Range {
  readonly wanted: string;
}

function readNumber({ text, value }: ScalarNode, form: RegExp, { from, to, wanted }: Wanted): Reading<number> {
  if (value === null) return refuse('language/empty-value', { params: { wanted } });
  if (form.test(text)) {
    const found = Number(text);
    return found >= from && found <= to
      ? { value: found }
      : refuse('language/out-of-range', { params: { found: text, wanted } });
  }
  const number = WITH_WORDS.exec(text)?.[1];
  if (number !== undefined && form.test(number))
    return refuse('language/unit-not-wanted', { params: { found: text, number } });
  return refuse('language/not-a-number', { params: { found: text, wanted }, help: numberHint(text) });
}

/** `1.0` in the form that is read; of a range there is nothing to guess. */
function numberHint(text: string): string | undefined {
  const [, whole, decimals] = /^(\d{1,6})[.,](\d{1,3})$/u.exec(text) ?? [];
  if (whole !== undefined && decimals !== undefined) {
    return /^0+$/u.test(decimals) ? `write ${whole}` : undefined;
  }
  const [, sets, reps] = /^(\d{1,2})\s*[x*\u00d7]\s*(\d{1,3})$/iu.exec(text) ?? [];
  if (sets !== undefined && reps !== undefined) return `if sets and reps are meant, write sets: ${sets}, reps: ${reps}`;
  return /^\d+\s*[-\u2013]\s*\d+$/u.test(text) ? 'one number is wanted here, not a range' : undefined;
}

const SPAN = /^(\d{1,4})(?:\s*[-–]\s*(\d{1,4}))?$/u;

/** A range such as `3-8`; one number is a range of itself. */
export function countRange(from: number, to: number): Shape<Range> {
  const wanted = `a range such as 3-8, from ${String(from)} to ${String(to)}`;
  const read = ({ text }: ScalarNode): Reading<Range> => {
    const match = SPAN.exec(text);
    if (match === null) return refuse('language/not-a-number', { params: { found: text, wanted } });
    const least = Number(match[1]);
    const most = Number(match[2] ?? match[1]);
    if (least < from || most > to || most < least)
      return refuse('language/out-of-range', { params: { found: text, wanted } });
    return { value: { from: least, to: most } };
  };
  return leaf(read, {
    anyOf: [
      { type: 'integer', minimum: from, maximum: to },
      { type: 'string', pattern: '^\\d{1,4}\\s*[-–]\\s*\\d{1,4}$' },
    ],
    examples: ['3-8'],
  });
}
