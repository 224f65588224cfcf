// The parameters of all rules that the stage of lines obeys, as they stand for one athlete in one week. Looked up once
// where a plan changes none of them.

import type { DayRange } from '../../plan/types.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import type { RuleId } from '../../library/rules.ts';
import type { StaleRule } from './maxima.ts';
import type { GateValues } from './standing.ts';
import { gateValues } from './standing.ts';

export interface LineRules {
  readonly gates: GateValues;
  readonly stale: StaleRule;
  /** Share of the maximum from which lifting is heavy, in per cent. */
  readonly heavyFrom: number;
  readonly leastReserve: number;
  /** Most rise of a load between loading weeks, in per cent. */
  readonly loadStep: number;
  /** How far a session may run over its slot, in per cent. */
  readonly minutesOver: number;
  readonly newDrills: number;
  /** Most static contacts of a week, in per cent. */
  readonly staticMost: number;
  /** Points a direction may be off its share. */
  readonly directionPoints: number;
  /** In place of the phase's own, in per cent. */
  readonly highMost?: number;
  readonly fastLeast?: number;
  readonly fastMost?: number;
  /** Weeks of a novice's first weeks. */
  readonly noviceWeeks: number;
}

/**
 * The numbers in force over a range, in the units of the rule table; the bands a phase sets are absent unless the plan
 * changes them.
 */
export function lineRules(book: RuleBook, range: DayRange): LineRules {
  const value = (rule: RuleId, parameter: string): number => getRuleValue(book, rule, parameter, range);
  const highMost = book.value('high-tier-share', 'most', range);
  const fastLeast = book.value('fast-cycle-share', 'least', range);
  const fastMost = book.value('fast-cycle-share', 'most', range);
  return {
    gates: gateValues(book, range),
    stale: {
      weeks: value('test-stale', 'weeks'),
      awayWeeks: value('test-stale', 'away'),
      share: value('test-stale', 'share'),
    },
    heavyFrom: value('lift-spacing', 'heavy'),
    leastReserve: value('load-reserve', 'least'),
    loadStep: value('load-step', 'most'),
    minutesOver: value('slot-minutes', 'over'),
    newDrills: value('new-drills', 'most'),
    staticMost: value('static-share', 'most'),
    directionPoints: value('direction-mix', 'points'),
    noviceWeeks: value('fast-cycle-share', 'first-weeks'),
    ...(highMost === undefined ? {} : { highMost }),
    ...(fastLeast === undefined ? {} : { fastLeast }),
    ...(fastMost === undefined ? {} : { fastMost }),
  };
}
