// Jump tests as the Monday page shows them: each with its change and its noise, what groups gained, and what is worked
// out from them. In the order of the plan: nobody is ranked.

import type { TrialGroup } from '../../../record/trials.ts';
import { dateWords } from '../../calendar-words.ts';
import type { Figure, JumpPage } from '../../jump-report.ts';
import { figureWords, sourceOf } from '../../jump-report.ts';
import type { Review } from '../../review.ts';
import type { JumpTrend } from '../jump-trends.ts';
import { TEST_NOTES } from '../notes.ts';
import type { ProgrammeForecast } from '../programme-forecast.ts';
import type { Units } from '../../../util/quantities.ts';
import { trendNumber, trendUnit, verdictOf } from '../trend-words.ts';
import { linesSection, optional, sectionOf, signed } from './section.ts';
import type { ReviewSection, Said } from './section.ts';

interface Named<T> {
  readonly name: string;
  readonly units: Units;
  readonly of: T;
}

type Told = Pick<Review, 'athletes' | 'units'>;

const named = <T>(
  { athletes, units }: Told,
  items: (athlete: Review['athletes'][number]) => readonly T[],
): readonly Named<T>[] =>
  athletes.flatMap((athlete) => items(athlete).map((of) => ({ name: athlete.name, units, of })));

const NAME: Said<{ readonly name: string }> = { title: 'athlete', align: 'left', text: ({ name }) => name };

/** `counter-movement jump`, with what is measured where it isn't a height. */
const testWords = ({ test, measure }: Pick<TrialGroup, 'test' | 'measure'>): string =>
  `${test.replaceAll('-', ' ')}${measure === 'height' ? '' : `, ${measure}`}`;

const wayWords = ({ method, arms }: Pick<TrialGroup, 'method' | 'arms'>): string =>
  [method, arms === undefined ? undefined : arms ? 'arms' : 'no arms'].filter((part) => part !== undefined).join(', ');

const number = ({ of, units }: Named<JumpTrend>, value: number | undefined): string =>
  optional(value, (one) => trendNumber(of.group.measure, one, units));

const TREND_COLUMNS: readonly Said<Named<JumpTrend>>[] = [
  NAME,
  { title: 'test', align: 'left', text: ({ of }) => testWords(of.group) },
  { title: 'way', align: 'left', text: ({ of }) => wayWords(of.group), spare: 2 },
  { title: 'on', align: 'right', text: ({ of }) => optional(of.group.day, dateWords), spare: 3 },
  { title: 'before', align: 'right', text: (one) => number(one, one.of.before?.mean) },
  { title: 'now', align: 'right', text: (one) => number(one, one.of.mean) },
  { title: 'unit', align: 'left', text: ({ of, units }) => trendUnit(of.group.measure, units) },
  { title: 'change', align: 'right', text: (one) => optional(one.of.change, (by) => signed(by, number(one, by))) },
  { title: 'error', align: 'right', text: (one) => number(one, one.of.typicalError), spare: 1 },
  { title: 'least', align: 'right', text: (one) => number(one, one.of.worthwhile), spare: 1 },
  {
    title: 'which is',
    align: 'left',
    text: ({ of }) => (of.before === undefined ? '' : verdictOf(of)),
    wraps: true,
  },
];

/**
 * A row for each athlete, test and way of measuring: the mean, its change and what the change is worth. J2, J11 to J13.
 */
export const trendSection = (review: Told): readonly ReviewSection[] =>
  sectionOf(
    'Jump tests',
    named(review, ({ trends }) => trends),
    TREND_COLUMNS,
    [TEST_NOTES.change],
  );

const FORECAST_COLUMNS: readonly Said<Named<ProgrammeForecast>>[] = [
  NAME,
  { title: 'test', align: 'left', text: ({ of }) => testWords(of.group) },
  { title: 'way', align: 'left', text: ({ of }) => wayWords(of.group), spare: 2 },
  { title: 'on', align: 'right', text: ({ of }) => optional(of.group.day, dateWords), spare: 1 },
  { title: 'from', align: 'right', text: ({ of, units }) => trendNumber('height', of.mean, units) },
  {
    title: 'groups then stood at',
    align: 'right',
    text: ({ of: { after }, units }) =>
      `${trendNumber('height', after.low, units)} to ${trendNumber('height', after.high, units)} ${trendUnit('height', units)}`,
  },
  { title: 'after', align: 'left', text: ({ of }) => `${of.weeks} weeks, ${of.contacts} contacts` },
];

/** A row for each height a forecast is made from. Heights in the plan's units; the gains are those of published groups, J15 (P). */
export const forecastSection = (review: Told): readonly ReviewSection[] =>
  sectionOf(
    'What groups gained, beside the programme as it stands',
    named(review, ({ forecasts }) => forecasts),
    FORECAST_COLUMNS,
    [TEST_NOTES.forecast],
  );

interface FigureOf {
  readonly group: TrialGroup;
  readonly figure: Figure;
}

const FIGURE_COLUMNS: readonly Said<Named<FigureOf>>[] = [
  NAME,
  { title: 'figure', align: 'left', text: ({ of }) => figureName(of) },
  { title: 'value', align: 'right', text: ({ of }) => figureWords(of.figure) },
  { title: 'unit', align: 'left', text: ({ of }) => of.figure.unit },
  { title: 'from', align: 'left', text: ({ of }) => basisWords(of.figure) },
  { title: 'note', align: 'left', text: ({ of }) => of.figure.note ?? '', wraps: true },
];

/** `J7, M`: the row of the sources below, and its mark. */
function basisWords({ basis }: Figure): string {
  const mark = sourceOf(basis)?.mark;
  return mark === undefined ? '' : `${basis ?? ''}, ${mark}`;
}

/** With the test where the figure could be of another one. */
const figureName = ({ group: { test }, figure: { what } }: FigureOf): string =>
  test === 'countermovement-jump' ? what : `${what}, ${test.replaceAll('-', ' ')}`;

const figuresIn = ({ group, figures }: JumpPage): readonly FigureOf[] => figures.map((figure) => ({ group, figure }));

/** A row for each index or power worked out, with the sources of what was used below. J3 to J10. */
export const figureSection = (review: Told & Pick<Review, 'sources'>): readonly ReviewSection[] =>
  sectionOf(
    'Worked out from them',
    named(review, ({ figures }) => figures.flatMap(figuresIn)),
    FIGURE_COLUMNS,
    review.sources.map(({ id, words }) => `${id} ${words}`),
  );

/** The set of the best jumpers with why each is in it; none where no set can be told. */
export function bestSection({ best }: Pick<Review, 'best'>): readonly ReviewSection[] {
  if (best === undefined) return [];
  const lines = best.people.map(({ name, lines: of }) => (of.length === 0 ? name : `${name}: ${of.join('; ')}`));
  return linesSection('Best jumpers, whose knees to watch', lines, [TEST_NOTES.best(best)]);
}
