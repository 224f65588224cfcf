// Quantities with their units: masses in grams, lengths in centimetres, times in seconds, shares in per cent, sets such
// as `70 kg x 5`. Called by the shapes. Results are whole numbers by integer
// arithmetic; pounds and inches are exact to the gram and the centimetre, so that 12 in is 30 cm, as the trade has it.

import type { ScalarNode } from '../read/types.ts';
import { nearest } from '../util/did-you-mean.ts';
import { inWords } from '../util/in-words.ts';
import { leaf, refuse } from './reading.ts';
import type { Reading } from './reading.ts';
import type { Shape } from './shape.ts';

/** A unit as a fraction of the whole one: an inch is 254/100 cm. */
interface UnitFactor {
  readonly numerator: number;
  readonly denominator: number;
  /** Rounded to the nearest whole; others must come out whole. */
  readonly rounded?: true;
}

export interface Measure {
  /** What it is called: `a mass`. */
  readonly name: string;
  /** What results are whole numbers of, in words. */
  readonly whole: string;
  readonly units: Readonly<Record<string, UnitFactor>>;
  readonly example: string;
}

const one: UnitFactor = { numerator: 1, denominator: 1 };

/** Grams. A pound is 0.45359237 kg exactly (international yard and pound agreement of 1959; from memory). */
export const MASS: Measure = {
  name: 'a mass',
  whole: 'grams',
  units: {
    kg: { numerator: 1000, denominator: 1 },
    lb: { numerator: 45_359_237, denominator: 100_000, rounded: true },
  },
  example: '68 kg',
};

/** Centimetres. An inch is 2.54 cm exactly (same agreement; from memory). */
export const LENGTH: Measure = {
  name: 'a length',
  whole: 'centimetres',
  units: {
    cm: one,
    m: { numerator: 100, denominator: 1 },
    in: { numerator: 254, denominator: 100, rounded: true },
  },
  example: '30 cm',
};

/** Seconds. */
export const DURATION: Measure = {
  name: 'a time',
  whole: 'seconds',
  units: { s: one, min: { numerator: 60, denominator: 1 } },
  example: '90 s',
};

/** Tenths of a per cent, so that 67.5 % is a whole number too. */
const TENTHS_OF_PERCENT: Measure = {
  name: 'a percentage',
  whole: 'tenths of a per cent',
  units: { '%': { numerator: 10, denominator: 1 } },
  example: '80 %',
};

const QUANTITY = /^([-+]?)(\d+)(?:([.,])(\d+))?\s*(\D\S*)?$/u;

/** A number with its unit in whole units of the measure, above 0. */
export function readQuantity(measure: Measure, text: string): Reading<number> {
  const match = QUANTITY.exec(text.trim());
  if (match === null) return refuse('language/not-a-quantity', { params: { found: text, ...wantedOf(measure) } });
  const [, sign, digits = '', point, decimals = '', unit] = match;
  if (point === ',') {
    return refuse('language/decimal-comma', { params: { found: text, wanted: text.replace(',', '.') } });
  }
  if (unit === undefined)
    return refuse('language/bare-number', {
      params: { found: text, ...wantedOf(measure) },
      help: onlyUnit(measure, text),
    });
  const factor = Object.hasOwn(measure.units, unit) ? measure.units[unit] : undefined;
  if (factor === undefined) return refuseUnit(measure, text, unit);
  return inWholeUnits(measure, text, factor, {
    negative: sign === '-',
    digits: digits + decimals,
    places: decimals.length,
  });
}

/** With a single unit there is no doubt; a share below 1 was meant as so many hundredths. */
function onlyUnit(measure: Measure, text: string): string | undefined {
  if (measure !== TENTHS_OF_PERCENT || text.startsWith('-')) return undefined;
  const hundredths = /^0\.(\d{2})$/u.exec(text.trim())?.[1];
  return `write ${hundredths === undefined ? text.trim() : String(Number(hundredths))} %`;
}

interface Decimal {
  readonly negative: boolean;
  /** Without the point. */
  readonly digits: string;
  /** Digits behind the point. */
  readonly places: number;
}

function inWholeUnits(measure: Measure, text: string, factor: UnitFactor, decimal: Decimal): Reading<number> {
  const numerator = BigInt(decimal.digits) * BigInt(factor.numerator);
  const denominator = 10n ** BigInt(decimal.places) * BigInt(factor.denominator);
  if (factor.rounded !== true && numerator % denominator !== 0n) {
    return refuse('language/too-fine', { params: { found: text, whole: measure.whole } });
  }
  const whole = Number((2n * numerator + denominator) / (2n * denominator));
  if (decimal.negative || whole === 0)
    return refuse('language/not-positive', { params: { found: text, what: measure.name } });
  if (whole > MOST_WHOLE) return refuse('language/not-a-quantity', { params: { found: text, ...wantedOf(measure) } });
  return { value: whole };
}

const MOST_WHOLE = 1_000_000_000;

function refuseUnit(measure: Measure, text: string, unit: string): Reading<number> {
  const units = Object.keys(measure.units);
  const meant = ALSO_WRITTEN.get(unit.toLowerCase()) ?? nearest(unit, units);
  const right = meant !== undefined && units.includes(meant) ? meant : undefined;
  return refuse('language/wrong-unit', {
    params: { found: text, unit, ...wantedOf(measure) },
    ...(right !== undefined && { help: `write ${text.slice(0, text.length - unit.length).trim()} ${right}` }),
  });
}

/** Words people write for a unit, and the unit. */
const ALSO_WRITTEN: ReadonlyMap<string, string> = new Map(
  Object.entries({
    kgs: 'kg',
    kilo: 'kg',
    kilos: 'kg',
    lbs: 'lb',
    pound: 'lb',
    pounds: 'lb',
    '"': 'in',
    '″': 'in',
    inch: 'in',
    inches: 'in',
    metres: 'm',
    meters: 'm',
    centimetres: 'cm',
    sec: 's',
    secs: 's',
    seconds: 's',
    mins: 'min',
    minutes: 'min',
    "'": 'min',
    percent: '%',
    pct: '%',
  }),
);

function wantedOf(measure: Measure): { readonly what: string; readonly units: string; readonly example: string } {
  return { what: measure.name, units: inWords(Object.keys(measure.units), 'or'), example: measure.example };
}

/** A percentage as a number with at most one decimal. */
export function readPercent(text: string): Reading<number> {
  const tenths = readQuantity(TENTHS_OF_PERCENT, text);
  return 'value' in tenths ? { value: tenths.value / 10 } : tenths;
}

/** A percentage that must be whole. */
export function readWholePercent(text: string): Reading<number> {
  const percent = readPercent(text);
  if ('refused' in percent || Number.isInteger(percent.value)) return percent;
  return refuse('language/too-fine', { params: { found: text, whole: 'per cents' } });
}

export interface LiftSet {
  readonly grams: number;
  readonly reps: number;
}

const LIFT_SET = /^(.+?)\s*[x×]\s*(\d{1,3})$/u;

/** A set done with a load: `70 kg x 5`. */
export function readLiftSet(text: string): Reading<LiftSet> {
  const match = LIFT_SET.exec(text.trim());
  if (match === null) return refuse('language/not-a-set', { params: { found: text } });
  const grams = readQuantity(MASS, match[1] ?? '');
  const reps = Number(match[2]);
  if ('refused' in grams) return grams;
  return reps === 0
    ? refuse('language/not-a-set', { params: { found: text } })
    : { value: { grams: grams.value, reps } };
}

/** Least and most, in whole units of the measure, and how they are written. */
export interface Bounds {
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

function quantityLeaf(measure: Measure, bounds?: Bounds): Shape<number> {
  const read = ({ text, value }: ScalarNode): Reading<number> => {
    if (value === null)
      return refuse('language/empty-value', { params: { wanted: `${measure.name}, as in ${measure.example}` } });
    const reading = readQuantity(measure, text);
    if ('refused' in reading || bounds === undefined) return reading;
    if (reading.value >= bounds.from && reading.value <= bounds.to) return reading;
    return refuse('language/out-of-range', { params: { found: text, wanted: bounds.words } });
  };
  return leaf(read, { type: 'string', pattern: patternOf(measure), examples: [measure.example] });
}

function patternOf(measure: Measure): string {
  return `^\\d+(\\.\\d+)?\\s*(${Object.keys(measure.units).join('|')})$`;
}

/** Grams. */
export const mass = (bounds?: Bounds): Shape<number> => quantityLeaf(MASS, bounds);

/** Centimetres. */
export const length = (bounds?: Bounds): Shape<number> => quantityLeaf(LENGTH, bounds);

/** Seconds. */
export const duration = (): Shape<number> => quantityLeaf(DURATION);

/** Per cent with at most one decimal. */
export function percent(): Shape<number> {
  const read = ({ text, value }: ScalarNode): Reading<number> =>
    value === null
      ? refuse('language/empty-value', { params: { wanted: 'a percentage, as in 80 %' } })
      : readPercent(text);
  return leaf(read, { type: 'string', pattern: '^\\d+(\\.\\d)?\\s*%$', examples: ['80 %', '67.5 %'] });
}

/** A load and the repetitions done with it. */
export function liftSet(): Shape<LiftSet> {
  const read = ({ text, value }: ScalarNode): Reading<LiftSet> =>
    value === null
      ? refuse('language/empty-value', { params: { wanted: 'a set, as in 70 kg x 5' } })
      : readLiftSet(text);
  return leaf(read, {
    type: 'string',
    pattern: '^\\d+(\\.\\d+)?\\s*(kg|lb)\\s*[x×]\\s*\\d{1,3}$',
    examples: ['70 kg x 5'],
  });
}
