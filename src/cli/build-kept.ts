// A round of `build --watch` by the seasons that are kept: all tables into their folder where one is asked for, otherwise
// nothing is written; and what was found, told as after any build. Called by watch-build.ts.

import type { BuiltAthlete } from '../build/types.ts';
import { sheetOf } from '../diff/sheet.ts';
import type { SheetWeek } from '../diff/types.ts';
import type { FolderMemory } from '../host/output-folder.ts';
import type { Plan } from '../plan/types.ts';
import { selectsWeek } from '../report/selection.ts';
import type { Selection } from '../report/selection.ts';
import type { KeptSeason, Round } from '../reuse/season-memory.ts';
import { mapped } from '../util/lazily.ts';
import { concluded, fillFolder } from './build-once.ts';
import type { BuildHooks, BuildOutcome, ToBuild } from './build-once.ts';
import type { BuildRequest } from './requests.ts';
import type { Session } from './session.ts';
import { createFindings, walkAthletes } from './walk.ts';
import { createKeptRows, writeTables } from './write-tables.ts';
import type { KeptRows } from './write-tables.ts';

/** What a watch keeps of a compiled athlete. */
export interface KeptSheets {
  /** The weeks that are asked for. */
  readonly weeks: readonly SheetWeek[];
  /** Only where tables are written. */
  readonly rows?: KeptRows;
}

/** Whether a request has its tables, and nothing else, written into a folder. */
export const writesTables = ({ out, format }: BuildRequest): boolean => out !== undefined && format === 'csv';

/** What makes it. */
export function createSheets(
  request: BuildRequest,
  plan: Plan,
  selection: Selection,
): (built: BuiltAthlete) => KeptSheets {
  const rowsOf = writesTables(request) ? createKeptRows({ plan, selection }) : undefined;
  const weeksOf = (built: BuiltAthlete): KeptSheets['weeks'] =>
    sheetOf(built).filter((week) => selectsWeek(selection, week));
  const known = new WeakMap<BuiltAthlete['weeks'], KeptSheets['weeks']>();
  // Who has the very same weeks is kept with the same sheets, but where findings, which are an athlete's own, block some.
  const sharedWeeks = (built: BuiltAthlete): KeptSheets['weeks'] => {
    if (built.blocked.size > 0) return weeksOf(built);
    const weeks = known.get(built.weeks) ?? weeksOf(built);
    known.set(built.weeks, weeks);
    return weeks;
  };
  return (built) => ({ weeks: sharedWeeks(built), ...(rowsOf !== undefined && { rows: rowsOf(built) }) });
}

interface Hooks extends Pick<BuildHooks, 'breathe'> {
  /** Nobody's season is kept yet. */
  readonly isFirst: boolean;
  readonly round: Round<KeptSheets>;
  /** What the tables were written as, where they are. */
  readonly folder: FolderMemory;
  /** Given each athlete on the way. */
  readonly pass: (season: KeptSeason<KeptSheets>) => void;
}

/** Writes and tells a round, and gives its status. Throws OutputFailed when the folder can't be written. */
export async function buildKept(
  request: BuildRequest,
  { compiled, selection }: ToBuild,
  session: Session,
  { round, folder, pass, breathe, isFirst }: Hooks,
): Promise<BuildOutcome> {
  const { plan } = compiled.build;
  const findings = createFindings();
  findings.add(compiled.diagnostics);
  const walked = walkAthletes(plan, selection, round.season, (season) => {
    findings.add(season.diagnostics);
    pass(season);
  });
  const pause = seldom(breathe);
  if (request.out === undefined) for (const _ of walked.athletes) await pause();
  else {
    const rows = mapped(walked.athletes, ({ made }) => rowsIn(made));
    const athletes = plan.athletes.length;
    await fillFolder(
      request.out,
      (folder, progress) => writeTables(folder, { rows, athletes, headed: true, progress, breathe: pause }),
      { isAtOnce: !isFirst, ...(round.keepsEverybody && { memory: folder }) },
    );
  }
  findings.add(walked.planFindings());
  return await concluded(request, findings, compiled, session);
}

/** Most athletes take no time here, and to breathe takes some. */
const ATHLETES_A_BREATH = 10;

function seldom(breathe: BuildHooks['breathe']): () => Promise<void> {
  let athletes = 0;
  return async () => {
    athletes += 1;
    if (athletes % ATHLETES_A_BREATH === 0) await breathe?.();
  };
}

function rowsIn({ rows }: KeptSheets): KeptRows {
  if (rows === undefined) throw new Error('the rows of a table were not made');
  return rows;
}
