// The chain behind a week on a terminal: what it is and why in one line, the steps, the bounds from the lowest, what would
// change it, and the sessions.

import { dateWithYear, dayWords, timeWords } from '../../report/calendar-words.ts';
import type { Advice } from '../../report/why/advice.ts';
import type { BoundTold } from '../../report/why/bounds-told.ts';
import type { LineTold, SessionTold } from '../../report/why/sessions-told.ts';
import type { Told } from '../../report/why/told.ts';
import type { Why } from '../../report/why.ts';
import type { Canvas } from './canvas.ts';
import { hanging } from './layout.ts';
import { counted } from '../../util/counted.ts';

const INSET = '  ';
const LABEL = 10;

/** The lines of the page, outermost first: the week, its steps, its bounds, what would change it, its sessions. */
export function renderWhy(why: Why, canvas: Canvas): readonly string[] {
  const { palette, width } = canvas;
  return [
    palette.strong(`${why.name}, week ${why.week}, from ${dateWithYear(why.starts)}`),
    ...hanging('', `${counted(why.contacts, 'contact')}: ${why.why}`, width),
    ...(why.blocked
      ? hanging('', 'An error keeps this week from being written: footfall check says which.', width)
      : []),
    ...why.chain.flatMap((step) => toldLines(step, step.about, canvas)),
    ...(why.bounds.length === 0 ? [] : heading('bounds, contacts a week', canvas)),
    ...why.bounds.flatMap((bound) => boundLines(bound, canvas)),
    ...heading('what would change it', canvas),
    ...why.advice.flatMap((advice) => adviceLines(advice, canvas)),
    ...heading('sessions', canvas),
    ...(why.sessions.length === 0 ? [`${INSET}none`] : why.sessions.flatMap((one) => sessionLines(one, canvas))),
  ];
}

const heading = (title: string, { palette }: Canvas): readonly string[] => ['', palette.quiet(title)];

/** Words with what they stand on: `(C, weekly-rise; season.yaml:58)`. */
function withGround({ words, mark, rule, places }: Pick<Told, 'words' | 'places' | 'mark' | 'rule'>): string {
  const known = [...(mark === undefined ? [] : [mark]), ...(rule === undefined ? [] : [rule])].join(', ');
  const ground = [...(known === '' ? [] : [known]), ...places].join('; ');
  return ground === '' ? words : `${words} (${ground})`;
}

function toldLines(told: Told, label: string, { palette, width }: Canvas): readonly string[] {
  return hanging(`${INSET}${label.padEnd(LABEL)}`, withGround(told), width, palette.quiet);
}

function boundLines(bound: BoundTold, { palette, width }: Canvas): readonly string[] {
  const words = `${bound.held ? 'held: ' : ''}${withGround(bound)}`;
  return hanging(
    `${INSET}${String(bound.most).padStart(LABEL - 2)}  `,
    words,
    width,
    bound.held ? palette.accent : palette.quiet,
  );
}

function adviceLines({ words, places, adds, contacts }: Advice, { palette, width }: Canvas): readonly string[] {
  const then = contacts === undefined ? '' : `: then ${contacts}`;
  return [
    ...hanging(`${INSET}- `, `${withGround({ words, places })}${then}`, width),
    ...adds.flatMap(({ list, item }) => [palette.accent(`${INSET}    ${list}: [${item}]`)]),
  ];
}

function sessionLines(session: SessionTold, canvas: Canvas): readonly string[] {
  const { day, at, place, minutes, contacts, lifts, reasons, lines } = session;
  const what = [...(contacts > 0 ? [`${contacts} contacts`] : []), ...(lifts ? ['lifts'] : [])].join(' and ');
  const head = `${INSET}${dayWords(day)}${at === undefined ? '' : ` ${timeWords(at)}`}, ${place}: ${what}, ${minutes} min`;
  return [
    head,
    ...reasons.flatMap((reason) => hanging(`${INSET}${INSET}`, withGround(reason), canvas.width)),
    ...lines.flatMap((line) => lineLines(line, canvas)),
  ];
}

function lineLines(
  { order, name, dose, load, contacts, reasons }: LineTold,
  { palette, width }: Canvas,
): readonly string[] {
  const facts = [dose, ...(load === undefined ? [] : [load]), ...(contacts > 0 ? [`${contacts} contacts`] : [])];
  return [
    ...hanging(`${INSET}${INSET}${order}. `, `${name} ${facts.join(', ')}`, width, palette.accent),
    ...reasons.flatMap((reason) => hanging(`${INSET}${INSET}${INSET} `, withGround(reason), width)),
  ];
}
