// `footfall why ATHLETE DATE [plan]`: the chain behind the week that holds a date, as text or JSON. Only that athlete
// is compiled.

import { renderWhyJson } from '../../render/json/why.ts';
import { renderWhy } from '../../render/terminal/why.ts';
import { findWeek, reportWhy } from '../../report/why.ts';
import { isoDate } from '../../util/days.ts';
import { DONE } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openAthlete } from '../open-athlete.ts';
import { keepsAny, openSheets } from '../open-built.ts';
import { canvasOf } from '../canvas.ts';
import type { WhyRequest } from '../why-requests.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';

/** Status 0; 1 where the plan has errors; 2 where nobody has the id, the date is outside the season, or no build is out. */
export async function why(request: WhyRequest, session: Session): Promise<ExitStatus> {
  const out = await openSheets(request.near, session);
  if (!out.ok) return out.status;
  const opened = await openAthlete(request, session, out.sheets);
  if (!opened.ok) return opened.status;
  const { build, built } = opened;
  const { plan } = build;
  const week = findWeek(built, request.on);
  if (week === undefined) {
    const { starts, ends } = plan.season;
    const season = `${isoDate(starts)} to ${isoDate(ends)}`;
    return await refuse(session, `${isoDate(request.on)} is in no week of the season, ${season}`);
  }
  const told = reportWhy(plan, built, week, request.on);
  const canvas = canvasOf(session.outTerminal);
  await (request.format === 'json'
    ? session.out.write(renderWhyJson(told))
    : session.out.writeAll(lined(renderWhy(told, canvas))));
  if (request.near !== undefined && !keepsAny([built.athlete], plan.season, out.sheets))
    await session.err.write(
      `footfall: ${built.athlete.id} has no session of this season in ${request.near}: no day is kept\n`,
    );
  return DONE;
}
