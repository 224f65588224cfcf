// The season at a glance on a terminal: weeks across, people down, cut into bands when the window is narrow. A mark
// behind a number says what kind of week it is, so that nothing depends on colour.

import { dateWithYear, dayOfMonth, dayWords, shortMonthName, weekdayName } from '../../report/calendar-words.ts';
import type { EventRow, Glance, GlanceCell, GlanceGroup, GlanceRow, GlanceWeek } from '../../report/glance.ts';
import { counted } from '../../report/quantities.ts';
import { displayWidth, shortened } from '../../util/display-width.ts';
import type { Palette } from '../palette.ts';
import type { Canvas } from './canvas.ts';
import { hanging, pad } from './layout.ts';

/** What stands behind a number, and what it means. */
const MARKS: Readonly<Record<GlanceCell['kind'], { readonly mark: string; readonly says: string }>> = {
  load: { mark: ' ', says: '' },
  deload: { mark: '-', says: 'easy week' },
  taper: { mark: '~', says: 'taper' },
  return: { mark: '^', says: 'coming back' },
  hold: { mark: '=', says: 'hold' },
  transition: { mark: ' ', says: '' },
  empty: { mark: ' ', says: '' },
};
const KINDS: readonly GlanceCell['kind'][] = ['deload', 'taper', 'return', 'hold'];
const PINNED = { mark: '*', says: "the coach's own number" };
const BLOCKED = { mark: '!!', says: 'left out: an error stands in the way' };
const NOTHING = '.';
const LABEL_WIDTH = 16;
const CELL_WIDTH = 5;
const GAP = 1;

/** One band: the weeks from one index to another. */
interface Band {
  readonly from: number;
  readonly until: number;
}

export function renderGlance(glance: Glance, canvas: Canvas): readonly string[] {
  const label = labelWidth(glance);
  const bands = bandsOf(glance.weeks.length, Math.max(1, Math.floor((canvas.width - label) / CELL_WIDTH)));
  return [
    ...titleLines(glance, canvas),
    ...bands.flatMap((band) => ['', ...bandLines(glance, band, label, canvas)]),
    '',
    ...footLines(glance, canvas),
  ];
}

function titleLines({ title, athletes, weeks, mark }: Glance, { palette, width }: Canvas): readonly string[] {
  const from = weeks.at(0);
  const span = from === undefined ? '' : `, from ${dateWithYear(from.starts)}`;
  const facts = `${counted(weeks.length, 'week')}${span}, ${counted(athletes, 'athlete')}, build ${mark}`;
  const room = width - displayWidth(title) - displayWidth(facts);
  return room >= 2
    ? [palette.strong(title) + ' '.repeat(room) + palette.quiet(facts)]
    : [palette.strong(title), palette.quiet(facts)];
}

function labelWidth({ groups, events }: Glance): number {
  const labels = [...events, ...groups.flatMap(({ rows, events: own }) => [...rows, ...own])].map(({ label }) => label);
  return Math.min(LABEL_WIDTH + 8, Math.max(LABEL_WIDTH, ...labels.map((label) => displayWidth(label) + GAP)));
}

/** Bands of about the same number of weeks, none of more than `most`. */
function bandsOf(weeks: number, most: number): readonly Band[] {
  const count = Math.max(1, Math.ceil(weeks / most));
  const each = Math.ceil(weeks / count);
  return Array.from({ length: count }, (_, index) => ({
    from: index * each,
    until: Math.min(weeks, (index + 1) * each),
  }));
}

function bandLines(glance: Glance, band: Band, label: number, canvas: Canvas): readonly string[] {
  const weeks = glance.weeks.slice(band.from, band.until);
  const { palette } = canvas;
  const line = (name: string, cells: readonly string[]): string =>
    `${pad(shortened(name, label - GAP), label, 'left')}${cells.map((cell) => pad(cell, CELL_WIDTH - GAP, 'right') + ' ').join('')}`.trimEnd();
  const first = weeks.at(0);
  return [
    palette.quiet(line('', monthCells(weeks))),
    palette.quiet(
      line(
        first === undefined ? '' : weekdayName(first.starts),
        weeks.map(({ starts }) => String(dayOfMonth(starts))),
      ),
    ),
    line(
      'week',
      weeks.map(({ week }) => String(week)),
    ),
    ...glance.events.map((row) => eventLine(row, band, line, palette)),
    ...glance.groups.flatMap((group) => ['', ...groupLines(group, weeks, band, label, line, palette)]),
  ];
}

type Line = (name: string, cells: readonly string[]) => string;

/** The month over the first week that starts in it. */
function monthCells(weeks: readonly GlanceWeek[]): readonly string[] {
  return weeks.map(({ starts }, index) => {
    const before = weeks[index - 1];
    const month = shortMonthName(starts);
    return before !== undefined && shortMonthName(before.starts) === month ? '' : month;
  });
}

function eventLine({ label, cells }: EventRow, { from, until }: Band, line: Line, palette: Palette): string {
  const text = line(label, cells.slice(from, until));
  return label === 'peak' ? palette.accent(text) : text;
}

function groupLines(
  group: GlanceGroup,
  weeks: readonly GlanceWeek[],
  band: Band,
  label: number,
  line: Line,
  palette: Palette,
): readonly string[] {
  return [
    palette.strong(pad(shortened(group.title, label - GAP), label, 'left')) + palette.quiet(phaseBar(group, weeks)),
    ...group.events.map((row) => eventLine(row, band, line, palette)),
    ...group.rows.map((row) => rowLine(row, band, label, palette)),
  ];
}

/** `strength--------power--------`: each phase from its first week on; one that goes on from before is named again. */
function phaseBar({ phases }: GlanceGroup, weeks: readonly GlanceWeek[]): string {
  const first = weeks.at(0)?.week ?? 0;
  const last = weeks.at(-1)?.week ?? 0;
  return phases
    .flatMap(({ phase, from, weeks: length }) => {
      const start = Math.max(from, first);
      const end = Math.min(from + length - 1, last);
      if (end < start) return [];
      const room = (end - start + 1) * CELL_WIDTH - GAP;
      return `${shortened(`|${phase} `, room).padEnd(room, '-')} `;
    })
    .join('')
    .trimEnd();
}

function rowLine({ label: name, cells }: GlanceRow, { from, until }: Band, label: number, palette: Palette): string {
  const texts = cells.slice(from, until).map((cell) => paintCell(cell, palette));
  return pad(shortened(name, label - GAP), label, 'left') + texts.join('').trimEnd();
}

function paintCell(cell: GlanceCell, palette: Palette): string {
  if (cell.blocked) return palette.error(pad(BLOCKED.mark, CELL_WIDTH - GAP, 'right')) + ' ';
  if (cell.contacts === 0) return palette.quiet(pad(NOTHING, CELL_WIDTH - GAP, 'right')) + ' ';
  const number = pad(String(cell.contacts), CELL_WIDTH - GAP, 'right');
  if (cell.pinned) return palette.accent(number + PINNED.mark);
  const { mark } = MARKS[cell.kind];
  return mark === ' ' ? number + mark : palette.easy(number + mark);
}

/** What the marks mean, of those that were used, and the days it is all for. */
function footLines(glance: Glance, { palette, width }: Canvas): readonly string[] {
  const peaks = glance.peaks.map(
    ({ name, day, everybody }) => `${name}, ${dayWords(day)}${everybody ? '' : ' (some)'}`,
  );
  const legend = ['Numbers are planned jump contacts a week', ...legendOf(glance)].join('; ');
  return [
    ...(peaks.length === 0 ? [] : hanging('Peaks: ', peaks.join('; '), width)),
    ...hanging('', `${legend}.`, width).map(palette.quiet),
  ];
}

function legendOf({ groups }: Glance): readonly string[] {
  const cells = groups.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
  const used = new Set(cells.flatMap((cell) => (cell.blocked || cell.pinned || cell.contacts === 0 ? [] : cell.kind)));
  const kinds = KINDS.filter((kind) => used.has(kind))
    .map((kind) => MARKS[kind])
    .filter(({ says }) => says !== '');
  const others = [
    ...(cells.some(({ pinned, blocked }) => pinned && !blocked) ? [PINNED] : []),
    ...(cells.some(({ blocked }) => blocked) ? [BLOCKED] : []),
  ];
  return [...kinds, ...others].map(({ mark, says }) => `${mark} ${says}`);
}
