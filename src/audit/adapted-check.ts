// Compares the adapted volume a build carries with the one worked out anew. Called by audit.ts. Only the first week in
// which they part is said: what comes behind follows from it.

import { problem } from '../diagnostics/problem.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { Telling } from './rule.ts';
import type { SeasonReading } from './season-reading.ts';

/** One error for the first week whose adapted volume, in contacts a week, isn't the build's; none where all agree. */
export function checkAdapted(season: SeasonReading): readonly Telling[] {
  for (const week of season.weeks) {
    const wanted = season.adapted[week.index]?.after;
    const found = week.built.adapted;
    if (wanted === undefined || wanted === found) continue;
    return [telling(week.range.from, found, wanted)];
  }
  return [];
}

function telling(week: Day, found: number, wanted: number): Telling {
  return (athlete) =>
    problem('audit/adapted-volume', {
      params: { athlete: athlete.id, week: isoDate(week), found, wanted },
      span: athlete.span,
      athlete: athlete.id,
      week,
    });
}
