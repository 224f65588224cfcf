import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { ALWAYS, day, EVERYBODY, jumps, loading, place, waiver } from './make-build.ts';
import type { SeasonSpec, WeekSpec } from './make-build.ts';

const RULE = 'return-ramp';
const empty: WeekSpec = { kind: 'empty', phase: 'closed' };
const back = (contacts: number): WeekSpec => loading(contacts, { kind: 'return' });
const away = (weeks: number): WeekSpec[] => Array.from({ length: weeks }, () => empty);

describe('return-ramp', () => {
  // Caterisano 2019, Strength Cond J 41(3):1–23, from memory: at least 50, 30, 20 and 10 % less in the weeks back.
  it('climbs by half and seven tenths after two or three weeks', () => {
    for (const weeks of [2, 3]) {
      expectSilent(RULE, { weeks: [...away(weeks), back(100), back(140), back(400)] });
      expectFinding(RULE, { weeks: [...away(weeks), back(101), back(140)] }, weeks + 1);
      expectFinding(RULE, { weeks: [...away(weeks), back(100), back(141)] }, weeks + 2);
    }
  });

  it('climbs by four steps after four weeks', () => {
    // 200 → 100; 140 % of 100; 114 % of 140; 112 % of 159.
    const steps = [100, 140, 159, 178];
    expectSilent(RULE, { weeks: [...away(4), ...steps.map(back)] });
    steps.forEach((_, step) => {
      const weeks = steps.map((contacts, index) => back(index === step ? contacts + 1 : contacts));
      expectFinding(RULE, { weeks: [...away(4), ...weeks] }, 5 + step);
    });
  });

  it('is not cut by a step that is waived', () => {
    const plan = { waivers: [waiver(RULE, 5)] };
    // 120 in the waived week leave (200 + 2 x 120) / 3 = 146, and the second step asks for 70 % of that.
    const season = (contacts: number): SeasonSpec => ({
      plan,
      weeks: [...away(4), loading(120, { adapted: 146 }), back(contacts)],
    });
    expect(found(RULE, season(102))).toEqual([]);
    expect(found(RULE, season(103))).toHaveLength(1);
  });

  it('has no ladder after one week', () => {
    expectSilent(RULE, { weeks: [...away(1), loading(200)] });
  });

  it('finds the ladder whatever the weeks are called', () => {
    expectFinding(RULE, { weeks: [...away(2), loading(101)] }, 3);
  });

  it('counts only weeks in which nothing was trained', () => {
    const closed = (week: number, trained: 'some' | 'none') =>
      ({
        range: { from: day(week, 0), until: day(week, 6) },
        because: 'x',
        trained,
        who: EVERYBODY,
        span: place(0),
      }) as const;
    const season = (second: 'some' | 'none'): SeasonSpec => ({
      plan: { closures: [closed(1, 'none'), closed(2, second)] },
      weeks: [empty, empty, loading(120)],
    });
    expectSilent(RULE, season('some'));
    expectFinding(RULE, season('none'), 3);
  });

  it('takes the least trained of what overlaps', () => {
    const range = { from: day(1, 0), until: day(2, 6) };
    const closures = [{ range, because: 'x', trained: 'full', who: EVERYBODY, span: place(0) }] as const;
    const gone = [{ range, because: 'x', trained: 'none', span: place(0) }] as const;
    const weeks = [empty, empty, loading(150)];
    expectSilent(RULE, { plan: { closures }, weeks });
    expectFinding(RULE, { plan: { closures }, athlete: { away: gone }, weeks }, 3);
  });

  it('looks at closures of places where the athlete trains', () => {
    const closed = (places: readonly string[]) => [
      {
        range: { from: day(1, 0), until: day(2, 6) },
        because: 'x',
        trained: 'some',
        places,
        who: EVERYBODY,
        span: place(0),
      } as const,
    ];
    const weeks = [empty, empty, loading(150)];
    expectSilent(RULE, { plan: { closures: closed(['hall']) }, weeks });
    expectFinding(RULE, { plan: { closures: closed(['track']) }, weeks }, 3);
  });

  it('takes what closes everything for somebody without a slot as well', () => {
    const range = { from: day(1, 0), until: day(2, 6) };
    const closures = [{ range, because: 'x', trained: 'some', who: EVERYBODY, span: place(0) }] as const;
    const weeks = [empty, empty, loading(150)];
    expectSilent(RULE, { plan: { closures, slots: [] }, weeks });
    expectFinding(RULE, { plan: { slots: [] }, weeks }, 3);
  });

  it('takes a week that a limit closes for not trained', () => {
    const closedUntil = (until: number) =>
      [{ range: { from: day(1, 0), until }, because: 'x', trained: 'some', who: EVERYBODY, span: place(0) }] as const;
    const limits = [
      { range: { from: day(1, 0), until: day(2, 6) }, avoid: [], contactsASession: 0, because: 'x', span: place(0) },
    ];
    const weeks = [empty, empty, loading(120)];
    expectSilent(RULE, { plan: { closures: closedUntil(day(2, 6)) }, athlete: { limits }, weeks });
    expectFinding(RULE, { plan: { closures: closedUntil(day(1, 1)) }, athlete: { limits }, weeks }, 3);
  });

  it('is no time away to be in transition', () => {
    const rest: WeekSpec = { kind: 'transition', phase: 'transition' };
    expectSilent(RULE, { weeks: [rest, rest, loading(170)] });
  });

  it('is not used up by an empty week, and begins again after two', () => {
    // The isolated empty week takes a tenth off the 100 that the first step left, and the second step is 140 % of that.
    expectSilent(RULE, { weeks: [...away(2), back(100), empty, back(126)] });
    expectFinding(RULE, { weeks: [...away(2), back(100), empty, back(127)] }, 5);
    expectSilent(RULE, { weeks: [...away(2), back(100), ...away(2), back(50), back(70)] });
    expectFinding(RULE, { weeks: [...away(2), back(100), ...away(2), back(51)] }, 6);
  });

  it('counts recorded weeks without jumps as away', () => {
    const done: WeekSpec = { done: true, adapted: 200 };
    expectFinding(RULE, { weeks: [done, done, back(101)] }, 3);
  });

  it('leaves a signed stage to its own ceilings', () => {
    const returning = [{ stage: 2, of: 4, since: ALWAYS.from, signed: 'physio', span: place(0) }];
    expectSilent(RULE, { athlete: { returning }, weeks: [...away(2), { kind: 'return', sessions: [jumps(1, 150)] }] });
  });

  it('says the step and the weeks away', () => {
    const said = found(RULE, { weeks: [...away(4), back(100), back(150)] })[0];
    expect(said?.params).toMatchObject({ found: 150, most: 140, step: 2, steps: 4, weeksAway: 4 });
  });
});
