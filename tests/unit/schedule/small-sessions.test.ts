// Weeks with very few contacts: they stand in fewer sessions rather than in tiny ones, and never with more contacts.

import { describe, expect, it, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import type { BuiltAthlete, BuiltWeek } from '../../../src/build/types.ts';
import type { Limit, Plan } from '../../../src/plan/types.ts';
import { splitWeek } from '../../../src/schedule/contacts/split.ts';
import { day } from '../date.ts';
import { athlete, EVERYBODY, HERE, peak, plan, slot } from './make-plan.ts';

const WHOLE = { from: day('2027-01-04'), until: day('2027-04-25') };

/** Three days a week, and at most so many contacts in each. */
function built(contactsAWeek: number, change: Partial<Plan> = {}): BuiltAthlete {
  const limits: readonly Limit[] = [{ range: WHOLE, avoid: [], contactsAWeek, because: 'x', span: HERE }];
  const planned = plan(
    { starts: '2027-01-04', ends: '2027-03-28' },
    {
      slots: [slot(0), slot(2), slot(4)],
      athletes: [athlete('advanced', 15, { limits })],
      competitions: [peak('2027-03-28')],
      pins: [
        { effects: [{ kind: 'phase', phase: 'power' }], range: WHOLE, who: EVERYBODY, because: 'three', span: HERE },
      ],
      ...change,
    },
  );
  const [found] = compilePlan(planned).athletes;
  if (found === undefined) throw new Error('nobody was built');
  return found;
}

const sizesOf = ({ sessions }: BuiltWeek): readonly number[] =>
  sessions.flatMap(({ contacts }) => (contacts > 0 ? [contacts] : []));

describe('a week of few contacts', () => {
  const { weeks, diagnostics } = built(30);
  const taper = weeks.filter(({ kind }) => kind === 'taper');

  it('has them in one session in a taper, where three quarters of the usual one are next to nothing', () => {
    expect(taper[0]?.contacts).toBe(15);
    expect(taper[0]?.possible).toBe(3);
    expect(taper.map(sizesOf).filter((sizes) => sizes.length > 0)).toEqual([[15], [10]]);
  });

  it('has as few sessions as need be', () => {
    const small = weeks.filter(({ contacts }) => contacts > 0 && contacts < 30).map(sizesOf);
    expect(small.length).toBeGreaterThan(2);
    expect(small.filter((sizes) => sizes.length > 1)).toEqual([]);
    expect(weeks.flatMap(sizesOf).filter((size) => size < 10)).toEqual([]);
  });

  it('breaks no rule of sessions by it', () => {
    expect(diagnostics.map(({ code }) => code)).not.toContain('rule/session-rise');
  });
});

test.each([
  { contacts: 15, ceiling: 10, possible: 3, sizes: [10, 5] },
  { contacts: 10, ceiling: 10, possible: 3, sizes: [10] },
  { contacts: 20, ceiling: 20, possible: 3, sizes: [20] },
  { contacts: 30, ceiling: 30, possible: 3, sizes: [15, 15] },
  { contacts: 60, ceiling: 100, possible: 3, sizes: [30, 30] },
])('$contacts contacts under a ceiling of $ceiling are $sizes', ({ contacts, ceiling, possible, sizes }) => {
  expect(splitWeek(contacts, ceiling, ceiling, possible)).toEqual(sizes);
});
