// A line for each kind of finding: how often, of whom, in which weeks; said below a list that no screen shows at once.

import { expect, test } from 'vitest';
import { codes } from '../../../src/diagnostics/catalogue.ts';
import { problem } from '../../../src/diagnostics/problem.ts';
import { diagnosticsText } from '../../../src/render/diagnostics/diagnostics-text.ts';
import { createPalette } from '../../../src/render/palette.ts';
import { diagnosticsView } from '../../../src/report/diagnostics-view.ts';
import { createFindingKinds } from '../../../src/report/finding-kinds.ts';
import { day } from '../date.ts';

const rises = (athlete: string, week: string): ReturnType<typeof problem> =>
  problem('schedule/return-in-taper', {
    params: { athlete, peak: 'Final', week },
    athlete,
    week: day(week),
  });

function linesOf(...found: readonly ReturnType<typeof problem>[]): readonly string[] {
  const kinds = createFindingKinds();
  for (const one of found) kinds.add(one);
  return kinds.lines('warning');
}

const SUMMARY = 'a way back that is not finished when the taper would begin';
const CODE = '[schedule/return-in-taper]';

test('few athletes and weeks are named, many are counted', () => {
  expect(linesOf(rises('ane', '2027-04-19'), rises('ane', '2027-04-12'))).toEqual([
    `2 x ${SUMMARY}: ane, weeks of 12 Apr and 19 Apr ${CODE}`,
  ]);
  const squad = ['ane', 'bea', 'cleo', 'dora'].flatMap((athlete) =>
    ['2027-04-05', '2027-04-12', '2027-04-19', '2027-04-26'].map((week) => rises(athlete, week)),
  );
  expect(linesOf(...squad)).toEqual([`16 x ${SUMMARY}: 4 athletes, 4 weeks from 5 Apr to that of 26 Apr ${CODE}`]);
  expect(linesOf(...squad.filter(({ week }) => week === day('2027-04-05')))).toEqual([
    `4 x ${SUMMARY}: 4 athletes, week of 5 Apr ${CODE}`,
  ]);
});

test('what speaks of no athlete is counted alone', () => {
  expect(linesOf(problem('audit/waiver-unused', { params: { rule: 'taper-cut', from: 'a', until: 'b' } }))).toEqual([
    expect.stringMatching(/^1 x [^:]+ \[audit\/waiver-unused\]$/u),
  ]);
});

test('a list of more than twenty ends with its kinds, unless they are nearly as many', () => {
  const found = (count: number): readonly ReturnType<typeof problem>[] =>
    Array.from({ length: count }, (_, index) => rises(`a${index}`, '2027-04-12'));
  const told = (diagnostics: readonly ReturnType<typeof problem>[]): string =>
    diagnosticsText(diagnosticsView(diagnostics, []), createPalette(0));
  const text = (count: number): string => told(found(count));
  const kinds = found(21).map((one, index) => ({ ...one, code: codes[index % 6] ?? one.code }));
  expect(told(kinds).trimEnd().split('\n').at(-1)).toBe('21 warnings');
  expect(text(20).trimEnd().split('\n').at(-1)).toBe('20 warnings');
  expect(text(21).trimEnd().split('\n').slice(-2)).toEqual([
    '21 warnings',
    `  21 x ${SUMMARY}: 21 athletes, week of 12 Apr ${CODE}`,
  ]);
});
