// What is worth telling of a week that changed.

import { describe, expect, it } from 'vitest';
import type { SheetLine, SheetSession, SheetWeek, WeekChange } from '../../../src/diff/types.ts';
import { diffSessions } from '../../../src/diff/diff-sheets.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { pointsOf } from '../../../src/report/diff-points.ts';
import { parseIsoDate } from '../../../src/util/days.ts';

const day = (iso: string): number => parseIsoDate(iso) ?? Number.NaN;

const line = (exercise: string): SheetLine => ({
  part: 'jumps',
  exercise,
  occurrence: 0,
  order: 1,
  sets: 3,
  reps: 5,
  contacts: 15,
  restSeconds: 90,
});

const session = (iso: string, ...exercises: readonly string[]): SheetSession => ({
  day: day(iso),
  slot: 'any',
  place: 'hall',
  contacts: exercises.length * 15,
  smallestPlateGrams: 1250,
  lines: exercises.map(line),
});

const week = (...sessions: readonly SheetSession[]): SheetWeek => ({
  starts: day('2027-01-04'),
  phase: 'strength',
  kind: 'load',
  contacts: sessions.reduce((sum, { contacts }) => sum + contacts, 0),
  written: false,
  done: false,
  sessions,
});

const change = (before: SheetWeek, after: SheetWeek): WeekChange => ({
  starts: before.starts,
  before,
  after,
  sessions: diffSessions(before.sessions, after.sessions),
});

const told = (before: SheetWeek, after: SheetWeek): readonly string[] =>
  pointsOf(change(before, after), { exercises: BUILT_IN, units: 'metric' }).map(
    (point) => `${point.kind} ${point.subject}: ${point.before} > ${point.after}`,
  );

describe('a week that changed', () => {
  const [pogo, tuck] = ['pogo', 'tuck-jump'];
  const plain = week(session('2027-01-05', 'snap-down', pogo, tuck), session('2027-01-07', 'snap-down'));

  it('tells an exercise that stands on another day as moved', () => {
    const moved = week(session('2027-01-05', 'snap-down', tuck), session('2027-01-07', 'snap-down', pogo));
    expect(told(plain, moved)).toContain('move Pogo: Tue 5 Jan > Thu 7 Jan');
    expect(told(moved, plain)).toContain('move Pogo: Thu 7 Jan > Tue 5 Jan');
    expect(told(plain, moved).filter((one) => one.startsWith('drill'))).toEqual([]);
  });

  it('tells each move once, and what only went or came as that', () => {
    const both = week(session('2027-01-05', 'snap-down'), session('2027-01-07', 'snap-down', pogo, tuck));
    expect(told(plain, both).filter((one) => one.startsWith('move'))).toEqual([
      'move Pogo: Tue 5 Jan > Thu 7 Jan',
      'move Tuck jump: Tue 5 Jan > Thu 7 Jan',
    ]);
    const less = week(session('2027-01-05', 'snap-down', tuck), session('2027-01-07', 'snap-down'));
    expect(told(plain, less)).toEqual(['contacts : 60 > 45', 'drill : Pogo > none']);
  });

  it('tells two exercises that changed places as moved, not as one for the other and back', () => {
    const before = week(session('2027-01-05', 'snap-down', pogo), session('2027-01-07', 'snap-down', tuck));
    const after = week(session('2027-01-05', 'snap-down', tuck), session('2027-01-07', 'snap-down', pogo));
    expect(told(before, after)).toEqual(['move Pogo: Tue 5 Jan > Thu 7 Jan', 'move Tuck jump: Thu 7 Jan > Tue 5 Jan']);
    const same = week(session('2027-01-05', 'snap-down', tuck), session('2027-01-07', 'snap-down', tuck));
    expect(told(before, same)).toEqual(['drill : Pogo > Tuck jump']);
  });

  it('has no sessions any more when it is over, which is nothing to tell', () => {
    expect(told(plain, { ...plain, done: true, sessions: [] })).toEqual([]);
    expect(told(plain, { ...plain, contacts: 30, done: true, sessions: [] })).toEqual(['contacts : 60 > 30']);
  });
});

describe('a line that is done in another manner', () => {
  const squat: SheetLine = { ...line('back-squat'), part: 'lifts', contacts: 0, reserve: 3, restSeconds: 180 };
  const weekOf = (one: SheetLine): SheetWeek => week({ ...session('2027-01-05'), lines: [one] });
  const changed = (change: Partial<SheetLine>, of = squat): readonly string[] =>
    told(weekOf(of), weekOf({ ...of, ...change }));

  it.each<readonly [Partial<SheetLine>, string]>([
    [{ reserve: 1 }, 'lift Back squat: 3 in reserve > 1 in reserve'],
    [{ restSeconds: 60 }, 'lift Back squat: rest 3 min > rest 60 s'],
    [{ tempo: '5-0-1' }, 'lift Back squat: no tempo > tempo 5-0-1'],
    [{ note: 'cluster' }, 'lift Back squat: no note > note: cluster'],
    [{ paired: true }, 'lift Back squat: by itself > in a pair'],
  ])('is told: %j', (change, words) => {
    expect(changed(change)).toEqual([words]);
  });

  it('is told of a drill as well, and of a share where no load says it', () => {
    expect(changed({ restSeconds: 180 }, line('pogo'))).toEqual(['drill Pogo: rest 90 s > rest 3 min']);
    const { reserve: _, ...byShare } = { ...squat, percent: 70 };
    expect(changed({ percent: 80 }, byShare)).toEqual(['lift Back squat: 70 % > 80 %']);
    const loaded = { ...byShare, loadGrams: 70_000 };
    expect(changed({ percent: 80, loadGrams: 80_000 }, loaded)).toEqual(['load Back squat: 70 kg > 80 kg']);
  });
});
