// `footfall new DIR`: a plan folder to start from. Says what it wrote, and what to do next. What stands in the files is
// made by ../starter-plan.ts.

import { writeNewFiles } from '../../host/new-files.ts';
import { DONE } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import type { NewRequest } from '../file-requests.ts';
import { lined, refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { canStart, starterPlan } from '../starter-plan.ts';
import { DAYS_A_WEEK, isoDate } from '../../util/days.ts';

/**
 * The season starts next week unless a day is named; status 2 where it can't. Throws OutputFailed where a file is there
 * already.
 */
export async function startPlan({ folder, starts }: NewRequest, session: Session): Promise<ExitStatus> {
  const day = starts ?? session.today + DAYS_A_WEEK;
  if (!canStart(day)) return await refuse(session, `a season from ${isoDate(day)} would leave the years of a calendar`);
  const files = starterPlan(day);
  writeNewFiles(folder, files);
  await session.out.writeAll(lined(files.map(({ path }) => `${folder.replace(/(?<=.)\/+$/u, '')}/${path}`)));
  await session.err.write(NEXT);
  return DONE;
}

const NEXT = `
Next, in that folder:
  footfall build
  git init && git config core.hooksPath hooks
The second has git check the plan before every commit.
`;
