// A `now` that is more than the level's ceiling of a session: mostly a slip of a digit, and everything is built up from it.
// Called by resolve-athletes.ts.

import { problem } from '../diagnostics/problem.ts';
import { getDefault } from '../library/rules.ts';
import { levelOn } from './athlete-facts.ts';
import type { Scope } from './scope.ts';
import type { Athlete } from './types.ts';

/** Told once for each `now`, with the first athlete by id whom it is too much for. */
export function noteNowOverCeiling(scope: Scope, athletes: readonly Athlete[]): void {
  const told = new Set<string>();
  for (const { id, now, levels } of athletes) {
    const { origin, value } = now;
    const level = levelOn({ levels }, scope.frame.from);
    const most = getDefault('session-ceiling', level);
    if (origin.kind !== 'written' || value.contactsASession <= most) continue;
    const { span } = origin;
    const place = `${span.file}:${span.start}`;
    if (told.has(place)) continue;
    told.add(place);
    const params = { athlete: id, level, found: value.contactsASession, most };
    scope.report(problem('plan/now-over-ceiling', { params, span, athlete: id }));
  }
}
