import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { day, drill, jumps, loading, place } from './make-build.ts';
import type { SessionSpec } from './make-build.ts';
import type { DoneRow } from '../../../src/plan/types.ts';

const RULE = 'pain-hold';

function recorded(...pains: readonly (readonly [onDay: number, pain: number])[]) {
  const done = pains.map(([on, pain]): DoneRow => ({
    day: on,
    athlete: 'ada',
    kind: 'session',
    pain,
    span: place(70),
  }));
  return { record: { done, tests: [] } };
}

const over = { done: true, adapted: 200, sessions: [jumps(3, 200)] } as const;
const friday = day(1, 4);
const fast: SessionSpec = { on: 1, lines: [drill('pogo', 2, 10)] };

describe('pain-hold', () => {
  it('lets nothing rise after pain of four or five', () => {
    expectSilent(RULE, { plan: recorded([friday, 4]), weeks: [over, loading(200)] });
    expectFinding(RULE, { plan: recorded([friday, 4]), weeks: [over, loading(201)] }, 2);
    expectFinding(RULE, { plan: recorded([friday, 5]), weeks: [over, loading(201)] }, 2);
    expectSilent(RULE, { plan: recorded([friday, 3]), weeks: [over, loading(201)] });
  });

  it('leaves fast and high-tier drills out', () => {
    expectFinding(RULE, { plan: recorded([friday, 4]), weeks: [over, { sessions: [fast] }] }, 2);
    expectSilent(RULE, { plan: recorded([friday, 3]), weeks: [over, { sessions: [fast] }] });
  });

  it('holds for the week behind it', () => {
    expectFinding(RULE, { plan: recorded([day(1, 1), 4]), weeks: [over, { sessions: [fast] }] }, 2);
    expectSilent(RULE, { plan: recorded([day(1, 0), 4]), weeks: [over, { sessions: [fast] }] });
  });

  it('stops all jumping after more pain, until a morning is better', () => {
    const weeks = [over, {}, {}, loading(20)];
    expectFinding(RULE, { plan: recorded([friday, 6]), weeks }, 4);
    expectSilent(RULE, { plan: recorded([friday, 6], [day(2, 0), 2]), weeks });
  });

  it('brings jumps back with a later week than that of the better morning', () => {
    const late = { sessions: [jumps(3, 20)] };
    expectFinding(RULE, { plan: recorded([friday, 6], [day(2, 1), 2]), weeks: [over, late] }, 2);
    expectSilent(RULE, { plan: recorded([friday, 6], [day(2, 1), 2]), weeks: [over, {}, late] });
    // Who jumped before it hurt did nothing wrong.
    expectSilent(RULE, { plan: recorded([day(2, 3), 6]), weeks: [over, late] });
  });

  it('says when it hurt', () => {
    const said = found(RULE, { plan: recorded([friday, 6]), weeks: [over, loading(20)] })[0];
    expect(said?.params).toMatchObject({ pain: 6, since: '2027-01-08' });
    expect(said?.related[0]?.span).toEqual(place(70));
  });
});
