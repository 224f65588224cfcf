// One athlete of a plan, from the path and the id to what was built, for the commands that ask about one. Nobody behind
// that athlete is compiled; a wrong id is refused with the nearest that there is.

import type { BuiltAthlete } from '../build/types.ts';
import type { Plan } from '../plan/types.ts';
import type { ExitStatus } from './exit-status.ts';
import { openPlan } from './open-plan.ts';
import { unknown } from './select.ts';
import { refuse } from './session.ts';
import type { Session } from './session.ts';

export type OpenedAthlete =
  | { readonly ok: true; readonly plan: Plan; readonly built: BuiltAthlete }
  | { readonly ok: false; readonly status: ExitStatus };

export async function openAthlete(path: string, id: string, session: Session): Promise<OpenedAthlete> {
  const opened = await openPlan(path, session);
  if (!opened.ok) return opened;
  const { plan, athletes } = opened.build;
  const problem = unknown([id], 'athlete', new Set(plan.athletes.map((athlete) => athlete.id)));
  if (problem !== undefined) return { ok: false, status: await refuse(session, problem) };
  for (const built of athletes) if (built.athlete.id === id) return { ok: true, plan, built };
  throw new Error(`the athlete ${id} of the plan was not built`);
}
