// drop-mass: over a body mass, drops from moderate heights only. G1 (P). Without a mass in the plan it is silent.

import { isoDate } from '../../util/days.ts';
import { dropLines } from '../drops.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { GRAMS_A_KILO } from '../../util/units.ts';

export const dropMass = auditRule('drop-mass', (season, find) => {
  const over = season.parameter('drop-mass', 'over');
  const most = season.parameter('drop-mass', 'most');
  for (const { session, line, drill, cm } of dropLines(season)) {
    // Asked for here and not before: of somebody who doesn't drop the audit knows no mass.
    const { massGrams } = season.athlete;
    const week = season.weekOf(session);
    if (massGrams === undefined || massGrams <= over(week) * GRAMS_A_KILO || cm <= most(week)) continue;
    find(week, {
      params: {
        date: isoDate(session.day),
        exercise: drill.id,
        cm,
        most: most(week),
        kg: over(week),
        units: season.plan.season.units,
      },
      span: writtenPlace(line),
    });
  }
});
