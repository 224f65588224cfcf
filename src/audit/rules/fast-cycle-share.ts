// fast-cycle-share: fast contacts within the phase's band. V7 (P) for mixing, the bands C. The least share isn't asked
// of a novice in the first weeks, nor of somebody whom a limit, a signed stage or pain holds back.

import { limitedIn, returnStageOn } from '../../plan/athlete-facts.ts';
import { firstJumpWeeks, isNovice } from '../novice.ts';
import { painOn } from '../pain.ts';
import { auditRule } from '../rule.ts';
import { weekPlace } from '../places.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import { PERCENT } from '../../util/units.ts';

export const fastCycleShare = auditRule('fast-cycle-share', (season, find) => {
  const changedLeast = season.openParameter('fast-cycle-share', 'least');
  const changedMost = season.openParameter('fast-cycle-share', 'most');
  const firstWeeks = season.parameter('fast-cycle-share', 'first-weeks');
  const novice = isNovice(season.athlete);
  for (const week of season.weeks) {
    const most = changedMost(week) ?? week.phase.fastShare?.to;
    const usual = week.phase.fastShare?.from;
    const { fast, contacts, whole } = week.mix;
    if (usual === undefined || most === undefined || contacts === 0) continue;
    // Who sets the most under what the phase asks for asks for no least.
    const least = Math.min(changedLeast(week) ?? (usual > most ? 0 : usual), most);
    const over = fast * PERCENT > most * whole;
    const under = fast * PERCENT < least * contacts;
    if (!over && !under) continue;
    const early = novice && firstJumpWeeks(season, firstWeeks(week)).has(week.index);
    // What was cut of a week under way is not left to add to.
    if (under && (early || whole > contacts || isHeldBack(season, week))) continue;
    const found = over ? Math.ceil((fast * PERCENT) / contacts) : Math.floor((fast * PERCENT) / contacts);
    find(week, { params: { phase: week.phase.id, found, least, most }, span: weekPlace(season, week) });
  }
});

function isHeldBack(season: SeasonReading, { range, jumpSessions }: WeekReading): boolean {
  if (limitedIn(season.athlete, range) || returnStageOn(season.athlete, range.from) !== undefined) return true;
  return jumpSessions.some(({ day }) => painOn(season, day) !== undefined);
}
