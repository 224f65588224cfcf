// A season planned on from what was done: the worked values follow from A' = max(V, ⌊(A + 2V)/3⌋) and the bounds of the
// next week, by hand.

import { describe, expect, it } from 'vitest';
import { auditAthlete } from '../../../src/audit/audit.ts';
import type { BuiltWeek } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import type { DoneRow, Plan } from '../../../src/plan/types.ts';
import { planOf } from '../plan/loaded.ts';
import { day } from '../date.ts';
import { athlete, EVERYBODY, HERE, plan } from './make-plan.ts';

const STARTS = day('2027-01-04');

function season(rows: readonly Partial<DoneRow>[], change: Partial<Plan> = {}): Plan {
  const done = rows.map((row): DoneRow => ({ athlete: 'ada', kind: 'session', day: STARTS, span: HERE, ...row }));
  return plan(
    { starts: '2027-01-04', ends: '2027-04-25' },
    { athletes: [athlete('intermediate', 60)], record: { done, tests: [] }, ...change },
  );
}

interface Found {
  readonly weeks: readonly BuiltWeek[];
  readonly codes: readonly string[];
}

function built(planned: Plan, asOf?: string): Found {
  const [one] = [...compilePlan(planned, asOf === undefined ? {} : { asOf: day(asOf) }).athletes];
  return { weeks: one?.weeks ?? [], codes: one?.diagnostics.map(({ code }) => code) ?? [] };
}

const on = (date: string, contacts?: number, pain?: number): Partial<DoneRow> => ({
  day: day(date),
  ...(contacts !== undefined && { contacts }),
  ...(pain !== undefined && { pain }),
});

it('of two sessions on one day the morning with more pain counts, in whichever order they stand', () => {
  const first = [on('2027-01-12', 50, 6), on('2027-01-12', 20, 1)];
  for (const rows of [first, first.toReversed()]) {
    const { codes } = built(season(rows), '2027-01-18');
    expect(codes).toContain('schedule/pain-stop');
  }
  expect(built(season([...first, on('2027-01-14', 0, 1)]), '2027-01-18').codes).not.toContain('schedule/pain-stop');
});

it('a morning that is better already is named, and nobody is asked to record one', () => {
  const told = (...rows: readonly Partial<DoneRow>[]): readonly string[] => {
    const [one] = [...compilePlan(season(rows), { asOf: day('2027-01-15') }).athletes];
    const found = one?.diagnostics.find(({ code }) => code === 'schedule/pain-stop');
    return [found?.message ?? '', found?.help ?? ''];
  };
  const bad = on('2027-01-12', 50, 6);
  expect(told(bad).join(' ')).toMatch(/from the week of 2027-01-11 on .*record a later morning/u);
  const [message, help] = told(bad, on('2027-01-13', 0, 2));
  expect(message).toMatch(/in the week of 2027-01-11; the morning after 2027-01-13 was better/u);
  expect(help).not.toContain('record');
  expect(told(bad, on('2027-01-13', 0, 6)).join(' ')).toContain('record a later morning');
});

describe('weeks that are over', () => {
  it('are those wholly before the day after the last record, or before the day that is named', () => {
    const rows = [on('2027-01-05', 80), on('2027-01-07', 80), on('2027-01-12', 80)];
    expect(
      built(season(rows))
        .weeks.map(({ done }) => done)
        .slice(0, 3),
    ).toEqual([true, false, false]);
    expect(
      built(season(rows), '2027-01-18')
        .weeks.map(({ done }) => done)
        .slice(0, 3),
    ).toEqual([true, true, false]);
    expect(built(season(rows), '2027-01-08').weeks[0]?.done).toBe(false);
    expect(built(season([])).weeks.some(({ done }) => done)).toBe(false);
  });

  it('hold what was recorded, and A follows', () => {
    const { weeks } = built(season([on('2027-01-05', 60), on('2027-01-07', 30), on('2027-01-11', 0)]));
    const [first, second] = weeks;
    expect(first).toMatchObject({ contacts: 90, boundBy: 'record', done: true, sessions: [] });
    const before = first?.adaptedBefore ?? 0;
    expect(first?.adapted).toBe(Math.max(90, Math.floor((before + 180) / 3)));
    expect(second?.contacts).toBeLessThanOrEqual(
      Math.max(Math.floor(1.1 * (first?.adapted ?? 0)), (first?.adapted ?? 0) + 10),
    );
  });

  it('are used to no more than the week was planned at, be it a slip in the record', () => {
    const weekly = (contacts: number): readonly BuiltWeek[] =>
      built(season([on('2027-01-05', 60), on('2027-01-07', contacts - 60)]), '2027-01-11').weeks;
    const planned = built(season([])).weeks[0]?.contacts ?? 0;
    expect(planned).toBe(130);
    expect(weekly(125)[0]).toMatchObject({ adaptedBefore: 120, contacts: 125, adapted: 125 });
    for (const contacts of [131, 156, 660]) {
      expect(weekly(contacts)[0]).toMatchObject({ contacts, adapted: planned });
      expect(weekly(contacts).slice(1)).toEqual(weekly(planned).slice(1));
    }
    const keptBy = (contacts: number): unknown =>
      weekly(contacts)[0]?.reasons.find(({ about }) => about === 'adapted')?.by;
    expect([130, 131, 156, 157].map(keptBy)).toEqual(['follow', 'over', 'over', 'leap']);
  });

  it('are used to no leap, though the coach had pinned and waived it', () => {
    const week = { from: STARTS, until: STARTS + 6 };
    const because = 'camp';
    const change: Partial<Plan> = {
      pins: [{ effects: [{ kind: 'contacts', contactsAWeek: 200 }], range: week, who: EVERYBODY, because, span: HERE }],
      waivers: (['weekly-rise', 'session-rise'] as const).map((rule) => ({
        rule,
        range: week,
        who: EVERYBODY,
        because,
        span: HERE,
      })),
    };
    const found = built(season([on('2027-01-05', 100), on('2027-01-07', 100)], change), '2027-01-11');
    expect(found.weeks[0]).toMatchObject({ contacts: 200, adapted: 156 });
    expect(found.codes).not.toContain('audit/adapted-volume');
  });

  it('that were missed count for no more because more was done before than planned', () => {
    const missed = (contacts: number): unknown =>
      built(season([on('2027-01-05', contacts)]), '2027-01-18').weeks.slice(1);
    expect(missed(600)).toEqual(missed(130));
  });

  it('leave an easy week under what counts of its run', () => {
    const range = { from: STARTS, until: STARTS + 6 };
    const limits = [{ range, avoid: [], contactsAWeek: 30, because: 'knee', span: HERE }];
    const easy = (contacts: number): unknown => {
      const rows = [on('2027-01-05', contacts), on('2027-01-12', 70), on('2027-01-19', 70)];
      const { weeks } = built(season(rows, { athletes: [athlete('intermediate', 60, { limits })] }), '2027-01-25');
      return weeks.slice(3, 5).map((week) => [week.kind, week.contacts]);
    };
    expect(easy(30)).toMatchObject([
      ['deload', 25],
      ['load', expect.any(Number)],
    ]);
    expect(easy(200)).toEqual(easy(30));
  });

  it('stand in the audit as they are planned from', () => {
    const planned = season([on('2027-01-05', 600)]);
    const build = compilePlan(planned, { asOf: day('2027-01-11') });
    const [one] = [...build.athletes];
    if (one === undefined) throw new Error('nobody was built');
    const codesWith = (adapted: number): readonly string[] => {
      const weeks = one.weeks.map((week) => (week.week === 1 ? { ...week, adapted } : week));
      return auditAthlete(planned, { ...one, weeks, diagnostics: [] }, build.weeks).diagnostics.map(({ code }) => code);
    };
    expect(codesWith(130)).not.toContain('audit/adapted-volume');
    expect(codesWith(161)).toContain('audit/adapted-volume');
  });

  it('without jumps are time away: two of them lead to a ladder', () => {
    const rows = [on('2027-01-05', 0), on('2027-01-12', 0), on('2027-01-17', 0)];
    const { weeks } = built(season(rows));
    expect(weeks.slice(0, 4).map(({ kind }) => kind)).toEqual(['empty', 'empty', 'return', 'return']);
    const used = weeks[1]?.adapted ?? 0;
    expect(weeks[2]?.contacts).toBeLessThanOrEqual(Math.floor(used / 2));
  });

  it('without a record are not taken for done', () => {
    const { weeks, codes } = built(season([on('2027-01-05', 50)]), '2027-01-25');
    expect(weeks.slice(0, 3).map(({ contacts }) => contacts)).toEqual([50, 50, 50]);
    expect(codes).toContain('schedule/record-missing');
    expect(weeks[3]?.contacts).toBeLessThanOrEqual(weeks[2]?.adapted ?? 0);
    expect(built(season([on('2027-01-05', 50)]), '2027-01-18').codes).not.toContain('schedule/record-missing');
  });

  it('of days without a number no more are jump sessions than the week had room for', () => {
    const planned = built(season([])).weeks[0]?.contacts ?? 0;
    const days = ['2027-01-05', '2027-01-06', '2027-01-07', '2027-01-08', '2027-01-09'];
    const [week] = built(season(days.map((date) => on(date))), '2027-01-11').weeks;
    expect(week?.contacts).toBeLessThanOrEqual(planned);
    const rows = [on('2027-01-05', 60), on('2027-01-07', 50), on('2027-01-08'), on('2027-01-09')];
    expect(built(season(rows), '2027-01-11').weeks[0]?.contacts).toBe(110);
  });

  it('a session without a number was done as it was written', () => {
    const written = built(season([])).weeks[0]?.contacts ?? 0;
    const { weeks } = built(season([on('2027-01-05'), on('2027-01-07')]), '2027-01-11');
    expect(weeks[0]?.contacts).toBe(Math.floor(written / (weeks[0]?.possible ?? 1)) * 2);
  });

  it('forget what was recorded later than the day that is named', () => {
    const rows = [on('2027-01-05', 80), on('2027-01-12', 10)];
    const early = compilePlan(season(rows), { asOf: day('2027-01-11') });
    const alone = compilePlan(season(rows.slice(0, 1)), { asOf: day('2027-01-11') });
    expect([...early.athletes].map(({ weeks }) => weeks)).toEqual([...alone.athletes].map(({ weeks }) => weeks));
    expect(early.mark).toBe(alone.mark);
    expect(early.mark).not.toBe(compilePlan(season(rows)).mark);
  });
});

describe('pain the next morning', () => {
  it('of 4 or 5 holds the week behind it', () => {
    const calm = built(season([on('2027-01-05', 50), on('2027-01-10', 50, 3)])).weeks[1];
    const held = built(season([on('2027-01-05', 50), on('2027-01-10', 50, 4)])).weeks[1];
    expect(calm?.contacts).toBeGreaterThan(calm?.adaptedBefore ?? Infinity);
    expect(held?.contacts).toBeLessThanOrEqual(held?.adaptedBefore ?? 0);
    expect(held?.bounds.map(({ by }) => by)).toContain('pain-hold');
  });

  it('over 5 stops the jumps until a morning is better', () => {
    const stopped = built(season([on('2027-01-05', 80), on('2027-01-10', 80, 6)]));
    expect(stopped.weeks.slice(1).every(({ contacts }) => contacts === 0)).toBe(true);
    const better = built(season([on('2027-01-05', 80), on('2027-01-10', 80, 6), on('2027-01-17', 0, 1)]));
    expect(better.weeks[2]?.contacts).toBeGreaterThan(0);
  });

  it('may be waived by whoever decides', () => {
    const waiver = {
      rule: 'pain-hold' as const,
      range: { from: STARTS, until: day('2027-12-31') },
      who: { kind: 'everybody' as const },
      because: 'old scar',
      decided: 'physio',
      span: HERE,
    };
    const { weeks } = built(season([on('2027-01-05', 80), on('2027-01-10', 80, 6)], { waivers: [waiver] }));
    expect(weeks[1]?.contacts).toBeGreaterThan(0);
  });
});

it('a week written by hand into which pain falls leaves A as scheduler and audit have it', () => {
  const file = planOf({
    'season.yaml': [
      'footfall: 1',
      'season: { title: Pain, sport: handball, starts: 2027-01-04, ends: 2027-03-28 }',
      'places: { hall: {} }',
      'slots: [{ day: tuesday, minutes: 75, place: hall }, { day: thursday, minutes: 75, place: hall }]',
      'athletes: { ada: { level: intermediate, now: { contacts-a-session: 80, sessions-a-week: 2 } } }',
      'programmes: { block: [{ week: 1, tuesday: [{ drill: pogo, sets: 4, reps: 10 }], thursday: [{ drill: pogo, sets: 4, reps: 10 }] }] }',
      'use: [{ programme: block, from: 2027-01-04, athletes: ada }]',
      'record: { done: done.csv }',
      '',
    ].join('\n'),
    'done.csv': 'date,athlete,kind,contacts,minutes,effort,pain,note\n2027-01-05,ada,session,80,70,6,7,\n',
  });
  const { weeks, codes } = built(file, '2027-01-06');
  expect(codes).toContain('rule/pain-hold');
  expect(codes).not.toContain('audit/adapted-volume');
  expect(weeks[0]?.adapted).toBe(Math.floor(160 / 3));
});

it('an easy week stays in fives under a loading week that was done with another number', () => {
  const rows = [on('2027-01-05', 120), on('2027-01-12', 120), on('2027-01-19', 7)];
  const { weeks } = built(season(rows), '2027-01-25');
  expect(weeks[2]).toMatchObject({ kind: 'load', contacts: 7 });
  expect(weeks[3]).toMatchObject({ kind: 'deload', contacts: 5 });
});
