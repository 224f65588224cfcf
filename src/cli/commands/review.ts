// `footfall review [plan]`: the Monday page as text, a page to print, a table or JSON. Which day it is of the record
// says, where the coach doesn't.

import { renderCsv } from '../../render/csv/csv.ts';
import { page } from '../../render/html/document.ts';
import type { Paper } from '../../render/html/paper.ts';
import { reviewSections } from '../../render/html/review.ts';
import { renderJsonTable } from '../../render/json/json-table.ts';
import { renderReviewJson } from '../../render/json/review.ts';
import { settleForLongRun } from '../../host/engine.ts';
import { errorProgress } from '../../host/progress.ts';
import { renderReview } from '../../render/terminal/review.ts';
import { renderTextTable } from '../../render/terminal/text-table.ts';
import { createReview } from '../../report/review.ts';
import type { Review } from '../../report/review.ts';
import type { ReviewPage } from '../../report/review-page.ts';
import { reviewPage } from '../../report/review-page.ts';
import { REVIEW_TABLES } from '../../report/review-tables.ts';
import { dayOfReview } from '../../report/review/review-day.ts';
import { DONE } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openSheets, tellNoneKept } from '../open-built.ts';
import { openPlan, plannedOn } from '../open-plan.ts';
import { canvasOf } from '../canvas.ts';
import type { ReviewRequest } from '../requests.ts';
import { reviewBuilds } from '../review-builds.ts';
import { select } from '../select.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';

/** Status 0; 1 where the plan has errors; 2 where options clash, a name isn't there or no day can be told. */
export async function review(request: ReviewRequest, session: Session): Promise<ExitStatus> {
  const clash = clashOf(request);
  if (clash !== undefined) return await refuse(session, clash);
  const out = await openSheets(request.near, session);
  if (!out.ok) return out.status;
  const opened = await openPlan(request.plan, session, plannedOn(request.asOf));
  if (!opened.ok) return opened.status;
  const { plan } = opened.build;
  const chosen = select(request, plan);
  if (!chosen.ok) return await refuse(session, chosen.problem);
  const day = request.asOf ?? dayOfReview(plan);
  if (day === undefined) return await refuse(session, NO_DAY);
  if (request.near !== undefined) await tellNoneKept(request.near, plan, out.sheets, session);
  // The season is compiled for each of the weeks that are looked back on.
  settleForLongRun();
  const progress = errorProgress('athletes');
  const found = createReview(reviewBuilds(plan, day, out.sheets), chosen.selection, day, progress.tell);
  progress.end();
  await session.out.writeAll(rendered(request, found, session));
  return DONE;
}

const NO_DAY = 'nothing is on record yet, so say which day the review is of: --as-of 2027-02-08';

/** Options that don't go together, in words. */
function clashOf({ table, format, paper }: ReviewRequest): string | undefined {
  if (table !== undefined && format === 'html') return '--format html has no tables';
  return paper !== undefined && format !== 'html' ? '--paper is for --format html' : undefined;
}

function rendered(
  { table, format, paper = 'a4' }: ReviewRequest,
  found: Review,
  { outTerminal }: Session,
): Iterable<string> {
  const canvas = canvasOf(outTerminal);
  switch (format) {
    case 'csv':
      return renderCsv(REVIEW_TABLES[table ?? 'weeks'](found));
    case 'html':
      return htmlPage(reviewPage(found), paper);
    case 'json':
      return table === undefined ? [renderReviewJson(found)] : renderJsonTable(REVIEW_TABLES[table](found));
    case 'text':
      return lined(
        table === undefined
          ? renderReview(reviewPage(found), canvas)
          : renderTextTable(REVIEW_TABLES[table](found), canvas),
      );
  }
}

const htmlPage = (told: ReviewPage, paper: Paper): Iterable<string> =>
  page({ title: `Review: ${told.title}`, paper, kind: 'review' }, reviewSections(told));
