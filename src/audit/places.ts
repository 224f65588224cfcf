// Where a finding points: the line of the plan that made it, before the athlete's own. Called by the rules.

import type { RelatedPlace } from '../diagnostics/types.ts';
import type { Pin } from '../plan/types.ts';
import type { RuleId } from '../library/rules.ts';
import type { Span } from '../source/types.ts';
import { overlap } from '../plan/applies.ts';
import type { LineReading } from './line-reading.ts';
import type { SessionReading } from './session-reading.ts';
import type { SeasonReading, WeekReading } from './season-reading.ts';
import { itemsOf } from '../plan/items-of.ts';

/** The line of a plan that a compiled line was written in, if it was. */
export function writtenPlace({ line }: LineReading): Span | undefined {
  return line.origin.kind === 'written' ? line.origin.span : undefined;
}

/** The first line of a session that was written by hand, if there is one. */
export function sessionPlace(session: SessionReading): Span | undefined {
  return firstWritten(session, () => true);
}

/** The same of the lines that jump. */
export function jumpPlace(session: SessionReading): Span | undefined {
  return firstWritten(session, ({ contacts }) => contacts > 0);
}

/** The same of the lifts for legs and hips. */
export function legLiftPlace(session: SessionReading): Span | undefined {
  return firstWritten(session, ({ lift }) => lift?.lower === true);
}

function firstWritten(session: SessionReading, isMeant: (line: LineReading) => boolean): Span | undefined {
  for (const line of session.lines) {
    const place = isMeant(line) ? writtenPlace(line) : undefined;
    if (place !== undefined) return place;
  }
  return undefined;
}

/**
 * What made a week's volume: the coach's number, the coach's kind of week, or the first jumps written by hand. Of a week
 * that a programme writes the pins say nothing, as its lines are its contacts.
 */
export function weekPlace(season: SeasonReading, week: WeekReading): Span | undefined {
  const written = writtenJumps(week);
  if (written !== undefined && week.built.boundBy === 'programme') return written;
  return pinPlace(season, week, 'contacts') ?? pinPlace(season, week, 'week-kind') ?? written;
}

/** The pin with such an effect in the week, if there is one. */
export function pinPlace(
  season: SeasonReading,
  week: WeekReading,
  kind: Pin['effects'][number]['kind'],
): Span | undefined {
  return season.pins.find((pin) => overlap(pin.range, week.range) && pin.effects.some((one) => one.kind === kind))
    ?.span;
}

function writtenJumps(week: WeekReading): Span | undefined {
  for (const session of week.jumpSessions) {
    const place = jumpPlace(session);
    if (place !== undefined) return place;
  }
  return undefined;
}

/** The lines that changed a rule for the week. */
export function ruleChangePlaces(season: SeasonReading, week: WeekReading, rule: RuleId): readonly RelatedPlace[] {
  return itemsOf(season.plan, season.athlete)
    .ruleChanges.filter((one) => one.rule === rule && overlap(one.range, week.range))
    .map((one) => ({ span: one.span, message: 'the rule is changed here' }));
}
