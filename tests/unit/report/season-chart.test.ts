// The wall chart of a season that is under way: what is over has its sum and no fullest session.

import { expect, it } from 'vitest';
import { createSeasonChart } from '../../../src/report/season-chart.ts';
import { builtAthlete, madeBuild, week } from './made-build.ts';

it('gives a week that is over its jumps, and no session that nobody planned', () => {
  const over = week(1, [], { contacts: 100, done: true, boundBy: 'record' });
  const ahead = week(2, [], { contacts: 110 });
  const built = builtAthlete([over, ahead]);
  const chart = createSeasonChart(madeBuild([built]), { who: { kind: 'everybody' } });
  chart.add(built);
  const weeks = chart.finish().panels[0]?.weeks.slice(0, 2);
  expect(weeks?.map(({ planned, aSession }) => [planned, aSession])).toEqual([
    [100, undefined],
    [110, 0],
  ]);
});
