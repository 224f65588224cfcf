// An edit of the plan in the words of the plan: `competition County cup final: range 24 Apr 2027 → 1 May 2027`. What has
// no short form is named only. Rows of the record are counted, not told one by one.

import type { Edit, EditSection, FieldChange } from '../diff/types.ts';
import { dateWithYear } from './calendar-words.ts';
import { counted } from './quantities.ts';
import { GRAMS_A_KILO } from '../util/units.ts';

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
  /** More than one for rows of the record alone. */
  readonly edits: readonly Edit[];
}

/** A note for each edit; rows of one record are one note. */
export function editNotes(edits: readonly Edit[]): readonly EditNote[] {
  const rows = (section: EditSection): readonly Edit[] => edits.filter((edit) => edit.section === section);
  const records = [rows('done'), rows('tested')].filter((of) => of.length > 0);
  const others = edits.filter(({ section }) => section !== 'done' && section !== 'tested');
  return [
    ...others.map((edit) => ({ words: editWords(edit), name: nameWords(edit), edits: [edit] })),
    ...records.map((of) => ({ words: recordWords(of), name: SECTIONS[of[0]?.section ?? 'done'], edits: of })),
  ];
}

function recordWords(edits: readonly Edit[]): string {
  const count = (what: Edit['what']): readonly string[] => {
    const many = edits.filter((edit) => edit.what === what).length;
    return many === 0 ? [] : [`${counted(many, 'row')} ${what}`];
  };
  const section = edits[0]?.section ?? 'done';
  return `${SECTIONS[section]}: ${[...count('added'), ...count('changed'), ...count('removed')].join(', ')}`;
}

const nameWords = ({ section, name }: Edit): string =>
  [SECTIONS[section], name].filter((part) => part !== '').join(' ');

function editWords(edit: Edit): string {
  const { what, fields } = edit;
  const title = nameWords(edit);
  return what === 'changed' ? `${title}: ${fields.map(fieldWords).join('; ')}` : `${title} ${what}`;
}

function fieldWords({ name, before, after }: FieldChange): string {
  const was = valueWords(name, before);
  const is = valueWords(name, after);
  const title = titleOf(name);
  if (was !== undefined && is !== undefined) return `${title} ${was} → ${is}`;
  const keys = changedKeys(before, after);
  return keys === undefined ? title : `${title} (${keys.map(titleOf).join(', ')})`;
}

/** `contacts-a-week` of `contactsAWeek`: as the plan writes it, without what only we need to know of the unit. */
const titleOf = (name: string): string =>
  name.replace(/(Grams|Cm|Seconds)$/u, '').replaceAll(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);

const DAYS: ReadonlySet<string> = new Set(['from', 'until', 'day', 'on', 'since', 'starts', 'ends']);

/** Undefined where there is no short form. */
function valueWords(name: string, value: unknown): string | undefined {
  if (value === undefined) return 'none';
  if (typeof value === 'number') {
    if (DAYS.has(name)) return dateWithYear(value);
    return name.endsWith('Grams') ? `${value / GRAMS_A_KILO} kg` : String(value);
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
