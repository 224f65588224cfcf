// How `footfall new` is declared. Added by program.ts; the command itself is loaded when it is called.

import type { Add, Options } from './declare.ts';
import { parseDate, parseFolder } from './option-values.ts';
import type { NewRequest } from './file-requests.ts';

/** `footfall new <dir>`. */
export const addNew: Add = (program, session, done) => {
  program
    .command('new')
    .description('write a plan folder to start from: a season, two athletes, record files, a git hook')
    .argument('<dir>', 'the folder; it is made, and no file in it is ever written over', parseFolder)
    .option('--starts <date>', 'the season starts in the week of this day; otherwise next week', parseDate)
    .action(async (folder: string, options: Options<NewRequest, 'folder'>) => {
      const { startPlan } = await import('./commands/new.ts');
      done(await startPlan({ ...options, folder }, session));
    });
};
