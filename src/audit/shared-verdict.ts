// One verdict for athletes whose compiled weeks are the very same objects and of whom the rules ask the same: what was
// found for the first of them is told of each. Called by audit.ts for every athlete. Who has anything of one's own that a
// rule may ask for (a limit, an absence, a return, a record, a finding of the scheduler) is audited alone.

import { doneBy } from '../plan/done-by.ts';
import type { BuiltAthlete, BuiltWeek } from '../build/types.ts';
import { RULES } from '../library/rules.ts';
import type { RuleId } from '../library/rules.ts';
import { ageOn } from '../plan/athlete-facts.ts';
import { itemsOf } from '../plan/items-of.ts';
import type { AthleteItems } from '../plan/items-of.ts';
import { maximaText } from '../plan/maxima-text.ts';
import type { Athlete, Plan, Waiver } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import { differInLoadsAlone } from './differ-in-loads.ts';
import { dropLines } from './drops.ts';
import { planIndex } from './plan-index.ts';
import type { Telling } from './rule.ts';
import type { SeasonReading } from './season-reading.ts';

export interface Verdict {
  /** In the order in which they are told. */
  readonly tellings: readonly Telling[];
  readonly freed: ReadonlySet<Waiver>;
  /** First days of the weeks written by hand that an error bars. */
  readonly unwritten: ReadonlySet<Day>;
  readonly unloaded: Unloaded;
}

/** What of a verdict is true whatever the loads are. */
export interface Unloaded {
  /** Of the rules that ask for none. */
  readonly ofRules: ReadonlyMap<RuleId, OfRule>;
  /** Of the adapted volume. */
  readonly adapted: readonly Telling[];
  /** Whether a rule asks for the body mass. */
  readonly asksMass: boolean;
}

/** What one rule has found. */
export interface OfRule {
  readonly tellings: readonly Telling[];
  readonly freed: readonly Waiver[];
}

/** What a verdict hangs on besides the weeks, mass and maxima. */
interface Asked {
  readonly plan: Plan;
  readonly days: BuiltAthlete['days'];
  /** One object for all who have the same slots, competitions, rules, pins and waivers. */
  readonly items: AthleteItems;
  readonly facts: string;
}

interface Known {
  readonly asked: Asked;
  readonly weeks: BuiltAthlete['weeks'];
  readonly athlete: Pick<Athlete, 'massGrams' | 'lifts'>;
  readonly verdict: Verdict;
}

const byWeeks = new WeakMap<BuiltAthlete['weeks'], Known[]>();

/** The last verdicts on a plan's athletes that were made from nothing, to be told of seasons with other loads. */
const latest = new WeakMap<Plan, Known[]>();
/** As many as some squads have at a time: all of a big plan would fill the memory. */
const MOST_LATEST = 64;

/** The verdict on an athlete: one that is known, or made, what is true of a season with other loads being given. */
export function sharedVerdict(plan: Plan, built: BuiltAthlete, make: (unloaded?: Unloaded) => Verdict): Verdict {
  if (!isLikeOthers(plan, built)) return make();
  const { athlete, days, weeks } = built;
  const items = itemsOf(plan, athlete);
  const asked = { plan, days, items, facts: factsOf(plan, athlete, items) };
  const ofWeeks = byWeeks.get(weeks) ?? [];
  const same = ofWeeks.find((one) => isSame(one, asked, athlete) && haveSameMaxima(one.athlete, athlete));
  if (same !== undefined) return same.verdict;
  const ofPlan = latest.get(plan) ?? [];
  const isShared = !weeks.some(isByHand);
  const like = isShared
    ? ofPlan.findLast((one) => isSame(one, asked, athlete) && differInLoadsAlone(one.weeks, weeks))
    : undefined;
  const verdict = make(like?.verdict.unloaded);
  const made = { asked, weeks, athlete, verdict };
  byWeeks.set(weeks, [...ofWeeks, made]);
  if (like === undefined && isShared) latest.set(plan, [...ofPlan, made].slice(-MOST_LATEST));
  return verdict;
}

/** Which of such weeks an error bars is found by rules on loads as well, and what is true of the others hangs on it. */
const isByHand = ({ boundBy, done }: BuiltWeek): boolean => boundBy === 'programme' && !done;

const haveSameMaxima = (one: Pick<Athlete, 'lifts'>, other: Pick<Athlete, 'lifts'>): boolean =>
  maximaText(one.lifts) === maximaText(other.lifts);

function isLikeOthers(plan: Plan, { athlete, diagnostics }: BuiltAthlete): boolean {
  if (diagnostics.length > 0) return false;
  if (athlete.limits.length > 0 || athlete.away.length > 0 || athlete.returning.length > 0) return false;
  return doneBy(plan.record, athlete.id).length === 0 && planIndex(plan).testsBy(athlete.id).length === 0;
}

function isSame({ asked: one, verdict, athlete: before }: Known, other: Asked, athlete: Athlete): boolean {
  return (
    one.plan === other.plan &&
    one.days === other.days &&
    one.items === other.items &&
    one.facts === other.facts &&
    (!verdict.unloaded.asksMass || before.massGrams === athlete.massGrams)
  );
}

/** What the rules ask of the athlete, but for mass and maxima. */
function factsOf(plan: Plan, athlete: Athlete, items: AthleteItems): string {
  const { squad, group, sport, levels, now, cleared } = athlete;
  return JSON.stringify([
    squad,
    group,
    sport?.value,
    levels.map(({ is, from }) => [is, from]),
    now.value,
    now.origin.kind,
    [...cleared].toSorted(),
    bornForRules(plan, athlete, items),
  ]);
}

/** The birth itself, but where the athlete is older than any rule asks for, and the plan changes none. */
function bornForRules(plan: Plan, athlete: Athlete, { ruleChanges }: AthleteItems): Day | 'grown' | undefined {
  const age = ageOn(athlete, plan.season.starts);
  return age !== undefined && age > OLDEST_ASKED_FOR && ruleChanges.length === 0 ? 'grown' : athlete.born?.latest;
}

const OLDEST_ASKED_FOR = RULES.flatMap((rule) => rule.parameters)
  .filter((parameter) => parameter.unit === 'years')
  .reduce((oldest, parameter) => Math.max(oldest, parameter.value ?? 0), 0);

/** Only of somebody who drops. G1 (P), G2 (P). */
export function asksMass(season: SeasonReading): boolean {
  return dropLines(season).length > 0;
}
