import { describe, expect, it } from 'vitest';
import type { BuiltLine } from '../../../src/build/types.ts';
import { expectFinding, expectSilent, found } from './found.ts';
import { drill, HALL, place, slot } from './make-build.ts';

const RULE = 'surface';

describe('surface', () => {
  const on = (surface: string | undefined, line: BuiltLine) => ({
    weeks: [
      {
        sessions: [
          { on: 1, slot: slot(1, { place: { ...HALL, ...(surface !== undefined && { surface }) } }), lines: [line] },
        ] as const,
      },
    ],
  });
  const high = drill('high-hurdle-hop', 3, 5);

  it.each(['concrete', 'Asphalt', 'tiles', 'tiled floor', 'rubber on concrete'])(
    'wants no hard landings on %s',
    (surface) => {
      expectFinding(RULE, on(surface, high), 1);
    },
  );

  it.each(['sprung floor', 'rubber track', 'grass', 'sandstone-coloured turf', undefined])(
    'has none of %s',
    (surface) => {
      expectSilent(RULE, on(surface, high));
    },
  );

  it('asks only about drops and the high tier', () => {
    expectSilent(RULE, on('concrete', drill('hurdle-hop', 3, 5)));
    expectFinding(RULE, on('concrete', drill('drop-jump-20', 3, 5)), 1);
    expectFinding(RULE, on('concrete', drill('depth-landing-30', 3, 5)), 1);
  });

  it('says what the ground is, and where it is written', () => {
    const said = found(RULE, on('concrete', high))[0];
    expect(said?.params).toMatchObject({ surface: 'concrete', place: 'hall', exercise: 'high-hurdle-hop' });
    expect(said?.related[0]?.span).toEqual(place(2));
  });
});
