// The wall chart as a page: the drawing, its key, the same numbers as a table for those who can't see it, and what the
// coach decided. A long season is drawn in two halves, each on a page of its own, as are many squads.

import { CAUTIONS } from '../../report/cautions.ts';
import type { ChartPanel, PanelWeek, SeasonChart } from '../../report/season-chart.ts';
import { LEFT_OUT } from '../../report/week-words.ts';
import { h } from './element.ts';
import type { Content, Element } from './element.ts';
import { contestLetter } from './season-header.ts';
import { printable } from './paper.ts';
import type { Paper } from './paper.ts';
import { linesNeeded, textWidth } from './text-width.ts';
import { BARRED, seasonDrawing } from './season-drawing.ts';

const MOST_WEEKS = 40;
const MOST_PANELS = 3;
/** Rows that fit a page; a longer table begins where there is room. */
const MOST_ROWS = 28;
/** Of a page, above and below the drawing. */
const HEAD = 11;
const KEY = 17;
const KEY_LINES = 4;
const KEY_TYPE = { points: 9 } as const;
const TITLE = { points: 20, bold: true } as const;
/** The weeks and the build's mark beside it. */
const MARK = 85;

/** The pages of the chart, then one of lists. */
export function* seasonPages(chart: SeasonChart, paper: Paper): Iterable<Element> {
  const { width, height } = printable(paper, 'landscape');
  const size = { width, height: height - HEAD - KEY };
  for (const weeks of slices(chart.weeks.length, MOST_WEEKS)) {
    for (const panels of slices(chart.panels.length, MOST_PANELS)) {
      yield chartPage(cutChart(chart, weeks, panels), size);
    }
  }
  yield listsPage(chart);
}

interface Slice {
  readonly from: number;
  readonly until: number;
}

/** Equal parts of at most so many; one part even of nothing. */
function slices(count: number, most: number): readonly Slice[] {
  const parts = Math.max(1, Math.ceil(count / most));
  return Array.from({ length: parts }, (_, index) => ({
    from: Math.round((index * count) / parts),
    until: Math.round(((index + 1) * count) / parts),
  }));
}

function cutChart(chart: SeasonChart, weeks: Slice, panels: Slice): SeasonChart {
  return {
    ...chart,
    weeks: chart.weeks.slice(weeks.from, weeks.until),
    panels: chart.panels.slice(panels.from, panels.until).map((panel) => cutPanel(panel, weeks)),
  };
}

function cutPanel(panel: ChartPanel, { from, until }: Slice): ChartPanel {
  const phases = panel.phases.flatMap((phase) => {
    const first = Math.max(phase.from, from);
    const last = Math.min(phase.from + phase.weeks, until);
    return first < last ? [{ words: phase.words, from: first - from, weeks: last - first }] : [];
  });
  return { ...panel, phases, weeks: panel.weeks.slice(from, until) };
}

/** `weeks of 4 Jan 2027 to 30 Aug 2027, `. */
function weeksWords({ weeks }: SeasonChart): string {
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (first === undefined || last === undefined) return '';
  return `weeks of ${[first, last].map(({ date, month, year }) => `${date} ${month} ${year}`).join(' to ')}, `;
}

/** Whether a title takes more than its line; two of a smaller type are as high. */
const isLong = ({ title }: SeasonChart, width: number): boolean => textWidth(title, TITLE) > width - MARK;

function chartPage(chart: SeasonChart, size: { readonly width: number; readonly height: number }): Element {
  return h(
    'section',
    { class: 'chart' },
    h(
      'h2',
      isLong(chart, size.width) ? { class: 'long' } : {},
      chart.title,
      h('span', { class: 'small' }, ` ${weeksWords(chart)}sheet ${chart.mark}`),
    ),
    seasonDrawing(chart, size),
    h('p', { class: 'key' }, keyOf(chart, size.width)),
  );
}

/** What the signs mean. Where all peaks are too many for its lines they stand on the page of lists alone. */
function keyOf(chart: SeasonChart, width: number): readonly Content[] {
  const [one, many] = chart.contest;
  const signs: readonly (readonly [letter: string, words: string])[] = [
    ['P', ` peak${chart.peaks.length === 0 ? '' : ` (${chart.peaks.join('; ')})`} · `],
    [contestLetter(chart), ` ${one} · `],
    [
      'T',
      ` tests · grey: easy week · strokes: closed${hasBarred(chart) ? ` · ${BARRED} ${LEFT_OUT}` : ''}. ` +
        `Bars: planned jumps a week${middleWords(chart)}; the fullest session below` +
        (isUnderWay(chart) ? '; without one, what was done' : '') +
        `${hasFew(chart) ? '; dotted where no more than half of the squad jump' : ''}. ` +
        `Broken line: the most that is safe. Dots: all jumps, with practice and ${many}. ${CAUTIONS.join(' ')}`,
    ],
  ];
  if (chart.peaks.length > 0 && linesNeeded(signs.flat().join(''), width, KEY_TYPE) > KEY_LINES) {
    return keyOf({ ...chart, peaks: [] }, width);
  }
  return signs.flatMap(([letter, words]) => [h('b', {}, letter), words]);
}

/** Whose jumps the bars are, where a squad has several athletes. */
const middleWords = ({ panels }: SeasonChart): string =>
  panels.some(({ athletes }) => athletes > 1)
    ? ' of the middle athlete (of two the lower) of those who jump and have the kind of week that most have'
    : '';

const hasFew = ({ panels }: SeasonChart): boolean => panels.some(({ weeks }) => weeks.some(({ few }) => few));

const hasBarred = ({ panels }: SeasonChart): boolean => panels.some(({ weeks }) => weeks.some(({ barred }) => barred));

/** Some of its weeks are over and on the record. */
const isUnderWay = ({ panels }: SeasonChart): boolean =>
  panels.some(({ weeks }) => weeks.some(({ aSession }) => aSession === undefined));

function listsPage(chart: SeasonChart): Element {
  return h(
    'section',
    { class: 'lists' },
    h('h2', {}, `${chart.title}: what was decided, and the chart in numbers`),
    h(
      'div',
      { class: 'side-by-side' },
      list('Peaks', chart.peaks),
      list('Not with us', chart.notWithUs),
      list("The coach's own numbers", chart.decisions.map(decisionWords)),
      list('Waived', chart.waivers.map(decisionWords)),
      chart.panels.map((panel) => list(`Phases, ${panel.title}`, phaseLines(chart, panel))),
    ),
    chart.panels.map((panel) => numbers(chart, panel)),
  );
}

/** `lift heavy, 3 weeks from 4 Jan`. */
function phaseLines({ weeks }: SeasonChart, { phases }: ChartPanel): readonly string[] {
  return phases.map(({ words, from, weeks: count }) => {
    const first = weeks[from];
    return `${words}, ${count} ${count === 1 ? 'week' : 'weeks'} from ${first?.date ?? ''} ${first?.month ?? ''}`;
  });
}

const decisionWords = ({ what, who, when }: SeasonChart['waivers'][number]): string => `${when}, ${who}: ${what}`;

function list(title: string, lines: readonly string[]): Element {
  return h(
    'section',
    {},
    h('h3', {}, title),
    h(
      'ul',
      {},
      (lines.length === 0 ? ['none'] : lines).map((line) => h('li', {}, line)),
    ),
  );
}

/** `easy`, with how many jump where some of the squad don't. */
function kindOf({ barred, kind, jumping }: PanelWeek, athletes: number): string {
  if (barred) return LEFT_OUT;
  return `${KIND_WORDS[kind]}${jumping === 0 || jumping === athletes ? '' : `, ${jumping} of ${athletes} jump`}`;
}

const KIND_WORDS: Readonly<Record<PanelWeek['kind'], string>> = {
  load: 'build',
  deload: 'easy',
  taper: 'taper',
  return: 'coming back',
  hold: 'hold',
  transition: 'rest',
  empty: 'no jumps',
};

function numbers(chart: SeasonChart, panel: ChartPanel): Element {
  const heads = ['Week', 'Starts', 'Kind', 'Planned', 'A session', 'Most safe', 'All jumps', 'Events'];
  return h(
    'table',
    { class: panel.weeks.length > MOST_ROWS ? 'numbers long' : 'numbers' },
    h('caption', {}, `${panel.title}: the ${panel.athletes > 1 ? 'middle ' : ''}athlete's jumps`),
    h(
      'thead',
      {},
      h(
        'tr',
        {},
        heads.map((head) => h('th', { scope: 'col' }, head)),
      ),
    ),
    h(
      'tbody',
      {},
      panel.weeks.map((week, index) => {
        const at = chart.weeks[index];
        const cells = [
          `${at?.date ?? ''} ${at?.month ?? ''}`,
          kindOf(week, panel.athletes),
          week.contacts,
          week.aSession ?? '',
          week.most,
          week.all,
          [
            ...(at?.events ?? []).map((event) => (event === 'match' ? chart.contest[0] : event)),
            ...(week.closed ? ['closed'] : []),
          ].join(', '),
        ];
        return h(
          'tr',
          {},
          h('th', { scope: 'row' }, at?.week ?? ''),
          cells.map((cell) => h('td', {}, cell)),
        );
      }),
    ),
  );
}
