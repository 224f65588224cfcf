// The lines in which an athlete drops from a height, in cm, and whether the athlete is cleared for it. Walked by the
// rules on drops.

import type { Drill } from '../library/types.ts';
import type { LineReading } from './line-reading.ts';
import type { SessionReading } from './session-reading.ts';
import type { SeasonReading } from './season-reading.ts';

export interface DropLine {
  readonly session: SessionReading;
  readonly line: LineReading;
  readonly drill: Drill;
  readonly cm: number;
}

/** Every line with a drop, in order of day; drops stand in demanding sessions only. */
export function dropLines(season: SeasonReading): readonly DropLine[] {
  const found: DropLine[] = [];
  for (const session of season.jumpSessions) {
    if (!session.demanding) continue;
    for (const line of session.lines) {
      const { drill, dropCm } = line;
      if (drill !== undefined && dropCm !== undefined) found.push({ session, line, drill, cm: dropCm });
    }
  }
  return found;
}

/** Whether the coach has cleared drops, or this drill by its own id. */
export function isClearedToDrop(season: SeasonReading, drill: Drill): boolean {
  return season.athlete.cleared.has('drops') || season.athlete.cleared.has(drill.id);
}
