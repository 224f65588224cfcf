// The contacts of random seasons, once by the search and once by the solver, level by level of the objective. Both answers
// are reckoned again in whole numbers. Called by the test beside it and by the bench.

import fc from 'fast-check';
import { searchContacts } from '../../../src/schedule/contacts/search.ts';
import { contactsProgram, lessThan } from './contacts-program.ts';
import type { ContactsProgram } from './contacts-program.ts';
import type { Solve } from './integer-program.ts';
import { worthOf } from './plain-arithmetic.ts';
import type { Worth } from './plain-arithmetic.ts';
import { randomWeeks } from './random-weeks.ts';
import type { RandomWeeks } from './random-weeks.ts';

export interface Compared {
  readonly plans: number;
  readonly weeks: number;
  /** Plans whose pins can't be met, by both. */
  readonly impossible: number;
  /** Plans whose best has a shortfall in the decisive weeks. */
  readonly short: number;
  /** In which the solver was asked for one as good and lexicographically less, and proved that there is none. */
  readonly least: number;
  readonly milliseconds: { readonly search: number; readonly solver: number };
}

/** Compares so many seasons; throws at the first in which the two differ. */
export function compareContacts(solve: Solve, plans: number, seed: number): Compared {
  const found = fc.sample(randomWeeks, { numRuns: plans, seed }).map((season) => compareSeason(solve, season));
  const sum = (of: (one: Season) => number): number => found.reduce((total, one) => total + of(one), 0);
  return {
    plans: found.length,
    weeks: sum((one) => one.weeks),
    impossible: sum((one) => (one.worth === undefined ? 1 : 0)),
    short: sum((one) => ((one.worth?.shortfall ?? 0) > 0 ? 1 : 0)),
    least: sum((one) => (one.least ? 1 : 0)),
    milliseconds: { search: sum((one) => one.search), solver: sum((one) => one.solver) },
  };
}

interface Season {
  readonly weeks: number;
  readonly worth: Worth | undefined;
  readonly least: boolean;
  readonly search: number;
  readonly solver: number;
}

function timed<T>(work: () => T): { readonly value: T; readonly took: number } {
  const from = performance.now();
  const value = work();
  return { value, took: performance.now() - from };
}

function compareSeason(solve: Solve, { weeks, start }: RandomWeeks): Season {
  const search = timed(() => searchContacts(weeks, start));
  const solver = timed(() => solveLevels(solve, contactsProgram(weeks, start), { weeks, start }, search.value));
  const worth = search.value === undefined ? undefined : worthOf(weeks, start, search.value);
  const same = JSON.stringify(worth) === JSON.stringify(solver.value.worth);
  if (!same || (search.value === undefined) !== (worth === undefined) || solver.value.less !== undefined) {
    const both = { search: search.value, worth, solver: solver.value };
    throw new Error(`search and solver differ: ${JSON.stringify(both)}\n${JSON.stringify({ weeks, start })}`);
  }
  return { weeks: weeks.length, worth, least: solver.value.asked, search: search.took, solver: solver.took };
}

interface Solved {
  /** Undefined: impossible. */
  readonly worth: Worth | undefined;
  readonly asked: boolean;
  /** As good, and lexicographically less than what the search found. */
  readonly less: readonly number[] | undefined;
}

const IMPOSSIBLE: Solved = { worth: undefined, asked: false, less: undefined };

/** First the least shortfall; then, with that, the least distance; then whether one as good is lexicographically less. */
function solveLevels(
  solve: Solve,
  asked: ContactsProgram,
  season: RandomWeeks,
  found: readonly number[] | undefined,
): Solved {
  const first = solve(asked.program, asked.shortfall);
  if (first.status === 'none') return IMPOSSIBLE;
  const { shortfall } = checked(asked, season, first.values);
  const second = solve(held(asked, shortfall), asked.distance);
  if (second.status === 'none') throw new Error('the solver lost the season it had found');
  const worth = checked(asked, season, second.values);
  if (worth.shortfall !== shortfall) throw new Error('the solver let the first level go');
  if (found === undefined || !asked.volumes.some((name) => typeof name === 'string'))
    return { worth, asked: false, less: undefined };
  const third = solve(lessThan(asked, worth, found), []);
  if (third.status === 'none') return { worth, asked: true, less: undefined };
  return { worth, asked: true, less: contactsOf(asked, third.values) };
}

function held({ program, shortfall }: ContactsProgram, most: number): ContactsProgram['program'] {
  if (shortfall.length === 0) return program;
  const row = ` held: ${shortfall.map(([, name]) => `+ ${name}`).join(' ')} <= ${most}`;
  return { ...program, rows: [...program.rows, row] };
}

function contactsOf({ volumes }: ContactsProgram, values: ReadonlyMap<string, number>): readonly number[] {
  return volumes.map((name) => (typeof name === 'number' ? name : 5 * (values.get(name) ?? Number.NaN)));
}

/** The worth of the solver's own season in whole numbers: tolerances let nothing through. */
function checked(asked: ContactsProgram, season: RandomWeeks, values: ReadonlyMap<string, number>): Worth {
  const contacts = contactsOf(asked, values);
  const worth = worthOf(season.weeks, season.start, contacts);
  if (worth === undefined) throw new Error(`the solver's season isn't allowed: ${contacts.join(' ')}`);
  return worth;
}
