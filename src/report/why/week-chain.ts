// The steps behind a week's contacts: phase, kind, what the athlete is used to, what the phase wants, what was found, what
// comes of it, where the jumps go, and the lift sessions. Called by ../why.ts; the bounds are told by bounds-told.ts.

import type { BuiltAthlete, BuiltWeek, Reason } from '../../build/types.ts';
import { getPhase } from '../../library/phases.ts';
import { DIRECTIONS } from '../../library/types.ts';
import { sportOf, sportOriginOf } from '../../plan/sport-of.ts';
import type { Origin, Plan } from '../../plan/types.ts';
import { levelOn } from '../../plan/athlete-facts.ts';
import { parseIsoDate } from '../../util/days.ts';
import { dateWithYear } from '../calendar-words.ts';
import type { Places } from '../places.ts';
import { kindWords, whyContacts } from '../week-words.ts';
import { numberOf, placesOf, ruleMark } from './told.ts';
import type { Params, Told } from './told.ts';
import { counted } from '../../util/counted.ts';

/**
 * The steps in the order in which one follows from the other. Of a week that is over what was wished for isn't told.
 */
export function weekChain(plan: Plan, built: BuiltAthlete, week: BuiltWeek, places: Places): readonly Told[] {
  const find = (about: string): Reason | undefined => week.reasons.find((reason) => reason.about === about);
  const [phase, kind, target] = [find('phase'), find('kind'), find('target')];
  return [
    ...(phase === undefined ? [] : [phaseTold(week, phase, places)]),
    ...(kind === undefined ? [] : [kindTold(week, kind, places)]),
    usedToTold(built, week, places),
    ...(target === undefined || week.done ? [] : [wantsTold(built, week, target, places)]),
    ...waiversTold(week, places),
    contactsTold(week, places),
    afterTold(week),
    ...(week.done || week.contacts === 0 ? [] : mixTold(plan, built, week, places)),
    ...(week.done ? [] : liftsTold(week, places)),
  ];
}

const PHASE: Readonly<Record<string, (params: Params) => string>> = {
  pin: () => 'the coach set this phase',
  empty: ({ barred }) => `no day is free for jumps: ${barredWords(String(barred))}`,
  path: (params) =>
    `of ${counted(numberOf(params, 'weeks'), 'open week')}${towards(params)} the path is ${params['path']}`,
  'in-season': (params) => `the season is on${towards(params)}: ${params['path']}`,
  hold: (params) => `${peakWords(params)} is ${numberOf(params, 'most')} weeks or fewer after the peak before`,
  foundation: ({ under_age: age, under_contacts: contacts }) =>
    age === undefined
      ? `a beginner whose sessions were under ${contacts} contacts learns to land first`
      : `under ${age} the whole season is foundation`,
  transition: () => 'rest from jumping',
  'after-peak': (params) => `rest from jumping after ${peakWords(params)}`,
  'after-last-peak': (params) => `after ${peakWords(params)} nothing more is built for`,
};

const peakWords = ({ peak, on }: Params): string => (peak === undefined ? 'the last peak' : `${peak} (${dateOf(on)})`);

const towards = (params: Params): string => (params['peak'] === undefined ? '' : ` up to ${peakWords(params)}`);

function dateOf(iso: string | number | undefined): string {
  const day = parseIsoDate(String(iso));
  return day === undefined ? '' : dateWithYear(day);
}

const BARRED: Readonly<Record<string, string>> = {
  closed: 'closed',
  away: 'away',
  'out-of-season': 'outside the season',
  competition: 'a competition',
  'event-gap': 'too near to an event',
  'after-peak': 'after the peak',
  'after-event': 'the day after an event',
  test: 'a test day',
  'rest-pin': 'rest set by the coach',
  'lifts-only': 'slots for lifts only',
  congested: 'competition days crowd together',
  limit: 'a limit stops jumps',
  'no-slot': 'no slot',
};

/** Why days of a week hold no jumps, from the ids of the grid with spaces between. */
export const barredWords = (barred: string): string =>
  barred
    .split(' ')
    .map((one) => BARRED[one] ?? one)
    .join(', ');

function phaseTold(week: BuiltWeek, { by, params, spans }: Reason, places: Places): Told {
  const words = PHASE[by];
  if (words === undefined) throw new Error(`no words for a phase by ${by}`);
  const assumed = by === 'pin' || by === 'empty' ? {} : { mark: 'C' as const };
  return { about: 'phase', words: `${week.phase}: ${words(params)}`, places: placesOf(spans, places), ...assumed };
}

const KIND: Readonly<Record<string, (params: Params) => string>> = {
  pin: () => 'the coach set this kind',
  load: () => 'nothing asks for another kind',
  hold: () => 'between two peaks the week stays light',
  transition: () => 'a rest from jumping',
  empty: (params) =>
    numberOf(params, 'loses') === 0
      ? 'no day is free for jumps'
      : `no day is free for jumps, and what is usual loses ${numberOf(params, 'loses')} %`,
  taper: (params) =>
    `week ${numberOf(params, 'step')} of ${numberOf(params, 'steps')} of the taper for ${peakWords(params)}`,
  'deload-rhythm': (params) => `after ${counted(numberOf(params, 'loading'), 'loading week')} in a row`,
  'return-ramp': (params) =>
    `week ${numberOf(params, 'step')} of ${numberOf(params, 'steps')} of the way back from ${counted(numberOf(params, 'away'), 'week')} away`,
  'returning-stage': ({ stage, of }) =>
    stage === 0 ? 'no stage of the return is open yet' : `stage ${stage} of ${of} of the return is open`,
};

function kindTold(week: BuiltWeek, { by, params, spans }: Reason, places: Places): Told {
  if (week.done && by === 'empty')
    return { about: 'kind', words: `${kindWords(week.kind)}: none were done`, places: [] };
  const words = KIND[by];
  if (words === undefined) throw new Error(`no words for a kind by ${by}`);
  const mark = by === 'taper' ? ruleMark('taper-cut') : ruleMark(by);
  return {
    about: 'kind',
    words: `${kindWords(week.kind)}: ${words(params)}`,
    places: placesOf(spans, places),
    ...mark,
  };
}

function usedToTold({ athlete }: BuiltAthlete, week: BuiltWeek, places: Places): Told {
  const adapted = week.reasons.find((reason) => reason.about === 'adapted')?.params ?? {};
  const opening = numberOf(adapted, 'opening');
  const cut = opening < week.adaptedBefore ? `, of which the way back begins with ${opening}` : '';
  if (week.week > 1) {
    return {
      about: 'used to',
      words: `${week.adaptedBefore} contacts a week, from the weeks before${cut}`,
      places: [],
    };
  }
  const { value, origin } = athlete.now;
  const words = `${value.contactsASession} contacts a session x ${value.sessionsAWeek} sessions a week = ${week.adaptedBefore}`;
  const whence = origin.kind === 'written' ? '' : `, assumed for ${levelOn(athlete, week.starts)}`;
  return { about: 'used to', words: words + whence + cut, ...originTold(origin, places) };
}

/** What the level assumes of an athlete is common practice. */
function originTold(origin: Origin, places: Places): Pick<Told, 'places' | 'mark'> {
  return origin.kind === 'written' ? { places: placesOf([origin.span], places) } : { places: [], mark: 'C' };
}

function wantsTold({ athlete }: BuiltAthlete, week: BuiltWeek, { params, spans }: Reason, places: Places): Told {
  if (params['share'] === undefined) {
    const words = week.kind === 'empty' || week.kind === 'transition' ? 'no jumps' : 'as much as is allowed';
    return { about: 'wants', words, places: [] };
  }
  const level = levelOn(athlete, week.starts);
  const goal = athlete.goal === undefined ? `the foot of the band of ${level}` : "the athlete's goal";
  const cut = params['cut_by'] === undefined ? '' : `, held at ${params['session']} by ${params['cut_by']}`;
  const words =
    `${params['share']} % of ${params['goal']} contacts a session (${goal})${cut} ` +
    `x ${counted(week.possible, 'session')} = ${week.target}`;
  const origin = athlete.goal?.origin;
  const written = origin?.kind === 'written' ? [origin.span] : [];
  return { about: 'wants', words, places: placesOf([...written, ...spans], places), mark: 'C' };
}

const waiversTold = (week: BuiltWeek, places: Places): readonly Told[] =>
  week.reasons
    .filter(({ about }) => about === 'waived')
    .map(({ by, spans }) => ({ about: 'waived', words: `${by} is waived`, places: placesOf(spans, places), rule: by }));

function contactsTold(week: BuiltWeek, places: Places): Told {
  const reason = week.reasons.find(({ about }) => about === 'contacts');
  const words = `${week.contacts} contacts: ${whyContacts(week)}`;
  return { about: 'so', words, places: placesOf(reason?.spans ?? [], places), ...ruleMark(week.boundBy) };
}

const AFTER: Readonly<Record<string, string>> = {
  follow: 'the larger of what is planned and the mean of that, counted twice, and what was usual',
  stay: 'kept through a week like this',
  fade: 'less for a week without jumps',
  unwritten: "a week that isn't written raises nothing",
  leap: 'a leap counts for no more than was planned, as nobody is used to it for having made it once',
  over: 'what was done over the plan counts for no more than was planned',
};

function afterTold(week: BuiltWeek): Told {
  const told = week.reasons.find(({ about }) => about === 'adapted')?.by ?? 'stay';
  const keep = told === 'fade' && week.adapted === week.adaptedBefore ? 'stay' : told;
  return { about: 'then', words: `used to ${week.adapted} a week: ${AFTER[keep] ?? keep}`, places: [], mark: 'C' };
}

/** Where the week's jumps go, and who says so. A profile's shares and a phase's are common practice. */
function mixTold(plan: Plan, { athlete }: BuiltAthlete, { phase }: BuiltWeek, places: Places): readonly Told[] {
  const { name, mark, directions: ofSport } = sportOf(plan, athlete);
  const directions = ofSport ?? getPhase(phase).directions;
  if (directions === undefined) return [];
  const shares = DIRECTIONS.map((way) => `${directions[way]} % ${way}`).join(', ');
  const whose = athlete.sport === undefined ? "the season's sport" : "the athlete's own sport";
  const origin = sportOriginOf(plan, athlete);
  const by = ofSport === undefined ? `as ${phase} asks for` : `${name.toLowerCase()}, ${whose}`;
  const written = origin.kind === 'written' ? [origin.span] : [];
  return [{ about: 'mix', words: `${shares}: ${by}`, places: placesOf(written, places), mark }];
}

function liftsTold(week: BuiltWeek, places: Places): readonly Told[] {
  return week.reasons.flatMap(({ about, by, params, spans }) => {
    if (about !== 'lift-sessions' && about !== 'sessions') return [];
    const what = about === 'sessions' ? 'jump session' : 'lift session';
    const held = numberOf(params, 'held');
    const wanted = numberOf(params, 'wanted');
    const words = FEWER[by];
    if (words !== undefined) {
      const fewer = `${held} of ${counted(wanted, what)}: ${words(params)}`;
      return [{ about: 'sessions', words: fewer, places: placesOf(spans, places), ...ruleMark(by) }];
    }
    if (held < wanted || wanted === 0) return [];
    return [
      { about: 'sessions', words: `${counted(held, what)}: ${liftBy(by)}`, places: placesOf(spans, places), mark: 'C' },
    ];
  });
}

const FEWER: Readonly<Record<string, (params: Params) => string>> = {
  'open-days': (params) => `${counted(numberOf(params, 'open'), 'day')} open`,
  'lift-event-gap': ({ event }) => `none on the eve of ${event}`,
  'lift-spacing': (params) => `they stand ${counted(numberOf(params, 'apart'), 'day')} apart`,
  'session-spacing': (params) => `they stand ${counted(numberOf(params, 'apart'), 'day')} apart`,
};

function liftBy(by: string): string {
  if (by === 'programme') return 'written by hand';
  if (by === 'congested-week') return 'short ones, as competition days crowd together';
  return by === 'strength-always' ? 'strength never leaves' : `as ${by} asks for`;
}
