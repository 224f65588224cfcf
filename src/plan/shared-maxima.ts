// Maxima that a squad gives its athletes. What somebody lifts is one person's: for the grown it is taken as it is written,
// and told; nobody young gets kilos by it. Called by resolve-athletes.ts.

import { idsInWords } from './ids-in-words.ts';
import { at } from '../language/authored.ts';
import { problem } from '../diagnostics/problem.ts';
import { getDefault } from '../library/rules.ts';
import { ageOn } from './athlete-facts.ts';
import type { Fields } from './resolve-fields.ts';
import type { Scope } from './scope.ts';
import type { LiftMax } from './types.ts';
import { groupsByKey } from '../util/grouped.ts';

export interface MaximaOfSquad {
  readonly squad: string;
  readonly athlete: string;
  /** Under the age of the rule of young lifters, so that they don't count. */
  readonly young: boolean;
}

/** Whether an athlete's maxima are those of the squad; undefined where there are none or they are the athlete's own. */
export function maximaOfSquad(
  scope: Scope,
  { squad, athlete }: { readonly squad: string | undefined; readonly athlete: string },
  own: Fields,
  fields: Fields,
): MaximaOfSquad | undefined {
  if (squad === undefined || own.lifts !== undefined || fields.lifts === undefined) return undefined;
  const age = fields.born === undefined ? undefined : ageOn({ born: fields.born }, scope.frame.from);
  return { squad, athlete, young: age !== undefined && age < getDefault('youth-load', 'under') };
}

/** A squad's fields, its maxima marked as nobody's in particular. */
export function withMaximaMarked(fields: Fields): Fields {
  if (fields.lifts === undefined) return fields;
  const lifts = [...fields.lifts].map(([id, max]): [string, LiftMax] => [id, { ...max, ofSquad: true }]);
  return { ...fields, lifts: new Map(lifts) };
}

/** Told once for each squad that gives maxima to somebody. */
export function noteSharedMaxima(scope: Scope, shared: readonly MaximaOfSquad[]): void {
  const bySquad = groupsByKey(shared, ({ squad }) => squad);
  for (const [squad, item] of scope.authored.squads) {
    const members = bySquad.get(squad);
    if (members === undefined) continue;
    const idsOf = (isYoung: boolean): string =>
      idsInWords(members.flatMap(({ athlete, young }) => (young === isYoung ? { id: athlete } : [])));
    const params = { squad, grown: idsOf(false), young: idsOf(true) };
    scope.report(problem('plan/maxima-of-squad', { ...at(item, 'lifts'), params }));
  }
}
