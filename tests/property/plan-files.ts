// A random plan written down in the plan language, in one file or several: each file is JSON, which is YAML. Whatever has
// no order is dealt out by a chance of its own: keys of every mapping, items of every list, the files they stand in.

import fc from 'fast-check';
import type {
  Athlete,
  Avoid,
  DoneRow,
  Limit,
  Pin,
  PinEffect,
  Plan,
  Programme,
  RuleChange,
  Slot,
  Who,
  WrittenLine,
} from '../../src/plan/types.ts';
import { findParameter } from '../../src/library/rules.ts';
import { isoDate, WEEKDAY_NAMES } from '../../src/util/days.ts';
import type { Day } from '../../src/util/days.ts';

type Json = string | number | boolean | readonly Json[] | { readonly [key: string]: Json | undefined };
type Fields = { readonly [key: string]: Json | undefined };

/** Whole numbers under a bound, in a fixed order of their own. */
export type Chance = (below: number) => number;

/** A chance that can be drawn again. */
export const chance: fc.Arbitrary<Chance> = fc.infiniteStream(fc.nat({ max: 1_000_000 })).map((stream) => {
  const drawn: number[] = [];
  return (below) => {
    const next = stream.next().value ?? 0;
    drawn.push(next);
    return next % below;
  };
});

/** Nothing is dealt: everything stays in the order it was written in. */
export const IN_ORDER: Chance = () => 0;

const ENTRY = '/plan/season.yaml';
const OTHERS = ['/plan/more/first.yaml', '/plan/more/second.yaml'] as const;
const DONE = '/plan/done.csv';

/** The files of a plan, by path. */
export function planFiles(plan: Plan, deal: Chance): Readonly<Record<string, string>> {
  const files = new Map<string, Record<string, Json>>([ENTRY, ...OTHERS].map((path) => [path, {}]));
  const apart = deal === IN_ORDER ? 1 : files.size;
  const put = (section: string, entries: Fields | readonly Json[]): void => {
    const isList = Array.isArray(entries);
    const items = isList ? [...(entries as readonly Json[])] : Object.entries(entries);
    for (const item of items) {
      const file = [...files.values()][deal(apart)] ?? {};
      if (isList) file[section] = [...((file[section] ?? []) as readonly Json[]), item as Json];
      else
        file[section] = {
          ...(file[section] as Fields | undefined),
          [(item as [string, Json])[0]]: (item as [string, Json])[1],
        };
    }
  };
  for (const [section, entries] of Object.entries(sectionsOf(plan))) put(section, entries);
  const entry = files.get(ENTRY);
  if (entry === undefined) throw new Error('no entry file');
  Object.assign(entry, {
    footfall: 1,
    season: seasonOf(plan),
    files: OTHERS.map((path) => path.slice('/plan/'.length)),
    ...(plan.record.done.length > 0 && { record: { done: DONE.slice('/plan/'.length) } }),
  });
  return Object.fromEntries([
    ...[...files].map(([path, content]) => [path, `${JSON.stringify(shuffled(content, deal))}\n`]),
    ...(plan.record.done.length > 0 ? [[DONE, doneTable(plan.record.done)]] : []),
  ]);
}

const doneTable = (rows: readonly DoneRow[]): string =>
  [
    'date,athlete,kind,contacts,minutes,effort,pain,note',
    ...rows.map(({ day, athlete, kind, contacts, minutes, effort, pain, note }) =>
      [isoDate(day), athlete, kind, contacts, minutes, effort, pain, note].join(','),
    ),
    '',
  ].join('\n');

/** Every mapping and every list in another order. */
function shuffled(value: Json, deal: Chance): Json {
  if (Array.isArray(value)) return dealt(value as readonly Json[], deal).map((item) => shuffled(item, deal));
  if (typeof value !== 'object') return value;
  return Object.fromEntries(
    dealt(Object.entries(value), deal).flatMap(([key, item]) =>
      item === undefined ? [] : [[key, shuffled(item, deal)]],
    ),
  );
}

function dealt<T>(items: readonly T[], deal: Chance): readonly T[] {
  if (deal === IN_ORDER) return items;
  const left = [...items];
  return items.map(() => left.splice(deal(left.length), 1)[0] as T);
}

function sectionsOf(plan: Plan): Readonly<Record<string, Fields | readonly Json[]>> {
  return {
    places: Object.fromEntries([...plan.places].map(([id, place]) => [id, { kit: kitOf(place.kit) }])),
    slots: plan.slots.map(slotOf),
    competitions: plan.competitions.map(({ name, range, prepare, jumps, who }, at) => ({
      name: `${name} ${at + 1}`,
      date: isoDate(range.from),
      until: isoDate(Math.min(range.until, plan.season.ends)),
      prepare,
      jumps,
      ...whoOf(who),
    })),
    closures: plan.closures.map(({ range, because, trained, places, who }) => ({
      ...rangeOf(range),
      because,
      trained,
      places,
      ...whoOf(who),
    })),
    practice: plan.practice.map(({ day, jumps, range, who }) => ({
      day: WEEKDAY_NAMES[day],
      jumps,
      ...rangeOf(range),
      ...whoOf(who),
    })),
    tests: plan.tests.map(({ day, what, contacts, who }) => ({ date: isoDate(day), what, contacts, ...whoOf(who) })),
    squads: Object.fromEntries([...plan.squads.keys()].map((id) => [id, {}])),
    athletes: Object.fromEntries(plan.athletes.map((one) => [one.id, athleteOf(one)])),
    rules: rulesOf(plan.ruleChanges),
    programmes: Object.fromEntries([...plan.programmes].map(([id, one]) => [id, programmeOf(one)])),
    use: plan.uses.map(({ programme, from, who }) => ({
      programme: programme.id,
      from: isoDate(from),
      ...whoOf(who),
    })),
    pins: plan.pins.map(pinOf),
    waivers: plan.waivers.map(({ rule, range, who, because, decided }) => ({
      rule,
      ...rangeOf(range),
      ...whoOf(who),
      because,
      decided,
    })),
  };
}

const programmeOf = ({ weeks }: Programme): Json =>
  weeks.map(({ week, days }) => ({
    week,
    ...Object.fromEntries(days.map(({ day, lines }) => [WEEKDAY_NAMES[day], lines.map(lineOf)])),
  }));

const lineOf = ({ exercise, sets, reps, percent }: WrittenLine): Json => ({
  [exercise.kind]: exercise.id,
  sets,
  reps,
  percent: percent === undefined ? undefined : `${percent} %`,
});

const rangeOf = ({ from, until }: { readonly from: Day; readonly until: Day }): Fields => ({
  from: isoDate(from),
  until: isoDate(until),
});

function whoOf(who: Who): Fields {
  if (who.kind === 'everybody') return {};
  return who.squads.length > 0 ? { squads: who.squads } : { athletes: who.athletes };
}

function seasonOf({ season }: Plan): Fields {
  const inSeason = season.inSeason.map(rangeOf);
  return {
    title: season.title,
    sport: season.sport,
    starts: isoDate(season.starts),
    ends: isoDate(season.ends),
    'in-season': inSeason.length === 0 ? undefined : inSeason,
  };
}

function kitOf(kit: Plan['slots'][number]['place']['kit']): Fields {
  const counted = [...kit.counts].filter(([id]) => id !== 'boxes' && id !== 'bars');
  return {
    ...Object.fromEntries(counted),
    boxes: kit.boxesCm.map((height) => `${height} cm`),
    bars: kit.barsGrams.map((grams) => `${grams / 1000} kg`),
    'smallest-plate': `${kit.smallestPlateGrams / 1000} kg`,
  };
}

const slotOf = ({ day, minutes, use, place, who }: Slot): Fields => ({
  day: WEEKDAY_NAMES[day],
  minutes,
  use,
  place: place.id,
  ...whoOf(who),
});

function athleteOf(athlete: Athlete): Fields {
  const { now, goal, born, massGrams, levels, squad, sport, cleared } = athlete;
  return {
    name: athlete.name,
    squad,
    sport: sport?.value,
    level: levels.map(({ is, from }) => ({ is, from: from === undefined ? undefined : isoDate(from) })),
    now:
      now.origin.kind === 'default'
        ? undefined
        : { 'contacts-a-session': now.value.contactsASession, 'sessions-a-week': now.value.sessionsAWeek },
    goal: goal === undefined ? undefined : { 'contacts-a-session': goal.value },
    born: born === undefined ? undefined : isoDate(born.latest),
    mass: massGrams === undefined ? undefined : `${massGrams / 1000} kg`,
    cleared: [...cleared],
    lifts: Object.fromEntries(
      [...athlete.lifts].map(([id, { grams, on }]) => [
        id,
        { max: `${grams / 1000} kg`, on: on === undefined ? undefined : isoDate(on) },
      ]),
    ),
    limits: athlete.limits.map(limitOf),
    returning: athlete.returning.map(({ stage, of, since, signed }) => ({ stage, of, since: isoDate(since), signed })),
    away: athlete.away.map(({ range, because, trained }) => ({ ...rangeOf(range), because, trained })),
  };
}

const avoidOf = (avoid: Avoid): Json => ('id' in avoid ? avoid.id : avoid.kind);

const limitOf = ({ range, avoid, contactsASession, contactsAWeek, because }: Limit): Fields => ({
  ...rangeOf(range),
  avoid: avoid.length === 0 ? undefined : avoid.map(avoidOf),
  'contacts-a-session': contactsASession,
  'contacts-a-week': contactsAWeek,
  because,
});

function rulesOf(changes: readonly RuleChange[]): Fields {
  const rules: Record<string, readonly Json[]> = {};
  for (const { rule, parameters, range, who, because } of changes) {
    const numbers = [...parameters].map(([name, value]): [string, Json] => [
      name,
      findParameter(rule, name)?.unit === 'percent' ? `${value} %` : value,
    ]);
    const change = { ...Object.fromEntries(numbers), ...rangeOf(range), ...whoOf(who), because };
    rules[rule] = [...(rules[rule] ?? []), change];
  }
  return rules;
}

const pinOf = ({ range, who, effects, because }: Pin): Fields => ({
  ...rangeOf(range),
  ...whoOf(who),
  ...Object.assign({}, ...effects.map(effectOf)),
  because,
});

function effectOf(effect: PinEffect): Fields {
  switch (effect.kind) {
    case 'contacts':
      return { 'contacts-a-week': effect.contactsAWeek };
    case 'phase':
      return { phase: effect.phase };
    case 'rest':
      return { rest: true };
    case 'week-kind':
      return { kind: effect.weekKind };
    case 'on':
      return { on: effect.days.map((day) => WEEKDAY_NAMES[day]) };
    default:
      throw new Error(`no random plan has a pin of ${effect.kind}`);
  }
}
