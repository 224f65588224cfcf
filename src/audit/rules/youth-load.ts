// youth-load: young lifters stay under a share of their maximum, a little higher once cleared, and do no singles. P15 (C).

import { isoDate } from '../../util/days.ts';
import { forEachLoad, shownPercent } from '../loads.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const youthLoad = auditRule('youth-load', (season, find) => {
  if (season.athlete.born === undefined) return;
  const under = season.parameter('youth-load', 'under');
  const uncleared = season.parameter('youth-load', 'most');
  const cleared = season.parameter('youth-load', 'cleared');
  const leastReps = season.parameter('youth-load', 'least-reps');
  const bound = season.athlete.cleared.has('loads') ? cleared : uncleared;
  for (const session of season.sessions) {
    if (!session.lifts) continue;
    const week = season.weekOf(session);
    const age = season.age(session.day);
    if (age === undefined || age >= under(week)) continue;
    for (const line of session.lines) {
      const { loadGrams, percent, reps, exercise } = line.line;
      if (line.lift === undefined || line.lift.held === true) continue;
      if (loadGrams === undefined && percent === undefined) continue;
      if (reps >= leastReps(week)) continue;
      find(week, {
        params: { date: isoDate(session.day), age, exercise, single: true, percent: reps, most: leastReps(week) },
        span: writtenPlace(line),
      });
    }
  }
  forEachLoad(season, ({ session, line, lift, percent }) => {
    const week = season.weekOf(session);
    const age = season.age(session.day);
    if (age === undefined || age >= under(week) || percent <= bound(week)) return;
    find(week, {
      params: {
        date: isoDate(session.day),
        age,
        exercise: lift.id,
        single: false,
        percent: shownPercent(percent),
        most: bound(week),
      },
      span: writtenPlace(line),
    });
  });
});
