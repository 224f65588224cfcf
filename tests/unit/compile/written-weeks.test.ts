// Weeks written by hand: what they ask for is what the athlete gets used to, unless they rise so far that they aren't
// written at all. The contacts a session are those of a printed six-week programme, cut to four weeks (Miller 2006, J
// Sports Sci Med 5:459–465, from memory: 90, 120, 120, 140).

import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import { planOf } from '../plan/loaded.ts';

const session = (contacts: number): string => `[{ drill: pogo, sets: ${contacts / 10}, reps: 10 }]`;

function compiled(more = '') {
  const weeks = [90, 120, 120, 140].map(
    (contacts, index) => `    - { week: ${index + 1}, monday: ${session(contacts)}, thursday: ${session(contacts)} }`,
  );
  const plan = planOf(`footfall: 1
season: { title: Agility, starts: 2027-01-04, ends: 2027-01-31 }
places: { hall: { surface: wood } }
slots: [{ day: monday, minutes: 120, place: hall }, { day: thursday, minutes: 120, place: hall }]
athletes: { mira: { level: advanced, now: { contacts-a-session: 90, sessions-a-week: 2 } } }
programmes:
  agility:
${weeks.join('\n')}
use: [{ programme: agility, from: 2027-01-04 }]
${more}`);
  const [built] = [...compilePlan(plan).athletes];
  if (built === undefined) throw new Error('nobody was built');
  return built;
}

const rises = ({ diagnostics }: ReturnType<typeof compiled>): readonly string[] =>
  diagnostics.filter(({ rule }) => rule === 'weekly-rise').map(({ severity }) => severity);

describe('weeks written by hand', () => {
  it('raise what the athlete is used to by no week that is not written', () => {
    const built = compiled();
    expect(built.weeks.map(({ contacts }) => contacts)).toEqual([180, 240, 240, 280]);
    expect(built.weeks.map(({ adapted }) => adapted)).toEqual([180, 180, 180, 180]);
    expect([...built.blocked]).toEqual([2, 3, 4]);
    expect(rises(built)).toEqual(['error', 'error', 'error']);
    expect(built.diagnostics.map(({ code }) => code)).not.toContain('audit/adapted-volume');
  });

  it('count in full where the coach has answered for the rise', () => {
    const built = compiled(
      'waivers: [{ rule: weekly-rise, from: 2027-01-11, until: 2027-01-17, because: as printed }]',
    );
    expect(built.weeks.map(({ adapted }) => adapted)).toEqual([180, 240, 240, 280]);
    expect(rises(built)).toEqual(['warning']);
    expect(built.diagnostics.map(({ code }) => code)).not.toContain('audit/adapted-volume');
  });

  it('say where their contacts come from', () => {
    expect(compiled().weeks.map(({ boundBy }) => boundBy)).toEqual(Array.from({ length: 4 }, () => 'programme'));
  });
});
