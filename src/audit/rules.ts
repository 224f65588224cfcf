// All rules of the audit, in the order of the rule table. Walked by audit.ts. To add one: a row in the rule table, a code
// `rule/<id>` in the catalogue, a file under rules/, its test, and two lines here.

import type { AuditRule } from './rule.ts';
import { afterEvent } from './rules/after-event.ts';
import { allJumpsRise } from './rules/all-jumps-rise.ts';
import { budget } from './rules/budget.ts';
import { congestedWeek } from './rules/congested-week.ts';
import { deloadDepth } from './rules/deload-depth.ts';
import { deloadRhythm } from './rules/deload-rhythm.ts';
import { directionMix } from './rules/direction-mix.ts';
import { drillLevel } from './rules/drill-level.ts';
import { dropAge } from './rules/drop-age.ts';
import { dropClearance } from './rules/drop-clearance.ts';
import { dropCount } from './rules/drop-count.ts';
import { dropHeight } from './rules/drop-height.ts';
import { dropMass } from './rules/drop-mass.ts';
import { dropStrength } from './rules/drop-strength.ts';
import { eccentricTempo } from './rules/eccentric-tempo.ts';
import { eventGap } from './rules/event-gap.ts';
import { fastCycleShare } from './rules/fast-cycle-share.ts';
import { fastSpacing } from './rules/fast-spacing.ts';
import { highTierShare } from './rules/high-tier-share.ts';
import { jumpsAlone } from './rules/jumps-alone.ts';
import { kit } from './rules/kit.ts';
import { surface } from './rules/surface.ts';
import { lastWeek } from './rules/last-week.ts';
import { levelStep } from './rules/level-step.ts';
import { liftEventGap } from './rules/lift-event-gap.ts';
import { liftSpacing } from './rules/lift-spacing.ts';
import { limit } from './rules/limit.ts';
import { loadReps } from './rules/load-reps.ts';
import { loadReserve } from './rules/load-reserve.ts';
import { loadStep } from './rules/load-step.ts';
import { newDrills } from './rules/new-drills.ts';
import { painHold } from './rules/pain-hold.ts';
import { pairRest } from './rules/pair-rest.ts';
import { restDay } from './rules/rest-day.ts';
import { returnRamp } from './rules/return-ramp.ts';
import { returningStage } from './rules/returning-stage.ts';
import { sessionCeiling } from './rules/session-ceiling.ts';
import { sessionFrequency } from './rules/session-frequency.ts';
import { sessionRise } from './rules/session-rise.ts';
import { sessionSpacing } from './rules/session-spacing.ts';
import { slotMinutes } from './rules/slot-minutes.ts';
import { stabilityShare } from './rules/stability-share.ts';
import { staticShare } from './rules/static-share.ts';
import { stations } from './rules/stations.ts';
import { strengthAlways } from './rules/strength-always.ts';
import { taperCut } from './rules/taper-cut.ts';
import { testFresh } from './rules/test-fresh.ts';
import { testMethod } from './rules/test-method.ts';
import { testStale } from './rules/test-stale.ts';
import { weeklyRise } from './rules/weekly-rise.ts';
import { youthCeiling } from './rules/youth-ceiling.ts';
import { youthLoad } from './rules/youth-load.ts';

export const AUDIT_RULES: readonly AuditRule[] = [
  sessionCeiling,
  weeklyRise,
  sessionRise,
  allJumpsRise,
  budget,
  deloadRhythm,
  deloadDepth,
  taperCut,
  lastWeek,
  returnRamp,
  returningStage,
  sessionSpacing,
  fastSpacing,
  eventGap,
  afterEvent,
  liftSpacing,
  liftEventGap,
  congestedWeek,
  sessionFrequency,
  youthCeiling,
  dropAge,
  dropMass,
  dropStrength,
  dropClearance,
  dropHeight,
  dropCount,
  drillLevel,
  newDrills,
  limit,
  painHold,
  levelStep,
  highTierShare,
  directionMix,
  fastCycleShare,
  staticShare,
  jumpsAlone,
  strengthAlways,
  eccentricTempo,
  stabilityShare,
  loadReps,
  loadReserve,
  loadStep,
  youthLoad,
  pairRest,
  slotMinutes,
  kit,
  surface,
  stations,
  testStale,
  testFresh,
  testMethod,
  restDay,
];
