// last-week: the week of a peak is never without jumping. C; a short primer helps: S13 (P).
// Said only where a day of that week, at least a day ahead, is open to the athlete for jumps and has room around it: where
// none is, nobody could do better.

import type { Competition } from '../../plan/types.ts';
import { holds } from '../../plan/applies.ts';
import { limitsOn } from '../../plan/athlete-facts.ts';
import { isoDate, weekdayOf } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { competitionBehind } from '../events.ts';
import { painOn } from '../pain.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import { itemsOf } from '../../plan/items-of.ts';

export const lastWeek = auditRule('last-week', (season, find) => {
  for (const peak of season.competitions) {
    if (peak.prepare !== 'peak') continue;
    const week = season.weeks.find((one) => holds(one.range, peak.range.from));
    if (week === undefined || week.jumpSessions.length > 0 || !couldJump(season, week, peak)) continue;
    find(week, {
      params: { competition: peak.name, date: isoDate(peak.range.from) },
      related: [{ span: peak.span, message: 'the competition' }],
    });
  }
});

function couldJump(season: SeasonReading, week: WeekReading, peak: Competition): boolean {
  for (let day = week.range.from; day < peak.range.from; day += 1)
    if (isOpen(season, day) && hasRoom(season, week, day)) return true;
  return false;
}

/** No match and no jump session so near that a primer would break another rule. */
function hasRoom(season: SeasonReading, week: WeekReading, day: Day): boolean {
  if (competitionBehind(season, day, season.parameter('after-event', 'free-days')(week)) !== undefined) return false;
  const apart = season.parameter('session-spacing', 'apart')(week);
  return season.jumpSessions.every((session) => Math.abs(session.day - day) >= apart);
}

/** A slot for jumps, its place open, the athlete there, nothing that bars jumping altogether. */
function isOpen(season: SeasonReading, day: Day): boolean {
  const { athlete, plan } = season;
  const barred =
    !holds({ from: plan.season.starts, until: plan.season.ends }, day) ||
    athlete.away.some((away) => holds(away.range, day)) ||
    season.pins.some((pin) => holds(pin.range, day) && pin.effects.some((effect) => effect.kind === 'rest')) ||
    season.competitions.some((one) => holds(one.range, day)) ||
    limitsOn(athlete, day).some((limit) => limit.contactsASession === 0 || limit.contactsAWeek === 0) ||
    painOn(season, day)?.stops === true;
  return !barred && season.slots.some((slot) => slotIsOpen(season, slot, day));
}

function slotIsOpen({ plan, athlete }: SeasonReading, slot: SeasonReading['slots'][number], day: Day): boolean {
  if (slot.use === 'lifts' || slot.day !== weekdayOf(day) || !holds(slot.range, day)) return false;
  return !itemsOf(plan, athlete).closures.some(
    ({ range, places }) => holds(range, day) && (places === undefined || places.includes(slot.place.id)),
  );
}
