// Progress of long work: for people at a terminal, and gone at the end.

import { expect, test } from 'vitest';
import { createProgress } from '../../../src/host/progress.ts';

function told(isTTY: boolean, steps: readonly number[]): string {
  let clock = 0;
  let written = '';
  const stream = {
    isTTY,
    write: (text: string) => {
      written += text;
      return true;
    },
  };
  const progress = createProgress(stream, 'athletes', () => clock);
  steps.forEach((at, index) => {
    clock = at;
    progress.tell(index + 1, steps.length);
  });
  progress.end();
  return written;
}

test('nothing is said in a pipe, and nothing of what is soon done', () => {
  expect(told(false, [0, 5000, 9000])).toBe('');
  expect(told(true, [0, 400, 800])).toBe('');
});

test('long work is told now and then, and the line is taken away', () => {
  expect(told(true, [0, 1100, 1150, 1400])).toBe(
    '\r\u{1b}[Kfootfall: 2 of 4 athletes\r\u{1b}[Kfootfall: 4 of 4 athletes\r\u{1b}[K',
  );
});
