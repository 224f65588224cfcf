// How `footfall why` and `footfall reach` are declared: questions about one athlete. Added by program.ts; the commands
// themselves are loaded when they are called.

import { Argument } from 'commander';
import type { Add, Options } from './declare.ts';
import { asOf, formats, helpBelow, PLAN } from './declare.ts';
import { parseContacts, parseDate, parseFolder } from './option-values.ts';
import type { ReachRequest, WhyRequest } from './why-requests.ts';

const ATHLETE = ['<athlete>', "the athlete's id"] as const;

/** `footfall why <athlete> <date> [plan]`. */
export const addWhy: Add = (program, session, done) => {
  program
    .command('why')
    .description('the reasons behind a week: every number, its rule, its line in the plan, what would change it')
    .argument(...ATHLETE)
    .addArgument(new Argument('<date>', 'a day of the week; its sessions are told line by line').argParser(parseDate))
    .argument(...PLAN)
    .addOption(asOf())
    .option('--near <dir>', 'sessions stand on the days of the build in this folder, made with --near', parseFolder)
    .addOption(formats('text', 'json'))
    .addHelpText('after', helpBelow(session, WHY_HELP))
    .action(async (athlete: string, on: number, plan: string, options: Options<WhyRequest, Positional>) => {
      const { why } = await import('./commands/why.ts');
      done(await why({ ...options, athlete, on, plan }, session));
    });
};

type Positional = 'athlete' | 'on' | 'plan';

const WHY_HELP = `
What is written is told with its file and line, what is assumed with the mark of its evidence:
P published, S published and read in a secondary text, M from memory, C common practice.

Where sheets were made with build --near, give --near with their folder here too: otherwise sessions
may be told on other days than the sheets have.

  footfall why oda 2027-01-25 examples/handball-spring`;

/** `footfall reach <athlete> <contacts> [plan]`. */
export const addReach: Add = (program, session, done) => {
  program
    .command('reach')
    .description('the earliest week in which so many contacts are safe, and what stands in the way')
    .argument(...ATHLETE)
    .addArgument(new Argument('<contacts>', 'contacts a week').argParser(parseContacts))
    .argument(...PLAN)
    .addOption(asOf())
    .addOption(formats('text', 'json'))
    .addHelpText('after', helpBelow(session, REACH_HELP))
    .action(
      async (athlete: string, contacts: number, plan: string, options: Options<ReachRequest, ReachPositional>) => {
        const { reach } = await import('./commands/reach.ts');
        done(await reach({ ...options, athlete, contacts, plan }, session));
      },
    );
};

const REACH_HELP = `
What is safe in a week hangs on no day: it is the same for sheets made with build --near.

  footfall reach oda 260 examples/handball-spring`;

type ReachPositional = 'athlete' | 'contacts' | 'plan';
