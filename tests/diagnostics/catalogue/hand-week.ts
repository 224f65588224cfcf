// A week of sessions written by hand that nothing is reported of, for examples that are a line or a day of one.

import type { Sections } from './base-plan.ts';

export const indented = (text: string, by: number): string => text.replaceAll(/^(?=.)/gmu, ' '.repeat(by));

const LINES = `- { drill: countermovement-jump-series, sets: 3, reps: 5 }
- { drill: standing-long-jump, sets: 4, reps: 5 }
- { drill: lateral-bound, sets: 3, reps: 5 }
- { drill: hurdle-hop, sets: 5, reps: 5 }
- { lift: dumbbell-row, sets: 2, reps: 6 }`;

/** One athlete, whose season has a week written by hand. */
export const handSeason: Sections = {
  season: 'season: { title: Spring, starts: 2027-01-04, ends: 2027-05-02 }',
  slots: `slots:
  - { day: tuesday, minutes: 75, place: hall }
  - { day: thursday, minutes: 75, place: hall }
  - { day: monday, minutes: 45, place: hall, use: lifts }`,
  competitions: '',
  athletes: 'athletes:\n  mira: { squad: seniors, mass: 68 kg }',
  use: 'use: [{ programme: block, from: 2027-03-01 }]',
};

const daysText = (days: readonly string[]): Sections => ({
  programmes: `programmes:\n  block:\n    - week: 1\n${days.map((day) => indented(day, 6)).join('\n')}`,
});

/** The week with one more line on thursday, where room is behind it, or at the end of each session. */
export const weekWithLine = (line: string, days: readonly string[] = ['thursday']): Sections =>
  daysText(
    ['tuesday', 'thursday'].map(
      (day) => `${day}:\n${indented(days.includes(day) ? `${LINES}\n- ${line}` : LINES, 2)}`,
    ),
  );

/** The week with other days, and a lift on monday. */
export const weekOfDays = (days: string): Sections =>
  daysText(days.includes('monday:') ? [days] : ['monday: [{ lift: dumbbell-row, sets: 2, reps: 6 }]', days]);
