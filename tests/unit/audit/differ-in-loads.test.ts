// What is told of a season because it differs from another by its loads alone is what is found of it: each of these edits
// decides a finding of a rule that asks for no loads, so that it has to be seen.

import { expect, test } from 'vitest';
import { auditAthlete } from '../../../src/audit/audit.ts';
import type { BuiltLine, BuiltSession, BuiltWeek } from '../../../src/build/types.ts';
import type { RuleId } from '../../../src/library/rules.ts';
import { drill, HALL, jumps, KIT, lift, makeAthlete, makeBuild, slot } from './make-build.ts';
import type { SeasonSpec } from './make-build.ts';

/** Six alike who squat at one rack, in so many minutes; with the waiting it takes 24. */
function atOneRack(minutes: number): SeasonSpec {
  const kit = { ...KIT, counts: new Map([...KIT.counts, ['racks', 1] as const]) };
  const lines = [lift('back-squat', 5, 5, { restSeconds: 120, loadGrams: 80_000, percent: 70, order: 1 })];
  const session = { on: 1, minutes, slot: slot(1, { place: { ...HALL, kit } }), lines } as const;
  return {
    plan: { athletes: Array.from({ length: 6 }, (_, at) => makeAthlete({ athlete: { id: `a${String(at)}` } })) },
    weeks: [{ sessions: [session] }],
  };
}

const ofJumps: SeasonSpec = { weeks: [{ sessions: [jumps(1, 60)] }] };
const ofDrops: SeasonSpec = { weeks: [{ sessions: [{ on: 1, lines: [drill('drop-jump-30', 3, 5)] }] }] };

interface Edit {
  readonly name: string;
  readonly rule: RuleId;
  readonly season: SeasonSpec;
  readonly line?: Partial<BuiltLine>;
  readonly session?: Partial<BuiltSession>;
  readonly week?: Partial<BuiltWeek>;
}

const EDITS: readonly Edit[] = [
  { name: 'a longer rest', rule: 'slot-minutes', season: atOneRack(24), line: { restSeconds: 2000 } },
  { name: 'more sets', rule: 'stations', season: atOneRack(24), line: { sets: 7 } },
  { name: 'more reps', rule: 'stations', season: atOneRack(24), line: { reps: 9 } },
  { name: 'a line of one’s own', rule: 'stations', season: atOneRack(17), line: { own: true } },
  { name: 'a line that is paired', rule: 'stations', season: atOneRack(17), line: { pairedWith: 2 } },
  { name: 'a line of the warm-up', rule: 'stations', season: atOneRack(17), line: { part: 'prepare' } },
  { name: 'fewer minutes', rule: 'stations', season: atOneRack(24), session: { minutes: 17 } },
  { name: 'another tempo', rule: 'eccentric-tempo', season: atOneRack(24), line: { tempo: '9-0-1' } },
  { name: 'another lift', rule: 'stations', season: atOneRack(17), line: { exercise: 'push-up' } },
  { name: 'a session that lifts', rule: 'strength-always', season: ofJumps, session: { lifts: true } },
  { name: 'a session of more contacts', rule: 'session-ceiling', season: ofJumps, session: { contacts: 400 } },
  { name: 'a line of more contacts', rule: 'session-ceiling', season: ofJumps, line: { contacts: 400 } },
  {
    name: 'a primer',
    rule: 'session-rise',
    season: { weeks: [{ sessions: [jumps(1, 400)] }] },
    session: { kind: 'primer' },
  },
  { name: 'a higher drop', rule: 'drop-height', season: ofDrops, line: { dropCm: 90 } },
  {
    name: 'a week of another phase',
    rule: 'strength-always',
    season: ofJumps,
    week: { kind: 'transition', phase: 'transition' },
  },
  { name: 'a week that is over', rule: 'strength-always', season: ofJumps, week: { done: true } },
  {
    name: 'a week of another kind',
    rule: 'deload-depth',
    season: { weeks: [{ sessions: [jumps(1, 190)] }] },
    week: { kind: 'deload' },
  },
];

test.each(EDITS)('$name is seen by $rule', ({ rule, season, line, session, week }) => {
  const { plan, built, weeks } = makeBuild(season);
  const other = {
    ...built,
    weeks: built.weeks.map((one) => ({
      ...one,
      ...week,
      sessions: one.sessions.map((each) => ({
        ...each,
        ...session,
        lines: each.lines.map((written) => ({ ...written, ...line })),
      })),
    })),
  };
  const of = (found: readonly { readonly code: string }[]): readonly unknown[] =>
    found.filter(({ code }) => code === `rule/${rule}`);
  const before = auditAthlete(plan, built, weeks);
  const alone = auditAthlete({ ...plan }, other, weeks);
  expect(of(alone.diagnostics)).not.toEqual(of(before.diagnostics));
  expect(auditAthlete(plan, other, weeks)).toEqual(alone);
});

test('kilos that break a rule are found of whom they are', () => {
  const { plan, built, weeks } = makeBuild(atOneRack(17));
  const other = {
    ...built,
    weeks: built.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((session) => ({
        ...session,
        lines: session.lines.map((line) => ({ ...line, percent: 97 })),
      })),
    })),
  };
  const codes = (one: typeof built): readonly string[] =>
    auditAthlete(plan, one, weeks).diagnostics.map(({ code }) => code);
  expect(codes(built)).toContain('rule/stations');
  expect(codes(built)).not.toContain('rule/load-reps');
  expect(codes(other)).toEqual(expect.arrayContaining(['rule/stations', 'rule/load-reps']));
});

test('a week written by hand that its kilos bar leaves the weeks behind it at what was done before', () => {
  const squat = lift('back-squat', 3, 5, { percent: 70 });
  const { plan, built, weeks } = makeBuild({
    weeks: [
      {
        boundBy: 'programme',
        sessions: [jumps(1, 110), { ...jumps(3, 110), lines: [...(jumps(3, 110).lines ?? []), squat] }],
      },
      { sessions: [jumps(1, 120), jumps(3, 120)] },
    ],
  });
  const tooHeavy = (line: BuiltLine): BuiltLine => (line.kind === 'lift' ? { ...line, percent: 97 } : line);
  const other = {
    ...built,
    weeks: built.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((session) => ({ ...session, lines: session.lines.map(tooHeavy) })),
    })),
  };
  const rises = (one: typeof built): number =>
    auditAthlete(plan, one, weeks).diagnostics.filter(({ code }) => code === 'rule/weekly-rise').length;
  expect([rises(built), rises(other)]).toEqual([0, 1]);
  expect(auditAthlete(plan, other, weeks)).toEqual(auditAthlete({ ...plan }, other, weeks));
});
