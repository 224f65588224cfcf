// What a week's lines add up to so far: contacts by direction, cycle and tier. Each session is shared out with what the
// sessions before it left over in view. Directions are kept in hundredths of a contact, so that shares stay whole.

import type { Cycle, DirectionShares, Drill, Tier } from '../../library/types.ts';
import { isDrop, isStatic } from '../../library/drill-facts.ts';
import { LOADED_JUMP_COUNTS_AS } from '../../library/lifting.ts';

export interface Tally {
  readonly contacts: number;
  /** In hundredths of a contact. */
  readonly vertical: number;
  readonly horizontal: number;
  readonly lateral: number;
  readonly fast: number;
  readonly high: number;
  readonly drops: number;
  readonly still: number;
}

export const EMPTY_TALLY: Tally = {
  contacts: 0,
  vertical: 0,
  horizontal: 0,
  lateral: 0,
  fast: 0,
  high: 0,
  drops: 0,
  still: 0,
};

/** The tally with so many contacts of a drill; the one given stays as it is. */
export function addDrill(tally: Tally, drill: Drill, contacts: number): Tally {
  return addContacts(tally, drill, contacts, isDrop(drill), isStatic(drill));
}

/** A loaded jump counts as a vertical, slow one of the moderate tier. */
export function addLoadedJump(tally: Tally, contacts: number): Tally {
  return addContacts(tally, LOADED_JUMP_COUNTS_AS, contacts, false, false);
}

interface Counted {
  readonly direction: DirectionShares;
  readonly cycle: Cycle;
  readonly tier: Tier;
}

function addContacts(tally: Tally, counted: Counted, contacts: number, drops: boolean, still: boolean): Tally {
  return {
    contacts: tally.contacts + contacts,
    vertical: tally.vertical + counted.direction.vertical * contacts,
    horizontal: tally.horizontal + counted.direction.horizontal * contacts,
    lateral: tally.lateral + counted.direction.lateral * contacts,
    fast: tally.fast + (counted.cycle === 'fast' ? contacts : 0),
    high: tally.high + (counted.tier === 'high' ? contacts : 0),
    drops: tally.drops + (drops ? contacts : 0),
    still: tally.still + (still ? contacts : 0),
  };
}

/** The sums that a session is shared out by, as a key. The others bound what its gates let through. */
export function tallyKey(tally: Tally): string {
  const { contacts, vertical, horizontal, lateral, fast } = tally;
  return `${contacts},${vertical},${horizontal},${lateral},${fast}`;
}
