// What an athlete is called on a page that others may read: the name as it is written, and under 16 or of an unknown age
// the first name. Where there is none to tell or two share it, a number tells who it is: the athlete's place in the plan,
// from 1.

import { SHEETS } from '../library/sheets.ts';
import { ageOn, nameKey } from '../plan/athlete-facts.ts';
import type { Athlete, Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';

/** Names that aren't written with the first name before a space. */
const UNSPACED = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Thai}]/u;
const LETTER = /\p{L}/u;

export interface SheetNames {
  /** The name on a page about this day. */
  readonly on: (athlete: Athlete, day: Day) => string;
  /** As short as it can be told apart: the first name where nobody shares it, otherwise as `on`. */
  readonly short: (athlete: Athlete, day: Day) => string;
}

/** Names for the athletes of a plan. Whose birth is not written may be a child, and is named like one. */
export function createSheetNames({ athletes }: Pick<Plan, 'athletes'>): SheetNames {
  const numbers = new Map(athletes.map(({ id }, index) => [id, index + 1]));
  const timesGiven = new Map<string, number>();
  const timesWritten = new Map<string, number>();
  for (const { name } of athletes) {
    for (const [times, key] of [
      [timesGiven, nameKey(firstName(name))],
      [timesWritten, nameKey(name)],
    ] as const)
      times.set(key, (times.get(key) ?? 0) + 1);
  }
  const on: SheetNames['on'] = (athlete, day) => {
    const { id, name } = athlete;
    const number = String(numbers.get(id) ?? 0);
    const isGrown = (ageOn(athlete, day) ?? 0) >= SHEETS.firstNameUnderAge;
    const shown = isGrown ? name : firstName(name);
    if (shown === '') return `No. ${number}`;
    const times = isGrown ? timesWritten.get(nameKey(name)) : timesGiven.get(nameKey(shown));
    return (times ?? 0) > 1 ? `${shown} (no. ${number})` : shown;
  };
  return {
    on,
    short: (athlete, day) => {
      const first = firstName(athlete.name);
      return first === '' || (timesGiven.get(nameKey(first)) ?? 0) > 1 ? on(athlete, day) : first;
    },
  };
}

/** Of `Mira K.` and of `K., Mira` it is `Mira`; empty where it can't be told. */
function firstName(name: string): string {
  const after = name.includes(',') ? name.slice(name.indexOf(',') + 1) : name;
  const [first = ''] = after.trim().split(/\s+/u);
  return UNSPACED.test(first) || !LETTER.test(first) ? '' : first;
}
