// Words of a board that its layout measures and its page prints: in one place, as what is measured has to be what is
// printed.

import type { Board } from '../../report/board.ts';
import type { BoardExercise, BoardWho } from '../../report/board-cells.ts';
import type { BoardOwn, BoardRow } from '../../report/board-rows.ts';
import type { Cue } from '../../report/board-watch.ts';

/** Exercises named under what to leave out. */
const MOST_LEFT_OUT = 4;

/** What most of a row do between sets, and how hard. */
export const usualWords = ({ usual }: BoardRow): string => usual.join(' · ');

/** `at 24 `, before an exercise that a group comes to at another time than the row. */
export const atWords = ({ at }: BoardExercise): string => (at === undefined ? '' : `at ${at} `);

/** What stands around the names: `all but Kit`, `Mira at 55`, `the others`. */
export function aroundNames({ who, at }: BoardWho): { readonly before: string; readonly after: string } {
  const before = who === 'all-but-these' ? 'all but ' : who === 'the-others' ? 'the others' : '';
  return { before, after: at === undefined ? '' : ` at ${at}` };
}

export const OWN_ELSEWHERE = 'On their own, page 2:';

/** On the first page, where all of them stand on the next one; empty where there is nobody. */
export const ownElsewhereWords = ({ own }: Board): string =>
  own.length === 0 ? '' : `${OWN_ELSEWHERE} ${own.map(({ name }) => name).join(', ')}`;

function whoWords(who: readonly BoardWho[]): string {
  return who
    .map((one) => {
      const { before, after } = aroundNames(one);
      return `${before}${one.names.join(', ')}${after}`;
    })
    .join(' · ');
}

/** Words in strong type, and in plain type behind them. */
export interface StrongAndPlain {
  readonly strong: string;
  readonly plain: string;
}

/** An exercise of a cell with its doses. */
export function exerciseText(exercise: BoardExercise): readonly StrongAndPlain[] {
  return exercise.doses.map(({ dose, differs, who = [] }, index) => ({
    strong: index === 0 ? `${atWords(exercise)}${exercise.name} ${dose}` : `${BETWEEN_DOSES}${dose}`,
    plain: [differs.join(', '), whoWords(who)].filter((words) => words !== '').join(' '),
  }));
}

export const BETWEEN_DOSES = '; ';

/** What somebody does alone, exercise by exercise; the name stands before the first. */
export function ownText({ name, lines }: BoardOwn): readonly StrongAndPlain[] {
  return lines.map(({ at, exercise, dose, manner }, index) => ({
    strong: `${index === 0 ? `${name}: ` : ''}at ${at} ${exercise} ${dose}`,
    plain: `${manner.join(', ')} ·`,
  }));
}

/** What goes first when time is short. */
export function leaveOutWords(short: readonly string[]): string {
  if (short.length === 0) return 'do it all';
  return `leave out, in this order: ${short.slice(0, MOST_LEFT_OUT).join(', ')}`;
}

/** A drill, how it looks, and what ends a set. */
export const cueText = ({ name, cue, stop }: Cue): readonly StrongAndPlain[] => [
  { strong: name, plain: cue },
  { strong: 'Stop:', plain: stop },
];

const LEFT = /^\d+ left$/u;

/** Which board it is, and what stands on it without being explained there. */
export function boardFooterWords({ day, place, rows, own }: Board, mark: string): string {
  const manners = [
    ...rows.flatMap(({ usual, cells }) => [
      ...usual,
      ...cells.flatMap(({ exercises }) => exercises.flatMap(({ doses }) => doses.flatMap(({ differs }) => differs))),
    ]),
    ...own.flatMap(({ lines }) => lines.flatMap(({ manner }) => manner)),
  ];
  const left = manners.some((words) => LEFT.test(words)) ? ` ${LEFT_MEANS}` : '';
  return `${day}, ${place}, sheet ${mark}.${left}`;
}

/** Of a lift without a load: how many more reps would still go when a set ends. */
export const LEFT_MEANS = '“2 left” is: stop when 2 more would go.';
