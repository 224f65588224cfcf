// What a diagnostic is made of: nothing out of a plan reaches a terminal as a command to it, wherever in its parameters.

import { expect, test } from 'vitest';
import { problem } from '../../../src/diagnostics/problem.ts';

const RED = '\u001B[31m';

test('a text and each text of a list are told without what moves a terminal', () => {
  const { message } = problem('schedule/record-missing', {
    params: { athlete: `Mira${RED}`, weeks: [`monday${RED}`] },
  });
  expect(message).toContain('Mira');
  expect(message).toContain('monday');
  expect(message).not.toContain('\u001B');
});

test('an overlong text is cut, in a list as well; the rest stands', () => {
  const long = 'a'.repeat(5000);
  const { params } = problem('schedule/record-missing', { params: { athlete: long, weeks: [long, '2027-03-01'] } });
  const [first, second] = params['weeks'] as readonly string[];
  expect(String(params['athlete']).length).toBeLessThan(400);
  expect(first).toBe(params['athlete']);
  expect(second).toBe('2027-03-01');
});
