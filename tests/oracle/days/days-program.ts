// The days of a season as an integer program: a variable for each date that may hold jumps, and for each that may hold
// lifts. What a week costs on account of those before it hangs on variables of its own: the days of the last week that had
// any, whether a session has room behind it. The floors of the costs are asked one after the other, as their numbers lie
// too far apart for a solver that reckons in floating point. Read by solver.test.ts.

import { DAY_PREFERENCES, DAY_STABILITY, JUMP_SHORTFALL, LIFT_SHORTFALL } from '../../../src/library/days.ts';
import type { Day } from '../../../src/util/days.ts';
import { atLeast, atMost, copied, emptyProgram, exactly, whole } from '../contacts/integer-program.ts';
import type { IntegerProgram, Part } from '../contacts/integer-program.ts';
import type { PlainChoice, PlainUse, PlainWeek } from './brute-force.ts';

const PLACES = [0, 1, 2, 3, 4, 5, 6] as const;
const COST = DAY_PREFERENCES;

/** A sum of variables, each name once, and a number. */
interface Sum {
  readonly parts: Map<string, number>;
  constant: number;
}

/** One floor of the costs, in units of its own. */
export interface Level {
  readonly unit: number;
  readonly parts: readonly Part[];
  readonly constant: number;
}

export interface DaysProgram {
  readonly program: IntegerProgram;
  /** The highest floor first. */
  readonly levels: readonly Level[];
  /** Names by date. */
  readonly jumps: ReadonlyMap<Day, string>;
  readonly lifts: ReadonlyMap<Day, string>;
}

interface Floors {
  readonly jumps: Sum;
  readonly lifts: Sum;
  readonly stability: Sum;
  readonly preferences: Sum;
}

const emptySum = (): Sum => ({ parts: new Map(), constant: 0 });

function add(sum: Sum, times: number, name: string | undefined): void {
  if (name !== undefined) sum.parts.set(name, (sum.parts.get(name) ?? 0) + times);
}

/** The program of a season. */
export function daysProgram(weeks: readonly PlainWeek[]): DaysProgram {
  const program = emptyProgram();
  const names = (letter: string, use: (week: PlainWeek) => PlainUse): ReadonlyMap<Day, string> =>
    new Map(weeks.flatMap((week) => use(week).dates.map((date) => [date, whole(program, `${letter}${date}`, 1)])));
  const jumps = names('j', (week) => week.jumps);
  const lifts = names('l', (week) => week.lifts);
  const floors = { jumps: emptySum(), lifts: emptySum(), stability: emptySum(), preferences: emptySum() };
  const season = { program, weeks, jumps, lifts, floors };
  keepApart(season, jumps, (week) => week.jumps);
  keepApart(season, lifts, (week) => week.lifts);
  const jumping = keepPattern(season, jumps, 'u', COST['jump-pattern'].cost);
  keepPattern(season, lifts, 'v', COST['lift-pattern'].cost);
  for (const [at, week] of weeks.entries()) {
    weighShortfall(season, week, at);
    weighDates(season, week);
    weighFreeDays(season, week, at);
    weighRoom(season, week, at, jumping[at]);
  }
  const level = (sum: Sum, unit: number): Level => ({
    unit,
    constant: sum.constant / unit,
    parts: [...sum.parts].map(([name, times]): Part => [times / unit, name]),
  });
  const levels = [
    level(floors.jumps, JUMP_SHORTFALL.missing.cost),
    level(floors.lifts, LIFT_SHORTFALL.missing.cost),
    level(floors.stability, DAY_STABILITY.published.cost),
    level(floors.preferences, 1),
  ];
  return { program, levels, jumps, lifts };
}

interface Season {
  readonly program: IntegerProgram;
  readonly weeks: readonly PlainWeek[];
  readonly jumps: ReadonlyMap<Day, string>;
  readonly lifts: ReadonlyMap<Day, string>;
  readonly floors: Floors;
}

/** Of two dates too near for the later one's week one at most is taken; and of a week's no more than are wanted. */
function keepApart(
  { program, weeks }: Season,
  names: ReadonlyMap<Day, string>,
  use: (week: PlainWeek) => PlainUse,
): void {
  for (const week of weeks) {
    const { dates, wanted, apart } = use(week);
    const own = dates.map((date): Part => [1, names.get(date) ?? '']);
    if (own.length > 0) atMost(program, own, wanted);
    for (const date of dates) {
      for (let before = date - 1; before > date - apart; before -= 1) {
        const other = names.get(before);
        if (other !== undefined)
          atMost(
            program,
            [
              [1, names.get(date) ?? ''],
              [1, other],
            ],
            1,
          );
      }
    }
  }
}

/** Days that the last week with any before didn't have cost. Gives back the name of "this week has one". */
function keepPattern(
  { program, weeks, floors }: Season,
  names: ReadonlyMap<Day, string>,
  letter: string,
  cost: number,
): readonly string[] {
  const own: string[] = [];
  let known: string | undefined;
  let pattern: readonly string[] = [];
  for (const [at, { starts }] of weeks.entries()) {
    const here = PLACES.map((place) => names.get(starts + place));
    const any = whole(program, `${letter}${at}`, 1);
    own.push(any);
    for (const name of here)
      if (name !== undefined)
        atLeast(
          program,
          [
            [1, any],
            [-1, name],
          ],
          0,
        );
    for (const [place, name] of here.entries()) {
      const before = pattern[place];
      if (name === undefined || known === undefined || before === undefined) continue;
      const off = whole(program, `${letter}o${at}_${place}`, 1);
      atLeast(
        program,
        [
          [1, off],
          [-1, name],
          [1, before],
          [-1, known],
        ],
        -1,
      );
      add(floors.preferences, cost, off);
    }
    pattern = nextPattern(program, { letter, at, here, any, pattern });
    known = nextKnown(program, `${letter}k${at}`, any, known);
  }
  return own;
}

interface Turn {
  readonly letter: string;
  readonly at: number;
  readonly here: readonly (string | undefined)[];
  readonly any: string;
  readonly pattern: readonly string[];
}

/** No day is of the pattern that neither this week has nor, where it has none at all, the pattern before. */
function nextPattern(program: IntegerProgram, { letter, at, here, any, pattern }: Turn): readonly string[] {
  return PLACES.map((place) => {
    const name = whole(program, `${letter}p${at}_${place}`, 1);
    const own = here[place];
    atMost(program, [[1, name], [1, any], ...(own === undefined ? [] : [[-1, own] as const])], 1);
    const before = pattern[place];
    atMost(program, [[1, name], [-1, any], ...(before === undefined ? [] : [[-1, before] as const])], 0);
    return name;
  });
}

function nextKnown(program: IntegerProgram, name: string, any: string, known: string | undefined): string {
  whole(program, name, 1);
  atLeast(
    program,
    [
      [1, name],
      [-1, any],
    ],
    0,
  );
  if (known !== undefined)
    atLeast(
      program,
      [
        [1, name],
        [-1, known],
      ],
      0,
    );
  return name;
}

function weighShortfall({ program, jumps, lifts, floors }: Season, week: PlainWeek, at: number): void {
  const { missing, 'pin-unmet': unmet } = JUMP_SHORTFALL;
  floors.jumps.constant += missing.cost * week.jumps.wanted;
  floors.jumps.constant += unmet.cost * Math.min(week.jumps.wanted, week.jumps.pinned.length);
  for (const date of week.jumps.dates) add(floors.jumps, -missing.cost, jumps.get(date));
  for (const date of week.jumps.pinned) add(floors.jumps, -unmet.cost, jumps.get(date));
  floors.lifts.constant += LIFT_SHORTFALL.missing.cost * week.lifts.wanted;
  for (const date of week.lifts.dates) add(floors.lifts, -LIFT_SHORTFALL.missing.cost, lifts.get(date));
  if (week.lifts.wanted === 0 || week.lifts.dates.length === 0) return;
  const none = whole(program, `none${at}`, 1);
  atLeast(program, [[1, none], ...week.lifts.dates.map((date): Part => [1, lifts.get(date) ?? ''])], 1);
  add(floors.lifts, LIFT_SHORTFALL.none.cost, none);
}

function weighDates({ program, weeks, jumps, lifts, floors }: Season, week: PlainWeek): void {
  const isHeavy = (date: Day): boolean =>
    weeks.some((one) => one.lifts.dates.includes(date) && !one.light.includes(date));
  for (const date of week.jumps.dates) {
    const name = jumps.get(date) ?? '';
    if (!week.jumps.usual.includes(date)) add(floors.preferences, COST['unusual-jump-day'].cost, name);
    add(floors.preferences, COST['beside-hard-day'].cost * (week.hardSides.get(date) ?? 0), name);
    if (week.isPublished && !week.jumps.published.includes(date))
      add(floors.stability, DAY_STABILITY.published.cost, name);
    const eve = lifts.get(date - 1);
    if (eve === undefined || !isHeavy(date - 1)) continue;
    const after = whole(program, `h${date}`, 1);
    atLeast(
      program,
      [
        [1, after],
        [-1, name],
        [-1, eve],
      ],
      -1,
    );
    add(floors.preferences, COST['jumps-after-heavy'].cost, after);
  }
  for (const date of week.lifts.dates) {
    const name = lifts.get(date) ?? '';
    if (!week.lifts.usual.includes(date)) add(floors.preferences, COST['unusual-lift-day'].cost, name);
    if (week.light.includes(date)) add(floors.preferences, COST['light-lift'].cost, name);
    if (week.isPublished && !week.lifts.published.includes(date))
      add(floors.stability, DAY_STABILITY.published.cost, name);
    const jump = jumps.get(date);
    const alone = whole(program, `a${date}`, 1);
    atLeast(program, [[1, alone], [-1, name], ...(jump === undefined ? [] : [[1, jump] as const])], 0);
    add(floors.preferences, COST['lift-alone'].cost, alone);
  }
}

function weighFreeDays({ program, jumps, lifts, floors }: Season, week: PlainWeek, at: number): void {
  if (week.freeDays === 0) return;
  const none = whole(program, `full${at}`, 1);
  const taken = PLACES.flatMap((place): readonly Part[] => {
    const date = week.starts + place;
    if (week.busy.includes(date)) return [];
    const name = whole(program, `d${date}`, 1);
    for (const one of [jumps.get(date), lifts.get(date)])
      if (one !== undefined)
        atLeast(
          program,
          [
            [1, name],
            [-1, one],
          ],
          0,
        );
    return [[1, name]];
  });
  const most = PLACES.length - week.freeDays - week.busy.length;
  atMost(program, [...taken, [-PLACES.length, none]], most);
  add(floors.stability, DAY_STABILITY['no-free-day'].cost, none);
}

function weighRoom(
  { program, jumps, floors }: Season,
  { jumps: { dates }, drops, crammed }: PlainWeek,
  at: number,
  jumping: string | undefined,
): void {
  if (!drops.wanted || jumping === undefined || dates.length === 0) return;
  const roomy = dates.filter((date) => !crammed.includes(date));
  const rooms = roomy.map((date): Part => {
    const name = whole(program, `r${date}`, 1);
    atMost(
      program,
      [
        [1, name],
        [-1, jumps.get(date) ?? ''],
      ],
      0,
    );
    for (let behind = date + 1; behind <= date + drops.free; behind += 1) {
      const other = jumps.get(behind);
      if (other !== undefined)
        atMost(
          program,
          [
            [1, name],
            [1, other],
          ],
          1,
        );
    }
    return [1, name];
  });
  const none = whole(program, `n${at}`, 1);
  atLeast(program, [[1, none], ...rooms, [-1, jumping]], 0);
  add(floors.preferences, COST['no-room-for-drops'].cost, none);
}

/** The days of a solution. */
export function readDays(
  { jumps, lifts }: DaysProgram,
  weeks: readonly PlainWeek[],
  values: ReadonlyMap<string, number>,
): readonly PlainChoice[] {
  const taken = (use: PlainUse, names: ReadonlyMap<Day, string>): readonly Day[] =>
    use.dates.filter((date) => values.get(names.get(date) ?? '') === 1);
  return weeks.map((week) => ({ jumps: taken(week.jumps, jumps), lifts: taken(week.lifts, lifts) }));
}

/**
 * Days that cost no more on any floor than `levels` say and are better by the ties: in the order of weeks, jumps before
 * lifts, days in order, the first in which the two differ is taken here and free in `found`.
 */
export function earlierProgram(
  { program, levels, jumps, lifts }: DaysProgram,
  weeks: readonly PlainWeek[],
  found: readonly PlainChoice[],
  most: readonly number[],
): IntegerProgram {
  const earlier = copied(program);
  levels.forEach(({ parts, constant }, at) => {
    if (parts.length > 0) atMost(earlier, parts, (most[at] ?? 0) - constant);
  });
  const bits = weeks.flatMap((week, at) => [
    ...week.jumps.dates.map((date) => ({ name: jumps.get(date) ?? '', taken: found[at]?.jumps.includes(date) })),
    ...week.lifts.dates.map((date) => ({ name: lifts.get(date) ?? '', taken: found[at]?.lifts.includes(date) })),
  ]);
  // "They differ first behind here", from the last bit back; behind the last one they can't.
  let behind: string | undefined;
  for (const [at, { name, taken }] of [...bits.entries()].toReversed()) {
    const later: readonly Part[] = behind === undefined ? [] : [[1, behind]];
    if (taken === true) {
      if (later.length > 0) atLeast(earlier, [[1, name], ...later.map(([times, one]): Part => [-times, one])], 0);
      continue;
    }
    if (later.length > 0) atMost(earlier, [[1, name], ...later], 1);
    const here = whole(earlier, `here${at}`, 1);
    const since = whole(earlier, `since${at}`, 1);
    atLeast(
      earlier,
      [
        [1, name],
        [-1, here],
      ],
      0,
    );
    exactly(earlier, [[1, since], [-1, here], ...later.map(([times, one]): Part => [-times, one])], 0);
    behind = since;
  }
  if (behind === undefined) exactly(earlier, [[1, whole(earlier, 'never', 0)]], 1);
  else exactly(earlier, [[1, behind]], 1);
  return earlier;
}
