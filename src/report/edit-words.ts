// An edit of the plan in the words of the plan: `competition County cup final: range 24 Apr 2027 → 1 May 2027`. What has
// no short form is named only. Rows of the record are counted, not told one by one.

import type { Edit, EditGroup, EditSection, FieldChange } from '../diff/types.ts';
import { dateWithYear } from './calendar-words.ts';
import { exactKilos, heightWords } from '../util/quantities.ts';
import type { Units } from '../util/quantities.ts';
import { GRAMS_A_POUND } from '../util/units.ts';
import { counted } from '../util/counted.ts';

const SECTIONS: Readonly<Record<EditSection, string>> = {
  season: 'the season',
  place: 'place',
  slot: 'slot',
  competition: 'competition',
  closure: 'closure',
  practice: 'practice on',
  test: 'test day:',
  athlete: 'athlete',
  rule: 'rule',
  pin: 'pin of',
  always: 'always:',
  waiver: 'waiver of',
  programme: 'programme',
  use: 'use of',
  drill: 'drill',
  lift: 'lift',
  done: 'record of training',
  tested: 'record of tests',
};

export interface EditNote {
  readonly words: string;
  /** Without what changed in it. */
  readonly name: string;
  readonly edits: EditGroup;
}

const RECORDS: ReadonlySet<EditSection> = new Set(['done', 'tested']);

/** A note for each group, masses and heights in the units of the plan. */
export function editNotes(groups: readonly EditGroup[], units: Units): readonly EditNote[] {
  return groups.flatMap((edits): readonly EditNote[] => {
    const [edit] = edits;
    if (edit === undefined) return [];
    if (RECORDS.has(edit.section)) return [{ words: recordWords(edits), name: SECTIONS[edit.section], edits }];
    const title = titleWords(edits);
    return [{ words: editWords(title, edit, units), name: title + partWords(edits, groups), edits }];
  });
}

/** More are counted. */
const MOST_NAMES = 3;

/** `competition County cup final`, `athletes Lin A., Saga W.`. */
function titleWords(edits: EditGroup): string {
  const [{ section, name } = { section: 'athlete' as const, name: '' }] = edits;
  if (edits.length === 1) return [SECTIONS[section], name].filter((part) => part !== '').join(' ');
  return edits.length > MOST_NAMES
    ? counted(edits.length, SECTIONS[section])
    : `${SECTIONS[section]}s ${edits.map((edit) => edit.name).join(', ')}`;
}

/** Which field it is, where several athletes have it or others of the same item are edited too: `: limits`. */
function partWords([edit, ...more]: EditGroup, groups: readonly EditGroup[]): string {
  const [field] = edit?.fields ?? [];
  if (edit?.part.field === undefined || field === undefined) return '';
  const isOther = ({ section, name, part }: Edit): boolean =>
    section === edit.section && name === edit.name && part.field !== edit.part.field;
  return more.length > 0 || groups.some((edits) => edits.some(isOther)) ? `: ${titleOf(field.name)}` : '';
}

function recordWords(edits: readonly Edit[]): string {
  const count = (what: Edit['what']): readonly string[] => {
    const many = edits.filter((edit) => edit.what === what).length;
    return many === 0 ? [] : [`${counted(many, 'row')} ${what}`];
  };
  const section = edits[0]?.section ?? 'done';
  return `${SECTIONS[section]}: ${[...count('added'), ...count('changed'), ...count('removed')].join(', ')}`;
}

function editWords(title: string, { what, fields }: Edit, units: Units): string {
  return what === 'changed'
    ? `${title}: ${fields.map((field) => fieldWords(field, units)).join('; ')}`
    : `${title} ${what}`;
}

function fieldWords({ name, before, after }: FieldChange, units: Units): string {
  const was = valueWords(name, before, units);
  const is = valueWords(name, after, units);
  const title = titleOf(name);
  if (was !== undefined && is !== undefined) return `${title} ${was} → ${is}`;
  const keys = changedKeys(before, after);
  return keys === undefined ? title : `${title} (${keys.map(titleOf).join(', ')})`;
}

/** `contacts-a-week` of `contactsAWeek`: as the plan writes it, without what only we need to know of the unit. */
const titleOf = (name: string): string =>
  name.replace(/(Grams|Cm|Seconds)$/u, '').replaceAll(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);

const DAYS: ReadonlySet<string> = new Set(['from', 'until', 'day', 'on', 'since', 'starts', 'ends']);

/** To the gram, as a smallest plate is told by it; in pounds to a hundredth. */
const exactMass = (grams: number, units: Units): string =>
  units === 'metric' ? `${exactKilos(grams)} kg` : `${Math.round((100 * grams) / GRAMS_A_POUND) / 100} lb`;

/** Undefined where there is no short form. */
function valueWords(name: string, value: unknown, units: Units): string | undefined {
  if (value === undefined) return 'none';
  if (typeof value === 'number') {
    if (DAYS.has(name)) return dateWithYear(value);
    if (name.endsWith('Cm')) return heightWords(value, units);
    return name.endsWith('Grams') ? exactMass(value, units) : String(value);
  }
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (name === 'effects' && Array.isArray(value)) return value.map(effectWords).join(', ');
  return name === 'range' ? rangeWords(value) : undefined;
}

/** What a pin does; the numbers of its lines are in the plan. */
function effectWords(effect: unknown): string {
  if (!isGroup(effect)) return '';
  const { kind, contactsAWeek, phase, weekKind } = effect;
  if (typeof contactsAWeek === 'number') return `${contactsAWeek} contacts`;
  return [kind, phase, weekKind].filter((part) => typeof part === 'string').join(' ');
}

function rangeWords(value: unknown): string | undefined {
  if (typeof value !== 'object' || value === null || !('from' in value) || !('until' in value)) return undefined;
  const { from, until } = value;
  if (typeof from !== 'number' || typeof until !== 'number') return undefined;
  return from === until ? dateWithYear(from) : `${dateWithYear(from)} to ${dateWithYear(until)}`;
}

/** The keys that differ between two groups of keys. */
function changedKeys(before: unknown, after: unknown): readonly string[] | undefined {
  if (!isGroup(before) || !isGroup(after)) return undefined;
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return keys.filter((key) => JSON.stringify(before[key]) !== JSON.stringify(after[key]));
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
