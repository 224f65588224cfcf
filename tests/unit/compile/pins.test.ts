// Pins of every kind: each changes what it names, and one that changes nothing is said to.

import { describe, expect, it } from 'vitest';
import type { BuiltAthlete, BuiltWeek } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import { problem } from '../../../src/diagnostics/problem.ts';
import { watchWishes } from '../../../src/idle-wishes.ts';
import type { PinEffect } from '../../../src/plan/types.ts';
import { isoDate, weekdayNameOf } from '../../../src/util/days.ts';
import { HERE } from '../bare-plan.ts';
import { day } from '../date.ts';
import { planOf } from '../plan/loaded.ts';

const SEASON = `
footfall: 1
season: { title: Spring, starts: 2027-01-04 }
places:
  hall: { kit: { boxes: [20 cm, 30 cm, 45 cm, 60 cm], hurdles: 8, racks: 4, bars: [20 kg], smallest-plate: 1.25 kg, trap-bars: 1, dumbbells: 6, mats: 4, cones: 10 } }
slots:
  - { day: tuesday, minutes: 90, place: hall }
  - { day: thursday, minutes: 90, place: hall }
  - { day: saturday, minutes: 90, place: hall }
competitions:
  - { name: Cup final, date: 2027-04-24, prepare: peak }
athletes:
  mira: { level: intermediate, born: 2003, mass: 68 kg, cleared: [single-leg-high], now: { contacts-a-session: 80, sessions-a-week: 2 }, lifts: { back-squat: { max: 90 kg, on: 2026-12-20 }, trap-bar-deadlift: { max: 110 kg, on: 2026-12-20 } } }
`;

/** The week of 18 January, with a pin that the text says. */
function built(pin?: string): {
  readonly athlete: BuiltAthlete;
  readonly week: BuiltWeek;
  readonly told: readonly string[];
} {
  const season = compilePlan(planOf(pin === undefined ? SEASON : `${SEASON}pins:\n  - { ${pin}, because: camp }\n`));
  const [athlete] = season.athletes;
  const week = athlete?.weeks[2];
  if (athlete === undefined || week === undefined) throw new Error('no third week');
  return {
    athlete,
    week,
    told: watchWishes(season)
      .idle(athlete.diagnostics)
      .map(({ code }) => code),
  };
}

const WEEK = 'week: 2027-01-18';
const exercises = ({ sessions }: BuiltWeek): readonly string[] =>
  sessions.flatMap(({ lines }) => lines.map(({ exercise }) => exercise));
const usual = built();
const [drill = ''] = usual.week.sessions
  .flatMap(({ lines }) => lines.filter(({ part }) => part === 'jumps'))
  .map((line) => line.exercise);

const KINDS: Readonly<Record<PinEffect['kind'], readonly [pin: string, acts: (week: BuiltWeek) => boolean]>> = {
  contacts: [`${WEEK}, contacts-a-week: 120`, (week) => week.contacts === 120 && week.boundBy === 'pin'],
  phase: [`${WEEK}, phase: maintenance`, (week) => week.phase === 'maintenance'],
  'week-kind': [`${WEEK}, kind: deload`, (week) => week.kind === 'deload'],
  rest: [
    'date: 2027-01-19, rest: true',
    (week) => week.sessions.every(({ day, jumps }) => isoDate(day) !== '2027-01-19' || !jumps),
  ],
  on: [`${WEEK}, on: [thursday, saturday]`, (week) => jumpDays(week).join(' ') === 'thursday saturday'],
  swap: [
    `${WEEK}, swap: { back-squat: trap-bar-deadlift }`,
    (week) => !exercises(week).includes('back-squat') && exercises(week).includes('trap-bar-deadlift'),
  ],
  'leave-out': [`${WEEK}, leave-out: [${drill}]`, (week) => !exercises(week).includes(drill)],
  keep: [`${WEEK}, keep: [tuck-jump]`, (week) => exercises(week).includes('tuck-jump')],
  add: [
    `${WEEK}, add: [{ lift: push-up, sets: 3, reps: 7 }]`,
    (week) => week.sessions.some(({ lines }) => lines.some((line) => line.exercise === 'push-up' && line.reps === 7)),
  ],
  sets: [
    `${WEEK}, sets: { back-squat: 2 }`,
    (week) =>
      week.sessions.flatMap(({ lines }) => lines).every((line) => line.exercise !== 'back-squat' || line.sets === 2),
  ],
  load: [
    `${WEEK}, load: { back-squat: 40 kg }`,
    (week) =>
      week.sessions
        .flatMap(({ lines }) => lines)
        .every((line) => line.exercise !== 'back-squat' || line.loadGrams === 40_000),
  ],
};

const jumpDays = ({ sessions }: BuiltWeek): readonly string[] =>
  sessions.filter(({ jumps }) => jumps).map(({ day }) => weekdayNameOf(day));

describe.each(Object.entries(KINDS))('a pin of the kind %s', (_, [pin, acts]) => {
  const pinned = built(pin);

  it('acts, and only with it the week is so', () => {
    expect(acts(pinned.week)).toBe(true);
    expect(acts(usual.week)).toBe(false);
  });

  it('is not said to be idle, and breaks no rule with an error', () => {
    expect(pinned.told).toEqual([]);
    expect(pinned.athlete.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('names its line where it acts', () => {
    const reasons = [
      ...pinned.week.reasons,
      ...pinned.week.sessions.flatMap((session) => [
        ...session.reasons,
        ...session.lines.flatMap((line) => line.reasons),
      ]),
    ];
    const places = new Set(reasons.flatMap(({ spans }) => spans.map(({ start }) => start)));
    expect(places.has(SEASON.length + 'pins:\n  - { '.length)).toBe(true);
  });
});

describe('a pin that changes nothing', () => {
  it.each([
    ['the number that is planned anyway', `${WEEK}, contacts-a-week: ${usual.week.contacts}`],
    ['the phase that is planned anyway', `${WEEK}, phase: ${usual.week.phase}`],
    ['rest where nothing is', 'date: 2027-01-20, rest: true'],
    ['a drill left out that nobody does', `${WEEK}, leave-out: [drop-jump-45]`],
    ['sets of a lift that nobody does', `${WEEK}, sets: { power-clean: 2 }`],
    ['a swap of what is not there', `${WEEK}, swap: { power-clean: back-squat }`],
  ])('is said to: %s', (_, pin) => {
    expect(built(pin).told).toEqual(['schedule/pin-idle']);
  });

  it('is left alone once its week is over', () => {
    const idle = (asOf: string): readonly string[] => {
      const plan = planOf(`${SEASON}pins:\n  - { ${WEEK}, leave-out: [drop-jump-45], because: camp }\n`);
      const season = compilePlan(plan, { asOf: day(asOf) });
      return watchWishes(season, { asOf: day(asOf) })
        .idle([])
        .map(({ code }) => code);
    };
    expect(idle('2027-01-18')).toEqual(['schedule/pin-idle']);
    expect(idle('2027-01-25')).toEqual([]);
  });

  it('is left alone while pain stops the jumps of all it is for', () => {
    const plan = planOf(`${SEASON}pins:\n  - { ${WEEK}, leave-out: [drop-jump-45], because: camp }\n`);
    const params = { pain: 6, on: '2027-01-14', athlete: 'mira', week: '2027-01-18', better: '' };
    const stop = problem('schedule/pain-stop', { params, span: HERE, athlete: 'mira' });
    expect(watchWishes(compilePlan(plan)).idle([stop])).toEqual([]);
  });

  it('is left alone where something is told of it already', () => {
    const { told, athlete } = built(`${WEEK}, contacts-a-week: 900`);
    expect(athlete.diagnostics.map(({ code }) => code)).toContain('schedule/pin-too-high');
    expect(told).toEqual([]);
  });
});

describe('a weekday that a pin names and another pin keeps free', () => {
  const severity = (on: string): readonly string[] => {
    const pins = `  - { date: 2027-01-21, rest: true, because: travel }\n  - { ${on}, because: late shift }\n`;
    const [athlete] = compilePlan(planOf(`${SEASON}pins:\n${pins}`)).athletes;
    return (athlete?.diagnostics ?? [])
      .filter(({ code }) => code === 'schedule/pinned-day-barred')
      .map((one) => one.severity);
  };

  it('is an error, though another day of the same pin is held', () => {
    expect(severity(`${WEEK}, on: thursday`)).toEqual(['error']);
    expect(severity(`${WEEK}, on: [tuesday, thursday]`)).toEqual(['error']);
  });

  it('is a warning where the same weekday is held in other weeks of the pin', () => {
    expect(severity('from: 2027-01-04, until: 2027-01-31, on: [tuesday, thursday]')).toEqual(['warning']);
  });
});

describe('several pins of contacts on a week', () => {
  const contactsWith = (...pins: readonly string[]): number | undefined => {
    const items = pins.map((pin) => `  - { ${pin}, week: 2027-01-18, because: camp }\n`);
    const [athlete] = compilePlan(planOf(`${SEASON}pins:\n${items.join('')}`)).athletes;
    return athlete?.weeks[2]?.contacts;
  };
  const everybody = (contacts: number): string => `contacts-a-week: ${contacts}`;
  const mira = (contacts: number): string => `athletes: [mira], contacts-a-week: ${contacts}`;

  it('are met by the one that names the athlete, wherever it stands', () => {
    expect(contactsWith(everybody(100), mira(120))).toBe(120);
    expect(contactsWith(mira(120), everybody(100))).toBe(120);
  });

  it('are met by the least of those that are as near', () => {
    expect(contactsWith(mira(120), mira(100))).toBe(100);
    expect(contactsWith(everybody(100), everybody(120))).toBe(100);
  });
});
