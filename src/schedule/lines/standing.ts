// Where an athlete stands on a day, as far as the gates ask: level, age, mass, strength, clearances, limits, stage of a
// return. Called for every session; athletes who stand alike share a key, and so the work that hangs on it. Mass, age
// and strength are kept as bands, never as numbers, so that a squad has few keys.

import type { Athlete, DayRange, Limit, ReturnStage } from '../../plan/types.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import { ageOn, levelOn, limitsOn, returnStageOn } from '../../plan/athlete-facts.ts';
import type { RuleId } from '../../library/rules.ts';
import type { Level } from '../../library/types.ts';
import type { Day } from '../../util/days.ts';
import { GRAMS_A_KILO, PERCENT } from '../../util/units.ts';

export interface Standing {
  /** Equal for athletes and days whose gates are equal. */
  readonly key: string;
  readonly level: Level;
  /** Of the rule of ages for drops: below the lower age, below the higher, or past both. An unknown age is past both. */
  readonly age: 'child' | 'youth' | 'grown';
  /** Under the age of the rule of young lifters. */
  readonly youngLifter: boolean;
  /** Over the mass from which drops are held low, or of unknown mass. */
  readonly heavy: boolean;
  readonly strength: 'unknown' | 'below' | 'some' | 'high';
  readonly cleared: ReadonlySet<string>;
  readonly limits: readonly Limit[];
  readonly stage?: ReturnStage;
  readonly values: GateValues;
}

/** The parameters of the gates, as they stand for one athlete and week. */
export interface GateValues {
  readonly key: string;
  readonly dropAgeUnder: number;
  readonly dropAgeClearedUnder: number;
  readonly dropAgeMostCm: number;
  readonly dropMassOverKg: number;
  readonly dropMassMostCm: number;
  readonly strengthAboveCm: number;
  readonly strengthPercent: number;
  readonly highStrengthAboveCm: number;
  readonly highStrengthPercent: number;
  readonly dropHeightCm: Readonly<Record<Level, number>>;
  readonly dropCount: Readonly<Record<Level, number>>;
  readonly dropWeekTimes: number;
  readonly youthUnder: number;
  readonly youthMostPercent: number;
  readonly youthClearedPercent: number;
  readonly youthLeastReps: number;
  /** Longest that a lift for the legs is lowered, in seconds. */
  readonly mostLoweringSeconds: number;
}

/** The lift whose maximum the strength for drops is measured by. */
const STRENGTH_LIFT = 'back-squat';

/** The rules that gates take their numbers from. */
const GATES = ['drop-age', 'drop-mass', 'drop-strength', 'drop-height', 'drop-count', 'youth-load'] as const;

type Gate = (typeof GATES)[number];

/** Whether a rule is one of them. */
export const isGate = (rule: RuleId): boolean => GATES.some((gate) => gate === rule);

/**
 * The numbers of all gates over a range: heights in cm, masses in kg, strength in per cent of body mass, ages in years.
 */
export function gateValues(book: RuleBook, range: DayRange): GateValues {
  const value = (rule: Gate, parameter: string): number => getRuleValue(book, rule, parameter, range);
  const byLevel = (rule: Gate): Record<Level, number> => ({
    beginner: value(rule, 'beginner'),
    intermediate: value(rule, 'intermediate'),
    advanced: value(rule, 'advanced'),
  });
  const values = {
    dropAgeUnder: value('drop-age', 'under'),
    dropAgeClearedUnder: value('drop-age', 'cleared-under'),
    dropAgeMostCm: value('drop-age', 'most'),
    dropMassOverKg: value('drop-mass', 'over'),
    dropMassMostCm: value('drop-mass', 'most'),
    strengthAboveCm: value('drop-strength', 'above'),
    strengthPercent: value('drop-strength', 'strength'),
    highStrengthAboveCm: value('drop-strength', 'high-above'),
    highStrengthPercent: value('drop-strength', 'high-strength'),
    dropHeightCm: byLevel('drop-height'),
    dropCount: byLevel('drop-count'),
    dropWeekTimes: value('drop-count', 'a-week'),
    youthUnder: value('youth-load', 'under'),
    youthMostPercent: value('youth-load', 'most'),
    youthClearedPercent: value('youth-load', 'cleared'),
    youthLeastReps: value('youth-load', 'least-reps'),
    mostLoweringSeconds: getRuleValue(book, 'eccentric-tempo', 'most', range),
  };
  return { key: shortKey(JSON.stringify(values)), ...values };
}

const shortKeys = new Map<string, string>();

/** The same for equal texts as long as the program runs: keys are put together and looked up for every athlete and session. */
function shortKey(text: string): string {
  const known = shortKeys.get(text) ?? `v${shortKeys.size + 1}`;
  shortKeys.set(text, known);
  return known;
}

/** What of an athlete a standing is worked out from. */
export interface Body extends Pick<Athlete, 'id' | 'levels' | 'lifts' | 'cleared' | 'limits' | 'returning'> {
  readonly born?: Athlete['born'] | undefined;
  readonly massGrams?: number | undefined;
}

/** Where the athlete stands on a day, by the gates' numbers in force. */
export function standingOn(athlete: Body, day: Day, values: GateValues): Standing {
  const level = levelOn(athlete, day);
  const years = ageOn(athlete, day);
  const age = ageBand(years, values);
  const youngLifter = years !== undefined && years < values.youthUnder;
  const heavy = athlete.massGrams === undefined || athlete.massGrams > values.dropMassOverKg * GRAMS_A_KILO;
  const strength = strengthBand(athlete, values);
  const limits = limitsOn(athlete, day);
  const stage = returnStageOn(athlete, day);
  const cleared = athlete.cleared.size === 0 ? '' : [...athlete.cleared].sort().join(',');
  const bands = `${level}|${age}|${youngLifter ? 'y' : ''}|${heavy ? 'h' : ''}|${strength}|${cleared}`;
  const own = limits.length === 0 && stage === undefined ? '' : ownKey(athlete, limits, stage);
  return {
    key: `${bands}|${own}|${values.key}`,
    level,
    age,
    youngLifter,
    heavy,
    strength,
    cleared: athlete.cleared,
    limits,
    values,
    ...(stage === undefined ? {} : { stage }),
  };
}

/** As `standingOn`, worked out once for an athlete whose standing can't change between the two days. */
export function standings(athlete: Athlete, season: DayRange): (day: Day, values: GateValues) => Standing {
  const fixed = athlete.levels.length === 1 && athlete.limits.length === 0 && athlete.returning.length === 0;
  if (!fixed) return (day, values) => standingOn(athlete, day, values);
  const known = new Map<GateValues, Standing | undefined>();
  return (day, values) => {
    if (!known.has(values)) {
      const first = standingOn(athlete, season.from, values);
      known.set(values, first.key === standingOn(athlete, season.until, values).key ? first : undefined);
    }
    return known.get(values) ?? standingOn(athlete, day, values);
  };
}

/** Limits and stages carry places of the plan, which are the athlete's own. */
function ownKey(athlete: Body, limits: readonly Limit[], stage: ReturnStage | undefined): string {
  const places = limits.map((limit) => `${limit.span.file}:${limit.span.start}`).join(',');
  return `${athlete.id}:${places}:${stage === undefined ? '' : `${stage.stage}/${stage.of}@${stage.since}`}`;
}

function ageBand(years: number | undefined, values: GateValues): Standing['age'] {
  if (years === undefined) return 'grown';
  if (years < values.dropAgeUnder) return 'child';
  return years < values.dropAgeClearedUnder ? 'youth' : 'grown';
}

function strengthBand(athlete: Body, values: GateValues): Standing['strength'] {
  const max = athlete.lifts.get(STRENGTH_LIFT);
  if (max === undefined || athlete.massGrams === undefined) return 'unknown';
  const share = (max.grams * PERCENT) / athlete.massGrams;
  if (share >= values.highStrengthPercent) return 'high';
  return share >= values.strengthPercent ? 'some' : 'below';
}
