// Weeks written by hand: what they ask for is what the athlete gets used to, unless they rise so far that they aren't
// written at all. The contacts a session are those of a printed six-week programme, cut to four weeks (Miller 2006, J
// Sports Sci Med 5:459–465, from memory: 90, 120, 120, 140).

import { describe, expect, it } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import { watchWishes } from '../../../src/idle-wishes.ts';
import { day } from '../date.ts';
import { planOf } from '../plan/loaded.ts';

const session = (contacts: number): string => `[{ drill: pogo, sets: ${contacts / 10}, reps: 10 }]`;

function compiled(more = '') {
  const weeks = [90, 120, 120, 140].map(
    (contacts, index) => `    - { week: ${index + 1}, monday: ${session(contacts)}, thursday: ${session(contacts)} }`,
  );
  return compiledFrom(weeks, more);
}

function compiledFrom(weeks: readonly string[], more: string) {
  const [built] = [...seasonFrom(weeks, more).athletes];
  if (built === undefined) throw new Error('nobody was built');
  return built;
}

function seasonFrom(weeks: readonly string[], more: string, ends = '2027-01-31') {
  return compilePlan(
    planOf(`footfall: 1
season: { title: Agility, starts: 2027-01-04, ends: ${ends} }
places: { hall: { surface: wood } }
slots: [{ day: monday, minutes: 120, place: hall }, { day: thursday, minutes: 120, place: hall }]
athletes: { mira: { level: advanced, now: { contacts-a-session: 90, sessions-a-week: 2 } } }
programmes:
  agility:
${weeks.join('\n')}
use: [{ programme: agility, from: 2027-01-04 }]
${more}`),
  );
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

  describe('that are barred for what is in them', () => {
    const block = (first: string, more = '') =>
      compiledFrom(
        [
          `    - { week: 1, monday: ${first}, thursday: ${session(80)} }`,
          `    - { week: 2, monday: ${session(110)}, thursday: ${session(100)} }`,
        ],
        more,
      );
    const adapted = ({ weeks }: ReturnType<typeof compiled>): readonly number[] => weeks.map((week) => week.adapted);
    const codes = ({ diagnostics }: ReturnType<typeof compiled>): readonly string[] =>
      diagnostics.filter(({ severity }) => severity === 'error').map(({ code }) => code);

    it('raise nothing: a drill that no gate opens', () => {
      const barred = block('[{ drill: pogo, sets: 9, reps: 10 }, { drill: drop-jump-60, sets: 4, reps: 5 }]');
      expect(new Set(codes(barred))).toEqual(new Set(['rule/drop-clearance', 'rule/drop-strength']));
      expect([...barred.blocked]).toEqual([1]);
      expect(barred.weeks.slice(0, 2).map(({ contacts }) => contacts)).toEqual([190, 210]);
      expect(adapted(barred).slice(0, 2)).toEqual([180, 210]);
      expect(barred.weeks.slice(0, 2).map(({ unwritten = false }) => unwritten)).toEqual([true, false]);
    });

    it('raise nothing: a session over its ceiling, unless the coach answers for it', () => {
      const over = '[{ drill: pogo, sets: 15, reps: 10 }]';
      const barred = block(over);
      expect(codes(barred)).toEqual(['rule/session-ceiling']);
      expect(barred.weeks[0]?.contacts).toBe(230);
      expect(adapted(barred).slice(0, 2)).toEqual([180, 210]);
      expect(barred.weeks[0]?.reasons.find(({ about }) => about === 'adapted')?.by).toBe('unwritten');
      const waived = block(
        over,
        'waivers: [{ rule: session-ceiling, from: 2027-01-04, until: 2027-01-10, because: as printed }]',
      );
      expect(codes(waived)).toEqual([]);
      expect(adapted(waived).slice(0, 2)).toEqual([230, 216]);
    });
  });

  it('say where their contacts come from', () => {
    expect(compiled().weeks.map(({ boundBy }) => boundBy)).toEqual(Array.from({ length: 4 }, () => 'programme'));
  });

  it('that are not written hide no pin that changes nothing', () => {
    const season = seasonFrom(
      [
        `    - { week: 1, monday: [{ drill: pogo, sets: 9, reps: 10 }, { drill: drop-jump-60, sets: 4, reps: 5 }], thursday: ${session(80)} }`,
        `    - { week: 2, monday: ${session(80)}, thursday: ${session(100)} }`,
      ],
      'pins: [{ week: 2027-01-25, leave-out: [power-clean], because: low ceiling }]',
      '2027-03-28',
    );
    const wishes = watchWishes(season);
    const [built] = [...season.athletes];
    if (built === undefined) throw new Error('nobody was built');
    wishes.pass(built);
    expect([...built.blocked]).toContain(1);
    expect(wishes.idle(built.diagnostics).map(({ code }) => code)).toContain('schedule/pin-idle');
  });

  it('have no session after the last peak where no day is open to jumps, and say so', () => {
    const plan = planOf(`footfall: 1
season: { title: Late peak, starts: 2027-01-04, ends: 2027-02-28 }
places: { hall: { surface: wood } }
slots: [{ day: monday, minutes: 90, place: hall }]
athletes: { mira: { level: advanced, now: { contacts-a-session: 90, sessions-a-week: 1 } } }
competitions: [{ name: Cup, date: 2027-01-10, prepare: peak }]
programmes: { agility: [{ week: 1, monday: ${session(80)} }, { week: 2, monday: ${session(80)} }] }
use: [{ programme: agility, from: 2027-01-04 }]`);
    const [built] = [...compilePlan(plan).athletes];
    const after = built?.weeks[1];
    expect(after).toMatchObject({ kind: 'transition', contacts: 0 });
    expect(after?.sessions.filter(({ contacts }) => contacts > 0)).toEqual([]);
    const told = built?.diagnostics.filter(({ code }) => code === 'schedule/programme-day-closed') ?? [];
    expect(told.map(({ week }) => week)).toContain(after?.starts);
  });

  it('are told once of a long absence, with the first and the last of them, until it is over', () => {
    const weeks = [1, 2, 3, 4, 5].map((week) => `{ week: ${week}, monday: ${session(40)}, thursday: ${session(40)} }`);
    const plan = planOf(`footfall: 1
season: { title: Away, starts: 2027-01-04, ends: 2027-02-28 }
places: { hall: { surface: wood } }
slots: [{ day: monday, minutes: 90, place: hall }, { day: thursday, minutes: 90, place: hall }]
athletes:
  mira:
    level: advanced
    now: { contacts-a-session: 90, sessions-a-week: 2 }
    away: [{ from: 2027-01-11, until: 2027-01-31, because: ill, trained: none }]
competitions: [{ name: Cup, date: 2027-02-27, prepare: through }]
programmes: { agility: [${weeks.join(', ')}] }
use: [{ programme: agility, from: 2027-01-04 }]`);
    const told = (asOf?: string) =>
      [...compilePlan(plan, asOf === undefined ? {} : { asOf: day(asOf) }).athletes]
        .flatMap(({ diagnostics }) => diagnostics)
        .filter(({ code }) => code === 'schedule/programme-day-closed')
        .map(({ message }) => message);
    const words =
      "agility has 6 sessions between monday 2027-01-11 and thursday 2027-01-28 that mira won't have: the athlete is away";
    expect(told()).toEqual([words]);
    expect(told('2027-01-25')).toEqual([words]);
    expect(told('2027-02-01')).toEqual([]);
  });
});
