// The contacts of all weeks as an integer program. V is five times a whole number, A a whole number; a whole part is held
// between two inequalities, the larger of two by a variable that is 0 or 1. The numbers that make such a pair of rows
// loose (`slack`) are as small as they can be, or the solver would need long. Read by compare.ts.

import { VOLUME } from '../../../src/library/volume.ts';
import type { SessionGrowth, WeekTerms } from '../../../src/schedule/contacts/terms.ts';
import { atLeast, atMost, copied, emptyProgram, exactly, whole } from './integer-program.ts';
import type { IntegerProgram, Part } from './integer-program.ts';

const PERCENT = 100;
const STEP = VOLUME.step;

export interface ContactsProgram {
  readonly program: IntegerProgram;
  /** The name of V in steps, by week; where V is fixed for good, its contacts. */
  readonly volumes: readonly (string | number)[];
  readonly shortfall: readonly Part[];
  readonly distance: readonly Part[];
}

/** A as a week begins or ends: a variable and the most it can be. */
interface Adapted {
  readonly name: string;
  readonly most: number;
}

interface Week {
  readonly program: IntegerProgram;
  readonly terms: WeekTerms;
  readonly index: number;
  readonly opening: Adapted;
  /** V in contacts. */
  readonly planned: readonly Part[];
  readonly plannedMost: number;
}

/** The program of a season that begins at so many contacts a week. */
export function contactsProgram(weeks: readonly WeekTerms[], start: number): ContactsProgram {
  const program = emptyProgram();
  let adapted: Adapted = { name: whole(program, 'A0', start), most: start };
  exactly(program, [[1, adapted.name]], start);
  const volumes: (string | number)[] = [];
  const shortfall: Part[] = [];
  const distance: Part[] = [];
  for (const [index, terms] of weeks.entries()) {
    const opening = opened(program, terms, index, adapted);
    const { volume, week } = plannedWeek(program, terms, index, opening);
    volumes.push(volume);
    adapted = adaptedAfter(week);
    if (terms.target === undefined) continue;
    const off = whole(program, `D${index}`, terms.target + week.plannedMost);
    atLeast(program, [[1, off], ...minus(week.planned)], -terms.target);
    atLeast(program, [[1, off], ...week.planned], terms.target);
    distance.push([1, off]);
    if (!terms.decisive) continue;
    const under = whole(program, `S${index}`, terms.target);
    atLeast(program, [[1, under], ...week.planned], terms.target);
    shortfall.push([1, under]);
  }
  return { program, volumes, shortfall, distance };
}

const minus = (parts: readonly Part[]): readonly Part[] => parts.map(([times, name]) => [-times, name]);

function opened(program: IntegerProgram, terms: WeekTerms, index: number, adapted: Adapted): Adapted {
  if (terms.openingPercent === PERCENT) return adapted;
  return wholePart(program, `O${index}`, [[terms.openingPercent, adapted.name]], PERCENT, {
    most: terms.openingPercent * adapted.most,
  });
}

/** A variable that is the whole part of a sum divided. */
function wholePart(
  program: IntegerProgram,
  name: string,
  of: readonly Part[],
  by: number,
  { most }: { readonly most: number },
): Adapted {
  const value = { name: whole(program, name, Math.floor(most / by)), most: Math.floor(most / by) };
  atLeast(program, [...of, [-by, name]], 0);
  atMost(program, [...of, [-by, name]], by - 1);
  return value;
}

function plannedWeek(
  program: IntegerProgram,
  terms: WeekTerms,
  index: number,
  opening: Adapted,
): { readonly volume: string | number; readonly week: Week } {
  const { fixed } = terms;
  if (fixed !== undefined && fixed.kind !== 'pin') {
    const name = whole(program, `F${index}`, fixed.contacts);
    exactly(program, [[1, name]], fixed.contacts);
    const planned: Part[] = [[1, name]];
    return { volume: fixed.contacts, week: { program, terms, index, opening, planned, plannedMost: fixed.contacts } };
  }
  const most = mostEver(terms, opening.most);
  const volume = whole(program, `x${index}`, most / STEP);
  const week = { program, terms, index, opening, planned: [[STEP, volume]] as const, plannedMost: most };
  const takesMost = fixed === undefined && terms.target === undefined;
  const tight = takesMost ? boundWeek(week, []) : boundWeek(week);
  if (tight !== undefined)
    atLeast(
      program,
      tight.map((name): Part => [1, name]),
      1,
    );
  if (fixed !== undefined) exactly(program, week.planned, fixed.contacts);
  return { volume, week };
}

/** Nothing the bounds allow is over it; not the tightest. */
function mostEver(terms: WeekTerms, opening: number): number {
  const { growth, possible, sessionCeiling, fixed } = terms;
  const bounds = terms.weekCeilings.map(({ most }) => most);
  if (terms.target !== undefined && fixed === undefined) bounds.push(terms.reach);
  if (growth.kind === 'share') bounds.push((growth.percent * opening) / PERCENT);
  if (growth.kind === 'rise')
    bounds.push(Math.max(opening + growth.contacts, ((PERCENT + growth.percent) * opening) / PERCENT));
  if (!terms.primer) bounds.push(possible === 0 ? 0 : possible * sessionCeiling);
  return Math.max(0, Math.floor(Math.min(...bounds) / STEP)) * STEP;
}

/** The bounds as rows. With a list to fill: variables that may be 1 only where their bound leaves no further step. */
function boundWeek(week: Week, tight?: string[]): string[] | undefined {
  const { program, terms, opening, planned, plannedMost, index } = week;
  boundGrowth(week, tight);
  if (!terms.primer) boundBesideOthers(week, tight);
  if (terms.held !== undefined) {
    atMost(program, [...planned, [-1, opening.name]], 0);
    if (tight !== undefined) tight.push(noStep(week, 'h', [...planned, [-1, opening.name]], 1 - STEP, opening.most));
  }
  if (!terms.primer) boundSessions(week, tight);
  if (tight === undefined) return undefined;
  // Where the most there can ever be is reached, nothing is left to take.
  const top = whole(program, `t${index}`, 1);
  atLeast(program, [...planned, [-plannedMost, top]], 0);
  const ceilings = terms.weekCeilings.map(({ most }) => most);
  if (terms.target === undefined && ceilings.length > 0) tight.push(ceilingReached(week, Math.min(...ceilings)));
  if (terms.possible === 0 && !terms.primer) tight.push(top);
  return tight;
}

function ceilingReached({ program, planned, index }: Week, most: number): string {
  const name = whole(program, `c${index}`, 1);
  const last = Math.max(0, Math.floor(most / STEP)) * STEP;
  atLeast(program, [...planned, [-last, name]], 0);
  return name;
}

/** A variable that may be 1 only where the sum is at least so much; otherwise the row is loose. */
function noStep(week: Week, letter: string, sum: readonly Part[], least: number, slack: number): string {
  const name = whole(week.program, `${letter}${week.index}`, 1);
  atLeast(week.program, [...sum, [-(least + slack), name]], -slack);
  return name;
}

function boundGrowth(week: Week, tight: string[] | undefined): void {
  const { program, terms, opening, planned, index } = week;
  const { growth } = terms;
  if (growth.kind === 'free') return;
  const hundredfold = planned.map(([times, name]): Part => [times * PERCENT, name]);
  if (growth.kind === 'share') {
    const over: readonly Part[] = [...hundredfold, [-growth.percent, opening.name]];
    atMost(program, over, 0);
    tight?.push(noStep(week, 'g', over, 1 - PERCENT * STEP, growth.percent * opening.most));
    return;
  }
  const { percent, contacts } = growth;
  const choice = whole(program, `b${index}`, 1);
  const byShare: readonly Part[] = [...hundredfold, [-(PERCENT + percent), opening.name]];
  const byNumber: readonly Part[] = [...planned, [-1, opening.name]];
  const slack = Math.max(0, Math.ceil((percent * opening.most) / PERCENT) - contacts);
  atMost(program, [...byShare, [-PERCENT * contacts, choice]], 0);
  atMost(program, [...byNumber, [slack, choice]], contacts + slack);
  if (tight === undefined) return;
  const name = noStep(week, 'g', byShare, 1 - PERCENT * STEP, (PERCENT + percent) * opening.most);
  const least = contacts + 1 - STEP;
  atLeast(program, [...byNumber, [-(least + opening.most), name]], -opening.most);
  tight.push(name);
}

/** Within all jumping, or within the share of A that stays. */
function boundBesideOthers(week: Week, tight: string[] | undefined): void {
  const { program, terms, opening, planned, plannedMost, index } = week;
  if (terms.allJumps === undefined) return;
  const { percent, weeks, before, other } = terms.allJumps;
  const times = PERCENT * weeks;
  const all: readonly Part[] = [...scaled(planned, times), [-percent * weeks, opening.name]];
  const beside = percent * before - times * other;
  const least: readonly Part[] = [...scaled(planned, PERCENT), [-VOLUME.leastBesideOthers, opening.name]];
  const choice = whole(program, `o${index}`, 1);
  atMost(program, [...all, [-Math.max(0, times * plannedMost - beside), choice]], beside);
  atMost(program, [...least, [PERCENT * plannedMost, choice]], PERCENT * plannedMost);
  if (tight === undefined) return;
  // One more step is over both.
  const slack = percent * weeks * opening.most + Math.abs(beside);
  const name = noStep(week, 'a', all, beside + 1 - times * STEP, slack);
  const bound = VOLUME.leastBesideOthers * opening.most;
  atLeast(program, [...least, [-(1 - PERCENT * STEP + bound), name]], -bound);
  tight.push(name);
}

const scaled = (parts: readonly Part[], by: number): readonly Part[] =>
  parts.map(([times, name]): Part => [times * by, name]);

/** V stays within as many equal sessions as are possible, each in whole steps. */
function boundSessions(week: Week, tight: string[] | undefined): void {
  const { program, terms, opening, planned, index } = week;
  const { possible, sessionGrowth: growth, usualSessions } = terms;
  if (possible === 0) return;
  const steps = mostSteps(week);
  const session = whole(program, `k${index}`, steps);
  atMost(program, [...planned, [-STEP * possible, session]], 0);
  const tightSession = tight === undefined ? undefined : fullSession(week, session);
  if (growth.kind !== 'free' && usualSessions > 0) {
    const usual = wholePart(program, `u${index}`, [[1, opening.name]], usualSessions, { most: opening.most });
    boundSession(week, growth, usual, session, tightSession);
  }
  if (tight === undefined || tightSession === undefined) return;
  // One more step of V would need a session of one more step.
  const full = noStep(week, 'v', [...planned, [-STEP * possible, session]], 1 - STEP, STEP * possible * steps);
  atMost(program, [[1, full], ...tightSession.map((name): Part => [-1, name])], 0);
  tight.push(full);
}

/** Variables that may be 1 where the session can't have one more step, to be filled. */
function fullSession(week: Week, session: string): string[] {
  const name = whole(week.program, `l${week.index}`, 1);
  atLeast(
    week.program,
    [
      [1, session],
      [-mostSteps(week), name],
    ],
    0,
  );
  return [name];
}

/** Steps of a session: its ceiling, or more than the week can use. */
function mostSteps({ terms, plannedMost }: Week): number {
  return Math.min(Math.floor(terms.sessionCeiling / STEP), Math.ceil(plannedMost / STEP) + 1);
}

function boundSession(
  week: Week,
  growth: Exclude<SessionGrowth, { kind: 'free' }>,
  usual: Adapted,
  session: string,
  tight: string[] | undefined,
): void {
  const { program, index } = week;
  if (growth.kind === 'share') {
    const over: readonly Part[] = [
      [PERCENT * STEP, session],
      [-growth.percent, usual.name],
    ];
    atMost(program, over, 0);
    tight?.push(noStep(week, 'm', over, 1 - PERCENT * STEP, growth.percent * usual.most));
    return;
  }
  const { percent, contacts } = growth;
  const choice = whole(program, `j${index}`, 1);
  const byShare: readonly Part[] = [
    [PERCENT * STEP, session],
    [-(PERCENT + percent), usual.name],
  ];
  const byNumber: readonly Part[] = [
    [STEP, session],
    [-1, usual.name],
  ];
  const slack = Math.max(0, Math.ceil((percent * usual.most) / PERCENT) - contacts);
  atMost(program, [...byShare, [-PERCENT * contacts, choice]], 0);
  atMost(program, [...byNumber, [slack, choice]], contacts + slack);
  if (tight === undefined) return;
  const name = noStep(week, 'm', byShare, 1 - PERCENT * STEP, (PERCENT + percent) * usual.most);
  const least = contacts + 1 - STEP;
  atLeast(program, [...byNumber, [-(least + usual.most), name]], -usual.most);
  tight.push(name);
}

function adaptedAfter(week: Week): Adapted {
  const { program, terms, opening, planned, plannedMost, index } = week;
  const { keep } = terms;
  const name = `A${index + 1}`;
  if (keep.kind === 'fade') {
    return wholePart(program, name, [[keep.leftPercent, opening.name]], PERCENT, {
      most: keep.leftPercent * opening.most,
    });
  }
  if (keep.kind === 'stay') return larger(week, name, opening, opening.most);
  const { keepOwn, keepPlanned } = VOLUME;
  const of: readonly Part[] = [
    [keepOwn, opening.name],
    ...planned.map(([times, part]): Part => [times * keepPlanned, part]),
  ];
  const most = keepOwn * opening.most + keepPlanned * plannedMost;
  const mean = wholePart(program, `f${index}`, of, keepOwn + keepPlanned, { most });
  return larger(week, name, mean, mean.most);
}

/** The larger of V and another variable. */
function larger({ program, planned, plannedMost, index }: Week, name: string, other: Adapted, slack: number): Adapted {
  const most = Math.max(other.most, plannedMost);
  whole(program, name, most);
  const choice = whole(program, `w${index}`, 1);
  atLeast(program, [[1, name], ...minus(planned)], 0);
  atLeast(
    program,
    [
      [1, name],
      [-1, other.name],
    ],
    0,
  );
  atMost(program, [[1, name], ...minus(planned), [-slack, choice]], 0);
  atMost(
    program,
    [
      [1, name],
      [-1, other.name],
      [plannedMost, choice],
    ],
    plannedMost,
  );
  return { name, most };
}

/** The same season, as good as `worth`, and lexicographically less than `contacts`: less in the first week that differs. */
export function lessThan(
  { program, volumes, shortfall, distance }: ContactsProgram,
  worth: { readonly shortfall: number; readonly distance: number },
  contacts: readonly number[],
): IntegerProgram {
  const less = copied(program);
  if (shortfall.length > 0) atMost(less, shortfall, worth.shortfall);
  if (distance.length > 0) atMost(less, distance, worth.distance);
  const free = volumes.flatMap((name, index) => (typeof name === 'string' ? [{ name, index }] : []));
  const first = free.map(({ name, index }) => ({ name, index, here: whole(less, `y${index}`, 1) }));
  exactly(
    less,
    first.map(({ here }): Part => [1, here]),
    1,
  );
  for (const [place, { name, index, here }] of first.entries()) {
    const steps = (contacts[index] ?? 0) / STEP;
    const slack = less.most.get(name) ?? 0;
    const before = first.slice(0, place).map((one): Part => [slack, one.here]);
    // Up to the week that is less, the same; there, less; behind it, anything.
    atLeast(less, [[1, name], ...before, [steps, here]], steps);
    atMost(less, [[1, name], ...minus(before), [1, here]], steps);
  }
  return less;
}
