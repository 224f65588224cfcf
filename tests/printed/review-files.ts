// Monday pages for the tests of this folder: of an example, and of the season pages fear, with long notes on record.

import { reviewBuilds } from '../../src/cli/review-builds.ts';
import type { Build } from '../../src/build/types.ts';
import type { DoneRow, TestRow } from '../../src/plan/types.ts';
import { page } from '../../src/render/html/document.ts';
import type { Paper } from '../../src/render/html/paper.ts';
import { reviewSections } from '../../src/render/html/review.ts';
import { createReview } from '../../src/report/review.ts';
import type { Review } from '../../src/report/review.ts';
import { reviewPage } from '../../src/report/review-page.ts';
import { dayOfReview } from '../../src/report/review/review-day.ts';
import { EVERYTHING } from '../../src/report/selection.ts';
import { day } from '../unit/date.ts';
import { HERE } from '../unit/schedule/make-plan.ts';

/** The page of a build with something on record; undefined for others. */
export function reviewFile(build: Build, paper: Paper): string | undefined {
  const on = dayOfReview(build.plan);
  if (on === undefined) return undefined;
  return htmlOf(createReview(reviewBuilds(build.plan, on), EVERYTHING, on), paper);
}

const NOTE =
  'stopped after the second set, said it was nothing, came back for the last one and <b>limped</b> home & rang at night';

/** Weeks 1 and 2 of the build are over; its athletes keep a record of many words. */
export function fearedReview(build: Build, paper: Paper): string {
  const { athletes } = build.plan;
  const done = athletes.flatMap(({ id }, index): readonly DoneRow[] => [
    {
      day: day('2027-01-12'),
      athlete: id,
      kind: 'session',
      contacts: 7 * index,
      pain: index % 8,
      note: NOTE,
      span: HERE,
    },
    { day: day('2027-01-13'), athlete: id, kind: 'practice', contacts: 9 * index, minutes: 90, effort: 7, span: HERE },
  ]);
  const tests = athletes.flatMap(({ id }, index): readonly TestRow[] =>
    ['2027-01-05', '2027-01-12'].map((on, nth) => ({
      day: day(on),
      athlete: id,
      test: index % 3 === 0 ? 'drop-jump' : 'countermovement-jump',
      trial: 1,
      value: 28 + (index % 11) + nth,
      unit: 'cm',
      method: 'the old contact mat in the small hall',
      arms: index % 2 === 0,
      span: HERE,
    })),
  );
  const plan = { ...build.plan, record: { done, tests } };
  const on = day('2027-01-18');
  const now = { ...build, plan };
  return htmlOf(
    createReview({ now, sheetsOf: () => now, withMax: (athlete) => now.athlete(athlete) }, EVERYTHING, on),
    paper,
  );
}

function htmlOf(review: Review, paper: Paper): string {
  const told = reviewPage(review);
  return [...page({ title: told.title, paper, kind: 'review' }, reviewSections(told))].join('');
}
