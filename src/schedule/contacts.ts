// Stage 4: the contacts of every week of one athlete, the reason of each number, and the sizes of the sessions. The
// terms of the weeks are laid out first, then all weeks are chosen together; the ceiling line is drawn beside them.

import type { Bound, BoundBy, Reason } from '../build/types.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import { VOLUME } from '../library/volume.ts';
import type { RuleBook } from '../plan/rule-book.ts';
import type { Plan } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import { boundsOf, mostAllowed, nextVolume, openingVolume, roundDown, sessionBound } from './contacts/bounds.ts';
import { ceilingLine, searchContacts } from './contacts/search.ts';
import type { CeilingWeek } from './contacts/search.ts';
import { splitWeek } from './contacts/split.ts';
import type { WeekTerms } from './contacts/terms.ts';
import { weekTerms } from './contacts/week-terms.ts';
import type { AthleteGrid, AthletePhases, ContactsWeek, KindWeek } from './types.ts';

/** The contacts of one athlete's weeks: V, A, the ceiling line and the sessions' sizes. All in contacts. */
export function planContacts(
  plan: Plan,
  book: RuleBook,
  grid: AthleteGrid,
  phases: AthletePhases,
  kinds: readonly KindWeek[],
): Staged<readonly ContactsWeek[]> {
  const { contactsASession, sessionsAWeek } = grid.athlete.now.value;
  const start = contactsASession * sessionsAWeek;
  const terms = weekTerms(plan, book, grid, phases, kinds);
  const most = ceilingLine(terms, start);
  const met = meetPins(grid, terms, start, most);
  return { value: describe(grid, met.terms, met.contacts, most, start), diagnostics: met.diagnostics };
}

interface Met {
  readonly terms: readonly WeekTerms[];
  readonly contacts: readonly number[];
  readonly diagnostics: readonly Diagnostic[];
}

/** The plan of least cost; pins that can't be met are reported and let go, one after the other. */
function meetPins(grid: AthleteGrid, terms: readonly WeekTerms[], start: number, most: readonly CeilingWeek[]): Met {
  const found = searchContacts(terms, start);
  if (found !== undefined) return { terms, contacts: found, diagnostics: [] };
  const clash = firstClash(terms, start);
  const rest = terms.map((week, index) => (index === clash.week ? withoutPin(week) : week));
  const met = meetPins(grid, rest, start, most);
  return { ...met, diagnostics: [pinConflict(grid, terms, clash, most), ...met.diagnostics] };
}

function withoutPin(terms: WeekTerms): WeekTerms {
  const { fixed: _, ...rest } = terms;
  return rest;
}

interface Clash {
  readonly week: number;
  /** The most that week may have whatever is done before it. */
  readonly most: number;
  readonly by: BoundBy;
}

/** Always the most that targets and pins leave, until a pin asks for more than that. */
function firstClash(terms: readonly WeekTerms[], start: number): Clash {
  let adapted = start;
  for (const [week, one] of terms.entries()) {
    const opening = openingVolume(one, adapted);
    const most = mostAllowed(one, opening);
    if (one.fixed?.kind === 'pin' && one.fixed.contacts > most) {
      return { week, most, by: holding(boundsOf(one, opening))?.by ?? 'pin' };
    }
    adapted = nextVolume(one, opening, one.fixed?.contacts ?? Math.min(most, roundDown(one.reach)));
  }
  throw new Error('a plan without a clash was called impossible');
}

function pinConflict(
  grid: AthleteGrid,
  terms: readonly WeekTerms[],
  clash: Clash,
  most: readonly CeilingWeek[],
): Diagnostic {
  const fixed = terms[clash.week]?.fixed;
  const wanted = fixed?.contacts ?? 0;
  const earliest = most.findIndex((ceiling, week) => week > clash.week && ceiling.most >= wanted);
  return problem('schedule/pin-too-high', {
    params: {
      athlete: grid.athlete.name,
      week: isoDate(grid.weeks[clash.week]?.starts ?? grid.range.from),
      wanted,
      most: clash.most,
      rule: clash.by,
      earliest: isoDate(grid.weeks[earliest]?.starts ?? grid.range.until),
      reachable: earliest >= 0,
    },
    span: fixed?.span ?? grid.athlete.span,
    related: [{ span: grid.athlete.span, message: 'the athlete it is for' }],
    athlete: grid.athlete.id,
    week: grid.weeks[clash.week]?.starts,
  });
}

function ceilingAt(line: readonly CeilingWeek[], week: number): CeilingWeek {
  const ceiling = line[week];
  if (ceiling === undefined) throw new Error(`the ceiling line has no week ${week + 1}`);
  return ceiling;
}

function describe(
  grid: AthleteGrid,
  terms: readonly WeekTerms[],
  contacts: readonly number[],
  most: readonly CeilingWeek[],
  start: number,
): readonly ContactsWeek[] {
  const weeks: ContactsWeek[] = [];
  let adapted = start;
  let leastOfRun = Infinity;
  for (const [index, one] of terms.entries()) {
    const opening = openingVolume(one, adapted);
    const found = contacts[index] ?? 0;
    const planned = one.week === 'deload' ? underRun(one, found, leastOfRun) : found;
    const run = planned < found ? leastOfRun : undefined;
    leastOfRun = one.week === 'load' ? Math.min(leastOfRun, planned) : Infinity;
    const after = nextVolume(one, opening, planned);
    weeks.push(describeWeek(one, { planned, before: adapted, opening, after, ceiling: ceilingAt(most, index), run }));
    adapted = after;
  }
  if (weeks.length !== grid.weeks.length) throw new Error('contacts were planned for another number of weeks');
  return weeks;
}

/** A deload stays under every loading week of its run. It moves neither A nor the sums, so the search can leave it out. */
function underRun(terms: WeekTerms, contacts: number, leastOfRun: number): number {
  if (terms.fixed !== undefined || leastOfRun === Infinity) return contacts;
  return Math.max(0, Math.min(contacts, leastOfRun - VOLUME.step));
}

interface WeekVolume {
  readonly planned: number;
  readonly before: number;
  readonly opening: number;
  readonly after: number;
  readonly ceiling: CeilingWeek;
  /** The least loading week of its run, where a deload was cut under it. */
  readonly run: number | undefined;
}

function describeWeek(terms: WeekTerms, volume: WeekVolume): ContactsWeek {
  const bounds = [...boundsOf(terms, volume.opening), ...runBound(volume)];
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
    reasons: reasonsOf(terms, volume, target, boundBy, bounds),
  };
}

function runBound({ planned, run }: WeekVolume): readonly Bound[] {
  return run === undefined ? [] : [{ by: 'deload-depth', most: planned, params: { run } }];
}

function sessionSizes(terms: WeekTerms, volume: WeekVolume): readonly number[] {
  if (terms.fixedSessions !== undefined) return terms.fixedSessions;
  if (terms.primer) return volume.planned > 0 ? [volume.planned] : [];
  const mostASession = Math.min(sessionBound(terms, volume.opening), terms.sessionCeiling);
  return splitWeek(volume.planned, mostASession, terms.sessionCeiling, terms.possible);
}

function boundByOf(terms: WeekTerms, planned: number, bounds: readonly Bound[]): BoundBy {
  if (terms.fixed !== undefined) return 'pin';
  if (terms.week === 'empty') return 'open-days';
  if (terms.target !== undefined && planned > terms.target) return 'reach';
  if (terms.target !== undefined && planned >= roundDown(terms.target)) return 'target';
  return holding(bounds)?.by ?? 'target';
}

/** The lowest bound in whole steps; of equal ones the first. */
function holding(bounds: readonly Bound[]): Bound | undefined {
  return bounds.reduce<Bound | undefined>(
    (least, bound) => (least === undefined || roundDown(bound.most) < roundDown(least.most) ? bound : least),
    undefined,
  );
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
      by: terms.keep.kind,
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
      spans: terms.fixed === undefined ? heldSpans : [terms.fixed.span],
    },
  ];
  reasons.push(ceilingReason(terms, volume.ceiling));
  for (const { rule, span } of terms.waived ?? [])
    reasons.push({ about: 'waived', by: rule, params: {}, spans: [span] });
  return reasons;
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
    params: { ...params, share: sharePercent, goal, session, ...cut },
    spans: cutBy?.spans ?? [],
  };
}
