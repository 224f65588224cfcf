// How `footfall diff` is declared: its arguments, options and help. Added by program.ts; the command itself is loaded
// when it is called.

import { parseDate, parseFolder } from './option-values.ts';
import type { Add, Options } from './declare.ts';
import { asOf, formats, helpBelow } from './declare.ts';
import type { DiffRequest } from './requests.ts';

/** `footfall diff [old] [new]`, the old side HEAD and the new one the plan as it is where they aren't named. */
export const addDiff: Add = (program, session, done) => {
  program
    .command('diff')
    .description('what changed between two builds: sessions, contacts, kilos, and the edits it came from')
    .argument('[old]', 'a git revision, a plan, or what a build wrote', 'HEAD')
    .argument('[new]', 'likewise; without it the plan as it is now')
    .option('--plan <plan>', 'the plan that is looked up in a revision', '.')
    .option(
      '--printed <date>',
      'sheets are out for weeks that start up to this day; otherwise up to the last record',
      parseDate,
    )
    .addOption(asOf())
    .option(
      '--near <dir>',
      'sessions of plans stay on the days of the build in this folder, where rules allow',
      parseFolder,
    )
    .option('--exit-code', 'end with status 1 where something changed')
    .addOption(formats('text', 'json', 'markdown'))
    .addHelpText('after', helpBelow(session, DIFF_HELP))
    .action(async (old: string, fresh: string | undefined, options: Options<DiffRequest, 'old' | 'fresh'>) => {
      const { diff } = await import('./commands/diff.ts');
      const request: DiffRequest = {
        ...options,
        old,
        ...(fresh !== undefined && { fresh }),
      };
      done(await diff(request, session));
    });
};

const DIFF_HELP = `
What is there as a file or folder is a plan, or the JSON or folder that a build wrote, whose edits
aren't known; anything else is a revision of the repository the working directory is in. Nothing is
checked out. With --near both plans are compiled near the sheets that are out, as build --near does:
ask before those are written anew, as both plans then stay on the new days and what moved isn't told.
Changes under 5 contacts or the smallest plate aren't told; where nothing is left to tell nothing is
printed.

  footfall diff --plan season
  footfall diff HEAD~1 HEAD --plan season --format markdown
  footfall diff last-year/season season
  footfall diff out season --near out`;
