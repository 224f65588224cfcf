// The wall chart's drawing: a header of weeks with matches, tests and closed weeks, and below it a panel for each squad.
// Everything is told by shape, word and place; grey only sets easy weeks apart. Measures are millimetres.

import { scaleLinear } from 'd3-scale';
import { curveStepAfter, line } from 'd3-shape';
import type { ChartPanel, SeasonChart } from '../../report/season-chart.ts';
import { bold, centred, LARGE, LEFT, round, SMALL, text, USUAL, weeksAcross } from './drawing-parts.ts';
import type { Across } from './drawing-parts.ts';
import { h } from './element.ts';
import type { Element } from './element.ts';
import { HEADER, header } from './season-header.ts';

export interface DrawingSize {
  readonly width: number;
  readonly height: number;
}

const PANEL_GAP = 3;
const PHASES = 6.6;
/** From here on numbers of three digits stand upright in a week's width. */
const WIDE_WEEK = 7.4;

/** The chart of all its panels. */
export function seasonDrawing(chart: SeasonChart, { width, height }: DrawingSize): Element {
  const across = weeksAcross(chart.weeks.length, width);
  const panelHeight = (height - HEADER) / Math.max(1, chart.panels.length);
  return h(
    'svg',
    { class: 'drawing', viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-labelledby': 'chart-title' },
    h('title', { id: 'chart-title' }, `${chart.title}: the table below says the same`),
    header(chart, across),
    chart.panels.map((panel, index) =>
      panelDrawing(panel, across, {
        top: HEADER + index * panelHeight,
        height: panelHeight - PANEL_GAP,
        width,
      }),
    ),
  );
}

/** Slanted strokes from top to bottom, so that they are seen from afar. */
function closedWeeks({ weeks }: ChartPanel, across: Across, top: number, bottom: number): readonly Element[] {
  return weeks.flatMap(({ closed }, index) => (closed ? [hatched(across, index, top, bottom)] : []));
}

/** What stands in place of a week that isn't written. */
export const BARRED = '!!';

function barredWeeks({ weeks }: ChartPanel, across: Across, bottom: number): readonly (Element | null)[] {
  return weeks.map(({ barred }, index) =>
    barred ? text(across.middle(index), bottom - 1, LARGE, BARRED, { ...centred, ...bold }) : null,
  );
}

const HATCH = 3;

function hatched(across: Across, index: number, top: number, bottom: number): Element {
  const x = across.left(index);
  const strokes: string[] = [];
  for (let y = top; y + across.width <= bottom; y += HATCH) {
    strokes.push(`M${x} ${round(y + across.width)}L${round(x + across.width)} ${round(y)}`);
  }
  return h('path', { d: strokes.join(''), stroke: '#000', 'stroke-width': 0.25, fill: 'none' });
}

interface Frame {
  readonly top: number;
  readonly height: number;
  readonly width: number;
}

function panelDrawing(panel: ChartPanel, across: Across, { top, height, width }: Frame): Element {
  const bottom = top + height - (across.width < WIDE_WEEK ? BELOW : SMALL + 0.4);
  const plotTop = top + PHASES + USUAL + 1;
  const most = panel.weeks.reduce((max, week) => Math.max(max, week.all, week.most, week.contacts), 1);
  const scale = scaleLinear().domain([0, most]).nice(4).range([bottom, plotTop]);
  const y = (value: number): number => round(scale(value));
  return h(
    'g',
    {},
    easyWeeks(panel, across, plotTop, bottom),
    closedWeeks(panel, across, top + PHASES + 1, bottom),
    barredWeeks(panel, across, bottom),
    scale.ticks(4).map((tick) => gridLine(tick, y(tick), width)),
    phaseBands(panel, across, top),
    panelTitle(panel.title, top),
    bars(panel, across, y),
    ceiling(panel, across, y),
    panel.weeks.map((week, index) =>
      week.all === 0 ? null : h('circle', { cx: across.middle(index), cy: y(week.all), r: 1.1 }),
    ),
  );
}

function panelTitle(title: string, top: number): readonly Element[] {
  const [squad = '', people] = title.split(', ');
  return [text(0, top + 4.4, LARGE, squad, bold), ...(people === undefined ? [] : [text(0, top + 9, SMALL, people)])];
}

function easyWeeks(panel: ChartPanel, across: Across, top: number, bottom: number): readonly (Element | null)[] {
  return panel.weeks.map(({ easy }, index) =>
    easy
      ? h(
          'g',
          {},
          h('rect', {
            x: across.left(index),
            y: round(top - USUAL - 0.6),
            width: across.width,
            height: round(bottom - top + USUAL + 0.6),
            fill: '#ddd',
          }),
          across.width < WIDE_WEEK ? null : text(across.middle(index), top - 0.6, SMALL, 'easy', centred),
        )
      : null,
  );
}

const gridLine = (tick: number, y: number, width: number): Element =>
  h(
    'g',
    {},
    h('path', { d: `M${LEFT} ${y}H${width}`, stroke: '#000', 'stroke-width': 0.15, fill: 'none' }),
    text(LEFT - 1.2, y + 1.1, SMALL, tick, { 'text-anchor': 'end' }),
  );

function phaseBands({ phases }: ChartPanel, across: Across, top: number): readonly Element[] {
  return phases.map(({ words, from, weeks }) => {
    const x = across.left(from);
    const width = round(weeks * across.width);
    return h(
      'g',
      {},
      h('rect', { x, y: round(top), width, height: PHASES, class: 'outline white' }),
      phaseWords(words, x + width / 2, top, width),
    );
  });
}

/** Width of a bold letter, of the type's size; near enough for a few words. */
const LETTER = 0.53;

/** In one line or in two smaller ones; where neither fits, the list of phases alone has them. */
function phaseWords(words: string, middle: number, top: number, width: number): readonly Element[] {
  const fits = (text: string, size: number): boolean => text.length * size * LETTER < width;
  if (fits(words, USUAL)) return [text(middle, top + 4.6, USUAL, words, { ...centred, ...bold })];
  return inTwo(words)
    .filter((two) => two.every((line) => fits(line, SMALL)))
    .slice(0, 1)
    .flatMap((two) =>
      two.map((line, index) =>
        text(middle, top + (two.length === 1 ? 4.4 : 2.9 + 3.1 * index), SMALL, line, { ...centred, ...bold }),
      ),
    );
}

/** Ways to break words into at most two lines, none and then the evenest first. */
function inTwo(words: string): readonly (readonly string[])[] {
  const parts = words.split(' ');
  const broken = parts
    .slice(1)
    .map((_, index) => [parts.slice(0, index + 1).join(' '), parts.slice(index + 1).join(' ')]);
  const longest = (lines: readonly string[]): number => Math.max(...lines.map(({ length }) => length));
  return [[words], ...broken.toSorted((a, b) => longest(a) - longest(b))];
}

/** Where a number that stands upright begins, below the line. */
const BELOW = 6.4;

/** The number under a bar is the fullest session of the week; what is over has none. Dotted where few of the squad jump. */
function bars({ weeks }: ChartPanel, across: Across, y: (value: number) => number): readonly (Element | null)[] {
  const width = round(across.width * 0.72);
  return weeks.map(({ contacts, aSession, few }, index) => {
    if (contacts === 0) return null;
    const x = round(across.middle(index) - width / 2);
    const top = y(contacts);
    const middle = across.middle(index);
    const label =
      aSession === undefined
        ? null
        : across.width < WIDE_WEEK
          ? text(middle + 1.1, y(0) + BELOW, SMALL, aSession, {
              transform: `rotate(-90 ${round(middle + 1.1)} ${round(y(0) + BELOW)})`,
            })
          : text(middle, y(0) + SMALL, SMALL, aSession, { ...centred, ...bold });
    const bar = { x, y: top, width, height: round(y(0) - top), class: 'outline white heavy' };
    return h('g', {}, h('rect', few ? { ...bar, 'stroke-dasharray': '0.7 1.1' } : bar), label);
  });
}

/** A step a week, broken where there is no training. */
function ceiling({ weeks }: ChartPanel, across: Across, y: (value: number) => number): Element {
  // Every run of weeks ends with a point of its own, so that its last step is as wide as the others.
  const points = weeks.flatMap(({ most }, index) => {
    const x = across.left(index);
    const isLast = most > 0 && (weeks[index + 1]?.most ?? 0) === 0;
    const end = round(x + across.width);
    return isLast
      ? [
          { most, x },
          { most, x: end },
          { most: 0, x: end },
        ]
      : [{ most, x }];
  });
  const path = line<{ readonly most: number; readonly x: number }>()
    .defined(({ most }) => most > 0)
    .x(({ x }) => x)
    .y(({ most }) => y(most))
    .curve(curveStepAfter)
    .digits(2);
  return h('path', {
    d: path(points) ?? '',
    stroke: '#000',
    'stroke-width': 0.7,
    'stroke-dasharray': '2 1',
    fill: 'none',
  });
}
