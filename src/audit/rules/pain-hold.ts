// pain-hold: pain the morning after holds the volume and leaves fast and high-tier drills out for the week behind it;
// more pain stops the jumping until a recorded morning is better. G12 (S), as a rule C.

import { doneBy, painPlace } from '../../plan/done-by.ts';
import { isoDate } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { painOn } from '../pain.ts';
import type { Pain } from '../pain.ts';
import { jumpPlace, weekPlace, writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { Find } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import type { SessionReading } from '../session-reading.ts';

export const painHold = auditRule('pain-hold', (season, find) => {
  if (doneBy(season.plan.record, season.athlete.id).every((row) => row.pain === undefined)) return;
  const held = new Set<WeekReading>();
  for (const session of season.jumpSessions) {
    const week = season.weekOf(session);
    const pain = stopBefore(season, week, session.day) ?? painOn(season, session.day);
    if (pain === undefined) continue;
    const details = detailsOf(session, pain);
    if (pain.stops) {
      find(week, { ...details, params: { ...details.params, what: 'jumps' }, span: jumpPlace(session) });
      continue;
    }
    checkDrills(season, session, pain, find);
    if (held.has(week)) continue;
    held.add(week);
    if (week.contacts <= (season.adapted[week.index]?.before ?? 0)) continue;
    find(week, { ...details, params: { ...details.params, what: 'rise' }, span: weekPlace(season, week) });
  }
});

/** The last pain that stops a day of the week up to this one: after it jumps come back with a later week. */
function stopBefore(season: SeasonReading, { range }: WeekReading, until: Day): Pain | undefined {
  for (let day = until; day >= range.from; day -= 1) {
    const pain = painOn(season, day);
    if (pain?.stops === true) return pain;
  }
  return undefined;
}

function checkDrills(season: SeasonReading, session: SessionReading, pain: Pain, find: Find<'pain-hold'>): void {
  const details = detailsOf(session, pain);
  for (const line of session.lines) {
    if (line.drill === undefined || (line.drill.cycle !== 'fast' && line.drill.tier !== 'high')) continue;
    find(season.weekOf(session), {
      ...details,
      params: { ...details.params, what: 'drill' },
      span: writtenPlace(line),
    });
  }
}

function detailsOf(session: SessionReading, { row, pain }: Pain) {
  return {
    params: { date: isoDate(session.day), pain, since: isoDate(row.day) },
    related: [{ span: painPlace(row), message: 'the record of it' }],
  };
}
