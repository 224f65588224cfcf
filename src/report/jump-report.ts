// Groups of trials → the figures of each: heights, indices, power, change and what is published about groups, each with
// its mark and source. Called by the command `jump`. Only what was measured the same way is set against each other.

import { POWER_EQUATIONS, TRAINING_GAINS } from '../library/jump-tests.ts';
import type { JumpTest, PowerEquation } from '../library/jump-tests.ts';
import { SOURCES } from '../library/sources.ts';
import { forecastHeight } from '../record/forecast.ts';
import {
  dynamicStrength,
  dynamicStrengthReading,
  eccentricUtilisation,
  isInsideNoise,
  modifiedReactiveStrength,
  peakPower,
  reactiveStrength,
  usualJumpError,
} from '../record/jumps.ts';
import { isSameWay, spreadOf } from '../record/trials.ts';
import type { TrialGroup } from '../record/trials.ts';
import { isoDate } from '../util/days.ts';
import { mean } from '../util/statistics.ts';
import { columns } from './table.ts';
import type { Row, Table } from './table.ts';
import { CENTIMETRES_A_METRE } from '../util/units.ts';

export interface Figure {
  readonly what: string;
  readonly value: number;
  /** Ends of an interval around the value. */
  readonly range?: { readonly low: number; readonly high: number };
  readonly unit: string;
  /** Places that are worth showing, at most two. */
  readonly places: number;
  readonly note?: string;
  /** How well the formula is known; absent for what is only counted or averaged. */
  readonly basis?: string;
}

export interface JumpPage {
  readonly group: TrialGroup;
  readonly figures: readonly Figure[];
}

export interface JumpFacts {
  /** Body mass in kg. */
  readonly mass?: number;
  /** Where they are known, equations made from other people are left out. */
  readonly sex?: 'female' | 'male';
  /** In whole years. */
  readonly age?: number;
  /** Mean height of an earlier test done the same way, in metres. */
  readonly before?: number;
}

/** A page for each group, in order. */
export function reportJumps(groups: readonly TrialGroup[], facts: JumpFacts): readonly JumpPage[] {
  return groups.map((group) => ({
    group,
    figures: [
      ...spreadFigures(group),
      ...contactFigures(group),
      ...powerFigures(group, facts),
      ...pairFigures(group, groups),
      ...changeFigures(group, beforeOf(group, groups) ?? facts.before),
      ...forecastFigures(group),
    ],
  }));
}

const UNITS = { height: 'cm', force: 'N', index: '' } as const;
const PLACES = { height: 1, force: 0, index: 2 } as const;
const RATIO = { unit: '', places: PLACES.index } as const;

/** A value in the unit and with the places of what is measured. */
const scaled = (value: number, measure: TrialGroup['measure']): Pick<Figure, 'value' | 'unit' | 'places'> => ({
  value: measure === 'height' ? value * CENTIMETRES_A_METRE : value,
  unit: UNITS[measure],
  places: PLACES[measure],
});

function spreadFigures({ values, measure, trials }: TrialGroup): readonly Figure[] {
  const { count, mean: middle, best, deviation } = spreadOf(values);
  const flight = trials.every((trial) => trial.unit === 's' || trial.unit === 'ms');
  const basis = flight ? { basis: 'J1' } : {};
  const name = measure === 'height' ? 'height' : measure;
  if (count === 1) return [{ what: name, ...scaled(middle, measure), ...basis }];
  return [
    { what: `${name}, mean`, ...scaled(middle, measure), note: `of ${count} trials`, ...basis },
    { what: `${name}, best`, ...scaled(best, measure) },
    { what: 'spread of the trials', ...scaled(deviation ?? 0, measure), note: 'sample SD' },
  ];
}

function contactFigures({ trials, values }: TrialGroup): readonly Figure[] {
  const reactive = trials.flatMap(({ contactSeconds }, index) =>
    contactSeconds === undefined ? [] : [reactiveStrength(values[index] ?? 0, contactSeconds)],
  );
  const modified = trials.flatMap(({ takeOffSeconds }, index) =>
    takeOffSeconds === undefined ? [] : [modifiedReactiveStrength(values[index] ?? 0, takeOffSeconds)],
  );
  return [
    ...ratioFigure('reactive strength index', reactive, 'J3'),
    ...ratioFigure('modified reactive strength index', modified, 'J4'),
  ];
}

function ratioFigure(what: string, values: readonly number[], basis: string): readonly Figure[] {
  return values.length === 0 ? [] : [{ what, value: mean(values), ...RATIO, basis }];
}

/**
 * By every equation made from this test and from such people, as none is right for everybody; none of them had arms
 * swinging.
 */
function powerFigures({ values, measure, test, arms }: TrialGroup, facts: JumpFacts): readonly Figure[] {
  const { mass } = facts;
  if (mass === undefined || measure !== 'height' || arms === true) return [];
  return POWER_EQUATIONS.filter((equation) => equation.test === test && isFor(equation, facts)).map((equation) => ({
    what: 'peak power',
    value: peakPower(equation, mean(values), mass),
    unit: 'W',
    places: 0,
    note: `${equation.name}, ${equation.people}`,
    basis: equation.basis,
  }));
}

const isFor = ({ sex, ages }: PowerEquation, facts: JumpFacts): boolean =>
  (sex === undefined || facts.sex === undefined || sex === facts.sex) &&
  (facts.age === undefined || (ages.from <= facts.age && facts.age <= (ages.to ?? Infinity)));

/** Ratios of two tests, told with the counter-movement jump. */
function pairFigures(group: TrialGroup, groups: readonly TrialGroup[]): readonly Figure[] {
  if (group.test !== 'countermovement-jump') return [];
  const sameDay = groups.filter((one) => one.day === group.day);
  if (group.measure === 'height') {
    const squat = sameDay.find((one) => one.test === 'squat-jump' && isSameWay(one, group));
    if (squat === undefined) return [];
    const value = eccentricUtilisation(mean(group.values), mean(squat.values));
    const note = 'to look at, not to prescribe from';
    return [{ what: 'eccentric utilisation ratio', value, ...RATIO, note, basis: 'J5' }];
  }
  const isometric = sameDay.find(
    (one) => one.test === 'isometric-pull' && one.measure === 'force' && one.athlete === group.athlete,
  );
  if (group.measure !== 'force' || isometric === undefined) return [];
  const index = dynamicStrength(mean(group.values), mean(isometric.values));
  const reading = dynamicStrengthReading(index);
  const note = `${reading === undefined ? 'between the two kinds of work' : `read by some as asking for ${reading} work`}; contested`;
  return [{ what: 'dynamic strength index', value: index, ...RATIO, note, basis: 'J6' }];
}

/** Mean height of the last earlier day of the same test, done the same way. */
function beforeOf(group: TrialGroup, groups: readonly TrialGroup[]): number | undefined {
  const { day } = group;
  if (day === undefined) return undefined;
  const earlier = groups
    .filter((one) => one.test === group.test && isSameWay(one, group) && one.day !== undefined && one.day < day)
    .toSorted((a, b) => (a.day ?? 0) - (b.day ?? 0));
  const last = earlier.at(-1);
  return last === undefined ? undefined : mean(last.values);
}

function changeFigures({ values, measure }: TrialGroup, before: number | undefined): readonly Figure[] {
  if (before === undefined || measure !== 'height') return [];
  const change = mean(values) - before;
  const error = usualJumpError(before);
  const inside = isInsideNoise(change, error);
  return [
    {
      what: 'change of the mean',
      ...scaled(change, measure),
      note: inside ? 'inside the noise' : 'more than noise',
    },
    { what: 'typical error', ...scaled(error, measure), note: 'published, between days', basis: 'J11' },
  ];
}

function forecastFigures({ values, measure, test, arms }: TrialGroup): readonly Figure[] {
  const known = TRAINING_GAINS.find((gain) => gain.test === test)?.test;
  if (known === undefined || measure !== 'height' || arms === undefined) return [];
  const found = forecastOf(known, arms, mean(values));
  return found === undefined ? [] : [found];
}

function forecastOf(test: JumpTest, arms: boolean, height: number): Figure | undefined {
  const found = forecastHeight(test, arms, height);
  if (found === undefined) return undefined;
  return {
    what: 'where groups stood after jump training',
    ...scaled(found.mean, 'height'),
    range: { low: found.low * CENTIMETRES_A_METRE, high: found.high * CENTIMETRES_A_METRE },
    note: 'averages of groups, no promise to a person',
    basis: 'J15',
  };
}

/** The value, or the range around it, with the places worth showing. */
export function figureWords({ what, value, range, places }: Figure): string {
  const sign = what.startsWith('change') && value >= 0 ? '+' : '';
  const number = `${sign}${value.toFixed(places)}`;
  return range === undefined ? number : `${range.low.toFixed(places)} to ${range.high.toFixed(places)}`;
}

const COLUMNS = [
  ...columns('text', 'athlete'),
  ...columns('date', 'date'),
  ...columns('text', 'test', 'method'),
  ...columns('word', 'arms'),
  ...columns('integer', 'trials'),
  ...columns('word', 'figure'),
  ...columns('decimal', 'value', 'low', 'high'),
  ...columns('word', 'unit', 'note', 'mark'),
  ...columns('text', 'source'),
];

/** One row for each figure. */
export function jumpTable(pages: readonly JumpPage[]): Table {
  return { name: 'jumps', columns: COLUMNS, rows: pages.flatMap((page) => page.figures.map((one) => row(page, one))) };
}

function row({ group }: JumpPage, { what, value, range, places, unit, note, basis }: Figure): Row {
  const { athlete, day, test, method, arms, values } = group;
  const source = sourceOf(basis);
  const rounded = (number: number | undefined): number | undefined =>
    number === undefined ? undefined : Number(number.toFixed(places));
  return [
    athlete,
    day === undefined ? undefined : isoDate(day),
    test,
    method,
    arms === undefined ? undefined : arms ? 'yes' : 'no',
    values.length,
    what,
    rounded(value),
    rounded(range?.low),
    rounded(range?.high),
    unit,
    note,
    source?.mark,
    source?.source,
  ];
}

/** The row of the library that a figure rests on. */
export function sourceOf(basis: string | undefined): (typeof SOURCES)[number] | undefined {
  return basis === undefined ? undefined : SOURCES.find(({ id }) => id === basis);
}
