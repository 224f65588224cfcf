// Texts of the command line to values. A value that can't be read is refused in the words of the command line, and the
// command ends with the status of a wrong command.

import { InvalidArgumentError } from 'commander';
import { parseIsoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { GRAMS_A_KILO, GRAMS_A_POUND } from '../util/units.ts';

/** Of `2027-03-01`. */
export function parseDate(text: string): Day {
  const day = parseIsoDate(text);
  if (day === undefined) throw new InvalidArgumentError('A date is written 2027-03-01, and must exist.');
  return day;
}

/**
 * A folder that is named; of an empty variable in a script nothing is left, and that would be the folder one is in. Who
 * writes - means a stream, and a folder of that name is hard to be rid of.
 */
export function parseFolder(text: string): string {
  if (text === '-') throw new InvalidArgumentError('A folder is wanted, and - is none; ./- is one of that name.');
  if (text.trim() === '') throw new InvalidArgumentError('A folder has a name, or is . for the one you are in.');
  return text;
}

/** Adds to the list so far: an option may be given again, and names several things with commas between. */
export function parseNames(text: string, before: readonly string[] = []): readonly string[] {
  const names = text.split(',').map((name) => name.trim());
  if (names.includes('')) throw new InvalidArgumentError('Names stand with a comma between: mira,tuva.');
  return [...before, ...names];
}

/** One of so many parts, the first being 1. */
export interface Shard {
  readonly part: number;
  readonly of: number;
}

/** Of `2/8`: the second of eight. */
export function parseShard(text: string): Shard {
  const [, part, of] = (/^([1-9]\d{0,4})\/([1-9]\d{0,4})$/u.exec(text) ?? []).map(Number);
  if (part === undefined || of === undefined || part > of)
    throw new InvalidArgumentError('A shard is written 2/8: the second of eight.');
  return { part, of };
}

/** Of `120`: a whole number of contacts. */
export function parseContacts(text: string): number {
  if (!/^[1-9]\d{0,4}$/u.test(text)) throw new InvalidArgumentError('Contacts are a whole number: 120.');
  return Number(text);
}

/** A number with its unit, as it was typed. */
export interface Amount {
  readonly value: number;
  readonly unit: string;
}

const AMOUNT = /^(\d+(?:\.\d+)?) ?([A-Za-z]+)$/u;

function parseAmount(text: string, units: readonly string[]): Amount {
  const [, number, unit = ''] = AMOUNT.exec(text.trim()) ?? [];
  const value = Number(number);
  if (!units.includes(unit) || !(value > 0))
    throw new InvalidArgumentError(`Write a number and its unit: ${units.map((one) => `0.5 ${one}`).join(' or ')}.`);
  return { value, unit };
}

const parseAmounts = (text: string, units: readonly string[]): readonly Amount[] =>
  text.split(',').map((one) => parseAmount(one, units));

/** Jumps as heights or as times in the air, with commas between: `32.1 cm, 33 cm` or `0.51 s, 0.52 s`. */
export const parseJumps = (text: string): readonly Amount[] => parseAmounts(text, ['cm', 'm', 'in', 's', 'ms']);

/** A length with its unit, above 0: `38 cm`. */
export const parseHeight = (text: string): Amount => parseAmount(text, ['cm', 'm', 'in']);

/** Times with their unit, separated by commas: `210 ms,205 ms`. */
export const parseTimes = (text: string): readonly Amount[] => parseAmounts(text, ['s', 'ms']);

/** Forces in newtons, separated by commas: `1800 N,1850 N`. */
export const parseForces = (text: string): readonly Amount[] => parseAmounts(text, ['N']);

/** Of `68 kg` or `150 lb`, in kg. */
export function parseMass(text: string): number {
  const { value, unit } = parseAmount(text, ['kg', 'lb']);
  return unit === 'kg' ? value : (value * GRAMS_A_POUND) / GRAMS_A_KILO;
}
