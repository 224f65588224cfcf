// The library on a terminal: a list with what a coach chooses by, or one exercise whole. Called by `footfall library`.

import type { Drill, Lift } from '../../report/library-report.ts';
import { directionWords, rangeWords } from '../../report/library-report.ts';
import type { ReportedExercise, Verdict } from '../../report/library-report.ts';
import { nameIn } from '../../report/exercise-words.ts';
import { distanceWords, heightWords, restWords } from '../../util/quantities.ts';
import type { Units } from '../../util/quantities.ts';
import type { Canvas } from './canvas.ts';
import { hanging, layOut } from './layout.ts';
import type { LayoutColumn } from './layout.ts';
import { counted } from '../../util/counted.ts';
import { addTo } from '../../util/grouped.ts';

/** Drills, then lifts, a line each. */
export function renderLibrary(exercises: readonly ReportedExercise[], canvas: Canvas): readonly string[] {
  const drills = exercises.filter((one) => one.kind === 'drill');
  const lifts = exercises.filter((one) => one.kind === 'lift');
  const judged = exercises.some(({ verdicts }) => verdicts.length > 0);
  const parts = [
    ...(drills.length === 0 ? [] : [layOut(drills, drillColumns(judged), canvas.width, canvas.palette.quiet)]),
    ...(lifts.length === 0 ? [] : [layOut(lifts, liftColumns(judged), canvas.width, canvas.palette.quiet)]),
  ];
  if (parts.length === 0) return ['Nothing in the library is like that.'];
  return parts.flatMap((lines, index) => (index === 0 ? lines : ['', ...lines]));
}

type Listed<K extends ReportedExercise['kind']> = Extract<ReportedExercise, { readonly kind: K }>;

function drillColumns(judged: boolean): readonly LayoutColumn<Listed<'drill'>>[] {
  return [
    { title: 'drill', align: 'left', text: ({ drill }) => drill.id },
    { title: 'family', align: 'left', text: ({ drill }) => `${drill.family} ${drill.rung}`, spare: 2 },
    { title: 'tier', align: 'left', text: ({ drill }) => drill.tier },
    { title: 'goes', align: 'left', text: ({ drill }) => directionWords(drill.direction), spare: 1 },
    { title: 'cycle', align: 'left', text: ({ drill }) => drill.cycle, spare: 4 },
    { title: 'legs', align: 'left', text: ({ drill }) => drill.legs, spare: 5 },
    { title: 'from', align: 'left', text: ({ drill }) => drill.fromLevel, spare: judged ? 6 : 3 },
    ...(judged
      ? [verdictColumn<Listed<'drill'>>()]
      : [
          {
            title: 'kit',
            align: 'left',
            text: ({ drill }: Listed<'drill'>) => drill.kit.join(', '),
            wrapAt: 9,
          } as const,
        ]),
  ];
}

function liftColumns(judged: boolean): readonly LayoutColumn<Listed<'lift'>>[] {
  return [
    { title: 'lift', align: 'left', text: ({ lift }) => lift.id },
    { title: 'pattern', align: 'left', text: ({ lift }) => lift.pattern },
    { title: 'role', align: 'left', text: ({ lift }) => lift.role, spare: 2 },
    { title: 'per cent of', align: 'left', text: ({ lift }) => lift.maxOf ?? '', spare: 3 },
    { title: 'from', align: 'left', text: ({ lift }) => lift.fromLevel, spare: 4 },
    ...(judged
      ? [verdictColumn<Listed<'lift'>>()]
      : [{ title: 'kit', align: 'left', text: ({ lift }: Listed<'lift'>) => lift.kit.join(', '), wrapAt: 9 } as const]),
  ];
}

function verdictColumn<T extends ReportedExercise>(): LayoutColumn<T> {
  return { title: 'may', align: 'left', text: ({ verdicts }) => verdicts.map(verdictWords).join('; '), wrapAt: 24 };
}

const verdictWords = ({ heldBack }: Verdict): string => (heldBack === undefined ? 'yes' : `no: ${heldBack}`);

/** One exercise: its facts in the units of the plan that is given, its cue and stop sign, and who may do it. */
export function renderExercise(exercise: ReportedExercise, canvas: Canvas, units: Units = 'metric'): readonly string[] {
  const { palette, width } = canvas;
  const { id, name: written, cue, stop } = exercise.kind === 'drill' ? exercise.drill : exercise.lift;
  const name = nameIn(units, written);
  const facts = exercise.kind === 'drill' ? drillFacts(exercise.drill, units) : liftFacts(exercise.lift);
  return [
    `${palette.strong(name)} ${palette.quiet(id)}`,
    ...hanging('', facts.join(' · '), width),
    ...hanging('cue: ', cue, width),
    ...hanging('stop: ', stop, width),
    ...verdictLines(exercise.verdicts, canvas),
  ];
}

function drillFacts(drill: Drill, units: Units): readonly string[] {
  return [
    `${drill.family}, rung ${drill.rung}`,
    `${drill.tier} tier`,
    directionWords(drill.direction),
    `${drill.cycle === 'none' ? 'no' : drill.cycle} stretch-shortening`,
    `legs ${drill.legs}`,
    drill.metresPerContact === undefined
      ? `${counted(drill.contactsPerRep ?? 1, 'contact')} a rep${drill.legs === 'each' ? ' and leg' : ''}`
      : `${distanceWords(drill.metresPerContact, units)} a contact`,
    ...(drill.dropCm === undefined ? [] : [`from ${heightWords(drill.dropCm, units)}`]),
    ...(drill.boxCm === undefined ? [] : [`height ${heightWords(drill.boxCm, units)}`]),
    `${rangeWords(drill.sets)} sets of ${rangeWords(drill.reps)}, rest ${restWords(drill.restSeconds)}`,
    `from ${drill.fromLevel}`,
    `return from stage ${drill.stage}`,
    kitWords(drill.kit),
  ];
}

function liftFacts(lift: Lift): readonly string[] {
  return [
    lift.pattern,
    lift.role,
    `load by ${lift.loading}`,
    lift.maxOf === undefined ? 'reps with reserve' : `${lift.maxShare ?? 100} % of the maximum of ${lift.maxOf}`,
    `${lift.held === true ? 'held' : 'reps'} ${rangeWords(lift.reps)}${lift.held === true ? ' s' : ''}`,
    `from ${lift.fromLevel}`,
    ...(lift.fromPhase === undefined ? [] : [`from the phase ${lift.fromPhase} on`]),
    `return from stage ${lift.stage}`,
    kitWords(lift.kit),
  ];
}

const kitWords = (kit: readonly string[]): string => (kit.length === 0 ? 'no kit' : `kit: ${kit.join(', ')}`);

/** Who may, then who not, those together whom the same holds back. */
function verdictLines(verdicts: readonly Verdict[], { palette, width }: Canvas): readonly string[] {
  if (verdicts.length === 0) return [];
  const may = verdicts.filter(({ heldBack }) => heldBack === undefined).map(({ name }) => name);
  const byReason = new Map<string, string[]>();
  for (const { name, heldBack } of verdicts) {
    if (heldBack !== undefined) addTo(byReason, heldBack, name);
  }
  return [
    ...hanging('may: ', may.length === 0 ? 'nobody' : may.join(', '), width, palette.strong),
    ...[...byReason].flatMap(([reason, names]) =>
      hanging('not: ', `${names.join(', ')}: ${reason}`, width, palette.strong),
    ),
  ];
}
