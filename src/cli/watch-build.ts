// `footfall build --watch`: the first good build is printed like any other, each later one as what it changes on the sheets
// since the last good one. Errors are told as they come, and when they are gone. The sheets of the last good build are kept
// in memory, and with them the seasons that a save leaves as they are: whoever watches has a squad before them, not a
// federation. Pages are made anew each time, as every page bears the mark of the whole plan.

import type { AthleteSheet, Side } from '../diff/side.ts';
import type { FolderMemory } from '../host/output-folder.ts';
import { OutputFailed } from '../host/output.ts';
import { selectsAthlete } from '../report/selection.ts';
import { createSeasonMemory } from '../reuse/season-memory.ts';
import type { KeptSeason, SeasonMemory } from '../reuse/season-memory.ts';
import { buildKept, createSheets, writesTables } from './build-kept.ts';
import type { KeptSheets } from './build-kept.ts';
import { buildOnce } from './build-once.ts';
import type { BuildOutcome, ToBuild } from './build-once.ts';
import type { ExitStatus } from './exit-status.ts';
import { failureStatus } from './open-plan.ts';
import type { Standing } from './open-plan.ts';
import type { BuildRequest } from './requests.ts';
import { select } from './select.ts';
import { refuse } from './session.ts';
import type { Session } from './session.ts';
import { dayTeller } from './tell-day.ts';
import { tellDiff } from './tell-diff.ts';
import type { Sides } from './tell-diff.ts';
import { tellFindings } from './tell-findings.ts';
import { watchPlan } from './watch-plan.ts';
import type { Round } from './watch-plan.ts';

/** `standing` is that of the beginning: sheets written meanwhile are not yet handed out. */
export async function watchBuild(request: BuildRequest, standing: Standing, session: Session): Promise<ExitStatus> {
  const memory = createSeasonMemory<KeptSheets>();
  const folder: FolderMemory = {};
  let last: LastBuild | undefined;
  let hadErrors = false;
  const tellDay = request.asOf === undefined && request.quiet !== true ? dayTeller(session) : undefined;
  return await watchPlan({ ...request, standing }, session, async ({ build, plan, diagnostics }, breathe) => {
    if (build === undefined) {
      hadErrors = true;
      await tellFindings(diagnostics, plan, session);
      return failureStatus(diagnostics);
    }
    const selected = select(request, build.plan);
    if (!selected.ok) return await refuse(session, selected.problem);
    const toBuild = { compiled: { build, plan, diagnostics }, selection: selected.selection };
    const { outcome, side } = await buildSide(request, toBuild, session, {
      breathe,
      memory,
      folder,
      isFirst: last === undefined,
    });
    if (side === undefined) return outcome.status;
    await tellDay?.(build.plan);
    if (hadErrors && !outcome.hasErrors) await session.err.write('footfall: no errors any more\n');
    hadErrors = outcome.hasErrors;
    if (last !== undefined) await tellChanges({ before: last.side, after: side, standing }, session);
    // What a build with errors left out would be told as gone, and as come again when they are mended.
    if (last === undefined || last.hasErrors || !outcome.hasErrors) last = { side, hasErrors: outcome.hasErrors };
    return outcome.status;
  });
}

interface LastBuild {
  readonly side: Side;
  readonly hasErrors: boolean;
}

interface Built {
  readonly outcome: BuildOutcome;
  /** The sheets as they are asked for; absent where they couldn't be written. */
  readonly side?: Side;
}

interface Hooks {
  readonly breathe: Parameters<Round>[1];
  readonly memory: SeasonMemory<KeptSheets>;
  readonly folder: FolderMemory;
  readonly isFirst: boolean;
}

async function buildSide(request: BuildRequest, toBuild: ToBuild, session: Session, hooks: Hooks): Promise<Built> {
  const sheets: AthleteSheet[] = [];
  const pass = ({ athlete, made }: Pick<KeptSeason<KeptSheets>, 'athlete' | 'made'>): void => {
    sheets.push({ athlete, weeks: made.weeks });
  };
  try {
    const outcome = await buildRound(request, toBuild, session, { ...hooks, pass });
    const { plan } = toBuild.compiled.build;
    const athletes = plan.athletes.filter((athlete) => selectsAthlete(toBuild.selection, athlete));
    return { outcome, side: { plan, units: plan.season.units, athletes, sheets } };
  } catch (error) {
    // A folder that can't be written now may be the next time: nobody has to begin again for that.
    if (!(error instanceof OutputFailed) || request.out === undefined) throw error;
    const status = await refuse(session, `the output can't be written: ${error.message}`);
    return { outcome: { status, hasErrors: true } };
  }
}

/** What is printed or holds pages needs whole seasons; what is told of the rest is kept. */
async function buildRound(
  request: BuildRequest,
  toBuild: ToBuild,
  session: Session,
  { breathe, memory, folder, isFirst, pass }: Hooks & { readonly pass: (season: KeptSeason<KeptSheets>) => void },
): Promise<BuildOutcome> {
  const { compiled, selection } = toBuild;
  const { from, until } = selection;
  const make = createSheets(request, compiled.build.plan, selection);
  const round = memory.open(compiled.build, make, { from, until });
  const isPrinted = request.out === undefined ? isFirst : !writesTables(request);
  if (!isPrinted) return await buildKept(request, toBuild, session, { round, folder, breathe, pass, isFirst });
  return await buildOnce(request, toBuild, session, {
    breathe,
    pass: (built) => {
      pass(round.keep(built));
    },
  });
}

async function tellChanges(sides: Sides, session: Session): Promise<void> {
  if (!(await tellDiff(sides, 'text', session)))
    await session.err.write('footfall: nothing on the sheets has changed\n');
}
