// One athlete's week that is over: the sessions of its sheets beside what the record says of them. A row without contacts
// was done as written; a session without a row is not taken for done.

import type { BuiltSession } from '../../build/types.ts';
import type { DoneRow } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';

export type SessionOutcome = 'as written' | 'missed' | 'less' | 'more' | 'not recorded' | 'besides';

export interface SessionDone {
  readonly day: Day;
  readonly outcome: SessionOutcome;
  /** Contacts on the sheet; absent for what was done besides. */
  readonly planned?: number;
  /** Contacts; absent where nothing is recorded. */
  readonly done?: number;
  /** Minutes on the sheet. */
  readonly minutes?: number;
  readonly rows: readonly DoneRow[];
}

type Sheet = Pick<BuiltSession, 'day' | 'contacts' | 'minutes'>;

/** In order of day. `rows` are the athlete's of the kind session, of the same days as the sheets. */
export function sessionsDone(sheets: readonly Sheet[], rows: readonly DoneRow[]): readonly SessionDone[] {
  const days = [...new Set([...sheets, ...rows].map(({ day }) => day))].toSorted((a, b) => a - b);
  return days.map((day) =>
    onDay(
      day,
      sheets.filter((one) => one.day === day),
      rows.filter((row) => row.day === day),
    ),
  );
}

function onDay(day: Day, sheets: readonly Sheet[], rows: readonly DoneRow[]): SessionDone {
  const minutes = sheets.reduce((sum, one) => sum + one.minutes, 0);
  const planned = sheets.reduce((sum, one) => sum + one.contacts, 0);
  const facts = { day, rows, ...(sheets.length > 0 && { planned, minutes }) };
  if (rows.length === 0) return { ...facts, outcome: 'not recorded' };
  const done = rows.reduce((sum, { contacts = planned }) => sum + contacts, 0);
  return { ...facts, done, outcome: sheets.length === 0 ? 'besides' : outcomeOf(planned, done) };
}

function outcomeOf(planned: number, done: number): SessionOutcome {
  if (done === planned) return 'as written';
  if (done === 0) return 'missed';
  return done < planned ? 'less' : 'more';
}
