// What lies behind an athlete and still holds: what is recorded, what hurts, what nobody has recorded. Laid on the terms
// of the weeks by season-terms.ts.

import type { Day } from '../../util/days.ts';
import type { PainfulWeek } from '../recorded-weeks.ts';
import type { RecordedWeek } from '../types.ts';
import type { WeekTerms } from './terms.ts';

export interface Past {
  /** One for each week that is over. */
  readonly recorded: readonly RecordedWeek[];
  /** By week. */
  readonly painful: ReadonlyMap<number, PainfulWeek>;
  /** The last weeks that are over, where nothing is recorded of them and somebody has to be asked. */
  readonly overdue: readonly Day[];
}

/** Pain stops or holds its weeks; the first week ahead doesn't rise while the last ones aren't recorded. */
export function withPast(terms: readonly WeekTerms[], { recorded, painful, overdue }: Past): readonly WeekTerms[] {
  if (painful.size === 0 && overdue.length === 0) return terms;
  return terms.map((week, index) => {
    const pain = painful.get(index);
    if (pain?.stops === true) return stopped(week, pain);
    if (pain !== undefined) return { ...week, held: { by: 'pain-hold', spans: [pain.span] } };
    return index === recorded.length && overdue.length > 0 ? { ...week, held: { by: 'record', spans: [] } } : week;
  });
}

/** Not even what the coach fixed stands before the jumping is allowed again. */
function stopped(terms: WeekTerms, { span }: PainfulWeek): WeekTerms {
  const { fixed: _, fixedSessions: __, ...week } = terms;
  return { ...week, weekCeilings: [...week.weekCeilings, { by: 'pain-hold', most: 0, spans: [span] }] };
}
