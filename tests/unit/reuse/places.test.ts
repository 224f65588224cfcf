// A squad that trains at places which differ: what its members do side by side at one of them may change with a save that
// leaves the other as it was, and only for who trains there.

import { describe, expect, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import { PHASES } from '../../../src/library/phases.ts';
import type { Athlete, Plan, TrainingPlace, Who } from '../../../src/plan/types.ts';
import { createSeasonMemory } from '../../../src/reuse/season-memory.ts';
import type { SeasonMemory } from '../../../src/reuse/season-memory.ts';
import { athlete, HALL, HERE, peak, plan, slot } from '../schedule/make-plan.ts';

/** High single-leg jumps aren't done on a floor that doesn't give, whoever is cleared for them. */
const YARD: TrainingPlace = { ...HALL, id: 'yard', surface: 'concrete' };
const only = (id: string): Who => ({ kind: 'some', squads: [], athletes: [id] });
const member = (id: string, change: Partial<Athlete> = {}): Athlete =>
  athlete('advanced', 90, {
    id,
    name: id,
    massGrams: 60_000,
    cleared: new Set(['drops', 'single-leg-high']),
    ...change,
  });

const OTHER: Partial<Athlete> = { levels: [{ is: 'intermediate', span: HERE }], cleared: new Set() };
const CLEARED: Partial<Athlete> = { ...OTHER, cleared: new Set(['single-leg-high']) };

/** `ann` and `bo` are alike but for the hall, where ann alone has a slot; `cy` shares a squad with one of them. */
const season = (withCy: 'ann' | 'bo', cy: Partial<Athlete>): Plan =>
  plan(
    { starts: '2027-01-04', ends: '2027-03-28' },
    {
      competitions: [peak('2027-03-27')],
      places: new Map([
        ['yard', YARD],
        ['hall', HALL],
      ]),
      slots: [slot(1, { place: YARD }), slot(3, { place: HALL, who: only('ann') }), slot(5, { place: YARD })],
      athletes: [
        member('ann', { squad: withCy === 'ann' ? 'x' : 'y' }),
        member('bo', { squad: withCy === 'bo' ? 'x' : 'y' }),
        member('cy', { squad: 'x', ...cy }),
      ],
    },
  );

type Weeks = readonly unknown[];

const cold = (one: Plan): readonly Weeks[] => [...compilePlan(one).athletes].map(({ weeks }) => weeks);

function kept(memory: SeasonMemory<Weeks>, one: Plan): readonly Weeks[] {
  const round = memory.open(compilePlan(one), ({ weeks }) => weeks);
  return one.athletes.map((each) => round.season(each).made);
}

/** The families that squad x does at a place, by phase. */
function familiesAt(place: TrainingPlace, one: Plan): readonly (readonly string[])[] {
  const { choice } = compilePlan(one).context.groups;
  return PHASES.map(({ id }) => choice.of({ squad: 'x' }, place, id).families);
}

describe('a clearance of one member', () => {
  const before = season('ann', OTHER);
  const after = season('ann', CLEARED);

  test('changes what a squad does in the hall, nothing in the yard, and the season of who trains in both', () => {
    expect(familiesAt(YARD, after)).toEqual(familiesAt(YARD, before));
    expect(familiesAt(HALL, after)).not.toEqual(familiesAt(HALL, before));
    expect(cold(after)[0]).not.toEqual(cold(before)[0]);
  });

  test.each([
    { name: 'at once', saves: [before, after] },
    {
      name: 'behind saves of a squad that stood alike and had nobody in the hall',
      saves: [season('bo', CLEARED), season('bo', OTHER), before, after],
    },
  ])('is seen by who trains there, $name', ({ saves }) => {
    const memory = createSeasonMemory<Weeks>();
    for (const one of saves) expect(kept(memory, one)).toEqual(cold(one));
  });

  test('leaves the season of who trains in the yard alone', () => {
    const together = (cy: Partial<Athlete>): Plan => ({
      ...before,
      athletes: ['ann', 'bo', 'cy', 'dee'].map((id) => member(id, { squad: 'x', ...(id > 'c' && cy) })),
    });
    const [earlier, later] = [together(OTHER), together(CLEARED)];
    expect(familiesAt(YARD, later)).toEqual(familiesAt(YARD, earlier));
    expect(familiesAt(HALL, later)).not.toEqual(familiesAt(HALL, earlier));
    const memory = createSeasonMemory<Weeks>();
    const [, bo] = kept(memory, earlier);
    const now = kept(memory, later);
    expect(now).toEqual(cold(later));
    expect(now[1]).toBe(bo);
  });
});
