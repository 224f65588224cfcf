// A season edited in several places at once: whatever a diff says of a change, that it came of one edit, of each or of some
// together, the builds with and without those edits show. The edits are laid on by hand here, apart from the diff's own
// way of doing it.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../src/compile.ts';
import { applyEdits } from '../../src/diff/apply-edits.ts';
import { diffBuilds } from '../../src/diff/diff-builds.ts';
import { sheetOf } from '../../src/diff/sheet.ts';
import { sideOf } from '../../src/diff/side.ts';
import { tryEdits } from '../../src/diff/trials.ts';
import type { WeeksOf } from '../../src/diff/trials.ts';
import type { BuildDiff, Edit, SheetWeek } from '../../src/diff/types.ts';
import type { Athlete, Plan } from '../../src/plan/types.ts';
import { everyPoint } from '../../src/report/diff-points.ts';
import type { Point } from '../../src/report/diff-points.ts';
import { reportDiff } from '../../src/report/diff-report.ts';
import type { DiffReport, DiffSection } from '../../src/report/diff-report.ts';
import { sourceFile } from '../../src/source/source-file.ts';
import { EVERYBODY, HERE } from '../unit/schedule/make-plan.ts';
import { randomPlan } from './random-plan.ts';

const PATIENCE = 180_000;
const RUNS = 16;
/** In some plans the edits change nothing that is told by itself. */
const LEAST_CHECKED = 12;

/** One edit each; which of them a diff's edit is, is known by its section and field. */
interface ByHand {
  readonly is: (edit: Edit) => boolean;
  readonly on: (plan: Plan) => Plan;
}

const firstAthlete = (plan: Plan, change: (athlete: Athlete) => Athlete): Plan => ({
  ...plan,
  athletes: plan.athletes.map((athlete, index) => (index === 0 ? change(athlete) : athlete)),
});

const isField = (name: string) => (edit: Edit) => edit.section === 'athlete' && edit.fields[0]?.name === name;
const isIn = (section: Edit['section']) => (edit: Edit) => edit.section === section;
const weekAt = ({ season }: Plan, days: number): { from: number; until: number } => ({
  from: season.starts + days,
  until: season.starts + days + 6,
});

const EDITS: readonly ByHand[] = [
  { is: isIn('slot'), on: (plan) => (plan.slots.length < 2 ? plan : { ...plan, slots: plan.slots.slice(1) }) },
  {
    is: isIn('closure'),
    on: (plan) => ({
      ...plan,
      closures: [
        ...plan.closures,
        { range: weekAt(plan, 21), because: 'floor laid', trained: 'none', who: EVERYBODY, span: HERE },
      ],
    }),
  },
  {
    is: isIn('practice'),
    on: (plan) => ({
      ...plan,
      practice: [
        ...plan.practice,
        {
          day: 0,
          jumps: 45,
          range: { from: plan.season.starts + 14, until: plan.season.ends },
          who: EVERYBODY,
          span: HERE,
        },
      ],
    }),
  },
  {
    is: isField('now'),
    on: (plan) =>
      firstAthlete(plan, ({ now, ...athlete }) => {
        const contactsASession = now.value.contactsASession + 15;
        return { ...athlete, now: { ...now, value: { ...now.value, contactsASession } } };
      }),
  },
  {
    is: isField('away'),
    on: (plan) =>
      firstAthlete(plan, (athlete) => ({
        ...athlete,
        away: [...athlete.away, { range: weekAt(plan, 35), because: 'exams', trained: 'none', span: HERE }],
      })),
  },
];

const several = fc
  .tuple(randomPlan, fc.subarray([0, 1, 2, 3, 4], { minLength: 2, maxLength: 4 }))
  .map(([plan, which]) => ({
    plan: { ...plan, files: [sourceFile('season.yaml', 'x')] },
    edits: which.flatMap((index) => EDITS[index] ?? []),
  }));

const laid = (plan: Plan, edits: readonly ByHand[]): Plan => edits.reduce((one, { on }) => on(one), plan);

function sheets(plan: Plan): ReadonlyMap<string, readonly SheetWeek[]> {
  return new Map([...compilePlan(plan).athletes].map((built) => [built.athlete.id, sheetOf(built)]));
}

function weeksOf(plan: Plan): WeeksOf {
  const made = sheets(plan);
  return (id) => made.get(id);
}

interface Compared {
  readonly found: BuildDiff;
  readonly report: DiffReport | undefined;
}

function compared(before: Plan, after: Plan): Compared {
  const [old, fresh] = [sideOf(compilePlan(before)), sideOf(compilePlan(after))];
  const found = diffBuilds(old, fresh);
  const trials = tryEdits(found, weeksOf);
  return { found, report: reportDiff(found, { before: old, after: fresh, ...(trials !== undefined && { trials }) }) };
}

/** Whether a plan has the point in an athlete's week, against the old plan. */
function hasPoint(before: Plan, other: Plan, athlete: string, starts: number, point: Point): boolean {
  const week = (plan: Plan): SheetWeek | undefined => weeksOf(plan)(athlete)?.find((one) => one.starts === starts);
  const [was, is] = [week(before), week(other)];
  const words = { exercises: before.library, units: before.season.units };
  const sides = { ...(was !== undefined && { before: was }), ...(is !== undefined && { after: is }) };
  return everyPoint({ starts, sessions: [], ...sides }, words).some(
    (one) => JSON.stringify(one) === JSON.stringify(point),
  );
}

describe('an edit that a change is told under', { timeout: PATIENCE }, () => {
  it('alone gives it, or it is gone without the edit', () => {
    let checked = 0;
    fc.assert(
      fc.property(several, ({ plan, edits }) => {
        const { found, report } = compared(plan, laid(plan, edits));
        const byHand = (found.edits ?? []).map((group) => edits.find(({ is }) => group.every(is)));
        expect(byHand).not.toContain(undefined);
        const sections = report === undefined ? [] : report.after;
        for (const section of sections) {
          expect(section.how).not.toBe('any');
          // One change of each section: a season compiled for each of all of them would take an evening.
          const group = section.groups.find(({ range }) => range === undefined);
          if (group === undefined || found.edits?.length === 1) continue;
          checkCause(plan, edits, section, byHand, group);
          checked += 1;
        }
      }),
      { numRuns: RUNS },
    );
    expect(checked).toBeGreaterThanOrEqual(LEAST_CHECKED);
  });

  it('is one of a set that leads from the one build to the other', () => {
    fc.assert(
      fc.property(several, ({ plan, edits }) => {
        const after = laid(plan, edits);
        const { edits: groups = [], plans } = diffBuilds(sideOf(compilePlan(plan)), sideOf(compilePlan(after)));
        expect(plans).toBeDefined();
        const mixed = (taken: readonly Edit[]): Plan | undefined =>
          applyEdits({ before: plan, after, ...plans, edits: taken });
        expect(sheets(mixed(groups.flat()) ?? plan)).toEqual(sheets(after));
        expect(sheets(mixed([]) ?? after)).toEqual(sheets(plan));
      }),
      { numRuns: RUNS },
    );
  });
});

function checkCause(
  plan: Plan,
  edits: readonly ByHand[],
  section: DiffSection,
  byHand: readonly (ByHand | undefined)[],
  { athletes: [athlete = ''], starts, point }: DiffSection['groups'][number],
): void {
  const has = (some: readonly ByHand[]): boolean => hasPoint(plan, laid(plan, some), athlete, starts, point);
  const told = section.edits.map((index) => byHand[index]);
  const alone = told.map((edit) => edit !== undefined && has([edit]));
  const without = told.map((edit) => has(edits.filter((one) => one !== edit)));
  expect(has(edits)).toBe(true);
  if (section.how === 'each') expect(alone).not.toContain(false);
  else if (section.how === 'one') expect(alone[0] === true || without[0] === false).toBe(true);
  else {
    expect(alone).not.toContain(true);
    expect(without.includes(false) || has(edits.filter((edit) => told.includes(edit)))).toBe(true);
  }
}
