import { describe, expect, it } from 'vitest';
import { expectFinding, expectSilent, found } from './found.ts';
import { day, drill, jumps, lift, place } from './make-build.ts';
import type { SeasonSpec, SessionSpec } from './make-build.ts';
import { BUILT_IN, extendLibrary } from '../../../src/library/index.ts';
import type { Lift } from '../../../src/library/types.ts';
import type { Avoid, Limit } from '../../../src/plan/types.ts';

const RULE = 'limit';

function season(limit: Partial<Limit>, ...sessions: SessionSpec[]) {
  const whole = { range: { from: day(1, 0), until: day(1, 3) }, avoid: [], because: 'knee', span: place(88), ...limit };
  return { athlete: { limits: [whole] }, weeks: [{ sessions }] };
}

function ownLift(id: string, maxOf: string): Lift {
  const squat = BUILT_IN.lifts.get('back-squat');
  if (squat === undefined) throw new Error('no back squat');
  return { ...squat, id, maxOf };
}

const one = (line: ReturnType<typeof drill>, on: 1 | 4 = 1): SessionSpec => ({ on, lines: [line] });

describe('limit', () => {
  it('holds the contacts of a session on its days', () => {
    expectSilent(RULE, season({ contactsASession: 60 }, jumps(1, 60)));
    expectFinding(RULE, season({ contactsASession: 60 }, jumps(1, 61)), 1);
    expectFinding(RULE, season({ contactsASession: 60 }, jumps(3, 61)), 1);
    expectSilent(RULE, season({ contactsASession: 60 }, jumps(4, 61)));
  });

  it('holds the contacts of a week with a session on its days', () => {
    expectSilent(RULE, season({ contactsAWeek: 90 }, jumps(1, 45), jumps(4, 45)));
    expectFinding(RULE, season({ contactsAWeek: 90 }, jumps(1, 45), jumps(4, 46)), 1);
    expectSilent(RULE, season({ contactsAWeek: 90 }, jumps(4, 46), jumps(6, 46)));
  });

  it.each<[string, Avoid, ReturnType<typeof drill>, ReturnType<typeof drill>]>([
    ['drops', { kind: 'drops' }, drill('depth-landing-20', 1, 5), drill('tuck-jump', 1, 5)],
    ['one leg', { kind: 'single-leg' }, drill('single-leg-pogo', 1, 5), drill('pogo', 1, 5)],
    ['one leg by turns', { kind: 'single-leg' }, drill('alternate-bound', 1, 5), drill('pogo', 1, 5)],
    ['lifts on one leg', { kind: 'single-leg' }, lift('split-squat', 1, 5), lift('back-squat', 1, 5)],
    ['a direction', { kind: 'direction', id: 'lateral' }, drill('skater-step', 1, 5), drill('pogo', 1, 5)],
    ['a cycle', { kind: 'cycle', id: 'fast' }, drill('pogo', 1, 5), drill('small-jump', 1, 5)],
    ['a tier', { kind: 'tier', id: 'high' }, drill('high-hurdle-hop', 1, 5), drill('pogo', 1, 5)],
    ['a family', { kind: 'family', id: 'landing' }, drill('snap-down', 1, 5), drill('pogo', 1, 5)],
    ['a drill', { kind: 'drill', id: 'pogo' }, drill('pogo', 1, 5), drill('high-pogo', 1, 5)],
    ['a pattern', { kind: 'pattern', id: 'squat' }, lift('back-squat', 1, 5), lift('hip-thrust', 1, 5)],
    ['a lift', { kind: 'lift', id: 'back-squat' }, lift('back-squat', 1, 5), lift('front-squat', 1, 5)],
    [
      'what goes by its maximum',
      { kind: 'lift', id: 'back-squat' },
      lift('box-squat', 1, 5),
      lift('goblet-squat', 1, 5),
    ],
    ['harder tiers too', { kind: 'tier', id: 'moderate' }, drill('high-hurdle-hop', 1, 5), drill('pogo', 1, 5)],
    ['jumps under load', { kind: 'tier', id: 'moderate' }, lift('jump-squat', 1, 5), lift('back-squat', 1, 5)],
    ['their direction', { kind: 'direction', id: 'vertical' }, lift('jump-squat', 1, 5), lift('back-squat', 1, 5)],
    ['their cycle', { kind: 'cycle', id: 'slow' }, lift('jump-squat', 1, 5), lift('back-squat', 1, 5)],
    [
      'lifts on each leg in turn',
      { kind: 'single-leg' },
      lift('single-leg-calf-raise', 1, 5),
      lift('calf-raise', 1, 5),
    ],
    ['a kind of it', { kind: 'lift', id: 'back-squat' }, lift('quarter-squat', 1, 5), lift('front-squat', 1, 5)],
    [
      'but not what it is a kind of',
      { kind: 'lift', id: 'box-squat' },
      lift('box-squat', 1, 5),
      lift('back-squat', 1, 5),
    ],
  ])('bars %s', (_, avoid, barred, allowed) => {
    expectFinding(RULE, season({ avoid: [avoid] }, one(barred)), 1);
    expectSilent(RULE, season({ avoid: [avoid] }, one(barred, 4)));
    expectSilent(RULE, season({ avoid: [avoid] }, one(allowed)));
  });

  describe('the kinds of a kind', () => {
    const CHAIN = {
      'chain-squat': ownLift('chain-squat', 'back-squat'),
      'pin-squat': ownLift('pin-squat', 'chain-squat'),
      'box-half': ownLift('box-half', 'half-squat'),
      'low-bar': ownLift('low-bar', 'high-bar'),
      'high-bar': ownLift('high-bar', 'low-bar'),
    };
    const library = extendLibrary(BUILT_IN, [], Object.values(CHAIN));
    const spec = (avoid: string, exercise: keyof typeof CHAIN): SeasonSpec => {
      const line = { ...lift('back-squat', 1, 5), exercise };
      return { ...season({ avoid: [{ kind: 'lift', id: avoid }] }, one(line)), plan: { library } };
    };

    it.each([
      ['back-squat', 'pin-squat'],
      ['back-squat', 'box-half'],
      ['chain-squat', 'pin-squat'],
      ['low-bar', 'high-bar'],
      ['high-bar', 'low-bar'],
    ] as const)('go with %s: %s', (avoid, exercise) => {
      expectFinding(RULE, spec(avoid, exercise), 1);
    });

    it.each([
      ['pin-squat', 'chain-squat'],
      ['front-squat', 'pin-squat'],
      ['back-squat', 'low-bar'],
    ] as const)('but with %s not %s', (avoid, exercise) => {
      expectSilent(RULE, spec(avoid, exercise));
    });
  });

  it('points at the line and shows the limit', () => {
    const line = drill('pogo', 1, 5, { origin: { kind: 'written', span: place(99) } });
    const said = found(RULE, season({ avoid: [{ kind: 'drill', id: 'pogo' }] }, one(line)))[0];
    expect([said?.span, said?.related[0]?.span]).toEqual([place(99), place(88)]);
  });

  it('never prints the reason', () => {
    const said = found(RULE, season({ contactsASession: 10, because: 'a secret' }, jumps(1, 61)));
    expect(JSON.stringify(said)).not.toContain('secret');
  });
});
