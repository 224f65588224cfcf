// return-ramp: after time away the weeks climb the ladder. R3 (M). The ladder is found anew from the empty weeks and
// what closes them; a signed stage of a return takes its place.

import { weekPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const returnRamp = auditRule('return-ramp', (season, find) => {
  for (const week of season.weeks) {
    const adapted = season.adapted[week.index];
    if (adapted?.ladder === undefined || adapted.ladderMost === undefined) continue;
    if (week.ordinary <= adapted.ladderMost) continue;
    const { number, of, weeksAway } = adapted.ladder;
    find(week, {
      params: { found: week.ordinary, most: adapted.ladderMost, step: number, steps: of, weeksAway },
      span: weekPlace(season, week),
    });
  }
});
