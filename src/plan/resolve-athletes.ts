// Athletes with their squads' fields under their own and the defaults filled in. Called by resolve.ts. A field of the
// athlete's takes the place of the squad's, but limits and time away add up: what bars something is never put aside.

import { idsInWords } from './ids-in-words.ts';
import { at } from '../language/authored.ts';
import type { Item, Located } from '../language/authored.ts';
import type { MapFields } from '../language/sections.ts';
import { problem } from '../diagnostics/problem.ts';
import { DEFAULT_NOW } from '../library/levels.ts';
import { MOST_MAXIMUM } from '../library/one-rep-max.ts';
import { SEASON_SHAPE } from '../library/phases.ts';
import type { Level } from '../library/types.ts';
import { isoDate } from '../util/days.ts';
import { GRAMS_A_KILO } from '../util/units.ts';
import { ageOn, levelOn, nameKey } from './athlete-facts.ts';
import { noteNowOverCeiling } from './now-over-ceiling.ts';
import { isWritten, resolveFields } from './resolve-fields.ts';
import type { Fields } from './resolve-fields.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';
import { isBound, namesOf } from './bind-names.ts';
import type { Scope } from './scope.ts';
import { maximaOfSquad, noteSharedMaxima, withMaximaMarked } from './shared-maxima.ts';
import type { MaximaOfSquad } from './shared-maxima.ts';
import type { Athlete, Born, LevelStep, LiftMax, Origin, Sourced, Squad, Volume } from './types.ts';

/** Beyond this a digit of the birth is wrong. */
const MOST_AGE = 100;

type AthleteItem = Item<MapFields<'athletes'>>;

export interface People {
  readonly squads: ReadonlyMap<string, Squad>;
  /** In order of id. */
  readonly athletes: readonly Athlete[];
}

/**
 * Athletes who could be read whole, in order of id, and all squads. What is wrong is reported; what was left out and
 * taken for granted is said once for all.
 */
export function resolvePeople(scope: Scope): People {
  const squadFields = new Map<string, Fields>();
  for (const [id, item] of scope.authored.squads) squadFields.set(id, withMaximaMarked(resolveFields(scope, item)));
  const left: LeftOut[] = [];
  const athletes = [...scope.authored.athletes].flatMap(
    ([id, item]) => resolveAthlete(scope, squadFields, left, id, item) ?? [],
  );
  athletes.sort((a, b) => byCodeUnit(a.id, b.id));
  if (scope.authored.athletes.size === 0 && !scope.authored.misshapen.has('athletes'))
    scope.report(problem('plan/no-athletes', { span: scope.authored.start }));
  noteLeftOut(scope, left);
  noteSharedMaxima(
    scope,
    left.flatMap(({ sharedMaxima }) => sharedMaxima ?? []),
  );
  noteSameNames(scope, athletes);
  noteNowOverCeiling(scope, athletes);
  const squads = [...scope.authored.squads].map(([id, { span }]): [string, Squad] => [id, { id, span }]);
  return { squads: new Map(squads.toSorted(([a], [b]) => byCodeUnit(a, b))), athletes };
}

/** Told of each athlete whose name another has who comes before. */
function noteSameNames(scope: Scope, athletes: readonly Athlete[]): void {
  const first = new Map<string, Athlete>();
  for (const athlete of athletes) {
    const { id, name, span } = athlete;
    const key = nameKey(name);
    const other = first.get(key);
    if (other === undefined) first.set(key, athlete);
    // Ids that look the same are told as such.
    if (other === undefined || nameKey(other.id) === nameKey(id)) continue;
    scope.report(
      problem('plan/name-twice', {
        params: { id, other: other.id, name },
        span,
        path: `athletes.${id}`,
        related: [{ span: other.span, message: 'the other is here' }],
      }),
    );
  }
}

function resolveAthlete(
  scope: Scope,
  squads: ReadonlyMap<string, Fields>,
  left: LeftOut[],
  id: string,
  item: AthleteItem,
): Athlete | undefined {
  const own = resolveFields(scope, item);
  const { squad } = item.value;
  const isSquadKnown =
    squad === undefined || isBound(scope, namesOf('squad', scope.authored.squads), squad, item, 'squad');
  const shared = squad === undefined ? undefined : squads.get(squad);
  const whole = shared === undefined ? own : layered(own, shared);
  const sharedMaxima = maximaOfSquad(scope, { squad, athlete: id }, own, whole);
  const fields = sharedMaxima?.young === true ? { ...whole, lifts: new Map<string, LiftMax>() } : whole;
  const isAgeFine = isAgePossible(scope, id, fields.born, isWritten(item, 'born') ? at(item, 'born') : at(item));
  const areMaximaFine = areMaximaPossible(scope, id, fields);
  if (!own.whole || !isSquadKnown || shared?.whole === false || !isAgeFine || !areMaximaFine) return undefined;
  const levels = fields.levels ?? [{ is: 'beginner', span: item.span } satisfies LevelStep];
  const now = fields.now ?? usualNow(scope, levels);
  if (fields.now === undefined && isNowNeeded(scope, fields)) {
    scope.report(problem('plan/now-needed', { ...at(item), params: { athlete: id } }));
    return undefined;
  }
  const athlete = athleteOf(id, item, fields, levels, now);
  left.push({
    item,
    id,
    level: fields.levels === undefined,
    now: fields.now === undefined ? levelOn(athlete, scope.frame.from) : undefined,
    sharedMaxima,
  });
  return athlete;
}

function athleteOf(
  id: string,
  { value: { name = id, squad }, span }: AthleteItem,
  fields: Fields,
  levels: readonly LevelStep[],
  now: Sourced<Volume>,
): Athlete {
  return {
    id,
    name,
    ...(squad !== undefined && { squad }),
    ...known(fields),
    levels,
    levelOrigin: levelOriginOf(fields),
    now,
    lifts: fields.lifts ?? new Map(),
    cleared: fields.cleared ?? new Set(),
    limits: fields.limits,
    returning: fields.returning ?? [],
    away: fields.away,
    span,
  };
}

/** Limits and absences add up; of all else an athlete's own counts before the squad's. */
function layered(own: Fields, squad: Fields): Fields {
  return {
    group: own.group ?? squad.group,
    sport: own.sport ?? squad.sport,
    born: own.born ?? squad.born,
    sex: own.sex ?? squad.sex,
    massGrams: own.massGrams ?? squad.massGrams,
    levels: own.levels ?? squad.levels,
    now: own.now ?? squad.now,
    goal: own.goal ?? squad.goal,
    lifts: own.lifts ?? squad.lifts,
    cleared: own.cleared ?? squad.cleared,
    limits: [...squad.limits, ...own.limits],
    returning: own.returning ?? squad.returning,
    away: [...squad.away, ...own.away],
    whole: own.whole,
  };
}

/** Fields an athlete simply may lack. */
function known({
  group,
  sport,
  born,
  sex,
  massGrams,
  goal,
}: Fields): Pick<Athlete, 'group' | 'sport' | 'born' | 'sex' | 'massGrams' | 'goal'> {
  return {
    ...(group !== undefined && { group }),
    ...(sport !== undefined && { sport }),
    ...(born !== undefined && { born }),
    ...(sex !== undefined && { sex }),
    ...(massGrams !== undefined && { massGrams }),
    ...(goal !== undefined && { goal }),
  };
}

function levelOriginOf({ levels }: Fields): Origin {
  const first = levels?.[0];
  if (first === undefined) return { kind: 'default', basis: 'the most cautious level' };
  return { kind: 'written', span: first.span };
}

function usualNow(scope: Scope, levels: readonly LevelStep[]): Sourced<Volume> {
  return {
    value: DEFAULT_NOW[levelOn({ levels }, scope.frame.from)],
    origin: { kind: 'default', basis: 'usual for the level, common practice' },
  };
}

/** Somebody hurt or coming back starts from what was really done, not from what is usual. */
function isNowNeeded(scope: Scope, { limits, returning }: Fields): boolean {
  const inSeason = limits.some(({ range }) => range.until >= scope.frame.from && range.from <= scope.frame.until);
  return inSeason || (returning?.length ?? 0) > 0;
}

function isAgePossible(scope: Scope, athlete: string, born: Born | undefined, place: ReturnType<typeof at>): boolean {
  const age = born === undefined || !scope.isFramed ? undefined : ageOn({ born }, scope.frame.from);
  if (age === undefined) return true;
  const on = isoDate(scope.frame.from);
  if (age > MOST_AGE || age < 0) {
    scope.report(problem('plan/impossible-age', { ...place, params: { athlete, age, on } }));
    return false;
  }
  if (age >= SEASON_SHAPE.leastAge) return true;
  scope.report(problem('plan/too-young', { ...place, params: { athlete, age, least: SEASON_SHAPE.leastAge, on } }));
  return false;
}

/** A maximum is held against the body mass where that is known: the two are written in different places. */
function areMaximaPossible(scope: Scope, athlete: string, { lifts, massGrams }: Fields): boolean {
  let isFine = true;
  for (const { lift, grams, span } of lifts?.values() ?? []) {
    const inMachine = scope.library.lifts.get(lift)?.loading === 'machine';
    const free = Math.min(MOST_MAXIMUM.grams, MOST_MAXIMUM.bodyMasses * (massGrams ?? Infinity));
    const most = inMachine ? MOST_MAXIMUM.inMachineGrams : free;
    if (grams <= most) continue;
    isFine = false;
    const params = {
      athlete,
      lift,
      kilos: Math.ceil(grams / GRAMS_A_KILO),
      most: most / GRAMS_A_KILO,
      units: scope.units,
    };
    scope.report(problem('plan/impossible-max', { params, span, path: `athletes.${athlete}.lifts.${lift}`, athlete }));
  }
  return isFine;
}

interface LeftOut {
  readonly item: Located;
  readonly id: string;
  readonly level: boolean;
  /** The level whose usual start was taken. */
  readonly now: Level | undefined;
  readonly sharedMaxima: MaximaOfSquad | undefined;
}

/** One notice for all athletes alike, so that a long roster doesn't drown the rest. */
function noteLeftOut(scope: Scope, left: readonly LeftOut[]): void {
  const inIdOrder = left.toSorted((a, b) => byCodeUnit(a.id, b.id));
  const levelless = inIdOrder.filter(({ level }) => level);
  if (levelless[0] !== undefined) {
    scope.report(
      problem('plan/level-left-out', { ...at(levelless[0].item), params: { athletes: idsInWords(levelless) } }),
    );
  }
  for (const [level, { contactsASession, sessionsAWeek }] of Object.entries(DEFAULT_NOW)) {
    const nowless = inIdOrder.filter(({ now }) => now === level);
    if (nowless[0] === undefined) continue;
    const params = { athletes: idsInWords(nowless), level, contacts: contactsASession, sessions: sessionsAWeek };
    scope.report(problem('plan/now-left-out', { ...at(nowless[0].item), params }));
  }
}
