// Makes the terms of every week from the plan and the stages before: frequency, possible sessions, ceilings, target. The
// numbers come from the library and from what the plan changes under `rules:`. Called by ../contacts.ts.

import type { Bound } from '../../build/types.ts';
import { GOAL_FOOT } from '../../library/levels.ts';
import { VOLUME } from '../../library/volume.ts';
import { limitsOn } from '../../plan/athlete-facts.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import type { Plan } from '../../plan/types.ts';
import type { AthleteGrid, AthletePhases, KindWeek } from '../types.ts';
import { roundDown, share } from './bounds.ts';
import { possibleSessions } from './possible.ts';
import { sessionCeilings } from './session-ceilings.ts';
import { pinsIn, weekFacts } from './week-facts.ts';
import type { WeekFacts } from './week-facts.ts';
import type { WeekProgramme } from './week-programme.ts';
import type { Growth, Keep, SessionGrowth, WeekTerms } from './terms.ts';

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
  return withUsualSessions(facts.map((one, index) => termsOf(one, possible[index] ?? 0)));
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

function termsOf(facts: WeekFacts, possible: number): WeekTerms {
  const { kind, phase, level, frequency, decisive } = facts;
  const primer = facts.usable.length === 0 && kind.kind !== 'empty' && kind.kind !== 'transition';
  const ceilings = sessionCeilings(facts);
  const sessionCeiling = ceilings.reduce((least, bound) => Math.min(least, bound.most), Infinity);
  const target = targetOf(facts, possible, sessionCeiling, primer);
  const { programme } = facts;
  const fixed = programme === undefined ? pinnedContacts(facts) : programmeContacts(programme);
  return {
    week: kind.kind,
    phase: phase.id,
    level,
    possible: programme?.sessions.length ?? possible,
    frequency,
    usualSessions: frequency,
    openingPercent: kind.step === 1 && kind.kind === 'return' ? ladderShare(facts, 1) : 100,
    growth: growthOf(facts),
    sessionGrowth: sessionGrowthOf(facts),
    keep: keepOf(kind),
    sessionCeilings: ceilings,
    sessionCeiling,
    weekCeilings: primer
      ? [...primerCeilings(facts, possible), ...ceilings, ...weekCeilings(facts)]
      : weekCeilings(facts),
    target,
    reach: reachOf(facts, target),
    primer,
    decisive,
    ...(fixed === undefined ? {} : { fixed }),
    ...(programme === undefined ? {} : { fixedSessions: sizesOf(programme) }),
  };
}

function targetOf(facts: WeekFacts, possible: number, sessionCeiling: number, primer: boolean): number | undefined {
  const { kind, phase } = facts;
  if (kind.kind === 'empty' || kind.kind === 'transition') return 0;
  if (primer || kind.kind === 'deload' || kind.kind === 'taper' || kind.kind === 'hold') return undefined;
  if (phase.goalShare === undefined) return undefined;
  return Math.min(share(phase.goalShare, goalOf(facts)), sessionCeiling) * possible;
}

/** Contacts of a session at the height of the block: the athlete's own goal, within the level. */
function goalOf({ athlete, level, book, range }: WeekFacts): number {
  return Math.min(athlete.goal?.value ?? GOAL_FOOT[level], getRuleValue(book, 'session-ceiling', level, range));
}

function reachOf({ phase, kind }: WeekFacts, target: number | undefined): number {
  if (target === undefined) return Infinity;
  const reaches = phase.reach && (kind.kind === 'load' || kind.kind === 'return');
  return reaches ? share(100 + VOLUME.reach, target) : target;
}

function growthOf(facts: WeekFacts): Growth {
  const { kind, book, range } = facts;
  if (kind.kind === 'taper') {
    if (book.waiver('taper-cut', range) !== undefined) return { kind: 'free' };
    const last = kind.step === kind.steps;
    return { kind: 'share', by: 'taper-cut', percent: getRuleValue(book, 'taper-cut', last ? 'last' : 'first', range) };
  }
  if (kind.kind === 'deload') {
    if (book.waiver('deload-depth', range) !== undefined) return { kind: 'free' };
    return { kind: 'share', by: 'deload-depth', percent: getRuleValue(book, 'deload-depth', 'most', range) };
  }
  if (kind.kind === 'hold') return { kind: 'share', by: 'hold', percent: VOLUME.hold };
  if (kind.kind === 'return' && kind.step !== undefined) {
    return { kind: 'share', by: 'return-ramp', percent: ladderRise(facts, kind.step) };
  }
  return loadingGrowth(facts);
}

function loadingGrowth({ book, range, otherJumpsRise }: WeekFacts): Growth {
  if (otherJumpsRise && book.waiver('all-jumps-rise', range) === undefined) {
    return { kind: 'share', by: 'all-jumps-rise', percent: 100 };
  }
  if (book.waiver('weekly-rise', range) !== undefined) return { kind: 'free' };
  return {
    kind: 'rise',
    by: 'weekly-rise',
    percent: getRuleValue(book, 'weekly-rise', 'most', range),
    contacts: getRuleValue(book, 'weekly-rise', 'contacts', range),
  };
}

const LADDER = ['first', 'second', 'third', 'fourth'] as const;

function ladderShare({ book, range }: WeekFacts, step: number): number {
  return getRuleValue(book, 'return-ramp', LADDER[step - 1] ?? 'fourth', range);
}

/** The first rung has already cut A; each later one rises from the rung before it. */
function ladderRise(facts: WeekFacts, step: number): number {
  if (step === 1) return 100;
  return Math.floor((100 * ladderShare(facts, step)) / ladderShare(facts, step - 1));
}

function sessionGrowthOf({ kind, book, range }: WeekFacts): SessionGrowth {
  if (kind.kind === 'taper') return { kind: 'share', by: 'taper-cut', percent: VOLUME.easySession };
  if (kind.kind === 'deload') return { kind: 'share', by: 'deload-depth', percent: VOLUME.easySession };
  if (kind.kind === 'hold') return { kind: 'share', by: 'hold', percent: VOLUME.easySession };
  if (book.waiver('session-rise', range) !== undefined) return { kind: 'free' };
  return {
    kind: 'rise',
    percent: getRuleValue(book, 'session-rise', 'most', range),
    contacts: getRuleValue(book, 'session-rise', 'contacts', range),
  };
}

function keepOf(kind: KindWeek): Keep {
  if (kind.kind === 'load') return { kind: 'follow' };
  if (kind.kind === 'return') return kind.step === undefined ? { kind: 'follow' } : { kind: 'stay' };
  if (kind.kind === 'transition') return { kind: 'fade', leftPercent: VOLUME.leftAfterTransition };
  if (kind.kind === 'empty') return { kind: 'fade', leftPercent: 100 - (kind.decayPercent ?? 0) };
  return { kind: 'stay' };
}

function weekCeilings({ athlete, book, range, usable, week }: WeekFacts): readonly Bound[] {
  const bounds: Bound[] = [];
  const limits = usable.flatMap((cell) => limitsOn(athlete, cell.day));
  const limited = Math.min(...limits.map((limit) => limit.contactsAWeek ?? Infinity));
  if (limited !== Infinity) bounds.push({ by: 'limit', most: limited });
  const budget = book.waiver('budget', range) === undefined ? book.value('budget', 'jumps-a-week', range) : undefined;
  if (budget !== undefined) bounds.push({ by: 'budget', most: Math.max(0, budget - week.otherJumps) });
  return bounds;
}

/** A primer is short, and needs an open day before the event. */
function primerCeilings({ book, range }: WeekFacts, possible: number): readonly Bound[] {
  return [{ by: 'open-days', most: possible === 0 ? 0 : getRuleValue(book, 'last-week', 'primer', range) }];
}

function pinnedContacts({ plan, athlete, range, kind }: WeekFacts): WeekTerms['fixed'] {
  if (kind.kind === 'empty' || kind.kind === 'transition') return undefined;
  for (const pin of pinsIn(plan, athlete, range)) {
    for (const effect of pin.effects) {
      if (effect.kind === 'contacts') return { contacts: roundDown(effect.contactsAWeek), kind: 'pin', span: pin.span };
    }
  }
  return undefined;
}

function programmeContacts(programme: WeekProgramme): NonNullable<WeekTerms['fixed']> {
  const contacts = programme.sessions.reduce((sum, session) => sum + session.contacts, 0);
  return { contacts, kind: 'programme', span: programme.span };
}

function sizesOf(programme: WeekProgramme): readonly number[] {
  return programme.sessions.map((session) => session.contacts).toSorted((a, b) => b - a);
}
