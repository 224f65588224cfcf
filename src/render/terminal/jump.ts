// Figures of jump tests on a terminal: a heading for each test, the figures below it, the sources at the end.

import { dateWithYear } from '../../report/calendar-words.ts';
import { figureWords, sourceOf } from '../../report/jump-report.ts';
import type { Figure, JumpPage } from '../../report/jump-report.ts';
import type { Canvas } from './canvas.ts';
import { hanging, layOut } from './layout.ts';
import type { LayoutColumn } from './layout.ts';

const COLUMNS: readonly LayoutColumn<Figure>[] = [
  { title: 'figure', align: 'left', text: ({ what }) => what },
  { title: 'value', align: 'right', text: (figure) => figureWords(figure) },
  { title: '', align: 'left', text: ({ unit }) => unit },
  { title: 'mark', align: 'left', text: ({ basis }) => sourceOf(basis)?.mark ?? '' },
  { title: 'note', align: 'left', text: ({ note = '' }) => note, wrapAt: 24 },
];

/** The pages in order, then where their formulas are from. */
export function renderJumps(pages: readonly JumpPage[], { palette, width }: Canvas): readonly string[] {
  const lines = pages.flatMap((page) => [
    palette.strong(headingOf(page)),
    ...layOut(page.figures, COLUMNS, width, palette.quiet),
    '',
  ]);
  const bases = [...new Set(pages.flatMap(({ figures }) => figures.flatMap(({ basis = [] }) => basis)))].toSorted();
  const sources = bases.flatMap((basis) => {
    const source = sourceOf(basis);
    return source === undefined ? [] : hanging(`${basis} `, `${source.fact} (${source.mark}) ${source.source}`, width);
  });
  return [...lines, ...sources.map((line) => palette.quiet(line))];
}

function headingOf({ group: { athlete, day, test, method, arms } }: JumpPage): string {
  const parts = [
    athlete,
    day === undefined ? undefined : dateWithYear(day),
    test,
    method,
    arms === undefined ? undefined : arms ? 'with arms' : 'without arms',
  ];
  return parts.filter((part) => part !== undefined).join(' · ');
}
