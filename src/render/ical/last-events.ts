// What the last calendar file said of its events: when each began and its sequence number. Read from a file that footfall
// wrote itself, so no more of iCalendar is understood than is written there.

export interface LastEvent {
  /** As written behind the colon of DTSTART. */
  readonly start: string;
  readonly sequence: number;
}

export type LastEvents = ReadonlyMap<string, LastEvent>;

export const NO_LAST_EVENTS: LastEvents = new Map();

const PROPERTY = /^(UID|DTSTART|SEQUENCE)(?:;[^:]*)?:(.*)$/u;

/** The events of a file by their identity. */
export function readLastEvents(text: string): LastEvents {
  const events = new Map<string, LastEvent>();
  for (const block of text
    .replaceAll(/\r?\n[ \t]/gu, '')
    .split('BEGIN:VEVENT')
    .slice(1)) {
    const values = new Map<string, string>();
    for (const line of block.split(/\r?\n/u)) {
      const match = PROPERTY.exec(line);
      if (match?.[1] !== undefined && match[2] !== undefined) values.set(match[1], match[2]);
    }
    const uid = values.get('UID');
    const start = values.get('DTSTART');
    if (uid !== undefined && start !== undefined) {
      events.set(uid, { start, sequence: Number(values.get('SEQUENCE') ?? 0) || 0 });
    }
  }
  return events;
}

/** One more than the last where the event has moved, the same where it hasn't, none for a new one. */
export function sequenceOf(last: LastEvents, uid: string, start: string): number {
  const before = last.get(uid);
  if (before === undefined) return 0;
  return before.start === start ? before.sequence : before.sequence + 1;
}
