// Two sheets of one athlete → the weeks that differ. Weeks are matched by their first day, sessions by day and slot; what
// is left of a week's sessions on both sides is taken as moved, the nearest days first. Nothing is left out.

import { isDeepStrictEqual } from 'node:util';
import type { LineChange, SessionChange, SheetLine, SheetSession, SheetWeek, WeekChange } from './types.ts';

/** In order of week; empty where the sheets are equal. */
export function diffSheets(before: readonly SheetWeek[], after: readonly SheetWeek[]): readonly WeekChange[] {
  // A watch keeps the sheets of whom a save leaves as they are.
  if (before === after) return [];
  const old = new Map(before.map((week) => [week.starts, week]));
  const fresh = new Map(after.map((week) => [week.starts, week]));
  const starts = [...new Set([...old.keys(), ...fresh.keys()])].toSorted((a, b) => a - b);
  return starts.flatMap((day) => diffWeek(day, old.get(day), fresh.get(day)) ?? []);
}

function diffWeek(starts: number, before?: SheetWeek, after?: SheetWeek): WeekChange | undefined {
  if (isDeepStrictEqual(before, after)) return undefined;
  return {
    starts,
    ...(before !== undefined && { before }),
    ...(after !== undefined && { after }),
    sessions: diffSessions(before?.sessions ?? [], after?.sessions ?? []),
  };
}

const keyOf = ({ day, slot }: SheetSession): string => `${day} ${slot}`;

/** The sessions of one week that differ; a session that is equal isn't named. */
export function diffSessions(
  before: readonly SheetSession[],
  after: readonly SheetSession[],
): readonly SessionChange[] {
  const old = new Map(before.map((session) => [keyOf(session), session]));
  const kept = new Set(after.map(keyOf).filter((key) => old.has(key)));
  const pairs = after.flatMap((to): readonly Pair[] => {
    const from = old.get(keyOf(to));
    return from === undefined ? [] : [{ from, to }];
  });
  const gone = before.filter((session) => !kept.has(keyOf(session)));
  const come = after.filter((session) => !kept.has(keyOf(session)));
  const moved = pairMoved(gone, come);
  const paired = new Set([...moved.map(({ from }) => from), ...moved.map(({ to }) => to)]);
  return [
    ...[...pairs, ...moved].flatMap((pair) => diffSession(pair) ?? []),
    ...gone.filter((session) => !paired.has(session)).map((session) => ({ kind: 'removed' as const, session })),
    ...come.filter((session) => !paired.has(session)).map((session) => ({ kind: 'added' as const, session })),
  ];
}

interface Pair {
  readonly from: SheetSession;
  readonly to: SheetSession;
}

/** Sessions with jumps pair with sessions with jumps; the shortest moves first, then the earlier ones. */
function pairMoved(gone: readonly SheetSession[], come: readonly SheetSession[]): readonly Pair[] {
  const possible = gone
    .flatMap((from) => come.filter((to) => from.contacts > 0 === to.contacts > 0).map((to) => ({ from, to })))
    .toSorted((a, b) => distance(a) - distance(b) || a.from.day - b.from.day || a.to.day - b.to.day);
  const taken = new Set<SheetSession>();
  return possible.filter(({ from, to }) => {
    if (taken.has(from) || taken.has(to)) return false;
    taken.add(from).add(to);
    return true;
  });
}

const distance = ({ from, to }: Pair): number => Math.abs(from.day - to.day);

function diffSession({ from, to }: Pair): SessionChange | undefined {
  return isDeepStrictEqual(from, to)
    ? undefined
    : { kind: 'changed', from, to, lines: diffLines(from.lines, to.lines) };
}

const lineKey = ({ part, exercise, occurrence }: SheetLine): string => `${part} ${exercise} ${occurrence}`;

function diffLines(before: readonly SheetLine[], after: readonly SheetLine[]): readonly LineChange[] {
  const old = new Map(before.map((line) => [lineKey(line), line]));
  const fresh = new Set(after.map(lineKey));
  const changed = after.flatMap((line): readonly LineChange[] => {
    const was = old.get(lineKey(line));
    if (was === undefined) return [{ after: line }];
    return isDeepStrictEqual(was, line) ? [] : [{ before: was, after: line }];
  });
  return [...before.filter((line) => !fresh.has(lineKey(line))).map((line) => ({ before: line })), ...changed];
}
