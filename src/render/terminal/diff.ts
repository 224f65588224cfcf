// What changed between two builds, on a terminal: the edits with their lines, what to print again, what follows, totals.

import { dateWords } from '../../report/calendar-words.ts';
import { causeWords, NOT_TOLD_APART, pointWords, totalWords, whoWords } from '../../report/diff-words.ts';
import type { DiffReport, DiffSection } from '../../report/diff-report.ts';
import type { Canvas } from './canvas.ts';
import { hanging, pad } from './layout.ts';

const INSET = '  ';
const WEEK_WIDTH = 16;

/** The lines of the page; totals come last, parts with nothing to tell are left out. */
export function renderDiff(report: DiffReport, canvas: Canvas): readonly string[] {
  const { palette, width } = canvas;
  const edits = report.edits.flatMap(({ words, place }) =>
    hanging(INSET, place === undefined ? words : `${words}, ${place}`, width),
  );
  const people = report.people.flatMap((words) => hanging(INSET, words, width));
  return [
    ...titled('Edited', [...edits, ...people], canvas),
    ...titled(
      'Print again',
      report.printAgain.flatMap((section) => sectionLines(section, report, canvas)),
      canvas,
    ),
    ...titled(
      'Changed',
      report.after.flatMap((section) => sectionLines(section, report, canvas)),
      canvas,
    ),
    ...(report.toldApart ? [] : [...hanging('', NOT_TOLD_APART, width), '']),
    ...hanging('', totalWords(report.totals), width).map((line) => palette.quiet(line)),
  ];
}

function titled(title: string, lines: readonly string[], { palette }: Canvas): readonly string[] {
  return lines.length === 0 ? [] : [palette.strong(title), ...lines, ''];
}

function sectionLines(section: DiffSection, report: DiffReport, { palette, width }: Canvas): readonly string[] {
  let week: number | undefined;
  const groups = section.groups.flatMap((group) => {
    const head = group.starts === week ? '' : `week of ${dateWords(group.starts)}`;
    week = group.starts;
    return hanging(
      `${INSET}${pad(head, WEEK_WIDTH, 'left')}  `,
      `${pointWords(group, report)}: ${whoWords(group)}`,
      width,
    );
  });
  return [...hanging(INSET, causeWords(section, report), width).map((line) => palette.accent(line)), ...groups];
}
