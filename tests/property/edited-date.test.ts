// One edited date changes nothing before it but what `reach` explains. Phases and easy weeks are laid backwards from a
// peak, and the days of neighbouring weeks hang together, so the whole of it is this. Let an item of the calendar be moved,
// or end on another day, and let D be the first day on which the plan is another one.
//
// - Up to the last peak in a week before D's every week keeps its phase and its kind: nothing is laid across a peak.
// - Up to the first week whose terms are other ones (phase, kind, days, ceilings, target), each week keeps its ceiling, and
//   begins at the same adapted volume for as long as it keeps its contacts. It keeps its contacts up to a week that is
//   over its target, by `reach`, in one of the two plans: only such a week looks ahead.
// - Up to that peak, terms are other ones only by how many sessions the days can hold: neighbouring weeks share them, and
//   what is usual is what the block can hold, which for an athlete in foundation is the whole season.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Athlete, DayRange, Plan } from '../../src/plan/types.ts';
import type { Day } from '../../src/util/days.ts';
import { appliesTo } from '../../src/plan/applies.ts';
import { contactsOf } from './contacts-of.ts';
import type { ContactsSeason } from './contacts-of.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan, withProgramme } from './random-plan.ts';

const PLANS = plansFor(300);
/** Days before a competition that it may keep free: the rule's two, and what a random plan makes of it. */
const LONGEST_GAP = 4;

interface Edit {
  readonly plan: Plan;
  readonly athlete: Athlete;
  /** First day on which something may be another. */
  readonly from: Day;
}

interface Move {
  /** Days later, or earlier. */
  readonly by: number;
  /** Only the last day of the item moves. */
  readonly end: boolean;
}

function moved(range: DayRange, { by, end }: Move): { readonly range: DayRange; readonly from: Day } {
  if (end && range.until + by >= range.from)
    return { range: { from: range.from, until: range.until + by }, from: Math.min(range.until, range.until + by) + 1 };
  return { range: { from: range.from + by, until: range.until + by }, from: Math.min(range.from, range.from + by) };
}

const LISTS = ['competitions', 'closures', 'practice', 'pins', 'waivers', 'ruleChanges'] as const;

/** Every single edit of a plan that a move makes, for one athlete. */
function editsOf(plan: Plan, athlete: Athlete, move: Move): readonly Edit[] {
  const edits: Edit[] = [];
  for (const list of LISTS) {
    for (const [at, item] of plan[list].entries()) {
      const { range, from } = moved(item.range, move);
      const items: readonly unknown[] = plan[list].with(at, { ...item, range } as never);
      const gap = list === 'competitions' ? LONGEST_GAP : 0;
      edits.push({ plan: inOrder({ ...plan, [list]: items }), athlete, from: from - gap });
    }
  }
  for (const [at, test] of plan.tests.entries()) {
    const { range, from } = moved({ from: test.day, until: test.day }, { ...move, end: false });
    edits.push({ plan: { ...plan, tests: plan.tests.with(at, { ...test, day: range.from }) }, athlete, from });
  }
  for (const key of ['away', 'limits'] as const) {
    for (const [at, item] of athlete[key].entries()) {
      const { range, from } = moved(item.range, move);
      const items: readonly unknown[] = athlete[key].with(at, { ...item, range } as never);
      edits.push({ plan, athlete: { ...athlete, [key]: items }, from });
    }
  }
  return edits;
}

/** As a plan is read. */
const inOrder = (plan: Plan): Plan => ({
  ...plan,
  competitions: plan.competitions.toSorted((a, b) => a.range.from - b.range.from),
});

const move: fc.Arbitrary<Move> = fc.record({
  by: fc.integer({ min: -21, max: 21 }).filter((by) => by !== 0),
  end: fc.boolean(),
});

interface Counts {
  /** Weeks before an edit, and those of them that were other ones by `reach`. */
  before: number;
  reached: number;
}

function expectSameBefore(edit: Edit, before: ContactsSeason, after: ContactsSeason, counts: Counts): void {
  const { weeks } = before.grid;
  const edited = weeks.findIndex(({ starts }) => edit.from < starts + 7);
  if (edited < 0) return;
  const laid = weekAfterPeak(edit, before, edited);
  for (let week = 0; week < laid; week += 1) {
    expect(after.phases.weeks[week]?.phase).toBe(before.phases.weeks[week]?.phase);
    expect(after.kinds.value[week]).toEqual(before.kinds.value[week]);
  }
  const first = weeks.findIndex((_, week) => termsKey(after, week) !== termsKey(before, week));
  const same = first < 0 ? weeks.length : first;
  if (same < laid) expect(daysKey(after, same)).not.toEqual(daysKey(before, same));
  if (before.unmet.length > 0 || after.unmet.length > 0) return;
  let reached = false;
  for (let week = 0; week < Math.min(same, edited); week += 1) {
    const [one, other] = [before.weeks[week], after.weeks[week]];
    expect(other?.most).toBe(one?.most);
    if (!reached) expect(other?.adaptedBefore).toBe(one?.adaptedBefore);
    if (!reached && one?.contacts !== other?.contacts) {
      expect([one?.boundBy, other?.boundBy]).toContain('reach');
      reached = true;
    }
    counts.before += 1;
    counts.reached += reached ? 1 : 0;
  }
}

/** The first week behind the last peak in a week before the edited one. */
function weekAfterPeak({ plan, athlete }: Edit, { grid }: ContactsSeason, edited: number): number {
  const starts = grid.weeks[edited]?.starts ?? 0;
  const peaks = plan.competitions.filter(
    ({ prepare, range, who }) => prepare === 'peak' && appliesTo(who, athlete) && range.from < starts,
  );
  const last = peaks.at(-1)?.range.from ?? -Infinity;
  return grid.weeks.findIndex((week) => last < week.starts);
}

/** How many sessions the days can hold: in this week, and usually in its block. */
const daysKey = ({ terms }: ContactsSeason, week: number): unknown => [
  terms[week]?.possible,
  terms[week]?.usualSessions,
];

/** What the search is asked, places and reasons left aside. */
const termsKey = ({ terms }: ContactsSeason, week: number): string =>
  JSON.stringify(terms[week], (key, value: unknown) => (key === 'span' || key === 'spans' ? undefined : value));

describe('an edited date', { timeout: PATIENCE }, () => {
  it('changes nothing before it but what `reach` explains', () => {
    const counts = { before: 0, reached: 0 };
    let edits = 0;
    const plans = fc.oneof({ weight: 3, arbitrary: randomPlan }, { weight: 1, arbitrary: withProgramme(randomPlan) });
    fc.assert(
      fc.property(plans, move, fc.nat(), (plan, by, which) => {
        const all = plan.athletes.flatMap((athlete) => editsOf(plan, athlete, by));
        const edit = all[which % Math.max(1, all.length)];
        const athlete = plan.athletes.find(({ id }) => id === edit?.athlete.id);
        if (edit === undefined || athlete === undefined) return;
        edits += 1;
        expectSameBefore(edit, contactsOf(plan, athlete), contactsOf(edit.plan, edit.athlete), counts);
      }),
      { numRuns: PLANS },
    );
    tell(`an edited date: ${edits} plans, ${counts.before} weeks before it, ${counts.reached} of them other by reach`);
    expect(counts.before).toBeGreaterThan(edits);
  });
});
