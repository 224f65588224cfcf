// Whole sessions: sums, shares, groups, drops, new drills, pins, programmes and minutes.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BuiltLine, BuiltSession } from '../../../src/build/types.ts';
import { isDrop, isStatic } from '../../../src/library/drill-facts.ts';
import { BUILT_IN } from '../../../src/library/index.ts';
import { findPhaseLifting } from '../../../src/library/lifting.ts';
import { getPhase } from '../../../src/library/phases.ts';
import { LEVELS } from '../../../src/library/types.ts';
import type { Drill, KitId, Level, PhaseId } from '../../../src/library/types.ts';
import type { Athlete, Avoid, Plan } from '../../../src/plan/types.ts';
import { chooseGroups, scheduleLines } from '../../../src/schedule/lines.ts';
import {
  athlete,
  bornOn,
  EVERYBODY,
  FIELD,
  FULL_KIT,
  HALL,
  HERE,
  JUMPING_PHASES,
  limit,
  line,
  makeLines,
  makePlan,
  makeSchedule,
  max,
  pin,
  slot,
  START,
  strong,
} from './make-lines.ts';
import type { SessionSpec, WeekSpec } from './make-lines.ts';

const weeks = (
  phase: PhaseId,
  sizes: readonly number[],
  count = 1,
  change: Partial<SessionSpec> = {},
): readonly WeekSpec[] =>
  Array.from({ length: count }, () => ({ phase, sessions: sizes.map((contacts) => ({ contacts, ...change })) }));

const drillsOf = (sessions: readonly BuiltSession[]): readonly { readonly drill: Drill; readonly line: BuiltLine }[] =>
  sessions
    .flatMap((session) => session.lines)
    .flatMap((one) => {
      const drill = BUILT_IN.drills.get(one.exercise);
      return drill === undefined ? [] : [{ drill, line: one }];
    });

const contactsWhere = (sessions: readonly BuiltSession[], holds: (drill: Drill) => boolean): number =>
  drillsOf(sessions).reduce((sum, { drill, line: one }) => sum + (holds(drill) ? one.contacts : 0), 0);

const linesOf = (session: BuiltSession | undefined): readonly BuiltLine[] => session?.lines ?? [];

const anAthlete = fc
  .record({
    level: fc.constantFrom(...LEVELS),
    born: fc.constantFrom(undefined, '2014-03-02', '2012-03-02', '1999-05-01'),
    mass: fc.constantFrom(undefined, 55_000, 110_000),
    squat: fc.constantFrom(undefined, 60, 150),
    cleared: fc.subarray(['drops', 'single-leg-high', 'loads', 'drop-jump-30']),
    avoid: fc.constantFrom<readonly Avoid[]>(
      [],
      [{ kind: 'drops' }],
      [{ kind: 'single-leg' }],
      [{ kind: 'direction', id: 'lateral' }],
      [{ kind: 'cycle', id: 'fast' }],
      [{ kind: 'tier', id: 'high' }],
    ),
  })
  .map(({ level, born, mass, squat, cleared, avoid }): Athlete =>
    athlete(level, {
      ...(born === undefined ? {} : { born: bornOn(born) }),
      ...(mass === undefined ? {} : { massGrams: mass }),
      lifts: new Map(squat === undefined ? [] : [max('back-squat', squat)]),
      cleared: new Set(cleared),
      limits: avoid.length === 0 ? [] : [limit(avoid)],
    }),
  );

const aWeek = fc
  .record({
    phase: fc.constantFrom(...JUMPING_PHASES),
    kind: fc.constantFrom('load' as const, 'deload' as const, 'taper' as const, 'return' as const),
    sessions: fc.array(
      fc.record({
        contacts: fc.integer({ min: 2, max: 28 }).map((fives) => fives * 5),
        lifts: fc.boolean(),
        dropsAllowed: fc.boolean(),
        heavyAllowed: fc.boolean(),
        slot: fc.constantFrom(slot(), slot({ place: FIELD }), slot({ minutes: 50 })),
      }),
      { minLength: 1, maxLength: 3 },
    ),
  })
  .map((week): WeekSpec => week);

const aSeason = fc.array(aWeek, { minLength: 1, maxLength: 6 });

describe('whatever the season', () => {
  test('the lines of a session make its contacts exactly', () => {
    fc.assert(
      fc.property(anAthlete, aSeason, (who, season) => {
        const made = makeLines(who, season);
        expect(made.diagnostics).toEqual([]);
        made.value.forEach((sessions, index) => {
          const asked = season[index]?.sessions.map((session) => session.contacts) ?? [];
          expect(sessions.map((session) => session.contacts)).toEqual(asked);
          for (const session of sessions) {
            expect(session.lines.reduce((sum, one) => sum + one.contacts, 0)).toBe(session.contacts);
            expect(session.lines.map((one) => one.order)).toEqual(session.lines.map((_, at) => at + 1));
          }
        });
      }),
      { numRuns: 60 },
    );
  });

  test('drops and fast drills of the high tier stand only where they may, and the week keeps to its shares', () => {
    fc.assert(
      fc.property(anAthlete, aSeason, (who, season) => {
        makeLines(who, season).value.forEach((sessions, index) => {
          const spec = season[index];
          const total = sessions.reduce((sum, session) => sum + session.contacts, 0);
          const most = (getPhase(spec?.phase ?? 'power').highShareMost ?? 0) * total;
          expect(contactsWhere(sessions, (drill) => drill.tier === 'high') * 100).toBeLessThanOrEqual(most);
          expect(contactsWhere(sessions, isStatic) * 100).toBeLessThanOrEqual(20 * total);
          sessions.forEach((session, at) => {
            if (spec?.sessions[at]?.dropsAllowed === true) return;
            expect(contactsWhere([session], isDrop)).toBe(0);
            expect(contactsWhere([session], (drill) => drill.tier === 'high' && drill.cycle === 'fast')).toBe(0);
          });
        });
      }),
      { numRuns: 60 },
    );
  });

  test('after the first week at most two drills of a week are new', () => {
    fc.assert(
      fc.property(anAthlete, aSeason, (who, season) => {
        const known = new Set<string>();
        makeLines(who, season).value.forEach((sessions, index) => {
          const fresh = new Set(
            drillsOf(sessions)
              .map(({ drill }) => drill.id)
              .filter((id) => !known.has(id)),
          );
          if (index > 0) expect(fresh.size).toBeLessThanOrEqual(2);
          for (const id of fresh) known.add(id);
        });
      }),
      { numRuns: 60 },
    );
  });
});

describe('the week', () => {
  test.each(JUMPING_PHASES)('%s comes near its directions and band of fast work', (phase) => {
    const { directions, fastShare } = getPhase(phase);
    const sessions = makeLines(strong('intermediate'), weeks(phase, [80, 80], 6)).value[5] ?? [];
    const share = (holds: (drill: Drill) => number): number =>
      drillsOf(sessions).reduce((sum, { drill, line: one }) => sum + holds(drill) * one.contacts, 0) / 160;
    for (const direction of ['vertical', 'horizontal', 'lateral'] as const) {
      expect(
        Math.abs(share((drill) => drill.direction[direction]) - (directions?.[direction] ?? 0)),
      ).toBeLessThanOrEqual(10);
    }
    const fast = share((drill) => (drill.cycle === 'fast' ? 100 : 0));
    expect(fast).toBeGreaterThanOrEqual(fastShare?.from ?? 0);
    expect(fast).toBeLessThanOrEqual(fastShare?.to ?? 100);
  });

  test.each([
    ['volleyball', { vertical: 65, horizontal: 15, lateral: 20 }],
    ['long jump', { vertical: 30, horizontal: 70, lateral: 0 }],
  ])('follows the directions of %s', (_sport, directions) => {
    const { season } = makePlan();
    const made = makeLines(strong('intermediate'), weeks('strength', [90, 90], 3), {
      season: { ...season, directions },
    });
    const sessions = made.value[2] ?? [];
    const vertical =
      drillsOf(sessions).reduce((sum, { drill, line: one }) => sum + drill.direction.vertical * one.contacts, 0) / 180;
    expect(Math.abs(vertical - directions.vertical)).toBeLessThanOrEqual(10);
  });

  test.each([
    ['a beginner of small sessions', 'beginner', 29, 'written', true],
    ['a beginner of larger ones', 'beginner', 30, 'written', false],
    ['an intermediate of small ones', 'intermediate', 29, 'written', false],
    ['somebody of whose jumping nothing is written', 'intermediate', 70, 'default', true],
  ] as const)(
    '%s does nothing fast in the first four weeks of jumping, or not',
    (_words, level, contacts, kind, gentle) => {
      const origin = kind === 'written' ? ({ kind, span: HERE } as const) : ({ kind, basis: 'V1' } as const);
      const who = athlete(level, { now: { value: { contactsASession: contacts, sessionsAWeek: 2 }, origin } });
      const made = makeLines(who, weeks('strength', [60, 60], 5)).value;
      const fast = made.map((sessions) => contactsWhere(sessions, (drill) => drill.cycle === 'fast') > 0);
      expect(fast).toEqual([!gentle, !gentle, !gentle, !gentle, true]);
    },
  );

  test('after a painful morning there is nothing fast and nothing of the high tier', () => {
    const spec = weeks('power', [80, 80], 2).map((week) => ({
      ...week,
      bounds: [{ by: 'pain-hold' as const, most: 160 }],
    }));
    const sessions = makeLines(strong('advanced'), spec).value.flat();
    expect(contactsWhere(sessions, (drill) => drill.cycle === 'fast' || drill.tier === 'high')).toBe(0);
  });

  test('a taper keeps the drills and cuts the sets', () => {
    const spec: readonly WeekSpec[] = [
      ...weeks('power', [80, 80], 4),
      { phase: 'power', kind: 'taper', step: 1, sessions: [{ contacts: 40 }, { contacts: 40 }] },
    ];
    const made = makeLines(strong('advanced'), spec).value;
    const before = new Set(made.slice(0, 4).flatMap((sessions) => drillsOf(sessions).map(({ drill }) => drill.id)));
    for (const { drill } of drillsOf(made[4] ?? [])) expect(before).toContain(drill.id);
    const tiers = new Set(drillsOf(made[4] ?? []).map(({ drill }) => drill.tier));
    expect(tiers.has('high')).toBe(true);
  });

  test('a primer is 20 contacts of known drills without drops', () => {
    const spec: readonly WeekSpec[] = [
      ...weeks('power', [80, 80], 3),
      { phase: 'power', kind: 'taper', step: 1, sessions: [{ contacts: 20, primer: true, dropsAllowed: false }] },
    ];
    const [primer] = makeLines(strong('advanced'), spec).value[3] ?? [];
    expect(primer).toMatchObject({ kind: 'primer', contacts: 20, jumps: true });
    expect(contactsWhere(primer === undefined ? [] : [primer], isDrop)).toBe(0);
  });
});

describe('drops', () => {
  const power = (
    level: Level,
    change: Partial<Athlete> = {},
    sessions: readonly number[] = [140, 140],
  ): readonly BuiltSession[] => makeLines(strong(level, change), weeks('power', sessions, 8)).value.flat();
  const heights = (sessions: readonly BuiltSession[]): Set<number> =>
    new Set(sessions.flatMap((session) => session.lines.flatMap((one) => one.dropCm ?? [])));

  test('begin at 20 cm for whoever is cleared, and show their height', () => {
    expect(heights(power('advanced'))).toEqual(new Set([20]));
    expect(heights(power('advanced', { cleared: new Set() }))).toEqual(new Set());
  });

  test('go higher only when the drill is cleared by name or pinned', () => {
    expect(heights(power('advanced', { cleared: new Set(['drops', 'drop-jump-30']) }))).toContain(30);
    const plan = { pins: [pin([{ kind: 'keep', exercises: ['drop-jump-30'] }])] };
    const made = makeLines(strong('advanced'), weeks('power', [140], 2), plan);
    expect(heights(made.value.flat())).toContain(30);
    expect(made.diagnostics).toEqual([]);
  });

  test.each([
    ['beginner', 20],
    ['intermediate', 30],
    ['advanced', 40],
  ] as const)('of a %s stay within %i a session and twice that a week', (level, most) => {
    const made = makeLines(strong(level), weeks('power', [140, 140, 140], 6)).value;
    for (const sessions of made) {
      for (const session of sessions) expect(contactsWhere([session], isDrop)).toBeLessThanOrEqual(most);
      expect(contactsWhere(sessions, isDrop)).toBeLessThanOrEqual(2 * most);
    }
  });

  test('a pinned drop that a gate bars is not put in, and is said', () => {
    const plan = { pins: [pin([{ kind: 'keep', exercises: ['drop-jump-30'] }])] };
    const child = strong('beginner', { born: bornOn('2015-01-01') });
    const made = makeLines(child, weeks('foundation', [60], 2), plan);
    expect(heights(made.value.flat())).toEqual(new Set());
    expect(made.diagnostics.map((one) => [one.code, one.params['by']])).toEqual([['lines/pin-barred', 'drop-age']]);
  });
});

describe('groups', () => {
  const squad = (members: readonly Athlete[]): Plan =>
    makePlan({ athletes: members.map((one) => ({ ...one, squad: 'seniors' })) });
  const familiesOf = (plan: Plan, who: Athlete, spec: readonly WeekSpec[]): readonly (readonly string[])[] =>
    scheduleLines(plan, chooseGroups(plan), makeSchedule(plan, who, spec)).value.map((sessions) => [
      ...new Set(sessions.flatMap((session) => session.lines.flatMap((one) => (one.own ? [] : (one.family ?? []))))),
    ]);

  test('members of a squad do the same families at their own rungs', () => {
    const plan = squad([
      athlete('beginner', { id: 'bea' }),
      athlete('intermediate', { id: 'ira' }),
      strong('advanced', { id: 'ada' }),
    ]);
    const spec = weeks('strength', [90, 90], 6);
    const groups = chooseGroups(plan);
    const families = new Set(groups.choice.of({ squad: 'seniors' }, HALL, 'strength').families);
    expect(families.size).toBeGreaterThanOrEqual(3);
    expect(families.size).toBeLessThanOrEqual(5);
    for (const who of plan.athletes) {
      for (const week of familiesOf(plan, who, spec)) for (const family of week) expect(families).toContain(family);
    }
    const rungs = plan.athletes.map((who) => {
      const made = scheduleLines(plan, groups, makeSchedule(plan, who, spec)).value[5] ?? [];
      return new Set(drillsOf(made).map(({ drill }) => drill.id));
    });
    expect(rungs[0]).not.toEqual(rungs[2]);
  });

  test('families stay for the block and change by two at most along the path', () => {
    const groups = chooseGroups(squad([strong('intermediate')]));
    const path = (['hypertrophy', 'strength', 'strength-power', 'power', 'sharpening'] as const).map(
      (phase) => groups.choice.of({ squad: 'seniors' }, HALL, phase).families,
    );
    path.slice(1).forEach((families, index) => {
      const before = path[index] ?? [];
      expect(families.filter((family) => !before.includes(family)).length).toBeLessThanOrEqual(2);
    });
    expect(groups.choice.of({ squad: 'seniors' }, HALL, 'power')).toBe(
      groups.choice.of({ squad: 'seniors' }, HALL, 'power'),
    );
  });

  test('an athlete whom a limit keeps from a family gets another, marked own', () => {
    const plan = squad([
      athlete('intermediate', { id: 'ira' }),
      athlete('intermediate', { id: 'ida', limits: [limit([{ kind: 'direction', id: 'lateral' }])] }),
    ]);
    const groups = chooseGroups(plan);
    const made = plan.athletes.map((who) =>
      scheduleLines(plan, groups, makeSchedule(plan, who, weeks('strength', [90], 1)))
        .value.flat()
        .flatMap((session) => session.lines),
    );
    const [ida, ira] = made;
    expect(made.length).toBe(2);
    expect(ira?.every((one) => !one.own) || ida?.every((one) => !one.own)).toBe(true);
    const limited = [ida, ira].find((lines) => lines?.some((one) => one.own));
    expect(limited?.filter((one) => one.own).length).toBe(1);
    for (const one of limited ?? []) expect(BUILT_IN.drills.get(one.exercise)?.direction.lateral).toBe(0);
  });

  test('need nothing that the place does not have', () => {
    const groups = chooseGroups(squad([strong('intermediate')]));
    for (const phase of JUMPING_PHASES) {
      for (const family of groups.choice.of({ squad: 'seniors' }, FIELD, phase).families) {
        expect(BUILT_IN.families.get(family)?.some((drill) => drill.kit.length === 0)).toBe(true);
      }
    }
  });

  test('athletes without a squad form a group of their own', () => {
    const plan = makePlan({ athletes: [athlete('beginner'), athlete('advanced', { id: 'bea', squad: 'seniors' })] });
    const groups = chooseGroups(plan);
    expect(groups.choice.people(undefined)).toBe(1);
    expect(groups.choice.people('seniors')).toBe(1);
    expect(groups.choice.of({}, HALL, 'strength').families.length).toBeGreaterThanOrEqual(3);
  });
});

describe('rungs', () => {
  const reasonOf = (who: Athlete, family: string) =>
    makeLines(who, weeks('strength', [90], 1))
      .value.flat()
      .flatMap((session) => session.lines)
      .find((one) => one.family === family)
      ?.reasons.find((reason) => reason.about === 'rung');

  test('a line says what holds back the next rung', () => {
    expect(reasonOf(athlete('intermediate'), 'jump-in-place')).toMatchObject({ by: 'top' });
    expect(reasonOf(athlete('beginner'), 'skater')).toMatchObject({
      by: 'drill-level',
      params: { next: 'lateral-bound' },
    });
    expect(reasonOf(athlete('advanced'), 'skater')).toMatchObject({
      by: 'drop-clearance',
      params: { next: 'long-lateral-bound' },
    });
  });

  test('a session has one drill done on each leg and one of the high tier, at most', () => {
    for (const phase of JUMPING_PHASES) {
      for (const session of makeLines(strong('advanced'), weeks(phase, [100, 100], 6)).value.flat()) {
        const drills = drillsOf([session]).map(({ drill }) => drill);
        expect(drills.filter((drill) => drill.legs === 'each').length).toBeLessThanOrEqual(1);
        expect(drills.filter((drill) => drill.tier === 'high').length).toBeLessThanOrEqual(1);
      }
    }
  });
});

describe('pins on drills', () => {
  const base = weeks('strength', [80], 1);
  const exercises = (change: Partial<Plan>): readonly string[] =>
    makeLines(athlete('intermediate'), base, change)
      .value.flat()
      .flatMap((session) => session.lines.map((one) => one.exercise));

  test('leave-out takes the next rung of the family', () => {
    expect(exercises({})).toContain('lateral-bound');
    const without = exercises({ pins: [pin([{ kind: 'leave-out', exercises: ['lateral-bound'] }])] });
    expect(without).not.toContain('lateral-bound');
    expect(without).toContain('skater-stick');
  });

  test('swap puts another drill in its place', () => {
    const swapped = exercises({ pins: [pin([{ kind: 'swap', swaps: new Map([['lateral-bound', 'side-gallop']]) }])] });
    expect(swapped).not.toContain('lateral-bound');
    expect(swapped).toContain('side-gallop');
  });

  test('keep brings a drill in', () => {
    expect(exercises({})).not.toContain('pogo');
    expect(exercises({ pins: [pin([{ kind: 'keep', exercises: ['pogo'] }])] })).toContain('pogo');
  });

  test('sets are kept where the session can still be made, and said where not', () => {
    const sets = (value: number) =>
      makeLines(athlete('intermediate'), base, {
        pins: [pin([{ kind: 'sets', sets: new Map([['lateral-bound', value]]) }])],
      });
    const two = sets(2);
    expect(
      two.value
        .flat()
        .flatMap((session) => session.lines)
        .find((one) => one.exercise === 'lateral-bound')?.sets,
    ).toBe(2);
    expect(two.value.flat()[0]?.contacts).toBe(80);
    expect(two.diagnostics).toEqual([]);
    const ninety = sets(90);
    expect(ninety.value.flat()[0]?.contacts).toBe(80);
    expect(ninety.diagnostics.map((one) => one.code)).toEqual(['lines/sets-unmet']);
  });

  test('added jumps are part of the session’s contacts', () => {
    const add = (sets: number) =>
      makeLines(athlete('intermediate'), base, {
        pins: [pin([{ kind: 'add', part: 'jumps', lines: [line('drill', 'pogo', sets, 8)] }])],
      });
    const some = add(2);
    const [session] = some.value.flat();
    expect(session?.contacts).toBe(80);
    expect(linesOf(session).find((one) => one.exercise === 'pogo')).toMatchObject({
      sets: 2,
      reps: 8,
      contacts: 16,
      origin: { kind: 'written' },
    });
    const many = add(11);
    expect(many.value.flat()[0]?.contacts).toBe(80);
    expect(linesOf(many.value.flat()[0]).map((one) => one.exercise)).not.toContain('pogo');
    expect(many.diagnostics.map((one) => one.code)).toEqual(['lines/added-over-contacts']);
  });

  test('a pin holds on its days and for its athletes only', () => {
    const far = pin([{ kind: 'leave-out', exercises: ['lateral-bound'] }], {
      range: { from: START + 7, until: START + 13 },
    });
    expect(exercises({ pins: [far] })).toContain('lateral-bound');
    const others = pin([{ kind: 'leave-out', exercises: ['lateral-bound'] }], {
      who: { kind: 'some', squads: [], athletes: ['bea'] },
    });
    expect(exercises({ pins: [others] })).toContain('lateral-bound');
  });
});

describe('lines of every session', () => {
  const always = (
    lines: Plan['always'][number]['lines'],
    change: Partial<Plan['always'][number]> = {},
  ): Partial<Plan> => ({
    always: [
      {
        part: 'lifts',
        lines,
        range: { from: START, until: START + 100 },
        who: EVERYBODY,
        because: 'shoulders',
        span: HERE,
        ...change,
      },
    ],
  });
  const first = (
    change: Partial<Plan>,
    session: SessionSpec,
    who = athlete('intermediate'),
  ): BuiltSession | undefined => makeLines(who, [{ phase: 'strength', sessions: [session] }], change).value[0]?.[0];

  test('rest as the phase has it and queue as the place has it, though they are made once', () => {
    const oneRack = {
      ...HALL,
      id: 'one-rack',
      kit: { ...FULL_KIT, counts: new Map<KitId, number>([...FULL_KIT.counts, ['racks', 1]]) },
    };
    const athletes = Array.from({ length: 12 }, (_, index) => athlete('advanced', { id: `a${index}` }));
    const spec = (['hypertrophy', 'strength'] as const).flatMap((phase) =>
      [HALL, oneRack].map((place) => ({
        phase,
        sessions: [{ contacts: 60, lifts: true, slot: slot({ place, minutes: 300 }) }],
      })),
    );
    const made = makeLines(athletes[0] ?? athlete('advanced'), spec, {
      ...always([line('lift', 'front-squat', 3, 5)]),
      athletes,
    });
    const rests = made.value.map(
      (sessions) => linesOf(sessions[0]).findLast((one) => one.exercise === 'front-squat')?.restSeconds,
    );
    const [hypertrophy, strength] = [
      findPhaseLifting('hypertrophy')?.restSeconds,
      findPhaseLifting('strength')?.restSeconds,
    ];
    expect(strength).not.toBe(hypertrophy);
    expect(rests).toEqual([hypertrophy, hypertrophy, strength, strength]);
    const plain = makeLines(athletes[0] ?? athlete('advanced'), spec, { athletes });
    const longer = made.value.map(
      (sessions, week) => (sessions[0]?.minutes ?? 0) - (plain.value[week]?.[0]?.minutes ?? 0),
    );
    expect(longer[1]).toBeGreaterThan(longer[0] ?? 0);
  });

  test('stand in sessions of jumps and of lifts, and not twice', () => {
    const pullUps = always([line('lift', 'pull-up', 3, 6)]);
    for (const session of [first(pullUps, { contacts: 60 }), first(pullUps, { lifts: true })]) {
      expect(linesOf(session).filter((one) => one.exercise === 'pull-up').length).toBe(1);
    }
  });

  test('take the minutes that are written', () => {
    const plain = first({}, { contacts: 60 })?.minutes ?? 0;
    expect(first(always([line('lift', 'pull-up', 3, 6)], { minutes: 10 }), { contacts: 60 })?.minutes).toBe(plain + 10);
  });

  test('stay out where the kit is missing, a gate bars them or the day is not for legs, with the reason', () => {
    const away = first(always([line('lift', 'pull-up', 3, 6)]), { contacts: 60, slot: slot({ place: FIELD }) });
    expect(away?.lines.map((one) => one.exercise)).not.toContain('pull-up');
    expect(away?.reasons).toContainEqual(expect.objectContaining({ about: 'line', by: 'kit' }));
    const squat = first(always([line('lift', 'back-squat', 3, 6)]), { contacts: 60 });
    expect(squat?.reasons).toContainEqual(expect.objectContaining({ about: 'line', by: 'lift-days' }));
    const hurt = athlete('intermediate', { limits: [limit([{ kind: 'lift', id: 'pull-up' }])] });
    expect(first(always([line('lift', 'pull-up', 3, 6)]), { contacts: 60 }, hurt)?.reasons).toContainEqual(
      expect.objectContaining({ about: 'line', by: 'limit' }),
    );
  });
});

describe('programmes', () => {
  const programme = {
    id: 'pairs',
    span: HERE,
    weeks: [
      {
        week: 1,
        days: [
          {
            day: 0 as const,
            span: HERE,
            lines: [
              line('lift', 'back-squat', 3, 8, { percent: 80, pair: line('drill', 'countermovement-jump', 1, 3) }),
              line('drill', 'single-leg-pogo', 4, 6, { restSeconds: 100, note: 'barefoot' }),
            ],
          },
        ],
      },
    ],
  };
  const change: Partial<Plan> = { uses: [{ programme, from: START, who: EVERYBODY, span: HERE }] };
  const made = makeLines(
    strong('beginner'),
    [{ phase: 'power', sessions: [{ contacts: 57, lifts: true, slot: slot({ minutes: 10 }) }] }],
    change,
  );
  const [session] = made.value[0] ?? [];

  test('are written as they stand, counted and paired, with nothing cut', () => {
    expect(session?.contacts).toBe(3 * 3 + 4 * 6 * 2);
    expect(session?.lines).toMatchObject([
      {
        order: 1,
        exercise: 'back-squat',
        sets: 3,
        reps: 8,
        percent: 80,
        loadGrams: 95_000,
        pairedWith: 2,
        part: 'lifts',
      },
      { order: 2, exercise: 'countermovement-jump', sets: 3, reps: 3, contacts: 9, pairedWith: 1, part: 'jumps' },
      { order: 3, exercise: 'single-leg-pogo', contacts: 48, restSeconds: 100, note: 'barefoot' },
    ]);
    expect(session?.leftOut).toEqual([]);
    expect(session?.heavy).toBe(true);
  });

  test('keep the place they were written at', () => {
    for (const one of linesOf(session)) expect(one.origin).toEqual({ kind: 'written', span: HERE });
  });

  test('weeks they do not reach are planned', () => {
    const later = makeLines(strong('beginner'), [...weeks('power', [57]), ...weeks('power', [60])], change);
    expect(later.value[1]?.[0]?.lines.every((one) => one.origin.kind === 'derived')).toBe(true);
  });
});

describe('minutes', () => {
  const session = (
    minutes: number,
    contacts: number,
    change: Partial<SessionSpec> = {},
    plan: Partial<Plan> = {},
  ): BuiltSession | undefined =>
    makeLines(
      strong('intermediate'),
      [{ phase: 'strength', sessions: [{ contacts, lifts: true, slot: slot({ minutes }), ...change }] }],
      plan,
    ).value[0]?.[0];

  test('a session that fits is left whole', () => {
    expect(session(120, 60)?.leftOut).toEqual([]);
  });

  test('one that does not loses assistance first, then trunk, and says what went', () => {
    const whole = linesOf(session(120, 60)).map((one) => one.exercise);
    const tight = session(60, 60);
    expect(tight?.minutes).toBeLessThanOrEqual(66);
    expect(tight?.leftOut.length).toBeGreaterThan(0);
    expect(tight?.leftOut[0]).toBe(whole.findLast((id) => BUILT_IN.lifts.get(id)?.role === 'assistance'));
    expect([...linesOf(tight).map((one) => one.exercise), ...(tight?.leftOut ?? [])].sort()).toEqual([...whole].sort());
    expect(tight?.reasons).toContainEqual(expect.objectContaining({ about: 'minutes', by: 'slot-minutes' }));
  });

  test('jumps and a main lift stay, however short the slot, and the jumps keep their rest', () => {
    const short = session(20, 60);
    expect(short?.contacts).toBe(60);
    expect(linesOf(short).filter((one) => one.part === 'lifts').length).toBe(1);
    for (const { drill, line: one } of drillsOf(short === undefined ? [] : [short]))
      expect(one.restSeconds).toBe(drill.restSeconds);
  });

  test('the order for little time names lines of the session, assistance before trunk before jumps', () => {
    const whole = session(120, 60);
    const parts = whole?.shortOnTime.map((order) => whole.lines[order - 1]?.part);
    expect(parts).toEqual(
      [...(parts ?? [])].sort(
        (a, b) => ['lifts', 'trunk', 'jumps'].indexOf(a ?? '') - ['lifts', 'trunk', 'jumps'].indexOf(b ?? ''),
      ),
    );
    expect(whole?.shortOnTime).not.toContain(1);
    expect(new Set(whole?.shortOnTime).size).toBe(whole?.shortOnTime.length);
  });

  test('waiting for a rack is in the minutes', () => {
    const members = Array.from({ length: 16 }, (_, index) =>
      strong('intermediate', { id: `a${index}`, squad: 'seniors' }),
    );
    const crowded = { ...HALL, kit: { ...FULL_KIT, counts: new Map([...FULL_KIT.counts, ['racks', 1] as const]) } };
    const alone = makeLines(strong('intermediate', { squad: 'seniors' }), [
      { phase: 'strength', sessions: [{ lifts: true, slot: slot({ place: crowded }) }] },
    ]);
    const together = makeLines(
      strong('intermediate', { squad: 'seniors' }),
      [{ phase: 'strength', sessions: [{ lifts: true, slot: slot({ place: crowded }) }] }],
      { athletes: members },
    );
    expect(together.value[0]?.[0]?.minutes).toBeGreaterThan(alone.value[0]?.[0]?.minutes ?? 0);
  });

  test('a lift session kept short is one main lift', () => {
    expect(linesOf(session(120, 0, { shortLift: true })).map((one) => one.exercise)).toEqual(['back-squat']);
  });
});

describe('lifting near a competition', () => {
  const legs = (specs: readonly SessionSpec[]): readonly string[] => {
    const sessions = specs.map((spec) => ({ lifts: true, ...spec }));
    const last = makeLines(strong('intermediate'), [{ phase: 'strength', sessions }]).value[0]?.at(-1);
    expect(linesOf(last).length).toBeGreaterThan(0);
    return linesOf(last)
      .map((one) => one.exercise)
      .filter((id) => BUILT_IN.lifts.get(id)?.lower === true);
  };

  test('has no eccentric work for the hamstrings in the days before', () => {
    const light = { heavyAllowed: false } as const;
    expect(legs([{ ...light }])).toContain('nordic-hamstring');
    expect(legs([{ ...light, spares: 'lowered' }])).not.toContain('nordic-hamstring');
    expect(legs([{ ...light, spares: 'lowered' }])).toContain('back-squat');
  });

  test('has no leg work on the eve but the main lift', () => {
    expect(legs([{ heavyAllowed: false }]).length).toBeGreaterThan(1);
    expect(legs([{ heavyAllowed: false, spares: 'eve' }])).toEqual(['back-squat']);
  });

  test('has no hinge on the eve that the hamstrings lower slowly', () => {
    const light = { heavyAllowed: false } as const;
    expect(legs([light, { ...light, spares: 'lowered' }])).toContain('romanian-deadlift');
    expect(legs([light, { ...light, spares: 'eve' }])).toEqual(['single-leg-hip-bridge']);
    expect(legs([light, { ...light, spares: 'eve', shortLift: true }])).toEqual(['single-leg-hip-bridge']);
  });

  test('has no half squats beside another main lift on the eve', () => {
    const lifts = new Map([max('half-squat', 180)]);
    const last = (spares: 'lowered' | 'eve'): readonly string[] => {
      const sessions = [{}, { spares }].map((spec) => ({ lifts: true, heavyAllowed: false, ...spec }));
      const made = makeLines(athlete('intermediate', { lifts }), [{ phase: 'power', sessions }]).value[0]?.at(-1);
      return linesOf(made).map((one) => one.exercise);
    };
    expect(last('lowered')).toContain('half-squat');
    expect(last('eve')).not.toContain('half-squat');
    expect(last('eve')).toContain('single-leg-hip-bridge');
  });
});

describe('a session that nothing fits', () => {
  test('has no lines and is an error of that week', () => {
    const directions = ['vertical', 'horizontal', 'lateral'] as const;
    const limits = [limit(directions.map((id) => ({ kind: 'direction', id }) as const))];
    const made = makeLines(athlete('beginner', { limits }), weeks('strength', [60]));
    expect(made.value[0]?.[0]?.contacts).toBe(0);
    expect(made.diagnostics).toMatchObject([
      { code: 'lines/no-drill-fits', severity: 'error', athlete: 'ada', week: START },
    ]);
  });
});

test('the same season gives the same lines, whoever was planned before', () => {
  const who = strong('intermediate');
  const other = strong('advanced', { id: 'bea' });
  const plan = makePlan({ athletes: [who, other] });
  const spec = weeks('power', [90, 80], 5, { lifts: true });
  const groups = chooseGroups(plan);
  const lines = (someone: Athlete, shared: typeof groups) =>
    scheduleLines(plan, shared, makeSchedule(plan, someone, spec)).value;
  lines(other, groups);
  expect(lines(who, groups)).toEqual(lines(who, chooseGroups(plan)));
});
