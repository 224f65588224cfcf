// What the README shows is what happens: each block of it that begins with a command is run and its output compared, and
// each block that names a file is that file. A line of three dots stands for the lines between. After a change that is
// meant, FOOTFALL_UPDATE=1 writes what is shown anew, as many lines before and behind the dots as there were.

import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test, vi } from 'vitest';
import { footfall } from './footfall.ts';

// A season takes its time to compile, and a busy machine takes longer.
vi.setConfig({ testTimeout: 120_000 });

const README = 'README.md';
const DOTS = '...';
const WRITES = process.env['FOOTFALL_UPDATE'] === '1';
const readme = readFileSync(README, 'utf8');

const CONSOLE = /^```console\n\$ (?<command>.*)\n(?<output>[^`]*?)^```$/gmu;
const FILE = /^```\w+ (?<file>\S+)\n(?<text>[^`]*?)^```$/gmu;

const shown = [...readme.matchAll(CONSOLE)].map(({ groups = {} }) => ({
  command: groups['command'] ?? '',
  output: groups['output'] ?? '',
}));
const files = [...readme.matchAll(FILE)].map(({ groups = {} }) => ({
  file: groups['file'] ?? '',
  text: groups['text'] ?? '',
}));

async function outputOf(command: string): Promise<string> {
  const [program, ...args] = command.split(' ');
  if (program !== 'footfall') throw new Error(`${README} shows another program: ${command}`);
  const { out, err } = await footfall(args);
  return (out === '' ? err : out).replaceAll('\r\n', '\n');
}

/** The output with as much left out as is left out of what is shown. */
function cut(output: string, like: string): string {
  const lines = like.split('\n').slice(0, -1);
  const before = lines.indexOf(DOTS);
  if (before < 0) return output;
  const behind = lines.length - before - 1;
  const whole = output.split('\n').slice(0, -1);
  return [...whole.slice(0, before), DOTS, ...whole.slice(whole.length - behind), ''].join('\n');
}

describe('each output that is shown', () => {
  test.each(shown)('$command', async ({ command, output }) => {
    const real = cut(await outputOf(command), output);
    if (WRITES) {
      const now = readFileSync(README, 'utf8');
      writeFileSync(
        README,
        now.replace(`$ ${command}\n${output}`, () => `$ ${command}\n${real}`),
      );
    } else {
      expect(output).toBe(real);
    }
  });
});

test('there are some, and the files that are shown are as they are', () => {
  expect(shown.length).toBeGreaterThan(3);
  expect(files.length).toBeGreaterThan(0);
  for (const { file, text } of files) expect(text).toBe(readFileSync(file, 'utf8'));
});
