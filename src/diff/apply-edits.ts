// Two plans and some of the edits between them → the plan that has those edits and no others. What an edit names comes with
// it, as a line can't be written without what it names: a slot its place, a use its programme, a line its drill or lift.
// Called by trials.ts.

import { extendLibrary } from '../library/index.ts';
import type { Library } from '../library/index.ts';
import { DAYS_A_WEEK, startOfWeek } from '../util/days.ts';
import type { Athlete, DayRange, Plan, ProgrammeUse, Season, Slot } from '../plan/types.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';
import { inSeason } from './open-ranges.ts';
import { plainText } from './plain.ts';
import type { Edit, EditSection } from './types.ts';

interface Mix {
  readonly before: Plan;
  readonly after: Plan;
  readonly edits: readonly Edit[];
}

/** Undefined where it would be no plan: with a competition outside of its season. */
export function applyEdits(mix: Mix): Plan | undefined {
  const { before, after } = mix;
  const season = mixedSeason(mix);
  if (season === undefined) return undefined;
  const open = openedIn(mix, season);
  const places = byId(mix, 'place', (plan) => plan.places);
  const programmes = byId(mix, 'programme', (plan) => plan.programmes);
  const plan: Plan = {
    files: after.files,
    season,
    library: before.library,
    places,
    slots: open(listed(mix, 'slot', before.slots))
      .map((slot) => ({ ...slot, place: places.get(slot.place.id) ?? slot.place }))
      .toSorted(bySlot),
    competitions: listed(mix, 'competition', before.competitions).toSorted((a, b) => a.range.from - b.range.from),
    closures: open(listed(mix, 'closure', before.closures)),
    practice: open(listed(mix, 'practice', before.practice)),
    tests: listed(mix, 'test', before.tests),
    squads: new Map([...before.squads, ...after.squads]),
    athletes: mixedAthletes(mix).map((athlete) => ({ ...athlete, limits: open(athlete.limits) })),
    ruleChanges: open(listed(mix, 'rule', before.ruleChanges)),
    pins: open(listed(mix, 'pin', before.pins)),
    always: open(listed(mix, 'always', before.always)),
    waivers: open(listed(mix, 'waiver', before.waivers)),
    programmes,
    uses: listed(mix, 'use', before.uses).map((use) => withProgramme(use, programmes)),
    record: {
      done: rows(listed(mix, 'done', before.record.done)),
      tests: rows(listed(mix, 'tested', before.record.tests)),
    },
  };
  return { ...plan, library: mixedLibrary(mix, plan) };
}

const partsOf = ({ edits }: Mix, section: EditSection): readonly Edit['part'][] =>
  edits.filter((edit) => edit.section === section).map(({ part }) => part);

/** What was taken out is gone, what was changed stands where it stood, what came in is behind. */
function listed<T extends object>(mix: Mix, section: EditSection, before: readonly T[]): readonly T[] {
  const parts = partsOf(mix, section);
  if (parts.length === 0) return before;
  const instead = new Map(
    parts.flatMap(({ before: was, after: is }) => (was === undefined ? [] : [[was, is] as const])),
  );
  const come = parts.flatMap(({ before: was, after: is }) => (was === undefined && is !== undefined ? [is as T] : []));
  const kept = before.flatMap((item) => {
    if (!instead.has(item)) return [item];
    const is = instead.get(item);
    return is === undefined ? [] : [is as T];
  });
  return [...kept, ...come];
}

/** As a map by id, in the order of the old plan. */
function byId<T extends { readonly id: string }>(
  mix: Mix,
  section: EditSection,
  of: (plan: Plan) => ReadonlyMap<string, T>,
): ReadonlyMap<string, T> {
  return new Map(listed(mix, section, [...of(mix.before).values()]).map((item) => [item.id, item]));
}

const bySlot = (a: Slot, b: Slot): number => a.day - b.day || (a.at ?? 0) - (b.at ?? 0) || byCodeUnit(a.id, b.id);

const withProgramme = (use: ProgrammeUse, programmes: Plan['programmes']): ProgrammeUse => ({
  ...use,
  programme: programmes.get(use.programme.id) ?? use.programme,
});

const rows = <T extends { readonly day: number; readonly athlete: string }>(all: readonly T[]): readonly T[] =>
  all.toSorted((a, b) => a.day - b.day || byCodeUnit(a.athlete, b.athlete));

/** An object with one member as another has it, or without it where the other has none. */
function withField<T extends object>(base: T, from: object, fields: readonly string[]): T {
  const others = Object.entries(base).filter(([key]) => !fields.includes(key));
  const taken = Object.entries(from).filter(([key]) => fields.includes(key));
  return Object.fromEntries([...others, ...taken]) as T;
}

/** What is said besides a field when it is said. */
const TOGETHER: Readonly<Record<string, readonly string[]>> = {
  levels: ['levelOrigin'],
  ends: ['endsOrigin'],
  sport: ['directions', 'sportOrigin'],
};

const fieldsOf = (field: string): readonly string[] => [field, ...(TOGETHER[field] ?? [])];

function mixedAthletes(mix: Mix): readonly Athlete[] {
  const whole = { ...mix, edits: mix.edits.filter(({ part }) => part.field === undefined) };
  const fields = partsOf(mix, 'athlete').filter(({ field }) => field !== undefined);
  return listed(whole, 'athlete', mix.before.athletes)
    .map((athlete) =>
      fields
        .filter(({ before }) => before === athlete)
        .reduce((one, { after = one, field = '' }) => withField(one, after, fieldsOf(field)), athlete),
    )
    .toSorted((a, b) => (a.id < b.id ? -1 : 1));
}

function mixedSeason(mix: Mix): Season | undefined {
  const written = partsOf(mix, 'season').reduce(
    (one, { field = '' }) => withField(one, mix.after.season, fieldsOf(field)),
    mix.before.season,
  );
  const competitions = listed(mix, 'competition', mix.before.competitions);
  const last = Math.max(...competitions.map(({ range }) => range.until));
  const ends =
    written.endsOrigin.kind === 'written' ? written.ends : startOfWeek(last, written.weekStarts) + DAYS_A_WEEK - 1;
  const first = Math.min(...competitions.map(({ range }) => range.from));
  const isPlan = Number.isFinite(ends) && written.starts <= ends && !(first < written.starts) && !(last > ends);
  return isPlan ? { ...written, ends } : undefined;
}

type Open = <T extends { readonly range: DayRange }>(items: readonly T[]) => readonly T[];

/** Items that reach to the end of the season they stand in reach to the end of this one. */
function openedIn({ before, after, edits }: Mix, season: Season): Open {
  const come = new Set(edits.flatMap(({ part }) => limitsOf(part.after) ?? part.after ?? []));
  return (items) => items.map((item) => inSeason(item, come.has(item) ? after.season : before.season, season));
}

const limitsOf = (value: object | undefined): readonly object[] | undefined =>
  value !== undefined && 'limits' in value ? (value as Athlete).limits : undefined;

/** The old library with the drills and lifts that were edited, and those that the plan can't do without. */
function mixedLibrary(mix: Mix, plan: Plan): Library {
  const { before, after } = mix;
  if (before.library === after.library) return before.library;
  const drills = byId(mix, 'drill', ({ library }) => library.drills);
  const lifts = byId(mix, 'lift', ({ library }) => library.lifts);
  const said = plainText([plan.athletes, plan.pins, plan.always, [...plan.programmes.values()], plan.tests]);
  const needed = <T extends { readonly id: string }>(
    have: ReadonlyMap<string, T>,
    of: (library: Library) => ReadonlyMap<string, T>,
  ): readonly T[] =>
    [...of(after.library).values(), ...of(before.library).values()].filter(
      ({ id }) => !have.has(id) && said.includes(JSON.stringify(id)),
    );
  return extendLibrary(
    NOTHING,
    [...drills.values(), ...needed(drills, (library) => library.drills)],
    [...lifts.values(), ...needed(lifts, (library) => library.lifts)],
  );
}

const NOTHING: Library = { drills: new Map(), lifts: new Map(), families: new Map() };
