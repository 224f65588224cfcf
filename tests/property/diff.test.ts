// A build doesn't differ from itself, and the changes between two laid on the first give the second: week by week,
// session by session, line by line. Laying them on is written here, apart from the finding.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import { diffBuilds } from '../../src/diff/diff-builds.ts';
import { diffSheets } from '../../src/diff/diff-sheets.ts';
import { sideOf } from '../../src/diff/side.ts';
import { sheetOf } from '../../src/diff/sheet.ts';
import type {
  LineChange,
  SessionChange,
  SheetLine,
  SheetSession,
  SheetWeek,
  WeekChange,
} from '../../src/diff/types.ts';
import type { Plan } from '../../src/plan/types.ts';
import { reportDiff } from '../../src/report/diff-report.ts';
import { randomPlan } from './random-plan.ts';

const PATIENCE = 180_000;
const RUNS = 60;

function laid(before: readonly SheetWeek[], changes: readonly WeekChange[]): readonly SheetWeek[] {
  const weeks = new Map(before.map((week) => [week.starts, week]));
  for (const { starts, after, sessions } of changes) {
    if (after === undefined) weeks.delete(starts);
    else weeks.set(starts, { ...after, sessions: laidSessions(weeks.get(starts)?.sessions ?? [], sessions) });
  }
  return [...weeks.values()].toSorted((a, b) => a.starts - b.starts);
}

const keyOf = ({ day, slot }: SheetSession): string => `${day} ${slot}`;

function laidSessions(before: readonly SheetSession[], changes: readonly SessionChange[]): readonly SheetSession[] {
  const sessions = new Map(before.map((session) => [keyOf(session), session]));
  for (const change of changes) sessions.delete(keyOf(change.kind === 'changed' ? change.from : change.session));
  for (const change of changes) {
    if (change.kind === 'added') sessions.set(keyOf(change.session), change.session);
    if (change.kind === 'changed')
      sessions.set(keyOf(change.to), { ...change.to, lines: laidLines(change.from.lines, change.lines) });
  }
  return [...sessions.values()];
}

const lineKey = ({ part, exercise, occurrence }: SheetLine): string => `${part} ${exercise} ${occurrence}`;

function laidLines(before: readonly SheetLine[], changes: readonly LineChange[]): readonly SheetLine[] {
  const lines = new Map(before.map((line) => [lineKey(line), line]));
  for (const { before: was, after } of changes) {
    if (was !== undefined) lines.delete(lineKey(was));
    if (after !== undefined) lines.set(lineKey(after), after);
  }
  return [...lines.values()].toSorted((a, b) => a.order - b.order);
}

/** Sessions of a week have no order of their own beyond day and slot. */
const ordered = (weeks: readonly SheetWeek[]): readonly SheetWeek[] =>
  weeks.map((week) => ({ ...week, sessions: week.sessions.toSorted((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1)) }));

const sheets = (plan: Plan): ReadonlyMap<string, readonly SheetWeek[]> =>
  new Map([...compilePlan(plan).athletes].map((built) => [built.athlete.id, sheetOf(built)]));

/** The same plan with something of it taken out or made different. */
const edited = fc.record({ plan: randomPlan, which: fc.integer({ min: 0, max: 4 }) }).map(({ plan, which }) => ({
  plan,
  changed:
    [
      { ...plan, slots: plan.slots.slice(1) },
      { ...plan, competitions: [] },
      { ...plan, practice: [] },
      { ...plan, pins: [], closures: [] },
      {
        ...plan,
        athletes: plan.athletes.map((one) => ({
          ...one,
          now: { ...one.now, value: { ...one.now.value, contactsASession: one.now.value.contactsASession + 10 } },
        })),
      },
    ][which] ?? plan,
}));

describe('a diff', { timeout: PATIENCE }, () => {
  it('of a build with itself is empty', () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const found = diffBuilds(sideOf(compilePlan(plan)), sideOf(compilePlan(plan)));
        expect(found.edits).toEqual([]);
        expect(found.athletes).toEqual([]);
        expect(found.before).toEqual(found.after);
        expect(
          reportDiff(found, { before: sideOf(compilePlan(plan)), after: sideOf(compilePlan(plan)) }),
        ).toBeUndefined();
      }),
      { numRuns: RUNS },
    );
  });

  it('laid on the old sheets gives the new ones', () => {
    fc.assert(
      fc.property(edited, ({ plan, changed }) => {
        const after = sheets(changed);
        for (const [id, before] of sheets(plan)) {
          const fresh = after.get(id) ?? [];
          expect(ordered(laid(before, diffSheets(before, fresh)))).toEqual(ordered(fresh));
        }
      }),
      { numRuns: RUNS },
    );
  });

  it("doesn't see the order of athletes' files, nor where things stand", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const moved: Plan = {
          ...plan,
          slots: plan.slots.map((slot) => ({ ...slot, span: { ...slot.span, start: slot.span.start + 100 } })),
          pins: plan.pins.toReversed(),
          closures: plan.closures.toReversed(),
        };
        expect(diffBuilds(sideOf(compilePlan(plan)), sideOf(compilePlan(moved))).edits).toEqual([]);
      }),
      { numRuns: RUNS },
    );
  });
});
