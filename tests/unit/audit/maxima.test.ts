// What is told of maxima: one that nothing goes by, and kilos by hand of which none is known.

import { describe, expect, it, test } from 'vitest';
import { auditAthlete } from '../../../src/audit/audit.ts';
import { BUILT_IN, extendLibrary } from '../../../src/library/index.ts';
import type { BuiltLine } from '../../../src/build/types.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import type { Athlete, LiftMax } from '../../../src/plan/types.ts';
import { expectFinding, expectSilent } from './found.ts';
import { aged, HALL, lift, makeBuild, place, START, WRITTEN } from './make-build.ts';
import type { SeasonSpec, WeekSpec } from './make-build.ts';

const UNUSED = 'audit/maximum-unused';
const UNKNOWN = 'audit/kilos-of-no-maximum';

const maxOf = (id: string, change: Partial<LiftMax> = {}): LiftMax => ({
  lift: id,
  grams: 100_000,
  estimated: false,
  on: START,
  span: place(9),
  ...change,
});

const having = (...maxima: readonly LiftMax[]): Partial<Athlete> => ({
  lifts: new Map(maxima.map((max) => [max.lift, max])),
});

const week = (...lines: readonly BuiltLine[]): WeekSpec => ({ sessions: [{ on: 1, lines }] });

function told(code: string, spec: SeasonSpec): readonly Diagnostic[] {
  const { plan, built, weeks } = makeBuild(spec);
  return auditAthlete(plan, built, weeks).diagnostics.filter((one) => one.code === code);
}

describe('a maximum that no lift of the season goes by', () => {
  const SQUATS = week(lift('back-squat', 3, 5, { percent: 70, loadGrams: 70_000 }));

  it('is a notice where it stands', () => {
    const found = told(UNUSED, { athlete: having(maxOf('back-squat'), maxOf('deadlift')), weeks: [SQUATS] });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ severity: 'notice', athlete: 'ada', span: place(9) });
    expect(found[0]?.message).toBe('ada: no session of the season has a lift that goes by the maximum of deadlift');
    expect(found[0]?.help).toContain('by this one go deadlift');
  });

  it('says so where the library has no lift for it', () => {
    const [found] = told(UNUSED, { athlete: having(maxOf('pull-up')), weeks: [week(lift('pull-up', 3, 5))] });
    expect(found?.message).toBe('ada: no lift goes by a maximum of pull-up');
  });

  test.each<{ name: string; athlete: Partial<Athlete>; weeks?: readonly WeekSpec[] }>([
    { name: 'serves another lift', athlete: having(maxOf('back-squat')), weeks: [week(lift('box-squat', 3, 5))] },
    { name: 'is that of a squad', athlete: having(maxOf('deadlift', { ofSquad: true })) },
    {
      name: 'may have been used in a week that is over',
      athlete: having(maxOf('deadlift')),
      weeks: [{ done: true }, SQUATS],
    },
    {
      name: 'is the strength that high drops ask for',
      athlete: { ...having(maxOf('front-squat')), cleared: new Set(['drops']) },
    },
  ])('but not where it $name', ({ athlete, weeks = [SQUATS] }) => {
    expect(told(UNUSED, { athlete, weeks })).toEqual([]);
  });

  it('is one that another serves in the place of', () => {
    const athlete = having(maxOf('back-squat'), maxOf('box-squat'));
    const found = told(UNUSED, { athlete, weeks: [week(lift('box-squat', 3, 5))] });
    expect(found.map(({ params }) => params['lift'])).toEqual(['back-squat']);
  });
});

describe('a maximum two steps behind a lift', () => {
  const squat = BUILT_IN.lifts.get('back-squat');
  if (squat === undefined) throw new Error('no back squat');
  const chain = [
    { ...squat, id: 'chain-squat', maxOf: 'back-squat' },
    { ...squat, id: 'pin-squat', maxOf: 'chain-squat' },
    { ...squat, id: 'low-bar', maxOf: 'high-bar' },
    { ...squat, id: 'high-bar', maxOf: 'low-bar' },
  ];
  const plan = { library: extendLibrary(BUILT_IN, [], chain) };
  const of = (exercise: string): BuiltLine => ({ ...lift('back-squat', 3, 5, { percent: 60 }), exercise });

  it('serves it not, and says so once', () => {
    const weeks = [week(of('pin-squat'), of('chain-squat')), week(of('pin-squat'))];
    const found = told('audit/maximum-too-far', { plan, athlete: having(maxOf('back-squat')), weeks });
    expect(found.map(({ message }) => message)).toEqual([
      'ada: pin-squat goes by the maximum of chain-squat, which is not known; that of back-squat does not serve it',
    ]);
    expect(found[0]).toMatchObject({ severity: 'notice', athlete: 'ada', span: place(9) });
    expect(found[0]?.help).toContain('`max-of: back-squat`');
  });

  test.each<{ name: string; maxima: readonly string[]; exercise: string }>([
    { name: 'that between is known', maxima: ['back-squat', 'chain-squat'], exercise: 'pin-squat' },
    { name: 'its own is', maxima: ['back-squat', 'pin-squat'], exercise: 'pin-squat' },
    { name: 'none of them is', maxima: ['deadlift'], exercise: 'pin-squat' },
    { name: 'they stand in a circle', maxima: ['deadlift'], exercise: 'low-bar' },
    { name: 'it goes by feel', maxima: ['back-squat'], exercise: 'goblet-squat' },
  ])('is not told where $name', ({ maxima, exercise }) => {
    const athlete = having(...maxima.map((id) => maxOf(id)));
    expect(told('audit/maximum-too-far', { plan, athlete, weeks: [week(of(exercise))] })).toEqual([]);
  });
});

describe('kilos of a lift without a maximum', () => {
  const kilos = (exercise: string): BuiltLine => lift(exercise, 3, 5, { loadGrams: 60_000, origin: WRITTEN });

  it('are a notice, once of each lift', () => {
    const found = told(UNKNOWN, { weeks: [week(kilos('deadlift')), week(kilos('deadlift'), kilos('hip-thrust'))] });
    expect(found.map(({ severity, span }) => [severity, span])).toEqual([
      ['notice', WRITTEN.span],
      ['notice', WRITTEN.span],
    ]);
    expect(found[0]?.message).toBe(
      'ada: 60 kg are written for deadlift on 2027-01-05 and 1 further day, and no maximum is known that says how heavy they are',
    );
  });

  test.each<{ name: string; athlete?: Partial<Athlete>; line: BuiltLine }>([
    { name: 'whose maximum is known', athlete: having(maxOf('deadlift')), line: kilos('deadlift') },
    { name: 'that goes by feel', line: kilos('goblet-squat') },
    { name: 'in reps with some in reserve', line: lift('deadlift', 3, 5, { reserve: 3 }) },
    { name: 'of who is too young for them, which is an error', athlete: aged(15), line: kilos('deadlift') },
  ])('but not of a lift $name', ({ athlete = {}, line }) => {
    expect(told(UNKNOWN, { athlete, weeks: [week(line)] })).toEqual([]);
  });

  // The chart has 8 reps at 80 % and 9 at 77 %: NSCA (S). From 80 % lifting is heavy.
  it('count as heavy as their reps can be', () => {
    const twoDays = (reps: number, exercise = 'deadlift'): SeasonSpec => {
      const lines = [lift(exercise, 3, reps, { loadGrams: 60_000 })];
      return {
        weeks: [
          {
            sessions: [
              { on: 1, lines },
              { on: 2, lines },
            ],
          },
        ],
      };
    };
    expectFinding('lift-spacing', twoDays(8), 1);
    expectSilent('lift-spacing', twoDays(9));
    expectSilent('lift-spacing', twoDays(8, 'bench-press'));
    expectSilent('lift-spacing', twoDays(8, 'goblet-squat'));
  });
});

describe('kilos far under the share that was asked for', () => {
  const plates = { about: 'load', by: 'plates', params: { percent: 67.5, grams: 57_370 }, spans: [] };
  const far = lift('back-squat', 3, 10, { loadGrams: 50_000, percent: 58, reasons: [plates] });
  const near = lift('back-squat', 3, 10, { loadGrams: 55_000, percent: 67.5 });

  it('are a notice, once of each lift and place, at the place', () => {
    const found = told('audit/plates-too-coarse', {
      athlete: having(maxOf('back-squat')),
      weeks: [week(near), week(far), week(far)],
    });
    expect(found).toHaveLength(1);
    expect(found[0]?.message).toBe(
      'ada: the kit of hall makes 50 kg of back-squat on 2027-01-12, where 67.5 % are 57 kg, and is as far under on 1 further day',
    );
    expect(found[0]).toMatchObject({ severity: 'notice', span: HALL.span, related: [{ span: place(9) }] });
  });
});
