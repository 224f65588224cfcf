// What two items of the calendar can't both be: two slots of one day that an athlete who has both can't tell apart, two
// peaks of one athlete on one day. Called by resolve.ts once both sides are resolved. Each item is reported once,
// against the first it meets.

import { problem } from '../diagnostics/problem.ts';
import { isoDate, WEEKDAY_NAMES } from '../util/days.ts';
import { overlap, shareAthlete } from './applies.ts';
import { byWhom, namedIn } from './by-whom.ts';
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
  const peaks = competitions.filter(({ prepare }) => prepare === 'peak');
  const peaksOf = byWhom(peaks);
  const named = new Set(peaks.flatMap(({ who }) => namedIn(who)));
  const seen = new Set<string>();
  const reported = new Set<Competition>();
  for (const athlete of athletes) {
    // Athletes of one squad without a peak of their own have the same peaks: one of them stands for all.
    const alike = named.has(athlete.id) ? `${athlete.squad ?? ''} ${athlete.id}` : (athlete.squad ?? '');
    if (seen.has(alike)) continue;
    seen.add(alike);
    reportOverlaps(scope, athlete.id, peaksOf(athlete), reported);
  }
}

function reportOverlaps(
  scope: Scope,
  athlete: string,
  peaks: readonly Competition[],
  reported: Set<Competition>,
): void {
  let last: Competition | undefined;
  for (const peak of peaks.toSorted((a, b) => a.range.from - b.range.from)) {
    if (last !== undefined && peak.range.from <= last.range.until && !reported.has(peak)) {
      reported.add(peak);
      const params = { name: peak.name, other: last.name, athlete, date: isoDate(peak.range.from) };
      const related = [{ span: last.span, message: 'the other peak is here' }];
      scope.report(problem('plan/two-peaks', { span: peak.span, params, related }));
    }
    if (last === undefined || peak.range.until > last.range.until) last = peak;
  }
}
