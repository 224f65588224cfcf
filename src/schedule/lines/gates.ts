// Who may do which drill or lift, and if not, what holds it back. Called when the ladders of a place are built and for
// every exercise a pin names. Where a plan leaves room the answer is no: an unknown mass counts as heavy, an unknown
// strength as none, and one foot landing after the other counts as a single-leg drill.

import type { Avoid, Kit, Limit, TrainingPlace } from '../../plan/types.ts';
import { isDrop } from '../../library/drill-facts.ts';
import { ALLOTTING } from '../../library/families.ts';
import { isKindOf } from '../../library/lift-facts.ts';
import { isFromPhase, LOADED_JUMP_COUNTS_AS } from '../../library/lifting.ts';
import type { Drill, Level, Lift, PhaseId, Tier } from '../../library/types.ts';
import { isHardSurface } from '../../library/surfaces.ts';
import { LEVELS, TIERS } from '../../library/types.ts';
import type { Span } from '../../source/types.ts';
import { libraryStage } from '../library-stage.ts';
import type { Standing } from './standing.ts';

/** What holds an exercise back: the rule or fact, its numbers, and the lines of the plan behind it. */
export interface Refusal {
  readonly by: string;
  readonly params: Readonly<Record<string, string | number>>;
  readonly spans: readonly Span[];
}

const refusal = (by: string, params: Refusal['params'] = {}, spans: readonly Span[] = []): Refusal => ({
  by,
  params,
  spans,
});

const FIRST_DROP = 'first-drop';

/** A gate of a drill: what holds it back, or undefined. */
type DrillGate = (drill: Drill, standing: Standing) => Refusal | undefined;

const drillLimit: DrillGate = (drill, { limits }) =>
  limits.length === 0 ? undefined : limitRefusal(limits, (avoid) => barsDrill(avoid, drill));
const drillStage: DrillGate = (drill, standing) => stageRefusal(drill.stage, standing);
const drillLevel: DrillGate = (drill, { level }) => levelRefusal(drill.fromLevel, level);

/** The gravest first. */
const DRILL_GATES: readonly DrillGate[] = [drillLimit, drillStage, singleLegRefusal, drillLevel];

/** The gravest first. */
const DROP_GATES: readonly DrillGate[] = [
  drillLimit,
  drillStage,
  childRefusal,
  (drill, standing) => tooHigh(drill, 'drop-age', standing.values.dropAgeMostCm, standing.age === 'youth'),
  dropClearanceRefusal,
  (drill, { values, level }) => tooHigh(drill, 'drop-height', values.dropHeightCm[level], true),
  (drill, { values, heavy }) => tooHigh(drill, 'drop-mass', values.dropMassMostCm, heavy),
  strengthRefusal,
  (drill, { cleared }) => tooHigh(drill, FIRST_DROP, ALLOTTING.firstDropCm, !cleared.has(drill.id)),
  singleLegRefusal,
  drillLevel,
];

const gatesOf = (drill: Drill): readonly DrillGate[] => (isDrop(drill) ? DROP_GATES : DRILL_GATES);

/** What keeps an athlete from a drill, whatever the place; undefined when nothing does. */
export function drillRefusal(drill: Drill, standing: Standing): Refusal | undefined {
  const gates = gatesOf(drill);
  for (let index = 0; index < gates.length; index += 1) {
    const held = gates[index]?.(drill, standing);
    if (held !== undefined) return held;
  }
  return undefined;
}

/**
 * All that keeps an athlete from a drill the coach has named in a pin, the gravest first: a drop then needn't start with
 * the first height, and a rule that is waived doesn't count.
 */
export function pinnedDrillRefusals(
  drill: Drill,
  standing: Standing,
  waived: (rule: string) => boolean,
): readonly Refusal[] {
  return gatesOf(drill)
    .flatMap((gate) => gate(drill, standing) ?? [])
    .filter(({ by }) => by !== FIRST_DROP && !waived(by));
}

type LiftGate = (lift: Lift, standing: Standing, phase: PhaseId) => Refusal | undefined;

/** The gravest first. */
const LIFT_GATES: readonly LiftGate[] = [
  (lift, { limits }) => (limits.length === 0 ? undefined : limitRefusal(limits, (avoid) => barsLift(avoid, lift))),
  (lift, standing) => stageRefusal(lift.stage, standing),
  (lift, { level }) => levelRefusal(lift.fromLevel, level),
  ({ fromPhase }, _, phase) =>
    fromPhase === undefined || isFromPhase(phase, fromPhase) ? undefined : refusal('phase', { from: fromPhase }),
  ({ pattern }, { youngLifter, values }) =>
    pattern === 'loaded-jump' && youngLifter ? refusal('youth-load', { under: values.youthUnder }) : undefined,
];

/** What keeps an athlete from a lift, whatever the place; undefined when nothing does. */
export function liftRefusal(lift: Lift, standing: Standing, phase: PhaseId): Refusal | undefined {
  for (let index = 0; index < LIFT_GATES.length; index += 1) {
    const held = LIFT_GATES[index]?.(lift, standing, phase);
    if (held !== undefined) return held;
  }
  return undefined;
}

/** All of it, the gravest first. */
export function liftRefusals(lift: Lift, standing: Standing, phase: PhaseId): readonly Refusal[] {
  return LIFT_GATES.flatMap((gate) => gate(lift, standing, phase) ?? []);
}

function childRefusal({ dropCm }: Drill, { age, values }: Standing): Refusal | undefined {
  return dropCm !== undefined && age === 'child' ? refusal('drop-age', { under: values.dropAgeUnder }) : undefined;
}

function dropClearanceRefusal({ id, dropCm }: Drill, { cleared }: Standing): Refusal | undefined {
  if (dropCm === undefined || cleared.has(id) || cleared.has('drops')) return undefined;
  return refusal('drop-clearance', { clear: 'drops' });
}

/** A drop from over `most`, where that holds for the athlete. */
function tooHigh({ dropCm }: Drill, by: string, most: number, holds: boolean): Refusal | undefined {
  return holds && dropCm !== undefined && dropCm > most ? refusal(by, { cm: dropCm, most }) : undefined;
}

function strengthRefusal({ dropCm: cm }: Drill, standing: Standing): Refusal | undefined {
  const { values, strength, cleared } = standing;
  if (cm === undefined || cm <= values.strengthAboveCm || cleared.has('drop-strength')) return undefined;
  const high = cm > values.highStrengthAboveCm;
  if (strength === 'high' || (strength === 'some' && !high)) return undefined;
  return refusal('drop-strength', { cm, percent: high ? values.highStrengthPercent : values.strengthPercent });
}

function singleLegRefusal(drill: Drill, standing: Standing): Refusal | undefined {
  if (drill.legs === 'both' || drill.tier !== 'high') return undefined;
  if (standing.cleared.has('single-leg-high') || standing.cleared.has(drill.id)) return undefined;
  return refusal('drop-clearance', { clear: 'single-leg-high' });
}

function levelRefusal(from: Level, level: Level): Refusal | undefined {
  return LEVELS.indexOf(from) > LEVELS.indexOf(level) ? refusal('drill-level', { from }) : undefined;
}

function stageRefusal(needs: number, standing: Standing): Refusal | undefined {
  if (standing.stage === undefined || needs <= libraryStage(standing.stage)) return undefined;
  return refusal('returning-stage', { stage: standing.stage.stage, of: standing.stage.of }, [standing.stage.span]);
}

function limitRefusal(limits: readonly Limit[], bars: (avoid: Avoid) => boolean): Refusal | undefined {
  const limit = limits.find((one) => one.avoid.some(bars));
  return limit === undefined ? undefined : refusal('limit', {}, [limit.span]);
}

/** A tier that is to be avoided bars those above it too. */
const reaches = (tier: Tier, avoided: Tier): boolean => TIERS.indexOf(tier) >= TIERS.indexOf(avoided);

function barsDrill(avoid: Avoid, drill: Drill): boolean {
  switch (avoid.kind) {
    case 'drops':
      return drill.dropCm !== undefined;
    case 'single-leg':
      return drill.legs !== 'both';
    case 'direction':
      return drill.direction[avoid.id] > 0;
    case 'cycle':
      return drill.cycle === avoid.id;
    case 'tier':
      return reaches(drill.tier, avoid.id);
    case 'family':
      return drill.family === avoid.id;
    case 'drill':
      return drill.id === avoid.id;
    case 'pattern':
    case 'lift':
      return false;
  }
}

function barsLift(avoid: Avoid, lift: Lift): boolean {
  switch (avoid.kind) {
    case 'pattern':
      return lift.pattern === avoid.id;
    case 'lift':
      return isKindOf(lift, avoid.id);
    case 'single-leg':
      return lift.lower && (lift.pattern === 'single-leg' || lift.each === true);
    case 'direction':
      return lift.pattern === 'loaded-jump' && LOADED_JUMP_COUNTS_AS.direction[avoid.id] > 0;
    case 'cycle':
      return lift.pattern === 'loaded-jump' && LOADED_JUMP_COUNTS_AS.cycle === avoid.id;
    case 'tier':
      return lift.pattern === 'loaded-jump' && reaches(LOADED_JUMP_COUNTS_AS.tier, avoid.id);
    case 'drops':
    case 'family':
    case 'drill':
      return false;
  }
}

/** What keeps a drill from being done at a place: its ground, unless that is waived, and its kit. */
export function drillPlaceRefusal(
  drill: Drill,
  place: TrainingPlace,
  waived: (rule: string) => boolean = () => false,
): Refusal | undefined {
  return (waived('surface') ? undefined : surfaceRefusal(drill, place)) ?? drillKitRefusal(drill, place);
}

/** G8 (P); a jump into a sand pit lands in it. */
function surfaceRefusal(drill: Drill, place: TrainingPlace): Refusal | undefined {
  const landsHard = !drill.kit.includes('sand-pit') && (drill.tier === 'high' || drill.dropCm !== undefined);
  if (!landsHard || !isHardSurface(place.surface)) return undefined;
  return refusal('surface', { place: place.id, surface: place.surface ?? '' }, [place.span]);
}

/** The kit that a place lacks for a drill, or undefined. A box must be about as high as the drill says. */
function drillKitRefusal(drill: Drill, place: TrainingPlace): Refusal | undefined {
  const height = drill.dropCm ?? (drill.kit.includes('boxes') ? drill.boxCm : undefined);
  if (height !== undefined && drill.kit.includes('boxes') && !hasBox(place.kit, height)) {
    return refusal('kit', { place: place.id, kit: 'boxes', cm: height }, [place.span]);
  }
  return kitRefusal(drill.kit, place);
}

/** What a place lacks of the kit, the first of it; undefined where all is there. */
export function kitRefusal(kit: Drill['kit'], place: TrainingPlace): Refusal | undefined {
  const missing = kit.find((item) => (place.kit.counts.get(item) ?? 0) === 0);
  return missing === undefined ? undefined : refusal('kit', { place: place.id, kit: missing }, [place.span]);
}

function hasBox(kit: Kit, cm: number): boolean {
  return kit.boxesCm.some((box) => box >= cm - ALLOTTING.boxLowerCm && box <= cm + ALLOTTING.boxHigherCm);
}
