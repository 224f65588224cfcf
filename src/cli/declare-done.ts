// How `footfall done` is declared: its arguments, options and help. Added by program.ts; the command itself is loaded
// when it is called.

import { Option } from 'commander';
import { DONE_KINDS } from '../language/done-kinds.ts';
import type { Add, Options } from './declare.ts';
import { formats, helpBelow } from './declare.ts';
import type { DoneRequest } from './file-requests.ts';
import { parseDate, parseFolder, parseNames } from './option-values.ts';

/** `footfall done [exceptions...]`: with `--date` it records, without it prints the sheet. */
export const addDone: Add = (program, session, done) => {
  program
    .command('done')
    .description('record what was done; without --date, the sheet of what is still to confirm')
    .argument('[exceptions...]', 'what was not as written: mira=40, mira=0, mira.pain=3; with --test the trials')
    .option('--date <date>', 'what was planned for this day was done as written, but for the exceptions', parseDate)
    .addOption(
      new Option(
        '--kind <kind>',
        'what was done; without it sessions are recorded, and the sheet lists everything',
      ).choices(DONE_KINDS),
    )
    .option('--test <name>', 'trials of this drill, lift or test are recorded instead')
    .option('--method <name>', 'with --test: how it was measured')
    .option('--arms', 'with --test: the arms were swung')
    .option('--no-arms', 'with --test: the hands were on the hips')
    .option('--plan <plan>', "the plan's folder, or its entry file", '.')
    .option('--athlete <id>', 'only this athlete; more with commas, or given again', parseNames)
    .option('--squad <id>', 'only this squad; likewise', parseNames)
    .option('--from <date>', 'the sheet begins here; otherwise four weeks ago', parseDate)
    .option('--near <dir>', 'sessions stand on the days of the build in this folder, made with --near', parseFolder)
    .addOption(formats('text', 'csv', 'json'))
    .addHelpText('after', helpBelow(session, DONE_HELP))
    .action(async (exceptions: readonly string[], { athlete = [], squad = [], ...options }: DoneOptions) => {
      const { recordDone } = await import('./commands/done.ts');
      done(await recordDone({ ...options, exceptions, athletes: athlete, squads: squad }, session));
    });
};

interface DoneOptions extends Options<DoneRequest, 'exceptions' | 'athletes' | 'squads'> {
  readonly athlete?: readonly string[];
  readonly squad?: readonly string[];
}

const DONE_HELP = `
Rows are added to the file that the plan names under record: done:, after they have been checked as
the plan is; nothing in it is ever changed. A row holds the contacts and minutes of the sheet as it
was made for that week. Who is on the record for that day already is left as it is.

An exception is WHO=CONTACTS, and 0 for whoever wasn't there. WHO is an athlete, a squad, or
everybody; an athlete's own comes before the squad's, and whoever wasn't there has no effort but an
own one. WHO.FIELD=VALUE says more: minutes, effort (0 to 10), pain (0 to 10, the next morning),
note. An athlete with nothing planned that day, and contacts, trained besides; pain may be told alone.

Where sheets were made with build --near, give --near with their folder here too: otherwise sessions
may be looked for on other days than the sheets have.

--kind practice, match or test records what the sport itself does, with the jumps that the plan
counts for it.

--test adds trials to the file under record: tests:, each with its unit; --method and --arms or --no-arms
say how all of them were measured.

  footfall done --plan season
  footfall done --plan season --date 2027-02-02
  footfall done --plan season --date 2027-02-02 tuva=0 mira=40 mira.pain=4 everybody.effort=6
  footfall done --plan season --date 2027-03-06 --kind match mira=45 everybody.effort=8
  footfall done --plan season --date 2027-03-09 --test countermovement-jump --no-arms "mira=33 cm, 34 cm"
  footfall done --plan season --date 2027-02-02 --squad juniors "lin.note=left early"`;
