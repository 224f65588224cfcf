// The parts of a diff in words, for every format that is read by people. Contacts, kilos and days come as they are from
// diff-report.ts.

import type { SheetTotals } from '../diff/types.ts';
import { NONE } from './diff-points.ts';
import type { DiffGroup, DiffReport, DiffSection } from './diff-report.ts';
import { loadNumber, loadUnit } from '../util/quantities.ts';
import type { Units } from '../util/quantities.ts';
import { counted } from '../util/counted.ts';
import { inWords } from '../util/in-words.ts';

/** `follows from competition County cup final`, `follows from rule weekly-rise and practice on monday together`. */
export function causeWords({ cause, how, edits }: DiffSection, report: DiffReport): string {
  const names = edits.flatMap((index) => report.edits[index]?.name ?? []);
  if (!report.editsKnown) return 'a side without its plan: what was edited is not known';
  if (names.length === 0) return 'follows from nothing in the plan: time went on, or the rules or the library changed';
  const word = cause === 'edited' ? 'edited' : 'follows from';
  switch (how) {
    case 'one':
      return `${word} ${names.join('')}`;
    case 'each':
      return `${word} ${names.join('; or ')}: each alone gives the same`;
    case 'together':
      return `${word} ${inWords(names, 'and')} together`;
    case 'any':
      return `${word} ${names.join('; or ')}`;
  }
}

/** Said where changes stand under edits that weren't tried. */
export const NOT_TOLD_APART =
  'The edits were too many to try one by one: changes stand under the edits nearest to them, and may have come of others.';

/** `contacts 165 → 150`, `Back squat 72.5 kg → 75 kg`, `contacts -10 to -45`. */
export function pointWords({ point, range }: DiffGroup, { units }: Pick<DiffReport, 'units'>): string {
  const { before, after } = point;
  const subject = point.subject === '' ? SUBJECTS[point.kind] : point.subject;
  if (point.kind === 'blocked' && before === NONE) return `${subject} ${after}`;
  if (before === NONE) return `${subject} in: ${after}`;
  if (after === NONE) return `${subject} out: ${before}`;
  if (range === undefined) return `${subject} ${before} → ${after}`;
  const load = point.kind === 'load';
  const moves = [range.least, range.most].map((moved) => signed(load ? movedLoad(moved, units) : moved));
  return `${subject} ${moves.join(' to ')}${load ? ` ${loadUnit(units)}` : ''}`;
}

/** Rounded towards nothing: a step down of half a pound more would be none there is. */
const movedLoad = (grams: number, units: Units): number =>
  Math.sign(grams) * Number(loadNumber(Math.abs(grams), units));

const SUBJECTS = {
  blocked: 'week',
  phase: 'phase',
  kind: 'week',
  contacts: 'contacts',
  session: 'session',
  move: 'session',
  share: 'session',
  drill: 'drill',
  lift: 'lift',
  load: 'load',
  drop: 'drop',
} as const;

const signed = (value: number): string => `${value > 0 ? '+' : ''}${value}`;

/** More than this are counted. */
const MOST_NAMES = 3;

/** `Mira K., Tuva H.`, or `11 athletes`. */
export function whoWords({ names }: DiffGroup): string {
  return names.length > MOST_NAMES ? counted(names.length, 'athlete') : names.join(', ');
}

/** `contacts 12450 → 12610 (+160), sessions 96 → 97 (+1), athletes 12`. */
export function totalWords({ before, after, underWay }: DiffReport['totals']): string {
  const total = (name: keyof SheetTotals, words: string = name): string =>
    before[name] === after[name]
      ? `${words} ${after[name]}`
      : `${words} ${before[name]} → ${after[name]} (${signed(after[name] - before[name])})`;
  const sessions = total('sessions', underWay ? 'sessions of weeks still to come' : 'sessions');
  return `In all: ${total('contacts')}, ${sessions}, ${total('athletes')}.`;
}
