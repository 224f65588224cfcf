// The ceilings of one jump session that don't hang on what the athlete is used to: level, age, limits, the stage of a
// return, the minutes of the slot. A fence, not an aim. Called by week-terms.ts.

import type { Bound } from '../../build/types.ts';
import { VOLUME } from '../../library/volume.ts';
import { ageOn, limitsOn, returnStageOn } from '../../plan/athlete-facts.ts';
import { getRuleValue } from '../../plan/rule-book.ts';
import { libraryStage } from '../library-stage.ts';
import { roundDown } from './bounds.ts';
import { changedBy } from './changed-by.ts';
import { jumpSlot } from './week-facts.ts';
import type { WeekFacts } from './week-facts.ts';

const TENTHS = 10;

/** Each a multiple of the step, those of people before those of the place. So many weeks before it had room for jumps. */
export function sessionCeilings(facts: WeekFacts, jumpedBefore: number): readonly Bound[] {
  return [limitCeiling, stageCeiling, youthCeiling, minutesCeiling, levelCeiling]
    .flatMap((ceiling) => ceiling(facts, jumpedBefore) ?? [])
    .map((bound) => ({ ...bound, most: roundDown(bound.most) }));
}

/** V1 (S); in season C. */
function levelCeiling({ book, range, phase, level }: WeekFacts): Bound | undefined {
  if (book.waiver('session-ceiling', range) !== undefined) return undefined;
  const inSeason = phase.id === 'maintenance' || phase.id === 'sharpening';
  return {
    by: 'session-ceiling',
    most: getRuleValue(book, 'session-ceiling', inSeason ? `in-season-${level}` : level, range),
    spans: changedBy(book, 'session-ceiling', range),
  };
}

function limitCeiling({ athlete, jumpDays }: WeekFacts): Bound | undefined {
  const limits = jumpDays.flatMap((day) => limitsOn(athlete, day));
  const most = Math.min(...limits.map((limit) => limit.contactsASession ?? Infinity));
  if (most === Infinity) return undefined;
  const spans = limits.filter((limit) => limit.contactsASession === most).map((limit) => limit.span);
  return { by: 'limit', most, spans: [...new Set(spans)] };
}

/** G11 (P) for the order of the stages; the contacts of each C. */
function stageCeiling({ athlete, jumpDays, range, book }: WeekFacts): Bound | undefined {
  const stages = jumpDays.flatMap((day) => returnStageOn(athlete, day) ?? []);
  const [first] = stages;
  if (first === undefined) return undefined;
  // A setback in the middle of a week holds the whole of it.
  const stage = stages.reduce((lowest, one) => (one.stage < lowest.stage ? one : lowest), first);
  return {
    by: 'limit',
    rule: 'returning-stage',
    // Nobody jumps before the first stage is signed.
    most: stage.stage === 0 ? 0 : getRuleValue(book, 'returning-stage', `stage-${libraryStage(stage)}`, range),
    params: { stage: stage.stage, of: stage.of },
    spans: [stage.span],
  };
}

/** V5 (P). The first weeks of the season in which there can be jumps count as the first ever: nothing says otherwise. */
function youthCeiling({ athlete, week, book, range }: WeekFacts, jumpedBefore: number): Bound | undefined {
  const age = ageOn(athlete, week.starts);
  if (age === undefined || age > getRuleValue(book, 'youth-ceiling', 'to', range)) return undefined;
  const young = age < getRuleValue(book, 'youth-ceiling', 'under', range);
  const first = young && jumpedBefore < getRuleValue(book, 'youth-ceiling', 'first-weeks', range);
  const most = getRuleValue(book, 'youth-ceiling', 'most', range);
  return {
    by: 'youth-ceiling',
    // A plan may set the later ceiling under that of the first weeks.
    most: first ? Math.min(most, getRuleValue(book, 'youth-ceiling', 'first', range)) : most,
    params: { age, to: getRuleValue(book, 'youth-ceiling', 'to', range) },
    spans: changedBy(book, 'youth-ceiling', range),
  };
}

/** The contacts that the week's shortest slot has time for, behind the warm-up and the lifting. */
function minutesCeiling({ usable, phase }: WeekFacts): Bound | undefined {
  const fits = usable.flatMap((cell) => {
    const slot = jumpSlot(cell);
    if (slot === undefined) return [];
    const working = slot.minutes - VOLUME.warmUpMinutes - (slot.use === 'both' ? VOLUME.liftingMinutes : 0);
    return [{ slot, most: Math.max(0, Math.floor((working * phase.contactsPerMinuteTenths) / TENTHS)) }];
  });
  const [first, ...rest] = fits;
  if (first === undefined) return undefined;
  const { slot, most } = rest.reduce((least, one) => (one.most < least.most ? one : least), first);
  return { by: 'slot-minutes', most, params: { minutes: slot.minutes }, spans: [slot.span] };
}
