// Reports made from the catalogue, gathered, put in order, each kept once.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createCollector, hasErrors, orderDiagnostics } from '../../../src/diagnostics/collector.ts';
import { problem } from '../../../src/diagnostics/problem.ts';

const at = (file: string, start: number, end = start + 1): { file: string; start: number; end: number } => ({
  file,
  start,
  end,
});

describe('problem', () => {
  it('takes its words from the catalogue and keeps the params', () => {
    expect(problem('files/missing', { params: { wanted: 'squad/a.yaml' }, span: at('season.yaml', 3) })).toEqual({
      code: 'files/missing',
      severity: 'error',
      message: 'there is no file "squad/a.yaml"',
      params: { wanted: 'squad/a.yaml' },
      span: at('season.yaml', 3),
      related: [],
    });
  });

  it('puts what it is told before what the catalogue says', () => {
    const told = problem('yaml/merge-key', { label: 'this', help: 'that', severity: 'warning', rule: 'r', week: 7 });
    expect(told).toMatchObject({ label: 'this', help: 'that', severity: 'warning', rule: 'r', week: 7 });
    expect(problem('yaml/merge-key', {}).help).toContain('squads:');
  });

  it('leaves out what is undefined', () => {
    expect(Object.keys(problem('source/utf16', { span: undefined, path: undefined }))).not.toContain('span');
  });
});

describe('a collector', () => {
  it('keeps what is reported in the order it came', () => {
    const collector = createCollector();
    collector.report('yaml/merge-key', { span: at('b.yaml', 1) });
    collector.add([problem('source/utf16', { span: at('a.yaml', 0) })]);
    expect(collector.diagnostics.map(({ code }) => code)).toEqual(['yaml/merge-key', 'source/utf16']);
    expect(hasErrors(collector.diagnostics)).toBe(true);
    expect(hasErrors([problem('files/listed-twice', { params: { wanted: 'a' } })])).toBe(false);
  });
});

describe('the order of diagnostics', () => {
  const all = [
    problem('files/missing', { params: { wanted: 'a plan' } }),
    problem('yaml/merge-key', { span: at('season.yaml', 5) }),
    problem('yaml/anchor', { span: at('season.yaml', 9) }),
    problem('yaml/merge-key', { span: at('season.yaml', 9) }),
    problem('yaml/merge-key', { span: at('season.yaml', 10) }),
    problem('yaml/merge-key', { span: at('drills.yaml', 0) }),
    problem('yaml/merge-key', { span: at('squad/a.yaml', 0) }),
  ];

  it('is by place, the entry file first, then by code, whatever came first', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(all, { minLength: all.length }), (shuffled) => {
        expect(orderDiagnostics(shuffled, 'season.yaml')).toEqual(all);
      }),
    );
  });

  it('keeps of equal ones the first', () => {
    expect(orderDiagnostics([...all, ...all], 'season.yaml')).toEqual(all);
  });

  it('keeps two athletes apart that have the same trouble at one place', () => {
    const trouble = { span: at('season.yaml', 5) };
    const two = [
      problem('yaml/merge-key', { ...trouble, athlete: 'jon' }),
      problem('yaml/merge-key', { ...trouble, athlete: 'mira' }),
    ];
    expect(orderDiagnostics(two, 'season.yaml')).toHaveLength(2);
  });
});
