// youth-ceiling: a child's sessions have a ceiling of their own, lower in the first weeks of jumping ever. V5 (P).
// First weeks count for athletes of whom no earlier jumping is written.

import { isoDate } from '../../util/days.ts';
import { firstJumpWeeks, isNewToJumping } from '../novice.ts';
import { jumpPlace, weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const youthCeiling = auditRule('youth-ceiling', (season, find) => {
  if (season.athlete.born === undefined) return;
  const under = season.parameter('youth-ceiling', 'under');
  const firstWeeks = season.parameter('youth-ceiling', 'first-weeks');
  const first = season.parameter('youth-ceiling', 'first');
  const most = season.parameter('youth-ceiling', 'most');
  const to = season.parameter('youth-ceiling', 'to');
  const isNew = isNewToJumping(season.athlete);
  for (const session of season.jumpSessions) {
    const week = season.weekOf(session);
    const age = season.age(session.day);
    if (age === undefined || age > to(week)) continue;
    const early = isNew && age < under(week) && firstJumpWeeks(season, firstWeeks(week)).has(week.index);
    const ceiling = early ? Math.min(first(week), most(week)) : most(week);
    if (session.contacts <= ceiling) continue;
    find(week, {
      params: { date: isoDate(session.day), age, found: session.contacts, most: ceiling, first: early },
      span: jumpPlace(session) ?? weekPlace(season, week),
    });
  }
});
