// What two items of the calendar can't both be: two slots of one day that an athlete who has both can't tell apart, two
// peaks of one athlete on one day. Called by resolve.ts once both sides are resolved. Each item is reported once,
// against the first it meets.

import { problem } from '../diagnostics/problem.ts';
import { isoDate, WEEKDAY_NAMES } from '../util/days.ts';
import { overlap, shareAthlete } from './applies.ts';
import type { Scope } from './scope.ts';
import type { Athlete, Competition, Slot } from './types.ts';

/**
 * Two slots of one athlete on one day of the week, at the same time of the year, need names, and different ones. Slots
 * that nobody has both of, those of two squads say, are told apart by whom they are for.
 */
export function reportSlotClashes(scope: Scope, slots: readonly Slot[], athletes: readonly Athlete[]): void {
  const squadOf = new Map(athletes.map(({ id, squad }) => [id, squad]));
  for (const [index, slot] of slots.entries()) {
    const other = slots
      .slice(0, index)
      .find(
        (before) =>
          before.day === slot.day &&
          clash(before, slot) &&
          overlap(before.range, slot.range) &&
          shareAthlete(before.who, slot.who, squadOf),
      );
    if (other === undefined) continue;
    const related = [{ span: other.span, message: 'the other is here' }];
    const params = { day: WEEKDAY_NAMES[slot.day] };
    const code = isSame(other, slot) ? 'plan/slot-twice' : 'plan/slots-unnamed';
    scope.report(problem(code, { span: slot.span, params, related }));
  }
}

function clash(a: Slot, b: Slot): boolean {
  return a.name === undefined || b.name === undefined || a.id === b.id;
}

function isSame(a: Slot, b: Slot): boolean {
  return a.id === b.id && (a.name !== undefined || (a.at === b.at && a.place === b.place));
}

/** One athlete can't be at two peaks on one day. */
export function reportPeakClashes(
  scope: Scope,
  competitions: readonly Competition[],
  athletes: readonly Athlete[],
): void {
  const peaks = peaksByName(competitions.filter(({ prepare }) => prepare === 'peak'));
  const seen = new Set<string>();
  const reported = new Set<Competition>();
  for (const athlete of athletes) {
    const own = peaks.athletes.get(athlete.id) ?? [];
    // Athletes of one squad without a peak of their own have the same peaks: one of them stands for all.
    const alike = own.length === 0 ? (athlete.squad ?? '') : `${athlete.squad ?? ''} ${athlete.id}`;
    if (seen.has(alike)) continue;
    seen.add(alike);
    const squads = athlete.squad === undefined ? [] : (peaks.squads.get(athlete.squad) ?? []);
    const all = new Set([...peaks.everybody, ...squads, ...own]);
    reportOverlaps(scope, athlete.id, all, reported);
  }
}

interface PeaksByName {
  readonly everybody: readonly Competition[];
  readonly squads: ReadonlyMap<string, readonly Competition[]>;
  readonly athletes: ReadonlyMap<string, readonly Competition[]>;
}

function peaksByName(peaks: readonly Competition[]): PeaksByName {
  const squads = new Map<string, Competition[]>();
  const athletes = new Map<string, Competition[]>();
  const add = (map: Map<string, Competition[]>, name: string, peak: Competition): void => {
    const list = map.get(name);
    if (list === undefined) map.set(name, [peak]);
    else list.push(peak);
  };
  for (const peak of peaks) {
    if (peak.who.kind === 'everybody') continue;
    for (const squad of peak.who.squads) add(squads, squad, peak);
    for (const athlete of peak.who.athletes) add(athletes, athlete, peak);
  }
  return { everybody: peaks.filter(({ who }) => who.kind === 'everybody'), squads, athletes };
}

function reportOverlaps(
  scope: Scope,
  athlete: string,
  peaks: ReadonlySet<Competition>,
  reported: Set<Competition>,
): void {
  let last: Competition | undefined;
  for (const peak of [...peaks].toSorted((a, b) => a.range.from - b.range.from)) {
    if (last !== undefined && peak.range.from <= last.range.until && !reported.has(peak)) {
      reported.add(peak);
      const params = { name: peak.name, other: last.name, athlete, date: isoDate(peak.range.from) };
      const related = [{ span: last.span, message: 'the other peak is here' }];
      scope.report(problem('plan/two-peaks', { span: peak.span, params, related }));
    }
    if (last === undefined || peak.range.until > last.range.until) last = peak;
  }
}
