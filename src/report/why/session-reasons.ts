// Why a session stands on its day, why its lifting is light, why drops stay out, what was left out: the reasons that the
// scheduler gives a session, in words. Called by sessions-told.ts.

import type { Reason } from '../../build/types.ts';
import { parseIsoDate } from '../../util/days.ts';
import { dayWords } from '../calendar-words.ts';
import { numberOf } from './told.ts';
import type { Params } from './told.ts';
import { barredWords } from './week-chain.ts';
import { counted } from '../../util/counted.ts';

/** Throws for a reason it has no words for. */
export function sessionReasonWords(
  { about, by, params }: Reason,
  nameOf: (exercise: string) => string,
  slotMinutes: number,
): string {
  switch (about) {
    case 'day':
    case 'lift-day':
      return dayReason(about === 'day' ? 'jumps' : 'lifts', by, params);
    case 'spacing':
      return `${params['rule']} is waived`;
    case 'drops':
      return `no drops: ${NEXT[String(params['next'])] ?? String(params['next'])} on ${dateOf(params)}`;
    case 'heavy':
      return heavyReason(by, params);
    case 'minutes':
      return `${numberOf(params, 'minutes')} of ${slotMinutes} minutes, after ${cutWords(params)}`;
    case 'contacts':
      return params['done'] === undefined
        ? `cut, as the week is held: ${CUT[by] ?? by}`
        : `cut, as ${numberOf(params, 'done')} contacts of the ${numberOf(params, 'planned')} of the week are on record already`;
    case 'line':
      return params['left'] === undefined
        ? `a line of the coach's: ${by}`
        : `${nameOf(String(params['left']))} is left out: ${LEFT[by] ?? `held back by ${by}`}`;
    default:
      return `${about}: ${by}`;
  }
}

function dateOf({ on }: Params): string {
  const day = parseIsoDate(String(on));
  return day === undefined ? String(on) : dayWords(day);
}

const CUT: Readonly<Record<string, string>> = {
  budget: "other jumps on record leave less of the coach's budget",
  'pain-hold': 'pain the next morning',
  'all-jumps-rise': 'other jumps on record rose',
};

const NEXT: Readonly<Record<string, string>> = {
  session: 'the next jump session is',
  match: 'a competition is',
  'hard-day': 'many other jumps come',
};

const DAY: Readonly<Record<string, (params: Params) => string>> = {
  pin: () => 'the coach set the day',
  programme: ({ programme }) => `the programme ${programme} sets the day`,
  published: () => 'as on the sheet that is out',
  pattern: () => 'as the week before',
  'usual-day': () => 'the usual day',
  'last-week': ({ event }) => (event === undefined ? 'a primer before the event' : `a primer before ${event}`),
  'session-spacing': apartWords,
  'lift-spacing': apartWords,
  'least-cost': () => 'the days of the season fit best so',
};

function apartWords(params: Params): string {
  return `the only way ${numberOf(params, 'open')} open days stand ${numberOf(params, 'apart')} days apart`;
}

function dayReason(what: string, by: string, params: Params): string {
  const words = by === 'open-days' ? openDays(params) : DAY[by]?.(params);
  if (words === undefined) throw new Error(`no words for a day by ${by}`);
  return `${what} on ${params['weekday']}: ${words}`;
}

function openDays(params: Params): string {
  const { instead, barred } = params;
  if (instead === undefined) return `${counted(numberOf(params, 'open'), 'day')} open, and all are needed`;
  return `${instead} isn't open${barred === undefined ? '' : `: ${barredWords(String(barred))}`}`;
}

function heavyReason(by: string, params: Params): string {
  const days = numberOf(params, 'days');
  if (by === 'test-fresh') return `light lifting: a test ${days === 0 ? 'the same day' : `in ${counted(days, 'day')}`}`;
  return `light lifting${SPARED[String(params['spares'])] ?? ''}: ${params['event']} in ${counted(days, 'day')}`;
}

const SPARED: Readonly<Record<string, string>> = {
  lowered: ', no eccentric work for the hamstrings',
  eve: ' and little for the legs',
};

function cutWords(params: Params): string {
  const lines = numberOf(params, 'lines');
  const sets = numberOf(params, 'sets');
  const cut = [...(lines > 0 ? [counted(lines, 'line')] : []), ...(sets > 0 ? [counted(sets, 'set')] : [])];
  return cut.length === 0 ? 'no cut' : `${cut.join(' and ')} went to fit the slot`;
}

const LEFT: Readonly<Record<string, string>> = {
  pin: "it is the coach's wish",
  kit: 'the place has no kit for it',
  'session-contacts': 'the session has no contacts left for it',
  'lift-days': 'no lower-body lifting that day',
  'jump-days': 'no jumps that day',
  'fast-spacing': 'something demanding is too near for drops',
  limit: "the athlete's limit bars it",
};
