// A built week as its sheet: what is printed of it, and what matches one build's with another's. Reasons, places and
// whatever else may differ between two builds that print the same are left behind. Of blocked weeks, which aren't printed,
// it is known that they are.

import type { BuiltAthlete, BuiltLine, BuiltSession, BuiltWeek } from '../build/types.ts';
import type { Day } from '../util/days.ts';
import type { SheetLine, SheetSession, SheetWeek } from './types.ts';

/** The weeks of one athlete, with nothing in those that are blocked. */
export function sheetOf({ weeks, blocked }: BuiltAthlete): readonly SheetWeek[] {
  return weeks.map((week) => (blocked.has(week.week) ? blockedWeek(week.starts) : sheetWeek(week)));
}

/** A week that an error keeps from being written. */
export function blockedWeek(starts: Day): SheetWeek {
  return { starts, blocked: true, contacts: 0, written: false, done: false, sessions: [] };
}

function sheetWeek({ starts, phase, kind, contacts, boundBy, done, sessions }: BuiltWeek): SheetWeek {
  const written = boundBy === 'pin' || boundBy === 'programme';
  return { starts, phase, kind, contacts, written, done, sessions: sessions.map(sheetSession) };
}

function sheetSession({ day, slot, contacts, lines }: BuiltSession): SheetSession {
  return {
    day,
    slot: slot.id,
    place: slot.place.id,
    ...(slot.at !== undefined && { at: slot.at }),
    contacts,
    smallestPlateGrams: slot.place.kit.smallestPlateGrams,
    lines: sheetLines(lines),
  };
}

function sheetLines(lines: readonly BuiltLine[]): readonly SheetLine[] {
  const seen = new Map<string, number>();
  return lines.map((line) => {
    const key = `${line.part} ${line.exercise}`;
    const occurrence = seen.get(key) ?? 0;
    seen.set(key, occurrence + 1);
    return sheetLine(line, occurrence);
  });
}

function sheetLine(line: BuiltLine, occurrence: number): SheetLine {
  const { part, exercise, order, sets, reps, contacts, restSeconds } = line;
  return {
    part,
    exercise,
    occurrence,
    order,
    sets,
    reps,
    contacts,
    ...(line.loadGrams !== undefined && { loadGrams: line.loadGrams }),
    ...(line.percent !== undefined && { percent: line.percent }),
    ...(line.reserve !== undefined && { reserve: line.reserve }),
    ...(line.dropCm !== undefined && { dropCm: line.dropCm }),
    restSeconds,
    ...(line.tempo !== undefined && { tempo: line.tempo }),
    ...(line.note !== undefined && { note: line.note }),
    ...(line.pairedWith !== undefined && { paired: true }),
  };
}
