// The wall chart of a season that is under way: what is over has its sum and no fullest session.

import { expect, it } from 'vitest';
import type { PhaseId, WeekKind } from '../../../src/library/types.ts';
import { createSeasonChart } from '../../../src/report/season-chart.ts';
import type { PanelWeek } from '../../../src/report/season-chart.ts';
import { builtAthlete, madeBuild, week } from './made-build.ts';

it('gives a week that is over its jumps, and no session that nobody planned', () => {
  const over = week(1, [], { contacts: 100, done: true, boundBy: 'record' });
  const ahead = week(2, [], { contacts: 110 });
  const built = builtAthlete([over, ahead]);
  const chart = createSeasonChart(madeBuild([built]), { who: { kind: 'everybody' } });
  chart.add(built);
  const weeks = chart.finish().panels[0]?.weeks.slice(0, 2);
  expect(weeks?.map(({ contacts, aSession }) => [contacts, aSession])).toEqual([
    [100, undefined],
    [110, 0],
  ]);
});

type Member = readonly [contacts: number, kind: WeekKind, phase?: PhaseId];

/** The first week of a squad: each with contacts, kind and phase. */
function firstWeek(...members: readonly Member[]): {
  readonly week: PanelWeek | undefined;
  readonly phases: readonly string[];
} {
  const squad = members.map(([contacts, kind, phase = 'strength']) =>
    builtAthlete([week(1, [], { contacts, kind, phase, mostContacts: contacts + 1 })]),
  );
  const chart = createSeasonChart(madeBuild(squad), { who: { kind: 'everybody' } });
  for (const one of squad) chart.add(one);
  const [panel] = chart.finish().panels;
  return { week: panel?.weeks[0], phases: panel?.phases.map(({ words }) => words) ?? [] };
}

it('draws a week as that of the athlete whose jumps it shows', () => {
  const shown = (...members: readonly Member[]): readonly unknown[] => {
    const { week: first } = firstWeek(...members);
    return [first?.contacts, first?.kind, first?.most];
  };
  expect(shown([95, 'load'], [90, 'deload'])).toEqual([90, 'deload', 91]);
  expect(shown([95, 'deload'], [90, 'load'])).toEqual([90, 'load', 91]);
  // Two beginners build with few jumps, two build with many: the easy week in their midst is nobody's but its own.
  expect(shown([60, 'load'], [62, 'load'], [110, 'deload'], [180, 'load'], [190, 'load'])).toEqual([62, 'load', 63]);
});

it('leaves out who has no jumps in a week, while anybody has some', () => {
  const away = [0, 'empty', 'closed'] as const;
  expect(firstWeek(away, [160, 'load'])).toMatchObject({
    week: { contacts: 160, kind: 'load' },
    phases: ['lift heavy'],
  });
  expect(firstWeek(away, away)).toMatchObject({ week: { contacts: 0, kind: 'empty' }, phases: ['closed'] });
});
