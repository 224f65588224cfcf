// How `footfall format` is declared. Added by program.ts; the command itself is loaded when it is called.

import type { Add, Options } from './declare.ts';
import type { FormatRequest } from './file-requests.ts';

/** `footfall format [plan]`; `-` is standard input. */
export const addFormat: Add = (program, session, done) => {
  program
    .command('format')
    .description('write the YAML files of a plan in one tidy shape; comments and order stay')
    .argument('[plan]', "the plan's folder, one of its files, or - for standard input", '.')
    .option('--check', 'change nothing; name the files that would change, and end with status 1 if there are some')
    .action(async (plan: string, options: Options<FormatRequest, 'plan'>) => {
      const { format } = await import('./commands/format.ts');
      done(await format({ ...options, plan }, session));
    });
};
