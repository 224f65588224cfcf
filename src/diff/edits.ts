// Two plans → what was edited between them. Items are matched by what they are about, so that a file that was split, put
// in another order or formatted anew has no edits. Called by diff-builds.ts.

import type { DayRange, Plan } from '../plan/types.ts';
import { plainOf, plainText } from './plain.ts';
import { planItems } from './plan-items.ts';
import type { PlanItem } from './plan-items.ts';
import type { Edit, FieldChange } from './types.ts';

/** In the order of the new plan, what was removed behind. `renamed` gives the new id of an athlete by the old one. */
export function diffPlans(before: Plan, after: Plan, renamed: ReadonlyMap<string, string>): readonly Edit[] {
  const old = byKey(planItems(before).map((item) => withNewId(item, renamed)));
  const added: PlanItem[] = [];
  const edits: Edit[] = [];
  for (const [key, fresh] of byKey(planItems(after))) {
    const { were, are } = unequal(old.get(key) ?? [], fresh);
    old.delete(key);
    are.forEach((item, index) => {
      const was = were[index];
      if (was === undefined) added.push(item);
      else edits.push(...changed(was, item));
    });
    edits.push(...were.slice(are.length).map((item) => whole('removed', item)));
  }
  const removed = [...old.values()].flat().map((item) => whole('removed', item));
  return [...edits, ...added.map((item) => whole('added', item)), ...removed];
}

function withNewId(item: PlanItem, renamed: ReadonlyMap<string, string>): PlanItem {
  const key = item.section === 'athlete' ? renamed.get(item.key) : undefined;
  return key === undefined ? item : { ...item, key };
}

function byKey(items: readonly PlanItem[]): Map<string, readonly PlanItem[]> {
  const groups = new Map<string, PlanItem[]>();
  for (const item of items) {
    const key = `${item.section} ${item.key}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}

/** What is left on both sides when equal items are taken out. */
function unequal(
  before: readonly PlanItem[],
  after: readonly PlanItem[],
): { readonly were: readonly PlanItem[]; readonly are: readonly PlanItem[] } {
  const left = before.map((item) => ({ item, text: plainText(item.value) }));
  const are = after.filter((item) => {
    const text = plainText(item.value);
    const at = left.findIndex((one) => one.text === text);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  return { were: left.map(({ item }) => item), are };
}

function changed(was: PlanItem, item: PlanItem): readonly Edit[] {
  const fields = fieldChanges(was.value, item.value);
  if (fields.length === 0) return [];
  const range = spanning(was.range, item.range);
  return [{ ...whole('changed', item), fields, ...(range !== undefined && { range }) }];
}

function fieldChanges(before: object, after: object): readonly FieldChange[] {
  const old = Object(plainOf(before)) as Readonly<Record<string, unknown>>;
  const fresh = Object(plainOf(after)) as Readonly<Record<string, unknown>>;
  const names = [...new Set([...Object.keys(old), ...Object.keys(fresh)])];
  return names.flatMap((name) =>
    plainText(old[name]) === plainText(fresh[name]) ? [] : [{ name, before: old[name], after: fresh[name] }],
  );
}

/** From the first to the last day of either. */
function spanning(one: DayRange | undefined, other: DayRange | undefined): DayRange | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return { from: Math.min(one.from, other.from), until: Math.max(one.until, other.until) };
}

function whole(what: Edit['what'], { section, name, span, who, range }: PlanItem): Edit {
  return {
    section,
    what,
    name,
    fields: [],
    who,
    ...(span !== undefined && { span }),
    ...(range !== undefined && { range }),
  };
}
