// What would change a week's contacts: the pin or waiver to write, whole, with the number the week then has where that is
// certain; or the line of the plan, or the date, that holds it. Read off the week's bounds. Called by ../why.ts.

import type { Bound, BuiltWeek } from '../../build/types.ts';
import { findRule } from '../../library/rules.ts';
import { VOLUME } from '../../library/volume.ts';
import type { Athlete, Plan } from '../../plan/types.ts';
import { counted } from '../../util/counted.ts';
import { DAYS_A_WEEK, isoDate } from '../../util/days.ts';
import { dateWithYear } from '../calendar-words.ts';
import type { Places } from '../places.ts';
import { placesOf } from './told.ts';
import { barredWords } from './week-chain.ts';

export interface Advice {
  readonly words: string;
  readonly places: readonly string[];
  /** The rule that would be waived, or that can't be. */
  readonly rule?: string;
  /** Lines to add to the plan. */
  readonly adds: readonly AddedLine[];
  /** The week's contacts once they are added; absent where what follows isn't certain. */
  readonly contacts?: number;
}

export interface AddedLine {
  readonly list: 'pins' | 'waivers';
  /** One item of the list, as YAML. */
  readonly item: string;
}

interface Asked {
  readonly plan: Plan;
  readonly athlete: Athlete;
  readonly week: BuiltWeek;
  readonly places: Places;
}

/** Never empty. */
export function adviceOf(plan: Plan, athlete: Athlete, week: BuiltWeek, places: Places): readonly Advice[] {
  const asked: Asked = { plan, athlete, week, places };
  if (week.done) return [correctRecord(asked)];
  if (week.kind === 'empty') return [openAgain(asked)];
  if (week.kind === 'transition') return [endTransition(asked)];
  if (week.underWay !== undefined) return [...holdingNow(asked), correctRunning(asked)];
  const fixed = week.reasons.find(({ about }) => about === 'contacts')?.params['fixed'];
  if (fixed !== undefined) return fixedAdvice(asked, fixed === 'programme');
  if (week.boundBy === 'pain-hold' && week.contacts === 0) return freeing(asked);
  const more = [...moreAsItIs(asked), ...freeing(asked), ...otherKind(asked)];
  return more.length > 0 ? more : [fewer(asked)];
}

const roundDown = (contacts: number): number => Math.floor(contacts / VOLUME.step) * VOLUME.step;

const least = (bounds: readonly number[]): number => Math.max(0, roundDown(Math.min(...bounds)));

/** The most that all bounds leave, as they are. */
const mostNow = ({ bounds, mostContacts }: BuiltWeek): number =>
  bounds.length === 0 ? mostContacts : least(bounds.map(({ most }) => most));

const contactsPin = ({ athlete, week }: Asked, contacts: number): AddedLine => ({
  list: 'pins',
  item: `{ athletes: [${athlete.id}], week: ${isoDate(week.starts)}, contacts-a-week: ${contacts}, because: "say why" }`,
});

function waiverLine({ athlete, week }: Asked, rule: string): AddedLine {
  const dates = `from: ${isoDate(week.starts)}, until: ${isoDate(week.starts + DAYS_A_WEEK - 1)}`;
  const decided = findRule(rule)?.whoDecided === true ? ', decided: "say who"' : '';
  return {
    list: 'waivers',
    item: `{ rule: ${rule}, athletes: [${athlete.id}], ${dates}, because: "say why"${decided} }`,
  };
}

/** A pin alone, where the bounds leave room over what is planned. */
function moreAsItIs(asked: Asked): readonly Advice[] {
  const { week } = asked;
  const most = mostNow(week);
  if (most <= week.contacts) return [];
  const words = `${week.contacts} is what the phase wants, not the most: a pin may go up to ${most}`;
  return [{ words, places: [], adds: [contactsPin(asked, most)], contacts: most }];
}

/** What frees the bound that allows least. */
function freeing(asked: Asked): readonly Advice[] {
  const { week } = asked;
  const most = mostNow(week);
  if (most > week.contacts) return [];
  const holding = week.bounds.filter((bound) => roundDown(bound.most) <= most);
  return holding.flatMap((bound) => freeOne(asked, bound, holding)).filter(isFirstOfItsWords);
}

const isFirstOfItsWords = ({ words }: Advice, at: number, all: readonly Advice[]): boolean =>
  all.findIndex((one) => one.words === words) === at;

function freeOne(asked: Asked, bound: Bound, holding: readonly Bound[]): readonly Advice[] {
  const id = bound.rule ?? bound.by;
  const rule = findRule(id);
  const own = ownAdvice(asked, bound, id);
  if (rule === undefined || !rule.waivable || bound.by === 'slot-minutes' || id === 'last-week') return [own];
  if (id === 'return-ramp') return [own, waiveReturn(asked)];
  // Whether somebody who hurts may do more is for those who can judge it; no number is offered for it.
  if (id === 'pain-hold') return [own];
  const alone = holding.every((other) => (other.rule ?? other.by) === id);
  return alone ? [...(own.places.length > 0 ? [own] : []), waiveAndPin(asked, id)] : [own];
}

/** The line, the date or the fact that moves a bound. */
function ownAdvice(asked: Asked, bound: Bound, id: string): Advice {
  const places = placesOf(bound.spans ?? [], asked.places);
  // Lines behind a cut of the session are those that close days: it is a day that would move it, and not the rule.
  const isShortOfDays = bound.params?.['session'] !== undefined && places.length > 0;
  const words = (OWN[id] ?? OWN[isShortOfDays ? 'session-rise' : 'rule'])?.(asked, bound) ?? '';
  return { words, places, adds: [], ...(findRule(id) === undefined ? {} : { rule: id }) };
}

const OWN: Readonly<Record<string, (asked: Asked, bound: Bound) => string>> = {
  limit: ({ athlete, week }, bound) => {
    const limit = athlete.limits.find(({ span }) => bound.spans?.some((one) => isSame(one, span)));
    const range = limit?.range;
    const ends = range === undefined ? 'its end' : `its end, ${dateWithYear(range.until)}`;
    return `the limit holds until ${ends}: an end before ${dateWithYear(week.starts)}, or a higher number, frees the week`;
  },
  'returning-stage': (_, { params }) =>
    `signing stage ${(params?.['stage'] ?? 0) + 1} in \`returning:\` opens it; it can't be waived`,
  'youth-ceiling': (_, { params }) =>
    `it opens with age, over ${params?.['to'] ?? 0}, or after the first weeks of jumping; it can't be waived`,
  'slot-minutes': (_, { params }) => `a slot of more than ${params?.['minutes'] ?? 0} minutes holds more`,
  'open-days': () => 'an open day in the week, in `slots:` or by ending what closes it, makes room',
  'session-rise': ({ week }) =>
    `the week can hold ${counted(week.possible, 'jump session')}: one more day open to jumps, far enough from the others, makes room for another`,
  'last-week': () => 'only a primer fits before the event: an open day further from it makes room for a session',
  budget: () => 'the budget itself is yours to change',
  'return-ramp': ({ week }) => `the way back goes on by itself in the week after ${dateWithYear(week.starts)}`,
  'pain-hold': (_, { params }) =>
    params === undefined
      ? 'a later morning on the record with less pain lets the jumps begin again'
      : 'it ends by itself a week after the morning that hurt, or with a later one on the record that hurts less',
  record: () => 'record what was done: a row for each session, with 0 contacts for one that was left out',
  hold: () => 'a pin of another phase ends the hold',
  rule: (_, { rule, by }) => `the number of ${rule ?? by} is yours to change, under \`rules:\``,
};

function isSame(a: { readonly file: string; readonly start: number }, b: typeof a): boolean {
  return a.file === b.file && a.start === b.start;
}

/** A waiver and a pin together: the waiver opens, the pin says how far. */
function waiveAndPin(asked: Asked, id: string): Advice {
  const { week } = asked;
  const left = week.bounds.flatMap((bound) =>
    (bound.rule ?? bound.by) === id ? (bound.otherwise ?? []) : [bound.most],
  );
  const rest = left.filter((most) => roundDown(most) > week.contacts);
  const contacts = left.length === rest.length && left.length > 0 ? least(left) : undefined;
  const adds = [waiverLine(asked, id), ...(contacts === undefined ? [] : [contactsPin(asked, contacts)])];
  const words =
    contacts === undefined
      ? `a waiver of ${id} leaves its bound out`
      : `a waiver of ${id} leaves its bound out, and a pin may then go up to ${contacts}`;
  return { words, places: [], rule: id, adds, ...(contacts !== undefined && { contacts }) };
}

const waiveReturn = (asked: Asked): Advice => ({
  words: 'a waiver of return-ramp, naming who decided, plans the week as if nobody had been away',
  places: [],
  rule: 'return-ramp',
  adds: [waiverLine(asked, 'return-ramp')],
});

/** Easy weeks are a choice of the calendar: a pinned kind or phase makes another week of it. */
function otherKind({ athlete, week }: Asked): readonly Advice[] {
  const pin = (key: string): AddedLine => ({
    list: 'pins',
    item: `{ athletes: [${athlete.id}], week: ${isoDate(week.starts)}, ${key}, because: "say why" }`,
  });
  if (week.kind === 'deload') {
    const words = 'a pin of the kind makes it a loading week; the easy week then falls elsewhere';
    return [{ words, places: [], adds: [pin('kind: load')], rule: 'deload-rhythm' }];
  }
  if (week.kind !== 'hold') return [];
  return [{ words: 'a pin of the phase ends the hold', places: [], adds: [pin('phase: maintenance, kind: load')] }];
}

/** What holds the rest of a week under way other than what was done over; what follows from it hangs on the days so far. */
const holdingNow = (asked: Asked): readonly Advice[] =>
  asked.week.bounds
    .filter(({ by }) => by === asked.week.boundBy && by !== 'record')
    .map((bound) => ownAdvice(asked, bound, bound.rule ?? bound.by))
    .filter(isFirstOfItsWords);

/** Where nothing gives more: less can always be had. */
function fewer(asked: Asked): Advice {
  const contacts = roundDown(asked.week.contacts / 2);
  const words = `nothing opens more here; fewer can be pinned any time, ${contacts} say`;
  return { words, places: [], adds: [contactsPin(asked, contacts)], contacts };
}

function fixedAdvice(asked: Asked, byHand: boolean): readonly Advice[] {
  const { week, places } = asked;
  const spans = week.reasons.find(({ about }) => about === 'contacts')?.spans ?? [];
  const where = placesOf(spans, places);
  if (byHand) {
    return [
      { words: 'its contacts are those of the lines written by hand: change them there', places: where, adds: [] },
    ];
  }
  const most = mostNow(week);
  const room = most > week.contacts ? `; up to ${most} is safe` : '';
  return [{ words: `the number is pinned: change or take out the pin${room}`, places: where, adds: [] }];
}

/** What is over can't be planned; a record can be put right. */
function correctRecord({ week, places }: Asked): Advice {
  const rows = placesOf(week.reasons.find(({ about }) => about === 'contacts')?.spans ?? [], places);
  const words =
    rows.length > 0
      ? 'the week is over, and its contacts are those on the record: put the rows right if they are wrong'
      : 'the week is over and nothing is recorded of it, so it counts for no more than the last one that was: record it';
  return { words, places: rows, adds: [] };
}

/** What was done stays done; only a slip can be mended. */
function correctRunning({ week, places }: Asked): Advice {
  const rows = placesOf(week.reasons.find(({ about }) => about === 'contacts')?.spans ?? [], places);
  const words = `the week ${week.boundBy === 'record' ? 'has had its contacts' : 'goes by its record'}: put the rows right if they are wrong`;
  return { words, places: rows, adds: [] };
}

function openAgain({ week, places }: Asked): Advice {
  const reason = week.reasons.find(({ about }) => about === 'phase');
  const where = placesOf(reason?.spans ?? [], places);
  const barred = barredWords(String(reason?.params['barred'] ?? 'no-slot'));
  return { words: `an open day makes a week of it: what bars them now is ${barred}`, places: where, adds: [] };
}

function endTransition({ athlete, week }: Asked): Advice {
  const item = `{ athletes: [${athlete.id}], week: ${isoDate(week.starts)}, phase: maintenance, because: "say why" }`;
  return { words: 'a pin of another phase ends the rest', places: [], adds: [{ list: 'pins', item }] };
}
