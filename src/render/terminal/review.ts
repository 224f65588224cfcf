// The Monday page on a terminal: what to decide, what went otherwise, then the numbers, and where they are from.

import { dateWithYear, dateWords, weekdayName } from '../../report/calendar-words.ts';
import { LOAD_NOTES, TEST_NOTES } from '../../report/review-notes.ts';
import { TREND_UNITS, trendNumber, verdictOf } from '../../report/review-tables.ts';
import type { AthleteReview, Review } from '../../report/review.ts';
import type { JumpTrend } from '../../report/review/jump-trends.ts';
import type { WeekDone } from '../../report/review/athlete-weeks.ts';
import type { ToldItem } from '../../report/review/told-item.ts';
import type { Figure, JumpPage } from '../../report/jump-report.ts';
import type { Canvas } from './canvas.ts';
import { renderCautions } from './cautions.ts';
import { figureValue } from './jump.ts';
import { hanging, layOut } from './layout.ts';
import type { LayoutColumn } from './layout.ts';

export function* renderReview(review: Review, canvas: Canvas): Iterable<string> {
  yield* heading(review, canvas);
  yield* section('To decide', decisions(review.decisions, canvas), canvas);
  yield* section('Otherwise than written', exceptions(review.exceptions, canvas), canvas);
  yield* section('Planned and done, jump contacts', plannedAndDone(review, canvas), canvas);
  yield* section('How last week was', lastWeek(review, canvas), canvas);
  yield* section('Jump tests', trends(review, canvas), canvas);
  yield* section('Worked out from them', figures(review, canvas), canvas);
  yield* section('Best jumpers, whose knees to watch', best(review, canvas), canvas);
  yield* section('Waivers in force', waivers(review, canvas), canvas);
  yield '';
  yield* renderCautions(canvas);
}

function* heading({ title, day, week, mark, recorded }: Review, { palette, width }: Canvas): Iterable<string> {
  yield palette.strong(`${weekdayName(day)} ${dateWithYear(day)}: ${title}`);
  const facts = [
    ...(week === undefined ? [] : [`week ${week}`]),
    `build ${mark}`,
    ...(recorded.of === 0 ? [] : [`last week complete on record for ${recorded.complete} of ${recorded.of}`]),
    'not for the wall: it names reasons of health',
  ];
  yield* hanging('', facts.join(' · '), width).map((line) => palette.quiet(line));
}

/** A heading over lines; nothing where there are none. */
function* section(title: string, lines: readonly string[], { palette }: Canvas): Iterable<string> {
  if (lines.length === 0) return;
  yield '';
  yield palette.strong(title);
  yield* lines;
}

function decisions(items: readonly ToldItem[], { palette, width }: Canvas): readonly string[] {
  if (items.length === 0) return ['nothing'];
  const inset = String(items.length).length + 2;
  return items.flatMap(({ names, words, changes, places }, index) => [
    ...hanging(String(index + 1).padEnd(inset), `${names.join(', ')}: ${words}`, width, palette.strong),
    ...(changes === undefined ? [] : hanging(' '.repeat(inset), changes, width)),
    ...(places.length === 0 ? [] : hanging(' '.repeat(inset), places.join(', '), width).map(palette.quiet)),
  ]);
}

function exceptions(items: readonly ToldItem[], { palette, width }: Canvas): readonly string[] {
  if (items.length === 0) return ['nothing: all of it went as written'];
  const columns: readonly LayoutColumn<ToldItem>[] = [
    { title: '', align: 'left', text: ({ kind }) => kind },
    { title: '', align: 'left', text: ({ names, words }) => `${names.join(', ')}: ${words}`, wrapAt: 24 },
    { title: '', align: 'left', text: ({ places }) => places.join(', '), spare: 1, paint: palette.quiet },
  ];
  return layOut(items, columns, width, palette.quiet).slice(1);
}

function plannedAndDone({ athletes, weeks }: Review, { palette, width }: Canvas): readonly string[] {
  if (weeks.length === 0) return [];
  const columns: readonly LayoutColumn<AthleteReview>[] = [
    { title: 'done of planned', align: 'left', text: ({ name }) => name },
    ...weeks.map(({ week, starts }): LayoutColumn<AthleteReview> => ({
      title: dateWords(starts),
      align: 'right',
      text: (athlete) => doneWords(athlete.weeks.find((one) => one.week === week)),
    })),
  ];
  return [
    ...layOut(athletes, columns, width, palette.quiet),
    ...hanging('', LOAD_NOTES.planned, width).map(palette.quiet),
  ];
}

const doneWords = (week: WeekDone | undefined): string =>
  week === undefined ? '' : `${week.done ?? '?'} of ${week.planned}`;

interface LastWeek {
  readonly name: string;
  readonly last: WeekDone;
}

function lastWeek({ athletes }: Review, { palette, width }: Canvas): readonly string[] {
  const rows = athletes.flatMap(({ name, weeks }): readonly LastWeek[] => {
    const last = weeks.at(-1);
    return last === undefined ? [] : [{ name, last }];
  });
  if (rows.length === 0) return [];
  return [
    ...layOut(rows, LAST_WEEK_COLUMNS, width, palette.quiet),
    ...[LOAD_NOTES.jumps, LOAD_NOTES.load].flatMap((note) => hanging('', note, width)).map(palette.quiet),
  ];
}

const optional = (value: number | undefined, words: (value: number) => string): string =>
  value === undefined ? '' : words(value);

const LAST_WEEK_COLUMNS: readonly LayoutColumn<LastWeek>[] = [
  { title: 'athlete', align: 'left', text: ({ name }) => name },
  { title: 'all jumps', align: 'right', text: ({ last }) => `${last.done === undefined ? '~' : ''}${last.allJumps}` },
  { title: 'change', align: 'right', text: ({ last }) => optional(last.change, (by) => `${by > 0 ? '+' : ''}${by} %`) },
  { title: 'ratio', align: 'right', text: ({ last }) => optional(last.ratio, (ratio) => ratio.toFixed(2)), spare: 2 },
  { title: 'effort', align: 'right', text: ({ last }) => optional(last.felt.effort, (one) => one.toFixed(1)) },
  { title: 'load', align: 'right', text: ({ last }) => optional(last.felt.load, (load) => String(Math.round(load))) },
  { title: 'gaps', align: 'right', text: ({ last }) => (last.felt.gaps === 0 ? '' : String(last.felt.gaps)) },
  { title: 'monotony', align: 'right', text: ({ last }) => optional(last.felt.monotony, (one) => one.toFixed(2)) },
  { title: 'strain', align: 'right', text: ({ last }) => optional(last.felt.strain, (one) => String(Math.round(one))) },
];

interface NamedTrend {
  readonly name: string;
  readonly trend: JumpTrend;
}

const way = ({ method, arms }: { readonly method?: string; readonly arms?: boolean }): string =>
  [method, arms === undefined ? undefined : arms ? 'arms' : 'no arms'].filter((part) => part !== undefined).join(', ');

const withUnit = (trend: JumpTrend, value: number | undefined, signed = false): string =>
  value === undefined ? '' : `${signed && value > 0 ? '+' : ''}${trendNumber(trend, value)}`;

const TREND_COLUMNS: readonly LayoutColumn<NamedTrend>[] = [
  { title: 'athlete', align: 'left', text: ({ name }) => name },
  { title: 'test', align: 'left', text: ({ trend }) => trend.group.test.replaceAll('-', ' ') },
  { title: 'way', align: 'left', text: ({ trend }) => way(trend.group), spare: 2 },
  { title: 'on', align: 'right', text: ({ trend }) => optional(trend.group.day, dateWords), spare: 3 },
  { title: 'before', align: 'right', text: ({ trend }) => withUnit(trend, trend.before?.mean) },
  { title: 'now', align: 'right', text: ({ trend }) => withUnit(trend, trend.mean) },
  { title: '', align: 'left', text: ({ trend }) => TREND_UNITS[trend.group.measure] },
  { title: 'change', align: 'right', text: ({ trend }) => withUnit(trend, trend.change, true) },
  { title: 'error', align: 'right', text: ({ trend }) => withUnit(trend, trend.typicalError), spare: 1 },
  { title: 'least', align: 'right', text: ({ trend }) => withUnit(trend, trend.worthwhile), spare: 1 },
  {
    title: 'which is',
    align: 'left',
    text: ({ trend }) => (trend.before === undefined ? '' : verdictOf(trend)),
    wrapAt: 16,
  },
];

function trends({ athletes }: Review, { palette, width }: Canvas): readonly string[] {
  const rows = athletes.flatMap(({ name, trends: of }) => of.map((trend) => ({ name, trend })));
  if (rows.length === 0) return [];
  const forecasts = rows.flatMap(({ name, trend }) => {
    const { forecast } = trend;
    if (forecast === undefined) return [];
    const range = `${trendNumber(trend, forecast.low)} to ${trendNumber(trend, forecast.high)} cm`;
    return hanging(
      '  ',
      `${name}: ${trend.group.test.replaceAll('-', ' ')} from ${trendNumber(trend, trend.mean)}, ${range}`,
      width,
    );
  });
  return [
    ...layOut(rows, TREND_COLUMNS, width, palette.quiet),
    ...hanging('', TEST_NOTES.change, width).map(palette.quiet),
    ...(forecasts.length === 0 ? [] : [...hanging('', TEST_NOTES.forecast, width), ...forecasts]),
  ];
}

/** With the test where the figure could be of another one. */
const figureName = ({ group }: JumpPage, { what }: Figure): string =>
  group.test === 'countermovement-jump' ? what : `${what}, ${group.test.replaceAll('-', ' ')}`;

interface NamedFigure {
  readonly name: string;
  readonly page: JumpPage;
  readonly figure: Figure;
}

function figures({ athletes, sources }: Review, { palette, width }: Canvas): readonly string[] {
  const rows = athletes.flatMap(({ name, figures: pages }) =>
    pages.flatMap((page) => page.figures.map((figure) => ({ name, page, figure }))),
  );
  if (rows.length === 0) return [];
  return [
    ...layOut(rows, FIGURE_COLUMNS, width, palette.quiet),
    ...sources.flatMap(({ id, words }) => hanging(`${id} `, words, width)).map(palette.quiet),
  ];
}

const FIGURE_COLUMNS: readonly LayoutColumn<NamedFigure>[] = [
  { title: 'athlete', align: 'left', text: ({ name }) => name },
  { title: 'figure', align: 'left', text: ({ page, figure }) => figureName(page, figure) },
  { title: '', align: 'right', text: ({ figure }) => figureValue(figure) },
  { title: '', align: 'left', text: ({ figure }) => figure.unit },
  { title: 'from', align: 'left', text: ({ figure }) => figure.basis ?? '' },
  { title: 'note', align: 'left', text: ({ figure }) => figure.note ?? '', wrapAt: 20 },
];

function best({ best: found }: Review, { palette, width }: Canvas): readonly string[] {
  if (found === undefined) return [];
  return [
    ...found.people.flatMap(({ name, lines }) =>
      hanging('', lines.length === 0 ? name : `${name}: ${lines.join('; ')}`, width),
    ),
    ...hanging('', TEST_NOTES.best(found), width).map(palette.quiet),
  ];
}

const waivers = ({ waivers: inForce }: Review, { width }: Canvas): readonly string[] =>
  inForce.flatMap(({ what, who, when, because }) => hanging('', `${what}, ${who}, ${when}: ${because}`, width));
