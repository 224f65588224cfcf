// What a coach asks of a session and can't have: each thing in the way is named with its line, taking it out makes the
// wish possible, and what is said to work does.

import { describe, expect, it } from 'vitest';
import type { BuiltAthlete } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import { planOf } from '../plan/loaded.ts';

const plan = (athlete: string, lines: readonly string[], minutes = 75, kit = 'boxes: [20 cm, 30 cm], '): string =>
  [
    'footfall: 1',
    'season: { title: Spring, starts: 2027-01-04, ends: 2027-01-24 }',
    'places:',
    `  hall: { kit: { ${kit}racks: 4, bars: [20 kg], smallest-plate: 1.25 kg, dumbbells: 6, mats: 4 } }`,
    'slots:',
    `  - { day: tuesday, minutes: ${minutes}, place: hall }`,
    `  - { day: friday, minutes: ${minutes}, place: hall }`,
    'athletes:',
    `  mira: { level: intermediate, born: 2003, mass: 68 kg, ${athlete} now: { contacts-a-session: 80, sessions-a-week: 2 } }`,
    ...lines,
    '',
  ].join('\n');

function built(text: string): BuiltAthlete {
  const [athlete] = compilePlan(planOf(text)).athletes;
  if (athlete === undefined) throw new Error('nobody was built');
  return athlete;
}

const found = (text: string, code: string): readonly Diagnostic[] =>
  built(text).diagnostics.filter((one) => one.code === code);

const does = (text: string, drill: string): boolean =>
  built(text).weeks.some(({ sessions }) =>
    sessions.some(({ lines }) => lines.some(({ exercise }) => exercise === drill)),
  );

const LIMIT = 'limits: [{ until: 2027-01-24, avoid: [single-leg], because: knee }],';
const CLEARED = 'cleared: [drops, single-leg-high],';

describe.each([
  ['keep', 'drop-jump-30', (drill: string) => ['pins:', `  - { week: 2027-01-11, keep: [${drill}], because: wish }`]],
  [
    'add',
    'drop-jump-30',
    (drill: string) => [
      'pins:',
      `  - { week: 2027-01-11, add: [{ drill: ${drill}, sets: 2, reps: 5 }], because: wish }`,
    ],
  ],
  [
    'always',
    'drop-jump-20',
    (drill: string) => [
      'always:',
      `  - { part: jumps, lines: [{ drill: ${drill}, sets: 2, reps: 5 }], because: wish }`,
    ],
  ],
])('%s asks for %s', (_, drill, wish) => {
  it('and the missing clearance is named with what opens it, and opens it', () => {
    const [told] = found(plan('', wish(drill)), 'lines/pin-barred');
    expect(told?.params).toMatchObject({ by: 'drop-clearance', bars: 1, opens: 'cleared: [drops]' });
    expect(does(plan('', wish(drill)), drill)).toBe(false);
    expect(found(plan(CLEARED, wish(drill)), 'lines/pin-barred')).toEqual([]);
    expect(does(plan(CLEARED, wish(drill)), drill)).toBe(true);
  });

  it('and all that is in the way is told, each of which alone bars it', () => {
    const limit = LIMIT.replace('single-leg', 'drops');
    const none = 'hurdles: 2, ';
    const text = plan(limit, wish(drill), 75, none);
    const [told] = found(text, 'lines/pin-barred');
    expect(told?.params).toMatchObject({ by: 'limit and drop-clearance and kit', bars: 3, opens: '' });
    expect(told?.related.map(({ message }) => message).slice(0, 2)).toEqual(['limit bars it here', 'kit bars it here']);
    expect(told?.related.map(({ span }) => text.slice(span.start, span.start + 4)).slice(0, 2)).toEqual([
      'unti',
      'hall',
    ]);
    const bars = (...change: Parameters<typeof plan>): unknown =>
      found(plan(...change), 'lines/pin-barred')[0]?.params['by'];
    expect(bars(CLEARED, wish(drill), 75, none)).toBe('kit');
    expect(bars(limit + CLEARED, wish(drill))).toBe('limit');
    expect(bars('', wish(drill))).toBe('drop-clearance');
  });

  it('and the drill of its family that is said to be possible is', () => {
    const [told] = found(plan(CLEARED, wish('drop-jump-60')), 'lines/pin-barred');
    const instead = String(told?.params['instead']);
    expect(instead).toMatch(/^drop-jump-/u);
    expect(found(plan(CLEARED, wish(instead)), 'lines/pin-barred')).toEqual([]);
  });
});

describe('lines of the coach’s own that make a session too long', () => {
  const TRUNK = '  - { part: trunk, minutes: 15, lines: [{ lift: plank, sets: 3, reps: 40 }], because: backs }';
  const ARMS = '  - { part: lifts, minutes: 15, lines: [{ lift: push-up, sets: 3, reps: 10 }], because: arms }';
  const both = ['always:', TRUNK, ARMS];
  const long = (lines: readonly string[], minutes = 75): readonly Diagnostic[] =>
    found(plan('', lines, minutes), 'lines/added-over-minutes');

  it('are named where they don’t fit together, and without each they fit', () => {
    const told = long(both);
    expect(told.length).toBeGreaterThan(0);
    for (const { params } of told) expect(params['lines']).toBe(2);
    expect(long(['always:', TRUNK])).toEqual([]);
    expect(long(['always:', ARMS])).toEqual([]);
  });

  it('fit that day in the slot that is said to hold them', () => {
    for (const { params } of long(both)) {
      const days = long(both, Number(params['wanted'])).flatMap((one) => one.params['days']);
      const [first] = [params['days']].flat();
      expect(days).not.toContain(first);
    }
  });

  it('are told once with all their days, and by nothing else', () => {
    const days = long(both).flatMap(({ params }) => params['days']);
    expect(days.length).toBeGreaterThan(long(both).length);
    expect(new Set(days).size).toBe(days.length);
    expect(found(plan('', both), 'rule/slot-minutes')).toEqual([]);
  });

  it('are no news where the coach has answered for the minutes', () => {
    const waived = [
      ...both,
      'waivers: [{ rule: slot-minutes, from: 2027-01-04, until: 2027-04-25, because: the hall is ours }]',
    ];
    expect(long(waived)).toEqual([]);
    expect(found(plan('', waived), 'rule/slot-minutes')).toEqual([]);
    expect(found(plan('', waived), 'audit/waiver-unused')).toEqual([]);
  });
});
