// When so many contacts a week are safe, as one JSON object. Called by `footfall reach --format json`.

import { isoDate } from '../../util/days.ts';
import type { JsonObject } from '../../report/json-value.ts';
import type { Reach, ReachWeek } from '../../report/reach.ts';

/** The document, with its end of line. */
export const renderReachJson = (reach: Reach): string => `${JSON.stringify(reachObject(reach), null, 2)}\n`;

function reachObject({ athlete, contacts, earliest, highest, inTheWay, rise }: Reach): JsonObject {
  return {
    athlete,
    contacts,
    earliest: earliest === undefined ? null : weekObject(earliest),
    highest: weekObject(highest),
    in_the_way: inTheWay.map(weekObject),
    rise: rise === undefined ? null : { percent: rise.percent, by_week: rise.byWeek },
  };
}

function weekObject({ week, starts, most, heldBy }: ReachWeek): JsonObject {
  const { about, mark, rule, places } = heldBy;
  return { week, starts: isoDate(starts), most_contacts: most, held_by: about, mark, rule, places };
}
