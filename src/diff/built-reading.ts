// Reads values out of a JSON document and keeps what is wrong with it, each with the way that leads to it: `athletes[3].id`.
// A value that is wrong is read as one that is harmless, so that the rest can be looked at too. Used by read-built.ts.

import { parseIsoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';

export interface Reading {
  /** Of the problems the first few. */
  readonly problems: string[];
}

/** A value and the way to it. */
export interface Found {
  readonly at: string;
  readonly value: unknown;
}

const MOST_PROBLEMS = 20;

function wrong(reading: Reading, { at, value }: Found, wanted: string): void {
  if (reading.problems.length >= MOST_PROBLEMS) return;
  const is = value === undefined ? 'is missing' : `is ${shortly(value)}`;
  reading.problems.push(`${at === '' ? 'the document' : at} ${is}, and should be ${wanted}`);
}

const MOST_CHARACTERS = 40;

function shortly(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of keys';
  const text = JSON.stringify(value) ?? '';
  return text.length > MOST_CHARACTERS ? `${text.slice(0, MOST_CHARACTERS)}…` : text;
}

/** The value under a key of what should be a group of keys; undefined where there is none. */
export function under({ at, value }: Found, key: string): Found {
  const path = at === '' ? key : `${at}.${key}`;
  const isGroup = typeof value === 'object' && value !== null && !Array.isArray(value) && Object.hasOwn(value, key);
  return { at: path, value: isGroup ? (value as Readonly<Record<string, unknown>>)[key] : undefined };
}

/** Whether the document has the value at all; null is one. */
export const isThere = ({ value }: Found): boolean => value !== undefined;

/** A text; empty where it isn't one. */
export function readText(reading: Reading, found: Found): string {
  if (typeof found.value === 'string') return found.value;
  wrong(reading, found, 'a text');
  return '';
}

/** One of a few words. */
export function readWord<T extends string>(reading: Reading, found: Found, words: readonly T[]): T | undefined {
  const word = words.find((one) => one === found.value);
  if (word === undefined) wrong(reading, found, words.length > 4 ? 'a word footfall knows' : words.join(' or '));
  return word;
}

/** A number that is not negative, to the thousandth. */
export function readNumber(reading: Reading, found: Found): number {
  if (typeof found.value === 'number' && Number.isFinite(found.value) && found.value >= 0) return found.value;
  wrong(reading, found, 'a number of 0 or more');
  return 0;
}

/** A whole number that is not negative; 0 where it isn't one. */
export function readWhole(reading: Reading, found: Found): number {
  if (Number.isSafeInteger(found.value) && Number(found.value) >= 0) return Number(found.value);
  wrong(reading, found, 'a whole number of 0 or more');
  return 0;
}

/** Yes or no; no where it is neither. */
export function readTruth(reading: Reading, found: Found): boolean {
  if (typeof found.value === 'boolean') return found.value;
  wrong(reading, found, 'true or false');
  return false;
}

/** A date in ISO form; the day 0 where it isn't one. */
export function readDay(reading: Reading, found: Found): Day {
  const day = typeof found.value === 'string' ? parseIsoDate(found.value) : undefined;
  if (day !== undefined) return day;
  wrong(reading, found, 'a date like 2027-03-01');
  return 0;
}

/** A list, each item read with its own way to it; empty where it isn't one. */
export function readList<T>(reading: Reading, found: Found, read: (item: Found) => T): readonly T[] {
  if (!Array.isArray(found.value)) {
    wrong(reading, found, 'a list');
    return [];
  }
  return found.value.map((value: unknown, index) => read({ at: `${found.at}[${index}]`, value }));
}
