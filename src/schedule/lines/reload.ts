// A session once more by somebody else's maxima. Which lifts stand in it, their sets, reps and shares hang on which maxima
// are known and not on how high they are; only kilos do, and what the kit can't make. Called by ../reload-season.ts for
// athletes who are alike but for the numbers. What was tried is tried again in the same order, as each load steps up from
// those before; where the kit answers differently, the season is another and has to be written anew.

import type { BuiltLine, BuiltSession } from '../../build/types.ts';
import type { Draft, Lifter, Loading, Tried } from './draft.ts';
import { lineAt } from './draft.ts';

/** What of a session hangs on maxima. */
export interface SessionLoads {
  /** In the order in which they were tried, lines that were cut later among them. */
  readonly tries: readonly Tried[];
  /** By the index of the line: what makes it; undefined for a line that hangs on no maximum. */
  readonly lines: readonly (Loading | undefined)[];
  /** Lines that hang on no maximum are heavy. */
  readonly heavy: boolean;
}

const NO_LOADS: SessionLoads = { tries: [], lines: [], heavy: false };

/** What of a session of these drafts hangs on maxima, after so much was tried. */
export function sessionLoads(tries: readonly Tried[], drafts: readonly Draft[]): SessionLoads {
  if (tries.length === 0) return NO_LOADS;
  return {
    tries,
    lines: drafts.map(({ loading }) => loading),
    heavy: drafts.some(({ loading, heavy }) => loading === undefined && heavy),
  };
}

/** The session by the maxima of a lifter, whose history it goes into; undefined where other lifts would stand in it. */
export function reloadSession(session: BuiltSession, loads: SessionLoads, lifter: Lifter): BuiltSession | undefined {
  if (loads.tries.length === 0) return session;
  const made = new Map<Loading, Draft>();
  for (const { loading, fits } of loads.tries) {
    const draft = loading(lifter);
    if ((draft !== undefined) !== fits) return undefined;
    if (draft !== undefined) made.set(loading, draft);
  }
  let { heavy } = loads;
  const lines = session.lines.map((line, index) => {
    const loading = loads.lines[index];
    const draft = loading === undefined ? undefined : made.get(loading);
    if (draft === undefined) return line;
    heavy ||= draft.heavy;
    return reloadLine(line, draft);
  });
  return { ...session, heavy, lines };
}

/** The line with the loads of a draft, and what the minutes left of its sets. */
function reloadLine({ sets, order, pairedWith }: BuiltLine, draft: Draft): BuiltLine {
  const cut = draft.line.sets === sets ? draft : draft.withSets?.(sets);
  return lineAt(cut ?? draft, order, pairedWith);
}
