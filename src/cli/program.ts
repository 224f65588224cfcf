// The command line as it is declared: commands, arguments, options, help. What a command does is loaded when it is
// called for, so that help and mistakes are answered at once. Only what works is declared.

import { Command, Option } from 'commander';
import { CAUTIONS } from '../report/cautions.ts';
import { TABLE_NAMES } from '../report/table-names.ts';
import { addDiff } from './declare-diff.ts';
import { addDone } from './declare-done.ts';
import { addFormat } from './declare-format.ts';
import { addJump } from './declare-jump.ts';
import { addNew } from './declare-new.ts';
import { asOf, formats, helpBelow, PLAN } from './declare.ts';
import type { Add, Options } from './declare.ts';
import { addReview } from './declare-review.ts';
import { addReach, addWhy } from './declare-why.ts';
import type { ExitStatus } from './exit-status.ts';
import { parseDate, parseFolder, parseNames, parseShard } from './option-values.ts';
import type { BuildRequest, CheckRequest, LibraryRequest, RulesRequest } from './requests.ts';
import type { Session } from './session.ts';
import { VERSION } from './version.ts';

/** The program for some words; `done` is told the status of the command that ran. */
export function createProgram(
  [command = '']: readonly string[],
  session: Session,
  done: (status: ExitStatus) => void,
): Command {
  const program = new Command('footfall')
    .description(
      'Compiles a season of jump training, kept as text, into phases, weeks, sessions and loads,\n' +
        'each number with its reason.',
    )
    .version(VERSION, '--version', 'print the version')
    .helpOption('--help', 'print help')
    .helpCommand(false)
    .addHelpText('after', helpBelow(session, AFTER_HELP));
  // The command that is called is all that its run needs; help and mistakes speak of all of them.
  const called = COMMANDS.get(command);
  for (const add of called === undefined ? COMMANDS.values() : [called]) add(program, session, done);
  return program;
}

const AFTER_HELP = `
Results go to standard output, everything about the run to standard error.
Exit status: 0 done, 1 the plan has errors, 2 the command is wrong or a file can't be read or
written, 3 a bug in footfall.

${CAUTIONS.join('\n')}`;

const strict = (): Option => new Option('--strict', 'count warnings as errors in the exit status');

const quiet = (what: string): Option => new Option('--quiet', what);

const watching = (what: string): Option => new Option('--watch', what);

const addBuild: Add = (program, session, done) => {
  program
    .command('build')
    .description('compile a plan and print it')
    .argument(...PLAN)
    .addOption(new Option('--table <name>', 'one table').choices(TABLE_NAMES))
    .addOption(formats('text', 'csv', 'json', 'html', 'ics'))
    .option('--out <dir>', 'write every artefact into this folder, whole or not at all', parseFolder)
    .addOption(new Option('--paper <size>', 'what pages are printed on').choices(['a4', 'letter']))
    .option('--athlete <id>', 'only this athlete; more with commas, or given again', parseNames)
    .option('--squad <id>', 'only this squad; likewise', parseNames)
    .option('--shard <i/n>', 'only the i-th of n parts of the athletes, for --format csv', parseShard)
    .option('--from <date>', 'from this day on', parseDate)
    .option('--to <date>', 'up to this day', parseDate)
    .addOption(asOf())
    .option('--near <dir>', 'keep sessions on the days of the build in this folder, where the rules allow', parseFolder)
    .addOption(strict())
    .addOption(quiet('print no warnings, only errors'))
    .addOption(watching('build again with every save, and print what it changed, until Ctrl-C'))
    .addHelpText('after', helpBelow(session, BUILD_HELP))
    .action(async (plan: string, { to, athlete = [], squad = [], ...options }: BuildOptions) => {
      const { build } = await import('./commands/build.ts');
      const request: BuildRequest = {
        ...options,
        plan,
        athletes: athlete,
        squads: squad,
        ...(to !== undefined && { until: to }),
      };
      done(await build(request, session));
    });
};

interface BuildOptions extends Options<BuildRequest, 'plan' | 'athletes' | 'squads' | 'until'> {
  readonly athlete?: readonly string[];
  readonly squad?: readonly string[];
  readonly to?: number;
}

const BUILD_HELP = `
Without --table: the season at a glance; with one --athlete, that athlete's weeks, each with its
reason, and sessions; with --from and --to at most two weeks apart, the sessions to read out.
--format csv is the table weeks unless another is named; --format json is everything, with reasons
and places. --format html is one page to print: the season's chart; with one --athlete, the cards;
with --from and --to at most two weeks apart, the session boards. --format ics is a calendar.
--out takes no --table: it writes all of it, or with --format csv all tables and nothing else.
--shard 1/4 to 4/4, on as many machines, make the parts of a table that one behind the other are
the whole.
--near reads plan.json in a folder of build --out, whose sheets are out: as few sessions as the rules
allow then stand on other days. It may be the folder of --out.
--watch compares with the last build that had no error, and with --out writes the folder anew each
time. It sees the plan's YAML and CSV files, hidden ones left out, and ends with the status of the
last build.

  footfall build examples/handball-spring
  footfall build examples/handball-spring --athlete mira
  footfall build examples/handball-spring --squad juniors --from 2027-02-01 --to 2027-02-07
  footfall build examples/handball-spring --table lines --format csv > lines.csv
  footfall build examples/handball-spring --out sheets --paper letter`;

const addCheck: Add = (program, session, done) => {
  program
    .command('check')
    .description('read, compile and audit a plan; print what is wrong, and nothing else')
    .argument(...PLAN)
    .addOption(formats('text', 'json', 'sarif'))
    .option('--explain <code>', 'what a code means and what to do about it')
    .addOption(asOf())
    .addOption(strict())
    .addOption(quiet('print errors only'))
    .addOption(watching('check again with every save, until Ctrl-C'))
    .action(async (plan: string, options: Options<CheckRequest, 'plan'>) => {
      const { check } = await import('./commands/check.ts');
      done(await check({ ...options, plan }, session));
    });
};

const addRules: Add = (program, session, done) => {
  program
    .command('rules')
    .description('the rules, with their numbers, marks of evidence and sources')
    .argument('[id]', 'one rule, whole')
    .option('--plan <plan>', 'say also what this plan changes and waives')
    .addOption(formats('text', 'csv', 'json'))
    .action(async (id: string | undefined, options: Options<RulesRequest, 'id'>) => {
      const { rules } = await import('./commands/rules.ts');
      done(await rules({ ...options, ...(id !== undefined && { id }) }, session));
    });
};

const addLibrary: Add = (program, session, done) => {
  program
    .command('library')
    .description('drills and lifts, and who may do them')
    .argument('[name]', 'one drill, lift or family, whole')
    .option('--plan <plan>', "with this plan's own drills, places and athletes")
    .addOption(new Option('--kind <kind>', 'only these').choices(['drill', 'lift']))
    .addOption(new Option('--tier <tier>', 'only drills of this tier').choices(['low', 'moderate', 'high']))
    .addOption(
      new Option('--direction <way>', 'only drills that go this way').choices(['vertical', 'horizontal', 'lateral']),
    )
    .option('--family <family>', 'only drills of this family')
    .option('--kit <kit>', 'only what needs no other kit than this; more with commas, `none` for none', parseNames)
    .option('--athlete <id>', 'who may do it, who not and why: this athlete (with --plan)')
    .option('--on <date>', 'on this day; otherwise the first of the season', parseDate)
    .addOption(formats('text', 'csv', 'json'))
    .action(async (name: string | undefined, options: Options<LibraryRequest, 'name'>) => {
      const { library } = await import('./commands/library.ts');
      done(await library({ ...options, ...(name !== undefined && { name }) }, session));
    });
};

/** In the order of help. */
const COMMANDS: ReadonlyMap<string, Add> = new Map([
  ['build', addBuild],
  ['check', addCheck],
  ['rules', addRules],
  ['library', addLibrary],
  ['why', addWhy],
  ['reach', addReach],
  ['review', addReview],
  ['diff', addDiff],
  ['done', addDone],
  ['jump', addJump],
  ['new', addNew],
  ['format', addFormat],
]);
