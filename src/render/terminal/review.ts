// The Monday page on a terminal, in the order of report/review-page.ts. Called by `footfall review`.

import { NO_DECISIONS, NO_EXCEPTIONS, NOTHING_AHEAD } from '../../report/review-page.ts';
import type { ReviewPage } from '../../report/review-page.ts';
import type { ReviewSection, SectionColumn } from '../../report/review/sections/section.ts';
import type { ToldItem } from '../../report/review/told-item.ts';
import type { Canvas } from './canvas.ts';
import { renderCautions } from './cautions.ts';
import { hanging, layOut } from './layout.ts';
import type { LayoutColumn } from './layout.ts';

/** The lines of the page one by one, as a big squad has many. */
export function* renderReview(page: ReviewPage, canvas: Canvas): Iterable<string> {
  const { palette, width } = canvas;
  yield* hanging('', page.title, width).map(palette.strong);
  yield* hanging('', page.facts.join(' · '), width).map(palette.quiet);
  yield* titled(page.toDecide, decisions(page.decisions, canvas), canvas);
  yield* titled('Otherwise than written', items(page.exceptions, NO_EXCEPTIONS, canvas), canvas);
  yield* titled('The week ahead', items(page.ahead, NOTHING_AHEAD, canvas), canvas);
  for (const section of page.sections) yield* titled(section.title, sectionLines(section, canvas), canvas);
  yield '';
  yield* renderCautions(canvas);
}

function* titled(title: string, lines: readonly string[], { palette }: Canvas): Iterable<string> {
  yield '';
  yield palette.strong(title);
  yield* lines;
}

function decisions(items: readonly ToldItem[], { palette, width }: Canvas): readonly string[] {
  if (items.length === 0) return [NO_DECISIONS];
  const inset = String(items.length).length + 2;
  const below = ' '.repeat(inset);
  return items.flatMap(({ names, words, changes, places }, index) => [
    ...hanging(String(index + 1).padEnd(inset), `${names.join(', ')}: ${words}`, width, palette.strong),
    ...(changes === undefined ? [] : hanging(below, changes, width)),
    ...(places.length === 0 ? [] : hanging(below, places.join(', '), width).map(palette.quiet)),
  ]);
}

function items(told: readonly ToldItem[], none: string, { palette, width }: Canvas): readonly string[] {
  if (told.length === 0) return [none];
  const columns: readonly LayoutColumn<ToldItem>[] = [
    { title: '', align: 'left', text: ({ kind }) => kind },
    { title: '', align: 'left', text: ({ names, words }) => `${names.join(', ')}: ${words}`, wrapAt: LEAST_WORDS },
    { title: '', align: 'left', text: ({ places }) => places.join(', '), spare: 1, paint: palette.quiet },
  ];
  return layOut(told, columns, width, palette.quiet).slice(1);
}

const LEAST_WORDS = 24;
const LEAST_WRAPPED = 16;

function sectionLines({ columns, rows, notes }: ReviewSection, { palette, width }: Canvas): readonly string[] {
  const lines =
    columns.length === 0
      ? rows.flatMap(([line = '']) => hanging('', line, width))
      : layOut(rows, columns.map(layoutColumn), width, palette.quiet);
  return [...lines, ...notes.flatMap((note) => hanging('', note, width)).map(palette.quiet)];
}

const layoutColumn = (
  { title, align, spare, wraps = false }: SectionColumn,
  index: number,
): LayoutColumn<readonly string[]> => ({
  title,
  align,
  text: (row) => row[index] ?? '',
  ...(spare !== undefined && { spare }),
  ...(wraps && { wrapAt: LEAST_WRAPPED }),
});
