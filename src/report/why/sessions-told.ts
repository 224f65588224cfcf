// The sessions of a week with the reason of each day; those of the day that is asked about with every line, its dose and
// why this drill, this rung and these kilos. Called by ../why.ts.

import type { BuiltLine, BuiltSession, BuiltWeek, Reason } from '../../build/types.ts';
import type { Plan } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';
import { doseWords, exerciseName } from '../exercise-words.ts';
import type { Places } from '../places.ts';
import { loadWords } from '../../util/quantities.ts';
import { lineReasonWords } from './line-reasons.ts';
import { sessionReasonWords } from './session-reasons.ts';
import { placesOf, ruleMark } from './told.ts';
import type { Told } from './told.ts';

export interface SessionTold {
  readonly day: Day;
  readonly at?: number;
  readonly place: string;
  readonly minutes: number;
  readonly contacts: number;
  readonly lifts: boolean;
  readonly reasons: readonly Told[];
  /** Of the day that is asked about only. */
  readonly lines: readonly LineTold[];
}

export interface LineTold {
  readonly order: number;
  readonly exercise: string;
  readonly name: string;
  readonly dose: string;
  readonly contacts: number;
  /** `72.5 kg`. */
  readonly load?: string;
  readonly reasons: readonly Told[];
}

/** All sessions of the week; only those on `day` have lines. */
export function sessionsTold(plan: Plan, { sessions }: BuiltWeek, day: Day, places: Places): readonly SessionTold[] {
  return sessions.map((session) => ({
    day: session.day,
    ...(session.slot.at !== undefined && { at: session.slot.at }),
    place: session.slot.place.id,
    minutes: session.minutes,
    contacts: session.contacts,
    lifts: session.lifts,
    reasons: session.reasons.map((reason) => sessionReason(plan, reason, session, places)),
    lines: session.day === day ? session.lines.map((line) => lineTold(plan, line, places)) : [],
  }));
}

function sessionReason(plan: Plan, reason: Reason, session: BuiltSession, places: Places): Told {
  const words = sessionReasonWords(
    reason,
    (id) => exerciseName(plan.library, id, plan.season.units),
    session.slot.minutes,
  );
  return { about: reason.about, words, places: placesOf(reason.spans, places), ...ruleMark(reason.by) };
}

function lineTold(plan: Plan, line: BuiltLine, places: Places): LineTold {
  return {
    order: line.order,
    exercise: line.exercise,
    name: exerciseName(plan.library, line.exercise, plan.season.units),
    dose: doseWords(plan.library, line, plan.season.units),
    contacts: line.contacts,
    ...(line.loadGrams !== undefined && { load: loadWords(line.loadGrams, plan.season.units) }),
    reasons: line.reasons.map((reason) => ({
      about: reason.about,
      words: lineReasonWords(plan, reason, places),
      places: placesOf(reason.spans, places),
      ...ruleMark(reason.by),
    })),
  };
}
