// All jumping of a week that is over: sessions, practice, matches and tests. What the record says counts; of practice,
// matches and tests that it doesn't speak of, what was planned does, as the plan's own ledger takes them.

import type { BuiltDay } from '../../build/types.ts';
import type { DoneRow } from '../../plan/types.ts';

/** Practice, matches and tests of a week: rows and ledger are the athlete's, of its days. */
export function otherJumpsDone(ledger: readonly BuiltDay[], rows: readonly DoneRow[]): number {
  return OTHER_KINDS.reduce((sum, kind) => sum + jumpsOf(kind, ledger, rows), 0);
}

type OtherKind = Exclude<DoneRow['kind'], 'session'>;

const OTHER_KINDS: readonly OtherKind[] = ['practice', 'match', 'test'];

const PLANNED: Readonly<Record<OtherKind, (day: BuiltDay) => number>> = {
  practice: ({ practiceJumps }) => practiceJumps,
  match: ({ matchJumps }) => matchJumps,
  test: ({ testContacts }) => testContacts,
};

function jumpsOf(kind: OtherKind, ledger: readonly BuiltDay[], rows: readonly DoneRow[]): number {
  const counted = rows.filter((row) => row.kind === kind && row.contacts !== undefined);
  const recorded = new Set(counted.map(({ day }) => day));
  const planned = ledger.reduce((sum, day) => (recorded.has(day.day) ? sum : sum + PLANNED[kind](day)), 0);
  return planned + counted.reduce((sum, { contacts = 0 }) => sum + contacts, 0);
}
