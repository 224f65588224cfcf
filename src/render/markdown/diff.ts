// What changed between two builds as Markdown, for a comment under a change: a list for the edits, a table for the rest.

import { isoDate } from '../../util/days.ts';
import { causeWords, NOT_TOLD_APART, pointWords, totalWords } from '../../report/diff-words.ts';
import type { DiffReport, DiffSection } from '../../report/diff-report.ts';

/** The lines of the comment, each without its end. What a plan says is escaped. */
export function renderDiffMarkdown(report: DiffReport): readonly string[] {
  const edits = report.edits.map(
    ({ words, place }) => `- ${plain(words)}${place === undefined ? '' : ` (\`${place.replaceAll('`', "'")}\`)`}`,
  );
  return [
    ...titled('Edited', [...edits, ...report.people.map((words) => `- ${plain(words)}`)]),
    ...titled(
      'Print again',
      report.printAgain.flatMap((section) => sectionLines(section, report)),
    ),
    ...titled(
      'Changed',
      report.after.flatMap((section) => sectionLines(section, report)),
    ),
    ...(report.toldApart ? [] : [plain(NOT_TOLD_APART), '']),
    totalWords(report.totals),
  ];
}

function titled(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [`### ${title}`, '', ...lines, ''];
}

function sectionLines(section: DiffSection, report: DiffReport): readonly string[] {
  const rows = section.groups.map(
    (group) => `| ${isoDate(group.starts)} | ${plain(pointWords(group, report))} | ${plain(group.names.join(', '))} |`,
  );
  return [`**${plain(causeWords(section, report))}**`, '', '| week of | change | who |', '|---|---|---|', ...rows, ''];
}

/** What a plan says may hold anything: nothing of it is to be read as markup. */
function plain(text: string): string {
  return text.replaceAll(/[\r\n]+/gu, ' ').replaceAll(/[\\`*_{}[\]<>#|~&@!]/gu, (sign) => `\\${sign}`);
}
