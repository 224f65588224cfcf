// The lines of the plan that change a rule's numbers in a range, for the reasons. Called where the bounds of a week or
// of a session are made.

import type { RuleId } from '../../library/rules.ts';
import type { RuleBook } from '../../plan/rule-book.ts';
import type { DayRange } from '../../plan/types.ts';
import type { Span } from '../../source/types.ts';

const UNCHANGED: readonly Span[] = [];

/** Their places in the order of the plan; the same empty list wherever nothing changes the rule. */
export function changedBy(book: RuleBook, rule: RuleId, range: DayRange): readonly Span[] {
  const changes = book.changes(rule, range);
  return changes.length === 0 ? UNCHANGED : changes.map((change) => change.span);
}
