// budget: all jumping of a week within the number the coach has set; silent without one. For an athlete with a limit in
// force or on the way back it keeps the week from being written.

import { limitedIn, returnStageOn } from '../../plan/athlete-facts.ts';
import { ruleChangePlaces, weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { areJumpsLeft } from '../under-way.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';

export const budget = auditRule('budget', (season, find) => {
  const jumpsAWeek = season.openParameter('budget', 'jumps-a-week');
  for (const week of season.weeks) {
    const most = jumpsAWeek(week);
    const found = week.contacts + week.otherJumps;
    if (most === undefined || found <= most) continue;
    find(week, {
      params: { found, most, planned: week.contacts },
      severity: isFragile(season, week) ? 'error' : undefined,
      span: weekPlace(season, week),
      related: ruleChangePlaces(season, week, 'budget'),
    });
  }
});

function isFragile({ athlete }: SeasonReading, { range, built }: WeekReading): boolean {
  // Of a week under way of which no jumps are left there is nothing to keep from being written.
  if (built.underWay !== undefined && !areJumpsLeft(built)) return false;
  return limitedIn(athlete, range) || returnStageOn(athlete, range.from) !== undefined;
}
