// Whether a session goes by a morning that hurt: pain holds its fast and high drills back. Called by the stage's sessions.

import type { Day } from '../../util/days.ts';
import type { ContactsWeek } from '../types.ts';

/** A week that was under way when it began to hurt keeps its days so far as their sheets had them. */
export function hurtsOn({ bounds, hurtsFrom = -Infinity }: ContactsWeek, day: Day): boolean {
  return day >= hurtsFrom && bounds.some(({ by }) => by === 'pain-hold');
}
