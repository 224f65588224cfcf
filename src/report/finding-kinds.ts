// What was found, a line for each kind: how often, of whom and in which weeks. Said after a build, on the index page and
// below a long list, where one cause in the calendar is found of a whole squad or week after week.

import { findEntry } from '../diagnostics/catalogue.ts';
import type { Severity } from '../diagnostics/entry.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { counted } from '../util/counted.ts';
import type { Day } from '../util/days.ts';
import { inWords } from '../util/in-words.ts';
import { dateWords } from './calendar-words.ts';

export interface FindingKinds {
  readonly add: (diagnostic: Pick<Diagnostic, 'code' | 'severity' | 'athlete' | 'week'>) => void;
  /** Those of the severity, the most frequent first: `12 x sessions too near each other: 4 athletes, week of 1 Mar [code]`. */
  readonly lines: (severity: Severity) => readonly string[];
}

interface Kind {
  readonly code: string;
  readonly severity: Severity;
  count: number;
  readonly athletes: Set<string>;
  readonly weeks: Set<Day>;
}

/** Keeps numbers, ids and days of what it is given, and none of the findings. */
export function createFindingKinds(): FindingKinds {
  const kinds = new Map<string, Kind>();
  return {
    add: ({ code, severity, athlete, week }) => {
      const kind = kinds.get(code) ?? { code, severity, count: 0, athletes: new Set(), weeks: new Set() };
      kinds.set(code, kind);
      kind.count += 1;
      if (athlete !== undefined) kind.athletes.add(athlete);
      if (week !== undefined) kind.weeks.add(week);
    },
    lines: (severity) =>
      [...kinds.values()]
        .filter((kind) => kind.severity === severity)
        .toSorted((a, b) => b.count - a.count || (a.code < b.code ? -1 : 1))
        .map(kindLine),
  };
}

function kindLine({ code, count, athletes, weeks }: Kind): string {
  const where = [...whoWords(athletes), ...whenWords([...weeks].toSorted((a, b) => a - b))];
  const which = where.length === 0 ? '' : `: ${where.join(', ')}`;
  return `${count} x ${findEntry(code)?.summary ?? code}${which} [${code}]`;
}

/** So many are named one by one. */
const MOST_NAMED = 3;

function whoWords(athletes: ReadonlySet<string>): readonly string[] {
  if (athletes.size === 0) return [];
  return [athletes.size > MOST_NAMED ? counted(athletes.size, 'athlete') : inWords([...athletes], 'and')];
}

function whenWords(weeks: readonly Day[]): readonly string[] {
  const [first] = weeks;
  const last = weeks.at(-1);
  if (first === undefined || last === undefined) return [];
  if (weeks.length > MOST_NAMED)
    return [`${weeks.length} weeks from ${dateWords(first)} to that of ${dateWords(last)}`];
  return [`${weeks.length === 1 ? 'week' : 'weeks'} of ${inWords(weeks.map(dateWords), 'and')}`];
}
