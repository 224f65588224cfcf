// The head of the wall chart: months and dates, matches and tests of each week.

import type { ChartEvent, ChartWeek, SeasonChart } from '../../report/season-chart.ts';
import { bold, centred, LARGE, round, text, USUAL } from './drawing-parts.ts';
import type { Across } from './drawing-parts.ts';
import { h } from './element.ts';
import type { Element } from './element.ts';

const MONTHS_AT = 4;
const DATES_AT = 8.6;
const EVENTS_AT = 10.5;
const EVENT = 8.4;
const TESTS_AT = EVENTS_AT + EVENT + 0.6;
const TEST = 6.4;
/** How high it is. */
export const HEADER = 27;

/** What stands above the panels, from the top of the drawing to HEADER. */
export function header(chart: Pick<SeasonChart, 'weeks' | 'contest'>, across: Across): Element {
  const { weeks, contest } = chart;
  const letter = contestLetter(chart);
  return h(
    'g',
    {},
    text(0, DATES_AT, USUAL, 'week of'),
    text(0, EVENTS_AT + EVENT / 2 + 1.4, USUAL, contest[1]),
    text(0, TESTS_AT + TEST / 2 + 1.4, USUAL, 'tests'),
    weeks.map((week, index) => weekHead(week, weeks[index - 1], letter, { across, index })),
  );
}

/** `M` of a match. */
export const contestLetter = ({ contest }: Pick<SeasonChart, 'contest'>): string => contest[0].charAt(0).toUpperCase();

function weekHead(
  week: ChartWeek,
  before: ChartWeek | undefined,
  letter: string,
  { across, index }: { readonly across: Across; readonly index: number },
): Element {
  const x = across.middle(index);
  const isNewMonth = before === undefined || before.month !== week.month;
  return h(
    'g',
    {},
    isNewMonth ? text(across.left(index), MONTHS_AT, LARGE, week.month, bold) : null,
    text(x, DATES_AT, USUAL, week.date, centred),
    matchSign(week.events, letter, x, Math.min(EVENT, across.width - 0.6)),
    week.events.includes('test') ? testSign(x, Math.min(TEST, across.width - 0.6)) : null,
  );
}

/** A peak is a full black square, another match a ring, each with its letter. */
function matchSign(events: readonly ChartEvent[], letter: string, x: number, size: number): Element | null {
  const y = EVENTS_AT + EVENT / 2;
  const half = size / 2;
  if (events.includes('peak')) {
    const square = h('rect', { x: round(x - half), y: round(y - half), width: size, height: size });
    return h('g', {}, square, text(x, y + 1.9, LARGE, 'P', { ...centred, ...bold, fill: '#fff' }));
  }
  if (!events.includes('match')) return null;
  const ring = h('circle', { cx: x, cy: y, r: round(half - 0.5), class: 'outline heavy' });
  return h('g', {}, ring, text(x, y + 1.9, LARGE, letter, { ...centred, ...bold }));
}

/** Tests are a triangle. */
function testSign(x: number, size: number): Element {
  const half = size / 2;
  const y = TESTS_AT + TEST / 2;
  const path = `M${round(x - half)} ${round(y + half)}h${size}L${x} ${round(y - half)}Z`;
  return h(
    'g',
    {},
    h('path', { d: path, class: 'outline' }),
    text(x, y + half - 0.6, USUAL, 'T', { ...centred, ...bold }),
  );
}
