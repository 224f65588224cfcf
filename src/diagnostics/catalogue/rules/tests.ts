// Findings of the rules of tests: how old a number may be, how fresh the athlete, what may be compared.
// Joined by ../rules.ts.

import type { Entries } from '../../entry.ts';
import type { At, On } from './words.ts';
import { counted } from '../../../util/counted.ts';

export const testFindings = {
  'rule/test-stale': {
    severity: 'notice',
    summary: 'kilos from an old maximum',
    explanation:
      'The maximum behind a load is recent, or the load is right for somebody the athlete no longer is. After weeks away a maximum counts for less until it is tested again.',
    bad: 'back-squat: { max: 92.5 kg, on: 2026-06-01 }',
    good: 'back-squat: { max: 92.5 kg, on: 2026-12-12 }',
    message: ({
      athlete,
      date,
      lift,
      away,
      found,
      wanted,
    }: On & { lift: string; away: boolean; found: number; wanted: number }) =>
      away
        ? `${athlete}: the load of ${lift} on ${date} counts on ${found} % of the maximum after weeks away, and ${wanted} % are wanted until it is tested again`
        : found === 0
          ? `${athlete}: the maximum of ${lift} behind the load of ${date} has no date`
          : `${athlete}: the maximum of ${lift} behind the load of ${date} is ${counted(found, 'week', 'weeks')} old, and it is stale from ${wanted}`,
    help: ({ away }: { away: boolean }) => (away ? 'take weight off' : 'test the lift, or write when it was tested'),
  },
  'rule/test-fresh': {
    severity: 'notice',
    summary: 'a test on tired legs',
    explanation:
      'A test says something about training when the legs are fresh: heavy leg work stays days away from it.',
    bad: 'tests: [{ date: 2027-03-03, what: [back-squat] }]     # the day after heavy squats',
    good: 'tests: [{ date: 2027-03-04, what: [back-squat] }]',
    message: ({ athlete, date, test, found, wanted }: On & { test: string; found: number; wanted: number }) =>
      `${athlete}: heavy leg work on ${date}, ${found === 0 ? 'the day of' : `${counted(found, 'day', 'days')} before`} the test of ${test}, and ${wanted} are wanted between`,
    help: () => 'move the test, or make the session light',
  },
  'rule/test-method': {
    severity: 'notice',
    summary: 'tests that cannot be compared',
    explanation:
      'Heights from two methods, or with and without the arms, are two different measures: a trend over both says nothing.',
    bad: '2027-01-12,mira,countermovement-jump,1,38.0,cm,flight-time,no,\n2027-03-09,mira,countermovement-jump,1,41.2,cm,reach,yes,',
    good: '2027-01-12,mira,countermovement-jump,1,38.0,cm,flight-time,no,\n2027-03-09,mira,countermovement-jump,1,39.1,cm,flight-time,no,',
    message: ({
      athlete,
      date,
      test,
      found,
      wanted,
    }: At & { date: string; test: string; found: string; wanted: string }) =>
      `${athlete}: the ${test} of ${date} was measured ${found}, and the ones before it ${wanted}`,
    help: () => 'test the same way each time, or read the two apart',
  },
} as const satisfies Entries;
