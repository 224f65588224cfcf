// `footfall reach ATHLETE CONTACTS [plan]`: the earliest week in which so many contacts a week are safe, as text or
// JSON. Only that athlete is compiled.

import { renderReachJson } from '../../render/json/reach.ts';
import { renderReach } from '../../render/terminal/reach.ts';
import { reportReach } from '../../report/reach.ts';
import { riseNeeded } from '../../schedule/reach.ts';
import { DONE } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openAthlete } from '../open-athlete.ts';
import { canvasOf } from '../canvas.ts';
import { lined } from '../session.ts';
import type { Session } from '../session.ts';
import type { ReachRequest } from '../why-requests.ts';

/** Status 0, also where no week holds so many; 1 where the plan has errors; 2 where nobody has the id. */
export async function reach(request: ReachRequest, session: Session): Promise<ExitStatus> {
  const opened = await openAthlete(request, session);
  if (!opened.ok) return opened.status;
  const { build, built } = opened;
  const { plan, asOf } = build;
  const { contacts } = request;
  const told = reportReach(plan, built, contacts, (week) =>
    riseNeeded({ plan, athlete: built.athlete, asOf }, contacts, week),
  );
  const canvas = canvasOf(session.outTerminal);
  await (request.format === 'json'
    ? session.out.write(renderReachJson(told))
    : session.out.writeAll(lined(renderReach(told, canvas))));
  return DONE;
}
