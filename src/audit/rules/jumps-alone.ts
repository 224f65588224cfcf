// jumps-alone: a power block is short, and strength comes before it where there was time. R9 (C).
// A segment reaches from one peak to the next; there was time where it had the weeks for the shortest strength and the
// shortest power block. Empty weeks interrupt nothing and count for nothing.

import { PATH_PHASES } from '../../library/phases.ts';
import type { PathPhase } from '../../library/types.ts';
import { holds } from '../../plan/applies.ts';
import { isIdle } from '../phases.ts';
import { pinPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { SeasonReading, WeekReading } from '../season-reading.ts';

export const jumpsAlone = auditRule('jumps-alone', (season, find) => {
  const longest = season.parameter('jumps-alone', 'most');
  const timeForBoth = leastWeeks('strength') + leastWeeks('power');
  for (const segment of segments(season)) {
    for (const { from, until } of powerBlocks(segment)) {
      const first = segment[from];
      if (first === undefined) continue;
      const most = longest(first);
      const tooLong = segment[from + most];
      if (tooLong !== undefined && from + most < until) {
        const params = { long: true, found: most + 1, most };
        find(tooLong, { params, span: pinPlace(season, tooLong, 'phase') });
      }
      if (until < timeForBoth || segment.slice(0, from).some(isStrength)) continue;
      find(first, { params: { long: false, found: until, most }, span: pinPlace(season, first, 'phase') });
    }
  }
});

function leastWeeks(id: PathPhase['id']): number {
  return PATH_PHASES.find((phase) => phase.id === id)?.least ?? 0;
}

function isStrength({ built }: WeekReading): boolean {
  return built.phase === 'strength' || built.phase === 'strength-power';
}

/** The weeks with training from one peak to the next. */
function segments(season: SeasonReading): readonly (readonly WeekReading[])[] {
  const peaks = season.competitions.filter((one) => one.prepare === 'peak');
  const found: WeekReading[][] = [];
  let segment: WeekReading[] = [];
  for (const week of season.weeks) {
    if (!isIdle(week)) segment.push(week);
    if (!peaks.some((peak) => holds(week.range, peak.range.from))) continue;
    found.push(segment);
    segment = [];
  }
  return [...found, segment];
}

/** Runs of power weeks: index of the first, and of the week behind the last. */
function powerBlocks(segment: readonly WeekReading[]): readonly { readonly from: number; readonly until: number }[] {
  const blocks: { from: number; until: number }[] = [];
  segment.forEach((week, index) => {
    if (week.built.phase !== 'power') return;
    const last = blocks.at(-1);
    if (last?.until === index) last.until = index + 1;
    else blocks.push({ from: index, until: index + 1 });
  });
  return blocks;
}
