// Two builds → what was edited and what changed on the sheets. Called by the commands. Athletes of both are compiled side
// by side in the order of their ids and let go again; only what differs is kept.

import { diffSheets } from './diff-sheets.ts';
import { diffPlans } from './edits.ts';
import { renamedPlan } from './renamed-plan.ts';
import type { AthleteSheet, SheetAthlete, Side } from './side.ts';
import type { Day } from '../util/days.ts';
import type { AthleteChange, BuildDiff, SheetTotals } from './types.ts';

/** Everything that differs; nothing for equal builds. The sheets of both are walked once. */
export function diffBuilds(before: Side, after: Side): BuildDiff {
  const renamed = renamedAthletes(before.athletes, after.athletes);
  const old = createCount(before);
  const fresh = createCount(after);
  const gone = new Map<string, AthleteSheet>();
  const come = new Map<string, AthleteSheet>();
  const athletes: AthleteChange[] = [];
  for (const [was, is] of joined(old.sheets(), fresh.sheets())) {
    if (was === undefined) come.set(is.athlete.id, is);
    else if (is === undefined) gone.set(was.athlete.id, was);
    else athletes.push(...keptChange(was, is));
  }
  for (const [id, was] of gone) {
    const is = come.get(renamed.get(id) ?? '');
    if (is === undefined) athletes.push({ ...naming(was.athlete), kind: 'removed', weeks: diffSheets(was.weeks, []) });
    else {
      come.delete(is.athlete.id);
      athletes.push(...keptChange(was, is));
    }
  }
  for (const { athlete, weeks } of come.values())
    athletes.push({ ...naming(athlete), kind: 'added', weeks: diffSheets([], weeks) });
  const over = new Set([...old.over, ...fresh.over]);
  return {
    ...planDiff(before, after, renamed),
    athletes: athletes.toSorted((a, b) => (a.athlete < b.athlete ? -1 : 1)),
    before: old.totals(over),
    after: fresh.totals(over),
    underWay: over.size > 0,
  };
}

function planDiff(before: Side, after: Side, renamed: ReadonlyMap<string, string>): Pick<BuildDiff, 'edits' | 'plans'> {
  if (before.plan === undefined || after.plan === undefined) return {};
  const plans = { before: renamedPlan(before.plan, renamed), after: after.plan };
  return { plans, edits: diffPlans(plans.before, plans.after) };
}

interface Count {
  readonly sheets: () => Iterable<AthleteSheet>;
  /** First days of the weeks that are over, of what has been walked. */
  readonly over: ReadonlySet<Day>;
  /** Of what has been walked, sessions of all weeks but those. */
  readonly totals: (over: ReadonlySet<Day>) => SheetTotals;
}

function createCount({ sheets }: Side): Count {
  const sums = { athletes: 0, contacts: 0 };
  const sessionsIn = new Map<Day, number>();
  const isOver = new Set<Day>();
  return {
    over: isOver,
    *sheets() {
      for (const sheet of sheets) {
        sums.athletes += 1;
        for (const { starts, done, sessions, contacts } of sheet.weeks) {
          sessionsIn.set(starts, (sessionsIn.get(starts) ?? 0) + sessions.length);
          if (done) isOver.add(starts);
          sums.contacts += contacts;
        }
        yield sheet;
      }
    },
    totals: (over) => {
      const counts = [...sessionsIn].map(([starts, count]) => (over.has(starts) ? 0 : count));
      return { ...sums, sessions: counts.reduce((sum, count) => sum + count, 0) };
    },
  };
}

type Joined = readonly [AthleteSheet, AthleteSheet | undefined] | readonly [undefined, AthleteSheet];

/** Sheets of one athlete together. Both sides are in order of id, by code unit. */
function* joined(before: Iterable<AthleteSheet>, after: Iterable<AthleteSheet>): Iterable<Joined> {
  const fresh = after[Symbol.iterator]();
  let next = fresh.next();
  for (const was of before) {
    while (next.done !== true && next.value.athlete.id < was.athlete.id) {
      yield [undefined, next.value];
      next = fresh.next();
    }
    if (next.done !== true && next.value.athlete.id === was.athlete.id) {
      yield [was, next.value];
      next = fresh.next();
    } else yield [was, undefined];
  }
  for (; next.done !== true; next = fresh.next()) yield [undefined, next.value];
}

const naming = ({ id, name, squad }: SheetAthlete): Pick<AthleteChange, 'athlete' | 'name' | 'squad'> => ({
  athlete: id,
  name,
  ...(squad !== undefined && { squad }),
});

function keptChange(was: AthleteSheet, is: AthleteSheet): readonly AthleteChange[] {
  const weeks = diffSheets(was.weeks, is.weeks);
  const renamed = was.athlete.id !== is.athlete.id;
  if (weeks.length === 0 && !renamed) return [];
  return [{ ...naming(is.athlete), kind: 'kept', ...(renamed && { renamedFrom: was.athlete.id }), weeks }];
}

/** New ids by old ones, where a name that only one athlete has on either side moved to another id. */
function renamedAthletes(before: readonly SheetAthlete[], after: readonly SheetAthlete[]): ReadonlyMap<string, string> {
  const unmatched = (all: readonly SheetAthlete[], others: readonly SheetAthlete[]): readonly SheetAthlete[] => {
    const ids = new Set(others.map(({ id }) => id));
    return all.filter(({ id }) => !ids.has(id));
  };
  const gone = byName(unmatched(before, after));
  const come = byName(unmatched(after, before));
  const pairs = [...gone].flatMap(([name, old]): readonly (readonly [string, string])[] => {
    const fresh = come.get(name);
    return old === undefined || fresh === undefined ? [] : [[old, fresh]];
  });
  return new Map(pairs);
}

/** The id behind each name; undefined where several have it. */
function byName(athletes: readonly SheetAthlete[]): ReadonlyMap<string, string | undefined> {
  const ids = new Map<string, string | undefined>();
  for (const { id, name } of athletes) ids.set(name, ids.has(name) ? undefined : id);
  return ids;
}
