// Every row of every example's weeks table has a reason and an advice, and an advice that is followed does what it says.

import { describe, expect, test, vi } from 'vitest';
import type { BuiltWeek } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import { findRule } from '../../../src/library/rules.ts';
import { createPalette } from '../../../src/render/palette.ts';
import { renderWhy } from '../../../src/render/terminal/why.ts';
import type { Advice } from '../../../src/report/why/advice.ts';
import { reportWhy } from '../../../src/report/why.ts';
import { whyContacts } from '../../../src/report/week-words.ts';
import type { Why } from '../../../src/report/why.ts';
import { EXAMPLES, filesOf, planWith } from './example-plans.ts';

vi.setConfig({ testTimeout: 180_000 });

/** Of all advices that name lines to add, every so many are followed; 1 follows all. */
const FOLLOWED = Number(process.env['FOOTFALL_FOLLOWED'] ?? 12);

interface Row {
  readonly why: Why;
  readonly week: BuiltWeek;
}

function rowsOf(example: string): readonly Row[] {
  const plan = planWith(filesOf(example));
  return [...compilePlan(plan).athletes].flatMap((built) =>
    built.weeks.map((week) => ({ week, why: reportWhy(plan, built, week, week.sessions[0]?.day ?? week.starts) })),
  );
}

describe.each(EXAMPLES)('%s', (example) => {
  const rows = rowsOf(example);

  test('every week has its chain, its bounds and an advice', () => {
    for (const { why, week } of rows) {
      const steps = why.chain.map(({ about }) => about);
      // Nobody wants anything any more of a week that is over.
      const wanted = week.done ? [] : ['wants'];
      for (const about of ['phase', 'kind', 'used to', ...wanted, 'so', 'then']) expect(steps).toContain(about);
      const told = [...why.chain, ...why.bounds, ...why.advice, ...why.sessions.flatMap(({ reasons }) => reasons)];
      expect(told.every(({ words }) => words !== '' && !/undefined|NaN/u.test(words))).toBe(true);
      expect(why.advice.length).toBeGreaterThan(0);
      for (const { rule } of told) if (rule !== undefined) expect(findRule(rule)?.id).toBe(rule);
      // Of a week under way the sheets of its days so far stay as they were.
      const isBound = week.boundBy !== 'pin' && week.underWay === undefined;
      for (const { most } of why.bounds) if (isBound) expect(week.contacts).toBeLessThanOrEqual(most);
      for (const session of why.sessions) expect(session.reasons.length).toBeGreaterThan(0);
    }
  });

  test('every week that a bound holds names it, with its number', () => {
    const free = new Set(['target', 'reach', 'pin', 'record']);
    for (const { why, week } of rows) {
      if (free.has(week.boundBy) || week.kind === 'empty' || week.kind === 'transition') continue;
      const held = why.bounds.filter((bound) => bound.held);
      expect(held.map(({ by }) => by)).toEqual([week.boundBy]);
      expect(Math.floor((held[0]?.most ?? 0) / 5) * 5).toBe(week.contacts);
    }
  });

  test('every assumed number has its mark and every written one its place', () => {
    for (const { why } of rows) {
      for (const step of why.chain.filter(({ about }) => about === 'used to' && why.week === 1)) {
        expect(step.mark !== undefined || step.places.length > 0).toBe(true);
      }
      const bare = why.bounds.filter(({ mark, places }) => mark === undefined && places.length === 0);
      expect(bare).toEqual([]);
    }
  });

  test('an advice that is followed changes the number as it says', () => {
    const files = filesOf(example);
    const advices = rows.flatMap((row) =>
      row.why.advice.filter(({ adds }) => adds.length > 0).map((one) => ({ row, one })),
    );
    const wrong = advices
      .filter((_, at) => at % FOLLOWED === 0)
      .flatMap(({ row, one }) =>
        isAsSaid(row, one, contactsAfter(row, one, files)) ? [] : [wordsOf(row, one, files)],
      );
    expect(wrong).toEqual([]);
  });
});

function contactsAfter({ why }: Row, { adds }: Advice, files: ReturnType<typeof filesOf>): number {
  const plan = planWith(files, adds);
  const alone = { ...plan, athletes: plan.athletes.filter(({ id }) => id === why.athlete) };
  const [built] = compilePlan(alone).athletes;
  const clash = built?.diagnostics.find(({ code }) => code.startsWith('schedule/pin'));
  if (clash !== undefined) return Number.NaN;
  return built?.weeks.find(({ week }) => week === why.week)?.contacts ?? Number.NaN;
}

function isAsSaid({ week }: Row, { contacts }: Advice, after: number): boolean {
  return contacts === undefined ? after > week.contacts : after === contacts && after !== week.contacts;
}

const wordsOf = (row: Row, one: Advice, files: ReturnType<typeof filesOf>): string =>
  `${row.why.athlete} week ${row.why.week}, ${row.week.contacts} by ${row.week.boundBy}: ${one.words} gave ${contactsAfter(row, one, files)}`;

test('a page of it holds the line, the mark and the lines to add', () => {
  const plan = planWith(filesOf('handball-spring'));
  const built = [...compilePlan(plan).athletes].find(({ athlete }) => athlete.id === 'oda');
  const week = built?.weeks[4];
  if (built === undefined || week === undefined) throw new Error('no week 5 of oda');
  const page = renderWhy(reportWhy(plan, built, week, week.starts), { palette: createPalette(0), width: 100 }).join(
    '\n',
  );
  expect(page).toContain('held: 205 and 10 % more');
  expect(page).toContain('season.yaml:37');
  expect(page).toContain('(C, weekly-rise)');
  expect(page).toContain('waivers: [{ rule: weekly-rise, athletes: [oda], from: 2027-02-01');
});

test('a week of a peak that is held by the taper week before says so, in the table and with its bound', () => {
  const plan = planWith({
    'season.yaml': `footfall: 1
season: { title: Spring, starts: 2027-01-04 }
places: { hall: { kit: { boxes: [30 cm], hurdles: 8 } } }
slots:
  - { day: tuesday, minutes: 90, place: hall, use: jumps }
  - { day: thursday, minutes: 90, place: hall, use: jumps }
competitions: [{ name: Cup final, date: 2027-04-24, prepare: peak }]
pins: [{ week: 2027-04-12, contacts-a-week: 60, because: exam week }]
athletes: { mira: { level: advanced, born: 2003, now: { contacts-a-session: 100, sessions-a-week: 2 } } }
`,
  });
  const [built] = compilePlan(plan).athletes;
  const week = built?.weeks.at(-1);
  if (built === undefined || week === undefined) throw new Error('no last week');
  expect(week.sessions.map(({ contacts }) => contacts)).toEqual([40]);
  expect(whyContacts(week)).toBe('taper: sessions near the 30 of the taper week before');
  const [held] = reportWhy(plan, built, week, week.starts).bounds;
  expect(held).toMatchObject({
    by: 'taper-cut',
    most: 40,
    mark: 'C',
    held: true,
    words: '1 session of 40: 25 % over 30, the largest of the taper week before',
  });
});
