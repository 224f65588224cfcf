// stations: the time spent waiting for shared kit is in a session's minutes. Athletes of one squad, group, sport, level and
// clearance surely do the same line at the same time; how many others share the kit is not known here, so what is wanted is
// a floor. A minute's rounding is let pass.

import type { Kit, Slot } from '../../plan/types.ts';
import { MINUTES, STATION_PIECES } from '../../library/minutes.ts';
import type { KitId } from '../../library/types.ts';
import { isoDate } from '../../util/days.ts';
import type { LineReading } from '../line-reading.ts';
import { sessionPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import { leastSeconds, setSeconds } from '../session-minutes.ts';
import type { SessionReading } from '../session-reading.ts';
import type { SeasonReading } from '../season-reading.ts';
import { SECONDS_A_MINUTE } from '../../util/units.ts';

export const stations = auditRule('stations', (season, find) => {
  const sharingAt = readSharing(season);
  for (const session of season.sessions) {
    const { minutes, slot } = session.session;
    const sharing = sharingAt(slot);
    if (sharing < 2) continue;
    const queue = longestQueue(session, sharing);
    if (queue === undefined) continue;
    const wanted = Math.floor((leastSeconds(session) + queue.seconds) / SECONDS_A_MINUTE);
    if (minutes + 1 >= wanted) continue;
    find(season.weekOf(session), {
      params: {
        date: isoDate(session.day),
        found: minutes,
        wanted,
        sharing,
        stations: queue.stations,
        exercise: queue.exercise,
      },
      span: sessionPlace(session) ?? slot.span,
      related: [{ span: slot.place.span, message: 'the kit of the place' }],
    });
  }
});

/** How many share a slot's floor; an athlete with something in the way isn't sure to do what the others do. */
function readSharing({ athlete, index }: SeasonReading): (slot: Slot) => number {
  if (athlete.limits.length > 0 || athlete.returning.length > 0 || athlete.away.length > 0) return () => 1;
  const counts = new Map<Slot, number>();
  return (slot) => {
    const known = counts.get(slot);
    if (known !== undefined) return known;
    const count = Math.min(index.alike(slot, athlete), MINUTES.mostOnTheFloor);
    counts.set(slot, count);
    return count;
  };
}

interface Queue {
  readonly exercise: string;
  readonly stations: number;
  /** Waiting of all its sets together. */
  readonly seconds: number;
}

function longestQueue(session: SessionReading, sharing: number): Queue | undefined {
  let longest: Queue | undefined;
  for (const line of session.lines) {
    const queue = queueOf(line, session.session.slot.place.kit, sharing);
    if (queue !== undefined && queue.seconds > (longest?.seconds ?? 0)) longest = queue;
  }
  return longest;
}

/** Between two sets everybody else at the station has a turn, which the rest may cover. */
function queueOf(line: LineReading, kit: Kit, sharing: number): Queue | undefined {
  const { sets, restSeconds, own, part, exercise, pairedWith } = line.line;
  if (own || part === 'prepare' || pairedWith !== undefined) return undefined;
  const count = stationsFor((line.drill ?? line.lift)?.kit ?? [], kit);
  if (count === undefined) return undefined;
  const changeover = line.drill === undefined ? MINUTES.changeoverSeconds.lifts : MINUTES.changeoverSeconds.jumps;
  const others = Math.ceil(sharing / count) - 1;
  const wait = others * (setSeconds(line) + changeover) - restSeconds;
  return wait <= 0 ? undefined : { exercise, stations: count, seconds: wait * (sets - 1) };
}

/** Stations that the scarcest kit makes, at least one; undefined where nobody queues for any of it. */
function stationsFor(needed: readonly KitId[], kit: Kit): number | undefined {
  let fewest: number | undefined;
  for (const id of needed) {
    const pieces = STATION_PIECES.get(id);
    if (pieces === undefined) continue;
    const count = Math.max(1, Math.floor((kit.counts.get(id) ?? 0) / pieces));
    fewest = Math.min(fewest ?? count, count);
  }
  return fewest;
}
