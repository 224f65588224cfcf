// level-step: a level goes up one at a time, and a step after few weeks near the ceiling below is said. V4 (C).
// An athlete whose last weeks before the season were near that ceiling has been there long enough.

import { LEVELS } from '../../library/types.ts';
import type { Level } from '../../library/types.ts';
import { holds } from '../../plan/applies.ts';
import { isoDate } from '../../util/days.ts';
import { parameterByLevel } from '../parameters.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import { PERCENT } from '../../util/units.ts';

export const levelStep = auditRule(
  'level-step',
  (season, find) => {
    const { levels } = season.athlete;
    if (levels.length < 2) return;
    const weeksWanted = season.parameter('level-step', 'weeks');
    const near = season.parameter('level-step', 'near');
    const ceiling = parameterByLevel(season, 'session-ceiling');
    for (let index = 1; index < levels.length; index += 1) {
      const before = levels[index - 1]?.is;
      const step = levels[index];
      const day = step?.from;
      if (before === undefined || step === undefined || day === undefined) continue;
      const week = season.weeks.find((one) => holds(one.range, day));
      if (week === undefined) continue;
      const date = isoDate(day);
      const shared = { date, level: step.is, before };
      if (rank(step.is) - rank(before) > 1) find(week, { params: { ...shared, found: 0, wanted: 0 }, span: step.span });
      const found = weeksNear(season, week, (near(week) * ceiling(week, before)) / PERCENT);
      if (found >= weeksWanted(week)) continue;
      find(week, { params: { ...shared, found, wanted: weeksWanted(week) }, span: step.span });
    }
  },
  { separate: true },
);

function rank(level: Level): number {
  return LEVELS.indexOf(level);
}

/** Weeks before this one with a session of so many contacts or more. */
function weeksNear(season: SeasonReading, until: WeekReading, contacts: number): number {
  if (season.athlete.now.value.contactsASession >= contacts) return Infinity;
  let count = 0;
  for (const week of season.weeks) {
    if (week.index >= until.index) break;
    if (week.jumpSessions.some((session) => session.contacts >= contacts)) count += 1;
  }
  return count;
}
