// One athlete's week that is over: the sessions of its sheets beside what the record says of them. A row without contacts
// was done as written; a session without a row is not taken for done. A row without contacts on a day that had no sheet is
// one of the week's sessions on another day: the sheets that were out may have had it there.

import type { BuiltSession } from '../../build/types.ts';
import type { DoneRow } from '../../plan/types.ts';
import type { Day } from '../../util/days.ts';

export type SessionOutcome =
  | 'as written'
  | 'another day'
  | 'missed'
  | 'less'
  | 'more'
  | 'not recorded'
  | 'besides'
  /** Two rows for one session say different numbers. */
  | 'unclear';

export interface SessionDone {
  /** When it was done, or was to be. */
  readonly day: Day;
  /** The day of its sheet, where it was done on another. */
  readonly insteadOf?: Day;
  readonly outcome: SessionOutcome;
  /** Contacts on the sheet; absent for what was done besides. */
  readonly planned?: number;
  /** Contacts; absent where nothing is recorded. */
  readonly done?: number;
  /** Contacts that may have been done, where rows contradict one another and fewer count. */
  readonly atMost?: number;
  /** Minutes on the sheet. */
  readonly minutes?: number;
  readonly rows: readonly DoneRow[];
}

type Sheet = Pick<BuiltSession, 'day' | 'contacts' | 'minutes'>;

/** In order of day. `rows` are the athlete's of the kind session, of the same days as the sheets. */
export function sessionsDone(sheets: readonly Sheet[], rows: readonly DoneRow[]): readonly SessionDone[] {
  const from = otherDays(sheets, rows);
  const left = new Set(from.values());
  const days = [...new Set([...sheets, ...rows].map(({ day }) => day))].toSorted((a, b) => a - b);
  return days
    .filter((day) => !left.has(day))
    .map((day) => {
      const insteadOf = from.get(day);
      const found = onDay(
        day,
        sheets.filter((one) => one.day === (insteadOf ?? day)),
        rows.filter((row) => row.day === day),
      );
      return insteadOf === undefined ? found : { ...found, insteadOf, outcome: 'another day' };
    });
}

/** Days that have rows as written and no sheet, each with the day of a sheet without a row; sheets with jumps first. */
function otherDays(sheets: readonly Sheet[], rows: readonly DoneRow[]): ReadonlyMap<Day, Day> {
  const isOn = (day: Day) => (one: { readonly day: Day }) => one.day === day;
  const open = sheets
    .filter(({ day }) => !rows.some(isOn(day)))
    .toSorted((a, b) => Number(b.contacts > 0) - Number(a.contacts > 0) || a.day - b.day);
  const free = [...new Set(rows.map(({ day }) => day))].filter(
    (day) => !sheets.some(isOn(day)) && rows.filter(isOn(day)).every(({ contacts }) => contacts === undefined),
  );
  const planned = [...new Set(open.map(({ day }) => day))];
  return new Map(free.flatMap((day, index) => (planned[index] === undefined ? [] : [[day, planned[index]]])));
}

function onDay(day: Day, sheets: readonly Sheet[], rows: readonly DoneRow[]): SessionDone {
  const minutes = sheets.reduce((sum, one) => sum + one.minutes, 0);
  const planned = sheets.reduce((sum, one) => sum + one.contacts, 0);
  const facts = { day, rows, ...(sheets.length > 0 && { planned, minutes }) };
  if (rows.length === 0) return { ...facts, outcome: 'not recorded' };
  const done = rows.reduce((sum, { contacts = planned }) => sum + contacts, 0);
  const atMost = rows.reduce((sum, { contacts = planned, mayBe = { contacts } }) => sum + mayBe.contacts, 0);
  if (atMost > done) return { ...facts, done, atMost, outcome: 'unclear' };
  return { ...facts, done, outcome: sheets.length === 0 ? 'besides' : outcomeOf(planned, done) };
}

function outcomeOf(planned: number, done: number): SessionOutcome {
  if (done === planned) return 'as written';
  if (done === 0) return 'missed';
  return done < planned ? 'less' : 'more';
}
