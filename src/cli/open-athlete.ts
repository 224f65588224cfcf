// One athlete of a plan, from the path and the id to what was built, for the commands that ask about one. Nobody else
// is compiled; a wrong id is refused with the nearest that there is.

import type { Build, BuiltAthlete } from '../build/types.ts';
import type { ExitStatus } from './exit-status.ts';
import type { SheetsOut } from './open-built.ts';
import { openPlan, plannedOn } from './open-plan.ts';
import { unknown } from './select.ts';
import { refuse } from './session.ts';
import type { Session } from './session.ts';
import type { AthleteRequest } from './why-requests.ts';

export type OpenedAthlete =
  | { readonly ok: true; readonly build: Build; readonly built: BuiltAthlete }
  | { readonly ok: false; readonly status: ExitStatus };

/**
 * The athlete as built, or the status to end with once the reason was told: 1 for a plan with errors, 2 for an unknown
 * id. Sessions stay on the days of `sheetsOut`, where rules allow.
 */
export async function openAthlete(
  { plan: path, athlete: id, asOf }: AthleteRequest,
  session: Session,
  sheetsOut: SheetsOut = {},
): Promise<OpenedAthlete> {
  const opened = await openPlan(path, session, { ...plannedOn(asOf), ...sheetsOut });
  if (!opened.ok) return opened;
  const { build } = opened;
  const { athletes } = build.plan;
  const athlete = athletes.find((one) => one.id === id);
  if (athlete !== undefined) return { ok: true, build, built: build.athlete(athlete) };
  const problem = unknown([id], 'athlete', new Set(athletes.map((one) => one.id))) ?? '';
  return { ok: false, status: await refuse(session, problem) };
}
