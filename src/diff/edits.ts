// Two plans → what was edited between them. Items are matched by what they are about, so that a file that was split, put
// in another order or formatted anew has no edits. Athletes and the season are told field by field. Called by
// diff-builds.ts.

import { athleteLikeness, likenessOf } from '../plan/same-meaning.ts';
import type { DayRange, Plan } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import { changedSpan } from './changed-span.ts';
import { plainOf, plainText } from './plain.ts';
import { planItems } from './plan-items.ts';
import type { PlanItem } from './plan-items.ts';
import { openText } from './open-ranges.ts';
import type { Edit, EditGroup, EditSection, FieldChange } from './types.ts';
import { grouped, groupsByKey } from '../util/grouped.ts';

/**
 * In the order of the new plan, what was removed behind, the record last. An athlete has one id in both plans. What
 * reaches to the end of its season says the same of a season with another end.
 */
export function diffPlans(before: Plan, after: Plan): readonly EditGroup[] {
  const same: Same = (was, is) =>
    likenessOf(was, is) !== 'differs' ||
    plainText(was) === plainText(is) ||
    openText(was, before.season) === openText(is, after.season);
  const stands = unchangedAthletes(before, after);
  const old = byKey(planItems(before, stands));
  const added: PlanItem[] = [];
  const edits: Edit[] = [];
  for (const [key, fresh] of byKey(planItems(after, stands))) {
    const { were, are } = unequal(old.get(key) ?? [], fresh, same);
    old.delete(key);
    are.forEach((item, index) => {
      const was = were[index];
      if (was === undefined) added.push(item);
      else edits.push(...changed(was, item, same));
    });
    edits.push(...were.slice(are.length).map((item) => whole('removed', item)));
  }
  const removed = [...old.values()].flat().map((item) => whole('removed', item));
  return editGroups([...edits, ...added.map((item) => whole('added', item)), ...removed]);
}

/** Ids of those of whom both plans say the same: of a big squad nearly all, when a line was edited. */
function unchangedAthletes(before: Plan, after: Plan): ReadonlySet<string> {
  const were = new Map(before.athletes.map((athlete) => [athlete.id, athlete]));
  const unchanged = after.athletes.filter((athlete) => {
    const was = were.get(athlete.id);
    return was !== undefined && athleteLikeness(was, athlete) !== 'differs';
  });
  return new Set(unchanged.map(({ id }) => id));
}

/** Whether two values mean the same, each in its own plan. */
type Same = (was: unknown, is: unknown) => boolean;

const RECORDS: readonly EditSection[] = ['done', 'tested'];

/** Rows of one record together, and what one line says of several athletes. */
function editGroups(edits: readonly Edit[]): readonly EditGroup[] {
  const isRecord = ({ section }: Edit): boolean => RECORDS.includes(section);
  const sorted = [
    ...edits.filter((edit) => !isRecord(edit)),
    ...RECORDS.flatMap((name) => edits.filter(({ section }) => section === name)),
  ];
  const keyOf = (edit: Edit): unknown => (isRecord(edit) ? edit.section : (lineKey(edit) ?? edit));
  return grouped(sorted, keyOf);
}

function lineKey({ section, fields: [field], span }: Edit): string | undefined {
  if (section !== 'athlete' || field === undefined || span === undefined) return undefined;
  const { name, before, after } = field;
  return JSON.stringify([name, plainText(before), plainText(after), span]);
}

function byKey(items: readonly PlanItem[]): Map<string, readonly PlanItem[]> {
  return groupsByKey(items, ({ section, key }) => `${section} ${key}`);
}

/** What is left on both sides when equal items are taken out. */
function unequal(
  before: readonly PlanItem[],
  after: readonly PlanItem[],
  same: Same,
): { readonly were: readonly PlanItem[]; readonly are: readonly PlanItem[] } {
  const were = [...before];
  const are = after.filter((item) => {
    const at = were.findIndex(({ value }) => same(value, item.value));
    if (at >= 0) were.splice(at, 1);
    return at < 0;
  });
  return { were, are };
}

const BY_FIELD: ReadonlySet<EditSection> = new Set(['athlete', 'season']);

function changed(was: PlanItem, item: PlanItem, same: Same): readonly Edit[] {
  const fields = fieldChanges(was.value, item.value, same);
  if (fields.length === 0) return [];
  const range = spanning(was.range, item.range);
  const part = { before: was.source, after: item.source };
  const edit = { ...whole('changed', item), fields, part, ...(range !== undefined && { range }) };
  if (!BY_FIELD.has(item.section)) return [edit];
  return fields.map((field): Edit => {
    const span: Span | undefined = changedSpan(was.source, item.source, field.name) ?? item.span;
    const of = { ...edit, fields: [field], part: { ...part, field: field.name } };
    return span === undefined ? of : { ...of, span };
  });
}

function fieldChanges(before: object, after: object, same: Same): readonly FieldChange[] {
  const old = Object(before) as Readonly<Record<string, unknown>>;
  const fresh = Object(after) as Readonly<Record<string, unknown>>;
  const [was, is] = [plainFields(old), plainFields(fresh)];
  const names = [...new Set([...Object.keys(was), ...Object.keys(is)])];
  return names.flatMap((name) => (same(old[name], fresh[name]) ? [] : [{ name, before: was[name], after: is[name] }]));
}

const plainFields = (value: object): Readonly<Record<string, unknown>> =>
  Object(plainOf(value)) as Readonly<Record<string, unknown>>;

/** From the first to the last day of either. */
function spanning(one: DayRange | undefined, other: DayRange | undefined): DayRange | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return { from: Math.min(one.from, other.from), until: Math.max(one.until, other.until) };
}

function whole(what: Edit['what'], { section, name, span, who, range, source }: PlanItem): Edit {
  return {
    section,
    what,
    name,
    fields: [],
    who,
    part: what === 'added' ? { after: source } : { before: source },
    ...(span !== undefined && { span }),
    ...(range !== undefined && { range }),
  };
}
