// test-method: a trend holds one method and one use of the arms. J2, J14 (P). It reads the record, not the plan, and so
// belongs to no week: it is put at the season's first.

import type { TestRow } from '../../plan/types.ts';
import { isoDate } from '../../util/days.ts';
import { auditRule } from '../rule.ts';

export const testMethod = auditRule(
  'test-method',
  (season, find) => {
    const week = season.weeks[0];
    if (week === undefined) return;
    const first = new Map<string, TestRow>();
    const said = new Set<string>();
    for (const row of season.index.testsBy(season.athlete.id)) {
      if (row.method === undefined && row.arms === undefined) continue;
      const before = first.get(row.test);
      if (before === undefined) first.set(row.test, row);
      if (before === undefined || said.has(row.test) || agree(before, row)) continue;
      said.add(row.test);
      find(week, {
        params: { date: isoDate(row.day), test: row.test, found: measured(row), wanted: measured(before) },
        span: row.span,
        related: [{ span: before.span, message: 'the first of the trend' }],
      });
    }
  },
  { separate: true },
);

function agree(a: TestRow, b: TestRow): boolean {
  const method = a.method === undefined || b.method === undefined || a.method === b.method;
  const arms = a.arms === undefined || b.arms === undefined || a.arms === b.arms;
  return method && arms;
}

function measured({ method, arms }: TestRow): string {
  const words = [
    ...(method === undefined ? [] : [`by ${method}`]),
    ...(arms === undefined ? [] : [arms ? 'with the arms' : 'without the arms']),
  ];
  return words.join(', ');
}
