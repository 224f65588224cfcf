// A plan that nothing is reported of, section by section, so that an example of the catalogue can take the place of one.

import type { Files } from '../../unit/read/memory-files.ts';

/** Texts of a plan file by the key at their left edge. */
export type Sections = Readonly<Record<string, string>>;

export const baseSections: Sections = {
  footfall: 'footfall: 1',
  season: 'season: { title: Spring, starts: 2027-01-04 }',
  places: `places:
  hall:
    surface: sprung floor
    kit: { boxes: [20 cm, 30 cm, 40 cm, 45 cm, 60 cm], hurdles: 8, mats: 4, racks: 4, bars: [20 kg, 20 kg, 20 kg, 20 kg], smallest-plate: 1.25 kg, dumbbells: 6, balance-pads: 4 }
  track: { surface: rubber track, kit: { hurdles: 6 } }
  gym: { kit: { racks: 2, bars: [20 kg, 20 kg], smallest-plate: 1.25 kg } }`,
  slots: `slots:
  - { day: tuesday, minutes: 75, place: hall }
  - { day: thursday, minutes: 75, place: hall }`,
  competitions: `competitions:
  - { name: League round, date: 2027-03-27, prepare: through, jumps: 0 }`,
  squads: `squads:
  seniors: { level: intermediate, now: { contacts-a-session: 80, sessions-a-week: 2 }, born: 2003 }
  juniors: { level: beginner, now: { contacts-a-session: 50, sessions-a-week: 2 }, born: 2003 }`,
  athletes: `athletes:
  mira: { squad: seniors, mass: 68 kg }
  ada: { squad: juniors, mass: 46 kg }`,
};

/** Ten weeks are quick to plan; some examples need the longer season they speak of. */
export const longSeason: Sections = {
  competitions: `competitions:
  - { name: League round, date: 2027-05-01, prepare: through, jumps: 0 }`,
};

/** What lies beside the entry file, read only where the plan names it. */
export const baseFiles: Files = {
  '/plan/squad/seniors.yaml': 'tests: [{ date: 2027-03-09, what: [countermovement-jump], contacts: 6 }]\n',
  '/plan/squad/roster.csv': 'id,squad\nkari,seniors\n',
  '/plan/drills.yaml': 'drills: {}\n',
};

/** What is around an example, then the example, since an open quote runs on; an empty text leaves its section out. */
export function planText(around: Sections, example: Sections): string {
  const { footfall = '', ...rest } = { ...around, ...example };
  const last = Object.keys(example);
  const keys = [...Object.keys(rest).filter((key) => !last.includes(key)), ...last];
  const texts = [footfall, ...keys.map((key) => rest[key] ?? '')];
  return `${texts.filter((text) => text !== '').join('\n')}\n`;
}

/** A text of a plan file as its sections, each from its key at the left edge to the next. */
export function sectionsOf(text: string): Sections {
  const sections = new Map<string, string>();
  let key = '';
  for (const line of text.split('\n')) {
    key = /^([a-z-]+):/u.exec(line)?.[1] ?? key;
    const before = sections.get(key);
    sections.set(key, before === undefined ? line : `${before}\n${line}`);
  }
  return Object.fromEntries(sections);
}
