// What a session would have to hold for its week to meet its shares, and what being off it costs. Called by allot.ts and
// its search. Directions are in hundredths of a contact, fast work in contacts.

import { ALLOTTING } from '../../library/families.ts';
import type { DirectionShares, Range } from '../../library/types.ts';
import type { Tally } from './tally.ts';
import { PERCENT } from '../../util/units.ts';

/** What a week aims at: shares in whole per cents. */
export interface Aim {
  readonly key: string;
  readonly directions: DirectionShares;
  readonly fast: Range;
  /** How far a direction may be off its share before a rule names it, in points. */
  readonly points: number;
  /** Contacts of the whole week. */
  readonly contacts: number;
}

export interface Target {
  readonly vertical: number;
  readonly horizontal: number;
  readonly lateral: number;
  /** Least and most fast contacts of this session, for the week's band to hold. */
  readonly fastFrom: number;
  readonly fastTo: number;
  /** Hundredths of a contact that a direction may be off before a rule names it. */
  readonly slack: number;
  /** The week ends with this session, so that rules will look at what it comes to. */
  readonly last: boolean;
}

/** What this session of so many contacts would have to hold for the week so far to meet its shares. */
export function targetOf(week: Tally, contacts: number, aim: Aim): Target {
  const total = week.contacts + contacts;
  const last = total >= aim.contacts;
  const inside = last ? 0 : Math.min(ALLOTTING.fastInside, (aim.fast.to - aim.fast.from) / 2);
  return {
    vertical: aim.directions.vertical * total - week.vertical,
    horizontal: aim.directions.horizontal * total - week.horizontal,
    lateral: aim.directions.lateral * total - week.lateral,
    fastFrom: ((aim.fast.from + inside) * total) / PERCENT - week.fast,
    fastTo: ((aim.fast.to - inside) * total) / PERCENT - week.fast,
    slack: aim.points * total,
    last,
  };
}

/** What so many hundredths of a contact off a direction cost. A departure that a rule will name costs more than its size. */
export function directionCost(hundredths: number, { last, slack }: Target): number {
  const off = hundredths / PERCENT;
  const size = off * off * ALLOTTING.direction;
  return last && (hundredths > slack || -hundredths > slack) ? size + ALLOTTING.directionNamed : size;
}

/** What so many fast contacts cost, being outside the band. */
export function fastCost(fast: number, { fastFrom, fastTo, last }: Target): number {
  const outside = fast < fastFrom ? fastFrom - fast : fast - fastTo;
  if (outside <= 0) return 0;
  return outside * outside * ALLOTTING.fast + (last ? ALLOTTING.fastNamed : 0);
}
