// A week in plain words: what kind it is, and why it has the contacts it has. Called by every page that shows weeks.

import type { BoundBy, BuiltWeek } from '../build/types.ts';
import type { WeekKind } from '../library/types.ts';
import { VOLUME } from '../library/volume.ts';

const KIND_WORDS: Readonly<Record<WeekKind, string>> = {
  load: 'build',
  deload: 'easy',
  taper: 'taper',
  return: 'coming back',
  hold: 'hold',
  transition: 'free',
  empty: 'no jumps',
};

/** `build`, `easy`, `coming back` … */
export const kindWords = (kind: WeekKind): string => KIND_WORDS[kind];

/** Of a week that an error keeps from being written. */
export const LEFT_OUT = 'left out: an error stands in the way';

type Numbers = Pick<
  BuiltWeek,
  'adaptedBefore' | 'bounds' | 'boundBy' | 'contacts' | 'done' | 'kind' | 'otherJumps' | 'possible' | 'target'
>;

const WHY: Readonly<Record<BoundBy, (week: Numbers) => string>> = {
  target: ({ contacts, target }) => (contacts === target ? "the phase's target" : `nearest to the target of ${target}`),
  reach: ({ target }) => `over the target of ${target}, for a base`,
  'weekly-rise': ({ adaptedBefore }) => `as far as ${adaptedBefore} may rise`,
  'session-rise': ({ adaptedBefore }) => `as far as sessions of ${adaptedBefore} a week may rise`,
  'session-ceiling': (week) => `a session may hold no more at this level${sessionsNote(week)}`,
  'slot-minutes': (week) => `no more fits the minutes of the slot${sessionsNote(week)}`,
  'deload-depth': (week) => `easy week: ${shareOfUsual(week)}`,
  'taper-cut': (week) => `taper: ${taperBeforeWords(week) ?? shareOfUsual(week)}`,
  'return-ramp': (week) =>
    week.contacts > week.adaptedBefore && week.adaptedBefore > 0
      ? `coming back: a step up from ${week.adaptedBefore}`
      : `coming back: ${shareOfUsual(week)} for now`,
  'all-jumps-rise': ({ otherJumps, contacts, adaptedBefore }) =>
    `${contacts + VOLUME.step <= adaptedBefore ? 'less' : 'no rise'}: other jumps rose, to ${otherJumps}`,
  'youth-ceiling': () => 'a session may hold no more at this age',
  limit: () => "the athlete's own limit",
  'open-days': ({ possible }) =>
    `${possible === 0 ? 'no day is' : possible === 1 ? 'one day is' : `${possible} days are`} free for jumps`,
  budget: () => "the coach's budget for all jumps",
  hold: (week) => `stay fresh between peaks: ${shareOfUsual(week)}`,
  pin: () => "the coach's own number",
  programme: () => 'written by hand',
  record: (week) => (week.done ? 'as it was done' : (underWayWords(week) ?? 'no rise while nothing is recorded')),
  'returning-stage': () => 'the stage that is open allows no more',
  'pain-hold': ({ bounds }) =>
    bounds.some(({ by, most }) => by === 'pain-hold' && most === 0)
      ? 'no jumps after strong pain'
      : 'no rise after pain the next morning',
  'last-week': () => 'a primer, so that the week is not empty',
  transition: () => 'rest from jumping',
  empty: () => 'no day for jumps',
};

/** Why a week has the contacts it has, without a full stop. Numbers are contacts a week. */
export const whyContacts = (week: Numbers): string =>
  week.kind === 'transition' ? WHY.transition(week) : WHY[week.boundBy](week);

/** Of a week under way that was cut by what is done of it. */
function underWayWords({ bounds }: Numbers): string | undefined {
  const { done, planned } =
    bounds.find(({ by, params }) => by === 'record' && params?.['done'] !== undefined)?.params ?? {};
  return done === undefined ? undefined : `the week was to have ${planned ?? 0}, and ${done} are on record already`;
}

/** Of a taper week whose sessions follow those of the taper week before. */
function taperBeforeWords({ bounds }: Numbers): string | undefined {
  const largest = bounds.find(({ by, params }) => by === 'taper-cut' && params?.['before'] !== undefined)?.params;
  return largest === undefined ? undefined : `sessions near the ${largest['before'] ?? 0} of the taper week before`;
}

function shareOfUsual({ contacts, adaptedBefore }: Numbers): string {
  if (adaptedBefore === 0) return `${contacts} contacts`;
  return `${Math.round((100 * contacts) / adaptedBefore)} % of the usual ${adaptedBefore}`;
}

function sessionsNote({ possible }: Numbers): string {
  return possible === 1 ? ', and one day is free' : '';
}
