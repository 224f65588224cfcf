import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { ALWAYS, day, drill, jumps, lift, place } from './make-build.ts';
import type { SeasonSpec, SessionSpec } from './make-build.ts';

const RULE = 'returning-stage';

function season(stage: number, session: SessionSpec, of = 4): SeasonSpec {
  const returning = [{ stage, of, since: ALWAYS.from, signed: 'physio', span: place(66) }];
  return { athlete: { returning }, weeks: [{ kind: 'return', sessions: [session] }] };
}

describe('returning-stage', () => {
  // Common practice, no source.
  it.each([
    [1, 30],
    [2, 50],
    [3, 70],
  ])('holds the sessions of stage %i', (stage, most) => {
    const session = (contacts: number): SessionSpec => ({ on: 1, lines: [drill('snap-down', 1, contacts)] });
    expectSilent(RULE, season(stage, session(most)));
    expectFinding(RULE, season(stage, session(most + 1)), 1);
  });

  it('allows the drills of the stage and of those below', () => {
    const session = { on: 1, lines: [drill('single-leg-snap-down', 2, 5)] } as const;
    expectSilent(RULE, season(2, session));
    expectSilent(RULE, season(3, session));
    expectFinding(RULE, season(1, session), 1);
  });

  it('holds lifts to the stage as well', () => {
    const session = { on: 1, lines: [lift('front-squat', 2, 5)] } as const;
    expectSilent(RULE, season(3, session));
    expectFinding(RULE, season(2, session), 1);
  });

  it('is over with the last stage', () => {
    expectSilent(RULE, season(4, jumps(1, 120)));
  });

  it('goes by the day a stage is signed', () => {
    const stages = [
      { stage: 1, of: 4, since: ALWAYS.from, signed: 'physio', span: place(66) },
      { stage: 2, of: 4, since: day(1, 3), signed: 'physio', span: place(67) },
    ];
    const lines = [drill('single-leg-snap-down', 2, 5)];
    const weeks = [
      {
        sessions: [
          { on: 1, lines },
          { on: 3, lines },
        ] as const,
      },
    ];
    expect(found(RULE, { athlete: { returning: stages }, weeks }).map((one) => one.params['date'])).toEqual([
      '2027-01-05',
    ]);
  });

  it('allows the first stage before a later one is signed, and no jumps before the first is', () => {
    const later = (stage: number, session: SessionSpec): SeasonSpec => {
      const returning = [{ stage, of: 4, since: day(1, 3), signed: 'physio', span: place(66) }];
      return { athlete: { returning }, weeks: [{ kind: 'return', sessions: [session] }] };
    };
    expectSilent(RULE, later(4, jumps(1, 30)));
    expectFinding(RULE, later(4, jumps(1, 31)), 1);
    expectFinding(RULE, later(2, { on: 1, lines: [drill('pogo', 1, 5)] }), 1);
    expectSilent(RULE, later(1, { on: 1, lines: [lift('bodyweight-squat', 2, 5)] }));
    expectFinding(RULE, later(1, jumps(1, 5)), 1);
    expectSilent(RULE, later(1, jumps(3, 30)));
  });

  it('reads a return of more stages cautiously', () => {
    // Stage 3 of 6 is half the way, as stage 2 of 4 is.
    expectSilent(RULE, season(3, { on: 1, lines: [lift('back-squat', 2, 5)] }, 6));
    expectFinding(RULE, season(3, { on: 1, lines: [lift('front-squat', 2, 5)] }, 6), 1);
  });

  it('shows the stage', () => {
    expect(found(RULE, season(1, jumps(1, 31)))[0]?.related[0]?.span).toEqual(place(66));
  });

  it('counts no part of a stage', () => {
    // Stage 3 of 5 is 2.4 of 4.
    expectSilent(RULE, season(3, { on: 1, lines: [lift('back-squat', 2, 5)] }, 5));
    expectFinding(RULE, season(3, { on: 1, lines: [lift('front-squat', 2, 5)] }, 5), 1);
  });
});
