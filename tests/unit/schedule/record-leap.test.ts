// Weeks on record that are so far above what is usual that they don't count in full: who is told, of which row, and what
// makes it silent. Severe is 30 % over A, or 10 contacts: over 120 that is 156.

import { describe, expect, it, test } from 'vitest';
import { compilePlan, planFindings } from '../../../src/compile.ts';
import type { BuiltWeek } from '../../../src/build/types.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import type { DoneRow, Plan, RuleChange, Waiver } from '../../../src/plan/types.ts';
import { createSeasonMemory } from '../../../src/reuse/season-memory.ts';
import type { Span } from '../../../src/source/types.ts';
import { day } from '../date.ts';
import { planOf } from '../plan/loaded.ts';
import { athlete, EVERYBODY, HERE, plan } from './make-plan.ts';

const LEAP = 'schedule/record-leap';

/** Each row in a line of its own. */
const lineOf = (line: number): Span => ({ ...HERE, file: 'done.csv', start: line * 100, end: line * 100 + 10 });

const on = (date: string, contacts?: number, change: Partial<DoneRow> = {}): Partial<DoneRow> => ({
  day: day(date),
  ...(contacts !== undefined && { contacts }),
  ...change,
});

/** The rows stand from line 1 on in the order given, in the record in that of their days. */
function season(rows: readonly Partial<DoneRow>[], change: Partial<Plan> = {}, firstLine = 1): Plan {
  const done = rows.map((row, at): DoneRow => ({
    athlete: 'ada',
    kind: 'session',
    day: 0,
    span: lineOf(firstLine + at),
    ...row,
  }));
  return plan(
    { starts: '2027-01-04', ends: '2027-04-25' },
    {
      athletes: [athlete('intermediate', 60, { name: 'Ada L.' })],
      record: { done: done.toSorted((a, b) => a.day - b.day), tests: [] },
      ...change,
    },
  );
}

interface Found {
  readonly leaps: readonly Diagnostic[];
  readonly codes: readonly string[];
  readonly weeks: readonly BuiltWeek[];
}

function found(planned: Plan, asOf = '2027-01-11'): Found {
  const build = compilePlan(planned, { asOf: day(asOf) });
  const athletes = [...build.athletes];
  const all = [...athletes.flatMap(({ diagnostics }) => diagnostics), ...planFindings(build.plan, athletes)];
  return {
    leaps: all.filter(({ code }) => code === LEAP),
    codes: all.map(({ code }) => code),
    weeks: athletes.flatMap(({ weeks }) => weeks),
  };
}

const linesOf = ({ leaps }: Found): readonly number[] => leaps.map(({ span }) => (span?.start ?? NaN) / 100);

const WEEK_1 = { from: day('2027-01-04'), until: day('2027-01-10') };
const WAIVER: Waiver = { rule: 'weekly-rise', range: WEEK_1, who: EVERYBODY, because: 'camp', span: HERE };

const changed = (name: string, value: number): RuleChange => ({
  rule: 'weekly-rise',
  parameters: new Map([[name, value]]),
  range: WEEK_1,
  who: EVERYBODY,
  because: 'camp',
  span: HERE,
});

/** A plan with a record, to which more may be added. */
const SPRING = `footfall: 1
season: { title: Spring, starts: 2027-01-04, ends: 2027-04-25 }
places: { hall: {} }
slots: [{ day: tuesday, minutes: 75, place: hall }, { day: thursday, minutes: 75, place: hall }]
athletes: { ada: { name: Ada L., level: intermediate, now: { contacts-a-session: 60, sessions-a-week: 2 } } }
record: { done: done.csv }
`;

describe('a week on record that is a leap', () => {
  it('is told once, at its largest row, with what stands there, what was usual and what counts', () => {
    const told = found(season([on('2027-01-05', 60), on('2027-01-07', 540), on('2027-01-09', 60)]));
    expect(linesOf(told)).toEqual([2]);
    expect(told.leaps[0]).toMatchObject({ severity: 'warning', athlete: 'ada', week: day('2027-01-04') });
    expect(told.leaps[0]?.params).toMatchObject({ contacts: 660, here: 540, usual: 120, counts: 130 });
    expect(told.leaps[0]?.message).toMatch(/^660 contacts .* Ada L\. .* 2027-01-04, where 120 were usual: .* 130$/u);
    expect(told.leaps[0]?.label).toBe('540 of them here');
    expect(told.weeks[0]?.adapted).toBe(130);
  });

  test.each([
    { contacts: 156, lines: [] },
    { contacts: 157, lines: [1] },
  ])('begins behind the severe rise: $contacts', ({ contacts, lines }) => {
    const told = found(season([on('2027-01-05', contacts)]));
    expect(linesOf(told)).toEqual(lines);
    expect(told.weeks[0]).toMatchObject({ contacts, adapted: 130 });
  });

  it('is told of each week there is, for as long as it stands', () => {
    const rows = [on('2027-01-05', 600), on('2027-01-12', 150), on('2027-01-19', 400), on('2027-02-02', 0)];
    expect(linesOf(found(season(rows), '2027-01-18'))).toEqual([1]);
    expect(linesOf(found(season(rows), '2027-02-08'))).toEqual([1, 3]);
  });

  it('waits for the end of its week, as nothing of a week counts before', () => {
    expect(found(season([on('2027-01-05', 600)]), '2027-01-10').leaps).toEqual([]);
  });

  it('is made of sessions alone, as practice, matches and tests move nothing that is usual', () => {
    for (const kind of ['practice', 'match', 'test'] as const) {
      const told = found(season([on('2027-01-05', 120), on('2027-01-07', 600, { kind })]));
      expect(told.leaps).toEqual([]);
      expect(told.weeks[0]?.adapted).toBe(120);
    }
  });

  it('is told at a row without a number where that is the largest: a programme that rises too far', () => {
    const jumps = '[{ drill: pogo, sets: 10, reps: 20 }]';
    const told = (...rows: readonly string[]): Diagnostic | undefined =>
      found(
        planOf({
          'season.yaml': `${SPRING}programmes: { block: [{ week: 1, tuesday: ${jumps}, thursday: ${jumps} }] }
use: [{ programme: block, from: 2027-01-04 }]
`,
          'done.csv': `date,athlete,kind,contacts,minutes,effort,pain,note\n${rows.join('\n')}\n`,
        }),
      ).leaps[0];
    const bare = told('2027-01-05,ada,session,30,,,,', '2027-01-07,ada,session,,,,,');
    expect(bare?.params).toMatchObject({ contacts: 230, here: '' });
    expect(bare?.label).toBe('done as it was written');
    expect(told('2027-01-05,ada,session,210,,,,', '2027-01-07,ada,session,,,,,')?.params).toMatchObject({ here: 210 });
  });
});

describe('a week on record that is no leap', () => {
  it('is one whose rise is waived, and no more of it counts for that', () => {
    const rows = [on('2027-01-05', 600)];
    const [usual, waived] = [found(season(rows)), found(season(rows, { waivers: [WAIVER] }))];
    expect(waived.leaps).toEqual([]);
    expect(waived.codes).not.toContain('audit/waiver-unused');
    expect(waived.weeks[0]?.adapted).toBe(130);
    expect(waived.weeks.slice(1)).toEqual(usual.weeks.slice(1));
  });

  it('is one of which the plan says what the help offers', () => {
    const lineOfPlan = (more: string): Found =>
      found(
        planOf({
          'season.yaml': `${SPRING}${more}`,
          'done.csv': 'date,athlete,kind,contacts,minutes,effort,pain,note\n2027-01-05,ada,session,600,,,,\n',
        }),
      );
    const offered = /\{.*\}/u.exec(lineOfPlan('').leaps[0]?.help ?? '')?.[0];
    expect(offered).toMatch(/^\{ rule: weekly-rise, athletes: \[ada\]/u);
    expect(lineOfPlan(`waivers: [${offered ?? ''}]\n`).leaps).toEqual([]);
  });

  test.each<{ name: string; waiver: Waiver }>([
    { name: 'of another week', waiver: { ...WAIVER, range: { from: day('2027-01-11'), until: day('2027-01-17') } } },
    { name: 'of another rule', waiver: { ...WAIVER, rule: 'session-rise' } },
    { name: 'for somebody else', waiver: { ...WAIVER, who: { kind: 'some', squads: [], athletes: ['eva'] } } },
  ])('but not for a waiver $name', ({ waiver }) => {
    expect(linesOf(found(season([on('2027-01-05', 600)], { waivers: [waiver] })))).toEqual([1]);
  });

  it('is one that the plan says is not severe', () => {
    const told = found(season([on('2027-01-05', 600)], { ruleChanges: [changed('severe', 400)] }));
    expect(told.leaps).toEqual([]);
    expect(told.weeks[0]?.adapted).toBe(130);
  });

  it('is one that the plan itself may ask for, where it may ask for more than is severe', () => {
    const ruleChanges = [changed('most', 60)];
    const [inside, over] = [190, 200].map((contacts) => found(season([on('2027-01-05', contacts)], { ruleChanges })));
    expect(inside?.leaps).toEqual([]);
    expect(over?.leaps).toHaveLength(1);
    for (const told of [inside, over]) expect(told?.weeks[0]?.adapted).toBe(140);
    for (const told of [inside, over]) expect(told?.codes).not.toContain('audit/adapted-volume');
  });

  it('is one in which what is usual fades, whatever was done', () => {
    const closures = [{ range: WEEK_1, because: 'let', trained: 'none' as const, who: EVERYBODY, span: HERE }];
    const told = found(season([on('2027-01-05', 600)], { closures }));
    expect(told.weeks[0]).toMatchObject({ kind: 'empty', contacts: 600 });
    expect(told.weeks[0]?.adapted).toBeLessThan(120);
    expect(told.leaps).toEqual([]);
    expect(told.weeks[0]?.reasons.find(({ about }) => about === 'adapted')?.by).toBe('fade');
  });
});

it('of a season that is kept a leap goes with its row', () => {
  const rows = [on('2027-01-05', 60), on('2027-01-07', 600), on('2027-01-12', 60)];
  const memory = createSeasonMemory<number>();
  let compiled = 0;
  const linesAfter = (planned: Plan): readonly number[] => {
    const build = compilePlan(planned, { asOf: day('2027-01-18') });
    const round = memory.open(build, () => (compiled += 1));
    const diagnostics = build.plan.athletes.flatMap((one) => round.season(one).diagnostics);
    return linesOf({ leaps: diagnostics.filter(({ code }) => code === LEAP), codes: [], weeks: [] });
  };
  expect(linesAfter(season(rows))).toEqual([2]);
  expect(linesAfter(season(rows, {}, 21))).toEqual([22]);
  expect(compiled).toBe(1);
  expect(linesAfter(season(rows.with(1, on('2027-01-07', 60))))).toEqual([]);
});
