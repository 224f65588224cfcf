// The shapes of `rules:` and `waivers:`: what a coach changes in a rule, and what is waived for a while. One shape for
// each rule, made of the parameters in its row of the library.

import { RULES } from '../../library/rules.ts';
import type { RuleId, RuleRow } from '../../library/rules.ts';
import type { RuleParameter, Unit } from '../../library/types.ts';
import type { ScalarNode } from '../../read/types.ts';
import { group } from '../groups.ts';
import type { Fields } from '../groups.ts';
import { DURATION, LENGTH, MASS, readQuantity, readWholePercent } from '../quantity.ts';
import { leaf, refuse } from '../reading.ts';
import type { Reading } from '../reading.ts';
import { nameOf, text } from '../words.ts';
import { becauseKey, rangeKeys, weekKey, whoKeys } from './common.ts';
import { GRAMS_A_KILO } from '../../util/units.ts';
import type { JsonShape, Shape } from '../shape.ts';

const COUNTED = /^(\d{1,6})(?:\s+([a-z]+))?$/;

/** A parameter's value, a whole number in the unit the rule names. */
function readParameter(unit: Unit, { text: found, value }: ScalarNode): Reading<number> {
  if (value === null) return refuse('language/empty-value', { params: { wanted: exampleOf(unit) } });
  if (unit === 'percent') return readWholePercent(found);
  if (unit === 'cm') return readQuantity(LENGTH, found);
  if (unit === 'seconds') return readQuantity(DURATION, found);
  if (unit === 'kg') return wholeKilos(found);
  const match = COUNTED.exec(found);
  if (match === null || (match[2] !== undefined && !isUnitWord(match[2], unit))) {
    return refuse('language/not-a-number', { params: { found, wanted: `a whole number of ${unit}` } });
  }
  return { value: Number(match[1]) };
}

function wholeKilos(found: string): Reading<number> {
  const grams = readQuantity(MASS, found);
  if ('refused' in grams) return grams;
  if (grams.value % GRAMS_A_KILO === 0) return { value: grams.value / GRAMS_A_KILO };
  return refuse('language/too-fine', { params: { found, whole: 'kilos' } });
}

/** `day` and `days` both fit days. */
const isUnitWord = (word: string, unit: Unit): boolean => word === unit || `${word}s` === unit;

const EXAMPLES: Partial<Record<Unit, string>> = { percent: '8 %', cm: '30 cm', kg: '100 kg', seconds: '180 s' };

const exampleOf = (unit: Unit): string => EXAMPLES[unit] ?? `a whole number of ${unit}`;

const PATTERNS: Partial<Record<Unit, string>> = {
  percent: '^\\d+\\s*%$',
  cm: '^\\d+(\\.\\d+)?\\s*(cm|m|in)$',
  kg: '^\\d+(\\.\\d+)?\\s*(kg|lb)$',
  seconds: '^\\d+(\\.\\d+)?\\s*(s|min)$',
};

function parameterJson(unit: Unit): JsonShape {
  const pattern = PATTERNS[unit];
  if (pattern !== undefined) return { type: 'string', pattern, examples: [exampleOf(unit)] };
  return {
    anyOf: [
      { type: 'integer', minimum: 0 },
      { type: 'string', pattern: `^\\d+\\s+${unit.replace(/s$/, 's?')}$` },
    ],
  };
}

function parameterShape({ unit, says, value }: RuleParameter): Shape<number> {
  const usual = value === undefined ? 'none until set' : `${String(value)} ${unit}`;
  return leaf((scalar) => readParameter(unit, scalar), parameterJson(unit)).describe(`${says} (${usual})`);
}

const narrowing = { ...rangeKeys, ...weekKey, ...whoKeys, ...becauseKey };

/** What one entry below a rule holds: its parameters, for whom, when and why. */
export type RuleFields = Fields<typeof narrowing> & Readonly<Record<string, unknown>>;

function ruleShape(rule: RuleRow): Shape<RuleFields> {
  const parameters = Object.fromEntries(rule.parameters.map((one) => [one.name, parameterShape(one).optional()]));
  return group({ ...parameters, ...narrowing }).meta({ id: `rule-${rule.id}`, description: rule.holds });
}

/** The rules by their id. */
const ROWS: ReadonlyMap<string, RuleRow> = new Map(RULES.map((rule) => [rule.id, rule]));

const shapesMade = new Map<string, Shape<RuleFields>>();

/** The ids of the rules that may be changed. */
export const RULE_IDS: readonly string[] = [...ROWS.keys()];

/** One change of a rule, by its id; undefined of what is no rule. A plan changes few of them, so each is made when it is. */
export function ruleShapeOf(id: string): Shape<RuleFields> | undefined {
  const rule = ROWS.get(id);
  if (rule === undefined) return undefined;
  const shape = shapesMade.get(id) ?? ruleShape(rule);
  shapesMade.set(id, shape);
  return shape;
}

const WAIVABLE: readonly RuleId[] = RULES.filter((rule) => rule.waivable).map((rule) => rule.id);

export const waiverShape = group({
  rule: nameOf('a rule', WAIVABLE).describe('The rule that is waived.'),
  ...rangeKeys,
  ...weekKey,
  ...whoKeys,
  ...becauseKey,
  decided: text('who decided').describe('Who decided, where the rule asks for it.').optional(),
}).describe('A rule left out for a while, with the reason on record.');
