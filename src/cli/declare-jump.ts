// How `footfall jump` is declared: a file of trials, or a test that is typed. Added by program.ts; the command itself
// is loaded when it is called.

import type { Add, Options } from './declare.ts';
import { formats, helpBelow } from './declare.ts';
import { parseForces, parseHeight, parseJumps, parseMass, parseTimes } from './option-values.ts';
import type { JumpRequest } from './requests.ts';

/** `footfall jump [trials]`, where trials are a file; typed ones are options. */
export const addJump: Add = (program, session, done) => {
  program
    .command('jump')
    .description('work out a jump test: heights, indices, power, and whether a change is more than noise')
    .argument('[trials]', 'a CSV of trials with the columns of record/tests.csv')
    .option('--countermovement <jumps>', 'trials of a counter-movement jump: heights, or times in the air', parseJumps)
    .option('--squat <jumps>', 'trials of a squat jump, from a still squat', parseJumps)
    .option('--drop <jumps>', 'trials of a drop jump', parseJumps)
    .option('--contact <times>', 'time on the ground in each trial of the drop jump', parseTimes)
    .option('--take-off <times>', 'time to leaving the ground in each counter-movement jump', parseTimes)
    .option('--force <newtons>', 'peak force of a counter-movement jump, with --isometric', parseForces)
    .option('--isometric <newtons>', 'peak force of an isometric pull', parseForces)
    .option('--mass <mass>', 'body mass, for peak power', parseMass)
    .option('--before <height>', 'mean height of the same test before, measured in the same way', parseHeight)
    .option('--method <name>', 'how it was measured')
    .option('--arms', 'the arms were swung')
    .option('--no-arms', 'the hands were on the hips')
    .addOption(formats('text', 'csv', 'json'))
    .addHelpText('after', helpBelow(session, JUMP_HELP))
    .action(async (trials: string | undefined, options: Options<JumpRequest, 'trials'>) => {
      const { jump } = await import('./commands/jump.ts');
      done(await jump({ ...options, ...(trials !== undefined && { trials }) }, session));
    });
};

const JUMP_HELP = `
Trials stand with commas between, each with its unit. Times in the air read higher than other
methods, so one test holds one method, and what was measured in two ways is never compared. In a file
the rows contact-time and take-off-time, in s or ms, belong to the jump of the same athlete, day,
trial, method and arms.

  footfall jump --countermovement "0.50 s, 0.51 s" --squat "0.48 s" --no-arms --mass "65 kg"
  footfall jump --drop "33 cm" --contact "0.19 s"
  footfall jump record/tests.csv --format csv`;
