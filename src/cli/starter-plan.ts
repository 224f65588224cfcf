// What `footfall new` writes: a plan folder that builds at once and reads like notes. Text by text, so that it can be
// read here as a coach will read it; only the days are worked out, from the first week on.

import { planSchema } from '../language/schema.ts';
import { DONE_COLUMNS, TEST_COLUMNS } from '../language/shapes/record.ts';
import type { TableColumn } from '../read/read-table.ts';
import { calendarDateOf, DAYS_A_WEEK, isoDate, parseIsoDate, startOfWeek } from '../util/days.ts';
import type { Day } from '../util/days.ts';

export interface StarterFile {
  /** Below the plan's folder, with forward slashes. */
  readonly path: string;
  readonly text: string;
  /** A program that git runs. */
  readonly isProgram?: true;
}

const SCHEMA = 'plan.schema.json';
const MODELINE = `# yaml-language-server: $schema=${SCHEMA}`;
const MONDAY = 0;
/** Four months: a month of each kind of work. */
const WEEKS = 16;
const SATURDAY = 5;

/** Whether the days of such a season have a date in a plan: years of four digits. */
export function canStart(day: Day): boolean {
  const starts = startOfWeek(day, MONDAY);
  return [starts, starts + WEEKS * DAYS_A_WEEK].every((one) => parseIsoDate(isoDate(one)) === one);
}

/** The files of a plan whose season starts in the week of a day. */
export function starterPlan(day: Day): readonly StarterFile[] {
  const starts = startOfWeek(day, MONDAY);
  const dayOfWeek = (week: number, weekday: number): string => isoDate(starts + (week - 1) * DAYS_A_WEEK + weekday);
  return [
    { path: 'season.yaml', text: season(dayOfWeek) },
    { path: 'athletes.yaml', text: athletes(calendarDateOf(starts).year, dayOfWeek) },
    { path: 'record/done.csv', text: header(DONE_COLUMNS) },
    { path: 'record/tests.csv', text: header(TEST_COLUMNS) },
    { path: 'private/notes.md', text: PRIVATE_NOTES },
    { path: '.gitignore', text: IGNORED },
    { path: 'hooks/pre-commit', text: HOOK, isProgram: true },
    { path: SCHEMA, text: `${JSON.stringify(planSchema(), null, 2)}\n` },
  ];
}

/** A record file without rows, as a spreadsheet saves it. */
function header(columns: readonly TableColumn[]): string {
  return `${columns.map(({ name }) => name).join(',')}\n`;
}

const season = (on: (week: number, weekday: number) => string): string => `${MODELINE}
# A season, kept as notes. Change a line, then say \`footfall check\` to see what is wrong and \`footfall build\` to see the
# weeks. An editor that knows YAML explains each key and offers what may stand there.
footfall: 1

season:
  title: Our season
  starts: ${on(1, MONDAY)} # it ends with the week of the last competition
  # sport: handball # or volleyball, basketball, long-jump, high-jump: the directions jumps go in

files: [athletes.yaml]

# What is really there: sessions are made of it, and kilos of the plates.
places:
  hall:
    surface: sprung floor
    kit: { boxes: [30 cm, 45 cm], hurdles: 6, mats: 4, racks: 2, bars: [20 kg, 20 kg], smallest-plate: 1.25 kg, dumbbells: 6 }

# When there is time and room.
slots:
  - { day: tuesday, at: "18:00", minutes: 75, place: hall }
  - { day: thursday, at: "18:00", minutes: 75, place: hall }

# peak: the season aims at it. freshen: go in fresh. through: train on as usual.
competitions:
  - { name: Practice match, date: ${on(7, SATURDAY)}, prepare: through, jumps: 20 }
  - { name: Cup final, date: ${on(WEEKS, SATURDAY)}, prepare: peak, jumps: 40 }

# Jumps of the sport's own practice. They count.
practice:
  - { day: monday, jumps: 40 }

# Days without training:
# closures:
#   - { from: ${on(8, MONDAY)}, until: ${on(8, 2)}, because: hall lent out }

tests:
  - { date: ${on(8, SATURDAY)}, what: [countermovement-jump], contacts: 6 }

# Your own numbers go here, each with its reason, and the rest is planned round them:
# pins:
#   - { athletes: [ada], week: ${on(3, MONDAY)}, kind: deload, because: exam week }

record:
  done: record/done.csv # a line after each session: who, how many contacts, how hard, pain next morning
  tests: record/tests.csv
`;

/** Two grown people, in whatever year. */
const athletes = (year: number, on: (week: number, weekday: number) => string): string => `${MODELINE}
# What a squad has in common (level, sport, limits) is written once; an athlete's own line comes before it.
squads:
  first: { level: beginner, now: { contacts-a-session: 50, sessions-a-week: 2 } }

athletes:
  ada:
    name: Ada E.
    squad: first
    born: ${year - 23}-06 # a year is enough; it decides what protects children
    mass: 64 kg
    level: intermediate
    now: { contacts-a-session: 70, sessions-a-week: 2 } # the last weeks, as they really were
    lifts:
      back-squat: { max: 85 kg, on: ${on(1, MONDAY)} }
  ben:
    name: Ben O.
    squad: first
    born: ${year - 25}
    mass: 78 kg
    lifts:
      back-squat: { did: 80 kg x 5, on: ${on(1, MONDAY)} } # estimated from it, and marked so
    # A limit says what is left out and until when. The reason is printed on your own pages only.
    # limits:
    #   - { until: ${on(8, MONDAY)}, avoid: [drops], contacts-a-session: 40, because: "physio: left ankle" }
`;

const PRIVATE_NOTES = `Git leaves this folder out: notes about somebody's health that only you should read belong here.

A reason in the plan can stay short (\`because: physio\`), with the rest of it in this folder.
`;

const IGNORED = `# Stays on this machine.
private/
# Made by \`footfall build --out sheets\`, and made again whenever it is wanted.
sheets/
`;

const HOOK = `#!/bin/sh
# Keeps a plan with errors out of git. Run by git before each commit, once git has been told where the hooks are:
#   git config core.hooksPath hooks
# To commit all the same: git commit --no-verify
cd "$(dirname "$0")/.." || exit 1
if ! command -v footfall >/dev/null 2>&1; then
  echo 'footfall is not installed here, so the plan was not checked. To commit all the same: git commit --no-verify' >&2
  exit 1
fi
exec footfall check --quiet
`;
