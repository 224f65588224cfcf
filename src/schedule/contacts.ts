// Stage 4: the contacts of every week of one athlete, the reason of each number, and the sizes of the sessions. The
// terms of the weeks are laid out first, then all weeks are chosen together; the ceiling line is drawn beside them.

import type { Bound, BoundBy, Reason } from '../build/types.ts';
import type { Staged } from '../diagnostics/types.ts';
import { VOLUME } from '../library/volume.ts';
import type { Plan } from '../plan/types.ts';
import {
  boundsOf,
  holding,
  isLeap,
  isOverPlan,
  loadingSessionBound,
  mostAllowed,
  nextVolume,
  openingVolume,
  roundDown,
  sessionBound,
} from './contacts/bounds.ts';
import { ceilingLine } from './contacts/search.ts';
import type { CeilingWeek } from './contacts/search.ts';
import { meetPins } from './contacts/meet-pins.ts';
import type { Met } from './contacts/meet-pins.ts';
import { splitWeek } from './contacts/split.ts';
import { largestBehind, taperBefore, underTaper } from './contacts/taper-sessions.ts';
import type { TaperBefore } from './contacts/taper-sessions.ts';
import type { Keep, WeekTerms } from './contacts/terms.ts';
import type { Day } from '../util/days.ts';
import type { SeasonTerms } from './season-terms.ts';
import type { ContactsWeek } from './types.ts';

type Planned = Pick<SeasonTerms, 'grid' | 'terms' | 'start' | 'unwritten'>;

/** The contacts of one athlete's weeks: V, A, the ceiling line and the sessions' sizes. All in contacts. */
export function planContacts(plan: Plan, planned: Planned, asOf: Day | undefined): Staged<readonly ContactsWeek[]> {
  const met = meetAll(plan, planned, asOf);
  return { value: describe(planned, met), diagnostics: met.diagnostics() };
}

/** The same without a word of pins that can't be met, which takes a search of its own. */
export function chooseContacts(plan: Plan, planned: Planned, asOf: Day | undefined): readonly ContactsWeek[] {
  return describe(planned, meetAll(plan, planned, asOf));
}

const meetAll = (plan: Plan, { grid, terms, start, unwritten }: Planned, asOf: Day | undefined): Met =>
  meetPins({ plan, grid, start, asOf, unwritten, released: new Set() }, terms);

function ceilingAt(line: readonly CeilingWeek[], week: number): CeilingWeek {
  const ceiling = line[week];
  if (ceiling === undefined) throw new Error(`the ceiling line has no week ${week + 1}`);
  return ceiling;
}

/** `met` are the terms without the pins that were let go; the ceiling line asks no pins at all. */
function describe({ grid, terms: asked, start }: Planned, { terms, contacts }: Met): readonly ContactsWeek[] {
  const most = ceilingLine(asked, start);
  const weeks: ContactsWeek[] = [];
  let adapted = start;
  let leastOfRun = Infinity;
  let largest: number | undefined;
  for (const [index, one] of terms.entries()) {
    const opening = openingVolume(one, adapted);
    const found = contacts[index] ?? 0;
    const taper = taperBefore(one, largest);
    const planned = one.week === 'deload' ? underRun(one, found, leastOfRun) : underTaper(one, found, taper);
    const run = one.week === 'deload' && planned < found ? leastOfRun : undefined;
    // Of a week on record what counts.
    const counts = Math.min(planned, one.fixed?.earnsAtMost ?? Infinity);
    leastOfRun = one.week === 'load' ? Math.min(leastOfRun, counts) : Infinity;
    const after = nextVolume(one, opening, planned);
    const ceiling = ceilingAt(most, index);
    const cut = planned < found;
    const week = describeWeek(one, { planned, before: adapted, opening, after, ceiling, run, taper, cut });
    weeks.push(week);
    largest = largestBehind(one, sizesBehind(one, week, { planned, opening, taper }), largest);
    adapted = after;
  }
  if (weeks.length !== grid.weeks.length) throw new Error('contacts were planned for another number of weeks');
  return weeks;
}

/**
 * A deload stays under every loading week of its run. It moves neither A nor the sums, so the search can leave it out. A
 * waived one is held like a loading week and may raise A, so it stays as the search has it.
 */
function underRun({ fixed, growth }: WeekTerms, contacts: number, leastOfRun: number): number {
  const isWaived = growth.kind !== 'share' || growth.by !== 'deload-depth';
  if (isWaived || fixed !== undefined || leastOfRun === Infinity) return contacts;
  return Math.max(0, Math.min(contacts, roundDown(leastOfRun - 1)));
}

interface WeekVolume {
  readonly planned: number;
  readonly before: number;
  readonly opening: number;
  readonly after: number;
  readonly ceiling: CeilingWeek;
  /** The least loading week of its run, where a deload was cut under it. */
  readonly run: number | undefined;
  /** What the taper week before leaves to a session, and whether the week was cut for that. */
  readonly taper: TaperBefore | undefined;
  readonly cut: boolean;
}

function describeWeek(terms: WeekTerms, volume: WeekVolume): ContactsWeek {
  const bounds = [...boundsOf(terms, volume.opening), ...runBound(volume), ...taperBound(terms, volume)];
  const target = terms.target ?? mostAllowed(terms, volume.opening);
  const boundBy = boundByOf(terms, volume.planned, bounds);
  return {
    contacts: volume.planned,
    target,
    most: volume.ceiling.most,
    adaptedBefore: volume.before,
    adapted: volume.after,
    boundBy,
    bounds,
    possible: terms.possible,
    sessions: sessionSizes(terms, volume),
    sessionCeiling: terms.sessionCeiling,
    primer: terms.primer && volume.planned > 0,
    level: terms.level,
    ...(terms.fixed?.unwritten === true && { unwritten: true }),
    reasons: reasonsOf(terms, volume, target, boundBy, bounds),
  };
}

function runBound({ planned, run }: WeekVolume): readonly Bound[] {
  return run === undefined ? [] : [{ by: 'deload-depth', most: planned, params: { run } }];
}

function taperBound({ possible, sessionOver = 0 }: WeekTerms, { planned, taper, cut }: WeekVolume): readonly Bound[] {
  if (taper === undefined || !cut) return [];
  const params = { session: taper.session, possible, before: taper.largest, percent: sessionOver };
  return [{ by: 'taper-cut', most: planned, params }];
}

/** Of a week that is over as it was planned: what was done besides never leaves more to a later one, and as planned the same. */
function sizesBehind(terms: WeekTerms, { contacts, sessions }: ContactsWeek, volume: SessionVolume): readonly number[] {
  if (terms.fixed?.kind !== 'record') return sessions;
  return shareOut(terms, { ...volume, planned: roundDown(terms.fixed.earnsAtMost ?? contacts) });
}

function sessionSizes(terms: WeekTerms, volume: SessionVolume): readonly number[] {
  if (terms.fixed?.kind === 'record') return [];
  if (terms.fixedSessions !== undefined) return terms.fixedSessions;
  return shareOut(terms, volume);
}

type SessionVolume = Pick<WeekVolume, 'planned' | 'opening' | 'taper'>;

function shareOut(terms: WeekTerms, { planned, opening, taper }: SessionVolume): readonly number[] {
  if (terms.primer) return planned > 0 ? [planned] : [];
  const bound = Math.min(sessionBound(terms, opening), terms.sessionCeiling, taper?.session ?? Infinity);
  // What an easy week leaves of a small session may be too little to come for: the week then has fewer, and no more contacts.
  const small = Math.min(VOLUME.smallestSession, loadingSessionBound(terms, opening), terms.sessionCeiling);
  return splitWeek(planned, Math.max(bound, small), terms.sessionCeiling, terms.possible);
}

function boundByOf(terms: WeekTerms, planned: number, bounds: readonly Bound[]): BoundBy {
  if (terms.fixed !== undefined) return terms.fixed.kind;
  if (terms.week === 'empty') return 'open-days';
  if (terms.target !== undefined && planned > terms.target) return 'reach';
  if (terms.target !== undefined && planned >= roundDown(terms.target)) return 'target';
  return holding(bounds)?.by ?? 'target';
}

function reasonsOf(
  terms: WeekTerms,
  volume: WeekVolume,
  target: number,
  boundBy: BoundBy,
  bounds: readonly Bound[],
): readonly Reason[] {
  const held = holding(bounds);
  const heldSpans = held?.by === boundBy ? (held.spans ?? []) : [];
  const reasons: Reason[] = [
    {
      about: 'adapted',
      by: keptBy(terms, volume),
      params: { before: volume.before, opening: volume.opening, after: volume.after },
      spans: [],
    },
    targetReason(terms, target),
    {
      about: 'contacts',
      by: boundBy,
      params: {
        contacts: volume.planned,
        most: volume.ceiling.most,
        ...(terms.fixed === undefined ? {} : { fixed: terms.fixed.kind }),
      },
      spans: terms.fixed === undefined ? heldSpans : [terms.fixed.span].filter((span) => span !== undefined),
    },
  ];
  reasons.push(ceilingReason(terms, volume.ceiling));
  for (const { rule, span } of terms.waived ?? [])
    reasons.push({ about: 'waived', by: rule, params: {}, spans: [span] });
  return reasons;
}

function keptBy(terms: WeekTerms, { planned, opening }: WeekVolume): 'unwritten' | 'leap' | 'over' | Keep['kind'] {
  if (terms.fixed?.unwritten === true && planned > opening) return 'unwritten';
  if (isLeap(terms, planned)) return 'leap';
  return isOverPlan(terms, planned) ? 'over' : terms.keep.kind;
}

/** What holds the ceiling line in this week. */
function ceilingReason(terms: WeekTerms, { most, opening }: CeilingWeek): Reason {
  if (terms.week === 'empty' || terms.week === 'transition') {
    return { about: 'most', by: terms.week, params: { most, adapted: opening }, spans: [] };
  }
  const held = holding(boundsOf(terms, opening));
  const by = held?.rule ?? held?.by ?? 'target';
  return { about: 'most', by, params: { most, adapted: opening }, spans: held?.spans ?? [] };
}

function targetReason({ phase, possible, frequency, aim, decisive }: WeekTerms, target: number): Reason {
  const params = { target, possible, frequency, decisive: decisive ? 1 : 0 };
  if (aim === undefined) return { about: 'target', by: phase, params, spans: [] };
  const { sharePercent, goal, session, cutBy } = aim;
  const cut = cutBy === undefined ? {} : { cut_by: cutBy.rule ?? cutBy.by };
  return {
    about: 'target',
    by: phase,
    params: Object.assign(params, { share: sharePercent, goal, session }, cut),
    spans: cutBy?.spans ?? [],
  };
}
