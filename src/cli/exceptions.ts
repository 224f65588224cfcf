// What was not done as written, as it is typed after `footfall done`: `mira=40`, `mira.pain=3`, `juniors=0`. Names are
// bound to the plan here; whether a value may stand in the record is judged with the row it becomes.

import type { Athlete, Plan } from '../plan/types.ts';
import { appliesTo } from '../plan/applies.ts';
import { didYouMean } from '../util/did-you-mean.ts';

const FIELDS = ['contacts', 'minutes', 'effort', 'pain', 'note'] as const;
export type Field = (typeof FIELDS)[number];

/** What is said of one athlete, as it was typed. */
export type Exceptions = Partial<Record<Field, string>>;

const EVERYBODY = 'everybody';

const EXCEPTION = /^([^.=]+)(?:\.([^=]+))?=(.*\S.*)$/su;

interface Typed {
  readonly who: string;
  readonly field: Field;
  readonly value: string;
}

export type Excepted =
  | {
      readonly ok: true;
      readonly of: ReadonlyMap<string, Exceptions>;
      /** Athletes named themselves, not with their squad. */
      readonly named: ReadonlySet<string>;
    }
  | { readonly ok: false; readonly problem: string };

/** By athlete. What is said of an athlete comes before what is said of the squad, and that before everybody. */
export function readExceptions(typed: readonly string[], plan: Plan): Excepted {
  const athletes = new Set(plan.athletes.map(({ id }) => id));
  const known = new Set([...athletes, ...plan.squads.keys(), EVERYBODY]);
  const read: Typed[] = [];
  for (const text of typed) {
    const one = readOne(text, known);
    if (typeof one === 'string') return { ok: false, problem: one };
    if (read.some(({ who, field }) => who === one.who && field === one.field))
      return { ok: false, problem: `${one.who}: ${one.field} is given twice` };
    read.push(one);
  }
  const rank = ({ who }: Typed): number => (athletes.has(who) ? 2 : who === EVERYBODY ? 0 : 1);
  const of = new Map<string, Exceptions>();
  for (const one of read.toSorted((a, b) => rank(a) - rank(b) || contactsFirst(a, b)))
    for (const { id } of meant(one.who, athletes, plan)) of.set(id, withOne(of.get(id), one));
  return { ok: true, of, named: new Set(read.flatMap(({ who }) => (athletes.has(who) ? who : []))) };
}

const contactsFirst = (a: Typed, b: Typed): number => Number(b.field === 'contacts') - Number(a.field === 'contacts');

/** Whoever wasn't there felt none of the effort that was said of a larger circle. */
function withOne(before: Exceptions = {}, { field, value }: Typed): Exceptions {
  const { effort, ...others } = before;
  const wasAway = field === 'contacts' && Number(value) === 0;
  return { ...others, ...(effort !== undefined && !wasAway && { effort }), [field]: value };
}

function meant(who: string, athletes: ReadonlySet<string>, plan: Plan): readonly Athlete[] {
  if (athletes.has(who)) return plan.athletes.filter(({ id }) => id === who);
  if (who === EVERYBODY && !plan.squads.has(who)) return plan.athletes;
  return plan.athletes.filter((athlete) => appliesTo({ kind: 'some', squads: [who], athletes: [] }, athlete));
}

function readOne(text: string, known: ReadonlySet<string>): Typed | string {
  const [, who = '', name = 'contacts', value = ''] = EXCEPTION.exec(text) ?? [];
  if (who === '') return `"${text}" is no exception: write mira=40, mira=0 or mira.pain=3`;
  const field = FIELDS.find((one) => one === name);
  if (!known.has(who)) return `there is no athlete or squad "${who}"${hint(who, known)}`;
  if (field === undefined) return `"${name}" is none of ${FIELDS.join(', ')}${hint(name, FIELDS)}`;
  return { who, field, value: value.trim() };
}

function hint(word: string, known: Iterable<string>): string {
  const found = didYouMean(word, known);
  return found === undefined ? '' : `; ${found}`;
}
