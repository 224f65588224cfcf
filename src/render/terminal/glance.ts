// The season at a glance on a terminal: weeks across, people down, cut into bands when the window is narrow. A mark
// behind a number says what kind of week it is, so that nothing depends on colour.

import { dateWithYear, dayOfMonth, dayWords, shortMonthName, weekdayName } from '../../report/calendar-words.ts';
import type { EventRow, Glance, GlanceCell, GlanceGroup, GlanceRow, GlanceWeek, PhaseId } from '../../report/glance.ts';
import { LEFT_OUT } from '../../report/week-words.ts';
import { displayWidth, fitted } from '../../util/display-width.ts';
import type { Palette } from '../palette.ts';
import type { Canvas } from './canvas.ts';
import { hanging, pad } from './layout.ts';
import { counted } from '../../util/counted.ts';

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
const BLOCKED = { mark: '!!', says: LEFT_OUT };
/** For bars that are too short for the name, longest first; the last fits one week. */
const SHORT_FORMS: Readonly<Record<PhaseId, readonly string[]>> = {
  foundation: ['found.', 'fou'],
  hypertrophy: ['hypertr.', 'hyp'],
  strength: ['str'],
  'strength-power': ['str-power', 's-p'],
  power: ['pow'],
  maintenance: ['maintain', 'mai'],
  sharpening: ['sharpen', 'sha'],
  hold: ['hol'],
  transition: ['transit.', 'tra'],
  closed: ['off'],
};
const NOTHING = '.';
const LEAST_LABEL = 10;
const MOST_LABEL = 24;
const GAP = 1;
const MARK = 1;
/** Room for a weekday over each week. */
const SHORTEST_NUMBER = 3;

/** One band: the weeks from one index up to another. */
interface Band {
  readonly from: number;
  readonly until: number;
}

/** How wide things are: names at the left, a week's number without its mark and gap, a week with them. */
interface Grid {
  readonly label: number;
  readonly number: number;
  readonly cell: number;
}

/** The lines of the page. A band holds as many weeks as the canvas is wide for, one at least. */
export function renderGlance(glance: Glance, canvas: Canvas): readonly string[] {
  const grid = gridOf(glance);
  // The last week of a band needs no gap behind it.
  const most = Math.max(1, Math.floor((canvas.width - grid.label + GAP) / grid.cell));
  return [
    ...titleLines(glance, canvas),
    ...bandsOf(glance.weeks.length, most).flatMap((band) => ['', ...bandLines(glance, band, grid, canvas)]),
    '',
    ...footLines(glance, canvas),
  ];
}

function gridOf({ groups, events }: Glance): Grid {
  const rows = groups.flatMap((group) => group.rows);
  const labels = [...events, ...groups.flatMap((group) => group.events), ...rows].map(({ label }) =>
    displayWidth(label),
  );
  const label = Math.min(MOST_LABEL, Math.max(LEAST_LABEL, ...labels)) + 2 * GAP;
  const number = Math.max(
    SHORTEST_NUMBER,
    ...rows.flatMap(({ cells }) => cells.map(({ contacts }) => String(contacts).length)),
  );
  return { label, number, cell: number + MARK + GAP };
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

/** Bands of about the same number of weeks, none of more than `most`. */
function bandsOf(weeks: number, most: number): readonly Band[] {
  const count = Math.max(1, Math.ceil(weeks / most));
  const each = Math.ceil(weeks / count);
  return Array.from({ length: count }, (_, index) => ({
    from: index * each,
    until: Math.min(weeks, (index + 1) * each),
  }));
}

function bandLines(glance: Glance, band: Band, grid: Grid, { palette }: Canvas): readonly string[] {
  const weeks = glance.weeks.slice(band.from, band.until);
  const first = weeks.at(0);
  const firstDay = first === undefined ? '' : weekdayName(first.starts);
  const days = weeks.map(({ starts }) => String(dayOfMonth(starts)));
  return [
    palette.quiet(labelled('', monthCells(weeks), grid)),
    palette.quiet(labelled(firstDay, days, grid)),
    labelled(
      'week',
      weeks.map(({ week }) => String(week)),
      grid,
    ),
    ...eventLines(glance.events, band, grid, palette),
    ...glance.groups.flatMap((group) => ['', ...groupLines(group, weeks, band, grid, palette)]),
  ];
}

/** A name and a text for each week, under the numbers of the weeks. */
function labelled(name: string, cells: readonly string[], { label, number, cell }: Grid): string {
  const texts = cells.map((text) => pad(pad(text, number, 'right'), cell, 'left'));
  return `${pad(fitted(name, label - GAP), label, 'left')}${texts.join('')}`.trimEnd();
}

/** The month over the first week that starts in it. */
function monthCells(weeks: readonly GlanceWeek[]): readonly string[] {
  return weeks.map(({ starts }, index) => {
    const before = weeks[index - 1];
    const month = shortMonthName(starts);
    return before !== undefined && shortMonthName(before.starts) === month ? '' : month;
  });
}

/** The rows that hold anything in this band. */
function eventLines(rows: readonly EventRow[], { from, until }: Band, grid: Grid, palette: Palette): readonly string[] {
  return rows
    .map(({ label, cells }) => ({ label, cells: cells.slice(from, until) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''))
    .map(({ label, cells }) => (label === 'peak' ? palette.accent : palette.quiet)(labelled(label, cells, grid)));
}

function groupLines(
  group: GlanceGroup,
  weeks: readonly GlanceWeek[],
  band: Band,
  grid: Grid,
  palette: Palette,
): readonly string[] {
  const title = pad(fitted(group.title, grid.label - GAP), grid.label, 'left');
  return [
    palette.strong(title) + phaseBar(group, weeks, grid),
    ...eventLines(group.events, band, grid, palette),
    ...group.rows.map((row) => rowLine(row, band, grid, palette)),
  ];
}

/** `|strength ----|power ------`: each phase from its first week on; one that goes on from before is named again. */
function phaseBar({ phases }: GlanceGroup, weeks: readonly GlanceWeek[], { cell }: Grid): string {
  const first = weeks.at(0)?.week ?? 0;
  const last = weeks.at(-1)?.week ?? 0;
  const bars = phases.map(({ phase, from, weeks: length }) => {
    const shown = Math.min(from + length - 1, last) - Math.max(from, first) + 1;
    const room = shown * cell - GAP;
    return shown < 1 ? '' : `${`|${fitting(phase, room)} `.slice(0, room).padEnd(room, '-')} `;
  });
  return bars.join('').trimEnd();
}

/** The name of a phase, or the longest of its short forms that fits behind the bar's stroke. */
function fitting(phase: PhaseId, room: number): string {
  const forms = [phase, ...SHORT_FORMS[phase]];
  return forms.find((form) => form.length < room) ?? forms.at(-1) ?? phase;
}

function rowLine({ label: name, cells }: GlanceRow, { from, until }: Band, grid: Grid, palette: Palette): string {
  const texts = cells.slice(from, until).map((cell) => cellText(cell, grid, palette));
  return `${pad(fitted(name, grid.label - GAP), grid.label, 'left')}${texts.join(' '.repeat(GAP))}`.trimEnd();
}

/** A number and its mark, as wide as every other. */
function cellText(cell: GlanceCell, { number }: Grid, palette: Palette): string {
  if (cell.blocked) return palette.error(pad(BLOCKED.mark, number, 'right')) + ' ';
  if (cell.contacts === 0) return palette.quiet(pad(NOTHING, number, 'right')) + ' ';
  const text = pad(String(cell.contacts), number, 'right');
  if (cell.pinned) return palette.accent(text + PINNED.mark);
  const { mark } = MARKS[cell.kind];
  return mark === ' ' ? text + mark : palette.easy(text + mark);
}

/** What the marks mean, of those that were used, and the days it is all for. */
function footLines(glance: Glance, { palette, width }: Canvas): readonly string[] {
  const peaks = glance.peaks.map(
    ({ name, day, everybody }) => `${name}, ${dayWords(day)}${everybody ? '' : ' (some)'}`,
  );
  const legend = ['Numbers are planned jump contacts a week', ...legendOf(glance)].join(';  ');
  return [
    ...(peaks.length === 0 ? [] : hanging('Peaks: ', peaks.join('; '), width)),
    ...hanging('', `${legend}.`, width).map((line) => palette.quiet(line)),
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
  const marks = [...kinds, ...others].map(({ mark, says }) => `${mark} ${says}`);
  const grouped = groups.some(({ rows }) => rows.some(({ athletes }) => athletes > 1));
  return grouped ? ['of a group, those of the middle one whose week is as most have it', ...marks] : marks;
}
