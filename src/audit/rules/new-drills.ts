// new-drills: few drills in a week that the athlete hasn't done before in the season. C. The first week with jumps has
// nothing before it and is left out, and so is the warm-up.

import { auditRule } from '../rule.ts';
import type { WeekReading } from '../season-reading.ts';

export const newDrills = auditRule('new-drills', (season, find) => {
  const most = season.parameter('new-drills', 'most');
  const known = new Set<string>();
  for (const week of season.weeks) {
    if (week.jumpSessions.length === 0) continue;
    const first = known.size === 0;
    const added = addDrills(week, known);
    if (first || added.length <= most(week)) continue;
    find(week, { params: { found: added.length, most: most(week), drills: added.join(', ') } });
  }
});

/** The drills of the week that were not known, which they are from here on. */
function addDrills(week: WeekReading, known: Set<string>): readonly string[] {
  const added: string[] = [];
  for (const session of week.jumpSessions) {
    for (const { drill, line } of session.lines) {
      if (drill === undefined || line.part === 'prepare' || known.has(drill.id)) continue;
      known.add(drill.id);
      added.push(drill.id);
    }
  }
  return added;
}
