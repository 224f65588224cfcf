// What the last calendar file said of its events: each as it was written, and its sequence number. Read from a file that
// footfall wrote itself, so no more of iCalendar is understood than is written there.

export interface LastEvent {
  /** All of it but the sequence number. */
  readonly text: string;
  readonly sequence: number;
}

export type LastEvents = ReadonlyMap<string, LastEvent>;

export const NO_LAST_EVENTS: LastEvents = new Map();

const UID = /^UID:(.*)$/mu;
const SEQUENCE = /^SEQUENCE:(\d+)\n/mu;

/** The events of a file by their identity. */
export function readLastEvents(text: string): LastEvents {
  const events = new Map<string, LastEvent>();
  const unfolded = text.replaceAll(/\r?\n[ \t]/gu, '').replaceAll('\r', '');
  for (const block of unfolded.split('BEGIN:VEVENT\n').slice(1)) {
    const [event = ''] = block.split('END:VEVENT', 1);
    const uid = UID.exec(event)?.[1];
    if (uid === undefined) continue;
    const sequence = Number(SEQUENCE.exec(event)?.[1] ?? 0);
    events.set(uid, { text: event.replace(SEQUENCE, ''), sequence });
  }
  return events;
}

/** One more than the last where the event says anything else than it did, the same where it doesn't, none for a new one. */
export function sequenceOf(last: LastEvents, fresh: LastEvents, uid: string): number {
  const before = last.get(uid);
  if (before === undefined) return 0;
  return before.text === fresh.get(uid)?.text ? before.sequence : before.sequence + 1;
}
