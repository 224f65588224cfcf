// The bounds on a week's contacts, each with the number it allows and the numbers it was made of, lowest first. Called by
// ../why.ts.

import type { Bound, BoundRule, BuiltWeek } from '../../build/types.ts';
import type { Places } from '../places.ts';
import { numberOf, placesOf, ruleMark } from './told.ts';
import type { Params, Told } from './told.ts';
import { counted } from '../../util/counted.ts';

export interface BoundTold extends Told {
  readonly by: string;
  /** Contacts a week. */
  readonly most: number;
  /** Whether it is the one that held the week. */
  readonly held: boolean;
}

/** None for a week that is over: what was done asked no bound. */
export function boundsTold({ bounds, boundBy, contacts, done }: BuiltWeek, places: Places): readonly BoundTold[] {
  if (done) return [];
  const held = boundBy === 'target' || boundBy === 'reach' ? undefined : bounds.find(({ by }) => by === boundBy);
  const lowest = bounds.reduce<Bound | undefined>(
    (least, bound) => (bound.by === boundBy && (least === undefined || bound.most < least.most) ? bound : least),
    held,
  );
  return bounds
    .map((bound): BoundTold => ({
      about: 'bound',
      by: bound.by,
      most: bound.most,
      words: boundWords(bound),
      places: placesOf(bound.spans ?? [], places),
      held: bound === lowest && contacts <= bound.most,
      ...ruleMark(bound.rule ?? bound.by),
      ...(WITHOUT_RULE.has(bound.by) || bound.params?.['before'] !== undefined ? { mark: 'C' as const } : {}),
    }))
    .toSorted((a, b) => a.most - b.most);
}

/** Bounds whose numbers are nobody's rule: common practice, as is what a taper week leaves to the one behind it. */
const WITHOUT_RULE: ReadonlySet<string> = new Set(['hold', 'slot-minutes', 'open-days']);

function boundWords(bound: Bound): string {
  return WORDS[bound.rule ?? bound.by](bound.params ?? {});
}

const WORDS: Readonly<Record<BoundRule, (params: Params) => string>> = {
  'weekly-rise': ({ adapted, percent, contacts }) =>
    `${adapted} and ${percent} % more, or ${contacts} contacts more, whichever is more`,
  'all-jumps-rise': ({ adapted, percent, usual, other }) =>
    other === undefined
      ? `other jumps rise this week, so no more than the usual ${adapted}`
      : `${percent} % of the usual ${adapted} and ${usual} in practice, matches and tests, less the ${other} of this week; never under half of what is usual`,
  'session-rise': sessionRise,
  'session-ceiling': (params) => `${sessions(params)} at this level`,
  'slot-minutes': (params) => `${sessions(params)} in ${numberOf(params, 'minutes')} minutes`,
  'youth-ceiling': (params) => `${sessions(params)} at the age of ${numberOf(params, 'age')}`,
  'returning-stage': (params) =>
    params['stage'] === 0
      ? 'no jumps before a stage of the return is signed'
      : `${sessions(params)} in stage ${params['stage']} of ${params['of']}`,
  limit: (params) =>
    params['session'] === undefined ? "the athlete's limit for the week" : `${sessions(params)} by the athlete's limit`,
  'deload-depth': easy,
  'taper-cut': easy,
  hold: easy,
  'return-ramp': ({ adapted, percent }) => `${percent} % of ${adapted}, a step of the way back`,
  budget: ({ jumps, other }) => `${jumps} jumps of every kind, less ${other} in practice, competitions and tests`,
  'pain-hold': ({ adapted }) =>
    adapted === undefined
      ? 'no jumps after pain like this, until a later morning is better'
      : `no rise after pain the next morning, so no more than the usual ${adapted}`,
  record: ({ adapted, done, written, planned }) =>
    done === undefined
      ? `no rise while nothing is recorded, so no more than the usual ${adapted}`
      : `${done} contacts are done of a week of ${planned}, where ${written} were written by now: what is over is taken from what is left`,
  'last-week': () => 'a short primer before the event',
  'open-days': (params) => (params['usual'] === undefined ? 'no day is open' : easy(params)),
};

/** `2 sessions of 75`. */
function sessions(params: Params): string {
  return `${counted(numberOf(params, 'possible'), 'session')} of ${numberOf(params, 'session')}`;
}

function sessionRise(params: Params): string {
  const { usual, percent, contacts } = params;
  return `${sessions(params)}: the usual ${usual} and ${percent} % more, or ${contacts} contacts more, whichever is more`;
}

function easy(params: Params): string {
  if (params['run'] !== undefined) return `under ${params['run']}, the least loading week of its run`;
  if (params['before'] !== undefined) {
    return `${sessions(params)}: ${params['percent']} % over ${params['before']}, the largest of the taper week before`;
  }
  if (params['usual'] === undefined) return `${params['percent']} % of the usual ${params['adapted']}`;
  return `${sessions(params)}: ${params['percent']} % of the usual ${params['usual']}`;
}
