// The pipeline: documents → plan → schedule → build, each athlete audited as it is compiled. Called by the commands; what
// is read and what is written are theirs. An athlete's week that breaks a rule with an error is blocked, the rest stands.

import { auditAthlete, auditPlan } from './audit/audit.ts';
import { buildMark } from './build/mark.ts';
import type { Build, BuildWeek, BuiltAthlete } from './build/types.ts';
import { hasErrors } from './diagnostics/collector.ts';
import type { Diagnostic, Staged } from './diagnostics/types.ts';
import { knownOn } from './plan/known-on.ts';
import { loadPlan } from './plan/load-plan.ts';
import type { Athlete, Plan, Waiver } from './plan/types.ts';
import type { Documents } from './read/types.ts';
import { buildAthlete } from './schedule/build-athlete.ts';
import type { ScheduleContext } from './schedule/build-athlete.ts';
import type { Published } from './schedule/days.ts';
import { firstStages } from './schedule/first-stages.ts';
import { seasonWeeks } from './schedule/grid.ts';
import { chooseGroups } from './schedule/lines.ts';
import type { Groups } from './schedule/lines.ts';
import type { Day } from './util/days.ts';

export interface CompileOptions {
  /** Tells a record of the future from one of the past; without it none is refused for its date. */
  readonly today?: Day;
  /** The days that sheets already out give the sessions: they move only where a rule makes them. */
  readonly published?: Published;
  /** Weeks wholly before this day are what the record says; otherwise those before the day after the last record. */
  readonly asOf?: Day;
}

/** A build with what its athletes are scheduled with: for who schedules them again, a little otherwise. */
export interface CompiledPlan extends Build {
  readonly context: ScheduleContext;
}

/** A plan compiled, or undefined where the plan itself has errors. Athletes are compiled as the build is walked. */
export function compile(documents: Documents, options: CompileOptions = {}): Staged<CompiledPlan | undefined> {
  const plan = loadPlan(documents, options.today);
  if (plan.value === undefined || hasErrors(plan.diagnostics))
    return { value: undefined, diagnostics: plan.diagnostics };
  return { value: compilePlan(plan.value, options), diagnostics: plan.diagnostics };
}

/** A plan without errors compiled. Walking the athletes twice compiles them twice, and gives the same. */
export function compilePlan(authored: Plan, options: CompileOptions = {}): CompiledPlan {
  const context = scheduleContext(authored, options);
  const { plan, asOf } = context;
  const weeks = seasonWeeks(plan).map((starts, index) => ({ week: index + 1, starts }));
  return {
    plan,
    ...(asOf !== undefined && { asOf }),
    get mark() {
      return buildMark(plan, options.asOf, options.published);
    },
    weeks,
    context,
    athletes: { [Symbol.iterator]: () => compileAthletes(context, weeks) },
    athlete: (athlete) => compileAthlete(context, weeks, athlete),
  };
}

/**
 * What all athletes of a plan without errors are scheduled with. `groups` may be those of another plan that has the same
 * athletes, library and season, and other pins, `always` or `use`.
 */
export function scheduleContext(
  authored: Plan,
  { asOf: day, published }: CompileOptions = {},
  groups: Groups = chooseGroups(authored),
): ScheduleContext & Pick<Build, 'asOf'> {
  const plan = day === undefined ? authored : knownOn(authored, day);
  const asOf = day ?? dayAfterRecord(plan);
  const context = { plan, groups, firstStages: firstStages(plan, { published, asOf }) };
  return asOf === undefined ? context : { ...context, asOf };
}

/** The day a plan is planned on where none is named: behind the last row of what was done. Undefined without rows. */
export function dayAfterRecord({ record }: Plan): Day | undefined {
  const last = record.done.at(-1);
  return last === undefined ? undefined : last.day + 1;
}

/** What is found once for the plan, when all its athletes are compiled: waivers that freed nothing for anybody. */
export function planFindings(plan: Plan, athletes: Iterable<Pick<BuiltAthlete, 'freed'>>): readonly Diagnostic[] {
  const freed = new Set<Waiver>();
  for (const athlete of athletes) for (const waiver of athlete.freed) freed.add(waiver);
  return auditPlan(plan, freed);
}

function* compileAthletes(context: ScheduleContext, weeks: readonly BuildWeek[]): Generator<BuiltAthlete> {
  for (const athlete of context.plan.athletes) yield compileAthlete(context, weeks, athlete);
}

/**
 * Weeks written by hand that the audit bars aren't written, so the season is planned again with nobody used to more by
 * them. There are more of them each time, so it ends.
 */
function compileAthlete(
  context: ScheduleContext,
  weeks: readonly BuildWeek[],
  athlete: Athlete,
  unwritten: ReadonlySet<Day> = new Set(),
): BuiltAthlete {
  const built = buildAthlete(context, athlete, unwritten);
  const audit = auditAthlete(context.plan, built, weeks);
  const barred = new Set([...unwritten, ...audit.unwritten]);
  if (barred.size > unwritten.size) return compileAthlete(context, weeks, athlete, barred);
  const diagnostics = [...built.diagnostics, ...audit.diagnostics];
  const { weeks: written, days } = built;
  const blocked = blockedWeeks(built, diagnostics);
  return { athlete, weeks: written, days, diagnostics, blocked, freed: audit.freed };
}

/** Numbers of the weeks with an error in them. */
function blockedWeeks(built: BuiltAthlete, diagnostics: readonly Diagnostic[]): ReadonlySet<number> {
  const starts = new Set(diagnostics.flatMap((one) => (one.severity === 'error' ? (one.week ?? []) : [])));
  if (starts.size === 0) return NO_WEEKS;
  return new Set(built.weeks.filter((week) => starts.has(week.starts)).map((week) => week.week));
}

const NO_WEEKS: ReadonlySet<number> = new Set();
