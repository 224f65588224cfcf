// Sessions that are over and of which the record says nothing: they are not taken for done. Called by ../decisions.ts.

import { dayWords } from '../../calendar-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import { inParts } from '../told-item.ts';
import { counted } from '../../../util/counted.ts';
import type { ToldDecision } from './decision.ts';

/** One at most, for all sessions together, with what the schedule takes in their place. */
export function missingRecord(subject: Subject): readonly ToldDecision[] {
  const { behind, recent, built, athlete, places } = subject;
  const sessions = new Map([...behind.flatMap((week) => week.sessions), ...recent].map((one) => [one.day, one]));
  const missing = [...sessions.values()].filter(({ outcome }) => outcome === 'not recorded');
  const [first] = missing;
  if (first === undefined) return [];
  const overdue = built.diagnostics.some(({ code }) => code === 'schedule/record-missing');
  const empty = behind.filter(({ done, planned }) => done === undefined && planned > 0);
  return [
    {
      kind: 'record missing',
      ...whoOf(subject),
      ...inParts(
        '',
        `${counted(missing.length, 'session')} since ${dayWords(first.day)}`,
        ' not on record: done, less, or missed?',
      ),
      changes: changesOf(empty.length, overdue),
      places: [places.words(athlete.span)],
    },
  ];
}

function changesOf(emptyWeeks: number, overdue: boolean): string {
  if (overdue) return 'two weeks without a record: nothing rises until there is one';
  return emptyWeeks > 0
    ? 'the week counts as no more than the last recorded one'
    : 'what is not recorded counts as not done';
}
