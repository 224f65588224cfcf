import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { changed, day, EVERYBODY, loading, place } from './make-build.ts';
import type { PhaseId, WeekKind } from '../../../src/library/types.ts';

const RULE = 'deload-rhythm';

function season(kinds: readonly WeekKind[], phase: PhaseId = 'strength') {
  return { weeks: kinds.map((kind) => loading(100, { kind, phase })) };
}

const rhythm = (text: string) =>
  text.split('').map((letter): WeekKind => (letter === 'L' ? 'load' : letter === 'd' ? 'deload' : 'taper'));

describe('deload-rhythm', () => {
  it('wants an easy week behind three loading weeks', () => {
    expectSilent(RULE, season(rhythm('LLdLLd')));
    expectSilent(RULE, season(rhythm('LLLdLLLd')));
    expectFinding(RULE, season(rhythm('LLLLd')), 4);
  });

  it('is said once, with the number of weeks that follow', () => {
    const said = found(RULE, season(rhythm('LLLLL')));
    expect(said.map((one) => one.params)).toEqual([expect.objectContaining({ found: 4, furtherWeeks: 1 })]);
    expect(said[0]?.message).toMatch(/and so in one more week$/u);
  });

  it('wants two loading weeks between easy ones', () => {
    expectFinding(RULE, season(rhythm('LLdLd')), 5);
    expectFinding(RULE, season(rhythm('LLLdd')), 5);
  });

  it('starts anew behind any other kind of week', () => {
    expectSilent(RULE, season(rhythm('LLLtLLL')));
  });

  it.each(['maintenance', 'sharpening', 'hold', 'foundation'] as const)('is silent in %s', (phase) => {
    expectSilent(RULE, season(rhythm('LLLLLLL'), phase));
  });

  it('takes the numbers of the plan, and points at a pinned kind of week', () => {
    expectSilent(RULE, { plan: changed(RULE, { 'loading-weeks': 4 }), ...season(rhythm('LLLLd')) });
    const pin = {
      range: { from: day(2, 0), until: day(2, 6) },
      who: EVERYBODY,
      effects: [{ kind: 'week-kind', weekKind: 'deload' }],
      because: 'x',
      span: place(33),
    } as const;
    expect(found(RULE, { plan: { pins: [pin] }, ...season(rhythm('LdLLL')) })[0]?.span).toEqual(place(33));
  });
});
