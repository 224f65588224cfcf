// A squad's season at a glance: weeks across, and for everybody, or for every group of a big squad, the contacts of each
// week. People with the same phases and the same competitions stand together. Built for a person's screen or wall.

import type { Build, BuiltAthlete, BuiltWeek } from '../build/types.ts';
import { LEVELS } from '../library/types.ts';
import type { Level, PhaseId, WeekKind } from '../library/types.ts';
import { appliesTo } from '../plan/applies.ts';
import { levelOn } from '../plan/athlete-facts.ts';
import type { Plan } from '../plan/types.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';
import type { Day } from '../util/days.ts';
import { createEvents } from './glance-events.ts';
import type { EventRow, PeakEvent } from './glance-events.ts';
import { middleWeek } from './middle-week.ts';
import { phaseRuns } from './season-table.ts';
import type { PhaseRun } from './season-table.ts';
import { selectsAthlete, selectsWeek } from './selection.ts';
import type { Selection } from './selection.ts';

/** From this many athletes on, a row is a group and not a person. */
const MOST_PEOPLE = 40;

export type { PhaseId } from '../library/types.ts';
export type { EventRow, PeakEvent } from './glance-events.ts';

export interface GlanceWeek {
  /** From 1. */
  readonly week: number;
  readonly starts: Day;
}

export interface GlanceCell {
  readonly kind: WeekKind;
  /** Contacts of the week; of a group, those of its middle athlete. */
  readonly contacts: number;
  /** The coach's own number. */
  readonly pinned: boolean;
  /** An error keeps the week from being written. */
  readonly blocked: boolean;
}

export interface GlanceRow {
  readonly label: string;
  /** How many athletes the row stands for. */
  readonly athletes: number;
  /** One for each week of the glance. */
  readonly cells: readonly GlanceCell[];
}

export interface GlanceGroup {
  readonly title: string;
  readonly phases: readonly PhaseRun[];
  /** Matches, tests and closures that not everybody shares. */
  readonly events: readonly EventRow[];
  readonly rows: readonly GlanceRow[];
}

export interface Glance {
  readonly title: string;
  readonly mark: string;
  readonly athletes: number;
  readonly weeks: readonly GlanceWeek[];
  /** Matches, tests and closures that everybody shares. */
  readonly events: readonly EventRow[];
  readonly groups: readonly GlanceGroup[];
  readonly peaks: readonly PeakEvent[];
}

/** Takes the athletes one at a time, so that whoever walks the build for another reason can fill it on the way. */
export interface GlanceMaker {
  readonly add: (built: BuiltAthlete) => void;
  readonly finish: () => Glance;
}

interface Member {
  readonly name: string;
  readonly level: Level;
  readonly cells: readonly GlanceCell[];
}

interface Gathering {
  readonly squad: string | undefined;
  /** The phase of each week. */
  phases: readonly PhaseId[];
  readonly events: readonly EventRow[];
  readonly members: Member[];
}

/** Takes the athletes one by one and keeps names and numbers of them. */
export function createGlance(build: Pick<Build, 'plan' | 'mark' | 'weeks'>, selection: Selection): GlanceMaker {
  const { plan } = build;
  const weeks = build.weeks.filter((week) => selectsWeek(selection, week));
  const eventsOf = createEvents(plan, weeks);
  const gatherings: Gathering[] = [];
  const add = ({ athlete, weeks: built, blocked }: BuiltAthlete): void => {
    const shown = built.filter((week) => selectsWeek(selection, week));
    const gathering = gather(gatherings, {
      squad: athlete.squad,
      phases: shown.map(({ phase }) => phase),
      events: eventsOf(athlete),
      members: [],
    });
    gathering.members.push({
      name: athlete.name,
      level: levelOn(athlete, plan.season.starts),
      cells: shown.map((week) => cellOf(week, blocked)),
    });
  };
  const finish = (): Glance => {
    const all = gatherings.toSorted((a, b) => byCodeUnit(a.squad ?? '', b.squad ?? ''));
    const athletes = all.reduce((count, { members }) => count + members.length, 0);
    const shared = sharedEvents(all);
    return {
      title: plan.season.title,
      mark: build.mark,
      athletes,
      weeks,
      events: shared,
      groups: all.map((gathering) => groupOf(gathering, weeks, shared, athletes > MOST_PEOPLE)),
      peaks: peaksOf(plan, selection),
    };
  };
  return { add, finish };
}

/** The gathering a newcomer belongs to, which may be a new one: same squad, same events, phases that go together. */
function gather(gatherings: Gathering[], newcomer: Gathering): Gathering {
  const found = gatherings.find(
    ({ squad, events, phases }) =>
      squad === newcomer.squad && events === newcomer.events && goTogether(phases, newcomer.phases),
  );
  if (found === undefined) {
    gatherings.push(newcomer);
    return newcomer;
  }
  found.phases = found.phases.map((phase, index) => (phase === 'closed' ? (newcomer.phases[index] ?? phase) : phase));
  return found;
}

/** Whether two athletes are in the same phases, weeks aside in which one of them can't train. */
const goTogether = (a: readonly PhaseId[], b: readonly PhaseId[]): boolean =>
  a.every((phase, index) => phase === b[index] || phase === 'closed' || b[index] === 'closed');

function cellOf(week: BuiltWeek, blocked: ReadonlySet<number>): GlanceCell {
  return {
    kind: week.kind,
    contacts: week.contacts,
    pinned: week.boundBy === 'pin',
    blocked: blocked.has(week.week),
  };
}

/** The rows of events that are the same for every gathering. */
function sharedEvents(gatherings: readonly Gathering[]): readonly EventRow[] {
  const [first, ...rest] = gatherings;
  if (first === undefined) return [];
  return first.events.filter((row) => rest.every(({ events }) => events.some((other) => sameRow(row, other))));
}

const sameRow = (a: EventRow, b: EventRow): boolean => a.label === b.label && a.cells.join() === b.cells.join();

function groupOf(
  { squad, phases, events, members }: Gathering,
  weeks: readonly GlanceWeek[],
  shared: readonly EventRow[],
  big: boolean,
): GlanceGroup {
  return {
    title: squad ?? 'athletes',
    phases: phaseRuns(
      weeks.flatMap(({ week }, index) => (phases[index] === undefined ? [] : { week, phase: phases[index] })),
    ),
    events: events.filter((row) => !shared.some(({ label }) => label === row.label)),
    rows: big ? levelRows(members) : members.map(personRow),
  };
}

function personRow({ name, cells }: Member): GlanceRow {
  return { label: name, athletes: 1, cells };
}

/** One row for each level: the middle athlete of each week. */
function levelRows(members: readonly Member[]): readonly GlanceRow[] {
  return LEVELS.flatMap((level) => {
    const those = members.filter((member) => member.level === level);
    const [first] = those;
    if (first === undefined) return [];
    const cells = first.cells.map((_, index) => middleCell(those.flatMap(({ cells }) => cells[index] ?? [])));
    return [{ label: `${level} (${those.length})`, athletes: those.length, cells }];
  });
}

/** Of those whose week is written, where there are any. */
function middleCell(cells: readonly GlanceCell[]): GlanceCell {
  const written = cells.filter(({ blocked }) => !blocked);
  const middle = middleWeek(written.length > 0 ? written : cells);
  if (middle === undefined) throw new Error('a group without members');
  return middle;
}

function peaksOf(plan: Plan, selection: Selection): readonly PeakEvent[] {
  const people = plan.athletes.filter((athlete) => selectsAthlete(selection, athlete));
  return plan.competitions
    .filter(({ prepare, who }) => prepare === 'peak' && people.some((athlete) => appliesTo(who, athlete)))
    .map(({ name, range, who }) => ({
      name,
      day: range.from,
      everybody: people.every((athlete) => appliesTo(who, athlete)),
    }));
}
