// Why each week has its phase and its kind: what made them, with the lines of the plan behind it. Called by
// first-stages.ts when the stages are through. Nothing of the athlete's own line is told here but absences and limits,
// as athletes of whom the stages know the same share these reasons.

import type { Reason } from '../build/types.ts';
import { SEASON_SHAPE } from '../library/phases.ts';
import { overlap, weekFrom } from '../plan/applies.ts';
import { ageOn, returnStageOn } from '../plan/athlete-facts.ts';
import type { Competition, Plan } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import { isoDate } from '../util/days.ts';
import type { AthleteGrid, AthletePhases, KindWeek, Segment, WeekCells } from './types.ts';

interface Stages {
  readonly grid: AthleteGrid;
  readonly phases: AthletePhases;
  readonly kinds: readonly KindWeek[];
}

/** For each week the reason of its phase and that of its kind. */
export function weekReasons(plan: Plan, stages: Stages): readonly (readonly Reason[])[] {
  const { grid, phases } = stages;
  const paths = phases.segments.map((segment) => pathWords(stages, segment));
  return grid.weeks.map((week) => [phaseReason(plan, stages, week, paths), kindReason(stages, week)]);
}

type Params = Reason['params'];

const NO_SPANS: readonly Span[] = [];

const about = (what: 'phase' | 'kind', by: string, params: Params = {}, spans = NO_SPANS): Reason => ({
  about: what,
  by,
  params,
  spans,
});

function phaseReason(plan: Plan, stages: Stages, week: WeekCells, paths: readonly string[]): Reason {
  const phase = stages.phases.weeks[week.index];
  if (phase?.phase === 'closed') return about('phase', 'empty', barredWords(week), closingSpans(week));
  if (phase?.pinnedBy !== undefined) return about('phase', 'pin', {}, [phase.pinnedBy]);
  const segment = stages.phases.segments[phase?.segment ?? -1];
  if (segment === undefined) return afterPeakReason(stages, week, phase?.phase === 'transition');
  const path = paths[phase?.segment ?? -1] ?? '';
  return about('phase', segment.form, { path, ...segmentParams(plan, stages, segment) }, [
    ...peakSpans(segment.peak),
    ...(segment.form === 'in-season' ? inSeasonSpans(plan, week) : []),
  ]);
}

/** A week without a segment: the rest after a peak, or what comes after the last. */
function afterPeakReason({ phases }: Stages, { index }: WeekCells, rest: boolean): Reason {
  const peak = phases.segments.findLast((segment) => segment.until < index && segment.peak !== undefined)?.peak;
  return about('phase', rest ? 'after-peak' : 'after-last-peak', peakParams(peak), peakSpans(peak));
}

const peakSpans = (peak: Competition | undefined): readonly Span[] => (peak === undefined ? [] : [peak.span]);

const peakParams = (peak: Competition | undefined): Params =>
  peak === undefined ? {} : { peak: peak.name, on: isoDate(peak.range.from) };

function segmentParams({ season }: Plan, { grid }: Stages, { form, from, until, peak }: Segment): Params {
  const open = grid.weeks.slice(from, until + 1).filter((week) => !week.empty).length;
  const params = { weeks: open, ...peakParams(peak) };
  if (form === 'hold') return { ...params, most: SEASON_SHAPE.holdMostWeeks };
  if (form !== 'foundation') return params;
  const age = ageOn(grid.athlete, season.starts);
  return age !== undefined && age < SEASON_SHAPE.foundationUnderAge
    ? { ...params, under_age: SEASON_SHAPE.foundationUnderAge }
    : { ...params, under_contacts: SEASON_SHAPE.foundationUnderContacts };
}

function inSeasonSpans({ season }: Plan, { starts }: WeekCells): readonly Span[] {
  const here = weekFrom(starts);
  const now = season.inSeason.filter((range) => overlap(range, here));
  return (now.length > 0 ? now : season.inSeason.filter((range) => range.until < starts)).map((range) => range.span);
}

/** `strength 3, power 4`: the open weeks of a segment in runs of one phase. */
function pathWords({ grid, phases }: Stages, { from, until }: Segment): string {
  const runs: { phase: string; weeks: number }[] = [];
  for (const week of grid.weeks.slice(from, until + 1)) {
    const phase = phases.weeks[week.index]?.phase;
    if (week.empty || phase === undefined) continue;
    const last = runs.at(-1);
    if (last?.phase === phase) last.weeks += 1;
    else runs.push({ phase, weeks: 1 });
  }
  return runs.map(({ phase, weeks }) => `${phase} ${weeks}`).join(', ');
}

/** What bars the days on which there would be a slot; `limit` where the days are open and a limit stops them. */
function barredWords({ cells }: WeekCells): Params {
  const barred = cells.flatMap((cell) => (cell.barred === undefined || cell.barred === 'no-slot' ? [] : [cell.barred]));
  const kinds = [...new Set(barred)];
  return { barred: cells.some((cell) => cell.usable) ? 'limit' : kinds.join(' ') || 'no-slot' };
}

function closingSpans({ cells, closedBy }: WeekCells): readonly Span[] {
  const barring = cells.flatMap((cell) => cell.barredBy ?? []);
  return eachOnce([...closedBy, ...barring]);
}

function kindReason(stages: Stages, week: WeekCells): Reason {
  const kind = stages.kinds[week.index];
  if (kind === undefined) throw new Error(`a stage left out week ${week.index + 1}`);
  if (kind.pinnedBy !== undefined) return about('kind', 'pin', {}, [kind.pinnedBy]);
  const peak = stages.phases.weeks[week.index]?.peak;
  switch (kind.kind) {
    case 'return':
      return returnReason(stages, week, kind);
    case 'taper':
      return about(
        'kind',
        'taper',
        { step: kind.step ?? 1, steps: kind.steps ?? 1, ...peakParams(peak) },
        peakSpans(peak),
      );
    case 'deload':
      return about('kind', 'deload-rhythm', { loading: loadingBefore(stages, week.index) });
    case 'empty':
      return about('kind', 'empty', { loses: kind.decayPercent ?? 0 }, closingSpans(week));
    case 'load':
    case 'hold':
    case 'transition':
      return about('kind', kind.kind);
  }
}

function returnReason({ grid }: Stages, week: WeekCells, kind: KindWeek): Reason {
  if (kind.step === undefined) {
    const stage = returnStageOn(grid.athlete, week.starts);
    if (stage === undefined) return about('kind', 'pin');
    return about('kind', 'returning-stage', { stage: stage.stage, of: stage.of }, [stage.span]);
  }
  const closed = grid.weeks.slice(0, week.index).filter((one) => one.empty);
  const last = closed.at(-1);
  const run =
    last === undefined ? [] : closed.filter((one) => last.index - one.index < closed.length - closed.indexOf(one));
  return about(
    'kind',
    'return-ramp',
    { step: kind.step, steps: kind.steps ?? kind.step, away: run.length },
    eachOnce(run.flatMap(closingSpans)),
  );
}

/** A line of the plan that closes several weeks is named once. */
function eachOnce(spans: readonly Span[]): readonly Span[] {
  return [...new Map(spans.map((span) => [`${span.file} ${span.start}`, span])).values()];
}

function loadingBefore({ kinds }: Stages, index: number): number {
  let loading = 0;
  while (kinds[index - 1 - loading]?.kind === 'load') loading += 1;
  return loading;
}
