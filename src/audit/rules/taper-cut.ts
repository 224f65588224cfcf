// taper-cut: before a peak the volume falls by about half and the tiers stay. R5 (P). Too deep a cut is said only where
// the coach's own number or lines made it: days, slots and limits may leave less room. Tiers are compared where some
// session of the taper has room behind it for hard drills, and nothing holds the athlete. Sessions are held against the
// largest of the taper week before, closed weeks between left out (C).

import type { Tier } from '../../library/types.ts';
import { TIERS } from '../../library/types.ts';
import { VOLUME } from '../../library/volume.ts';
import { limitedIn, returnStageOn } from '../../plan/athlete-facts.ts';
import { freeDaysBehind } from '../free-days.ts';
import { jumpPlace, weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { Find } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import type { SessionReading } from '../session-reading.ts';

export const taperCut = auditRule('taper-cut', (season, find) => {
  const first = season.parameter('taper-cut', 'first');
  const last = season.parameter('taper-cut', 'last');
  const mostCut = season.parameter('taper-cut', 'most-cut');
  const over = season.parameter('taper-cut', 'session-over');
  let before: WeekReading | undefined;
  let largest: number | undefined;
  for (const week of season.weeks) {
    const adapted = season.adapted[week.index];
    if (week.built.kind === 'load') before = week;
    if (week.built.kind !== 'taper' && week.built.kind !== 'empty') largest = undefined;
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
    const session = largestOf(week);
    checkSession(season, week, session, { adapted: used, over: over(week), largest }, find);
    largest = session?.contacts ?? largest;
    const tiers = before === undefined ? undefined : lostTier(season, before, week);
    if (tiers !== undefined) find(week, { params: { breach: 'tier', ...tiers, adapted: used }, span });
  }
});

/** The week before was rounded down to whole steps, so its largest session is a little more than its contacts. */
function checkSession(
  season: SeasonReading,
  week: WeekReading,
  session: SessionReading | undefined,
  { adapted, over, largest }: { readonly adapted: number; readonly over: number; readonly largest: number | undefined },
  find: Find<'taper-cut'>,
): void {
  if (session === undefined || largest === undefined) return;
  const steps = Math.ceil(((100 + over) * largest) / 100 / VOLUME.step);
  const wanted = Math.max(steps * VOLUME.step, VOLUME.smallestSession);
  if (session.contacts <= wanted) return;
  find(week, {
    params: { breach: 'session', found: session.contacts, wanted, adapted, before: largest },
    span: jumpPlace(session) ?? weekPlace(season, week),
  });
}

/** The largest session that is no primer. */
function largestOf({ jumpSessions }: WeekReading): SessionReading | undefined {
  let largest: SessionReading | undefined;
  for (const session of jumpSessions) {
    if (!session.primer && session.contacts > (largest?.contacts ?? 0)) largest = session;
  }
  return largest;
}

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
