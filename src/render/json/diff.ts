// What changed between two builds as JSON; nothing at all where nothing changed, as in every format.
// `schemas/diff.schema.json` says what it holds.

import { isoDate } from '../../util/days.ts';
import type { DiffReport, DiffSection } from '../../report/diff-report.ts';

/** One object, indented, with a line feed behind it. */
export function renderDiffJson(report: DiffReport): string {
  const { edits, editsKnown, toldApart, people, printAgain, after, totals } = report;
  const object = {
    format: 'footfall diff',
    version: 1,
    edits,
    edits_known: editsKnown,
    told_apart: toldApart,
    people,
    print_again: printAgain.map(sectionObject),
    after: after.map(sectionObject),
    totals: { before: totals.before, after: totals.after },
  };
  return `${JSON.stringify(object, null, 1)}\n`;
}

function sectionObject({ cause, how, edits, groups }: DiffSection): object {
  return {
    cause,
    how,
    edits,
    changes: groups.map(({ starts, point, athletes, range }) => ({
      week_of: isoDate(starts),
      what: point.kind,
      subject: point.subject,
      before: range === undefined ? point.before : null,
      after: range === undefined ? point.after : null,
      moved: point.moved ?? null,
      least_moved: range?.least ?? null,
      most_moved: range?.most ?? null,
      athletes,
    })),
  };
}
