// The Monday page: first what the coach has to decide, then what went otherwise than written, then the numbers. Made from
// the season as of a day, from the seasons of the Mondays before (which say what the sheets had), and from the record.
// For coaches, not for a wall: it names reasons of health. Athletes stand in the order of the plan throughout.

import type { BuildWeek } from '../build/types.ts';
import { SOURCES } from '../library/sources.ts';
import { appliesTo, overlap, weekFrom } from '../plan/applies.ts';
import type { Athlete } from '../plan/types.ts';
import { DAYS_A_WEEK, startOfWeek } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import { waiversOf } from './decision-words.ts';
import type { Decision } from './decision-words.ts';
import { createGroupMarks } from './group-marks.ts';
import { createPlaces } from './places.ts';
import { reviewAthlete } from './review/athlete-review.ts';
import type { AthleteReview, Common, ReviewBuilds } from './review/athlete-review.ts';
import type { WeekDone } from './review/athlete-weeks.ts';
import { bestJumpers } from './review/best-jumpers.ts';
import type { BestJumpers } from './review/best-jumpers.ts';
import { inOrderOfWeight } from './review/decisions.ts';
import type { ToldDecision } from './review/decisions/decision.ts';
import { groupsOf, lastGroups } from './review/jump-trends.ts';
import { weeksBehind } from './review/review-day.ts';
import { gathered } from './review/told-item.ts';
import type { ToldItem } from './review/told-item.ts';
import { selectsAthlete } from './selection.ts';
import type { Selection } from './selection.ts';
import { createSheetNames } from './sheet-names.ts';
import type { Units } from '../util/quantities.ts';

export interface Review {
  readonly title: string;
  readonly mark: string;
  /** What heights are told in on the page; tables have centimetres. */
  readonly units: Units;
  readonly day: Day;
  /** The week the day is in, from 1; absent behind the season. */
  readonly week?: number;
  readonly weeks: readonly BuildWeek[];
  readonly decisions: readonly ToldDecision[];
  readonly exceptions: readonly ToldItem[];
  /** What stands in the week ahead and asks for no decision. */
  readonly ahead: readonly ToldItem[];
  readonly athletes: readonly AthleteReview[];
  /** Athletes with every session of the last week on record, of those who had some. */
  readonly recorded: { readonly complete: number; readonly of: number };
  readonly best?: BestJumpers;
  readonly waivers: readonly Decision[];
  /** Of the figures, in the order of their ids. */
  readonly sources: readonly { readonly id: string; readonly words: string }[];
}

/** Walks the athletes that are asked for, one by one; `tell` hears how many of how many are done. */
export function createReview(
  builds: ReviewBuilds,
  selection: Selection,
  day: Day,
  tell?: (done: number, of: number) => void,
): Review {
  const { now } = builds;
  const { plan } = now;
  const asked = plan.athletes.filter((one) => selectsAthlete(selection, one));
  const common = commonTo(builds, day);
  const found = asked.map((one, index) => {
    tell?.(index, asked.length);
    return reviewAthlete(common, one);
  });
  const athletes = found.map(({ review }) => review);
  const week = now.weeks.find(({ starts }) => starts <= day && day < starts + DAYS_A_WEEK)?.week;
  const best = bestAmong(common, new Set(asked.map(({ id }) => id)));
  return {
    title: plan.season.title,
    mark: now.mark,
    units: plan.season.units,
    day,
    ...(week !== undefined && { week }),
    weeks: common.weeks,
    decisions: inOrderOfWeight(found.flatMap(({ decisions }) => decisions)),
    exceptions: gathered(found.flatMap(({ exceptions }) => exceptions)),
    ahead: gathered(found.flatMap(({ ahead }) => ahead)),
    athletes,
    recorded: completeWeeks(athletes),
    ...(best !== undefined && { best }),
    sources: sourcesOf(athletes),
    waivers: waiversInForce(common, asked),
  };
}

function commonTo(builds: ReviewBuilds, day: Day): Common {
  const { now } = builds;
  const { plan } = now;
  const names = createSheetNames(plan);
  const groups = groupsOf(plan.record.tests);
  return {
    builds,
    plan,
    places: createPlaces(plan.files),
    day,
    groups,
    last: lastGroups(groups),
    weeks: weeksBehind(now, day),
    nameOf: (athlete) => names.on(athlete, day),
    marks: createGroupMarks(plan),
  };
}

/** The best of all, and of them those who are asked for. */
function bestAmong({ plan, last, day, nameOf }: Common, asked: ReadonlySet<string>): BestJumpers | undefined {
  const best = bestJumpers(plan, last, { day, nameOf });
  const people = best?.people.filter(({ athlete }) => asked.has(athlete)) ?? [];
  return best === undefined || people.length === 0 ? undefined : { ...best, people };
}

function completeWeeks(athletes: readonly AthleteReview[]): Review['recorded'] {
  const over = athletes.flatMap(({ weeks }) => weeks.at(-1) ?? []).filter(({ sessions }) => sessions.length > 0);
  return { complete: over.filter((week) => isComplete(week)).length, of: over.length };
}

const isComplete = ({ sessions }: WeekDone): boolean => sessions.every(({ outcome }) => outcome !== 'not recorded');

/** Of this week, for anybody who is asked for. */
function waiversInForce({ plan, day, nameOf }: Common, asked: readonly Athlete[]): readonly Decision[] {
  const starts = startOfWeek(day, plan.season.weekStarts);
  const range = weekFrom(starts);
  const waivers = plan.waivers.filter(
    (waiver) => overlap(waiver.range, range) && asked.some((athlete) => appliesTo(waiver.who, athlete)),
  );
  return waiversOf({ ...plan, waivers }, nameOf);
}

function sourcesOf(athletes: readonly AthleteReview[]): Review['sources'] {
  const bases = athletes.flatMap(({ figures }) =>
    figures.flatMap((page) => page.figures.flatMap(({ basis }) => basis ?? [])),
  );
  return SOURCES.filter(({ id }) => bases.includes(id)).map(({ id, fact, mark, source }) => ({
    id,
    words: `${fact} (${mark}) ${source}`,
  }));
}
