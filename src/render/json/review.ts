// The Monday page as one JSON object: decisions and exceptions, then each table as a list of objects with the names of its
// columns.

import { CAUTIONS } from '../../report/cautions.ts';
import type { JsonObject, JsonValue } from '../../report/json-value.ts';
import { REVIEW_TABLES } from '../../report/review-tables.ts';
import type { Review } from '../../report/review.ts';
import type { Table } from '../../report/table.ts';
import type { ToldItem } from '../../report/review/told-item.ts';
import { isoDate } from '../../util/days.ts';

/** The document, with its end of line. */
export const renderReviewJson = (review: Review): string => `${JSON.stringify(reviewObject(review), null, 1)}\n`;

function reviewObject(review: Review): JsonObject {
  const { title, mark, day, week, decisions, exceptions, ahead, recorded, best, waivers, sources } = review;
  return {
    format: 'footfall review',
    version: 1,
    title,
    mark,
    as_of: isoDate(day),
    week,
    recorded_last_week: { complete: recorded.complete, of: recorded.of },
    decisions: decisions.map(itemObject),
    exceptions: exceptions.map(itemObject),
    ahead: ahead.map(itemObject),
    weeks: objectsOf(REVIEW_TABLES.weeks(review)),
    tests: objectsOf(REVIEW_TABLES.tests(review)),
    figures: objectsOf(REVIEW_TABLES.figures(review)),
    forecast: objectsOf(REVIEW_TABLES.forecast(review)),
    kilos: objectsOf(REVIEW_TABLES.kilos(review)),
    best_jumpers: best?.people.map(({ athlete, lines }) => ({ athlete, lines })) ?? [],
    waivers: waivers.map(({ what, who, when, because }) => ({ what, who, when, because })),
    sources: sources.map(({ id, words }) => ({ id, words })),
    cautions: CAUTIONS,
  };
}

const itemObject = ({ kind, athletes, words, changes, places }: ToldItem): JsonObject => ({
  kind,
  athletes,
  what: words,
  changes,
  places,
});

/** What doesn't apply is absent. */
const objectsOf = ({ columns, rows }: Table): readonly JsonObject[] =>
  [...rows].map((row) =>
    Object.fromEntries(
      columns.flatMap(({ name }, index): readonly (readonly [string, JsonValue])[] => {
        const cell = row[index];
        return cell === undefined ? [] : [[name, cell]];
      }),
    ),
  );
