// The season as a chart for a wall: weeks across, matches, tests and closed weeks, and for each squad the phases in words
// and the middle athlete's jumps against the most that is safe. Read by a head coach or a physio from where they stand,
// and by anybody who passes: reasons are left out.

import type { Build, BuildWeek, BuiltAthlete, BuiltWeek } from '../build/types.ts';
import { contestWords } from '../library/sports.ts';
import type { PhaseId, WeekKind } from '../library/types.ts';
import { appliesTo, overlap, weekFrom } from '../plan/applies.ts';
import type { Athlete, DayRange, Plan } from '../plan/types.ts';
import { dayOfMonth, shortMonthName, yearOf } from './calendar-words.ts';
import { rangeWords } from './card.ts';
import { decisionsOf, rangeInSeason, waiversOf, whoWords } from './decision-words.ts';
import type { Decision, NameOf } from './decision-words.ts';
import { isEasy, middleWeek, mostCommon } from './middle-week.ts';
import { selectsWeek } from './selection.ts';
import type { Selection } from './selection.ts';
import { createSheetNames } from './sheet-names.ts';

export interface ChartWeek {
  readonly week: number;
  /** Day of the month the week starts on. */
  readonly date: number;
  readonly month: string;
  readonly year: number;
  readonly events: readonly ChartEvent[];
}

/** Peaks before other matches, then tests. */
export type ChartEvent = 'peak' | 'match' | 'test';

export interface ChartPanel {
  /** `seniors, 8 athletes`. */
  readonly title: string;
  readonly athletes: number;
  readonly phases: readonly { readonly words: string; readonly from: number; readonly weeks: number }[];
  /** One for each week of the chart. */
  readonly weeks: readonly PanelWeek[];
}

/** Numbers of the middle athlete. */
export interface PanelWeek {
  readonly kind: WeekKind;
  /** Whether a chart shades it. */
  readonly easy: boolean;
  /** How many of the squad jump in the week. */
  readonly jumping: number;
  /** No more than half of it: the numbers of so few aren't the squad's. */
  readonly few: boolean;
  /** Planned jumps of the week, or those done where it is over. */
  readonly contacts: number;
  /** In the fullest session; absent where the week is over, of which only the sum is known. */
  readonly aSession?: number;
  /** The most that is safe. */
  readonly most: number;
  /** With practice, matches and tests. */
  readonly all: number;
  /** Nobody of the panel can train all week. */
  readonly closed: boolean;
  /** An error keeps everybody's week from being written: there is nothing to show. */
  readonly barred: boolean;
}

export interface SeasonChart {
  readonly title: string;
  readonly mark: string;
  /** `match`, `matches`: what the sport competes in. */
  readonly contest: readonly [one: string, many: string];
  readonly weeks: readonly ChartWeek[];
  readonly panels: readonly ChartPanel[];
  /** `Sat 24 Apr: County cup final`, the peaks; with the year where the season has days of two. */
  readonly peaks: readonly string[];
  readonly notWithUs: readonly string[];
  readonly decisions: readonly Omit<Decision, 'because'>[];
  readonly waivers: readonly Omit<Decision, 'because'>[];
}

export interface ChartMaker {
  readonly add: (built: BuiltAthlete) => void;
  readonly finish: () => SeasonChart;
}

/** Takes the athletes one by one; a panel for each squad. */
export function createSeasonChart(build: Pick<Build, 'plan' | 'mark' | 'weeks'>, selection: Selection): ChartMaker {
  const { plan } = build;
  const hasYears = yearOf(plan.season.starts) !== yearOf(plan.season.ends);
  const weeks = build.weeks.filter((week) => selectsWeek(selection, week));
  const names = createSheetNames(plan);
  const nameOf: NameOf = (athlete) => names.on(athlete, plan.season.starts);
  const bySquad = new Map<string, Member[]>();
  return {
    add: ({ athlete, weeks: built, blocked }) => {
      const squad = athlete.squad ?? '';
      const members = bySquad.get(squad) ?? [];
      bySquad.set(squad, members);
      const shown = built.filter((week) => selectsWeek(selection, week));
      members.push({ athlete, weeks: shown.map((week) => athleteWeek(week, blocked.has(week.week))) });
    },
    finish: () => ({
      title: plan.season.title,
      mark: build.mark,
      contest: contestWords(plan.season.sport),
      weeks: weeks.map(({ week, starts }) => chartWeek(plan, week, starts)),
      panels: [...bySquad]
        .toSorted(([a], [b]) => (a < b ? -1 : 1))
        .map(([squad, members]) => panelOf(plan, squad, members, weeks)),
      peaks: plan.competitions
        .filter(({ prepare }) => prepare === 'peak')
        .map(({ name, range }) => `${rangeWords(range)}${hasYears ? ` ${yearOf(range.from)}` : ''}: ${name}`),
      notWithUs: notWithUs(plan),
      decisions: decisionsOf(plan, nameOf).map(withoutReason),
      waivers: waiversOf(plan, nameOf).map(withoutReason),
    }),
  };
}

const withoutReason = ({ what, who, when }: Decision): Omit<Decision, 'because'> => ({ what, who, when });

interface Member {
  readonly athlete: Athlete;
  /** Those of the chart. */
  readonly weeks: readonly AthleteWeek[];
}

interface AthleteWeek extends Omit<PanelWeek, 'closed' | 'easy' | 'jumping' | 'few'> {
  readonly phase: PhaseId;
}

const athleteWeek = (week: BuiltWeek, barred: boolean): AthleteWeek => ({
  barred,
  phase: week.phase,
  kind: week.kind,
  contacts: week.contacts,
  ...(!week.done && { aSession: week.sessions.reduce((most, { contacts }) => Math.max(most, contacts), 0) }),
  most: week.mostContacts,
  all: week.contacts + week.otherJumps,
});

function chartWeek(plan: Plan, week: number, starts: number): ChartWeek {
  const range = weekFrom(starts);
  const matches = plan.competitions.filter((one) => overlap(one.range, range));
  const events: readonly (readonly [ChartEvent, boolean])[] = [
    ['peak', matches.some(({ prepare }) => prepare === 'peak')],
    ['match', matches.some(({ prepare }) => prepare !== 'peak')],
    ['test', plan.tests.some(({ day }) => range.from <= day && day <= range.until)],
  ];
  return {
    week,
    date: dayOfMonth(starts),
    month: shortMonthName(starts),
    year: yearOf(starts),
    events: events.filter(([, is]) => is).map(([event]) => event),
  };
}

function panelOf(plan: Plan, squad: string, members: readonly Member[], weeks: readonly BuildWeek[]): ChartPanel {
  const columns = weeks.map((_, index) => members.flatMap((member) => member.weeks[index] ?? []));
  const people = members.map(({ athlete }) => athlete);
  const title = `${squad === '' ? '' : `${squad}, `}${people.length} ${people.length === 1 ? 'athlete' : 'athletes'}`;
  return {
    title,
    athletes: people.length,
    phases: phasesOf(columns),
    weeks: columns.map((column, index) => ({
      ...middleNumbers(column),
      closed: isClosed(plan, people, weekFrom(weeks[index]?.starts ?? 0)),
    })),
  };
}

const NOTHING = {
  kind: 'empty',
  easy: false,
  contacts: 0,
  aSession: 0,
  most: 0,
  all: 0,
  jumping: 0,
  few: false,
} as const;

/** Numbers and kind of one athlete whose week is written, who jumps in it and has the kind that most have. */
function middleNumbers(weeks: readonly AthleteWeek[]): Omit<PanelWeek, 'closed'> {
  const middle = middleWeek(weeks.filter(({ barred }) => !barred));
  if (middle === undefined) return { ...NOTHING, barred: weeks.length > 0 };
  const { phase: _, ...numbers } = middle;
  const jumping = weeks.filter(({ contacts, barred }) => contacts > 0 && !barred).length;
  return { ...numbers, easy: isEasy(numbers.kind), jumping, few: jumping > 0 && 2 * jumping <= weeks.length };
}

/** Whether a closure takes all places from all of them, all week. */
function isClosed({ closures, slots }: Plan, people: readonly Athlete[], week: DayRange): boolean {
  return closures.some(
    ({ range, who, places }) =>
      range.from <= week.from &&
      week.until <= range.until &&
      people.every((athlete) => appliesTo(who, athlete)) &&
      (places === undefined || slots.every(({ place }) => places.includes(place.id))),
  );
}

const PHASE_WORDS: Readonly<Record<PhaseId, string>> = {
  foundation: 'learn to land',
  hypertrophy: 'build muscle',
  strength: 'lift heavy',
  'strength-power': 'strong to quick',
  power: 'jump high',
  maintenance: 'keep what is there',
  sharpening: 'sharpen',
  hold: 'stay fresh',
  transition: 'rest',
  closed: 'closed',
};

function phasesOf(columns: readonly (readonly AthleteWeek[])[]): ChartPanel['phases'] {
  const runs: { words: string; from: number; weeks: number }[] = [];
  columns.forEach((weeks, index) => {
    const phases = weeks.map((week) => week.phase);
    const phase = mostCommon(phases.filter((one) => one !== 'closed')) ?? phases[0];
    if (phase === undefined) return;
    const last = runs.at(-1);
    if (last?.words === PHASE_WORDS[phase]) last.weeks += 1;
    else runs.push({ words: PHASE_WORDS[phase], from: index, weeks: 1 });
  });
  return runs;
}

/** Closures with their reasons, which are of halls and holidays; absences without. What lies outside of the season isn't told. */
function notWithUs(plan: Plan): readonly string[] {
  const names = createSheetNames(plan);
  const season = { from: plan.season.starts, until: plan.season.ends };
  return [
    ...plan.closures
      .filter(({ range }) => overlap(range, season))
      .map(
        ({ range, because, who }) =>
          `${rangeInSeason(plan, range)}: ${because} (${whoWords(plan, who, (athlete) => names.on(athlete, range.from))})`,
      ),
    ...plan.athletes.flatMap((athlete) =>
      athlete.away
        .filter(({ range }) => overlap(range, season))
        .map(({ range }) => `${names.on(athlete, range.from)}: ${rangeInSeason(plan, range)}`),
    ),
  ];
}
