// test-fresh: a test day keeps its distance from heavy leg work before it. C.

import { isoDate } from '../../util/days.ts';
import { legLiftPlace } from '../places.ts';
import { auditRule } from '../rule.ts';

export const testFresh = auditRule(
  'test-fresh',
  (season, find) => {
    const apart = season.parameter('test-fresh', 'apart');
    for (const session of season.sessions) {
      if (!session.heavy) continue;
      const week = season.weekOf(session);
      const wanted = apart(week);
      for (let found = 0; found < wanted; found += 1) {
        const test = season.dayAt(session.day + found)?.test;
        if (test === undefined) continue;
        find(week, {
          params: { date: isoDate(session.day), test: test.what.join(', '), found, wanted },
          span: legLiftPlace(session) ?? test.span,
          related: [{ span: test.span, message: 'the test' }],
        });
        break;
      }
    }
  },
  { asksLoads: true },
);
