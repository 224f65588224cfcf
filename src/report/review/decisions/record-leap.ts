// Weeks on record too far above what was usual to count in full: a slip, or really done? Called by ../decisions.ts.

import { dayWords } from '../../calendar-words.ts';
import { ruleWords } from '../rule-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import { inParts } from '../told-item.ts';
import type { ToldItem } from '../told-item.ts';

/** One for each such week among those that are looked back on, whose rise nobody has waived. */
export function recordLeap(subject: Subject): readonly ToldItem[] {
  const { behind, built, places } = subject;
  return built.diagnostics.flatMap(({ code, week, params, span }) => {
    const isSeen = code === 'schedule/record-leap' && behind.some(({ starts }) => starts === week);
    if (!isSeen || week === undefined || span === undefined) return [];
    const { contacts, usual, counts } = params;
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
