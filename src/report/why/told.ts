// One thing told: words, the places in the plan behind it, and for what is assumed the mark of its evidence.

import type { Reason } from '../../build/types.ts';
import { findRule } from '../../library/rules.ts';
import type { Mark } from '../../library/types.ts';
import type { Span } from '../../source/types.ts';
import type { Places } from '../places.ts';

export interface Told {
  /** What it is about: `phase`, `kind`, `used to`, `wants` … */
  readonly about: string;
  readonly words: string;
  /** `season.yaml:58`. */
  readonly places: readonly string[];
  /** How well what isn't written is known. */
  readonly mark?: Mark;
  /** The rule it stands on. */
  readonly rule?: string;
}

export type Params = Reason['params'];

/** A parameter as a number; 0 where there is none. */
export const numberOf = (params: Params, name: string): number => Number(params[name] ?? 0);

/** Each place once, in the order given: `season.yaml:58`. */
export const placesOf = (spans: readonly Span[], places: Places): readonly string[] => [
  ...new Set(spans.map((span) => places.words(span))),
];

/** The rule of an id with the mark its numbers have in the library; nothing for an id that is no rule's. */
export function ruleMark(id: string): Pick<Told, 'rule' | 'mark'> {
  const rule = findRule(id);
  if (rule === undefined) return {};
  return { rule: rule.id, ...(rule.mark !== null && { mark: rule.mark }) };
}
