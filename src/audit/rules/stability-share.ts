// stability-share: work on unstable ground a small part of a session's sets. P13 (C). For an athlete on a signed stage
// of a return it is rehabilitation, and isn't counted.

import { returnStageOn } from '../../plan/athlete-facts.ts';
import { isoDate } from '../../util/days.ts';
import { sessionPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { PERCENT } from '../../util/units.ts';

export const stabilityShare = auditRule('stability-share', (season, find) => {
  const most = season.parameter('stability-share', 'most');
  for (const session of season.sessions) {
    let sets = 0;
    let unstable = 0;
    for (const { line, drill, lift } of session.lines) {
      sets += line.sets;
      if ((drill ?? lift)?.unstable === true) unstable += line.sets;
    }
    if (unstable === 0 || returnStageOn(season.athlete, session.day) !== undefined) continue;
    const week = season.weekOf(session);
    if (unstable * PERCENT <= most(week) * sets) continue;
    find(week, {
      params: { date: isoDate(session.day), found: Math.ceil((unstable * PERCENT) / sets), most: most(week) },
      span: sessionPlace(session),
    });
  }
});
