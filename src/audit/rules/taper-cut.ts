// taper-cut: before a peak the volume falls by about half and the tiers stay. R5 (P). Too deep a cut is said only where
// the coach's own number or lines made it: days, slots and limits may leave less room. Tiers are compared where some
// session of the taper has room behind it for hard drills, and nothing holds the athlete.

import type { Tier } from '../../library/types.ts';
import { TIERS } from '../../library/types.ts';
import { limitedIn, returnStageOn } from '../../plan/athlete-facts.ts';
import { freeDaysBehind } from '../free-days.ts';
import { weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';

export const taperCut = auditRule('taper-cut', (season, find) => {
  const first = season.parameter('taper-cut', 'first');
  const last = season.parameter('taper-cut', 'last');
  const mostCut = season.parameter('taper-cut', 'most-cut');
  let before: WeekReading | undefined;
  for (const week of season.weeks) {
    const adapted = season.adapted[week.index];
    if (week.built.kind === 'load') before = week;
    if (adapted?.taper === undefined || week.ordinary === 0) continue;
    const found = week.ordinary;
    const used = adapted.before;
    const span = weekPlace(season, week);
    const most = Math.floor(((adapted.taper === 'first' ? first : last)(week) * used) / 100);
    const least = Math.ceil(((100 - mostCut(week)) * used) / 100);
    if (found > most) find(week, { params: { breach: 'little', found, wanted: most, adapted: used }, span });
    if (found < least && span !== undefined) {
      find(week, { params: { breach: 'much', found, wanted: least, adapted: used }, span });
    }
    const tiers = before === undefined ? undefined : lostTier(season, before, week);
    if (tiers !== undefined) find(week, { params: { breach: 'tier', ...tiers, adapted: used }, span });
  }
});

function lostTier(
  season: SeasonReading,
  before: WeekReading,
  week: WeekReading,
): { readonly found: Tier; readonly wanted: Tier } | undefined {
  const wanted = highestTier(before);
  const found = highestTier(week);
  if (wanted === undefined || found === undefined || TIERS.indexOf(found) >= TIERS.indexOf(wanted)) return undefined;
  if (limitedIn(season.athlete, week.range) || returnStageOn(season.athlete, week.range.from) !== undefined) {
    return undefined;
  }
  return week.jumpSessions.some((session) => hasRoom(season, week, session.day)) ? { found, wanted } : undefined;
}

function hasRoom(season: SeasonReading, week: WeekReading, day: number): boolean {
  return freeDaysBehind(season, week, day).next === undefined;
}

function highestTier({ jumpSessions }: WeekReading): Tier | undefined {
  let highest = -1;
  for (const session of jumpSessions) {
    if (session.primer) continue;
    for (const { drill } of session.lines) {
      if (drill !== undefined) highest = Math.max(highest, TIERS.indexOf(drill.tier));
    }
  }
  return TIERS[highest];
}
