import { describe, expect, test } from 'vitest';
import type { BuiltAthlete } from '../../../../src/build/types.ts';
import { createPalette } from '../../../../src/render/palette.ts';
import { renderAthlete } from '../../../../src/render/terminal/athlete-page.ts';
import { renderGlance } from '../../../../src/render/terminal/glance.ts';
import { renderSheet } from '../../../../src/render/terminal/session-sheet.ts';
import { reportAthlete } from '../../../../src/report/athlete-page.ts';
import { createGlance } from '../../../../src/report/glance.ts';
import { EVERYTHING } from '../../../../src/report/selection.ts';
import { createSheets } from '../../../../src/report/session-sheet.ts';
import type { Plan } from '../../../../src/plan/types.ts';
import { athlete, builtAthlete, day, HERE, line, madeBuild, madePlan, session, week } from '../../report/made-build.ts';

const canvas = { palette: createPalette(0), width: 100 };
const everybody = { kind: 'everybody' } as const;

const jumps = (contacts: number) => line('pogo', { contacts, sets: contacts / 5, reps: 5 });

function person(id: string, contacts: readonly number[], change: Partial<BuiltAthlete['athlete']> = {}): BuiltAthlete {
  const weeks = contacts.map((count, index) =>
    week(index + 1, count === 0 ? [] : [session(`2027-01-${String(5 + 7 * index).padStart(2, '0')}`, [jumps(count)])]),
  );
  return builtAthlete(weeks, { athlete: athlete('intermediate', 50, { id, name: id.toUpperCase(), ...change }) });
}

function glance(athletes: readonly BuiltAthlete[], plan: Plan = madePlan()): readonly string[] {
  const maker = createGlance(madeBuild(athletes, plan), EVERYTHING);
  for (const one of athletes) maker.add(one);
  return renderGlance(maker.finish(), canvas);
}

describe('the season at a glance', () => {
  test('has everybody under the weeks, with marks for the kinds of week', () => {
    const ada = person('ada', [100, 110, 60, 0]);
    const marked = ada.weeks.map((one) => (one.week === 3 ? { ...one, kind: 'deload' as const } : one));
    const lines = glance([{ ...ada, weeks: marked }, person('bea', [20, 20, 20, 20])]);
    expect(lines.slice(2, 9)).toEqual([
      '            Jan',
      'Monday        4   11   18   25',
      'week          1    2    3    4',
      '',
      'athletes    |strength ---------',
      'ADA         100  110   60-   .',
      'BEA          20   20   20   20',
    ]);
    expect(lines.at(-1)).toBe('Numbers are planned jump contacts a week;  - easy week.');
  });

  test('shows the competitions of all once, those of some with those', () => {
    const game = (
      name: string,
      date: string,
      who: Plan['competitions'][number]['who'],
      prepare: 'peak' | 'through',
    ) => ({
      name,
      range: { from: day(date), until: day(date) },
      prepare,
      jumps: 0,
      who,
      span: HERE,
    });
    const juniors = { kind: 'some', squads: ['juniors'], athletes: [] } as const;
    const plan = madePlan({
      competitions: [game('Cup', '2027-01-16', juniors, 'through'), game('Final', '2027-01-30', everybody, 'peak')],
    });
    const lines = glance(
      [person('ada', [50, 50, 50, 50], { squad: 'juniors' }), person('bea', [50, 50, 50, 50], { squad: 'seniors' })],
      plan,
    );
    expect(lines.slice(5)).toEqual([
      'peak                         sat',
      '',
      'juniors       |strength ---------',
      'competitions       sat',
      'ADA            50   50   50   50',
      '',
      'seniors       |strength ---------',
      'BEA            50   50   50   50',
      '',
      'Peaks: Final, Sat 30 Jan',
      'Numbers are planned jump contacts a week.',
    ]);
  });

  test('leaves out a week with an error, and says so', () => {
    const lines = glance([{ ...person('ada', [50, 50, 50, 50]), blocked: new Set([2]) }]);
    expect(lines).toContain('ADA          50   !!   50   50');
    expect(lines.join(' ')).toContain('!! left out: an error stands in the way');
  });

  test('of a big squad has a line for each level: its middle athlete', () => {
    const many = Array.from({ length: 41 }, (_, index) => person(`a${index}`, [5 * index, 50, 50, 50]));
    expect(glance(many)).toContain('intermediate (41)  100   50   50   50');
  });

  test('of a big squad takes nobody’s week that an error keeps from being written', () => {
    const barred = Array.from({ length: 30 }, (_, index) => ({ ...person(`x${index}`, [300]), blocked: new Set([1]) }));
    const written = Array.from({ length: 20 }, (_, index) => person(`w${index}`, [80]));
    const lines = glance([...barred, ...written]);
    expect(lines.find((one) => one.startsWith('intermediate (50)'))).toMatch(/ 80$/u);
    const nobody = glance([
      ...barred,
      ...barred.map((one) => ({ ...one, athlete: { ...one.athlete, id: `${one.athlete.id}y` } })),
    ]);
    expect(nobody.find((one) => one.startsWith('intermediate (60)'))).toMatch(/!!$/u);
  });

  test('puts together who is in the same phases, weeks apart in which one can’t train', () => {
    const ada = person('ada', [50, 50, 50, 50]);
    const bea = person('bea', [50, 0, 50, 50]);
    const away = bea.weeks.map((one) => (one.week === 2 ? { ...one, phase: 'closed' as const } : one));
    const other = person('cleo', [50, 50, 50, 50]);
    const power = other.weeks.map((one) => ({ ...one, phase: 'power' as const }));
    const lines = glance([{ ...bea, weeks: away }, ada, { ...other, weeks: power }]);
    expect(lines.filter((text) => text.startsWith('athletes'))).toEqual([
      'athletes    |strength ---------',
      'athletes    |power ------------',
    ]);
  });

  test('is cut into bands where the window is narrow', () => {
    const maker = createGlance(madeBuild([person('ada', [50, 60, 70, 80])]), EVERYTHING);
    maker.add(person('ada', [50, 60, 70, 80]));
    const lines = renderGlance(maker.finish(), { ...canvas, width: 22 });
    expect(lines.filter((text) => text.startsWith('ADA'))).toEqual(['ADA          50   60', 'ADA          70   80']);
  });
});

describe("an athlete's page", () => {
  const page = (built: BuiltAthlete, width = 120): readonly string[] =>
    renderAthlete(reportAthlete(madePlan(), built, EVERYTHING), { ...canvas, width });

  test('gives each week its reason, with the line of the plan behind it', () => {
    const [first, second] = person('ada', [100, 60]).weeks;
    if (first === undefined || second === undefined) throw new Error('two weeks');
    const pinned = {
      ...second,
      boundBy: 'pin' as const,
      reasons: [{ about: 'contacts', by: 'pin', params: {}, spans: [{ file: 'season.yaml', start: 13, end: 14 }] }],
    };
    const lines = page(builtAthlete([{ ...first, boundBy: 'weekly-rise' }, pinned]));
    expect(lines.slice(2, 5)).toEqual([
      'week  from    phase     kind   jump+lift  contacts  most  other  why',
      '   1  4 Jan   strength  build  1 + 0           100   120     60  as far as 100 may rise',
      "   2  11 Jan  strength  build  1 + 0            60    80     60  the coach's own number, season.yaml:2",
    ]);
  });

  test('on a narrow window puts the reason below', () => {
    expect(page(person('ada', [100]), 70).slice(2, 5)).toEqual([
      'week  from   phase     kind   jump+lift  contacts  most  other',
      '   1  4 Jan  strength  build  1 + 0           100   120     60',
      "      the phase's target",
    ]);
  });

  test('says which weeks are left out', () => {
    const lines = page({ ...person('ada', [100, 60, 70]), blocked: new Set([1, 3]) });
    expect(lines).toContain('Weeks 1, 3 are left out: an error stands in the way (footfall check).');
  });
});

describe('a session to read out', () => {
  const lines = (athletes: readonly BuiltAthlete[], plan = madePlan()): readonly string[] => {
    const maker = createSheets({ plan }, EVERYTHING);
    for (const one of athletes) maker.add(one);
    return maker.finish().flatMap((sheet) => renderSheet(sheet, canvas));
  };
  const trains = (name: string, parts: Parameters<typeof session>[1]): BuiltAthlete =>
    builtAthlete([week(1, [session('2027-01-05', parts, { shortOnTime: [parts.length] })])], {
      athlete: athlete('intermediate', 50, { id: name, name }),
    });

  test('puts together who does the same, and gives each their kilos', () => {
    const squat = (loadGrams: number, estimated = false) =>
      line('back-squat', {
        loadGrams,
        perSideGrams: (loadGrams - 20_000) / 2,
        percent: 80,
        restSeconds: 180,
        estimated,
      });
    const text = lines([
      trains('Ada', [jumps(25), squat(72_500)]),
      trains('Bea', [jumps(25), squat(60_000, true)]),
      trains('Cleo', [jumps(15)]),
    ]);
    expect(text.slice(0, 2)).toEqual([
      'Tuesday 5 January, 18:00, hall',
      'week 1 · strength · 15 to 25 contacts · 60 of 75 min · 3 athletes',
    ]);
    expect(text).toContain('     5 x 5  rest 90 s  Ada, Bea');
    expect(text).toContain('     3 x 5  rest 90 s  Cleo');
    expect(text).toContain(
      '     3 x 5, 80 %  rest 3 min  Ada 72.5 kg (26.25 a side); Bea 60 kg (20 a side, estimated)',
    );
    expect(text.at(-1)).toBe('  short on time: leave out Back squat, then Pogo');
  });

  test('of one athlete names nobody, of all says everybody', () => {
    expect(lines([trains('Ada', [jumps(25)])])).toContain('     5 x 5  rest 90 s');
    expect(lines([trains('Ada', [jumps(25)]), trains('Bea', [jumps(25)])])).toContain(
      '     5 x 5  rest 90 s  everybody',
    );
  });

  test('is in the units of the plan', () => {
    const base = madePlan();
    const imperial = madePlan({ season: { ...base.season, units: 'imperial' } });
    const built = trains('Ada', [
      line('back-squat', { loadGrams: 92_986 }),
      line('depth-landing-30', { contacts: 15, dropCm: 30 }),
    ]);
    const text = lines([built], imperial).join('\n');
    expect(text).toContain('205 lb');
    expect(text).toContain('from 12 in');
  });
});
