// What differs between two sides, printed: for `footfall diff`, and behind each save for `build --watch`.

import { diffBuilds } from '../diff/diff-builds.ts';
import { sheetOf } from '../diff/sheet.ts';
import type { Side } from '../diff/side.ts';
import { tryEdits } from '../diff/trials.ts';
import type { WeeksOf } from '../diff/trials.ts';
import { compilePlan } from '../compile.ts';
import { renderDiffJson } from '../render/json/diff.ts';
import { renderDiffMarkdown } from '../render/markdown/diff.ts';
import { renderDiff } from '../render/terminal/diff.ts';
import { reportDiff } from '../report/diff-report.ts';
import type { DiffReport } from '../report/diff-report.ts';
import type { Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import type { Standing } from './open-plan.ts';
import { canvasOf } from './canvas.ts';
import type { DiffRequest } from './requests.ts';
import { lined } from './session.ts';
import type { Session } from './session.ts';

export interface Sides {
  readonly before: Side;
  readonly after: Side;
  /** Sheets are out for the weeks that start up to this day; absent: up to the last record of the later side. */
  readonly printed?: Day;
  /** What both were compiled with; plans that have a part of the edits are compiled likewise. */
  readonly standing: Standing;
}

/** Whether there was anything to tell. */
export async function tellDiff(
  { before, after, printed, standing }: Sides,
  format: DiffRequest['format'],
  session: Session,
): Promise<boolean> {
  const found = diffBuilds(before, after);
  const out = printed ?? after.plan?.record.done.at(-1)?.day;
  const trials = tryEdits(found, (plan) => weeksOf(plan, standing));
  const report = reportDiff(found, {
    before,
    after,
    ...(out !== undefined && { printed: out }),
    ...(trials !== undefined && { trials }),
  });
  if (report === undefined) return false;
  await session.out.writeAll(rendered(format, report, session));
  return true;
}

function weeksOf(plan: Plan, standing: Standing): WeeksOf {
  const build = compilePlan(plan, standing);
  const athletes = new Map(plan.athletes.map((athlete) => [athlete.id, athlete]));
  return (id) => {
    const athlete = athletes.get(id);
    return athlete === undefined ? undefined : sheetOf(build.athlete(athlete));
  };
}

function rendered(format: DiffRequest['format'], report: DiffReport, { outTerminal }: Session): Iterable<string> {
  switch (format) {
    case 'json':
      return [renderDiffJson(report)];
    case 'markdown':
      return lined(renderDiffMarkdown(report));
    case 'text':
      return lined(renderDiff(report, canvasOf(outTerminal)));
  }
}
