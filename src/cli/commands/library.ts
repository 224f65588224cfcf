// `footfall library [name]`: drills and lifts by what a coach chooses them by; with a plan its own among them, and who
// may do them, who not and why.

import type { Build } from '../../build/types.ts';
import { BUILT_IN } from '../../library/index.ts';
import type { Library } from '../../library/index.ts';
import { KIT_IDS } from '../../library/kit.ts';
import type { PhaseId } from '../../library/types.ts';
import { ruleBook } from '../../plan/rule-book.ts';
import type { Athlete, Plan } from '../../plan/types.ts';
import { renderExercise, renderLibrary } from '../../render/terminal/library.ts';
import { libraryTable, reportLibrary } from '../../report/library-report.ts';
import type { Judge, LibraryWishes, ReportedExercise, Verdict } from '../../report/library-report.ts';
import { createPlaces } from '../../report/places.ts';
import { refusalWords } from '../../report/refusal-words.ts';
import { drillRefusal, liftRefusal } from '../../schedule/lines/gates.ts';
import { gateValues, standingOn } from '../../schedule/lines/standing.ts';
import type { Standing } from '../../schedule/lines/standing.ts';
import type { Day } from '../../util/days.ts';
import type { Units } from '../../util/quantities.ts';
import { DONE } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openPlan } from '../open-plan.ts';
import { canvasOf } from '../canvas.ts';
import { tableOrLines } from '../table-or-lines.ts';
import type { LibraryRequest } from '../requests.ts';
import { unknown } from '../select.ts';
import { refuse } from '../session.ts';
import type { Session } from '../session.ts';

const NO_KIT = 'none';

/** Status 0, an empty list included; 1 where the plan has errors; 2 where a name or an option is refused. */
export async function library(request: LibraryRequest, session: Session): Promise<ExitStatus> {
  if (request.athlete !== undefined && request.plan === undefined)
    return await refuse(session, '--athlete needs --plan');
  if (request.on !== undefined && request.plan === undefined) return await refuse(session, '--on needs --plan');
  const opened = request.plan === undefined ? undefined : await openPlan(request.plan, session);
  if (opened?.ok === false) return opened.status;
  const build = opened?.build;
  const found = build?.plan.library ?? BUILT_IN;
  const problem = problemOf(request, found, build?.plan);
  if (problem !== undefined) return await refuse(session, problem);
  const wanted = reportLibrary(found, wishesOf(request), judgeOf(request, build)).filter((one) =>
    isNamed(one, request.name),
  );
  await session.out.writeAll(rendered(request, wanted, build?.plan.season.units, session));
  return DONE;
}

function problemOf(
  request: LibraryRequest,
  { drills, lifts, families }: Library,
  plan: Plan | undefined,
): string | undefined {
  const { name, family, kit = [], athlete } = request;
  return (
    unknown(
      name === undefined ? [] : [name],
      'exercise',
      new Set([...drills.keys(), ...lifts.keys(), ...families.keys()]),
    ) ??
    unknown(family === undefined ? [] : [family], 'family', new Set(families.keys())) ??
    unknown(kit, 'kit', new Set([...KIT_IDS, NO_KIT])) ??
    unknown(athlete === undefined ? [] : [athlete], 'athlete', new Set(plan?.athletes.map(({ id }) => id)))
  );
}

function wishesOf({ kind, tier, direction, family, kit }: LibraryRequest): LibraryWishes {
  return {
    ...(kind !== undefined && { kind }),
    ...(tier !== undefined && { tier }),
    ...(direction !== undefined && { direction }),
    ...(family !== undefined && { family }),
    ...(kit !== undefined && { kit: new Set(kit) }),
  };
}

function isNamed(exercise: ReportedExercise, name: string | undefined): boolean {
  if (name === undefined) return true;
  return exercise.kind === 'drill'
    ? exercise.drill.id === name || exercise.drill.family === name
    : exercise.lift.id === name;
}

/** Judges for the athlete who is named; where an exercise is named instead, for everybody of the plan. */
function judgeOf({ athlete, name, on }: LibraryRequest, build: Build | undefined): Judge {
  if (build === undefined || (athlete === undefined && name === undefined)) return () => [];
  const { plan } = build;
  const day = on ?? plan.season.starts;
  const people = plan.athletes.filter(({ id }) => athlete === undefined || id === athlete);
  const standings = people.map((person) => ({ person, standing: standingOf(plan, person, day) }));
  const places = createPlaces(plan.files);
  const phaseOf = phasesOn(build, new Set(people), day);
  return (exercise) =>
    standings.map(({ person, standing }): Verdict => {
      const refused =
        'drill' in exercise
          ? drillRefusal(exercise.drill, standing)
          : liftRefusal(exercise.lift, standing, phaseOf(person));
      return {
        name: person.name,
        ...(refused !== undefined && { heldBack: refusalWords(refused, places, plan.season.units) }),
      };
    });
}

function standingOf(plan: Plan, person: Athlete, day: Day): Standing {
  return standingOn(person, day, gateValues(ruleBook(plan, person), { from: day, until: day }));
}

/** The phase of an athlete on a day. Compiles the athletes when the first is asked for. */
function phasesOn(build: Build, people: ReadonlySet<Athlete>, day: Day): (person: Athlete) => PhaseId {
  let phases: ReadonlyMap<string, PhaseId> | undefined;
  return (person) => {
    phases ??= new Map(compiledPhases(build, people, day));
    return phases.get(person.id) ?? 'closed';
  };
}

function* compiledPhases(
  { athletes }: Build,
  people: ReadonlySet<Athlete>,
  day: Day,
): Iterable<readonly [string, PhaseId]> {
  for (const { athlete, weeks } of athletes) {
    const week = people.has(athlete) ? weeks.findLast(({ starts }) => starts <= day) : undefined;
    if (week !== undefined) yield [athlete.id, week.phase];
  }
}

function rendered(
  { format, name }: LibraryRequest,
  wanted: readonly ReportedExercise[],
  units: Units | undefined,
  { outTerminal }: Session,
): Iterable<string> {
  const canvas = canvasOf(outTerminal);
  return tableOrLines(
    format,
    () => libraryTable(wanted),
    () => (name === undefined ? renderLibrary(wanted, canvas) : pages(wanted, canvas, units)),
  );
}

type Canvas = Parameters<typeof renderExercise>[1];

function pages(wanted: readonly ReportedExercise[], canvas: Canvas, units?: Units): readonly string[] {
  return wanted.flatMap((one, index) => [...(index === 0 ? [] : ['']), ...renderExercise(one, canvas, units)]);
}
