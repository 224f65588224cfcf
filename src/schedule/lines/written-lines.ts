// Lines written by hand, in a programme, a pin or `always`, as drafts: sets and reps as they stand, contacts counted, a
// share of the maximum turned into kilos. Nothing is put right here, whatever the gates say: what a coach writes is
// audited, not changed.

import type { Reason } from '../../build/types.ts';
import type { Athlete, Part, WrittenLine } from '../../plan/types.ts';
import { exerciseContacts } from '../../plan/line-contacts.ts';
import type { Library } from '../../library/index.ts';
import type { Drill, Lift } from '../../library/types.ts';
import { LIFTING } from '../../library/lifting.ts';
import type { Day } from '../../util/days.ts';
import type { TrainingPlace } from '../../plan/types.ts';
import type { Draft, LineDraft, Loading, Tried } from './draft.ts';
import type { StaleRule } from './maxima.ts';
import { isHeavy, reserveOfKilos } from './heavy.ts';
import { findMax, hasMax, platesReason, saidShare } from './maxima.ts';
import { drillSeconds, liftSeconds } from './minutes.ts';
import { makeLoad, writtenLoad } from './plates.ts';
import { PERCENT } from '../../util/units.ts';

export interface WrittenContext {
  readonly athlete: Athlete;
  readonly library: Library;
  readonly place: TrainingPlace;
  readonly day: Day;
  readonly people: number;
  readonly stale: StaleRule;
  readonly returns: readonly Day[];
  /** Share of a maximum from which a lift is heavy, in per cent. */
  readonly heavyFrom: number;
  /** Rest of a main lift in this phase, in seconds. */
  readonly mainRestSeconds: number;
  /** Gathers what hangs on a maximum. */
  readonly tries: Tried[];
}

/** The drafts of a written line: one, or two for a pair. `part` is undefined in a programme, where the exercise says it. */
export function writtenDrafts(
  line: WrittenLine,
  part: Part | undefined,
  because: Reason,
  context: WrittenContext,
): readonly Draft[] {
  const first = writtenDraft(line, line.sets, part, because, context);
  if (line.pair === undefined) return [first];
  const second = writtenDraft(line.pair, line.sets, part, because, context);
  return [first, { ...second, paired: true, numbered: [] }];
}

/** Whether a line, or what it is paired with, is a lift whose maximum is known. */
export function hangsOnMax({ exercise, pair }: WrittenLine, context: WrittenContext): boolean {
  const lift = exercise.kind === 'lift' ? context.library.lifts.get(exercise.id) : undefined;
  return (lift !== undefined && hasMax(lift, context)) || (pair !== undefined && hangsOnMax(pair, context));
}

function writtenDraft(
  line: WrittenLine,
  sets: number,
  part: Part | undefined,
  because: Reason,
  context: WrittenContext,
): Draft {
  const { id, kind } = line.exercise;
  const basis = basisOf(line, sets, exerciseContacts(line, sets, context.library), because);
  const drill = kind === 'drill' ? context.library.drills.get(id) : undefined;
  if (drill !== undefined) return drillDraft(line, drill, basis, part, context);
  const lift = context.library.lifts.get(id);
  if (lift === undefined) throw new Error(`no exercise ${id} in the library`);
  const make = (who: Athlete): Draft => liftDraft(line, lift, basis, part, { ...context, athlete: who });
  if (!hasMax(lift, context)) return make(context.athlete);
  const loading: Loading = ({ athlete }) => ({ ...make(athlete), loading });
  context.tries.push({ loading, fits: true });
  return { ...make(context.athlete), loading };
}

/** What a line of a drill and one of a lift have in common. */
type Basis = Omit<LineDraft, 'part' | 'restSeconds' | 'estimated' | 'dropCm' | 'family' | LoadField>;

type LoadField = 'loadGrams' | 'perSideGrams' | 'barGrams' | 'percent' | 'reserve';

function basisOf(line: WrittenLine, sets: number, contacts: number, because: Reason): Basis {
  return {
    exercise: line.exercise.id,
    kind: line.exercise.kind,
    sets,
    reps: line.reps,
    contacts,
    tempo: line.tempo,
    note: line.note,
    own: false,
    origin: { kind: 'written', span: line.span },
    reasons: [{ ...because, spans: [...because.spans, line.span] }],
  };
}

function drillDraft(
  line: WrittenLine,
  drill: Drill,
  basis: Basis,
  part: Part | undefined,
  context: WrittenContext,
): Draft {
  const draft: LineDraft = {
    ...basis,
    part: part ?? 'jumps',
    loadGrams: undefined,
    perSideGrams: undefined,
    barGrams: undefined,
    percent: undefined,
    reserve: undefined,
    dropCm: line.dropCm ?? drill.dropCm,
    restSeconds: line.restSeconds ?? drill.restSeconds,
    family: drill.family,
    estimated: false,
  };
  const seconds = drillSeconds(drill, basis.sets, line.reps, context.place, context.people);
  return { line: draft, seconds, role: 'fixed', heavy: false, numbered: [] };
}

function liftDraft(
  line: WrittenLine,
  lift: Lift,
  basis: Basis,
  part: Part | undefined,
  context: WrittenContext,
): Draft {
  const restSeconds = line.restSeconds ?? usualRest(lift, context);
  const load = loadOf(line, lift, context);
  const draft: LineDraft = {
    ...basis,
    part: part ?? (lift.role === 'trunk' ? 'trunk' : 'lifts'),
    loadGrams: load.loadGrams,
    perSideGrams: load.perSideGrams,
    barGrams: load.barGrams,
    percent: load.percent,
    reserve: line.reserve,
    dropCm: undefined,
    restSeconds,
    family: undefined,
    estimated: load.estimated,
    reasons: load.plates === undefined ? basis.reasons : [...basis.reasons, load.plates],
  };
  const { sets, reps } = basis;
  const seconds = liftSeconds(lift, { sets, reps, restSeconds }, context.place, context.people);
  const reserve = draft.loadGrams === undefined ? draft.reserve : reserveOfKilos(lift);
  const heavy = isHeavy(lift, context.heavyFrom, draft.percent, reps, reserve);
  return { line: draft, seconds, role: 'fixed', heavy, numbered: [] };
}

function usualRest(lift: Lift, context: WrittenContext): number {
  if (lift.role === 'trunk') return LIFTING.trunkRestSeconds;
  return lift.role === 'main' ? context.mainRestSeconds : LIFTING.assistanceRestSeconds;
}

interface WrittenLoad extends Partial<Pick<LineDraft, Exclude<LoadField, 'reserve'>>>, Pick<LineDraft, 'estimated'> {
  /** Where the kit makes far less than was written. */
  readonly plates?: Reason;
}

/** The load as written, or the share of the maximum as the plates make it. */
function loadOf({ loadGrams, percent }: WrittenLine, lift: Lift, context: WrittenContext): WrittenLoad {
  const { kit } = context.place;
  const max = findMax(context.athlete, lift, context.day, context.stale, context.returns);
  if (loadGrams !== undefined) {
    const share = max === undefined ? undefined : Math.floor((loadGrams * PERCENT) / max.wholeGrams);
    return { ...writtenLoad(lift.loading, kit, loadGrams), percent: share, estimated: false };
  }
  if (percent === undefined || max === undefined) return { percent, estimated: false };
  const grams = Math.floor((max.wholeGrams * percent) / PERCENT);
  const made = makeLoad(lift.loading, kit, grams);
  const said = made === undefined ? percent : saidShare(made.loadGrams, percent, max.wholeGrams);
  const load = { ...made, percent: said, estimated: max.max.estimated };
  return said === percent ? load : { ...load, plates: platesReason(percent, grams) };
}
