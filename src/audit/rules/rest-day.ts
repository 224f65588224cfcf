// rest-day: a young athlete has a free day in each week: no session, practice, match or test. C.

import { auditRule } from '../rule.ts';
import type { DayReading } from '../season-reading.ts';

export const restDay = auditRule('rest-day', (season, find) => {
  const under = season.parameter('rest-day', 'under');
  const freeDays = season.parameter('rest-day', 'free-days');
  for (const week of season.weeks) {
    const age = season.age(week.range.from);
    if (age === undefined || age >= under(week)) continue;
    let found = 0;
    for (let day = week.range.from; day <= week.range.until; day += 1) if (isFree(season.dayAt(day))) found += 1;
    if (found < freeDays(week)) find(week, { params: { found, wanted: freeDays(week), age } });
  }
});

function isFree(day: DayReading | undefined): boolean {
  if (day === undefined) return true;
  const { sessions, match, test, practiceJumps } = day;
  return sessions.length === 0 && match === undefined && test === undefined && practiceJumps === 0;
}
