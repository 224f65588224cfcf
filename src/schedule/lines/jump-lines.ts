// The jump lines of one session: the picked drills with the sets and reps that make the session's contacts exactly.
// Called for every session with jumps. Whole sessions are cached by what they hang on, as squads and weeks repeat.

import type { Reason } from '../../build/types.ts';
import type { TrainingPlace } from '../../plan/types.ts';
import type { Drill } from '../../library/types.ts';
import { allot } from './allot.ts';
import type { Allotted } from './allot.ts';
import type { Aim } from './allot-target.ts';
import type { Candidate, Choice } from './choices.ts';
import type { Draft, LineDraft } from './draft.ts';
import { drillSeconds } from './minutes.ts';
import type { Pick } from './picks.ts';
import type { Tally } from './tally.ts';
import { addDrill, tallyKey } from './tally.ts';

export interface JumpLines {
  readonly drafts: readonly Draft[];
  /** The week with this session added. */
  readonly week: Tally;
  readonly drills: readonly Drill[];
  readonly cost: number;
  /** A rule will name the week for what it is made of. */
  readonly named: boolean;
}

export interface JumpRequest {
  readonly picks: readonly Pick[];
  readonly contacts: number;
  readonly week: Tally;
  readonly aim: Aim;
  readonly place: TrainingPlace;
  readonly people: number;
  /** Seconds that the jumps may take. */
  readonly mostSeconds: number;
  /** A drill of the high tier isn't left out, so that the week keeps its tiers. */
  readonly keepHigh: boolean;
  /** Pinned sets by drill. */
  readonly sets: ReadonlyMap<string, { readonly value: number }>;
  /** Remembers how contacts were shared out: the same for all of these drills, whatever held back the next ones. */
  readonly allotted: (key: string, make: () => Allotted | undefined) => Allotted | undefined;
}

/**
 * Lines that add up to the session's contacts, or undefined when no way of the picked drills does. Where the jumps alone
 * outlast the slot they get fewer, longer sets: their rest is never cut.
 */
export function jumpLines(request: JumpRequest): JumpLines | undefined {
  const usual = linesBy(request, false);
  if (usual === undefined || secondsOf(usual) <= request.mostSeconds) return usual;
  const brief = linesBy(request, true);
  return brief !== undefined && secondsOf(brief) < secondsOf(usual) ? brief : usual;
}

const secondsOf = (lines: JumpLines): number => lines.drafts.reduce((sum, draft) => sum + draft.seconds, 0);

function linesBy(request: JumpRequest, brief: boolean): JumpLines | undefined {
  const { contacts, week: before, aim } = request;
  const candidates = request.picks.map((pick) => candidateOf(pick, request));
  const key = `${candidates.map(candidateKey).join(' ')}|${contacts}|${tallyKey(before)}|${aim.key}|${brief}`;
  const allotted = request.allotted(key, () => allot(candidates, contacts, before, aim, brief));
  if (allotted === undefined) return undefined;
  const drafts: Draft[] = [];
  const drills: Drill[] = [];
  let { week } = request;
  request.picks.forEach((pick, index) => {
    const choice = allotted.choices[index];
    if (choice === undefined) return;
    drafts.push(draftOf(pick, choice, allotted.widened, request));
    drills.push(pick.drill);
    week = addDrill(week, pick.drill, choice.contacts);
  });
  return { drafts, week, drills, cost: allotted.cost, named: allotted.named };
}

function candidateOf({ drill, most }: Pick, { sets, keepHigh, contacts }: JumpRequest): Candidate {
  const pinned = sets.get(drill.id);
  const keep = pinned !== undefined || (keepHigh && drill.tier === 'high');
  return { drill, most: Math.min(most, contacts), keep, ...(pinned === undefined ? {} : { sets: pinned.value }) };
}

const candidateKey = ({ drill, most, sets, keep }: Candidate): string =>
  `${drill.id}:${most}:${sets ?? ''}:${keep ? 'k' : ''}`;

function draftOf(pick: Pick, choice: Choice, widened: boolean, request: JumpRequest): Draft {
  const { drill } = pick;
  const { sets, reps, contacts } = choice;
  const line: LineDraft = {
    part: 'jumps',
    exercise: drill.id,
    kind: 'drill',
    sets,
    reps,
    contacts,
    loadGrams: undefined,
    perSideGrams: undefined,
    barGrams: undefined,
    percent: undefined,
    reserve: undefined,
    dropCm: drill.dropCm,
    restSeconds: drill.restSeconds,
    tempo: undefined,
    note: undefined,
    family: drill.family,
    own: pick.own,
    estimated: false,
    origin: DERIVED,
    reasons: [...pick.reasons, ...setsReasons(drill, choice, widened)],
  };
  return {
    line,
    seconds: drillSeconds(drill, sets, reps, request.place, request.people),
    role: 'fixed',
    heavy: false,
    numbered: [],
  };
}

const DERIVED = { kind: 'derived', rule: 'direction-mix' } as const;

/** Said only where the drill's own ranges couldn't meet the session. */
function setsReasons(drill: Drill, { sets, reps }: Choice, widened: boolean): readonly Reason[] {
  const inside = sets >= drill.sets.from && sets <= drill.sets.to && reps >= drill.reps.from && reps <= drill.reps.to;
  return !widened || inside ? [] : [{ about: 'sets', by: 'widened', params: { sets, reps }, spans: [] }];
}
