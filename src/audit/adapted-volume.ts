// The adapted volume A, worked out anew week by week: the contacts a week an athlete is used to, from what was before
// the season and from what each week plans. Read by the rules on rises and cuts, which never trust the A that a build
// carries. Weeks that the record describes take the build's A, but never more than what was done or was there before.

import type { Athlete, Competition, Plan, Waiver } from '../plan/types.ts';
import { holds, overlap } from '../plan/applies.ts';
import { doneBy, lastPainBefore } from '../plan/done-by.ts';
import { returnStageOn } from '../plan/athlete-facts.ts';
import type { RuleId } from '../library/rules.ts';
import { LADDER, VOLUME } from '../library/volume.ts';
import type { Parameters } from './parameters.ts';
import type { AdaptedWeek, RunAway, WeekReading } from './season-reading.ts';
import { PERCENT } from '../util/units.ts';

const share = (percent: number, of: number): number => Math.floor((percent * of) / PERCENT);

interface Circumstances {
  readonly plan: Plan;
  readonly athlete: Athlete;
  readonly weeks: readonly WeekReading[];
  readonly runs: readonly (RunAway | undefined)[];
  readonly competitions: readonly Competition[];
  readonly waivers: readonly Waiver[];
  readonly parameters: Parameters;
  /** Weeks written by hand that a rule bars: nobody does what isn't written. */
  readonly unwritten: ReadonlySet<WeekReading['built']>;
}

/** A and what cuts it, one for each week. */
export function adaptedWeeks(season: Circumstances): readonly AdaptedWeek[] {
  const { weeks, runs } = season;
  const ladders = readLadders(season.parameters);
  const { contactsASession, sessionsAWeek } = season.athlete.now.value;
  const made: AdaptedWeek[] = [];
  let adapted = contactsASession * sessionsAWeek;
  let ladder: Ladder | undefined;
  for (const week of weeks) {
    const run = runs[week.index];
    if (run !== undefined) ladder = ladders.behind(run) ?? ladder;
    const climbs = run === undefined && week.built.kind !== 'transition' ? ladder : undefined;
    if (climbs !== undefined) ladder = nextStep(season, climbs, week, ladders);
    const next = settled(season, week, weekOf(season, week, adapted, run, climbs, ladders));
    made.push(next);
    adapted = next.after;
  }
  return markTapers(season, made);
}

function weekOf(
  season: Circumstances,
  week: WeekReading,
  adapted: number,
  run: RunAway | undefined,
  ladder: Ladder | undefined,
  ladders: Ladders,
): AdaptedWeek {
  const { athlete, waivers } = season;
  // What of a week under way the record lets an athlete get used to isn't worked out anew here.
  const open = week.built.done || week.built.underWay !== undefined;
  const earned = earnedBy(season, week, adapted);
  const after = (kept: number): number => Math.max(earned, kept);
  if (run !== undefined) {
    const stays = run.trained === 'full' || ladders.behind(run) !== undefined;
    return { before: adapted, after: after(stays ? adapted : share(VOLUME.leftAfterEmpty, adapted)), open };
  }
  if (week.built.kind === 'transition') {
    return { before: adapted, after: after(share(VOLUME.leftAfterTransition, adapted)), open };
  }
  if (returnStageOn(athlete, week.range.from) !== undefined) {
    return { before: adapted, after: after(adapted), open: true };
  }
  const kept = week.built.kind === 'load' ? keptByLoading(adapted, earned) : adapted;
  const usual = { before: adapted, after: after(kept), open };
  if (ladder === undefined) return usual;
  const climbed = onLadder(season, week, adapted, ladder, ladders);
  // A waived step cuts nothing; what it would have asked for says whether the waiver was needed.
  return isWaived(waivers, 'return-ramp', week) ? { ...climbed, ...usual, open: true } : { ...climbed, open };
}

function isWaived(waivers: readonly Waiver[], rule: RuleId, week: WeekReading): boolean {
  return waivers.some((waiver) => waiver.rule === rule && overlap(waiver.range, week.range));
}

/** The contacts of a week that the athlete can get used to: none where pain stops the jumps, whatever is written. */
function earnedBy(season: Circumstances, week: WeekReading, adapted: number): number {
  if (!week.built.done && isStopped(season, week)) return 0;
  return season.unwritten.has(week.built) || isTooMuch(season, week, adapted)
    ? Math.min(week.contacts, adapted)
    : week.contacts;
}

/** Whether the record of any morning stops the jumps on a day of the week. G12 (S), as a rule C. */
function isStopped({ plan, athlete, waivers, parameters }: Circumstances, week: WeekReading): boolean {
  const rows = doneBy(plan.record, athlete.id);
  if (rows.length === 0 || isWaived(waivers, 'pain-hold', week)) return false;
  const stop = parameters.parameter('pain-hold', 'stop')(week);
  const { from, until } = week.range;
  for (let day = from; day <= until; day += 1) if ((lastPainBefore(rows, day)?.pain ?? 0) >= stop) return true;
  return false;
}

/** Whether the week rises so far that it isn't written. Nobody gets used to what the sheets don't ask for. R1 (C). */
function isTooMuch({ parameters, waivers }: Circumstances, week: WeekReading, adapted: number): boolean {
  if (isWaived(waivers, 'weekly-rise', week)) return false;
  const value = (name: string): number => parameters.parameter('weekly-rise', name)(week);
  const isOver = week.contacts > Math.max(share(PERCENT + value('most'), adapted), adapted + value('contacts'));
  return isOver && week.contacts * PERCENT > (PERCENT + value('severe')) * adapted;
}

/** A loading week under A lets it fall towards what was planned. */
function keptByLoading(adapted: number, contacts: number): number {
  const { keepOwn, keepPlanned } = VOLUME;
  return Math.floor((keepOwn * adapted + keepPlanned * contacts) / (keepOwn + keepPlanned));
}

interface Ladder {
  readonly weeksAway: number;
  readonly steps: number;
  /** Steps already behind, from 0. */
  readonly taken: number;
  /** What the step before asked for in its own week, once a step has held: a waived one cuts nothing. */
  readonly below?: number;
}

interface Ladders {
  /** The ladder that time away asks for, by the numbers that stand on any of its days. */
  readonly behind: (run: RunAway) => Ladder | undefined;
  /** A step in per cent of what the athlete was used to before, as it stands in the week that climbs it. */
  readonly percent: (step: number, week: WeekReading) => number;
}

/** R3 (M), with the plan's own numbers. */
function readLadders({ parameter }: Parameters): Ladders {
  const shortFrom = parameter('return-ramp', 'short-from');
  const longFrom = parameter('return-ramp', 'long-from');
  const percents = LADDER.rungs.map((name) => parameter('return-ramp', name));
  return {
    behind: (run) => {
      const weeksAway = run.counted;
      if (weeksAway >= longFrom(run)) return { weeksAway, steps: percents.length, taken: 0 };
      return weeksAway >= shortFrom(run) ? { weeksAway, steps: LADDER.short, taken: 0 } : undefined;
    },
    percent: (step, week) => percents[step]?.(week) ?? PERCENT,
  };
}

function nextStep(season: Circumstances, ladder: Ladder, week: WeekReading, ladders: Ladders): Ladder | undefined {
  const taken = ladder.taken + 1;
  if (taken >= ladder.steps) return undefined;
  const held = ladder.below !== undefined || !isWaived(season.waivers, 'return-ramp', week);
  return { ...ladder, taken, ...(held && { below: ladders.percent(ladder.taken, week) }) };
}

/** The first step that holds cuts A itself; each further one is a share of the A that the step before left. */
function onLadder(
  { unwritten }: Circumstances,
  week: WeekReading,
  adapted: number,
  { weeksAway, steps, taken, below }: Ladder,
  { percent }: Ladders,
): Omit<AdaptedWeek, 'open'> {
  const here = percent(taken, week);
  const before = below === undefined ? share(here, adapted) : adapted;
  const most = below === undefined ? before : share(Math.floor((here * PERCENT) / below), adapted);
  return {
    before,
    after: week.contacts > most || unwritten.has(week.built) ? before : Math.max(week.contacts, before),
    ladder: { number: taken + 1, of: steps, weeksAway },
    ladderMost: most,
  };
}

/** Where the plan alone doesn't say, the build's A counts as far as something was there to earn it. */
function settled(season: Circumstances, week: WeekReading, next: AdaptedWeek): AdaptedWeek {
  if (!next.open) return next;
  const written = season.unwritten.has(week.built) ? 0 : week.contacts;
  const earned = week.built.done
    ? Math.min(Math.max(written, recorded(season, week)), leapOver(season, week, next.before))
    : written;
  return { ...next, after: Math.min(week.built.adapted, Math.max(next.before, earned)) };
}

/**
 * The most contacts that somebody is used to for having done them once: as many as a planned week may have without an
 * error. Common practice, no source.
 */
function leapOver({ parameters }: Circumstances, week: WeekReading, adapted: number): number {
  const value = (name: string): number => parameters.parameter('weekly-rise', name)(week);
  return Math.max(share(PERCENT + Math.max(value('severe'), value('most')), adapted), adapted + value('contacts'));
}

function recorded({ plan, athlete }: Circumstances, { range }: WeekReading): number {
  let sum = 0;
  for (const row of doneBy(plan.record, athlete.id)) {
    if (row.kind === 'session' && row.day >= range.from && row.day <= range.until) sum += row.contacts ?? 0;
  }
  return sum;
}

/** A taper's last week is the last of its segment that has training; a segment ends with the week of a peak. */
function markTapers({ weeks, competitions }: Circumstances, made: readonly AdaptedWeek[]): readonly AdaptedWeek[] {
  const peaks = competitions.filter((one) => one.prepare === 'peak');
  const marked = [...made];
  let followed = false;
  for (const week of weeks.toReversed()) {
    if (peaks.some((peak) => holds(week.range, peak.range.from))) followed = false;
    const adapted = made[week.index];
    const { kind } = week.built;
    if (kind === 'taper' && adapted !== undefined) {
      marked[week.index] = { ...adapted, taper: followed ? 'first' : 'last' };
    }
    if (kind !== 'empty' && kind !== 'transition') followed = true;
  }
  return marked;
}
