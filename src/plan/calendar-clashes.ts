// What two items of the calendar can't both be: two slots of one day that nobody can tell apart, two peaks of one athlete
// on one day. Called by resolve.ts once both sides are resolved. Each item is reported once, against the first it meets.

import { problem } from '../diagnostics/problem.ts';
import { isoDate, weekdayNames } from '../util/days.ts';
import { appliesTo, overlap } from './applies.ts';
import type { Scope } from './scope.ts';
import type { Athlete, Competition, Slot } from './types.ts';

/** Two slots on one day of the week, at the same time of the year, need names, and different ones. */
export function reportSlotClashes(scope: Scope, slots: readonly Slot[]): void {
  for (const [index, slot] of slots.entries()) {
    const other = slots
      .slice(0, index)
      .find((before) => before.day === slot.day && overlap(before.range, slot.range) && clash(before, slot));
    if (other === undefined) continue;
    const related = [{ span: other.span, message: 'the other is here' }];
    const params = { day: weekdayNames[slot.day] };
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
  for (const [index, peak] of peaks.entries()) {
    for (const other of peaks.slice(0, index)) {
      if (!overlap(other.range, peak.range)) continue;
      const both = athletes.find((athlete) => appliesTo(other.who, athlete) && appliesTo(peak.who, athlete));
      if (both === undefined) continue;
      const params = {
        name: peak.name,
        other: other.name,
        athlete: both.id,
        date: isoDate(Math.max(other.range.from, peak.range.from)),
      };
      const related = [{ span: other.span, message: 'the other peak is here' }];
      scope.report(problem('plan/two-peaks', { span: peak.span, params, related }));
      break;
    }
  }
}
