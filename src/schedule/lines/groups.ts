// Which drill families a squad does side by side, for each place and phase: the choice that makes a session one session.
// Made once for a plan, lazily; an athlete's own session starts from it. Members are counted as they stand on the
// season's first day, limits left aside, in one pass over the athletes. Athletes without a squad are one group.

import type { Athlete, Plan, TrainingPlace } from '../../plan/types.ts';
import { ruleBook } from '../../plan/rule-book.ts';
import { isDrop, isStatic } from '../../library/drill-facts.ts';
import { FAMILY_COST, findPhaseBuiltOn, usualFamilies } from '../../library/families.ts';
import type { Drill, PhaseId, PhaseRow } from '../../library/types.ts';
import { TIERS } from '../../library/types.ts';
import { getPhase } from '../../library/phases.ts';
import { boundedCache } from './bounded-cache.ts';
import type { FamilyOption } from './family-choice.ts';
import { chooseFamilies } from './family-choice.ts';
import type { Ladder, Ladders, Rung } from './ladders.ts';
import { setWaiting } from './minutes.ts';
import type { Standing } from './standing.ts';
import { gateValues, standingOn } from './standing.ts';
import { PERCENT } from '../../util/units.ts';

/** The families of one squad at one place in one phase, in the order they are done. */
export interface Group {
  readonly number: number;
  readonly families: readonly string[];
}

export interface GroupChoice {
  readonly of: (squad: string | undefined, place: TrainingPlace, phase: PhaseId) => Group;
  /** Members of the squad. */
  readonly people: (squad: string | undefined) => number;
  /** All that the choice asks of the squad's members, in one text. */
  readonly standings: (squad: string | undefined) => string;
}

interface Member {
  readonly standing: Standing;
  count: number;
}

type Roster = ReadonlyMap<string | undefined, ReadonlyMap<string, Member>>;

/** Choices for one plan. Nothing is counted or chosen until it is asked for. */
export function groupChoice(plan: Plan, ladders: Ladders): GroupChoice {
  let roster: Roster | undefined;
  const members = (squad: string | undefined): ReadonlyMap<string, Member> => {
    roster ??= countMembers(plan);
    return roster.get(squad) ?? new Map();
  };
  const chooser: Chooser = {
    plan,
    ladders,
    members,
    groups: new Map(),
    chosen: boundedCache(CHOICES_KEPT),
    options: boundedCache(CHOICES_KEPT),
    usual: boundedCache(CHOICES_KEPT),
    numbers: new Map(),
  };
  return {
    of: (squad, place, phase) => groupOf(chooser, squad, place, phase),
    people: (squad) => peopleIn(members(squad)),
    standings: (squad) =>
      [...members(squad)]
        .map(([key, { count }]) => `${count} ${key}`)
        .toSorted()
        .join('\n'),
  };
}

const CHOICES_KEPT = 4096;

interface Chooser {
  readonly plan: Plan;
  readonly ladders: Ladders;
  readonly members: (squad: string | undefined) => ReadonlyMap<string, Member>;
  readonly groups: Map<string, Group>;
  readonly chosen: (key: string, make: () => readonly string[]) => readonly string[];
  /** What members who stand alike, as many of each, can choose from at a place in a phase. */
  readonly options: (key: string, make: () => readonly FamilyOption[]) => readonly FamilyOption[];
  /** What most members who stand alike, as many of each, do of each family at a place, with or without the high tier. */
  readonly usual: (key: string, make: () => readonly UsualFamily[]) => readonly UsualFamily[];
  /** The same families in the same order have one number. */
  readonly numbers: Map<string, number>;
}

function peopleIn(members: ReadonlyMap<string, Member>): number {
  let people = 0;
  for (const member of members.values()) people += member.count;
  return people;
}

function countMembers(plan: Plan): Roster {
  const roster = new Map<string | undefined, Map<string, Member>>();
  const unchanged: Plan = { ...plan, ruleChanges: [], waivers: [] };
  const season = { from: plan.season.starts, until: plan.season.starts };
  const values = plan.athletes[0] === undefined ? undefined : gateValues(ruleBook(unchanged, plan.athletes[0]), season);
  if (values === undefined) return roster;
  for (const athlete of plan.athletes) {
    const sound: Athlete = { ...athlete, limits: [], returning: [] };
    const standing = standingOn(sound, plan.season.starts, values);
    const squad = roster.get(athlete.squad) ?? new Map<string, Member>();
    roster.set(athlete.squad, squad);
    const member = squad.get(standing.key);
    if (member === undefined) squad.set(standing.key, { standing, count: 1 });
    else member.count += 1;
  }
  return roster;
}

function groupOf(chooser: Chooser, squad: string | undefined, place: TrainingPlace, phase: PhaseId): Group {
  const key = `${squad ?? ''}|${place.id}|${phase}`;
  const known = chooser.groups.get(key);
  if (known !== undefined) return known;
  const families = familiesOf(chooser, squad, place, getPhase(phase));
  const text = families.join(',');
  const number = chooser.numbers.get(text) ?? chooser.numbers.size + 1;
  chooser.numbers.set(text, number);
  const group: Group = { number, families };
  chooser.groups.set(key, group);
  return group;
}

function familiesOf(
  chooser: Chooser,
  squad: string | undefined,
  place: TrainingPlace,
  phase: PhaseRow,
): readonly string[] {
  const directions = chooser.plan.season.directions ?? phase.directions;
  const fast = phase.fastShare;
  if (directions === undefined || fast === undefined) return [];
  const before = familiesBefore(chooser, squad, place, phase.id);
  const options = familyOptions(chooser, squad, place, phase);
  const highMost = phase.highShareMost ?? 0;
  const key = `${phase.id}|${[...(before ?? [])].join(',')}|${options.map(optionKey).join(',')}`;
  return chooser.chosen(key, () =>
    chooseFamilies(options, { directions, fast, highMost, ...(before === undefined ? {} : { before }) }),
  );
}

function optionKey({ family, direction, fast, drop, high, onlyHigh, cost }: FamilyOption): string {
  const flags = `${fast ? 'f' : ''}${drop ? 'd' : ''}${high ? 'h' : ''}${onlyHigh ? 'o' : ''}`;
  return `${family}:${direction.vertical}/${direction.horizontal}${flags}${cost}`;
}

/** What a phase builds on: the families of the phase before it, and those of the same phase at the plan's first place. */
function familiesBefore(
  chooser: Chooser,
  squad: string | undefined,
  place: TrainingPlace,
  phase: PhaseId,
): ReadonlySet<string> | undefined {
  const builtOn = findPhaseBuiltOn(phase);
  const anchor = chooser.plan.slots[0]?.place;
  const before = [
    ...(builtOn === undefined ? [] : groupOf(chooser, squad, place, builtOn).families),
    ...(anchor === undefined || anchor.id === place.id ? [] : groupOf(chooser, squad, anchor, phase).families),
  ];
  return before.length === 0 ? undefined : new Set(before);
}

/** Families that most members can do at the place, the easier first. */
function familyOptions(
  chooser: Chooser,
  squad: string | undefined,
  place: TrainingPlace,
  phase: PhaseRow,
): readonly FamilyOption[] {
  const members = chooser.members(squad);
  const alike = [...members].map(([key, { count }]) => `${count} ${key}`);
  const here = [place.id, ...alike].join('|');
  return chooser.options(`${phase.id}|${here}`, () => {
    const isHigh = (phase.highShareMost ?? 0) > 0;
    const all = [...members.values()];
    const usual = chooser.usual(`${isHigh}|${here}`, () => usualFamiliesOf(chooser, all, place, isHigh));
    return makeOptions(usual, peopleIn(members), place, phase);
  });
}

function makeOptions(
  families: readonly UsualFamily[],
  people: number,
  place: TrainingPlace,
  phase: PhaseRow,
): readonly FamilyOption[] {
  const rows: { readonly option: FamilyOption; readonly drill: Drill }[] = [];
  for (const { family, usual } of families) {
    const able = (usual.able * PERCENT) / people;
    if (able < FAMILY_COST.leastMembers) continue;
    rows.push({ drill: usual.drill, option: optionOf(family, usual, able, people, place, phase) });
  }
  return rows.sort((a, b) => ease(a.drill) - ease(b.drill)).map((row) => row.option);
}

/** Easier drills first, and of one tier the slow ones. */
const ease = (drill: Drill): number => TIERS.indexOf(drill.tier) * 2 + (drill.cycle === 'fast' ? 1 : 0);

function optionOf(
  family: string,
  usual: UsualRung,
  able: number,
  people: number,
  place: TrainingPlace,
  phase: PhaseRow,
): FamilyOption {
  const { drill } = usual;
  const leftOut = Math.floor((PERCENT - able) / FAMILY_COST.memberStep) * FAMILY_COST.memberStep;
  const cost =
    leftOut * FAMILY_COST.memberLeftOut +
    (usualFamilies(phase.id).includes(family) ? 0 : FAMILY_COST.unusual) +
    (isStatic(drill) ? FAMILY_COST.still : 0) +
    (setWaiting(drill, place, people) >= FAMILY_COST.queueFrom ? FAMILY_COST.queue : 0);
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
