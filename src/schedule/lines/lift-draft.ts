// One lift as a line: its sets and reps, and the kilos that the place's plates make of the share of the maximum. Called
// by lift-lines.ts for every place of a session. The load of a lift never rises by more than the rule's step over the
// loading week before, whatever made that one light.

import type { Reason } from '../../build/types.ts';
import type { Pin } from '../../plan/types.ts';
import { liftContacts } from '../../plan/line-contacts.ts';
import type { Lift, PhaseId } from '../../library/types.ts';
import type { PatternPlace } from '../../library/lifting.ts';
import { LIFTING } from '../../library/lifting.ts';
import type { Day } from '../../util/days.ts';
import type { DayPins } from './day-pins.ts';
import type { Draft, Lifter, Loading, Tried } from './draft.ts';
import type { Refusal } from './gates.ts';
import { isHeavy, reserveOfKilos } from './heavy.ts';
import type { Ladder } from './ladders.ts';
import type { LiftDay, Prescription } from './lift-scheme.ts';
import {
  assistancePrescription,
  loadedPrescription,
  reservePrescription,
  rowFor,
  sharePrescription,
} from './lift-scheme.ts';
import type { LineRules } from './line-rules.ts';
import type { UsableMax } from './maxima.ts';
import { findMax, hasMax, platesReason, saidShare } from './maxima.ts';
import { liftSeconds } from './minutes.ts';
import type { MadeLoad } from './plates.ts';
import { makeLoad, plateStep, writtenLoad } from './plates.ts';
import { PERCENT } from '../../util/units.ts';

export interface LiftSession extends Lifter {
  readonly day: Day;
  readonly phase: PhaseId;
  readonly ladder: Ladder;
  readonly liftDay: LiftDay;
  readonly rules: LineRules;
  readonly pins: DayPins;
  /** Days on which training began again after a long absence. */
  readonly returns: readonly Day[];
  readonly people: number;
  readonly lifts: ReadonlyMap<string, Lift>;
  /** Most contacts that loaded jumps may take of the session; 0 for none. */
  readonly mostLoadedContacts: number;
  /** Lifts the coach has put into the session already; their patterns need no other assistance. */
  readonly there: ReadonlySet<string>;
  /** Gathers what was tried by a maximum. */
  readonly tries: Tried[];
  /** Told of a pinned lift that a gate or the kit bars. */
  readonly barred: (exercise: string, bars: readonly Refusal[], pin: Pin) => void;
  /** Told of a lift that would stand here if a pin didn't leave it out. */
  readonly left: (exercise: string, pin: Pin) => void;
}

/** The line of an athlete without a maximum. */
export function draftWithout(lift: Lift, place: PatternPlace, session: LiftSession): Draft | undefined {
  const wanted = prescribe(lift, place, session, false);
  if (wanted === undefined) return undefined;
  const reasons = [patternReason(place), ...loadReasons(lift, wanted, undefined, undefined)];
  return layDraft({ lift, place, session }, { prescription: wanted, load: undefined, max: undefined, reasons });
}

const patternReason = (place: PatternPlace): Reason => ({
  about: 'lift',
  by: 'pattern',
  params: { pattern: place.pattern },
  spans: [],
});

/** The line of a lift, or undefined where the kit makes no load as light as it needs. */
export function draftOf(
  lift: Lift,
  place: PatternPlace,
  session: LiftSession,
  pinned: readonly Reason[],
): Draft | undefined {
  const known = hasMax(lift, session);
  const wanted = prescribe(lift, place, session, known);
  if (wanted === undefined) return undefined;
  const sketch: Sketch = { lift, place, session, wanted, before: [...pinned, patternReason(place)] };
  if (!known) return plainDraft(sketch);
  const loading: Loading = (lifter) => loadedDraft(sketch, lifter, loading);
  const draft = loading(session);
  session.tries.push({ loading, fits: draft !== undefined });
  return draft;
}

/** A lift as it will stand, but for what hangs on the numbers of a maximum. */
interface Sketch {
  readonly lift: Lift;
  readonly place: PatternPlace;
  readonly session: LiftSession;
  readonly wanted: Prescription;
  /** Reasons that come first. */
  readonly before: readonly Reason[];
}

function plainDraft(sketch: Sketch): Draft {
  const { lift, session, wanted, before } = sketch;
  const prescription = withPins(lift, wanted, session);
  const reasons = [...before, ...loadReasons(lift, prescription, undefined, undefined), ...pinReasons(lift, session)];
  return layDraft(sketch, { prescription, load: undefined, max: undefined, reasons });
}

function loadedDraft(sketch: Sketch, lifter: Lifter, loading: Loading): Draft | undefined {
  const { lift, session, wanted, before } = sketch;
  const max = findMax(lifter.athlete, lift, session.day, session.rules.stale, session.returns);
  const load = max === undefined ? undefined : loadOf(sketch, max, lifter);
  if (max === undefined || load === undefined) return undefined;
  const prescription = withPins(lift, wanted, session);
  const reasons = [...before, ...loadReasons(lift, prescription, max, load), ...pinReasons(lift, session)];
  // A pin for one week makes the next no heavier than it would be, and lighter where what is pinned is lighter.
  const pinned = session.pins.loads.get(lift.id)?.value ?? load.loadGrams;
  lifter.history.note(lift.id, Math.min(pinned, load.loadGrams));
  return layDraft(sketch, { prescription, load, max, reasons }, loading);
}

function prescribe(lift: Lift, place: PatternPlace, session: LiftSession, known: boolean): Prescription | undefined {
  const { liftDay, ladder } = session;
  const { standing } = ladder;
  if (place.part === 'trunk') return assistancePrescription(lift, liftDay.scheme.trunk, liftDay, standing);
  if (place.pattern === 'loaded-jump') return known ? loadedJump(lift, session) : undefined;
  if (place.part === 'main') {
    const row = rowFor(lift, liftDay);
    if (row === undefined) return undefined;
    return known ? loadedPrescription(lift, row, liftDay, standing) : reservePrescription(lift, row, liftDay, standing);
  }
  const { assistance } = liftDay.scheme;
  return (known ? sharePrescription : assistancePrescription)(lift, assistance, liftDay, standing);
}

/** As many sets of loaded jumps as the session's contacts have room for. */
function loadedJump(lift: Lift, session: LiftSession): Prescription | undefined {
  const row = rowFor(lift, session.liftDay);
  if (row === undefined) return undefined;
  const plain = loadedPrescription(lift, row, session.liftDay, session.ladder.standing);
  const sets = Math.min(plain.sets, Math.floor(session.mostLoadedContacts / liftContacts(lift, 1, plain.reps)));
  return sets === 0 ? undefined : { ...plain, sets };
}

interface Load extends MadeLoad {
  readonly percent: number;
  readonly heldBy: string | undefined;
  /** What was asked for, where the kit makes far less. */
  readonly asked: { readonly percent: number; readonly grams: number } | undefined;
}

function loadOf({ lift, wanted, session }: Sketch, max: UsableMax, { history }: Lifter): Load | undefined {
  const percent = wanted.percent ?? 0;
  const grams = Math.floor((max.wholeGrams * percent) / PERCENT);
  const most = mostAfter(lift, session, history.before(lift.id));
  const { kit } = session.ladder.place;
  const load = makeLoad(lift.loading, kit, Math.min(grams, most));
  if (load === undefined) return undefined;
  const { loadGrams, barGrams, perSideGrams } = load;
  const isHeld = most < grams;
  const held = isHeld ? Math.min(percent, Math.floor((loadGrams * PERCENT) / max.wholeGrams)) : percent;
  const said = saidShare(loadGrams, held, max.wholeGrams);
  return {
    loadGrams,
    barGrams,
    perSideGrams,
    percent: said,
    heldBy: isHeld ? 'load-step' : undefined,
    asked: said < held && !session.pins.loads.has(lift.id) ? { percent: held, grams } : undefined,
  };
}

/** The heaviest load that the step from the loading week before allows. */
function mostAfter(lift: Lift, session: LiftSession, before: number | undefined): number {
  if (before === undefined) return Number.POSITIVE_INFINITY;
  const step = plateStep(lift.loading, session.ladder.place.kit, before);
  return Math.max(Math.floor((before * (PERCENT + session.rules.loadStep)) / PERCENT), before + step);
}

function withPins(lift: Lift, wanted: Prescription, session: LiftSession): Prescription {
  const sets = session.pins.sets.get(lift.id);
  return sets === undefined ? wanted : { ...wanted, sets: sets.value };
}

function pinReasons(lift: Lift, session: LiftSession): readonly Reason[] {
  const sets = session.pins.sets.get(lift.id);
  const load = session.pins.loads.get(lift.id);
  const kept = session.pins.keep.get(lift.id);
  return [
    ...(kept === undefined ? [] : [{ about: 'lift', by: 'pin', params: { keep: lift.id }, spans: [kept.span] }]),
    ...(sets === undefined ? [] : [{ about: 'sets', by: 'pin', params: { sets: sets.value }, spans: [sets.pin.span] }]),
    ...(load === undefined
      ? []
      : [{ about: 'load', by: 'pin', params: { grams: load.value }, spans: [load.pin.span] }]),
  ];
}

function loadReasons(
  lift: Lift,
  prescription: Prescription,
  max: UsableMax | undefined,
  load: Load | undefined,
): readonly Reason[] {
  const reasons: Reason[] = [];
  if (max === undefined) reasons.push(lift.maxOf === undefined ? WITHOUT_MAX : NO_MAX);
  else if (load !== undefined) {
    const params = {
      percent: load.percent,
      maxGrams: max.max.grams,
      wholeGrams: Math.floor(max.wholeGrams),
      of: max.max.lift,
      ...(max.max.lift === lift.id ? {} : { share: lift.maxShare ?? PERCENT }),
    };
    reasons.push({ about: 'load', by: max.max.estimated ? 'estimated-max' : 'max', params, spans: [max.max.span] });
    if (max.stale) reasons.push({ about: 'load', by: 'test-stale', params: {}, spans: [max.max.span] });
    if (max.awayShare !== undefined) {
      reasons.push({ about: 'load', by: 'time-away', params: { share: max.awayShare }, spans: [] });
    }
  }
  const heldBy = load?.heldBy ?? prescription.heldBy;
  if (heldBy !== undefined) reasons.push({ about: 'load', by: heldBy, params: {}, spans: [] });
  if (load?.asked !== undefined) reasons.push(platesReason(load.asked.percent, load.asked.grams));
  return reasons;
}

const NO_MAX: Reason = { about: 'load', by: 'no-max', params: {}, spans: [] };
/** Of a lift that is done by feel, or with the body's own weight. */
const WITHOUT_MAX: Reason = { about: 'load', by: 'reserve', params: {}, spans: [] };

interface Worked {
  readonly prescription: Prescription;
  readonly load: Load | undefined;
  readonly max: UsableMax | undefined;
  readonly reasons: readonly Reason[];
}

function layDraft(
  { lift, place, session }: Pick<Sketch, 'lift' | 'place' | 'session'>,
  { prescription: { sets, reps, reserve }, load, max, reasons }: Worked,
  loading?: Loading,
): Draft {
  const pinned = session.pins.loads.get(lift.id);
  const made = pinned === undefined ? load : writtenLoad(lift.loading, session.ladder.place.kit, pinned.value);
  const percent =
    pinned === undefined || max === undefined ? load?.percent : Math.floor((pinned.value * PERCENT) / max.wholeGrams);
  const restSeconds = restOf(place, session.liftDay);
  const heavy = isHeavy(
    lift,
    session.rules.heavyFrom,
    percent,
    reps,
    made === undefined ? reserve : reserveOfKilos(lift),
  );
  const draft = (count: number): Draft => ({
    heavy,
    numbered: [],
    line: {
      part: place.part === 'trunk' ? 'trunk' : 'lifts',
      exercise: lift.id,
      kind: 'lift',
      sets: count,
      reps,
      contacts: liftContacts(lift, count, reps),
      loadGrams: made?.loadGrams,
      perSideGrams: made?.perSideGrams,
      barGrams: made?.barGrams,
      percent,
      reserve: load === undefined ? reserve : undefined,
      dropCm: undefined,
      restSeconds,
      tempo: undefined,
      note: undefined,
      family: undefined,
      own: false,
      estimated: max?.max.estimated === true && pinned === undefined,
      origin: pinned === undefined ? DERIVED : { kind: 'written', span: pinned.pin.span },
      reasons,
    },
    seconds: liftSeconds(lift, { sets: count, reps, restSeconds }, session.ladder.place, session.people),
    role: place.pattern === 'loaded-jump' ? 'fixed' : place.part,
    withSets: draft,
    ...(loading !== undefined && { loading }),
  });
  return draft(sets);
}

const DERIVED = { kind: 'derived', rule: 'strength-always' } as const;

/** A pinned load with its plates, where the place's plates make exactly that. */
function restOf(place: PatternPlace, day: LiftDay): number {
  if (place.pattern === 'loaded-jump' || place.pattern === 'pull-from-floor') return LIFTING.fastRestSeconds;
  if (place.part === 'main') return day.scheme.restSeconds;
  return place.part === 'trunk' ? LIFTING.trunkRestSeconds : LIFTING.assistanceRestSeconds;
}
