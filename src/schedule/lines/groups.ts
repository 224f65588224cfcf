// Which drill families a squad does side by side, for each place and phase: the choice that makes a session one session.
// Made once for a plan, lazily; an athlete's own session starts from it. Members are counted as they stand on the
// season's first day, limits left aside, in one pass over the athletes. Athletes without a squad are one group. Members
// whose sports jump in other directions are a party of their own: the largest chooses first, the others keep to its
// families where these serve their directions nearly as well.

import type { Athlete, Plan, TrainingPlace } from '../../plan/types.ts';
import { ruleBook } from '../../plan/rule-book.ts';
import { directionsKey, directionsOf } from '../../plan/sport-of.ts';
import { isDrop, isStatic } from '../../library/drill-facts.ts';
import { FAMILY_COST, findPhaseBuiltOn, usualFamilies } from '../../library/families.ts';
import type { DirectionShares, Drill, PhaseId, PhaseRow } from '../../library/types.ts';
import { TIERS } from '../../library/types.ts';
import { getPhase } from '../../library/phases.ts';
import { boundedCache } from './bounded-cache.ts';
import type { FamilyOption } from './family-choice.ts';
import { chooseFamilies } from './family-choice.ts';
import type { Ladder, Ladders, Rung } from './ladders.ts';
import { setWaiting } from './minutes.ts';
import type { Body, Standing } from './standing.ts';
import { gateValues, standingOn } from './standing.ts';
import { PERCENT } from '../../util/units.ts';

/** The families of one party of a squad at one place in one phase, in the order they are done. */
export interface Group {
  readonly number: number;
  readonly families: readonly string[];
}

export interface GroupChoice {
  readonly of: (athlete: Sporting, place: TrainingPlace, phase: PhaseId) => Group;
  /** Members of the squad, whatever their sport. */
  readonly people: (squad: string | undefined) => number;
  /** Equal for members of a squad whose families are chosen together. */
  readonly party: (athlete: Sporting) => string;
  /** All that the choice asks of the squad's members, in one text. */
  readonly standings: (squad: string | undefined) => string;
}

type Sporting = Pick<Athlete, 'squad' | 'sport'>;

interface Member {
  readonly standing: Standing;
  count: number;
}

/** Members of a squad who jump in the same directions. */
interface Party {
  /** Of the directions. */
  readonly key: string;
  /** By the sport; undefined: the phase's own. */
  readonly directions: DirectionShares | undefined;
  readonly members: ReadonlyMap<string, Member>;
  readonly people: number;
}

interface Squad {
  readonly id: string;
  /** The largest first. */
  readonly parties: readonly Party[];
  readonly people: number;
}

/** Choices for one plan. Nothing is counted or chosen until it is asked for. */
export function groupChoice(plan: Plan, ladders: Ladders): GroupChoice {
  let roster: ReadonlyMap<string | undefined, Squad> | undefined;
  const squadOf = (squad: string | undefined): Squad => {
    roster ??= countMembers(plan);
    return roster.get(squad) ?? NOBODY;
  };
  const keys = new Map<string | undefined, string>();
  const party = ({ sport }: Sporting): string => {
    const known = keys.get(sport?.value);
    if (known !== undefined) return known;
    const key = directionsKey(directionsOf(plan, sport === undefined ? {} : { sport }));
    keys.set(sport?.value, key);
    return key;
  };
  const chooser: Chooser = {
    plan,
    ladders,
    groups: new Map(),
    chosen: boundedCache(CHOICES_KEPT),
    options: boundedCache(CHOICES_KEPT),
    usual: boundedCache(CHOICES_KEPT),
    numbers: new Map(),
  };
  return {
    of: (athlete, place, phase) => groupOf(chooser, squadOf(athlete.squad), party(athlete), place, phase),
    people: (squad) => squadOf(squad).people,
    party,
    standings: (squad) =>
      squadOf(squad)
        .parties.flatMap(({ key, members }) => alikeTexts(members).map((text) => `${key} ${text}`))
        .toSorted()
        .join('\n'),
  };
}

const NOBODY: Squad = { id: '', parties: [], people: 0 };

const alikeTexts = (members: ReadonlyMap<string, Member>): readonly string[] =>
  [...members].map(([key, { count }]) => `${count} ${key}`);

const CHOICES_KEPT = 4096;

interface Chooser {
  readonly plan: Plan;
  readonly ladders: Ladders;
  readonly groups: Map<string, Group>;
  readonly chosen: (key: string, make: () => readonly string[]) => readonly string[];
  /** What members who stand alike, as many of each, can choose from at a place in a phase. */
  readonly options: (key: string, make: () => readonly FamilyOption[]) => readonly FamilyOption[];
  /** What most members who stand alike, as many of each, do of each family at a place, with or without the high tier. */
  readonly usual: (key: string, make: () => readonly UsualFamily[]) => readonly UsualFamily[];
  /** The same families in the same order have one number. */
  readonly numbers: Map<string, number>;
}

/** A squad while its members are counted. */
interface Counting {
  people: number;
  readonly parties: Map<
    string,
    { readonly directions: DirectionShares | undefined; readonly members: Map<string, Member> }
  >;
}

function countMembers(plan: Plan): ReadonlyMap<string | undefined, Squad> {
  const squads = new Map<string | undefined, Counting>();
  const unchanged: Plan = { ...plan, ruleChanges: [], waivers: [] };
  const season = { from: plan.season.starts, until: plan.season.starts };
  const values = plan.athletes[0] === undefined ? undefined : gateValues(ruleBook(unchanged, plan.athletes[0]), season);
  if (values === undefined) return new Map();
  for (const athlete of plan.athletes) {
    const standing = standingOn(sound(athlete), plan.season.starts, values);
    const squad = squads.get(athlete.squad) ?? { people: 0, parties: new Map() };
    squads.set(athlete.squad, squad);
    squad.people += 1;
    const directions = directionsOf(plan, athlete);
    const key = directionsKey(directions);
    const party = squad.parties.get(key) ?? { directions, members: new Map<string, Member>() };
    squad.parties.set(key, party);
    const member = party.members.get(standing.key);
    if (member === undefined) party.members.set(standing.key, { standing, count: 1 });
    else member.count += 1;
  }
  return new Map(
    [...squads].map(([id, { people, parties }]) => [id, { id: id ?? '', parties: inOrder(parties), people }]),
  );
}

/** The athlete without what is of a while. */
function sound(athlete: Athlete): Body {
  if (athlete.limits.length === 0 && athlete.returning.length === 0) return athlete;
  const { id, levels, born, massGrams, lifts, cleared } = athlete;
  return { id, levels, born, massGrams, lifts, cleared, limits: [], returning: [] };
}

function inOrder(parties: Counting['parties']): readonly Party[] {
  return [...parties]
    .map(([key, { directions, members }]): Party => ({ key, directions, members, people: peopleIn(members) }))
    .toSorted((a, b) => b.people - a.people || (a.key < b.key ? -1 : 1));
}

function peopleIn(members: ReadonlyMap<string, Member>): number {
  let people = 0;
  for (const member of members.values()) people += member.count;
  return people;
}

function groupOf(chooser: Chooser, squad: Squad, party: string, place: TrainingPlace, phase: PhaseId): Group {
  const key = `${squad.id}|${party}|${place.id}|${phase}`;
  const known = chooser.groups.get(key);
  if (known !== undefined) return known;
  const families = familiesOf(chooser, squad, party, place, getPhase(phase));
  const text = families.join(',');
  const number = chooser.numbers.get(text) ?? chooser.numbers.size + 1;
  chooser.numbers.set(text, number);
  const group: Group = { number, families };
  chooser.groups.set(key, group);
  return group;
}

function familiesOf(
  chooser: Chooser,
  squad: Squad,
  party: string,
  place: TrainingPlace,
  phase: PhaseRow,
): readonly string[] {
  const theirs = squad.parties.find(({ key }) => key === party);
  const directions = theirs?.directions ?? phase.directions;
  const fast = phase.fastShare;
  if (theirs === undefined || directions === undefined || fast === undefined) return [];
  const before = familiesBefore(chooser, squad, party, place, phase.id);
  const beside = familiesBeside(chooser, squad, theirs, place, phase.id);
  const options = familyOptions(chooser, squad, theirs, place, phase);
  const highMost = phase.highShareMost ?? 0;
  const key = [phase.id, party, namesKey(before), namesKey(beside), options.map(optionKey).join(',')].join('|');
  return chooser.chosen(key, () =>
    chooseFamilies(options, {
      directions,
      fast,
      highMost,
      ...(before === undefined ? {} : { before }),
      ...(beside === undefined ? {} : { beside }),
    }),
  );
}

const namesKey = (names: ReadonlySet<string> | undefined): string => (names === undefined ? '' : [...names].join(','));

function optionKey({ family, direction, fast, drop, high, onlyHigh, cost }: FamilyOption): string {
  const flags = `${fast ? 'f' : ''}${drop ? 'd' : ''}${high ? 'h' : ''}${onlyHigh ? 'o' : ''}`;
  return `${family}:${direction.vertical}/${direction.horizontal}${flags}${cost}`;
}

/** What a phase builds on: the families of the phase before it, and those of the same phase at the plan's first place. */
function familiesBefore(
  chooser: Chooser,
  squad: Squad,
  party: string,
  place: TrainingPlace,
  phase: PhaseId,
): ReadonlySet<string> | undefined {
  const builtOn = findPhaseBuiltOn(phase);
  const anchor = chooser.plan.slots[0]?.place;
  const before = [
    ...(builtOn === undefined ? [] : groupOf(chooser, squad, party, place, builtOn).families),
    ...(anchor === undefined || anchor.id === place.id ? [] : groupOf(chooser, squad, party, anchor, phase).families),
  ];
  return before.length === 0 ? undefined : new Set(before);
}

/** What the larger parties of the squad do; undefined for the largest. */
function familiesBeside(
  chooser: Chooser,
  squad: Squad,
  party: Party,
  place: TrainingPlace,
  phase: PhaseId,
): ReadonlySet<string> | undefined {
  const larger = squad.parties.slice(0, squad.parties.indexOf(party));
  if (larger.length === 0) return undefined;
  return new Set(larger.flatMap(({ key }) => groupOf(chooser, squad, key, place, phase).families));
}

/** Families that most members of a party can do at the place, the easier first. */
function familyOptions(
  chooser: Chooser,
  squad: Squad,
  { members, people }: Party,
  place: TrainingPlace,
  phase: PhaseRow,
): readonly FamilyOption[] {
  const here = [place.id, ...alikeTexts(members)].join('|');
  return chooser.options(`${phase.id}|${squad.people}|${here}`, () => {
    const isHigh = (phase.highShareMost ?? 0) > 0;
    const all = [...members.values()];
    const usual = chooser.usual(`${isHigh}|${here}`, () => usualFamiliesOf(chooser, all, place, isHigh));
    return makeOptions(usual, { people, sharing: squad.people }, place, phase);
  });
}

/** How many a party is, and how many share the kit with it, itself included. */
interface Crowd {
  readonly people: number;
  readonly sharing: number;
}

function makeOptions(
  families: readonly UsualFamily[],
  crowd: Crowd,
  place: TrainingPlace,
  phase: PhaseRow,
): readonly FamilyOption[] {
  const rows: { readonly option: FamilyOption; readonly drill: Drill }[] = [];
  for (const { family, usual } of families) {
    const able = (usual.able * PERCENT) / crowd.people;
    if (able < FAMILY_COST.leastMembers) continue;
    rows.push({ drill: usual.drill, option: optionOf(family, usual, able, crowd.sharing, place, phase) });
  }
  return rows.sort((a, b) => ease(a.drill) - ease(b.drill)).map((row) => row.option);
}

/** Easier drills first, and of one tier the slow ones. */
const ease = (drill: Drill): number => TIERS.indexOf(drill.tier) * 2 + (drill.cycle === 'fast' ? 1 : 0);

function optionOf(
  family: string,
  usual: UsualRung,
  able: number,
  sharing: number,
  place: TrainingPlace,
  phase: PhaseRow,
): FamilyOption {
  const { drill } = usual;
  const leftOut = Math.floor((PERCENT - able) / FAMILY_COST.memberStep) * FAMILY_COST.memberStep;
  const cost =
    leftOut * FAMILY_COST.memberLeftOut +
    (usualFamilies(phase.id).includes(family) ? 0 : FAMILY_COST.unusual) +
    (isStatic(drill) ? FAMILY_COST.still : 0) +
    (setWaiting(drill, place, sharing) >= FAMILY_COST.queueFrom ? FAMILY_COST.queue : 0);
  const high = drill.tier === 'high';
  return {
    family,
    direction: drill.direction,
    fast: drill.cycle === 'fast',
    drop: isDrop(drill) && drill.cycle === 'fast',
    high,
    onlyHigh: high && !usual.lower,
    cost,
  };
}

interface UsualRung {
  readonly drill: Drill;
  /** A rung below the high tier fits too. */
  readonly lower: boolean;
  readonly able: number;
}

/** A family that somebody can do at all. */
interface UsualFamily {
  readonly family: string;
  readonly usual: UsualRung;
}

/** In the library's order. */
function usualFamiliesOf(
  { plan, ladders }: Chooser,
  members: readonly Member[],
  place: TrainingPlace,
  isHigh: boolean,
): readonly UsualFamily[] {
  const standing = members.map((member) => ({ count: member.count, ladder: ladders.of(member.standing, place) }));
  return [...plan.library.families.keys()].flatMap((family) => {
    const usual = usualRung(family, standing, isHigh);
    return usual === undefined ? [] : [{ family, usual }];
  });
}

/** The highest rung of most members, and how many can do the family at all. */
function usualRung(
  family: string,
  members: readonly { readonly count: number; readonly ladder: Ladder }[],
  isHigh: boolean,
): UsualRung | undefined {
  const votes = new Map<Drill, number>();
  let able = 0;
  let lower = false;
  for (const { count, ladder } of members) {
    const rungs = ladder.families.get(family) ?? [];
    const top = rungs.findLast((rung) => fits(rung, isHigh));
    if (top === undefined) continue;
    able += count;
    lower ||= rungs.some((rung) => rung.drill.tier !== 'high' && fits(rung, isHigh));
    votes.set(top.drill, (votes.get(top.drill) ?? 0) + count);
  }
  const drill = [...votes].sort(([a, m], [b, n]) => n - m || a.rung - b.rung)[0]?.[0];
  return drill === undefined ? undefined : { drill, lower, able };
}

const fits = ({ drill, refusal }: Rung, isHigh: boolean): boolean =>
  refusal === undefined && drill.unstable !== true && (drill.tier !== 'high' || isHigh);
