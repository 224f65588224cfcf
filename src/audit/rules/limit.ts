// limit: nothing that a limit forbids on a day it is in force: exercises, contacts of a session, contacts of a week.
// Barring one leg bars lifts on one leg as well as jumps, as the reason for it seldom knows the difference.

import type { Avoid, Limit } from '../../plan/types.ts';
import { isSingleLeg } from '../../library/drill-facts.ts';
import { LOADED_JUMP_COUNTS_AS } from '../../library/lifting.ts';
import { TIERS } from '../../library/types.ts';
import type { Drill, Lift, Tier } from '../../library/types.ts';
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
  const { lifts } = season.plan.library;
  for (const line of session.lines) {
    if (!inForce.avoid.some((avoid) => bars(avoid, line, lifts))) continue;
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

function bars(avoid: Avoid, reading: LineReading, lifts: ReadonlyMap<string, Lift>): boolean {
  const { drill, lift } = reading;
  switch (avoid.kind) {
    case 'drops':
      return reading.dropCm !== undefined;
    case 'single-leg':
      return drill === undefined ? lift !== undefined && isOneLegged(lift) : isSingleLeg(drill);
    case 'direction':
      return (jumpOf(reading)?.direction[avoid.id] ?? 0) > 0;
    case 'cycle':
      return jumpOf(reading)?.cycle === avoid.id;
    case 'tier':
      return isAsHard(jumpOf(reading)?.tier, avoid.id);
    case 'family':
      return drill?.family === avoid.id;
    case 'drill':
      return drill?.id === avoid.id;
    case 'lift':
      return lift !== undefined && goesBy(avoid.id, lift.id, lifts);
    case 'pattern':
      return lift?.pattern === avoid.id;
  }
}

const isOneLegged = ({ pattern, lower, each }: Lift): boolean => pattern === 'single-leg' || (lower && each === true);

/** A jump under load is a jump as well. */
const jumpOf = ({ drill, lift }: LineReading): Pick<Drill, 'direction' | 'cycle' | 'tier'> | undefined =>
  drill ?? (lift?.pattern === 'loaded-jump' ? LOADED_JUMP_COUNTS_AS : undefined);

/** Who may do no jumps of a tier may do none of a harder one. */
const isAsHard = (tier: Tier | undefined, barred: Tier): boolean =>
  tier !== undefined && TIERS.indexOf(tier) >= TIERS.indexOf(barred);

/**
 * Whether a lift is the one that is barred or a kind of it, by the lifts whose maxima stand behind one another or by what
 * the library calls it: a pin squat that goes by a box squat, which goes by the back squat. A circle ends where it began.
 */
function goesBy(
  barred: string,
  id: string | undefined,
  lifts: ReadonlyMap<string, Lift>,
  met = new Set<string>(),
): boolean {
  if (id === undefined || met.has(id)) return false;
  if (id === barred) return true;
  met.add(id);
  const lift = lifts.get(id);
  return goesBy(barred, lift?.maxOf, lifts, met) || goesBy(barred, lift?.kindOf, lifts, met);
}
