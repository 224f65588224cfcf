// A plan whose athletes have other ids, as if it had been written with them: so that an edit is told of the plan and not of
// the name. Called by diff-builds.ts.

import type { Plan, Who } from '../plan/types.ts';

/** `renamed` gives new ids by old ones. Athletes stay in order of id. */
export function renamedPlan(plan: Plan, renamed: ReadonlyMap<string, string>): Plan {
  if (renamed.size === 0) return plan;
  const idOf = (id: string): string => renamed.get(id) ?? id;
  const meant = <T extends { readonly who: Who }>(items: readonly T[]): readonly T[] =>
    items.map((item) => {
      const { who } = item;
      return who.kind === 'everybody' ? item : { ...item, who: { ...who, athletes: who.athletes.map(idOf) } };
    });
  const rows = <T extends { readonly athlete: string }>(all: readonly T[]): readonly T[] =>
    all.map((row) => ({ ...row, athlete: idOf(row.athlete) }));
  return {
    ...plan,
    athletes: plan.athletes
      .map((athlete) => ({ ...athlete, id: idOf(athlete.id) }))
      .toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    slots: meant(plan.slots),
    competitions: meant(plan.competitions),
    closures: meant(plan.closures),
    practice: meant(plan.practice),
    tests: meant(plan.tests),
    ruleChanges: meant(plan.ruleChanges),
    pins: meant(plan.pins),
    always: meant(plan.always),
    waivers: meant(plan.waivers),
    uses: meant(plan.uses),
    record: { done: rows(plan.record.done), tests: rows(plan.record.tests) },
  };
}
