// Where several share a page: two doses that look alike but for the rest, two people of one name, the two lines of a pair,
// and what a coach has written beside a line.

import { describe, expect, test } from 'vitest';
import type { BuiltLine } from '../../../src/build/types.ts';
import { createBoards } from '../../../src/report/board.ts';
import { createCards } from '../../../src/report/card.ts';
import { lineTimes } from '../../../src/report/line-times.ts';
import { createSheets } from '../../../src/report/session-sheet.ts';
import type { Dose, SessionSheet } from '../../../src/report/session-sheet.ts';
import { EVERYTHING } from '../../../src/report/selection.ts';
import { renderSheet } from '../../../src/render/terminal/session-sheet.ts';
import { createPalette } from '../../../src/render/palette.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { athlete, builtAthlete, day, HERE, line, madeBuild, session, week } from './made-build.ts';

interface Person {
  readonly id: string;
  readonly name: string;
  readonly lines: readonly BuiltLine[];
}

const buildOf = (...people: readonly Person[]) =>
  madeBuild(
    people.map(({ lines, ...who }) =>
      builtAthlete([week(1, [session('2027-01-05', lines)])], { athlete: athlete('intermediate', 50, who) }),
    ),
  );

function sheetOf(...people: readonly Person[]): SessionSheet {
  const build = buildOf(...people);
  const sheets = createSheets(build, EVERYTHING);
  for (const built of build.athletes) sheets.add(built);
  const [sheet] = sheets.finish();
  if (sheet === undefined) throw new Error('nobody trains');
  return sheet;
}

const dosesOf = (sheet: SessionSheet): readonly Dose[] => sheet.exercises.flatMap(({ doses }) => doses);

describe('a session to read out', () => {
  test('keeps apart who rests longer, though the sets are the same', () => {
    const sheet = sheetOf(
      { id: 'a', name: 'Ann', lines: [line('tuck-jump', { restSeconds: 60 })] },
      { id: 'b', name: 'Bo', lines: [line('tuck-jump', { restSeconds: 180 })] },
    );
    expect(dosesOf(sheet)).toEqual([
      { words: '3 x 5', rest: '60 s', people: [{ name: 'Ann', load: '' }] },
      { words: '3 x 5', rest: '3 min', people: [{ name: 'Bo', load: '' }] },
    ]);
  });

  test('says who does something apart from the group', () => {
    const sheet = sheetOf({ id: 'a', name: 'Ann', lines: [line('tuck-jump', { own: true })] });
    expect(dosesOf(sheet)[0]?.words).toBe('3 x 5, apart from the group');
  });

  test('calls two of one name by their ids as well', () => {
    const sheet = sheetOf(
      { id: 'a', name: 'Ann', lines: [line('tuck-jump')] },
      { id: 'b', name: 'ann ', lines: [line('tuck-jump', { sets: 5 })] },
    );
    expect(dosesOf(sheet).map(({ people }) => people[0]?.name)).toEqual(['Ann (a)', 'ann  (b)']);
    expect(sheet.people).toEqual(['Ann (a)', 'ann  (b)']);
  });

  test('doesn’t call one who has a dose twice everybody', () => {
    const sheet = sheetOf(
      { id: 'a', name: 'Ann', lines: [line('tuck-jump'), line('tuck-jump')] },
      { id: 'b', name: 'Bo', lines: [line('line-hop')] },
    );
    const text = renderSheet(sheet, { palette: createPalette(0), width: 100 }).join('\n');
    expect(text).toContain('3 x 5  rest 90 s  Ann, Ann');
    expect(text).not.toContain('everybody');
  });
});

test('a session to read out says who is held back, and how, and not why', () => {
  const range = { from: day('2027-01-01'), until: day('2027-01-20') };
  const limits = [
    { range, avoid: [{ kind: 'drops' as const }], contactsASession: 40, because: 'physio: meniscus', span: HERE },
    { range: { from: day('2027-02-01'), until: day('2027-02-20') }, avoid: [], because: 'later', span: HERE },
  ];
  const returning = [{ stage: 2, of: 4, since: day('2027-01-01'), signed: 'physio', span: HERE }];
  const people = [
    athlete('intermediate', 50, { id: 'a', name: 'Ann', limits }),
    athlete('intermediate', 50, { id: 'b', name: 'Bo', returning }),
    athlete('intermediate', 50, { id: 'c', name: 'Cy' }),
  ].map((one) => builtAthlete([week(1, [session('2027-01-05', [line('tuck-jump')])])], { athlete: one }));
  const sheets = createSheets(madeBuild(people), EVERYTHING);
  for (const one of people) sheets.add(one);
  const [sheet] = sheets.finish();
  if (sheet === undefined) throw new Error('nobody trains');
  expect(sheet.watch).toEqual([
    'Ann: no drops from a box, at most 40 jumps a session, until 20 Jan',
    'Bo: nothing harder than what is written',
  ]);
  const text = renderSheet(sheet, { palette: createPalette(0), width: 100 });
  expect(text).toContain('  watch: Bo: nothing harder than what is written');
  expect(text.join(' ')).not.toContain('meniscus');
});

describe('a pair', () => {
  const pair = (note?: string): readonly BuiltLine[] => [
    line('back-squat', { pairedWith: 2, restSeconds: 240 }),
    line('countermovement-jump', { pairedWith: 1, reps: 3, ...(note !== undefined && { note }) }),
  ];
  const ann = (lines: readonly BuiltLine[]): Person => ({ id: 'a', name: 'Ann', lines });

  test('has its rest between the heavy set and the jumps, on sheet, card and board', () => {
    expect(dosesOf(sheetOf(ann(pair()))).map(({ words }) => words)).toEqual([
      '3 x 3, after each set of back squat and its rest',
      '3 x 5, then counter-movement jump, after the rest',
    ]);
    const build = buildOf(ann(pair()));
    const [built] = build.athletes;
    if (built === undefined) throw new Error('nobody trains');
    const [card] = createCards(build, EVERYTHING)(built);
    expect(card?.sessions[0]?.lines.map(({ notes }) => notes)).toEqual([
      ['then 2, after the rest'],
      ['after each set of 1 and its rest'],
    ]);
    const boards = createBoards(build, EVERYTHING);
    boards.add(built);
    const [board] = boards.finish();
    const differs = board?.rows.flatMap(({ cells }) =>
      cells.flatMap(({ exercises }) => exercises.flatMap(({ doses }) => doses.map((dose) => dose.differs))),
    );
    expect(differs).toEqual([
      ['after each set of back squat and its rest'],
      ['then counter-movement jump, after the rest'],
    ]);
  });

  test('that a note calls a cluster has its jumps inside the set', () => {
    expect(dosesOf(sheetOf(ann(pair('Cluster')))).map(({ words }) => words)).toEqual([
      '3 x 3, inside each set of back squat, Cluster',
      '3 x 5, with counter-movement jump inside each set',
    ]);
  });

  test('takes the rests of its first line on the clock of a board', () => {
    const [first, second] = lineTimes(BUILT_IN, session('2027-01-05', pair(), { minutes: 30 }));
    const length = (time: { from: number; until: number } | undefined): number =>
      (time?.until ?? 0) - (time?.from ?? 0);
    expect(length(first)).toBeGreaterThan(4 * length(second));
  });
});

test('a coach’s note and tempo stand on the board too, and keep doses apart', () => {
  const build = buildOf(
    { id: 'a', name: 'Ann', lines: [line('tuck-jump', { note: 'barefoot', tempo: '2-0-1' })] },
    { id: 'b', name: 'Bo', lines: [line('tuck-jump')] },
  );
  const boards = createBoards(build, EVERYTHING);
  for (const built of build.athletes) boards.add(built);
  const [board] = boards.finish();
  expect(board?.rows[0]?.cells[0]?.exercises[0]?.doses).toEqual([
    { dose: '3 × 5', differs: ['tempo 2-0-1', 'barefoot'], who: [{ who: 'these', names: ['Ann'] }] },
    { dose: '3 × 5', differs: [], who: [{ who: 'these', names: ['Bo'] }] },
  ]);
});

test('a drill of a week that is not written is still new on the next board', () => {
  const weeks = [
    week(1, [session('2027-01-05', [line('line-hop')])]),
    week(2, [session('2027-01-12', [line('tuck-jump')])]),
    week(3, [session('2027-01-19', [line('tuck-jump')])]),
  ];
  const watch = (blocked: readonly number[]): readonly string[] | undefined => {
    const built = builtAthlete(weeks, {
      blocked: new Set(blocked),
      athlete: athlete('intermediate', 50, { name: 'Ann' }),
    });
    const boards = createBoards(madeBuild([built]), EVERYTHING);
    boards.add(built);
    return [...boards.finish()].at(-1)?.watch;
  };
  expect(watch([])).toEqual([]);
  expect(watch([2])).toEqual(['first time, tuck jump: Ann']);
});
