// What is worked out once for a plan and shared by all athletes: the groups' families, ladders, lifts by pattern, and
// caches of whole sessions. Made by chooseGroups and handed to scheduleLines with every athlete.

import type { Plan, WrittenLine } from '../../plan/types.ts';
import { getDefault } from '../../library/rules.ts';
import type { Allotted } from './allot.ts';
import { boundedCache } from './bounded-cache.ts';
import type { Draft } from './draft.ts';
import type { GroupChoice } from './groups.ts';
import { groupChoice } from './groups.ts';
import type { JumpLines } from './jump-lines.ts';
import type { Ladders } from './ladders.ts';
import { ladders } from './ladders.ts';
import type { LiftChoice } from './lift-choice.ts';
import type { LineRules } from './line-rules.ts';
import { liftChoice } from './lift-choice.ts';
import type { SharedPlace } from './lift-lines.ts';
import type { Picked } from './session-picks.ts';

export interface Groups {
  readonly choice: GroupChoice;
  readonly ladders: Ladders;
  readonly lifts: LiftChoice;
  /** Places of lift sessions, with the lines that athletes who stand alike share. */
  readonly lifting: (key: string, make: () => readonly SharedPlace[]) => readonly SharedPlace[];
  /** Equal texts have one number, from 1. */
  readonly numberOf: (text: string) => number;
  /** Drafts of lines that a coach has put into sessions, by what else they hang on. */
  readonly written: WeakMap<WrittenLine, Map<string, readonly Draft[]>>;
  /** Numbers what it makes, for use in the keys of sessions. */
  readonly picked: (key: string, make: () => Omit<Picked, 'number'>) => Picked;
  /** The rules as they stand for athletes for whom the plan changes none. */
  readonly usualRules: (make: () => LineRules) => LineRules;
  readonly allotted: (key: string, make: () => Allotted | undefined) => Allotted | undefined;
  readonly jumps: (key: string, make: () => JumpLines | undefined) => JumpLines | undefined;
}

const PICKS_KEPT = 20_000;
const SESSIONS_KEPT = 50_000;

/** Costs one pass over the athletes, made when the first session asks; the rest is worked out as it is met. */
export function openWorkshop(plan: Plan): Groups {
  const shared = ladders(plan.library.families);
  const picks = boundedCache<Picked>(PICKS_KEPT);
  const numbers = new Map<string, number>();
  let number = 0;
  let usual: LineRules | undefined;
  return {
    choice: groupChoice(plan, shared),
    ladders: shared,
    lifts: liftChoice(plan.library.lifts, getDefault('eccentric-tempo', 'most')),
    picked: (key, make) =>
      picks(key, () => {
        number += 1;
        return { number, ...make() };
      }),
    lifting: boundedCache(PICKS_KEPT),
    written: new WeakMap(),
    numberOf: (text) => {
      const known = numbers.get(text) ?? numbers.size + 1;
      numbers.set(text, known);
      return known;
    },
    usualRules: (make) => (usual ??= make()),
    allotted: boundedCache(SESSIONS_KEPT),
    jumps: boundedCache(SESSIONS_KEPT),
  };
}
