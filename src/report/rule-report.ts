// The rules as a coach asks for them: what each says, its numbers with their mark, the evidence behind it, and what a
// plan changes or waives. The same as a table, one row for each number, for scripts.

import { RULES } from '../library/rules.ts';
import { getSource, MARK_WORDS } from '../library/sources.ts';
import type { Mark, Rule, RuleParameter, Source, Unit } from '../library/types.ts';
import type { DayRange, Plan, RuleChange, Waiver, Who } from '../plan/types.ts';
import { isoDate } from '../util/days.ts';
import { heightWords, kiloWords } from '../util/quantities.ts';
import type { Units } from '../util/quantities.ts';
import { createPlaces } from './places.ts';
import type { Places } from './places.ts';
import { columns, rowOf } from './table.ts';
import type { Cells, Column, Table } from './table.ts';

/** What stands behind a number of a unit, one and several; what a name tells already has nothing. */
const UNIT_WORDS: Readonly<Record<Unit, readonly [one: string, many: string]>> = {
  percent: [' %', ' %'],
  contacts: ['', ''],
  jumps: ['', ''],
  days: [' day', ' days'],
  weeks: [' week', ' weeks'],
  sessions: ['', ''],
  cm: [' cm', ' cm'],
  kg: [' kg', ' kg'],
  seconds: [' s', ' s'],
  years: [' years', ' years'],
  times: [' time', ' times'],
  points: [' point', ' points'],
  drops: ['', ''],
  drills: ['', ''],
  reps: [' rep', ' reps'],
  pain: [' of 10', ' of 10'],
};

/** `10 %`, `1 day`, `30 cm`, `120`; heights and masses as the rules have them, unless other units are asked for. */
export function amountWords(value: number, unit: Unit, units: Units = 'metric'): string {
  if (unit === 'cm') return heightWords(value, units);
  if (unit === 'kg') return kiloWords(value, units);
  const [one, many] = UNIT_WORDS[unit];
  return `${value}${value === 1 ? one : many}`;
}

/** `most 10 %, contacts 10`; a number that waits for a plan reads `not set`. */
export function numbersWords({ parameters }: Rule): string {
  return parameters
    .map(({ name, value, unit }) => {
      if (value === undefined) return `${name} not set`;
      return `${name} ${name === unit ? value : amountWords(value, unit)}`;
    })
    .join(', ');
}

export interface ReportedChange {
  /** `most 8 %`, or `waived`. */
  readonly what: string;
  /** The numbers that are changed; none for a waiver. */
  readonly values: readonly ChangedValue[];
  readonly who: string;
  readonly range: DayRange;
  readonly because: string;
  /** `season.yaml:58`. */
  readonly place: string;
}

interface ChangedValue {
  readonly name: string;
  readonly value: number;
  readonly unit: Unit;
}

export interface ReportedRule {
  readonly rule: Rule;
  readonly sources: readonly Source[];
  /** Of the mark, in words; absent where a rule stands on no number. */
  readonly markWords?: string;
  readonly changes: readonly ReportedChange[];
}

/** The rules in the order of the table; with what the plan does to them, if one is given. */
export function reportRules(plan: Plan | undefined): readonly ReportedRule[] {
  const places = createPlaces(plan?.files ?? []);
  return RULES.map((rule) => ({
    rule,
    sources: rule.basis.map(getSource),
    ...(rule.mark !== null && { markWords: MARK_WORDS[rule.mark] }),
    changes: plan === undefined ? [] : changesOf(rule, plan, places),
  }));
}

/** What every mark means. */
export const markLegend = (): string =>
  (Object.keys(MARK_WORDS) as Mark[]).map((mark) => `${mark} ${MARK_WORDS[mark]}`).join('; ');

function changesOf(rule: Rule, plan: Plan, places: Places): readonly ReportedChange[] {
  const common = ({ who, range, because, span }: RuleChange | Waiver): Omit<ReportedChange, 'what' | 'values'> => ({
    who: whoWords(who),
    range,
    because,
    place: places.words(span),
  });
  const changes = plan.ruleChanges
    .filter((change) => change.rule === rule.id)
    .map((change) => {
      const values = changedValues(change, rule.parameters);
      const what = values.map(({ name, value, unit }) => `${name} ${amountWords(value, unit)}`).join(', ');
      return { what, values, ...common(change) };
    });
  const waivers = plan.waivers
    .filter((waiver) => waiver.rule === rule.id)
    .map((waiver) => ({ what: waivedWords(waiver), values: [], ...common(waiver) }));
  return [...changes, ...waivers];
}

const waivedWords = ({ decided }: Waiver): string => (decided === undefined ? 'waived' : `waived by ${decided}`);

function changedValues({ parameters }: RuleChange, known: readonly RuleParameter[]): readonly ChangedValue[] {
  return known.flatMap(({ name, unit }) => {
    const value = parameters.get(name);
    return value === undefined ? [] : { name, value, unit };
  });
}

function whoWords(who: Who): string {
  return who.kind === 'everybody' ? 'everybody' : [...who.squads, ...who.athletes].join(', ');
}

const COLUMNS: readonly Column[] = [
  ...columns('word', 'rule', 'severity', 'waivable', 'mark', 'basis', 'set_by', 'parameter'),
  ...columns('integer', 'value'),
  ...columns('word', 'unit'),
  ...columns('text', 'who'),
  ...columns('date', 'from', 'until'),
  ...columns('text', 'because', 'place'),
];

/** One row for each number of each rule, and one for each change and waiver of the plan. */
export function rulesTable(rules: readonly ReportedRule[]): Table {
  const rows = rules.flatMap(({ rule, changes }) =>
    [...defaultCells(rule), ...changes.flatMap(changeCells)].map((cells) =>
      rowOf(COLUMNS, { ...ruleCells(rule), ...cells }),
    ),
  );
  return { name: 'rules', columns: COLUMNS, rows };
}

function ruleCells({ id, severity, waivable, mark, basis }: Rule): Cells {
  return { rule: id, severity, waivable: waivable ? 'yes' : 'no', mark: mark ?? undefined, basis: basis.join(' ') };
}

function defaultCells({ parameters }: Rule): readonly Cells[] {
  if (parameters.length === 0) return [{ set_by: 'default' }];
  return parameters.map(({ name, value, unit }) => ({ set_by: 'default', parameter: name, value, unit }));
}

function changeCells({ values, who, range, because, place }: ReportedChange): readonly Cells[] {
  const common = { who, from: isoDate(range.from), until: isoDate(range.until), because, place };
  if (values.length === 0) return [{ set_by: 'waiver', ...common }];
  return values.map(({ name, value, unit }) => ({ set_by: 'plan', parameter: name, value, unit, ...common }));
}
