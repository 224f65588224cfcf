// Text from a plan, fit for one line of a terminal.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { problem } from '../../../src/diagnostics/problem.ts';
import { printable, shortened } from '../../../src/util/printable.ts';

describe('printable text', () => {
  it.each([
    ['seniors', 'seniors'],
    ['Zoé 🏐', 'Zoé 🏐'],
    ['two \r\n lines', 'two lines'],
    ['red \u001B[31m', 'red \uFFFD[31m'],
    ['\u202Eblue', '\uFFFDblue'],
    ['a\tb', 'a\uFFFDb'],
  ])('of %j is %j', (text, shown) => {
    expect(printable(text, 100)).toBe(shown);
  });

  it('is as long as it may be, and ends in no half character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), fc.integer({ min: 2, max: 40 }), (text, most) => {
        const short = shortened(text, most);
        expect(short.length).toBeLessThanOrEqual(most);
        expect(Buffer.from(short, 'utf8').toString('utf8') === short).toBe(
          Buffer.from(text, 'utf8').toString('utf8') === text,
        );
        expect(text.startsWith(short.replace(/…$/u, '')) || short === text).toBe(true);
      }),
    );
  });
});

describe('a report', () => {
  it('repeats neither a whole novel nor a command to the terminal', () => {
    const { message, params } = problem('files/missing', { params: { wanted: `\u001B]0;x\u0007${'y'.repeat(5000)}` } });
    expect(message.length).toBeLessThan(400);
    expect(message).not.toContain('\u001B');
    expect(String(params['wanted']).length).toBe(300);
  });
});
