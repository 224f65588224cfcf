// Makes the terms of every week from the plan and the stages before: frequency, possible sessions, ceilings, target. The
// numbers come from the library and from what the plan changes under `rules:`. Called by season-terms.ts.

import type { Bound } from '../../build/types.ts';
import { GOAL_FOOT } from '../../library/levels.ts';
import { VOLUME } from '../../library/volume.ts';
import { limitsOn } from '../../plan/athlete-facts.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import type { Plan, Who } from '../../plan/types.ts';
import { PERCENT } from '../../util/units.ts';
import type { AthleteGrid, AthletePhases, KindWeek } from '../types.ts';
import { allJumpsOf } from './all-jumps.ts';
import { mostAllowed, roundDown, share } from './bounds.ts';
import { possibleSessions } from './possible.ts';
import { sessionCeilings } from './session-ceilings.ts';
import { closedBy, pinsIn, weekFacts } from './week-facts.ts';
import type { WeekFacts } from './week-facts.ts';
import type { WeekProgramme } from './week-programme.ts';
import { changedBy } from './changed-by.ts';
import { growthOf, keepOf, openingPercent, sessionGrowthOf, sessionOverOf, weeklyRise } from './growth.ts';
import type { Aim, AllJumps, WeekTerms } from './terms.ts';

/** The terms of one athlete's weeks. */
export function weekTerms(
  plan: Plan,
  book: RuleBook,
  grid: AthleteGrid,
  phases: AthletePhases,
  kinds: readonly KindWeek[],
): readonly WeekTerms[] {
  const facts = grid.weeks.map((week) => weekFacts(plan, book, grid, phases, kinds, week));
  const possible = possibleSessions(
    facts.map((one) => ({
      until: one.range.until,
      days: (one.primer === undefined ? one.usable : [one.primer]).map((cell) => cell.day),
      frequency: one.primer === undefined ? one.frequency : 1,
      ...(one.programme === undefined ? {} : { fixed: one.programme.sessions.map((session) => session.day) }),
      apart: daysApart(one),
      open: !one.week.empty,
    })),
  );
  let jumped = 0;
  const terms = facts.map((one, index) => {
    const week = termsOf(one, possible[index] ?? 0, jumped, allJumpsOf(facts, index));
    jumped += canJump(week) ? 1 : 0;
    return week;
  });
  return withUsualSessions(terms);
}

/** More than anybody is used to, in contacts a week. */
const ANY_VOLUME = 1_000_000;

/** Whether there can be jumps in a week, whatever the athlete is used to. */
function canJump(terms: WeekTerms): boolean {
  return terms.fixed === undefined || terms.fixed.kind === 'pin'
    ? terms.fixed?.contacts !== 0 && mostAllowed(terms, ANY_VOLUME) > 0
    : terms.fixed.contacts > 0;
}

/**
 * Shares A among the sessions a week that a block really has: where none of its loading weeks can hold as many as its
 * phase asks for, the usual session is the larger for it. Closed weeks don't end a block.
 */
function withUsualSessions(weeks: readonly WeekTerms[]): readonly WeekTerms[] {
  const usual: number[] = weeks.map(() => 0);
  let from = 0;
  while (from < weeks.length) {
    const block = blockFrom(weeks, from);
    const loading = block.flatMap((week) => (weeks[week]?.week === 'load' ? [weeks[week].possible] : []));
    const most = loading.length === 0 ? Infinity : Math.max(1, ...loading);
    for (const week of block) usual[week] = Math.min(weeks[week]?.frequency ?? 0, most);
    from = (block.at(-1) ?? from) + 1;
  }
  return weeks.map((week, index) => ({ ...week, usualSessions: usual[index] ?? 0 }));
}

/** Indices of the weeks of one phase in a row, closed weeks between them left out. */
function blockFrom(weeks: readonly WeekTerms[], from: number): readonly number[] {
  const block = [from];
  for (let week = from + 1; week < weeks.length; week += 1) {
    if (weeks[week]?.phase === weeks[from]?.phase) block.push(week);
    else if (weeks[week]?.phase !== 'closed') break;
  }
  return block;
}

function daysApart({ book, range }: WeekFacts): number {
  if (book.waiver('session-spacing', range) !== undefined) return 1;
  return getRuleValue(book, 'session-spacing', 'apart', range);
}

function termsOf(facts: WeekFacts, possible: number, jumpedBefore: number, allJumps: AllJumps | undefined): WeekTerms {
  const { kind, phase, level, frequency, decisive } = facts;
  const primer = facts.usable.length === 0 && kind.kind !== 'empty' && kind.kind !== 'transition';
  const ceilings = sessionCeilings(facts, jumpedBefore);
  const sessionCeiling = ceilings.reduce((least, bound) => Math.min(least, bound.most), Infinity);
  const aim = aimOf(facts, ceilings, primer);
  const target = targetOf(facts, possible, aim);
  const { programme } = facts;
  const fixed = programme === undefined ? pinnedContacts(facts) : programmeContacts(programme, facts);
  return {
    week: kind.kind,
    phase: phase.id,
    level,
    possible: programme?.sessions.length ?? possible,
    closedBy: possible < frequency ? closedBy(facts) : undefined,
    frequency,
    usualSessions: frequency,
    openingPercent: openingPercent(facts),
    growth: growthOf(facts),
    sessionGrowth: sessionGrowthOf(facts),
    sessionOver: sessionOverOf(facts),
    keep: keepOf(kind),
    allJumps,
    sessionCeilings: ceilings,
    sessionCeiling,
    weekCeilings: primer
      ? [...primerCeilings(facts, possible), ...ceilings, ...weekCeilings(facts)]
      : weekCeilings(facts),
    target,
    aim,
    reach: reachOf(facts, target),
    primer,
    decisive,
    waived: waivedIn(facts),
    fixed,
    fixedSessions: programme === undefined ? undefined : sizesOf(programme),
  };
}

function targetOf({ kind }: WeekFacts, possible: number, aim: Aim | undefined): number | undefined {
  if (kind.kind === 'empty' || kind.kind === 'transition') return 0;
  return aim === undefined ? undefined : aim.session * possible;
}

/** Undefined for weeks that take the most allowed, or nothing. */
function aimOf(facts: WeekFacts, ceilings: readonly Bound[], primer: boolean): Aim | undefined {
  const { kind, phase } = facts;
  const aims = kind.kind === 'load' || kind.kind === 'return';
  if (!aims || primer || phase.goalShare === undefined) return undefined;
  const goal = goalOf(facts);
  const wanted = share(phase.goalShare, goal);
  const lowest = ceilings.reduce<Bound | undefined>(
    (least, bound) => (least === undefined || bound.most < least.most ? bound : least),
    undefined,
  );
  const cut = lowest !== undefined && lowest.most < wanted;
  return {
    sharePercent: phase.goalShare,
    goal,
    session: cut ? lowest.most : wanted,
    ...(cut ? { cutBy: lowest } : {}),
  };
}

/** Contacts of a session at the height of the block: the athlete's own goal, within the level. */
function goalOf({ athlete, level, book, range }: WeekFacts): number {
  return Math.min(athlete.goal?.value ?? GOAL_FOOT[level], getRuleValue(book, 'session-ceiling', level, range));
}

/** Rules that bound a week's contacts and can be waived. */
export const BOUNDING_RULES = [
  'weekly-rise',
  'session-rise',
  'session-ceiling',
  'all-jumps-rise',
  'deload-depth',
  'taper-cut',
  'return-ramp',
  'budget',
] as const;

function waivedIn({ book, range }: WeekFacts): NonNullable<WeekTerms['waived']> {
  return BOUNDING_RULES.flatMap((rule) => {
    const waiver = book.waiver(rule, range);
    return waiver === undefined ? [] : [{ rule, span: waiver.span }];
  });
}

function reachOf({ phase, kind }: WeekFacts, target: number | undefined): number {
  if (target === undefined) return Infinity;
  const reaches = phase.reach && (kind.kind === 'load' || kind.kind === 'return');
  return reaches ? share(PERCENT + VOLUME.reach, target) : target;
}

function weekCeilings({ athlete, book, range, jumpDays, week }: WeekFacts): readonly Bound[] {
  const bounds: Bound[] = [];
  const limits = jumpDays.flatMap((day) => limitsOn(athlete, day));
  const limited = Math.min(...limits.map((limit) => limit.contactsAWeek ?? Infinity));
  if (limited !== Infinity) {
    const spans = limits.filter((limit) => limit.contactsAWeek === limited).map((limit) => limit.span);
    bounds.push({ by: 'limit', most: limited, spans: [...new Set(spans)] });
  }
  const budget = book.waiver('budget', range) === undefined ? book.value('budget', 'jumps-a-week', range) : undefined;
  if (budget !== undefined) {
    const params = { jumps: budget, other: week.otherJumps };
    const spans = changedBy(book, 'budget', range);
    bounds.push({ by: 'budget', most: Math.max(0, budget - week.otherJumps), params, spans });
  }
  return bounds;
}

/** A primer is short, and needs an open day before the event. */
function primerCeilings(facts: WeekFacts, possible: number): readonly Bound[] {
  const { book, range } = facts;
  if (possible === 0) return [{ by: 'open-days', most: 0, params: { possible }, spans: closedBy(facts) }];
  return [{ by: 'open-days', rule: 'last-week', most: getRuleValue(book, 'last-week', 'primer', range) }];
}

/** Of several pins the one that is nearest to the athlete: by name before by squad before everybody's; then the least. */
function pinnedContacts({ plan, athlete, range }: WeekFacts): WeekTerms['fixed'] {
  const pins = pinsIn(plan, athlete, range).flatMap(({ who, effects, span }) =>
    effects.flatMap((effect) => (effect.kind === 'contacts' ? { who, span, contacts: effect.contactsAWeek } : [])),
  );
  const distance = ({ who }: { readonly who: Who }): number =>
    who.kind === 'everybody' ? 2 : who.athletes.includes(athlete.id) ? 0 : 1;
  const [pin] = pins.toSorted((a, b) => distance(a) - distance(b) || a.contacts - b.contacts);
  return pin === undefined ? undefined : { contacts: roundDown(pin.contacts), kind: 'pin', span: pin.span };
}

function programmeContacts(programme: WeekProgramme, facts: WeekFacts): NonNullable<WeekTerms['fixed']> {
  const contacts = programme.sessions.reduce((sum, session) => sum + session.contacts, 0);
  const severe = getRuleValue(facts.book, 'weekly-rise', 'severe', facts.range);
  return { contacts, kind: 'programme', span: programme.span, blocked: { rise: weeklyRise(facts), severe } };
}

function sizesOf(programme: WeekProgramme): readonly number[] {
  return programme.sessions.map((session) => session.contacts).toSorted((a, b) => b - a);
}
