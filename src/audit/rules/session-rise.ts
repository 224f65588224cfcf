// session-rise: a session at most a step over the usual one, and well under it in easy weeks. Common practice (C).
// The usual session is the adapted volume shared over the sessions a week that the phase has for the level, or over the
// fewer that the loading weeks of its block have room for.

import { returnStageOn } from '../../plan/athlete-facts.ts';
import { overlap } from '../../plan/applies.ts';
import type { RuleId } from '../../library/rules.ts';
import type { WeekKind } from '../../library/types.ts';
import { VOLUME } from '../../library/volume.ts';
import { isoDate } from '../../util/days.ts';
import { isEasy } from '../phases.ts';
import { jumpPlace, weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import { PERCENT } from '../../util/units.ts';

export const sessionRise = auditRule('session-rise', (season, find) => {
  const percent = season.parameter('session-rise', 'most');
  const always = season.parameter('session-rise', 'contacts');
  for (const week of season.weeks) {
    const usual = usualSession(season, week);
    if (usual === undefined) continue;
    const loading = Math.max(Math.floor(((PERCENT + percent(week)) * usual) / PERCENT), usual + always(week));
    // The little that is left of a small session need not be shared among smaller ones.
    const easy = Math.max(
      Math.floor((VOLUME.easySession * usual) / PERCENT),
      Math.min(VOLUME.smallestSession, loading),
    );
    const most = isEasy(week) && !isFreed(season, week) ? easy : loading;
    for (const session of week.jumpSessions) {
      if (session.primer || session.contacts <= most) continue;
      find(week, {
        params: { date: isoDate(session.day), found: session.contacts, most, usual },
        span: jumpPlace(session) ?? weekPlace(season, week),
      });
    }
  }
});

/** Who waives how far a deload or a taper is cut frees its sessions as well: they are held like those of a loading week. */
function isFreed({ waivers }: SeasonReading, { built, range }: WeekReading): boolean {
  const rule = CUT_BY[built.kind];
  return waivers.some((waiver) => waiver.rule === rule && overlap(waiver.range, range));
}

const CUT_BY: Partial<Record<WeekKind, RuleId>> = { deload: 'deload-depth', taper: 'taper-cut' };

/** Undefined in phases that plan no sessions, and where a signed stage sets the sessions instead. */
function usualSession(season: SeasonReading, week: WeekReading): number | undefined {
  const { jumpSessions } = week.phase;
  if (jumpSessions === undefined || week.jumpSessions.length === 0) return undefined;
  if (week.built.kind === 'return' && returnStageOn(season.athlete, week.range.from) !== undefined) return undefined;
  const frequency = Math.min(jumpSessions[week.level], jumpSessions[week.firstDayLevel]);
  return Math.floor((season.adapted[week.index]?.before ?? 0) / Math.min(frequency, roomInBlock(season, week)));
}

/** The most sessions that a loading week of the block has room for, closed weeks within it passed over. */
function roomInBlock({ weeks }: SeasonReading, { index, phase }: WeekReading): number {
  let room = 0;
  for (const step of [-1, 1]) {
    for (let at = step < 0 ? index : index + 1; at >= 0 && at < weeks.length; at += step) {
      const week = weeks[at];
      if (week === undefined || (week.phase.id !== phase.id && week.phase.id !== 'closed')) break;
      if (week.phase.id === phase.id && week.built.kind === 'load') room = Math.max(room, 1, week.built.possible);
    }
  }
  return room === 0 ? Infinity : room;
}
