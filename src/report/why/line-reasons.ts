// Why a line has its drill, its rung, its lift, its sets and its kilos, in words. Called by sessions-told.ts.

import type { Reason } from '../../build/types.ts';
import type { Plan } from '../../plan/types.ts';
import { exerciseName } from '../exercise-words.ts';
import type { Places } from '../places.ts';
import { loadWords } from '../../util/quantities.ts';
import type { Units } from '../../util/quantities.ts';
import { refusalWords } from '../refusal-words.ts';
import { numberOf } from './told.ts';
import type { Params } from './told.ts';

interface Names {
  readonly exercise: (id: string | number | undefined) => string;
  readonly load: (grams: number) => string;
}

/** Throws for a reason it has no words for. */
export function lineReasonWords(plan: Plan, reason: Reason, places: Places): string {
  const names: Names = {
    exercise: (id) => exerciseName(plan.library, String(id), plan.season.units),
    load: (grams) => loadWords(grams, plan.season.units),
  };
  if (reason.about === 'rung') return rungWords(reason, names, places, plan.season.units);
  const words = WORDS[`${reason.about} ${reason.by}`];
  if (words === undefined) throw new Error(`no words for ${reason.about} by ${reason.by}`);
  return words(reason.params, names);
}

/** What holds the next rung back within this session; what holds the athlete back is told by `refusalWords`. */
const RUNG: Readonly<Record<string, string>> = {
  'each-leg': 'one drill of one leg is there already',
  'fast-spacing': 'something demanding is too near',
  'high-tier-share': 'the week has its share of the high tier',
  'new-drills': 'enough drills are new this week',
  'static-share': 'the week has its share of still starts',
  'drop-count': 'the week has its drops',
  'stability-share': 'unstable ground stays a small part',
  'pain-hold': 'pain the next morning holds it',
  'return-ramp': 'not yet, on the way back',
  'taper-cut': 'the taper keeps the tier of the weeks before',
  'fast-cycle-share': 'not in the first weeks of jumping',
  pin: 'the coach leaves it out',
};

function rungWords({ by, params, spans }: Reason, { exercise }: Names, places: Places, units: Units): string {
  if (by === 'top') return 'the highest rung of its family';
  const held = RUNG[by] ?? refusalWords({ by, params, spans: [] }, places, units);
  return `the highest rung allowed${spans.length === 0 ? '' : ' here'}; next is ${exercise(params['next'])}: ${held}`;
}

const WORDS: Readonly<Record<string, (params: Params, names: Names) => string>> = {
  'drill group-family': ({ family }) => `the family of the group: ${family}`,
  'drill own-family': ({ family }) => `a family of one's own, as no rung of the group's fits: ${family}`,
  'drill pin': ({ drill }, { exercise }) => `the coach asks for ${exercise(drill)}`,
  'sets widened': ({ sets, reps }) => `${sets} x ${reps}, outside the drill's usual dose, to make the contacts exactly`,
  'sets pin': ({ sets }) => `the coach set ${sets} sets`,
  'lift pattern': ({ pattern }) => `for the pattern ${pattern}`,
  'lift pin': ({ from, to, keep }, { exercise }) =>
    keep === undefined ? `the coach put ${exercise(to)} for ${exercise(from)}` : `the coach keeps ${exercise(keep)}`,
  'line programme': ({ programme }) => `written by hand in ${programme}`,
  'line always': () => 'in every session',
  'line pin': () => 'added by the coach',
  'load max': maxWords,
  'load estimated-max': (params, names) => `${maxWords(params, names)}, estimated from a set`,
  'load no-max': () => 'no maximum is written: by reps in reserve',
  'load reserve': () => 'by feel: it has no maximum to go by',
  'load pin': ({ grams }, { load }) => `the coach set ${load(Number(grams))}`,
  'load test-stale': () => 'the maximum is old: test again',
  'load time-away': ({ share }) => `the maximum counts ${share} % after time away`,
  'load load-step': () => 'no further than a step above the loading week before',
  'load plates': ({ percent, grams }, { load }) =>
    `the kit makes no more, where ${percent} % are ${load(Number(grams))}`,
  'load level': () => 'no more of the maximum at this level',
  'load youth-load': () => 'no more of the maximum at this age',
  'load not-heavy': () => 'light on this day',
  'load load-reserve': () => 'so that reps stay in reserve',
};

function maxWords(params: Params, { exercise, load }: Names): string {
  const whole = load(numberOf(params, 'wholeGrams'));
  const of = `the maximum of ${exercise(params['of']).toLowerCase()}`;
  const words = `${params['percent']} % of ${whole}`;
  // A share of another lift's maximum isn't that maximum: said so, nobody loads it as if it were.
  return params['share'] === undefined
    ? `${words}, ${of}`
    : `${words}; ${params['share']} % of ${of} stands for the whole of this lift`;
}
