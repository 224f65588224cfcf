// The wall chart of a season that is under way: what is over has its sum and no fullest session.

import { describe, expect, it } from 'vitest';
import type { BuiltAthlete } from '../../../src/build/types.ts';
import type { Closure, Plan } from '../../../src/plan/types.ts';
import { piece } from '../../../src/render/html/document.ts';
import { seasonPages } from '../../../src/render/html/season.ts';
import type { PhaseId, WeekKind } from '../../../src/library/types.ts';
import { createSeasonChart } from '../../../src/report/season-chart.ts';
import type { PanelWeek } from '../../../src/report/season-chart.ts';
import { createEvents } from '../../../src/report/glance-events.ts';
import { EVERYBODY, peak, slot } from '../schedule/make-plan.ts';
import { athlete, builtAthlete, day, HERE, madeBuild, madePlan, week } from './made-build.ts';

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
  // Of as many jumps nothing is said of all that holds for one.
  expect(shown([95, 'deload'], [95, 'load'])).toEqual([95, 'load', 96]);
  // Two beginners build with few jumps, two build with many: the easy week in their midst is nobody's but its own.
  expect(shown([60, 'load'], [62, 'load'], [110, 'deload'], [180, 'load'], [190, 'load'])).toEqual([62, 'load', 63]);
});

it('tells weeks in which no more than half of the squad jump', () => {
  const squad = (...members: readonly (readonly Member[])[]): readonly BuiltAthlete[] =>
    members.map((weeks) =>
      builtAthlete(weeks.map(([contacts, kind], at) => week(at + 1, [], { contacts, kind, mostContacts: contacts }))),
    );
  const people = squad(
    [
      [160, 'load'],
      [90, 'deload'],
    ],
    [
      [0, 'empty'],
      [90, 'deload'],
    ],
  );
  const chart = createSeasonChart(madeBuild(people), { who: { kind: 'everybody' } });
  for (const one of people) chart.add(one);
  const made = chart.finish();
  expect(made.panels[0]?.weeks.slice(0, 2).map(({ jumping, few, easy }) => [jumping, few, easy])).toEqual([
    [1, true, false],
    [2, false, true],
  ]);
  const pages = [...seasonPages(made, 'a4')].map(piece).join('');
  expect(pages.match(/stroke-dasharray="0\.7 1\.1"/gu)).toHaveLength(1);
  expect(pages).toContain('dotted where no more than half of the squad jump');
  expect(pages).toContain('<td>build, 1 of 2 jump</td>');
  expect(pages).toContain('<td>easy</td>');
});

describe('a week that an error keeps from being written', () => {
  const barred = builtAthlete([week(1, [], { contacts: 309, mostContacts: 240 })], { blocked: new Set([1]) });
  const panelOf = (...squad: readonly BuiltAthlete[]) => {
    const chart = createSeasonChart(madeBuild(squad), { who: { kind: 'everybody' } });
    for (const one of squad) chart.add(one);
    return chart.finish();
  };

  it('shows no number of it, and says so', () => {
    const chart = panelOf(barred);
    expect(chart.panels[0]?.weeks[0]).toMatchObject({ contacts: 0, aSession: 0, most: 0, all: 0, barred: true });
    const pages = [...seasonPages(chart, 'a4')].map(piece).join('');
    expect(pages).toContain('!! left out: an error stands in the way');
    expect(pages).toContain('<td>left out: an error stands in the way</td>');
    expect(pages).not.toContain('309');
  });

  it('stands for nobody else of the squad', () => {
    const other = builtAthlete([week(1, [], { contacts: 180, mostContacts: 200 })]);
    const higher = builtAthlete([week(1, [], { contacts: 190, mostContacts: 200 })]);
    const lower = builtAthlete([week(1, [], { contacts: 5 })], { blocked: new Set([1]) });
    expect(panelOf(lower, other, higher, barred).panels[0]?.weeks[0]).toMatchObject({ contacts: 180, barred: false });
  });
});

it('calls a week closed for a squad all of whom it keeps out, everywhere', () => {
  const closed = (change: Partial<Closure>): readonly (boolean | undefined)[] => {
    const range = { from: day('2027-01-04'), until: day('2027-01-10') };
    const closure: Closure = {
      range,
      because: 'floor',
      trained: 'none',
      who: { kind: 'everybody' },
      span: HERE,
      ...change,
    };
    const squads = ['blues', 'reds'].map((squad) =>
      builtAthlete([week(1, [])], { athlete: athlete('intermediate', 50, { id: squad, squad }) }),
    );
    const plan = madePlan({ closures: [closure], slots: [slot(1), slot(3)] });
    const chart = createSeasonChart(madeBuild(squads, plan), { who: { kind: 'everybody' } });
    for (const one of squads) chart.add(one);
    return chart.finish().panels.map(({ weeks }) => weeks[0]?.closed);
  };
  const here = slot(1).place.id;
  expect(closed({})).toEqual([true, true]);
  expect(closed({ who: { kind: 'some', squads: ['reds'], athletes: [] } })).toEqual([false, true]);
  expect(closed({ places: [here] })).toEqual([true, true]);
  expect(closed({ places: ['elsewhere'] })).toEqual([false, false]);
  expect(closed({ range: { from: day('2027-01-05'), until: day('2027-01-10') } })).toEqual([false, false]);
});

it('leaves out who has no jumps in a week, while anybody has some', () => {
  const away = [0, 'empty', 'closed'] as const;
  expect(firstWeek(away, [160, 'load'])).toMatchObject({
    week: { contacts: 160, kind: 'load' },
    phases: ['lift heavy'],
  });
  expect(firstWeek(away, away)).toMatchObject({ week: { contacts: 0, kind: 'empty' }, phases: ['closed'] });
});

it('names nobody as away who is so before or after the season', () => {
  const told = (from: string, until: string): readonly string[] => {
    const shut = {
      range: { from: day(from), until: day(until) },
      because: 'works',
      trained: 'none',
      span: HERE,
    } as const;
    const built = builtAthlete([week(1, [])], { athlete: athlete('intermediate', 50, { away: [shut] }) });
    const planned = madePlan({ closures: [{ ...shut, who: EVERYBODY }] });
    return createSeasonChart(madeBuild([built], planned), { who: { kind: 'everybody' } }).finish().notWithUs;
  };
  expect(told('2026-12-01', '2027-01-03')).toEqual([]);
  expect(told('2026-12-01', '2027-01-04')).toEqual(['4 Jan: works (everybody)', expect.stringMatching(/: 4 Jan$/u)]);
});

it.each([
  ['handball', ['match', 'matches'], 'M'],
  ['long-jump', ['competition', 'competitions'], 'C'],
  ['general', ['competition', 'competitions'], 'C'],
] as const)('speaks of what %s competes in', (sport, contest, letter) => {
  const planned = madePlan();
  const league = peak('2027-01-09', { name: 'Round', prepare: 'through' });
  const built = builtAthlete([week(1, [])]);
  const build = madeBuild([built], { ...planned, competitions: [league], season: { ...planned.season, sport } });
  const maker = createSeasonChart(build, { who: { kind: 'everybody' } });
  maker.add(built);
  const chart = maker.finish();
  expect(chart.contest).toEqual(contest);
  const pages = [...seasonPages(chart, 'a4')].map(piece).join('');
  expect(pages).toContain(`<b>${letter}</b> ${contest[0]} · `);
  expect(pages).toContain(`>${contest[1]}</text>`);
  expect(pages).toContain(`>${letter}</text>`);
  expect(pages).toContain(`<td>${contest[0]}</td>`);
  const weeks = [{ starts: day('2027-01-04') }];
  expect(createEvents(build.plan, weeks)(built.athlete).map(({ label }) => label)).toEqual([contest[1]]);
});

describe('a chart on paper', () => {
  const pagesWith = (planned: Partial<Plan>, ...people: readonly BuiltAthlete[]): string => {
    const maker = createSeasonChart(madeBuild(people, madePlan(planned)), { who: { kind: 'everybody' } });
    for (const one of people) maker.add(one);
    return [...seasonPages(maker.finish(), 'a4')].map(piece).join('');
  };

  it('says from when to when it is, and of one athlete nothing of a middle one', () => {
    const one = builtAthlete([week(1, [])]);
    expect(pagesWith({}, one)).toContain('weeks of 4 Jan 2027 to 25 Jan 2027, sheet abc1234');
    expect(pagesWith({}, one)).not.toMatch(/the middle athlete|of two/u);
    expect(pagesWith({}, one, one)).toContain('middle athlete (of two the lower)');
  });

  it('leaves peaks that are too many for its key to the list of them, with their years where there are two', () => {
    const peaks = (count: number): Partial<Plan> => ({
      competitions: Array.from({ length: count }, (_, at) =>
        peak(`2027-01-${10 + at}`, { name: `Championship of the northern and western districts ${at}` }),
      ),
      season: { ...madePlan().season, ends: day('2028-01-31') },
    });
    const told = (count: number): readonly string[] =>
      pagesWith(peaks(count), builtAthlete([week(1, [])])).match(/Sun 10 Jan 2027: Championship/gu) ?? [];
    expect([told(2).length, told(12).length]).toEqual([2, 1]);
  });
});
