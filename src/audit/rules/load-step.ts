// load-step: between loading weeks of a block a load rises by a small share, or by one step of what can be loaded. P14
// (P). The heaviest load of a lift in each week counts.

import type { Kit } from '../../plan/types.ts';
import type { Lift } from '../../library/types.ts';
import { isoDate } from '../../util/days.ts';
import { pinPlace, writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { LineReading } from '../line-reading.ts';
import type { SessionReading } from '../session-reading.ts';
import type { WeekReading } from '../season-reading.ts';
import { GRAMS_A_KILO, PERCENT } from '../../util/units.ts';

interface Heaviest {
  readonly lift: Lift;
  readonly grams: number;
  readonly line: LineReading;
  readonly session: SessionReading;
}

export const loadStep = auditRule(
  'load-step',
  (season, find) => {
    const percent = season.parameter('load-step', 'most');
    const before = new Map<string, Heaviest>();
    let block: number | undefined;
    for (const week of season.weeks) {
      if (week.built.block !== block) before.clear();
      block = week.built.block;
      if (week.built.kind !== 'load') continue;
      for (const [id, now] of heaviestLoads(week)) {
        const earlier = before.get(id);
        before.set(id, now);
        if (earlier === undefined) continue;
        const most = Math.max(
          (earlier.grams * (PERCENT + percent(week))) / PERCENT,
          nextLoad(now.lift, now.session.session.slot.place.kit, earlier.grams),
        );
        if (now.grams <= most) continue;
        find(week, {
          params: {
            date: isoDate(now.session.day),
            exercise: id,
            found: now.grams / GRAMS_A_KILO,
            before: earlier.grams / GRAMS_A_KILO,
            most: most / GRAMS_A_KILO,
            units: season.plan.season.units,
          },
          span: writtenPlace(now.line) ?? pinPlace(season, week, 'load'),
        });
      }
    }
  },
  { asksLoads: true },
);

function heaviestLoads(week: WeekReading): ReadonlyMap<string, Heaviest> {
  const heaviest = new Map<string, Heaviest>();
  for (const session of week.sessions) {
    for (const line of session.lines) {
      const { lift } = line;
      const grams = line.line.loadGrams;
      if (lift === undefined || grams === undefined) continue;
      const before = heaviest.get(lift.id);
      if (before === undefined || grams > before.grams) heaviest.set(lift.id, { lift, grams, line, session });
    }
  }
  return heaviest;
}

/** The next load that can be made: a plate on each side of a bar, or the next dumbbell or kettlebell there is. */
function nextLoad(lift: Lift, kit: Kit, grams: number): number {
  const plate = kit.smallestPlateGrams;
  switch (lift.loading) {
    case 'bar':
    case 'trap-bar':
      return grams + 2 * plate;
    case 'dumbbells':
      return kit.dumbbellsGrams.find((one) => one > grams) ?? grams + plate;
    case 'kettlebell':
      return kit.kettlebellsGrams.find((one) => one > grams) ?? grams + plate;
    case 'body':
    case 'machine':
    case 'band':
    case 'medicine-ball':
      return grams + plate;
  }
}
