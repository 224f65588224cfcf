// Weeks on record too far above what was usual to count in full: a slip, or really done? Called by ../decisions.ts.

import { isOf } from '../../../diagnostics/is-of.ts';
import { dayWords } from '../../calendar-words.ts';
import { ruleWords } from '../rule-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import { inParts } from '../told-item.ts';
import type { ToldDecision } from './decision.ts';

/** The same of the week under way, of which the sessions to come were cut. Notices of it are no decision. */
export function leapUnderWay(subject: Subject): readonly ToldDecision[] {
  const { week: running, built, places } = subject;
  return built.diagnostics.flatMap((one) => {
    if (!isOf(one, 'schedule/week-over-plan') || one.severity !== 'warning') return [];
    const { week, span } = one;
    if (running?.starts !== week || week === undefined || span === undefined) return [];
    const { done, planned, before, left, byHand } = one.params;
    const cut =
      byHand || before === 0 ? {} : { changes: `${left} of the ${before} contacts that were left of the week stay` };
    return [
      {
        kind: 'record leap',
        ...whoOf(subject),
        ...inParts(
          '',
          `${done} contacts on record for the week from ${dayWords(week)}, which is under way and was to have ${planned}`,
          ': a slip, or really done?',
        ),
        ...cut,
        places: [places.words(span)],
      },
    ];
  });
}

/** One for each such week among those that are looked back on, whose rise nobody has waived. */
export function recordLeap(subject: Subject): readonly ToldDecision[] {
  const { behind, built, places } = subject;
  return built.diagnostics.flatMap((one) => {
    if (!isOf(one, 'schedule/record-leap') || !behind.some(({ starts }) => starts === one.week)) return [];
    const { week, span } = one;
    if (week === undefined || span === undefined) return [];
    const { contacts, usual, counts } = one.params;
    return [
      {
        kind: 'record leap',
        ...whoOf(subject),
        ...inParts(
          '',
          `${contacts} contacts on record for the week from ${dayWords(week)}, where ${usual} were usual`,
          ': a slip, or really done?',
        ),
        changes: `${counts} of them count; a waiver says that it was done (${ruleWords('weekly-rise')})`,
        places: [places.words(span)],
      },
    ];
  });
}
