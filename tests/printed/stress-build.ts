// A build as pages fear it: forty athletes with long names and names written from right to left, four sessions a week of
// twelve lines, kilos on bars and in hands; and a build with nobody in it.

import type { Build, BuiltAthlete, BuiltLine } from '../../src/build/types.ts';
import type { Athlete, Kit, TrainingPlace } from '../../src/plan/types.ts';
import { builtAthlete, athlete, day, line, madeBuild, madePlan, session, week } from '../unit/report/made-build.ts';
import { HERE, slot } from '../unit/schedule/make-plan.ts';

const KIT: Kit = {
  counts: new Map([
    ['racks', 4],
    ['bars', 6],
    ['boxes', 3],
    ['hurdles', 12],
    ['dumbbells', 10],
    ['benches', 3],
    ['pull-up-bars', 3],
    ['bands', 8],
  ]),
  boxesCm: [20, 30, 45],
  barsGrams: [15_000, 20_000],
  smallestPlateGrams: 1250,
  dumbbellsGrams: [10_000, 14_000, 18_000],
  kettlebellsGrams: [],
};

const PLACE: TrainingPlace = { id: 'weight-room-behind-the-gymnasium', kit: KIT, span: HERE };

const NAMES = [
  'Anne-Margrethe Wollstonecraft-Featherstonehaugh',
  'Mira K.',
  'נועה בן־דוד',
  'ليلى عبد الرحمن',
  'Łucja Święcicka',
  'Ngozi',
  '=cmd()',
  '<b>Bo & "Co"</b>',
  '<script>alert(1)</script>',
];
const GROUPS = ['blue', 'green', 'red', 'yellow', 'orange'];
const HEAD_COUNT = 40;
/** Grown, so that names stand in full and are as long as they can be. */
const GROWN: Pick<Athlete, 'born'> = { born: { earliest: day('1999-05-01'), latest: day('1999-05-01') } };

/** More than a line of a wall chart has room for. */
const LONG_TITLE =
  'A season of <hard> cases, with a title that takes more than the one line which a sheet of paper has for it in large type';

const LIMITED_ONE_IN = 3;
/** More than a card has room for in one line. */
const LIMITS: Athlete['limits'] = [
  {
    range: { from: day('2027-01-04'), until: day('2027-01-29') },
    avoid: [
      { kind: 'drops' },
      { kind: 'direction', id: 'lateral' },
      { kind: 'tier', id: 'high' },
      { kind: 'lift', id: 'back-squat' },
    ],
    because: 'a reason of health & <more>',
    span: HERE,
  },
  {
    range: { from: day('2027-01-07'), until: day('2027-01-13') },
    avoid: [{ kind: 'single-leg' }],
    contactsASession: 200,
    because: 'another',
    span: HERE,
  },
];

const barbell = (grams: number): Partial<BuiltLine> => ({
  sets: 4,
  loadGrams: grams,
  barGrams: 20_000,
  perSideGrams: (grams - 20_000) / 2,
  percent: 85,
  estimated: true,
  restSeconds: 180,
});

function lines(person: number): readonly BuiltLine[] {
  const held = { reserve: 3, restSeconds: 75, sets: 3 };
  return [
    line('countermovement-jump-series', { sets: 5, family: 'jump-in-place' }),
    line('single-leg-side-jump-stick', { sets: 3, family: 'side-jump' }),
    line('drop-jump-40', { sets: 3, dropCm: 40, family: 'drop' }),
    line(person % 2 === 0 ? 'hurdle-hop' : 'rebound-jump', { sets: 10, family: 'rebound' }),
    line('triple-long-jump', { sets: 2, family: 'jump-series' }),
    line('back-squat', barbell(60_000 + 2500 * (person % 12))),
    line('romanian-deadlift', barbell(50_000 + 2500 * (person % 8))),
    line('rear-foot-elevated-split-squat', { sets: 3, loadGrams: 18_000, restSeconds: 90 }),
    line('adductor-plank', { ...held, note: 'top leg on the bench, hips high all the way through' }),
    line('pull-up', held),
    line('single-leg-calf-raise', { ...held, sets: 6 }),
    line('plank', { ...held, part: 'trunk', reps: 30 }),
  ];
}

function person(index: number): BuiltAthlete {
  const weeks = [1, 2].map((number) =>
    week(
      number,
      [0, 1, 3, 5].map((offset) =>
        session(`2027-01-${String(4 + 7 * (number - 1) + offset).padStart(2, '0')}`, lines(index), {
          minutes: 88,
          slot: slot(1, { at: 18 * 60, minutes: 75, place: PLACE, span: { ...HERE, start: offset } }),
          shortOnTime: [12, 11, 10],
        }),
      ),
    ),
  );
  const name = NAMES[index % NAMES.length] ?? '';
  return builtAthlete(weeks, {
    athlete: athlete('intermediate', 80, {
      id: `athlete-${String(index + 1).padStart(2, '0')}`,
      name: index < NAMES.length ? name : `${name} ${index + 1}`,
      group: GROUPS[index % GROUPS.length] ?? '',
      limits: index % LIMITED_ONE_IN === 0 ? LIMITS : [],
      ...GROWN,
    }),
  });
}

/** People of whom pages have little to say, or who are not there: nothing planned, jumps alone, away and on the way back. */
function others(): readonly BuiltAthlete[] {
  const named = (id: string, name: string, change: Partial<Athlete> = {}): Athlete =>
    athlete('intermediate', 80, { id, name, ...GROWN, ...change });
  const jumps = session('2027-01-06', [line('hurdle-hop', { sets: 4 })]);
  return [
    builtAthlete([week(1, []), week(2, [])], { athlete: named('nothing', 'Nothing P.') }),
    builtAthlete([week(1, [jumps]), week(2, [])], { athlete: named('jumps', 'Jumps Only') }),
    builtAthlete([week(1, []), week(2, [])], {
      athlete: named('away', 'Away <script>alert(2)</script>', {
        away: [
          {
            range: { from: day('2027-01-04'), until: day('2027-01-31') },
            because: 'a private <reason>',
            trained: 'none',
            span: HERE,
          },
        ],
        returning: [{ stage: 2, of: 4, since: day('2027-01-01'), signed: 'Dr <b>X</b>', span: HERE }],
        limits: [
          {
            range: { from: day('2027-01-04'), until: day('2027-01-20') },
            avoid: [{ kind: 'drops' }, { kind: 'single-leg' }, { kind: 'pattern', id: 'single-leg' }],
            because: 'a reason of health & <more>',
            span: HERE,
          },
        ],
      }),
    }),
  ];
}

export function stressBuild(units: 'metric' | 'imperial'): Build {
  const people = [...Array.from({ length: HEAD_COUNT }, (_, index) => person(index)), ...others()];
  const planned = madePlan();
  return madeBuild(people, { ...planned, season: { ...planned.season, title: LONG_TITLE, units } });
}

export const emptyBuild = (): Build => madeBuild([]);
