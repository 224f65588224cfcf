// What a week's contacts may be, as a function of the one thing that moves: A, the weekly contacts an athlete is used to.
// Plain data made by week-terms.ts, read by bounds.ts, search.ts and ../contacts.ts; all numbers are whole contacts.

import type { Bound, BoundRule } from '../../build/types.ts';
import type { RuleId } from '../../library/rules.ts';
import type { Level, PhaseId, WeekKind } from '../../library/types.ts';
import type { Span } from '../../source/types.ts';

/** The lines of the plan that changed the numbers. */
interface Written {
  readonly spans?: readonly Span[];
}

/** How far a week may go from A. What holds `otherwise` is what a waiver of its rule leaves. */
export type Growth =
  /** The larger of a percentage of A and A plus a number. */
  | ({ readonly kind: 'rise'; readonly by: BoundRule; readonly percent: number; readonly contacts: number } & Written)
  /** A percentage of A. */
  | ({
      readonly kind: 'share';
      readonly by: BoundRule;
      readonly percent: number;
      readonly otherwise?: Growth;
    } & Written)
  /** A waiver leaves it out. */
  | { readonly kind: 'free' };

/** How far a session may go from the usual one, A shared among the usual sessions. */
export type SessionGrowth =
  | ({ readonly kind: 'rise'; readonly percent: number; readonly contacts: number } & Written)
  | ({
      readonly kind: 'share';
      readonly by: BoundRule;
      readonly percent: number;
      readonly otherwise?: SessionGrowth;
    } & Written)
  | { readonly kind: 'free' };

/** What A becomes. */
export type Keep =
  /** The larger of V and the mean of A and V, V counted more. */
  | { readonly kind: 'follow' }
  /** A, or V if that is more. */
  | { readonly kind: 'stay' }
  /** A percentage of A, whatever was done. */
  | { readonly kind: 'fade'; readonly leftPercent: number };

/** What all jumping of a week is measured by where practice, matches and tests rise over the weeks before. */
export interface AllJumps extends Written {
  /** Most of all jumps, in per cent of what the athlete is used to. */
  readonly percent: number;
  /** So many weeks before, and their other jumps together. */
  readonly weeks: number;
  readonly before: number;
  /** Other jumps of the week itself. */
  readonly other: number;
}

export interface WeekTerms {
  readonly week: WeekKind;
  readonly phase: PhaseId;
  readonly level: Level;
  readonly possible: number;
  /** Lines of the plan that keep days of the week from jumps. */
  readonly closedBy?: readonly Span[] | undefined;
  readonly frequency: number;
  /** Sessions that A is usually shared among: those of the phase, or the most its loading weeks can hold. */
  readonly usualSessions: number;
  /** Per cent of A that is left before the week begins: the first rung of a ladder. */
  readonly openingPercent: number;
  readonly growth: Growth;
  /** Per cent by which a session may be over the largest of the taper week before; in a taper alone. */
  readonly sessionOver?: number | undefined;
  readonly sessionGrowth: SessionGrowth;
  readonly keep: Keep;
  /** Ceilings of one session that don't hang on A, the lowest first; and the one that counts. */
  readonly sessionCeilings: readonly Bound[];
  readonly sessionCeiling: number;
  /** Bounds on the week that don't hang on A. */
  readonly weekCeilings: readonly Bound[];
  /** The target; undefined where the week takes the most allowed. */
  readonly target: number | undefined;
  /** What the target was made of; absent where the week takes the most allowed or has nothing. */
  readonly aim?: Aim | undefined;
  /** The most a week may be planned at over its target. */
  readonly reach: number;
  /** Fixed by the coach: a pin keeps the rules, a programme written by hand doesn't ask; what is over is over. */
  readonly fixed?:
    | {
        readonly contacts: number;
        readonly kind: 'pin' | 'programme' | 'record';
        /** Of a programme: over this rise, and by more than so many per cent over A, the week isn't written. */
        readonly blocked?: { readonly rise: Growth; readonly severe: number };
        /** Of a programme: something in the week bars it, so that it isn't written. */
        readonly unwritten?: boolean;
        /** Of a record: the most that the athlete gets used to by it, and the most that is no leap. */
        readonly earnsAtMost?: number;
        readonly leapsFrom?: number;
        readonly span?: Span;
      }
    | undefined;
  /** Practice, matches and tests rise over the weeks before, and leave less of the week. */
  readonly allJumps?: AllJumps | undefined;
  /** The week may not rise over A: something hurt, or nobody knows what was done. */
  readonly held?: { readonly by: 'pain-hold' | 'record'; readonly spans: readonly Span[] };
  /** Sizes of a programme's sessions. */
  readonly fixedSessions?: readonly number[] | undefined;
  /** Nothing usable, and a primer stands in. */
  readonly primer: boolean;
  /** Its shortfall counts first: a loading week of its segment's last phase. */
  readonly decisive: boolean;
  /** Waivers that leave a bound of this week out. */
  readonly waived?: readonly { readonly rule: RuleId; readonly span: Span }[];
}

/** The parts of a target: a share of the session at the height of the block, in each session that is possible. */
export interface Aim {
  readonly sharePercent: number;
  readonly goal: number;
  /** Contacts of a session. */
  readonly session: number;
  /** The ceiling that is lower than the share of the goal. */
  readonly cutBy?: Bound;
}
