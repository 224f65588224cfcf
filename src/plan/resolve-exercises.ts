// The plan's own drills and lifts, put into the library. Called by resolve.ts before anything that names an exercise. What
// a lift leaves out comes from the built-in lift it replaces, or else from the cautious end.

import { at } from '../language/authored.ts';
import type { Authored, Item } from '../language/authored.ts';
import type { MapFields } from '../language/sections.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { problem } from '../diagnostics/problem.ts';
import { isDrop } from '../library/drill-facts.ts';
import { BUILT_IN, extendLibrary } from '../library/index.ts';
import type { Library } from '../library/index.ts';
import { DIRECTIONS } from '../library/types.ts';
import type { DirectionShares, Drill, KitId, Lift, LiftPattern } from '../library/types.ts';
import { didYouMean } from '../util/did-you-mean.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';
import { PERCENT } from '../util/units.ts';

type Report = (diagnostic: Diagnostic) => void;
type DrillItem = Item<MapFields<'drills'>>;
type LiftItem = Item<MapFields<'lifts'>>;

/** The library with the plan's own exercises. Broken ones keep their name, as what names them isn't the mistake. */
export function resolveLibrary(authored: Authored, report: Report): Library {
  reportClashes(authored, report);
  const drills = inIdOrder(authored.drills).flatMap(([id, item]) => resolveDrill(id, item, report) ?? []);
  const lifts = inIdOrder(authored.lifts).flatMap(([id, item]) => resolveLift(id, item, authored, report) ?? []);
  return extendLibrary(BUILT_IN, drills, lifts);
}

function inIdOrder<T>(items: ReadonlyMap<string, T>): readonly (readonly [string, T])[] {
  return [...items].toSorted(([a], [b]) => byCodeUnit(a, b));
}

/** A drill and a lift can't share an id: a line, a pin or a limit that names it would be either. */
function reportClashes(authored: Authored, report: Report): void {
  for (const [id, item] of authored.drills) {
    if (!authored.lifts.has(id) && !BUILT_IN.lifts.has(id)) continue;
    report(problem('plan/id-clash', { ...at(item), params: { id, kind: 'a lift' } }));
  }
  for (const [id, item] of authored.lifts) {
    if (BUILT_IN.drills.has(id)) report(problem('plan/id-clash', { ...at(item), params: { id, kind: 'a drill' } }));
  }
}

const LAST_STAGE = 4;

function resolveDrill(id: string, item: DrillItem, report: Report): Drill | undefined {
  const direction = directionOf(item, report);
  if (item.kind === 'broken') return stub(id);
  const { value } = item;
  const contacts = value['contacts-per-rep'];
  const metres = value['metres-per-contact'];
  if ((contacts === undefined) === (metres === undefined)) {
    report(problem('plan/contacts-or-metres', at(item)));
    return stub(id);
  }
  if (value.drop === undefined && isCalledDrop(id, value)) {
    report(problem('plan/drop-without-height', { ...at(item), params: { drill: id } }));
    return stub(id);
  }
  if (direction === undefined) return stub(id);
  return {
    id,
    name: value.name,
    family: value.family,
    rung: value.rung,
    direction,
    cycle: value.cycle,
    tier: value.tier,
    legs: value.legs,
    ...(contacts !== undefined && { contactsPerRep: contacts }),
    ...(metres !== undefined && { metresPerContact: metres }),
    lands: value.lands ?? 'ground',
    fromLevel: value['from-level'],
    kit: value.kit ?? [],
    reps: value.reps,
    sets: value.sets,
    restSeconds: value.rest,
    ...(value.drop !== undefined && { dropCm: value.drop }),
    ...(value.box !== undefined && { boxCm: value.box }),
    stage: stageOf(value.stage),
    ...(value.unstable === true && { unstable: true }),
    cue: value.cue,
    stop: value.stop,
  };
}

/**
 * Whether a drill without a height is a drop all the same: it takes the place of one, has a family where all are, or is
 * called one and needs a box. Without its height no rule of drops would hold for it.
 */
function isCalledDrop(
  id: string,
  { name, family, kit = [] }: Pick<DrillItem['value'], 'name' | 'family' | 'kit'>,
): boolean {
  const replaced = BUILT_IN.drills.get(id);
  if (replaced !== undefined && isDrop(replaced)) return true;
  const relatives = [...BUILT_IN.drills.values()].filter((drill) => drill.family === family);
  if (relatives.length > 0 && relatives.every(isDrop)) return true;
  return kit.includes('boxes') && [id, name, family].some((word) => word !== undefined && DROP_WORD.test(word));
}

const DROP_WORD = /\b(?:drop|depth)\b/iu;

/** Stands for a drill with a mistake, so that its name is known; a plan with a mistake is never scheduled. */
function stub(id: string): Drill | undefined {
  const any = BUILT_IN.drills.get(id) ?? BUILT_IN.drills.values().next().value;
  return any === undefined ? undefined : { ...any, id };
}

function stageOf(stage: number | undefined): Drill['stage'] {
  return stage === 1 || stage === 2 || stage === 3 ? stage : LAST_STAGE;
}

function directionOf(item: DrillItem, report: Report): DirectionShares | undefined {
  const { direction } = item.value;
  if (direction === undefined) return undefined;
  const none = { vertical: 0, horizontal: 0, lateral: 0 };
  if (typeof direction === 'string') return { ...none, [direction]: PERCENT };
  const shares = { ...none };
  for (const one of DIRECTIONS) shares[one] = direction[one] ?? 0;
  const sum = shares.vertical + shares.horizontal + shares.lateral;
  if (sum === PERCENT) return shares;
  report(problem('plan/shares-sum', { ...at(item, 'direction'), params: { sum } }));
  return undefined;
}

function resolveLift(id: string, item: LiftItem, authored: Authored, report: Report): Lift | undefined {
  const maxOf = maxOfOf(id, item, authored, report);
  const base = BUILT_IN.lifts.get(id);
  if (item.kind === 'broken') return { ...(base ?? plainLift(id, 'trunk')), id };
  const { value } = item;
  const { pattern } = value;
  const usual = base?.pattern === pattern ? base : plainLift(id, pattern);
  const kit = value.kit ?? usual.kit;
  const maxShare = value['max-share'];
  const depth = value.depth ?? base?.depth;
  const fromPhase = value['from-phase'] ?? base?.fromPhase ?? latePhase(pattern, depth);
  const kindOf = base?.kindOf ?? otherMaxOf(base);
  return {
    id,
    name: value.name,
    pattern,
    ...(depth !== undefined && { depth }),
    lower: usual.lower,
    kit,
    loading: value.loading ?? (value.kit === undefined ? usual.loading : loadingOf(kit)),
    ...(maxOf !== undefined && { maxOf }),
    ...(maxShare !== undefined && { maxShare }),
    role: value.role ?? usual.role,
    eccentricSeconds: value['eccentric-seconds'] ?? usual.eccentricSeconds,
    ...((value.unstable ?? usual.unstable) === true && { unstable: true }),
    fromLevel: value['from-level'] ?? usual.fromLevel,
    ...(kindOf !== undefined && { kindOf }),
    ...(fromPhase !== undefined && { fromPhase }),
    ...((value.each ?? usual.each) === true && { each: true }),
    ...((value.held ?? usual.held) === true && { held: true }),
    reps: value.reps ?? usual.reps,
    stage: value.stage === undefined ? usual.stage : stageOf(value.stage),
    cue: value.cue ?? usual.cue,
    stop: value.stop ?? usual.stop,
  };
}

/** What the library calls a kind of another lift stays one, whatever maximum the plan has it go by. */
const otherMaxOf = (base: Lift | undefined): string | undefined =>
  base === undefined || base.maxOf === base.id ? undefined : base.maxOf;

/** Half and quarter squats and loaded jumps come in late in the path to a peak. */
function latePhase(pattern: LiftPattern, depth: Lift['depth']): Lift['fromPhase'] {
  return pattern === 'loaded-jump' || depth === 'half' || depth === 'quarter' ? 'strength-power' : undefined;
}

const UPPER: ReadonlySet<LiftPattern> = new Set(['upper-push', 'upper-pull', 'trunk']);
const ASSISTANCE: ReadonlySet<LiftPattern> = new Set([
  'calf',
  'hamstring-eccentric',
  'upper-push',
  'upper-pull',
  'loaded-jump',
]);

/** A lift of which only the pattern is known: that of the library's first of the pattern, without its kit and maximum. */
function plainLift(id: string, pattern: LiftPattern): Lift {
  const first = [...BUILT_IN.lifts.values()].find((lift) => lift.pattern === pattern);
  return {
    id,
    name: id,
    pattern,
    lower: !UPPER.has(pattern),
    kit: [],
    loading: 'body',
    role: pattern === 'trunk' ? 'trunk' : ASSISTANCE.has(pattern) ? 'assistance' : 'main',
    eccentricSeconds: first?.eccentricSeconds ?? 0,
    fromLevel: 'beginner',
    reps: first?.reps ?? { from: 1, to: 1 },
    stage: LAST_STAGE,
    cue: '',
    stop: first?.stop ?? '',
  };
}

const LOADINGS: readonly (readonly [KitId, Lift['loading']])[] = [
  ['bars', 'bar'],
  ['trap-bars', 'trap-bar'],
  ['dumbbells', 'dumbbells'],
  ['kettlebells', 'kettlebell'],
  ['medicine-balls', 'medicine-ball'],
  ['bands', 'band'],
  ['leg-machines', 'machine'],
  ['cables', 'machine'],
];

function loadingOf(kit: readonly KitId[]): Lift['loading'] {
  return LOADINGS.find(([id]) => kit.includes(id))?.[1] ?? 'body';
}

/** The lift whose maximum counts; never one of another squat depth, as loads don't carry over between depths (P12). */
function maxOfOf(id: string, item: LiftItem, authored: Authored, report: Report): string | undefined {
  const name = item.value['max-of'];
  if (name === undefined || name === id) return name;
  const own = authored.lifts.get(name);
  const other = own?.value ?? BUILT_IN.lifts.get(name);
  if (other === undefined) {
    const help = didYouMean(name, [...BUILT_IN.lifts.keys(), ...authored.lifts.keys()]);
    report(problem('plan/unknown-name', { ...at(item, 'max-of'), params: { name, kind: 'lift' }, help }));
    return undefined;
  }
  const depth = item.value.depth ?? BUILT_IN.lifts.get(id)?.depth;
  const otherDepth = other.depth ?? BUILT_IN.lifts.get(name)?.depth;
  if (depth !== undefined && otherDepth !== undefined && depth !== otherDepth) {
    report(
      problem('plan/depths-differ', { ...at(item, 'max-of'), params: { lift: id, depth, other: name, otherDepth } }),
    );
    return undefined;
  }
  return name;
}
