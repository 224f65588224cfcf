// Texts, words of a fixed choice, names of things, yes or no. Called by the shapes. A text that other readers of YAML would
// take for a yes, a no or nothing must be quoted, so that everybody reads the same word.

import { findControl } from '../read/hidden-characters.ts';
import type { ScalarNode } from '../read/types.ts';
import { nearest } from '../util/did-you-mean.ts';
import { inWords } from '../util/in-words.ts';
import { leaf, refuse } from './reading.ts';
import type { Reading } from './reading.ts';
import type { JsonShape, Shape } from './shape.ts';

const MOST_LETTERS = 1000;
const LINE_BREAKS = /\s*[\n\r\u0085\u2028\u2029]\s*/gu;
const AMBIGUOUS = new Set(['yes', 'no', 'on', 'off', 'true', 'false', 'null', '~']);

/** Cells of a CSV file are text to everybody. */
function isAmbiguous({ text: found, quoted, span }: ScalarNode): boolean {
  return !quoted && AMBIGUOUS.has(found.toLowerCase()) && !span.file.toLowerCase().endsWith('.csv');
}

function readText(scalar: ScalarNode, wanted: string): Reading<string> {
  if (isAmbiguous(scalar)) return refuse('language/no-word', { params: { found: scalar.text } });
  const character = findControl(scalar.text);
  if (character !== undefined) {
    return refuse('source/control-character', {
      params: { character },
      label: 'written as an escape',
      help: 'leave the escape out',
    });
  }
  // A name or a reason of several lines is told in one: a table's row is a line.
  const text = scalar.text.trim().replaceAll(LINE_BREAKS, ' ');
  if (text === '') return refuse('language/empty-value', { params: { wanted } });
  if (text.length > MOST_LETTERS) {
    return refuse('language/too-long', { params: { found: text.length, most: MOST_LETTERS } });
  }
  return { value: text };
}

/** Any text, as the schema defines it once. */
export const TEXT_DEFINITION: JsonShape = {
  anyOf: [{ type: 'string', minLength: 1, maxLength: MOST_LETTERS }, { type: 'number' }],
};
const TEXT_JSON: JsonShape = { $ref: '#/$defs/text' };

/** Any words. A number is taken as it is written. */
export function text(wanted = 'some words'): Shape<string> {
  return leaf((scalar) => readText(scalar, wanted), TEXT_JSON);
}

/** A remark, whatever it says. */
export function freeText(): Shape<string> {
  return leaf(({ text: found }) => ({ value: found }), TEXT_JSON);
}

/** The name of something defined elsewhere, with the built-in ones an editor can offer; `id` names it in the schema. */
export function nameOf(wanted: string, known: readonly string[] = [], id?: string): Shape<string> {
  const offered: JsonShape = known.length === 0 ? {} : { anyOf: [{ enum: known }, { type: 'string', minLength: 1 }] };
  return leaf((scalar) => readText(scalar, wanted), {
    ...(known.length === 0 ? TEXT_JSON : offered),
    ...(id !== undefined && { id }),
  });
}

/** One word of a fixed choice. */
export function word<const W extends string>(choice: readonly W[]): Shape<W> {
  const known: ReadonlySet<string> = new Set(choice);
  const read = ({ text: found, value }: ScalarNode): Reading<W> => {
    if (value === null) return refuse('language/empty-value', { params: { wanted: inWords(choice, 'or') } });
    if (known.has(found)) return { value: found as W };
    return refuse('language/wrong-word', {
      params: { found, wanted: inWords(choice, 'or') },
      ...meantWord(found, choice),
    });
  };
  return leaf(read, { enum: choice });
}

/** Words that tables and cards print, or that are said on the floor, with the one that is written in a plan. */
const WRITTEN: Readonly<Record<string, string>> = {
  easy: 'deload',
  light: 'deload',
  recovery: 'deload',
  build: 'load',
  loading: 'load',
  closed: 'empty',
  novice: 'beginner',
};

function meantWord(found: string, choice: readonly string[]): { readonly help?: string } {
  const written = WRITTEN[found.toLowerCase()];
  return written !== undefined && choice.includes(written) ? { help: `write ${written}` } : meantHelp(found, choice);
}

/** `help` for a word that is near known ones, or nothing. */
export function meantHelp(found: string, known: Iterable<string>): { readonly help?: string } {
  const all = [...known];
  const near = nearest(found, all);
  const meant = near === undefined ? partly(found, all) : [near];
  const quoted = meant.map((one) => `"${one}"`);
  return meant.length === 0 ? {} : { help: `did you mean ${inWords(quoted, 'or')}?` };
}

const MOST_MEANT = 5;

/** The one word that begins so, as `none` for `no`, or those that have it as a part, as `session-spacing` for `spacing`. */
function partly(found: string, known: readonly string[]): readonly string[] {
  const word = found.toLowerCase();
  if (word === '') return [];
  const longer = known.filter((one) => one.startsWith(word));
  const holding = known.filter((one) => one.split('-').includes(word));
  if (longer.length === 1 && holding.every((one) => longer.includes(one))) return longer;
  return holding.length <= MOST_MEANT ? holding : [];
}

/** `true` or `false`; `yes` and `no` read the same. */
export function yesOrNo(): Shape<boolean> {
  const read = ({ text: found, value }: ScalarNode): Reading<boolean> => {
    if (value === true || found === 'yes') return { value: true };
    if (value === false || found === 'no') return { value: false };
    return refuse('language/wrong-word', { params: { found, wanted: 'true or false' }, help: switchHint(found) });
  };
  return leaf(read, { anyOf: [{ type: 'boolean' }, { enum: ['yes', 'no'] }] });
}

function switchHint(found: string): string | undefined {
  if (/^(?:y|yes|on|1|x)$/iu.test(found)) return 'write true';
  return /^(?:n|no|off|0)$/iu.test(found) ? 'write false' : undefined;
}
