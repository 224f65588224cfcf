// Writes a plan of any number of athletes for the bench: 26 weeks to one peak, squads of twenty with two slots a week,
// practice jumps, strength tests, and the athletes in a roster or in YAML. They are counted off, not drawn, so that every
// run measures the same plan.

import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const ATHLETES_A_SQUAD = 20;
const LEVELS = ['beginner', 'intermediate', 'advanced'] as const;
const DAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday'] as const;
const CONTACTS_NOW = { beginner: 50, intermediate: 80, advanced: 110 } as const;
const SQUAT_NOW = { beginner: 60, intermediate: 90, advanced: 120 } as const;

/** The `at`-th of a list that starts again from the front at its end. */
function pick<T>(list: readonly [T, ...T[]], at: number): T {
  return list[at % list.length] ?? list[0];
}

const squadId = (squad: number): string => `squad-${squad + 1}`;

function squadLine(squad: number): string {
  const level = pick(LEVELS, squad);
  const lifts = `lifts: { back-squat: { max: ${SQUAT_NOW[level]} kg, on: 2026-12-12 } }`;
  return `  ${squadId(squad)}: { level: ${level}, now: { contacts-a-session: ${CONTACTS_NOW[level]}, sessions-a-week: 2 }, ${lifts} }`;
}

function slotLines(squad: number): readonly string[] {
  const rest = `minutes: 75, place: hall, squads: [${squadId(squad)}]`;
  return [0, 2].map((later) => `  - { day: ${pick(DAYS, squad + later)}, name: ${squadId(squad)}-${later}, ${rest} }`);
}

function practiceLine(squad: number): string {
  return `  - { day: ${pick(DAYS, squad + 1)}, jumps: ${40 + 10 * (squad % 4)}, squads: [${squadId(squad)}] }`;
}

function season(squads: readonly number[], athletes: readonly string[]): string {
  return [
    'footfall: 1',
    'season: { title: Bench, sport: handball, starts: 2027-01-04, ends: 2027-07-04 }',
    'places:',
    '  hall: { surface: sprung floor, kit: { boxes: [30 cm, 45 cm], hurdles: 8, racks: 4, bars: [15 kg, 20 kg], smallest-plate: 1.25 kg } }',
    'slots:',
    ...squads.flatMap(slotLines),
    'practice:',
    ...squads.map(practiceLine),
    'competitions:',
    '  - { name: Final, date: 2027-07-03, prepare: peak }',
    'squads:',
    ...squads.map(squadLine),
    ...athletes,
    '',
  ].join('\n');
}

interface Member {
  readonly id: string;
  readonly name: string;
  readonly squad: string;
  readonly born: string;
  readonly mass: string;
}

function member(athlete: number): Member {
  return {
    id: `a${athlete + 1}`,
    name: `Athlete ${athlete + 1}`,
    squad: squadId(Math.floor(athlete / ATHLETES_A_SQUAD)),
    born: `${1998 + (athlete % 8)}-0${1 + (athlete % 9)}`,
    mass: `${60 + (athlete % 30)} kg`,
  };
}

const rosterLine = ({ id, name, squad, born, mass }: Member): string => [id, name, squad, born, mass].join(',');

const yamlLine = ({ id, name, squad, born, mass }: Member, own = ''): string =>
  `  ${id}: { name: ${name}, squad: ${squad}, born: ${born}, mass: ${mass}${own} }`;

/** Of the squad's level, and no two of a squad with the same. */
function ownMaximum(athlete: number): string {
  const level = pick(LEVELS, Math.floor(athlete / ATHLETES_A_SQUAD));
  const kilos = SQUAT_NOW[level] + (athlete % ATHLETES_A_SQUAD);
  return `, lifts: { back-squat: { max: ${kilos} kg, on: 2026-12-12 } }`;
}

const counted = (many: number): readonly number[] => Array.from({ length: many }, (_, at) => at);

const squadsOf = (athletes: number): readonly number[] => counted(Math.ceil(athletes / ATHLETES_A_SQUAD));

/** Writes `season.yaml` and `roster.csv` into a folder, which is made. */
export function writePlan(folder: string, athletes: number): void {
  const roster = counted(athletes).map((athlete) => rosterLine(member(athlete)));
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'season.yaml'), season(squadsOf(athletes), ['roster: roster.csv']));
  writeFileSync(join(folder, 'roster.csv'), ['id,name,squad,born,mass', ...roster, ''].join('\n'));
}

/** Whose maxima the athletes of a plan lift by: those of the squad, or each by those of their own. */
export type Maxima = 'of the squad' | 'of their own';

/** Writes the same plan as one `season.yaml` with all athletes in it, and gives its path. */
export function writeYamlPlan(folder: string, athletes: number, maxima: Maxima): string {
  const lines = counted(athletes).map((athlete) =>
    yamlLine(member(athlete), maxima === 'of their own' ? ownMaximum(athlete) : ''),
  );
  const path = join(folder, 'season.yaml');
  mkdirSync(folder, { recursive: true });
  writeFileSync(path, season(squadsOf(athletes), ['athletes:', ...lines]));
  return path;
}
