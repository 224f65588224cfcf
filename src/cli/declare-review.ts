// How `footfall review` is declared: its options and help. Added by program.ts; the command itself is loaded when it is
// called.

import { Option } from 'commander';
import { REVIEW_TABLE_NAMES } from '../report/review-table-names.ts';
import type { Add, Options } from './declare.ts';
import { formats, helpBelow, PLAN } from './declare.ts';
import { parseDate, parseFolder, parseNames } from './option-values.ts';
import type { ReviewRequest } from './requests.ts';

/** `footfall review [plan]`. */
export const addReview: Add = (program, session, done) => {
  program
    .command('review')
    .description('the Monday page: what to decide, what went otherwise than written, the week ahead, then the numbers')
    .argument(...PLAN)
    .option(
      '--as-of <date>',
      'the day of the review; otherwise the day after the last record, or the first of the next week where that one has no slot left',
      parseDate,
    )
    .option('--athlete <id>', 'only this athlete; more with commas, or given again', parseNames)
    .option('--squad <id>', 'only this squad; likewise', parseNames)
    .option('--near <dir>', 'sessions stand on the days of the build in this folder, made with --near', parseFolder)
    .addOption(new Option('--table <name>', 'one table').choices(REVIEW_TABLE_NAMES))
    .addOption(formats('text', 'csv', 'json', 'html'))
    .addOption(new Option('--paper <size>', 'what the page is printed on').choices(['a4', 'letter']))
    .addHelpText('after', helpBelow(session, REVIEW_HELP))
    .action(async (plan: string, { athlete = [], squad = [], ...options }: ReviewOptions) => {
      const { review } = await import('./commands/review.ts');
      done(await review({ ...options, plan, athletes: athlete, squads: squad }, session));
    });
};

interface ReviewOptions extends Options<ReviewRequest, 'plan' | 'athletes' | 'squads'> {
  readonly athlete?: readonly string[];
  readonly squad?: readonly string[];
}

const REVIEW_HELP = `
Each thing to decide says what it changes and the line it comes from. Planned is what the sheets had
on the first day of their week, as \`done\` takes it; done is the record. Athletes stand in the order
of the plan and are never ranked. The page is for coaches: it names reasons of health.
--format csv is the table weeks unless another is named; --format json without one is everything;
--format html is the page to print.

  footfall review season
  footfall review season --as-of 2027-02-08 --squad juniors
  footfall review season --table tests --format csv
  footfall review season --format html > monday.html`;
