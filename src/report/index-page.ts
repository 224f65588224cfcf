// The first page of a written build, for the coach: every other page and table, week by week and athlete by athlete, what
// the coach decided with the reasons, and what was found about the plan.

import { weekFrom } from '../plan/applies.ts';
import type { Build, BuiltAthlete } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { DAYS_A_WEEK, isoDate } from '../util/days.ts';
import { dateWithYear, dayWords } from './calendar-words.ts';
import { rangeWords } from './card.ts';
import { createFindingKinds } from './finding-kinds.ts';
import { decisionsOf, waiversOf } from './decision-words.ts';
import type { Decision, NameOf } from './decision-words.ts';
import { selectedSessions, selectedWeeks, selectsWeek } from './selection.ts';
import type { Selection } from './selection.ts';

export interface IndexPage {
  readonly title: string;
  readonly mark: string;
  /** `4 Jan 2027 – 2 May 2027`. */
  readonly dates: string;
  readonly weeks: readonly IndexWeek[];
  readonly athletes: readonly IndexAthlete[];
  readonly decisions: readonly Decision[];
  readonly waivers: readonly Decision[];
  /** `12 x a session over its slot`, the gravest kinds first. */
  readonly findings: readonly string[];
}

export interface IndexWeek {
  readonly week: number;
  /** ISO date of the first day, which names its page of cards. */
  readonly starts: string;
  readonly dates: string;
  /** Whether anybody has a card. */
  readonly hasCards: boolean;
  /** Days with a board: ISO date and words. */
  readonly sessions: readonly { readonly date: string; readonly words: string }[];
}

export interface IndexAthlete {
  readonly id: string;
  readonly name: string;
  readonly squad?: string;
  readonly group?: string;
}

export interface IndexMaker {
  readonly add: (built: BuiltAthlete) => void;
  readonly finish: (findings: Iterable<Diagnostic>) => IndexPage;
}

/** The page is the coach's. */
const fullName: NameOf = ({ name }) => name;

const SEVERITIES = ['error', 'warning', 'notice'] as const;

/** Takes the athletes one by one; the page is whole once the findings are told. */
export function createIndexPage(build: Pick<Build, 'plan' | 'mark' | 'weeks'>, selection: Selection): IndexMaker {
  const { plan } = build;
  const athletes: IndexAthlete[] = [];
  const days = new Set<number>();
  const kinds = createFindingKinds();
  return {
    add: (built) => {
      const { id, name, squad, group } = built.athlete;
      athletes.push({ id, name, ...(squad !== undefined && { squad }), ...(group !== undefined && { group }) });
      for (const week of selectedWeeks(selection, built)) {
        for (const session of selectedSessions(selection, week)) days.add(session.day);
      }
      for (const diagnostic of built.diagnostics) kinds.add(diagnostic);
    },
    finish: (findings) => {
      for (const diagnostic of findings) kinds.add(diagnostic);
      return {
        title: plan.season.title,
        mark: build.mark,
        dates: `${dateWithYear(plan.season.starts)} – ${dateWithYear(plan.season.ends)}`,
        weeks: build.weeks.filter((week) => selectsWeek(selection, week)).map((week) => indexWeek(week, days)),
        athletes,
        decisions: decisionsOf(plan, fullName),
        waivers: waiversOf(plan, fullName),
        findings: SEVERITIES.flatMap((severity) => kinds.lines(severity).map((line) => `${severity}, ${line}`)),
      };
    },
  };
}

function indexWeek({ week, starts }: { week: number; starts: number }, days: ReadonlySet<number>): IndexWeek {
  const inWeek = Array.from({ length: DAYS_A_WEEK }, (_, index) => starts + index).filter((day) => days.has(day));
  return {
    week,
    starts: isoDate(starts),
    dates: rangeWords(weekFrom(starts)),
    hasCards: inWeek.length > 0,
    sessions: inWeek.map((day) => ({ date: isoDate(day), words: dayWords(day) })),
  };
}
