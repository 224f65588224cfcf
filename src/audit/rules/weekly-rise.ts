// weekly-rise: a loading week at most a step over the adapted volume, which is worked out anew. R1 (C), R2 (P).
// Ladders and signed stages have rules of their own; every other week with contacts is held to this one, whatever its kind
// is called: an easy week written by hand may be anything but easy.

import { returnStageOn } from '../../plan/athlete-facts.ts';
import { ruleChangePlaces, weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import { PERCENT } from '../../util/units.ts';

export const weeklyRise = auditRule('weekly-rise', (season, find) => {
  const percent = season.parameter('weekly-rise', 'most');
  const always = season.parameter('weekly-rise', 'contacts');
  const severe = season.parameter('weekly-rise', 'severe');
  for (const week of season.weeks) {
    const adapted = season.adapted[week.index]?.before ?? 0;
    if (week.ordinary === 0 || !isHeld(season, week)) continue;
    const most = Math.max(Math.floor(((PERCENT + percent(week)) * adapted) / PERCENT), adapted + always(week));
    if (week.ordinary <= most) continue;
    find(week, {
      params: { found: week.ordinary, most, adapted },
      severity: week.ordinary * PERCENT > (PERCENT + severe(week)) * adapted ? 'error' : undefined,
      span: weekPlace(season, week),
      related: ruleChangePlaces(season, week, 'weekly-rise'),
    });
  }
});

function isHeld(season: SeasonReading, week: WeekReading): boolean {
  if (season.adapted[week.index]?.ladder !== undefined) return false;
  return week.built.kind !== 'return' || returnStageOn(season.athlete, week.range.from) === undefined;
}
