import { describe, expect, test } from 'vitest';
import type { BuiltAthlete } from '../../../src/build/types.ts';
import { drawTable } from '../../../src/report/athlete-table.ts';
import { EVERYTHING } from '../../../src/report/selection.ts';
import type { Selection } from '../../../src/report/selection.ts';
import { TABLE_NAMES } from '../../../src/report/table-names.ts';
import type { TableName } from '../../../src/report/table-names.ts';
import { TABLES } from '../../../src/report/tables.ts';
import { athlete, builtAthlete, day, HERE, line, madeBuild, madePlan, session, week } from './made-build.ts';

type Cells = Readonly<Record<string, string | number | undefined>>;

function rows(name: TableName, athletes: readonly BuiltAthlete[], selection: Selection = EVERYTHING): readonly Cells[] {
  const table = drawTable(TABLES[name], madeBuild(athletes), selection);
  return [...table.rows].map((row) => {
    expect(row.length).toBe(table.columns.length);
    return Object.fromEntries(table.columns.map((column, index) => [column.name, row[index]]));
  });
}

const jumps = (contacts: number) => line('pogo', { contacts, sets: contacts / 5, reps: 5 });

const ada = builtAthlete([
  week(1, [
    session('2027-01-05', [jumps(50), line('back-squat', { loadGrams: 72_500 })]),
    session('2027-01-07', [jumps(40)]),
  ]),
  week(2, [session('2027-01-12', [jumps(55)]), session('2027-01-14', [line('back-squat')])], {
    kind: 'deload',
    boundBy: 'deload-depth',
  }),
  week(3, [session('2027-01-19', [jumps(60)])], { phase: 'power' }),
]);

describe('the columns are those that scripts read', () => {
  const header = (name: TableName): string => TABLES[name].columns.map((column) => column.name).join(',');

  test.each([
    [
      'weeks',
      'athlete,week,starts,phase,kind,sessions,contacts,most_contacts,adapted,other_jumps,lift_sessions,bound_by',
    ],
    [
      'sessions',
      'athlete,date,week,phase,kind,place,minutes,contacts,vertical,horizontal,lateral,fast,low,moderate,high,lift_sets',
    ],
    ['lines', 'athlete,date,order,part,exercise,sets,reps,contacts,load_kg,percent,reserve,drop_cm,rest_s,tempo,note'],
    ['season', 'athlete,squad,level,weeks,sessions,contacts,peak_session,first_major,phases,warnings,waivers'],
  ] as const)('%s', (name, wanted) => {
    expect(header(name)).toBe(wanted);
  });
});

describe('weeks', () => {
  test('a row has the numbers of its week', () => {
    expect(rows('weeks', [ada])[1]).toEqual({
      athlete: 'ada',
      week: 2,
      starts: '2027-01-11',
      phase: 'strength',
      kind: 'deload',
      sessions: 1,
      contacts: 55,
      most_contacts: 75,
      adapted: 110,
      other_jumps: 60,
      lift_sessions: 1,
      bound_by: 'deload-depth',
    });
  });

  test('a session of lifts alone is no jump session', () => {
    expect(rows('weeks', [ada]).map((row) => [row['sessions'], row['lift_sessions']])).toEqual([
      [2, 1],
      [1, 1],
      [1, 0],
    ]);
  });
});

describe('lines', () => {
  test('what means nothing for a line is empty', () => {
    expect(rows('lines', [ada]).slice(0, 2)).toEqual([
      {
        athlete: 'ada',
        date: '2027-01-05',
        order: 1,
        part: 'jumps',
        exercise: 'pogo',
        sets: 10,
        reps: 5,
        contacts: 50,
        load_kg: undefined,
        percent: undefined,
        reserve: undefined,
        drop_cm: undefined,
        rest_s: 90,
        tempo: undefined,
        note: undefined,
      },
      expect.objectContaining({ exercise: 'back-squat', contacts: undefined, load_kg: 72.5 }),
    ]);
  });

  test('are counted through a day of two sessions, and from 1 on every day', () => {
    const morning = session('2027-01-05', [line('back-squat'), line('plank', { part: 'trunk' })]);
    const built = builtAthlete([
      week(1, [morning, session('2027-01-05', [jumps(20)]), session('2027-01-07', [jumps(20)])]),
    ]);
    expect(rows('lines', [built]).map((row) => row['order'])).toEqual([1, 2, 3, 1]);
  });

  test('kilos have two decimals at most, rounded down', () => {
    const loads = [93_439, 1_250, 61_234, 100_000].map((loadGrams) => line('back-squat', { loadGrams }));
    const built = builtAthlete([week(1, [session('2027-01-05', loads)])]);
    expect(rows('lines', [built]).map((row) => row['load_kg'])).toEqual([93.43, 1.25, 61.23, 100]);
  });
});

describe('sessions', () => {
  test('contacts split by direction, cycle and tier', () => {
    // pogo is vertical, fast and low; a lateral bound goes sideways and up; a jump squat is a loaded jump.
    const lines = [jumps(50), line('lateral-bound', { contacts: 15 }), line('jump-squat', { contacts: 10, sets: 2 })];
    const [row] = rows('sessions', [builtAthlete([week(1, [session('2027-01-05', lines)])])]);
    const { vertical, horizontal, lateral } = row as Readonly<Record<string, number>>;
    expect((vertical ?? 0) + (horizontal ?? 0) + (lateral ?? 0)).toBe(75);
    expect(lateral).toBeGreaterThan(0);
    expect(row).toEqual(expect.objectContaining({ contacts: 75, fast: 50, low: 50, lift_sets: 2 }));
    expect(Number(row?.['low']) + Number(row?.['moderate']) + Number(row?.['high'])).toBe(75);
  });

  test('trunk work is no set of lifts', () => {
    const lines = [line('back-squat', { sets: 4 }), line('plank', { part: 'trunk', sets: 3 })];
    expect(rows('sessions', [builtAthlete([week(1, [session('2027-01-05', lines)])])])[0]).toEqual(
      expect.objectContaining({ lift_sets: 4, minutes: 60, place: 'hall', contacts: 0 }),
    );
  });

  test('a primer says so', () => {
    const built = builtAthlete([week(1, [session('2027-01-05', [jumps(20)], { kind: 'primer' })])]);
    expect(rows('sessions', [built])[0]).toEqual(
      expect.objectContaining({ kind: 'primer', week: 1, phase: 'strength' }),
    );
  });
});

describe('season', () => {
  test('sums up the weeks', () => {
    expect(rows('season', [ada])[0]).toEqual({
      athlete: 'ada',
      squad: undefined,
      level: 'intermediate',
      weeks: 3,
      sessions: 4,
      contacts: 205,
      peak_session: 60,
      first_major: undefined,
      phases: 'strength 2; power 1',
      warnings: 0,
      waivers: 0,
    });
  });

  test('counts the waivers for the athlete and names the first peak', () => {
    const range = { from: day('2027-01-11'), until: day('2027-01-17') };
    const everybody = { kind: 'everybody' } as const;
    const others = { kind: 'some', squads: [], athletes: ['bea'] } as const;
    const waiver = { rule: 'session-spacing' as const, range, because: 'camp', span: HERE };
    const planned = madePlan({
      waivers: [
        { ...waiver, who: everybody },
        { ...waiver, who: others },
      ],
      competitions: [
        { name: 'Cup', range, prepare: 'through', jumps: 0, who: everybody, span: HERE },
        {
          name: 'Final',
          range: { from: day('2027-01-30'), until: day('2027-01-31') },
          prepare: 'peak',
          jumps: 0,
          who: everybody,
          span: HERE,
        },
      ],
    });
    const table = drawTable(TABLES.season, madeBuild([ada], planned), EVERYTHING);
    const [row] = [...table.rows];
    expect(row?.slice(7)).toEqual(['2027-01-30', 'strength 2; power 1', 0, 1]);
  });
});

test('sums agree: weeks, sessions and lines tell the same contacts', () => {
  const sum = (name: TableName): number =>
    rows(name, [ada]).reduce((total, row) => total + Number(row['contacts'] ?? 0), 0);
  expect(TABLE_NAMES.map(sum)).toEqual([205, 205, 205, 205]);
});

describe('what is left out', () => {
  const bea = builtAthlete([week(1, [session('2027-01-05', [jumps(30)])])], {
    athlete: athlete('beginner', 30, { id: 'bea', name: 'Bea', squad: 'juniors' }),
  });
  const some = (squads: readonly string[], athletes: readonly string[]): Selection => ({
    who: { kind: 'some', squads, athletes },
  });

  test('a week with an error, from every table', () => {
    const blocked = { ...ada, blocked: new Set([1, 3]) };
    expect(rows('weeks', [blocked]).map((row) => row['week'])).toEqual([2]);
    expect(rows('sessions', [blocked]).map((row) => row['date'])).toEqual(['2027-01-12', '2027-01-14']);
    expect(new Set(rows('lines', [blocked]).map((row) => row['date']))).toEqual(new Set(['2027-01-12', '2027-01-14']));
    expect(rows('season', [blocked])[0]).toEqual(expect.objectContaining({ weeks: 1, contacts: 55 }));
  });

  test('athletes and squads that are not asked for', () => {
    const athletes = (selection: Selection) => rows('season', [ada, bea], selection).map((row) => row['athlete']);
    expect(athletes(EVERYTHING)).toEqual(['ada', 'bea']);
    expect(athletes(some([], ['ada']))).toEqual(['ada']);
    expect(athletes(some(['juniors'], []))).toEqual(['bea']);
    expect(athletes(some(['juniors'], ['ada']))).toEqual(['ada', 'bea']);
  });

  test('weeks and days out of range, both ends included', () => {
    const range: Selection = { ...EVERYTHING, from: day('2027-01-07'), until: day('2027-01-12') };
    expect(rows('weeks', [ada], range).map((row) => row['week'])).toEqual([1, 2]);
    expect(rows('sessions', [ada], range).map((row) => row['date'])).toEqual(['2027-01-07', '2027-01-12']);
  });
});

test('rows are made as they are asked for', () => {
  let compiled = 0;
  function* athletes(): Generator<BuiltAthlete> {
    for (;;) {
      compiled += 1;
      yield ada;
    }
  }
  const endless = { ...madeBuild([ada]), athletes: { [Symbol.iterator]: athletes } };
  const walk = drawTable(TABLES.weeks, endless, EVERYTHING).rows[Symbol.iterator]();
  for (let row = 0; row < 4; row += 1) walk.next();
  expect(compiled).toBe(2);
});
