// How far a week may go over what the athlete is used to, and what the athlete is used to behind it: by the kind of the
// week, the rules in force and what is waived. A is the adapted volume, in contacts a week. Called by week-terms.ts.

import { weekFrom } from '../../plan/applies.ts';
import { getDefault } from '../../library/rules.ts';
import { LADDER, VOLUME } from '../../library/volume.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import type { DayRange } from '../../plan/types.ts';
import { PERCENT } from '../../util/units.ts';
import type { KindWeek } from '../types.ts';
import { changedBy } from './changed-by.ts';
import type { Growth, Keep, SessionGrowth } from './terms.ts';
import type { WeekFacts } from './week-facts.ts';

/** How far a week may go over what the athlete is used to, by its kind; where that is waived, as far as a loading week. */
export function growthOf(facts: WeekFacts): Growth {
  const { kind, book, range } = facts;
  const otherwise = loadingGrowth(facts);
  if (kind.kind === 'taper') {
    if (book.waiver('taper-cut', range) !== undefined) return otherwise;
    const last = kind.step === kind.steps;
    const percent = getRuleValue(book, 'taper-cut', last ? 'last' : 'first', range);
    return { kind: 'share', by: 'taper-cut', percent, otherwise, spans: changedBy(book, 'taper-cut', range) };
  }
  if (kind.kind === 'deload') {
    if (book.waiver('deload-depth', range) !== undefined) return otherwise;
    const percent = getRuleValue(book, 'deload-depth', 'most', range);
    return { kind: 'share', by: 'deload-depth', percent, otherwise, spans: changedBy(book, 'deload-depth', range) };
  }
  if (kind.kind === 'hold') return { kind: 'share', by: 'hold', percent: VOLUME.hold };
  if (kind.kind === 'return' && kind.step !== undefined) {
    const spans = changedBy(book, 'return-ramp', range);
    return { kind: 'share', by: 'return-ramp', percent: ladderRise(facts, kind.step), spans };
  }
  return otherwise;
}

function loadingGrowth(facts: WeekFacts): Growth {
  const { book, range, otherJumpsRise } = facts;
  if (otherJumpsRise && book.waiver('all-jumps-rise', range) === undefined) {
    return { kind: 'share', by: 'all-jumps-rise', percent: PERCENT, otherwise: weeklyRise(facts) };
  }
  return weeklyRise(facts);
}

/** The rise of a loading week over what the athlete is used to: R1 (C). */
export function weeklyRise({ book, range }: WeekFacts): Growth {
  if (book.waiver('weekly-rise', range) !== undefined) return { kind: 'free' };
  return {
    kind: 'rise',
    by: 'weekly-rise',
    percent: getRuleValue(book, 'weekly-rise', 'most', range),
    contacts: getRuleValue(book, 'weekly-rise', 'contacts', range),
    spans: changedBy(book, 'weekly-rise', range),
  };
}

function rungName(step: number): string {
  const name = LADDER.rungs[step - 1];
  if (name === undefined) throw new Error(`no ladder has a rung ${step}`);
  return name;
}

function ladderShare(book: RuleBook, step: number, range: DayRange): number {
  return getRuleValue(book, 'return-ramp', rungName(step), range);
}

/** Per cent of A that is left before the week: the first rung that holds cuts A to its share. R3 (M). */
export function openingPercent({ kind, book, range }: WeekFacts): number {
  const cuts = kind.kind === 'return' && kind.step !== undefined && kind.rungBefore === undefined;
  return cuts ? ladderShare(book, kind.step, range) : PERCENT;
}

/**
 * Each later rung rises from the rung before it, as that stood in its own week. A rung that the plan made lower than
 * usual isn't made up for by a steeper next one.
 */
function ladderRise({ kind, book, range }: WeekFacts, step: number): number {
  const { rungBefore: from } = kind;
  if (from === undefined) return PERCENT;
  const before = ladderShare(book, step - 1, weekFrom(from));
  const usual = getDefault('return-ramp', rungName(step - 1));
  return Math.floor((PERCENT * ladderShare(book, step, range)) / Math.max(before, usual));
}

/** How large a session may be beside the usual one; in easy weeks a share of it. C. */
export function sessionGrowthOf(facts: WeekFacts): SessionGrowth {
  const { kind, book, range } = facts;
  const usual = sessionRise(facts);
  const easy = { kind: 'share', percent: VOLUME.easySession, otherwise: usual } as const;
  if (kind.kind === 'taper' && book.waiver('taper-cut', range) === undefined) return { ...easy, by: 'taper-cut' };
  if (kind.kind === 'deload' && book.waiver('deload-depth', range) === undefined) {
    return { ...easy, by: 'deload-depth' };
  }
  return kind.kind === 'hold' ? { ...easy, by: 'hold' } : usual;
}

/** By how many per cent a session of a taper may be over the largest of the taper week before; undefined elsewhere. */
export function sessionOverOf({ kind, book, range }: WeekFacts): number | undefined {
  if (kind.kind !== 'taper' || book.waiver('taper-cut', range) !== undefined) return undefined;
  return getRuleValue(book, 'taper-cut', 'session-over', range);
}

function sessionRise({ book, range }: WeekFacts): SessionGrowth {
  if (book.waiver('session-rise', range) !== undefined) return { kind: 'free' };
  return {
    kind: 'rise',
    percent: getRuleValue(book, 'session-rise', 'most', range),
    contacts: getRuleValue(book, 'session-rise', 'contacts', range),
    spans: changedBy(book, 'session-rise', range),
  };
}

/** What becomes of A behind a week of the kind. */
export function keepOf(kind: KindWeek): Keep {
  if (kind.kind === 'load') return { kind: 'follow' };
  if (kind.kind === 'return') return kind.step === undefined ? { kind: 'follow' } : { kind: 'stay' };
  if (kind.kind === 'transition') return { kind: 'fade', leftPercent: VOLUME.leftAfterTransition };
  if (kind.kind === 'empty') return { kind: 'fade', leftPercent: PERCENT - (kind.decayPercent ?? 0) };
  return { kind: 'stay' };
}
