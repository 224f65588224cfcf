// What somebody is to leave out in a week, as a card tells it to who reads it: what, and up to when, never why. Whoever
// comes back is held to what is written, and that isn't said.

import { overlap } from '../plan/applies.ts';
import { returnStageOn } from '../plan/athlete-facts.ts';
import type { Athlete, DayRange, Plan } from '../plan/types.ts';
import { barredWords } from './limit-words.ts';
import { dateWords, dayWords } from './calendar-words.ts';

const NO_HARDER = 'Nothing harder than what is written.';

/** Sentences about the limits that touch the week, those of the same days in one: `No drops from a box, until 14 Feb.` */
export function cardLimits(plan: Plan, athlete: Athlete, week: DayRange): readonly string[] {
  const barredBy = new Map<string, Set<string>>();
  for (const limit of athlete.limits) {
    if (!overlap(limit.range, week)) continue;
    const days = daysWords(plan, limit.range, week);
    const barred = barredBy.get(days) ?? new Set();
    barredBy.set(days, barred);
    for (const words of barredWords(plan, limit)) barred.add(words);
  }
  const sentences = [...barredBy].map(([days, barred]) => `${capitalised([...barred].join(', '))}${days}.`);
  return returnStageOn(athlete, week.from) === undefined ? sentences : [...sentences, NO_HARDER];
}

/** The first day where it lies within the week, the last one unless the season is over by then. */
function daysWords({ season }: Plan, { from, until }: DayRange, week: DayRange): string {
  return [
    ...(from > week.from ? [`from ${dayWords(from)}`] : []),
    ...(until >= season.ends ? [] : [`until ${until <= week.until ? dayWords(until) : dateWords(until)}`]),
  ]
    .map((words) => `, ${words}`)
    .join('');
}

const capitalised = (words: string): string => words.replace(/^./u, (first) => first.toUpperCase());
