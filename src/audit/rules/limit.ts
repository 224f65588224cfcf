// limit: nothing that a limit forbids on a day it is in force: exercises, contacts of a session, contacts of a week.
// Barring one leg bars lifts on one leg as well as jumps, as the reason for it seldom knows the difference.

import type { Avoid, Limit } from '../../plan/types.ts';
import { isSingleLeg } from '../../library/drill-facts.ts';
import type { Direction } from '../../library/types.ts';
import { limitsOn } from '../../plan/athlete-facts.ts';
import { holds } from '../../plan/applies.ts';
import { isoDate } from '../../util/days.ts';
import { jumpPlace, weekPlace, writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { Find } from '../rule.ts';
import type { LineReading } from '../line-reading.ts';
import type { SessionReading } from '../session-reading.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';

export const limit = auditRule('limit', (season, find) => {
  if (season.athlete.limits.length === 0) return;
  for (const session of season.sessions) {
    for (const inForce of limitsOn(season.athlete, session.day)) checkSession(season, session, inForce, find);
  }
  for (const week of season.weeks) {
    for (const one of season.athlete.limits) checkWeek(season, week, one, find);
  }
});

function checkSession(season: SeasonReading, session: SessionReading, inForce: Limit, find: Find<'limit'>): void {
  const week = season.weekOf(session);
  const date = isoDate(session.day);
  const related = [{ span: inForce.span, message: 'the limit' }];
  const most = inForce.contactsASession;
  if (most !== undefined && session.contacts > most) {
    find(week, {
      params: { date, what: '', found: session.contacts, most },
      span: jumpPlace(session) ?? weekPlace(season, week),
      related,
    });
  }
  for (const line of session.lines) {
    if (!inForce.avoid.some((avoid) => bars(avoid, line))) continue;
    find(week, { params: { date, what: line.line.exercise, found: 0, most: 0 }, span: writtenPlace(line), related });
  }
}

/** A week's number counts for a week with a jump session on a day of the limit. */
function checkWeek(season: SeasonReading, week: WeekReading, one: Limit, find: Find<'limit'>): void {
  const most = one.contactsAWeek;
  if (most === undefined || week.contacts <= most) return;
  if (!week.jumpSessions.some((session) => holds(one.range, session.day))) return;
  find(week, {
    params: { date: '', what: '', found: week.contacts, most },
    span: weekPlace(season, week),
    related: [{ span: one.span, message: 'the limit' }],
  });
}

function bars(avoid: Avoid, { line, drill, lift, dropCm }: LineReading): boolean {
  switch (avoid.kind) {
    case 'drops':
      return dropCm !== undefined;
    case 'single-leg':
      return drill === undefined ? lift?.pattern === 'single-leg' : isSingleLeg(drill);
    case 'direction':
      return drill !== undefined && drill.direction[avoid.id as Direction] > 0;
    case 'cycle':
      return drill?.cycle === avoid.id;
    case 'tier':
      return drill?.tier === avoid.id;
    case 'family':
      return drill?.family === avoid.id;
    case 'drill':
      return line.exercise === avoid.id;
    case 'lift':
      // Not the one that is named alone: a lift that goes by its maximum is a kind of it.
      return [line.exercise, lift?.maxOf, lift?.kindOf].includes(avoid.id);
    case 'pattern':
      return lift?.pattern === avoid.id;
  }
}
