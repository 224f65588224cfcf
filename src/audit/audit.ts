// The audit: a compiled season of one athlete, read again and held against every rule; then the waivers of the plan, held
// against what they freed. Called by the pipeline after the scheduler, athlete by athlete. It finds everything as if
// nothing were waived, and then takes out what a waiver covers: that is how a waiver shows that it was needed.

import type { BuildWeek, BuiltAthlete, BuiltWeek } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Plan, Waiver } from '../plan/types.ts';
import { overlap } from '../plan/applies.ts';
import { inFurtherWeeks } from '../diagnostics/catalogue/rules/words.ts';
import { problem } from '../diagnostics/problem.ts';
import { getRule } from '../library/rules.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { checkAdapted } from './adapted-check.ts';
import type { Finding, Telling } from './rule.ts';
import { AUDIT_RULES } from './rules.ts';
import { readSeason } from './read-season.ts';
import type { SeasonReading } from './season-reading.ts';
import { asksMass, sharedVerdict } from './shared-verdict.ts';
import type { Verdict } from './shared-verdict.ts';

export interface AthleteAudit {
  /** In the order of the rule table, then of the weeks; notices once for a rule, with the number of further weeks. */
  readonly diagnostics: readonly Diagnostic[];
  /** The waivers of the plan that freed something for this athlete. */
  readonly freed: ReadonlySet<Waiver>;
  /** First days of the weeks written by hand that an error bars: they raise A by nothing, and the build has to know. */
  readonly unwritten: ReadonlySet<Day>;
}

/**
 * Everything that one athlete's compiled season breaks. `weeks` are those of the build and must be the athlete's own
 * weeks; throws where they aren't. Weeks that the record describes are over: they count for what follows, and nothing is
 * found in them.
 */
export function auditAthlete(plan: Plan, built: BuiltAthlete, weeks: readonly BuildWeek[]): AthleteAudit {
  requireSameWeeks(built, weeks);
  const make = (): Verdict => auditWithout(plan, built, barredByHand(built, built.diagnostics));
  const { tellings, freed, unwritten } = sharedVerdict(plan, built, make);
  return { diagnostics: tellings.map((tell) => tell(built.athlete)), freed, unwritten };
}

/** Again while weeks turn out to be barred: those behind them are then judged from a lower A. */
function auditWithout(plan: Plan, built: BuiltAthlete, unwritten: ReadonlySet<BuiltWeek>): Verdict {
  const season = readSeason(plan, built, unwritten);
  const { tellings, freed } = findAll(season);
  const told = tellings.map((tell) => tell(built.athlete));
  const more = new Set([...unwritten, ...barredByHand(built, told)]);
  if (more.size > unwritten.size) return auditWithout(plan, built, more);
  return {
    tellings: [...tellings, ...checkAdapted(season)],
    freed,
    unwritten: new Set([...unwritten].map(({ starts }) => starts)),
    asksMass: asksMass(season),
  };
}

/** Weeks to come that were written by hand and that an error blocks, or that the build already knows as such. */
function barredByHand({ weeks }: BuiltAthlete, found: readonly Diagnostic[]): ReadonlySet<BuiltWeek> {
  const barred = new Set(found.flatMap(({ severity, week }) => (severity === 'error' ? (week ?? []) : [])));
  return new Set(
    weeks.filter(
      ({ boundBy, done, unwritten, starts }) =>
        boundBy === 'programme' && !done && (unwritten === true || barred.has(starts)),
    ),
  );
}

function findAll(season: SeasonReading): Pick<Verdict, 'tellings' | 'freed'> {
  const freed = new Set<Waiver>(season.waivers.filter((waiver) => isBehind(season, waiver)));
  const tellings: Telling[] = [];
  for (const rule of AUDIT_RULES) {
    const standing: Finding[] = [];
    for (const finding of rule.check(season)) {
      const waivers = waiversOf(season, finding, rule.id);
      for (const waiver of waivers) freed.add(waiver);
      if (waivers.length === 0 && !finding.week.built.done) standing.push(finding);
    }
    const once = getRule(rule.id).severity === 'notice' && !rule.separate;
    for (const telling of once ? sayOnce(standing) : sayAll(standing)) tellings.push(telling);
  }
  return { tellings, freed };
}

function sayAll(findings: readonly Finding[]): readonly Telling[] {
  return findings.map(({ tell }) => tell);
}

/** A notice is said of the first week it holds in, with the number of those that follow. */
function sayOnce(findings: readonly Finding[]): readonly Telling[] {
  const first = findings[0];
  if (first === undefined) return [];
  const furtherWeeks = new Set(findings.map((finding) => finding.week)).size - 1;
  return sayAll(findings.filter((finding) => finding.week === first.week)).map((tell) => further(tell, furtherWeeks));
}

function further(tell: Telling, furtherWeeks: number): Telling {
  const more = inFurtherWeeks(furtherWeeks);
  return (athlete) => {
    const diagnostic = tell(athlete);
    return {
      ...diagnostic,
      message: `${diagnostic.message}${more}`,
      params: { ...diagnostic.params, furtherWeeks },
    };
  };
}

/** What is found once for the plan: waivers that freed nothing for anybody. A refused waiver is the plan's own error. */
export function auditPlan(plan: Plan, freed: ReadonlySet<Waiver>): readonly Diagnostic[] {
  return plan.waivers
    .filter((waiver) => !freed.has(waiver) && getRule(waiver.rule).waivable)
    .map((waiver) =>
      problem('audit/waiver-unused', {
        params: { rule: waiver.rule, from: isoDate(waiver.range.from), until: isoDate(waiver.range.until) },
        span: waiver.span,
        rule: waiver.rule,
      }),
    );
}

function requireSameWeeks(built: BuiltAthlete, weeks: readonly BuildWeek[]): void {
  const same =
    built.weeks.length === weeks.length && built.weeks.every((week, index) => week.starts === weeks[index]?.starts);
  if (!same) throw new Error(`the weeks of ${built.athlete.id} are not those of the build`);
}

function waiversOf(season: SeasonReading, { week }: Finding, rule: Waiver['rule']): readonly Waiver[] {
  return season.waivers.filter((waiver) => waiver.rule === rule && overlap(waiver.range, week.range));
}

/** A waiver that reached into weeks that are over may have been needed there. */
function isBehind(season: SeasonReading, waiver: Waiver): boolean {
  return season.weeks.some(({ built, range }) => built.done && overlap(waiver.range, range));
}
