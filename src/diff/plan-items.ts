// A plan as a flat list of what may be edited in it. Each item has a key by which it is found again in another version of
// the plan, whatever file or line it stands in. Called by edits.ts.

import { isoDate, WEEKDAY_NAMES } from '../util/days.ts';
import type { Athlete, DayRange, Pin, Plan, Slot, Who } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import { plainText } from './plain.ts';
import type { EditSection } from './types.ts';

export interface PlanItem {
  readonly section: EditSection;
  /** Unique for most; of several with one key the equal ones are matched first. */
  readonly key: string;
  readonly name: string;
  /** Its fields. */
  readonly value: object;
  /** As it stands in the plan. */
  readonly source: object;
  readonly span?: Span;
  readonly who: Who;
  readonly range?: DayRange;
}

const EVERYBODY: Who = { kind: 'everybody' };
const only = (...athletes: readonly string[]): Who => ({ kind: 'some', squads: [], athletes });

/** Every item of the plan, the record included, but for athletes of these ids. */
export function planItems(plan: Plan, leaveOut: ReadonlySet<string>): readonly PlanItem[] {
  const { ends, directions: _, ...season } = plan.season;
  // Where it isn't written it follows from the competitions, which are told themselves.
  const written = plan.season.endsOrigin.kind === 'written' ? { ...season, ends } : season;
  return [
    { section: 'season', key: '', name: '', value: written, source: plan.season, span: season.span, who: EVERYBODY },
    ...[...plan.places.values()].map((one) => named('place', one.id, one, one.span)),
    ...dated(plan),
    ...plan.athletes.filter(({ id }) => !leaveOut.has(id)).map(athleteItem),
    ...[...plan.programmes.values()].map((one) => named('programme', one.id, one, one.span)),
    ...plan.uses.map((one) => ({
      ...named('use', one.programme.id, { from: one.from, who: one.who }, one.span),
      source: one,
      who: one.who,
    })),
    ...[...plan.library.drills.values()].map((one) => ({ ...named('drill', one.id, one), name: one.name })),
    ...[...plan.library.lifts.values()].map((one) => ({ ...named('lift', one.id, one), name: one.name })),
    ...recorded(plan),
  ];
}

/** The id is the key; another one is told of the athlete. */
function athleteItem(athlete: Athlete): PlanItem {
  const { id, ...value } = athlete;
  return { section: 'athlete', key: id, name: athlete.name, value, source: athlete, span: athlete.span, who: only(id) };
}

function named(section: EditSection, id: string, value: object, span?: Span): PlanItem {
  return { section, key: id, name: id, value, source: value, who: EVERYBODY, ...(span !== undefined && { span }) };
}

interface Dated {
  readonly who: Who;
  readonly range: DayRange;
  readonly span: Span;
}

function dated(plan: Plan): readonly PlanItem[] {
  const item = (section: EditSection, name: string, value: Dated, source: object = value): PlanItem => {
    const { who, range, span } = value;
    const key = `${name} ${section === 'competition' ? '' : plainText(who)}`;
    return { section, key, name, value, source, span, who, range };
  };
  return [
    ...plan.slots.map((one) => item('slot', one.id, slotFields(one), one)),
    ...plan.competitions.map((one) => item('competition', one.name, one)),
    ...plan.closures.map((one) => item('closure', one.because, one)),
    ...plan.practice.map((one) => item('practice', WEEKDAY_NAMES[one.day], one)),
    ...plan.tests.map((one) =>
      item('test', one.what.join(', '), { ...one, range: { from: one.day, until: one.day } }, one),
    ),
    ...plan.ruleChanges.map((one) => item('rule', one.rule, one)),
    ...plan.pins.map((one) => item('pin', pinName(one), one)),
    ...plan.always.map((one) => item('always', one.because, one)),
    ...plan.waivers.map((one) => item('waiver', one.rule, one)),
  ];
}

/** A slot with its place by name: what is edited in the place is told once. */
function slotFields({ place, ...slot }: Slot): Dated {
  const fields = { ...slot, place: place.id };
  return fields;
}

const pinName = ({ effects }: Pin): string => effects.map(({ kind }) => kind).join(', ');

function recorded({ record }: Plan): readonly PlanItem[] {
  const item = (
    section: 'done' | 'tested',
    what: string,
    row: { day: number; athlete: string; span: Span },
  ): PlanItem => {
    const range = { from: row.day, until: row.day };
    return {
      section,
      key: `${isoDate(row.day)} ${row.athlete} ${what}`,
      name: what,
      value: row,
      source: row,
      span: row.span,
      who: only(row.athlete),
      range,
    };
  };
  return [
    ...record.done.map((row) => item('done', row.kind, row)),
    ...record.tests.map((row) => item('tested', `${row.test} ${row.trial}`, row)),
  ];
}
