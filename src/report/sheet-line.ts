// A prescribed line as it stands on paper: what to do, how often, with what on the bar, and what to do instead. Shared by
// the athlete's card and the session board, so that both say the same. No shares of a maximum and no rules: the reader
// has ten seconds and a bar to load.

import type { BuiltLine } from '../build/types.ts';
import { metresOfReps } from '../library/drill-facts.ts';
import type { Drill, Lift } from '../library/types.ts';
import type { Athlete, Plan, TrainingPlace } from '../plan/types.ts';
import { findEasierRung, lighterLoad, unwantedBy } from './easier-rung.ts';
import { exerciseName, HEIGHT_AT_END } from './exercise-words.ts';
import { pairOf } from './pair-words.ts';
import type { Pair } from './pair-words.ts';
import { bestWords } from './percent-of.ts';
import { plateWords } from './plates.ts';
import { distanceWords, heightWords, loadNumber, loadWords, restWords } from '../util/quantities.ts';
import type { Units } from '../util/quantities.ts';

export interface SheetLine {
  /** With the height of a box, in the plan's units. */
  readonly name: string;
  /** `3 × 5`, `2 × 6 each`, `3 × 30 s`, `2 × 10 (15 m)`. */
  readonly dose: string;
  readonly sets: number;
  /** `77.5 kg`. */
  readonly load?: string;
  /** What makes the load: `bar 20 + 25 + 2.5 + 1.25 a side`. */
  readonly made?: string;
  /** How hard, where no load says it: `2 left`, the reps somebody could still do. */
  readonly effort?: string;
  /** There is a weight to lift, and the athlete picks it. */
  readonly picksLoad: boolean;
  readonly rest: string;
  /** What else the line says: a tempo, a coach's note. */
  readonly notes: readonly string[];
  /** The load rests on an estimated maximum. */
  readonly estimated: boolean;
  readonly pair?: Pair;
  /** What to do instead, if not today. */
  readonly instead: string;
}

/** Who does the line, and where. */
export interface LineSetting {
  readonly plan: Plan;
  readonly athlete: Athlete;
  readonly place: TrainingPlace;
  /** Lines of the session, among them what the line is paired with. */
  readonly lines: readonly BuiltLine[];
}

/** The line in the words and units of the season, at the place it is done. */
export function sheetLine(setting: LineSetting, line: BuiltLine): SheetLine {
  const { library, season } = setting.plan;
  const drill = library.drills.get(line.exercise);
  const lift = library.lifts.get(line.exercise);
  const made = madeWords(line, lift, setting.place, season.units);
  const effort = effortWords(setting, line);
  const pair = pairOf(setting.plan, line, setting.lines);
  return {
    name: nameInUnits(exerciseName(library, line.exercise), line.dropCm ?? drill?.dropCm ?? drill?.boxCm, season.units),
    dose: doseOnPaper(line, drill, lift, season.units),
    sets: line.sets,
    ...(line.loadGrams !== undefined && { load: loadOnPaper(line.loadGrams, lift, season.units) }),
    ...(made !== undefined && { made }),
    ...(effort !== undefined && { effort }),
    picksLoad: picksLoad(line, lift),
    rest: restWords(line.restSeconds),
    notes: notesOf(line),
    estimated: line.estimated && line.loadGrams !== undefined,
    ...(pair !== undefined && { pair }),
    instead: insteadWords(setting, line, drill, lift),
  };
}

/** `Drop jump, 40 cm` as `Drop jump, 16 in` where the plan is printed in inches; a height the name lacks is added. */
function nameInUnits(name: string, centimetres: number | undefined, units: Units): string {
  if (centimetres === undefined) return name;
  const bare = name.replace(HEIGHT_AT_END, '');
  return `${bare}, ${heightWords(centimetres, units)}`;
}

/** Sets and reps of a line. */
export function doseOnPaper(
  { sets, reps }: BuiltLine,
  drill: Drill | undefined,
  lift: Lift | undefined,
  units: Units,
): string {
  const each = drill?.legs === 'each' || lift?.each === true ? ' each' : '';
  const metres = drill === undefined ? undefined : metresOfReps(drill, reps);
  const distance = metres === undefined ? '' : ` (${distanceWords(metres, units)})`;
  return `${sets} × ${reps}${lift?.held === true ? ' s' : ''}${each}${distance}`;
}

function loadOnPaper(grams: number, lift: Lift | undefined, units: Units): string {
  return lift?.loading === 'dumbbells' ? `dumbbell ${loadWords(grams, units)}` : loadWords(grams, units);
}

function madeWords(
  { barGrams, perSideGrams }: BuiltLine,
  lift: Lift | undefined,
  { kit }: TrainingPlace,
  units: Units,
): string | undefined {
  if (barGrams === undefined || perSideGrams === undefined) {
    return lift?.loading === 'trap-bar' ? 'with the bar, same on each side' : undefined;
  }
  const bar = `bar ${loadWords(barGrams, units)}`;
  const plates = plateWords(perSideGrams, kit.smallestPlateGrams);
  if (perSideGrams === 0) return `${bar}, nothing on it`;
  return `${bar}, each side ${plates ?? loadWords(perSideGrams, units)}`;
}

function effortWords({ plan, athlete }: LineSetting, line: BuiltLine): string | undefined {
  const { reserve, loadGrams, percent, kind } = line;
  if (loadGrams !== undefined || kind === 'drill') return undefined;
  if (reserve === undefined) return percent === undefined ? undefined : bestWords(plan, athlete, line);
  return `${reserve} left`;
}

function picksLoad({ loadGrams }: BuiltLine, lift: Lift | undefined): boolean {
  return lift !== undefined && loadGrams === undefined && lift.loading !== 'body' && lift.loading !== 'band';
}

function notesOf({ tempo, note }: BuiltLine): readonly string[] {
  return [...(tempo === undefined ? [] : [`tempo ${tempo}`]), ...(note === undefined ? [] : [note])];
}

const LEAVE_OUT = 'skip it';
const ONE_SET_LESS = 'one set less';

function insteadWords(
  { plan, athlete, place }: LineSetting,
  line: BuiltLine,
  drill: Drill | undefined,
  lift: Lift | undefined,
): string {
  const { library, season } = plan;
  if (drill !== undefined) {
    const easier = findEasierRung(library, drill, place, athlete, unwantedBy(plan, athlete));
    return easier === undefined
      ? LEAVE_OUT
      : nameInUnits(easier.name, easier.dropCm ?? easier.boxCm, season.units).replace(/^./u, (first) =>
          first.toLowerCase(),
        );
  }
  const lighter = lift === undefined ? undefined : lighterLoad(line, lift.loading, place.kit);
  if (lighter !== undefined) return lighterWords(lighter, place, season.units);
  return line.sets > 1 ? ONE_SET_LESS : LEAVE_OUT;
}

function lighterWords(
  { grams, perSideGrams }: { readonly grams: number; readonly perSideGrams?: number },
  { kit }: TrainingPlace,
  units: Units,
): string {
  const load = loadWords(grams, units);
  if (perSideGrams === undefined) return load;
  if (perSideGrams === 0) return `${load}, the bar alone`;
  return `${load} (${plateWords(perSideGrams, kit.smallestPlateGrams) ?? loadNumber(perSideGrams, units)} a side)`;
}
