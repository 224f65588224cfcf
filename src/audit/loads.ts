// The lines with a share of a maximum, in per cent. Walked by the rules on loads.

import type { Lift } from '../library/types.ts';
import type { LineReading } from './line-reading.ts';
import type { SessionReading } from './session-reading.ts';
import type { SeasonReading } from './season-reading.ts';

export interface LoadedLine {
  readonly session: SessionReading;
  readonly line: LineReading;
  readonly lift: Lift;
  /** Share of the maximum, in per cent. */
  readonly percent: number;
}

/** Calls `each` for every line of a lift whose share of a maximum is known. */
export function forEachLoad(season: SeasonReading, each: (loaded: LoadedLine) => void): void {
  for (const session of season.sessions) {
    if (!session.lifts) continue;
    for (const line of session.lines) {
      const { lift, percent } = line;
      if (lift !== undefined && percent > 0) each({ session, line, lift, percent });
    }
  }
}

/** A share as it is printed. */
export function shownPercent(percent: number): number {
  return Math.round(percent * 10) / 10;
}
