// all-jumps-rise: practice, matches and tests count too. Where they rise clearly, planned contacts stay within the
// adapted volume; and all jumping stays near the mean of the weeks before. Common practice (C). Planned contacts that
// rise alone are left to weekly-rise, and weeks without any are no part of the mean.

import { VOLUME } from '../../library/volume.ts';
import { auditRule } from '../rule.ts';
import { weekPlace } from '../places.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';
import { PERCENT } from '../../util/units.ts';

export const allJumpsRise = auditRule('all-jumps-rise', (season, find) => {
  const percent = season.parameter('all-jumps-rise', 'most');
  const reach = season.parameter('all-jumps-rise', 'weeks');
  const earlier: WeekReading[] = [];
  for (const week of season.weeks) {
    const held = heldAt(season, week);
    if (held !== undefined && week.ordinary > held.most) {
      find(week, { params: { held: true, found: week.ordinary, ...held }, span: weekPlace(season, week) });
    }
    const mean = meanOf(earlier, reach(week));
    const all = week.contacts + week.otherJumps;
    if (mean !== undefined && week.otherJumps > mean.other && all * PERCENT > percent(week) * mean.all) {
      const most = Math.floor((percent(week) * mean.all) / PERCENT);
      const events = eventJumps(season, week);
      const practice = week.otherJumps - events;
      const planned = week.contacts;
      find(week, {
        params: { held: false, found: all, most, before: Math.round(mean.all), after: all, events, practice, planned },
      });
    }
    if (all > 0) earlier.push(week);
  }
});

/** Of matches and tests. */
function eventJumps({ days }: SeasonReading, { range }: WeekReading): number {
  let sum = 0;
  for (const { day, matchJumps, testContacts } of days)
    if (range.from <= day && day <= range.until) sum += matchJumps + testContacts;
  return sum;
}

/** The adapted volume, in a loading week whose other jumps rise clearly on the week before. */
function heldAt(season: SeasonReading, week: WeekReading): { most: number; before: number; after: number } | undefined {
  const before = season.weeks[week.index - 1]?.usualOtherJumps;
  if (week.built.kind !== 'load' || before === undefined) return undefined;
  if (week.otherJumps * PERCENT <= (PERCENT + VOLUME.otherJumpsRise) * before) return undefined;
  return { most: season.adapted[week.index]?.before ?? 0, before, after: week.otherJumps };
}

/** Undefined while fewer weeks than that lie behind. */
function meanOf(earlier: readonly WeekReading[], reach: number): { all: number; other: number } | undefined {
  if (reach < 1 || earlier.length < reach) return undefined;
  let contacts = 0;
  let other = 0;
  for (let index = earlier.length - reach; index < earlier.length; index += 1) {
    contacts += earlier[index]?.contacts ?? 0;
    other += earlier[index]?.otherJumps ?? 0;
  }
  return { all: (contacts + other) / reach, other: other / reach };
}
