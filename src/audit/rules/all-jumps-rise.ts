// all-jumps-rise: practice, matches and tests count too. Where they rise clearly, planned contacts stay within the
// adapted volume; and all jumping stays near what was usual, A and the mean of other jumps of the weeks before. Common
// practice (C). Planned contacts that rise alone are left to weekly-rise, and weeks without any jumps are no part of the mean.

import { VOLUME } from '../../library/volume.ts';
import { auditRule } from '../rule.ts';
import { weekPlace } from '../places.ts';
import { areJumpsLeft } from '../under-way.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import { PERCENT } from '../../util/units.ts';

export const allJumpsRise = auditRule('all-jumps-rise', (season, find) => {
  const percent = season.parameter('all-jumps-rise', 'most');
  const reach = season.parameter('all-jumps-rise', 'weeks');
  const earlier: number[] = [];
  for (const week of season.weeks) {
    const held = heldAt(season, week);
    if (held !== undefined && week.ordinary > held.most) {
      find(week, { params: { held: true, found: week.ordinary, ...held }, span: weekPlace(season, week) });
    }
    const before = sumOfLast(earlier, reach(week));
    const adapted = season.adapted[week.index]?.before ?? 0;
    // In hundredths of a jump, and so many times as many as there are weeks in the mean.
    const usual = adapted * reach(week) + (before ?? 0);
    const rises = before !== undefined && week.otherJumps * reach(week) > before;
    if (rises && (week.ordinary + week.otherJumps) * PERCENT * reach(week) > percent(week) * usual) {
      const planned = week.contacts;
      const most = Math.floor((percent(week) * usual) / (PERCENT * reach(week)));
      const events = eventJumps(season, week);
      const all = planned + week.otherJumps;
      find(week, {
        params: {
          held: false,
          found: all,
          most,
          before: Math.round(usual / reach(week)),
          after: all,
          events,
          practice: week.otherJumps - events,
          planned,
        },
        severity: isLeast(week, most, adapted) ? 'notice' : undefined,
      });
    }
    if (week.contacts + week.otherJumps > 0) earlier.push(week.usualOtherJumps);
  }
});

/** Other jumps alone are no more than that, and the plan has no more beside them than it may always have. */
const isLeast = ({ ordinary, otherJumps }: WeekReading, most: number, adapted: number): boolean =>
  otherJumps <= most && ordinary * PERCENT <= VOLUME.leastBesideOthers * adapted;

/** Of matches and tests. */
function eventJumps({ days }: SeasonReading, { range }: WeekReading): number {
  let sum = 0;
  for (const { day, matchJumps, testContacts } of days)
    if (range.from <= day && day <= range.until) sum += matchJumps + testContacts;
  return sum;
}

/** The adapted volume, in a loading week with jumps to come whose other jumps rise clearly on the week before. */
function heldAt(season: SeasonReading, week: WeekReading): { most: number; before: number; after: number } | undefined {
  const before = season.weeks[week.index - 1]?.usualOtherJumps;
  const { built, otherJumps } = week;
  const isPast = built.underWay !== undefined && !areJumpsLeft(built);
  if (built.kind !== 'load' || before === undefined || isPast) return undefined;
  if (otherJumps * PERCENT <= (PERCENT + VOLUME.otherJumpsRise) * before) return undefined;
  return { most: season.adapted[week.index]?.before ?? 0, before, after: otherJumps };
}

/** Undefined while fewer weeks than that lie behind. */
function sumOfLast(earlier: readonly number[], reach: number): number | undefined {
  if (reach < 1 || earlier.length < reach) return undefined;
  let sum = 0;
  for (let index = earlier.length - reach; index < earlier.length; index += 1) sum += earlier[index] ?? 0;
  return sum;
}
