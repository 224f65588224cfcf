import { describe, expect, it } from 'vitest';
import { choosePath } from '../../../src/schedule/phases/path.ts';
import { PATH_PHASES, PATH_STEPS } from '../../../src/library/phases.ts';
import type { PhaseId } from '../../../src/library/types.ts';
import type { Pin } from '../../../src/plan/types.ts';
import { day } from '../date.ts';
import { athlete, EVERYBODY, HERE, peak, plan } from './make-plan.ts';
import { runs, stages } from './stages.ts';

const path = (weeks: number): string =>
  runs((choosePath(Array.from({ length: weeks }, () => undefined)) ?? []).map((phase) => ({ phase })));

describe('the path of a segment', () => {
  it.each([
    [1, 'power 1'],
    [2, 'power 2'],
    [3, 'power 3'],
    [4, 'power 4'],
    [5, 'strength 3, power 2'],
    [6, 'strength 3, power 3'],
    [7, 'strength 3, power 4'],
    [8, 'strength 3, strength-power 2, power 3'],
    [9, 'strength 3, strength-power 3, power 3'],
    [10, 'strength 3, strength-power 3, power 4'],
    [11, 'strength 4, strength-power 3, power 4'],
    [12, 'hypertrophy 3, strength 3, strength-power 3, power 3'],
    [14, 'hypertrophy 3, strength 4, strength-power 3, power 4'],
    [16, 'hypertrophy 4, strength 4, strength-power 4, power 4'],
    [20, 'hypertrophy 5, strength 5, strength-power 5, power 5'],
    [24, 'hypertrophy 4, strength 4, hypertrophy 4, strength 4, strength-power 4, power 4'],
  ])('of %i weeks is %s', (weeks, expected) => {
    expect(path(weeks)).toBe(expected);
  });

  it('is of least cost, against every path there is', () => {
    for (let weeks = 2; weeks <= 24; weeks += 1) {
      const all = everyPath(weeks);
      const best = all.reduce((least, one) => (rank(one, least) < 0 ? one : least));
      expect(path(weeks)).toBe(best.runs.map((run) => `${run.id} ${run.length}`).join(', '));
    }
  });

  it('exists for every length up to two years', () => {
    for (let weeks = 1; weeks <= 104; weeks += 1) {
      expect(choosePath(Array.from({ length: weeks }, () => undefined))).toHaveLength(weeks);
    }
  });

  it('goes round a pinned week', () => {
    const fixed = Array.from({ length: 12 }, (_, week) => (week === 0 ? ('strength' as const) : undefined));
    expect(runs((choosePath(fixed) ?? []).map((phase) => ({ phase })))).toBe('strength 4, strength-power 4, power 4');
  });
});

interface Walk {
  readonly cost: number;
  readonly runs: readonly { readonly id: string; readonly length: number }[];
}

/** Every path there is, by plain recursion. */
function everyPath(weeks: number, from = 'start', walked: Walk = { cost: 0, runs: [] }): readonly Walk[] {
  if (weeks === 0) return PATH_STEPS.some((step) => step.from === from && step.to === 'end') ? [walked] : [];
  return PATH_PHASES.flatMap((phase) => {
    const step = PATH_STEPS.find((one) => one.from === from && one.to === phase.id);
    if (step === undefined) return [];
    const found: Walk[] = [];
    for (let length = phase.least; length <= Math.min(phase.most, weeks); length += 1) {
      const cost = walked.cost + step.costTenths + phase.weightTenths * (length - phase.ideal) ** 2;
      found.push(...everyPath(weeks - length, phase.id, { cost, runs: [...walked.runs, { id: phase.id, length }] }));
    }
    return found;
  });
}

function rank(a: Walk, b: Walk): number {
  if (a.cost !== b.cost) return a.cost - b.cost;
  for (let back = 1; back <= Math.min(a.runs.length, b.runs.length); back += 1) {
    const difference = (b.runs.at(-back)?.length ?? 0) - (a.runs.at(-back)?.length ?? 0);
    if (difference !== 0) return difference;
  }
  for (let back = 1; back <= Math.min(a.runs.length, b.runs.length); back += 1) {
    const order = PATH_PHASES.map((phase): string => phase.id);
    const difference = order.indexOf(a.runs.at(-back)?.id ?? '') - order.indexOf(b.runs.at(-back)?.id ?? '');
    if (difference !== 0) return difference;
  }
  return a.runs.length - b.runs.length;
}

describe('the phases of a season', () => {
  const ada = athlete('intermediate', 80);

  it('are a month each in the four months to a peak', () => {
    const season = plan({ starts: '2027-01-04', ends: '2027-04-25' }, { competitions: [peak('2027-04-24')] });
    expect(runs(stages(season, ada).phases.weeks)).toBe('hypertrophy 4, strength 4, strength-power 4, power 4');
  });

  it('hold between two peaks a week apart, then rest and keep going', () => {
    const season = plan(
      { starts: '2027-03-01', ends: '2027-05-16' },
      { competitions: [peak('2027-03-27'), peak('2027-04-03')] },
    );
    expect(runs(stages(season, ada).phases.weeks)).toBe('power 4, hold 1, transition 2, maintenance 4');
  });

  it('rest for a week after a peak when the next is eight weeks or more away', () => {
    const season = plan(
      { starts: '2027-03-01', ends: '2027-05-30' },
      { competitions: [peak('2027-03-27'), peak('2027-05-22')] },
    );
    expect(runs(stages(season, ada).phases.weeks)).toBe('power 4, transition 1, strength 3, power 4, transition 1');
  });

  it('are maintenance and sharpening in season, with a path before it', () => {
    const season = plan({ starts: '2027-01-04', ends: '2027-04-25' }, { competitions: [peak('2027-04-24')] });
    const range = { from: day('2027-02-20'), until: day('2027-04-10'), span: HERE };
    const inSeason = { ...season, season: { ...season.season, inSeason: [range] } };
    expect(runs(stages(inSeason, ada).phases.weeks)).toBe('strength 3, power 3, maintenance 6, sharpening 4');
  });

  it('are foundation throughout for the very young and the very new', () => {
    const season = plan({ starts: '2027-01-04', ends: '2027-04-25' }, { competitions: [peak('2027-04-24')] });
    const born = { earliest: day('2014-06-01'), latest: day('2014-06-30') };
    expect(runs(stages(season, athlete('intermediate', 60, { born })).phases.weeks)).toBe('foundation 16');
    expect(runs(stages(season, athlete('beginner', 29)).phases.weeks)).toBe('foundation 16');
    expect(runs(stages(season, athlete('beginner', 30)).phases.weeks)).not.toContain('foundation');
  });

  it('keep a child in foundation though a phase is pinned, for whomever it is', () => {
    const pinned = (phase: PhaseId, from: string): Pin => ({
      who: EVERYBODY,
      range: { from: day(from), until: day(from) + 20 },
      effects: [{ kind: 'phase', phase }],
      because: 'gym block',
      span: HERE,
    });
    const season = plan(
      { starts: '2027-01-04', ends: '2027-04-25' },
      { competitions: [peak('2027-04-24')], pins: [pinned('power', '2027-02-01'), pinned('transition', '2027-03-01')] },
    );
    const born = { earliest: day('2013-01-05'), latest: day('2013-01-05') };
    const child = stages(season, athlete('intermediate', 60, { born }));
    expect(runs(child.phases.weeks)).toBe('foundation 8, transition 3, foundation 5');
    expect(child.diagnostics.map(({ code }) => code)).toContain('schedule/pin-over-foundation');
    const fourteen = { earliest: day('2013-01-04'), latest: day('2013-01-04') };
    const older = stages(season, athlete('intermediate', 60, { born: fourteen }));
    expect(older.phases.weeks[4]?.phase).toBe('power');
    expect(older.diagnostics.map(({ code }) => code)).not.toContain('schedule/pin-over-foundation');
  });

  it('leave out weeks in which nothing can be trained', () => {
    const closure = {
      range: { from: day('2027-02-01'), until: day('2027-02-07') },
      because: 'hall closed',
      trained: 'some' as const,
      who: EVERYBODY,
      span: HERE,
    };
    const season = plan(
      { starts: '2027-01-04', ends: '2027-05-02' },
      { competitions: [peak('2027-05-01')], closures: [closure] },
    );
    expect(runs(stages(season, ada).phases.weeks)).toBe(
      'hypertrophy 4, closed 1, strength 4, strength-power 4, power 4',
    );
  });
});
