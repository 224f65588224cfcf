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
import type { RuleId } from '../library/rules.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { checkAdapted } from './adapted-check.ts';
import { findingsOnMaxima } from './maxima.ts';
import type { AuditRule, Finding, Telling } from './rule.ts';
import { AUDIT_RULES } from './rules.ts';
import { readSeason } from './read-season.ts';
import type { SeasonReading } from './season-reading.ts';
import { asksMass, sharedVerdict } from './shared-verdict.ts';
import type { OfRule, Unloaded, Verdict } from './shared-verdict.ts';

export interface AthleteAudit {
  /**
   * In the order of the rule table, then of the weeks; notices once for a rule, with the number of further weeks. What is
   * told of maxima comes last.
   */
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
  const make = (known?: Unloaded): Verdict => auditWithout(plan, built, barredByHand(built, built.diagnostics), known);
  const { tellings, freed, unwritten } = sharedVerdict(plan, built, make);
  const diagnostics = [...tellings.map((tell) => tell(built.athlete)), ...findingsOnMaxima(plan, built)];
  return { diagnostics, freed, unwritten };
}

/**
 * Again while weeks turn out to be barred: those behind them are then judged from a lower A. Of what is `known` of a season
 * that differs in its loads alone nothing is asked again.
 */
function auditWithout(plan: Plan, built: BuiltAthlete, unwritten: ReadonlySet<BuiltWeek>, known?: Unloaded): Verdict {
  const season = readSeason(plan, built, unwritten);
  const ofRules = AUDIT_RULES.map((rule) => known?.ofRules.get(rule.id) ?? askRule(rule, season));
  const tellings = ofRules.flatMap((one) => one.tellings);
  const told = tellings.map((tell) => tell(built.athlete));
  const more = new Set([...unwritten, ...barredByHand(built, told)]);
  if (more.size > unwritten.size) return auditWithout(plan, built, more, known);
  const unloaded = known ?? withoutLoads(season, ofRules);
  return {
    tellings: [...tellings, ...unloaded.adapted],
    freed: new Set([...waiversBehind(season), ...ofRules.flatMap(({ freed }) => freed)]),
    unwritten: new Set([...unwritten].map(({ starts }) => starts)),
    unloaded,
  };
}

/** What is true of a season whatever its loads are. `ofRules` is in the order of the rules. */
function withoutLoads(season: SeasonReading, ofRules: readonly OfRule[]): Unloaded {
  const asked = AUDIT_RULES.flatMap(({ id, asksLoads }, index): readonly (readonly [RuleId, OfRule])[] => {
    const found = ofRules[index];
    return asksLoads || found === undefined ? [] : [[id, found]];
  });
  return { ofRules: new Map(asked), adapted: checkAdapted(season), asksMass: asksMass(season) };
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

function askRule({ id, check, separate }: AuditRule, season: SeasonReading): OfRule {
  const freed: Waiver[] = [];
  const standing: Finding[] = [];
  for (const finding of check(season)) {
    const waivers = waiversOf(season, finding, id);
    freed.push(...waivers);
    if (waivers.length === 0 && !finding.week.built.done) standing.push(finding);
  }
  const once = getRule(id).severity === 'notice' && !separate;
  return { tellings: once ? sayOnce(standing) : sayAll(standing), freed };
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
function waiversBehind(season: SeasonReading): readonly Waiver[] {
  const over = season.weeks.filter(({ built }) => built.done);
  return season.waivers.filter((waiver) => over.some(({ range }) => overlap(waiver.range, range)));
}
