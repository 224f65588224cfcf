// Sessions to read out, on a terminal: exercise by exercise, the dose first and then who does it.

import { longDayWords, timeWords } from '../../report/calendar-words.ts';
import type { Dose, DosePerson, SessionSheet, SheetExercise } from '../../report/session-sheet.ts';
import { displayWidth } from '../../util/display-width.ts';
import type { Canvas } from './canvas.ts';
import { hanging, pad } from './layout.ts';
import { counted } from '../../util/counted.ts';

const INSET = '  ';
const DOSE_INSET = '     ';

/** The lines of one session, in the order in which it is done. */
export function renderSheet(sheet: SessionSheet, canvas: Canvas): readonly string[] {
  const { palette, width } = canvas;
  return [
    palette.strong(titleOf(sheet)),
    ...hanging('', factsOf(sheet), width),
    ...sheet.exercises.flatMap((exercise, index) => [
      ...(exercise.part === sheet.exercises[index - 1]?.part ? [] : [palette.accent(`${INSET}${exercise.part}`)]),
      ...exerciseLines(exercise, sheet, canvas),
    ]),
    ...sheet.watch.flatMap((words) => hanging(`${INSET}watch: `, words, width)),
    ...(sheet.shortOnTime.length === 0
      ? []
      : hanging(`${INSET}short on time: `, `leave out ${sheet.shortOnTime.join(', then ')}`, width)),
  ];
}

function titleOf({ day, place, at }: SessionSheet): string {
  return `${longDayWords(day)}${at === undefined ? '' : `, ${timeWords(at)}`}, ${place}`;
}

function factsOf(sheet: SessionSheet): string {
  const { least, most } = sheet.contacts;
  const contacts = least === most ? counted(most, 'contact') : `${least} to ${most} contacts`;
  return [
    `week ${sheet.week}`,
    sheet.phases.join(' and '),
    most === 0 ? 'no jumps' : contacts,
    `${sheet.minutes} of ${sheet.slotMinutes} min`,
    sheet.people.length === 1 ? sheet.people.join('') : counted(sheet.people.length, 'athlete'),
  ].join(' · ');
}

function exerciseLines(exercise: SheetExercise, sheet: SessionSheet, canvas: Canvas): readonly string[] {
  const { palette, width } = canvas;
  const doseWidth = exercise.doses.reduce((widest, { words }) => Math.max(widest, displayWidth(words)), 0);
  return [
    `${INSET}${INSET}${palette.strong(exercise.name)}`,
    ...exercise.doses.flatMap((dose) => doseLines(dose, doseWidth, sheet, width)),
    ...(exercise.cue === '' ? [] : hanging(DOSE_INSET, exercise.cue, width).map((line) => palette.quiet(line))),
    ...(exercise.stop === ''
      ? []
      : hanging(`${DOSE_INSET}stop: `, exercise.stop, width).map((line) => palette.quiet(line))),
  ];
}

function doseLines(
  { words, rest, people }: Dose,
  doseWidth: number,
  sheet: SessionSheet,
  width: number,
): readonly string[] {
  const before = `${DOSE_INSET}${pad(words, doseWidth, 'left')}  rest ${rest}  `;
  return displayWidth(before) > width / 2
    ? [before.trimEnd(), ...hanging(`${DOSE_INSET}${INSET}`, peopleWords(people, sheet), width)]
    : hanging(before, peopleWords(people, sheet), width).map((line) => line.trimEnd());
}

/** One athlete's own sheet names nobody; a squad's doesn't name everybody. */
function peopleWords(people: readonly DosePerson[], sheet: SessionSheet): string {
  if (sheet.people.length === 1) return people.map(({ load }) => load).join('; ');
  const loaded = people.some(({ load }) => load !== '');
  // Who has the same dose twice in a session stands there twice.
  if (!loaded && new Set(people.map(({ name }) => name)).size === sheet.people.length) return 'everybody';
  return people.map(({ name, load }) => `${name} ${load}`.trimEnd()).join(loaded ? '; ' : ', ');
}
