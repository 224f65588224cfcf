// What the declarations of commands have in common: the argument for a plan, and options that many commands take. Used
// by program.ts and the declare-*.ts files.

import type { Command } from 'commander';
import { Option } from 'commander';
import type { ExitStatus } from './exit-status.ts';
import { parseDate } from './option-values.ts';
import type { Session } from './session.ts';

/** What commander leaves of `T`'s options: positional arguments come apart from them. */
export type Options<T, Positional extends keyof T> = Omit<T, Positional>;

/** Adds a command to the program; `done` is told its status. */
export type Add = (program: Command, session: Session, done: (status: ExitStatus) => void) => void;

export const PLAN = ['[plan]', "the plan's folder, or its entry file", '.'] as const;

/**
 * The text below a command's options, its paragraphs broken anew where the terminal is too narrow for them. Lines that are
 * set in are commands to type, and stay whole.
 */
export const helpBelow = ({ outTerminal: { width } }: Session, text: string): string =>
  text
    .split('\n\n')
    .map((paragraph) => (/^ {2}/mu.test(paragraph) ? paragraph : broken(paragraph, width)))
    .join('\n\n');

function broken(paragraph: string, width: number): string {
  if (paragraph.split('\n').every((line) => line.length <= width)) return paragraph;
  const lines: string[] = [];
  for (const word of paragraph.trim().split(/\s+/u)) {
    const longer = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && longer.length <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return `${paragraph.startsWith('\n') ? '\n' : ''}${lines.join('\n')}`;
}

/** The day a season is planned on, given what was done before it. */
export const asOf = (): Option =>
  new Option(
    '--as-of <date>',
    'weeks wholly before this day are what the record says; otherwise those before the day after the last record',
  ).argParser(parseDate);

/** `--format` with these choices, of which `text` must be one: it is what is printed where nothing is asked for. */
export const formats = (...choices: readonly string[]): Option =>
  new Option('--format <format>', 'what to print').choices(choices).default('text');
