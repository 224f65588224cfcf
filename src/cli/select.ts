// What was asked for on the command line, against the plan: names that are not there are refused with the nearest that
// is. Called by every command that takes names.

import type { Build } from '../build/types.ts';
import type { Plan } from '../plan/types.ts';
import type { Selection } from '../report/selection.ts';
import { selectsAthlete } from '../report/selection.ts';
import { DAYS_A_WEEK, isoDate } from '../util/days.ts';
import { didYouMean } from '../util/did-you-mean.ts';
import type { Shard } from './option-values.ts';
import type { SelectionRequest } from './requests.ts';

export type Selected =
  | { readonly ok: true; readonly selection: Selection }
  | { readonly ok: false; readonly problem: string };

/** No athlete and no squad is everybody; an athlete counts who is named or whose squad is. Dates stay as asked. */
export function select(request: SelectionRequest, plan: Plan): Selected {
  const problem = problemOf(request, plan);
  if (problem !== undefined) return { ok: false, problem };
  const { athletes, squads, from, until } = request;
  const everybody = athletes.length === 0 && squads.length === 0;
  return {
    ok: true,
    selection: {
      who: everybody ? { kind: 'everybody' } : { kind: 'some', athletes, squads },
      ...(from !== undefined && { from }),
      ...(until !== undefined && { until }),
    },
  };
}

/** What is wrong with days that are asked for, none of which is in the season; undefined where some are. */
export function outsideSeason(
  { from, until }: SelectionRequest,
  { plan, weeks }: Pick<Build, 'plan' | 'weeks'>,
): string | undefined {
  const { starts, ends } = plan.season;
  const first = weeks[0]?.starts ?? starts;
  const last = (weeks.at(-1)?.starts ?? ends) + DAYS_A_WEEK - 1;
  if ((from ?? first) <= last && (until ?? last) >= first) return undefined;
  const asked = [
    ...(from === undefined ? [] : [`--from ${isoDate(from)}`]),
    ...(until === undefined ? [] : [`--to ${isoDate(until)}`]),
  ];
  return `${asked.join(' ')} is in no week of the season, ${isoDate(starts)} to ${isoDate(ends)}`;
}

/**
 * The selection with only one of its parts left: neighbours stay together, and no two parts differ by more than one
 * athlete. The tables of all parts one behind the other are the table of the whole.
 */
export function shardOf(selection: Selection, { part, of }: Shard, plan: Plan): Selection {
  const ids = plan.athletes.filter((athlete) => selectsAthlete(selection, athlete)).map(({ id }) => id);
  const end = (parts: number): number => Math.floor((parts * ids.length) / of);
  return { ...selection, shard: new Set(ids.slice(end(part - 1), end(part))) };
}

function problemOf({ athletes, squads, from, until }: SelectionRequest, plan: Plan): string | undefined {
  if (from !== undefined && until !== undefined && until < from) return '--to is before --from';
  return (
    unknown(athletes, 'athlete', new Set(plan.athletes.map(({ id }) => id))) ??
    unknown(squads, 'squad', new Set(plan.squads.keys()))
  );
}

/** The words for the first of the names that isn't known, if there is one. */
export function unknown(names: readonly string[], what: string, known: ReadonlySet<string>): string | undefined {
  const wrong = names.find((name) => !known.has(name));
  if (wrong === undefined) return undefined;
  const hint = didYouMean(wrong, known);
  return `there is no ${what} "${wrong}"${hint === undefined ? '' : `; ${hint}`}`;
}
