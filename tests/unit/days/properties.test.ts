// What holds for the days of any season, with the stages before them run as they are: spacing, open days, one session a
// slot, and every contact of a week in one of its sessions.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/plan/types.ts';
import { ruleBook } from '../../../src/plan/rule-book.ts';
import { scheduleDays } from '../../../src/schedule/days.ts';
import type { ScheduledSession } from '../../../src/schedule/types.ts';
import type { Weekday } from '../../../src/util/days.ts';
import { day } from '../date.ts';
import { ALWAYS, EVERYBODY, HERE, athlete, slot } from '../schedule/make-plan.ts';
import { stages } from '../schedule/stages.ts';
import { FIRST_MONDAY, planOf } from './make-season.ts';

const START = day(FIRST_MONDAY);
const about = { who: EVERYBODY, span: HERE, because: 'so' };
const weekday = fc.integer({ min: 0, max: 6 }) as fc.Arbitrary<Weekday>;

const seasons = fc.integer({ min: 3, max: 20 }).chain((weeks) => {
  const range = fc
    .tuple(fc.integer({ min: 0, max: weeks * 7 - 1 }), fc.integer({ min: 0, max: 10 }))
    .map(([from, length]) => ({ from: START + from, until: START + from + length }));
  const slots = fc
    .array(
      fc.record({ day: weekday, use: fc.constantFrom('jumps', 'lifts', 'both'), minutes: fc.constantFrom(45, 60, 90) }),
      {
        minLength: 1,
        maxLength: 8,
      },
    )
    .map((all) =>
      all.toSorted((a, b) => a.day - b.day).map((one, index) => slot(one.day, { ...one, id: `slot-${index}` })),
    );
  const competitions = fc.array(
    fc
      .record({
        name: fc.constant('Match'),
        range: range.map(({ from }) => ({ from, until: Math.min(from, START + weeks * 7 - 1) })),
        prepare: fc.constantFrom('peak', 'through', 'freshen'),
        jumps: fc.constantFrom(0, 60),
      })
      .map((one) => ({ ...one, ...about })),
    { maxLength: 4 },
  );
  const practice = fc.array(
    fc.record({ day: weekday, jumps: fc.constantFrom(30, 60, 90) }).map((one) => ({ ...one, ...about, range: ALWAYS })),
    { maxLength: 3 },
  );
  const closures = fc.array(
    range.map((closed) => ({ range: closed, trained: 'none' as const, ...about })),
    { maxLength: 2 },
  );
  const waivers = fc.array(
    fc
      .record({ rule: fc.constantFrom('session-spacing' as const, 'lift-spacing' as const), range })
      .map((one) => ({ ...one, ...about })),
    { maxLength: 1 },
  );
  const level = fc.constantFrom('beginner' as const, 'intermediate' as const, 'advanced' as const);
  return fc.record({
    weeks: fc.constant(weeks),
    level,
    change: fc.record({ slots, competitions, practice, closures, waivers }),
  });
});

function run({
  weeks,
  level,
  change,
}: {
  weeks: number;
  level: 'beginner' | 'intermediate' | 'advanced';
  change: Partial<Plan>;
}) {
  const plan = planOf(weeks, change);
  const input = stages(plan, athlete(level, 70));
  return { plan, input, ...scheduleDays(plan, input) };
}

/** Days from each to the next, with the fewest there should be in the week of the later one. */
function gaps(
  sessions: readonly ScheduledSession[],
  { plan, input }: ReturnType<typeof run>,
  rule: 'session-spacing' | 'lift-spacing',
) {
  const book = ruleBook(plan, input.grid.athlete);
  return sessions.slice(1).map((session, index) => {
    const week = input.grid.weeks.find(({ starts }) => starts <= session.day && session.day < starts + 7);
    const range = { from: week?.starts ?? 0, until: (week?.starts ?? 0) + 6 };
    const apart = book.waiver(rule, range) === undefined ? (book.value(rule, 'apart', range) ?? 0) : 1;
    return { days: session.day - (sessions[index]?.day ?? 0), apart };
  });
}

describe('the days of any season', () => {
  it('keep jump sessions and lift sessions apart', () => {
    fc.assert(
      fc.property(seasons, (season) => {
        const result = run(season);
        const sessions = result.value.flatMap((week) => week.sessions);
        const jumping = sessions.filter((session) => session.contacts > 0 && !session.primer);
        const lifting = sessions.filter((session) => session.lifts);
        for (const { days, apart } of gaps(jumping, result, 'session-spacing'))
          expect(days).toBeGreaterThanOrEqual(apart);
        for (const { days, apart } of gaps(lifting, result, 'lift-spacing')) expect(days).toBeGreaterThanOrEqual(apart);
      }),
    );
  });

  it('are open to what stands on them', () => {
    fc.assert(
      fc.property(seasons, (season) => {
        const { value, input } = run(season);
        const cells = new Map(input.grid.weeks.flatMap((week) => week.cells.map((cell) => [cell.day, cell] as const)));
        const wrong = value.flatMap(({ sessions }) =>
          sessions.filter(({ day: date, slot: held, contacts, lifts, primer }) => {
            const cell = cells.get(date);
            const jumps = contacts > 0;
            return (
              cell?.slots.includes(held) !== true ||
              (jumps && (held.use === 'lifts' || !(primer || cell.usable))) ||
              (lifts && held.use === 'jumps') ||
              !(jumps || lifts)
            );
          }),
        );
        expect(wrong).toEqual([]);
      }),
    );
  });

  it('have one session a slot, each in its week, in order', () => {
    fc.assert(
      fc.property(seasons, (season) => {
        const { value, input } = run(season);
        const order = new Map(
          input.grid.weeks
            .flatMap((week) => week.cells)
            .flatMap((cell) => cell.slots.map((one, at) => [`${cell.day} ${one.id}`, cell.day * 10 + at])),
        );
        value.forEach(({ sessions }, index) => {
          const starts = input.grid.weeks[index]?.starts ?? 0;
          expect(sessions.every(({ day: date }) => starts <= date && date < starts + 7)).toBe(true);
          const places = sessions.map(({ day: date, slot: held }) => order.get(`${date} ${held.id}`) ?? -1);
          expect(places).toEqual([...new Set(places)].toSorted((a, b) => a - b));
        });
      }),
    );
  });

  it('hold every contact of a week, as the stage before shared them', () => {
    fc.assert(
      fc.property(seasons, (season) => {
        const { value, input, diagnostics } = run(season);
        expect(diagnostics).toEqual([]);
        value.forEach(({ sessions }, index) => {
          const sizes = sessions.flatMap((session) => (session.contacts > 0 ? [session.contacts] : []));
          expect(sizes.toSorted((a, b) => b - a)).toEqual(input.contacts[index]?.sessions);
        });
      }),
    );
  });

  it('are the same however often they are asked for', () => {
    fc.assert(
      fc.property(seasons, (season) => {
        expect(run(season).value).toEqual(run(season).value);
      }),
      { numRuns: 20 },
    );
  });

  it('stay where they are when they were handed out', () => {
    fc.assert(
      fc.property(seasons, (season) => {
        const { plan, input, value } = run(season);
        const published = new Map<number, { jumps: boolean; lifts: boolean }>();
        for (const { day, contacts, lifts } of value.flatMap((week) => week.sessions)) {
          const known = published.get(day);
          published.set(day, { jumps: contacts > 0 || known?.jumps === true, lifts: lifts || known?.lifts === true });
        }
        const again = scheduleDays(plan, input, new Map([[input.grid.athlete.id, published]])).value;
        const places = (weeks: typeof value) =>
          weeks.map((week) => week.sessions.map(({ day, contacts, lifts }) => [day, contacts, lifts]));
        expect(places(again)).toEqual(places(value));
      }),
    );
  });
});
