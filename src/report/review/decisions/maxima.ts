// Maxima: a tested one that the plan doesn't have yet, and one that has grown old. Loads in the plan's units. Called by
// ../decisions.ts.

import { getRuleValue, ruleBook } from '../../../plan/rule-book.ts';
import { REVIEW } from '../../../library/review.ts';
import { DAYS_A_WEEK, isoDate } from '../../../util/days.ts';
import { dateWords } from '../../calendar-words.ts';
import { exerciseName } from '../../exercise-words.ts';
import { loadWords } from '../../../util/quantities.ts';
import type { KiloChange, NewMaximum } from '../new-maxima.ts';
import { ruleWords } from '../rule-words.ts';
import { whoOf } from '../subject.ts';
import type { Subject } from '../subject.ts';
import { counted } from '../../../util/counted.ts';
import type { ToldDecision } from './decision.ts';

/** One for a tested maximum, with the line to write and what changes with it; loads in the plan's units. */
export function newMaximum(subject: Subject, found: NewMaximum): ToldDecision {
  const { plan, places, athlete } = subject;
  const { units } = plan.season;
  const { max, before, spans } = found;
  const load = loadWords(max.grams, units);
  const was =
    before === undefined
      ? 'the plan has none'
      : `the plan has ${loadWords(before.grams, units)}${before.estimated ? ', estimated' : ''}`;
  return {
    kind: 'new maximum',
    ...whoOf(subject),
    words:
      `${nameOf(subject, max.lift)}: ${load} tested on ${dateWords(max.on ?? 0)}, ${was}. If it was a single, write ` +
      `${max.lift}: { max: ${load}, on: ${isoDate(max.on ?? 0)} }`,
    changes: changesOf(subject, found),
    places: [...spans.slice(0, 1), before?.span ?? athlete.span].map((span) => places.words(span)),
  };
}

function changesOf(subject: Subject, { next, lines }: NewMaximum): string {
  if (lines === 0) return 'no load ahead rests on it';
  const told = next.map((one) => kiloWords(subject, one)).join('; ');
  return `${told}; ${counted(lines, 'line')} ahead in all`;
}

function kiloWords(subject: Subject, { name, day, before, after }: KiloChange): string {
  const { units } = subject.plan.season;
  const load = (grams: number | undefined): string => (grams === undefined ? 'no load' : loadWords(grams, units));
  return `${name.toLowerCase()} on ${dateWords(day)} ${load(before)} to ${load(after)}`;
}

const nameOf = ({ plan }: Subject, id: string): string => exerciseName(plan.library, id).toLowerCase();

/** Maxima that kilos of the days ahead rest on, and that are older than the rule test-stale has it. C. */
export function staleMaxima(subject: Subject, renewed: ReadonlySet<string>): readonly ToldDecision[] {
  const { plan, athlete, day, places, built } = subject;
  const book = ruleBook(plan, athlete);
  const range = { from: day, until: day + REVIEW.daysAhead };
  const weeks = getRuleValue(book, 'test-stale', 'weeks', range);
  const used = new Set(
    built.weeks
      .flatMap(({ sessions }) => sessions)
      .filter((session) => range.from <= session.day && session.day < range.until)
      .flatMap(({ lines }) => lines)
      .flatMap(({ exercise, percent }) => (percent === undefined ? [] : [exercise])),
  );
  const behind = new Set([...used].flatMap((id) => [id, plan.library.lifts.get(id)?.maxOf ?? id]));
  return [...athlete.lifts.values()]
    .filter(
      ({ lift, on }) => !renewed.has(lift) && behind.has(lift) && (on === undefined || day - on >= weeks * DAYS_A_WEEK),
    )
    .map(({ lift, on, span }) => ({
      kind: 'old maximum',
      ...whoOf(subject),
      words: `${nameOf(subject, lift)}: the maximum ${on === undefined ? 'has no date' : `is of ${dateWords(on)}, ${Math.floor((day - on) / DAYS_A_WEEK)} weeks old`}: test it again?`,
      changes: `loads go on from it until it is tested (${ruleWords('test-stale')})`,
      places: [places.words(span)],
    }));
}
