// The drills of one athlete in one session: for each family of the group the highest rung the athlete may do, and what
// holds back the next. Called for every session, through a cache. Two decisions of our own: a session has one drill of
// the high tier and one done on each leg in turn, at most; the others take the rung below.

import type { Reason } from '../../build/types.ts';
import { isDrop, isStatic } from '../../library/drill-facts.ts';
import { ALLOTTING, FAMILIES } from '../../library/families.ts';
import type { DirectionShares, Drill } from '../../library/types.ts';
import { leastContacts } from './choices.ts';
import type { Refusal } from './gates.ts';
import type { Ladder, Rung } from './ladders.ts';

/** What a session itself allows, whoever stands in it. */
export interface SessionGates {
  /** Drops may stand here. */
  readonly drops: boolean;
  /** Fast drills of the high tier may stand here. */
  readonly fastHigh: boolean;
  /** What keeps every fast drill out: a rule, or undefined. */
  readonly noFast?: 'pain-hold' | 'fast-cycle-share';
  /** What keeps the high tier out. */
  readonly noHigh?: 'pain-hold' | 'return-ramp';
  /** Most contacts of high-tier drills, of drops and of static drills. */
  readonly mostHigh: number;
  readonly mostDrops: number;
  readonly mostStill: number;
}

/** A text that is equal for gates that let the same through. */
export function gatesKey(gates: SessionGates): string {
  const flags = `${gates.drops ? 'd' : ''}${gates.fastHigh ? 'f' : ''}${gates.noFast ?? ''}/${gates.noHigh ?? ''}`;
  return `${flags}/${gates.mostHigh}/${gates.mostDrops}/${gates.mostStill}`;
}

export interface Pick {
  readonly drill: Drill;
  /** The group's family that it stands for, or its own. */
  readonly family: string;
  readonly own: boolean;
  /** Most contacts in this session. */
  readonly most: number;
  readonly reasons: readonly Reason[];
}

/** Which drills may be chosen beyond the gates: none a coach leaves out, and few that are new to the athlete. */
export interface Choosing {
  readonly leftOut: (drill: Drill) => Refusal | undefined;
  readonly novel: (drill: Drill) => boolean;
  /** New drills this session may still bring in. */
  readonly novelLeft: number;
}

/**
 * One drill for each family; a family that no rung of fits gives way to one of the athlete's own. One that only this
 * session or a novice's first weeks keep out is left out, unless too few are left.
 */
export function pickDrills(
  families: readonly string[],
  ladder: Ladder,
  gates: SessionGates,
  choosing: Choosing,
): readonly Pick[] {
  const state: State = { ladder, gates, choosing, picks: [], novelLeft: choosing.novelLeft };
  const missing: string[] = [];
  const skipped: string[] = [];
  for (const family of inOrderOfNeed(families, state)) {
    const drill = highestRung(family, state);
    if (drill !== undefined) take(state, drill, family, false);
    else if (heldByAthlete(family, state)) missing.push(family);
    else skipped.push(family);
  }
  for (const family of missing) replaceFamily(family, families, state);
  for (const family of skipped)
    if (state.picks.length < FAMILIES.leastInSession) replaceFamily(family, families, state);
  return state.picks.toSorted((a, b) => place(families, a) - place(families, b));
}

const place = (families: readonly string[], pick: Pick): number =>
  pick.own ? families.length : families.indexOf(pick.family);

interface State {
  readonly ladder: Ladder;
  readonly gates: SessionGates;
  readonly choosing: Choosing;
  readonly picks: Pick[];
  novelLeft: number;
}

/**
 * Who chooses first: drops, then other fast families, then slow ones, as a session's high tier is best spent so. Before
 * them come families without a rung the athlete knows: they need the week's new drills more than a higher rung does.
 */
function inOrderOfNeed(families: readonly string[], state: State): readonly string[] {
  return families
    .map((family) => ({ family, rank: rankOf(family, state) }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ family }) => family);
}

function rankOf(family: string, state: State): number {
  const all = rungs(family, state);
  const first = all[0]?.drill;
  const known = all.some((rung) => isKnown(rung, state)) ? ranks.known : 0;
  if (first === undefined) return known + ranks.slow;
  return known + (isDrop(first) ? ranks.drop : first.cycle === 'fast' ? ranks.fast : ranks.slow);
}

const ranks = { drop: 0, fast: 1, slow: 2, known: 3 } as const;

const isKnown = (rung: Rung, state: State): boolean =>
  refusalOf(rung, state) === undefined && !state.choosing.novel(rung.drill);

const rungs = (family: string, state: State): readonly Rung[] => state.ladder.families.get(family) ?? [];

/** The highest rung that nothing holds back. */
function highestRung(family: string, state: State): Drill | undefined {
  return rungs(family, state).findLast((rung) => heldBack(rung, state) === undefined)?.drill;
}

function heldBack(rung: Rung, state: State): Refusal | undefined {
  return refusalOf(rung, state) ?? novelRefusal(rung.drill, state);
}

/** What holds back the rung above a drill. */
function rungReason(drill: Drill, state: State): Reason {
  const all = rungs(drill.family, state);
  const next = all[all.findIndex((rung) => rung.drill === drill) + 1];
  const held = next === undefined ? undefined : heldBack(next, state);
  if (next === undefined || held === undefined) return { about: 'rung', by: 'top', params: {}, spans: [] };
  const { by, params, spans } = held;
  return { about: 'rung', by, params: Object.assign({}, params, { next: next.drill.id }), spans };
}

function refusalOf(rung: Rung, state: State): Refusal | undefined {
  return rung.refusal ?? state.choosing.leftOut(rung.drill) ?? sessionRefusal(rung.drill, state);
}

function novelRefusal(drill: Drill, state: State): Refusal | undefined {
  return state.novelLeft <= 0 && state.choosing.novel(drill) ? because('new-drills') : undefined;
}

function because(by: string): Refusal {
  const known = REFUSALS.get(by) ?? { by, params: {}, spans: [] };
  REFUSALS.set(by, known);
  return known;
}

/** Most are asked for rung by rung and told of nobody, so each is made once. */
const REFUSALS = new Map<string, Refusal>();

function sessionRefusal(drill: Drill, { gates, picks }: State): Refusal | undefined {
  const high = drill.tier === 'high';
  const fast = drill.cycle === 'fast';
  if (fast && gates.noFast !== undefined) return because(gates.noFast);
  if (high && gates.noHigh !== undefined) return because(gates.noHigh);
  if (isDrop(drill) && !gates.drops) return because('fast-spacing');
  if (high && fast && !gates.fastHigh) return because('fast-spacing');
  if (drill.unstable === true) return because('stability-share');
  if (drill.legs === 'each' && onEachLeg(picks) >= ALLOTTING.eachLegDrills) return because('each-leg');
  if (high && picks.some((pick) => pick.drill.tier === 'high')) return because('high-tier-share');
  if (isDrop(drill) && picks.some((pick) => isDrop(pick.drill))) return because('drop-count');
  return shareRefusal(drill, gates);
}

const onEachLeg = (picks: readonly Pick[]): number =>
  picks.reduce((sum, { drill }) => (drill.legs === 'each' ? sum + 1 : sum), 0);

/** What of the week's shares and counts has no room left for the least of a drill. */
export function shareRefusal(drill: Drill, gates: SessionGates): Refusal | undefined {
  const most = mostOf(drill, gates);
  if (most === Number.POSITIVE_INFINITY || most >= leastContacts(drill)) return undefined;
  const by =
    drill.tier === 'high' && most === gates.mostHigh
      ? 'high-tier-share'
      : isDrop(drill)
        ? 'drop-count'
        : 'static-share';
  return { by, params: { most }, spans: [] };
}

/** The most contacts a drill may have in a session by the shares and counts it falls under. */
export function mostOf(drill: Drill, gates: SessionGates): number {
  return Math.min(
    drill.tier === 'high' ? gates.mostHigh : Number.POSITIVE_INFINITY,
    isDrop(drill) ? gates.mostDrops : Number.POSITIVE_INFINITY,
    isStatic(drill) ? gates.mostStill : Number.POSITIVE_INFINITY,
  );
}

function take(state: State, drill: Drill, family: string, own: boolean): void {
  const reason: Reason = {
    about: 'drill',
    by: own ? 'own-family' : 'group-family',
    params: { family, drill: drill.id },
    spans: [],
  };
  const reasons = [reason, rungReason(drill, state)];
  if (state.choosing.novel(drill)) state.novelLeft -= 1;
  state.picks.push({ drill, family, own, most: mostOf(drill, state.gates), reasons });
}

/** Whether it is the athlete, and not this session, that keeps a family out. */
function heldByAthlete(family: string, state: State): boolean {
  const { noFast, noHigh } = state.gates;
  return rungs(family, state).every(
    (rung) =>
      rung.refusal !== undefined ||
      state.choosing.leftOut(rung.drill) !== undefined ||
      novelRefusal(rung.drill, state) !== undefined ||
      (noFast === 'pain-hold' && rung.drill.cycle === 'fast') ||
      (noHigh !== undefined && rung.drill.tier === 'high'),
  );
}

/** Another family for this athlete alone: the nearest in direction and cycle that is nobody else's already. */
function replaceFamily(family: string, group: readonly string[], state: State): void {
  const model = rungs(family, state)[0]?.drill;
  let best: Drill | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const other of state.ladder.families.keys()) {
    if (group.includes(other) || state.picks.some((pick) => pick.drill.family === other)) continue;
    const drill = highestRung(other, state);
    if (drill === undefined) continue;
    const distance = model === undefined ? 0 : distanceBetween(model, drill);
    if (distance >= least) continue;
    best = drill;
    least = distance;
  }
  if (best !== undefined) take(state, best, best.family, true);
}

/** Points of direction that differ; another cycle counts as much as half of them. */
function distanceBetween(a: Drill, b: Drill): number {
  const shares = (one: DirectionShares, other: DirectionShares): number =>
    Math.abs(one.vertical - other.vertical) +
    Math.abs(one.horizontal - other.horizontal) +
    Math.abs(one.lateral - other.lateral);
  return shares(a.direction, b.direction) + (a.cycle === b.cycle ? 0 : ALLOTTING.otherCycle);
}
