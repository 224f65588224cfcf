// The Monday page as tables, for spreadsheets and scripts: one for each of its parts. Athletes in the order of the plan.

import type { JumpTrend } from './review/jump-trends.ts';
import type { ProgrammeForecast } from './review/programme-forecast.ts';
import { TREND_UNITS, trendValue, verdictOf } from './review/trend-words.ts';
import type { WeekDone } from './review/athlete-weeks.ts';
import type { ToldItem } from './review/told-item.ts';
import { isoDate } from '../util/days.ts';
import { jumpTable } from './jump-report.ts';
import { kilos } from '../util/quantities.ts';
import type { Review } from './review.ts';
import type { AthleteReview } from './review/athlete-review.ts';
import type { ReviewTableName } from './review-table-names.ts';
import { columns, rowOf } from './table.ts';
import type { Cells, Column, Table } from './table.ts';

export const REVIEW_TABLES: Readonly<Record<ReviewTableName, (review: Review) => Table>> = {
  decisions: ({ decisions }) => itemTable('decisions', decisions),
  exceptions: ({ exceptions }) => itemTable('exceptions', exceptions),
  ahead: ({ ahead }) => itemTable('ahead', ahead),
  weeks: ({ athletes }) => tableOf('weeks', WEEK_COLUMNS, athletes, ({ id, weeks }) => weeks.map(weekCells(id))),
  tests: ({ athletes }) => tableOf('tests', TEST_COLUMNS, athletes, ({ id, trends }) => trends.map(trendCells(id))),
  figures: ({ athletes }) => ({ ...jumpTable(athletes.flatMap(({ figures }) => figures)), name: 'figures' }),
  forecast: ({ athletes }) =>
    tableOf('forecast', FORECAST_COLUMNS, athletes, ({ id, forecasts }) => forecasts.map(forecastCells(id))),
  kilos: ({ athletes }) => tableOf('kilos', KILO_COLUMNS, athletes, kiloCells),
};

function tableOf<T>(
  name: string,
  of: readonly Column[],
  items: readonly T[],
  cells: (item: T) => readonly Cells[],
): Table {
  return { name, columns: of, rows: items.flatMap((item) => cells(item).map((one) => rowOf(of, one))) };
}

const ITEM_COLUMNS = [...columns('word', 'kind'), ...columns('text', 'athlete', 'what', 'changes', 'places')];

/** A row for each athlete an item is about. */
const itemTable = (name: string, items: readonly ToldItem[]): Table =>
  tableOf(name, ITEM_COLUMNS, items, ({ kind, athletes, words, changes, places }) =>
    athletes.map((athlete) => ({ kind, athlete, what: words, changes, places: places.join(' ') })),
  );

const WEEK_COLUMNS = [
  ...columns('text', 'athlete'),
  ...columns('integer', 'week'),
  ...columns('date', 'starts'),
  ...columns('integer', 'sessions', 'sessions_recorded', 'planned', 'done', 'counted', 'other_jumps', 'all_jumps'),
  ...columns('integer', 'change_percent'),
  ...columns('decimal', 'ratio_4_weeks', 'effort', 'load'),
  ...columns('integer', 'load_gaps'),
  ...columns('decimal', 'monotony', 'strain'),
];

const weekCells =
  (athlete: string) =>
  ({ week, starts, sessions, planned, done, counted, otherJumps, allJumps, change, ratio, felt }: WeekDone): Cells => ({
    athlete,
    week,
    starts: isoDate(starts),
    sessions: sessions.filter((one) => one.planned !== undefined).length,
    sessions_recorded: sessions.filter(({ rows }) => rows.length > 0).length,
    planned,
    done,
    counted,
    other_jumps: otherJumps,
    all_jumps: allJumps,
    change_percent: change,
    ratio_4_weeks: rounded(ratio, 2),
    effort: rounded(felt.effort, 1),
    load: rounded(felt.load, 1),
    load_gaps: felt.gaps,
    monotony: rounded(felt.monotony, 2),
    strain: rounded(felt.strain, 0),
  });

const TEST_COLUMNS = [
  ...columns('text', 'athlete'),
  ...columns('date', 'date'),
  ...columns('text', 'test', 'method'),
  ...columns('word', 'arms'),
  ...columns('integer', 'trials'),
  ...columns('decimal', 'mean'),
  ...columns('word', 'unit'),
  ...columns('date', 'before_date'),
  ...columns('decimal', 'before', 'change', 'typical_error', 'worthwhile'),
  ...columns('word', 'verdict'),
];

const trendCells =
  (athlete: string) =>
  (trend: JumpTrend): Cells => {
    const { group, before } = trend;
    const scale = (value: number | undefined): number | undefined =>
      value === undefined ? undefined : trendValue(group.measure, value);
    return {
      athlete,
      date: group.day === undefined ? undefined : isoDate(group.day),
      test: group.test,
      method: group.method,
      arms: group.arms === undefined ? undefined : group.arms ? 'yes' : 'no',
      trials: group.values.length,
      mean: scale(trend.mean),
      unit: TREND_UNITS[group.measure],
      before_date: before?.group.day === undefined ? undefined : isoDate(before.group.day),
      before: scale(before?.mean),
      change: scale(trend.change),
      typical_error: scale(trend.typicalError),
      worthwhile: scale(trend.worthwhile),
      verdict: verdictOf(trend),
    };
  };

const FORECAST_COLUMNS = [
  ...columns('text', 'athlete', 'test', 'method'),
  ...columns('word', 'arms'),
  ...columns('date', 'from_date'),
  ...columns('decimal', 'from', 'groups_mean', 'groups_low', 'groups_high'),
  ...columns('word', 'unit'),
  ...columns('integer', 'weeks', 'contacts'),
];

const forecastCells =
  (athlete: string) =>
  ({ group, mean, after, weeks, contacts }: ProgrammeForecast): Cells => ({
    athlete,
    test: group.test,
    method: group.method,
    arms: group.arms === undefined ? undefined : group.arms ? 'yes' : 'no',
    from_date: group.day === undefined ? undefined : isoDate(group.day),
    from: trendValue(group.measure, mean),
    groups_mean: trendValue(group.measure, after.mean),
    groups_low: trendValue(group.measure, after.low),
    groups_high: trendValue(group.measure, after.high),
    unit: TREND_UNITS[group.measure],
    weeks,
    contacts,
  });

const KILO_COLUMNS = [
  ...columns('text', 'athlete', 'lift'),
  ...columns('date', 'tested'),
  ...columns('decimal', 'max_kg', 'plan_max_kg'),
  ...columns('date', 'date'),
  ...columns('text', 'exercise'),
  ...columns('decimal', 'before_kg', 'after_kg'),
];

const kiloCells = ({ id, maxima }: AthleteReview): readonly Cells[] =>
  maxima.flatMap(({ max, before, next }) =>
    next.map((line) => ({
      athlete: id,
      lift: max.lift,
      tested: max.on === undefined ? undefined : isoDate(max.on),
      max_kg: kilos(max.grams),
      plan_max_kg: before === undefined ? undefined : kilos(before.grams),
      date: isoDate(line.day),
      exercise: line.exercise,
      before_kg: line.before === undefined ? undefined : kilos(line.before),
      after_kg: line.after === undefined ? undefined : kilos(line.after),
    })),
  );

const rounded = (value: number | undefined, places: number): number | undefined =>
  value === undefined ? undefined : Number(value.toFixed(places));
