// What a week's contacts are made of: tiers, directions, cycles. Worked out from the lines by read-season.ts; read by the
// rules on shares. Primers are left out: they are a handful of the best drills before a match and no mixture.

import { isStatic } from '../library/drill-facts.ts';
import { LOADED_JUMP_COUNTS_AS } from '../library/lifting.ts';
import type { Cycle, DirectionShares, Drill, Tier } from '../library/types.ts';
import type { SessionReading } from './session-reading.ts';

/** In contacts. */
export interface WeekMix {
  readonly contacts: number;
  /** What the most of a part is a share of: the contacts, or of a week under way that was cut those it was planned at. */
  readonly whole: number;
  readonly high: number;
  readonly fast: number;
  readonly standing: number;
  /** In hundredths of a contact. */
  readonly vertical: number;
  readonly horizontal: number;
  readonly lateral: number;
  /** Ordinary jump sessions. */
  readonly sessions: number;
}

type Sum = { -readonly [Part in keyof WeekMix]: WeekMix[Part] };

/** The mixture of a week's jump sessions; `planned` is what a week under way had before it was cut. */
export function mixOf(jumpSessions: readonly SessionReading[], planned = 0): WeekMix {
  const sum: Sum = {
    contacts: 0,
    whole: 0,
    high: 0,
    fast: 0,
    standing: 0,
    vertical: 0,
    horizontal: 0,
    lateral: 0,
    sessions: 0,
  };
  for (const session of jumpSessions) {
    if (session.primer) continue;
    sum.sessions += 1;
    for (const { drill, contacts, dropCm } of session.lines) {
      if (contacts > 0) addTo(sum, contacts, drill, drill !== undefined && dropCm === undefined && isStatic(drill));
    }
  }
  sum.whole = Math.max(sum.contacts, planned);
  return sum;
}

function addTo(sum: Sum, contacts: number, drill: Drill | undefined, standing: boolean): void {
  const row: { readonly tier: Tier; readonly cycle: Cycle; readonly direction: DirectionShares } =
    drill ?? LOADED_JUMP_COUNTS_AS;
  sum.contacts += contacts;
  if (row.tier === 'high') sum.high += contacts;
  if (row.cycle === 'fast') sum.fast += contacts;
  if (standing) sum.standing += contacts;
  sum.vertical += row.direction.vertical * contacts;
  sum.horizontal += row.direction.horizontal * contacts;
  sum.lateral += row.direction.lateral * contacts;
}
