// `footfall build --watch`: the first good build is printed like any other, each later one as what it changes on the sheets
// since the last good one. Errors are told as they come, and when they are gone. The sheets of the last good build are kept
// in memory: whoever watches has a squad before them, not a federation.

import { athleteSheet } from '../diff/side.ts';
import type { AthleteSheet, Side } from '../diff/side.ts';
import { OutputFailed } from '../host/output.ts';
import { selectsAthlete, selectsWeek } from '../report/selection.ts';
import type { Selection } from '../report/selection.ts';
import { buildOnce } from './build-once.ts';
import type { BuildOutcome, ToBuild } from './build-once.ts';
import type { ExitStatus } from './exit-status.ts';
import { failureStatus } from './open-plan.ts';
import type { Standing } from './open-plan.ts';
import type { BuildRequest } from './requests.ts';
import { select } from './select.ts';
import { refuse } from './session.ts';
import type { Session } from './session.ts';
import { tellDiff } from './tell-diff.ts';
import type { Sides } from './tell-diff.ts';
import { tellFindings } from './tell-findings.ts';
import { watchPlan } from './watch-plan.ts';
import type { Round } from './watch-plan.ts';

/** `standing` is that of the beginning: sheets written meanwhile are not yet handed out. */
export async function watchBuild(request: BuildRequest, standing: Standing, session: Session): Promise<ExitStatus> {
  let last: LastBuild | undefined;
  let hadErrors = false;
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
      isSilent: last !== undefined && request.out === undefined,
    });
    if (side === undefined) return outcome.status;
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

async function buildSide(
  request: BuildRequest,
  toBuild: ToBuild,
  session: Session,
  hooks: { readonly breathe: Parameters<Round>[1]; readonly isSilent: boolean },
): Promise<Built> {
  const sheets: AthleteSheet[] = [];
  const pass: Parameters<typeof buildOnce>[3] = {
    ...hooks,
    pass: (built) => {
      sheets.push(weeksOf(toBuild.selection, athleteSheet(built)));
    },
  };
  try {
    const outcome = await buildOnce(request, toBuild, session, pass);
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

const weeksOf = (selection: Selection, { athlete, weeks }: AthleteSheet): AthleteSheet => ({
  athlete,
  weeks: weeks.filter((week) => selectsWeek(selection, week)),
});

async function tellChanges(sides: Sides, session: Session): Promise<void> {
  if (!(await tellDiff(sides, 'text', session)))
    await session.err.write('footfall: nothing on the sheets has changed\n');
}
