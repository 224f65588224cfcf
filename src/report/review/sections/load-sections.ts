// Planned against done, and how the last week was, as the Monday page shows them.

import { dateWords } from '../../calendar-words.ts';
import type { AthleteReview, Review } from '../../review.ts';
import type { WeekDone } from '../athlete-weeks.ts';
import { LOAD_NOTES } from '../notes.ts';
import { optional, sectionOf, signed } from './section.ts';
import type { ReviewSection, Said } from './section.ts';

export function plannedAndDone({ athletes, weeks }: Pick<Review, 'athletes' | 'weeks'>): readonly ReviewSection[] {
  if (weeks.length === 0) return [];
  const columns: readonly Said<AthleteReview>[] = [
    { title: 'athlete', align: 'left', text: ({ name }) => name },
    ...weeks.map(({ week, starts }): Said<AthleteReview> => ({
      title: dateWords(starts),
      align: 'right',
      text: (athlete) => doneWords(athlete.weeks.find((one) => one.week === week)),
    })),
    { title: 'last', align: 'right', text: ({ weeks: behind }) => shareWords(behind.at(-1)) },
  ];
  return sectionOf('Contacts done of those planned, by week', athletes, columns, [LOAD_NOTES.planned]);
}

function doneWords(week: WeekDone | undefined): string {
  if (week === undefined) return '';
  return week.sessions.length === 0 ? 'none' : `${week.done ?? '?'} of ${week.planned}`;
}

const shareWords = (week: WeekDone | undefined): string =>
  week?.done === undefined || week.planned === 0 ? '' : `${Math.round((100 * week.done) / week.planned)} %`;

interface LastWeek {
  readonly name: string;
  readonly last: WeekDone;
}

export function lastWeek({ athletes }: Pick<Review, 'athletes'>): readonly ReviewSection[] {
  const rows = athletes.flatMap(({ name, weeks }): readonly LastWeek[] => {
    const last = weeks.at(-1);
    return last === undefined ? [] : [{ name, last }];
  });
  return sectionOf('How last week was', rows, COLUMNS, [LOAD_NOTES.jumps, LOAD_NOTES.load]);
}

const COLUMNS: readonly Said<LastWeek>[] = [
  { title: 'athlete', align: 'left', text: ({ name }) => name },
  { title: 'all jumps', align: 'right', text: ({ last }) => `${last.done === undefined ? '~' : ''}${last.allJumps}` },
  { title: 'change', align: 'right', text: ({ last }) => optional(last.change, (by) => signed(by, `${by} %`)) },
  { title: 'ratio', align: 'right', text: ({ last }) => optional(last.ratio, (ratio) => ratio.toFixed(2)), spare: 2 },
  { title: 'effort', align: 'right', text: ({ last }) => optional(last.felt.effort, (one) => one.toFixed(1)) },
  { title: 'load', align: 'right', text: ({ last }) => optional(last.felt.load, (load) => String(Math.round(load))) },
  { title: 'gaps', align: 'right', text: ({ last }) => (last.felt.gaps === 0 ? '' : String(last.felt.gaps)) },
  { title: 'monotony', align: 'right', text: ({ last }) => optional(last.felt.monotony, (one) => one.toFixed(2)) },
  { title: 'strain', align: 'right', text: ({ last }) => optional(last.felt.strain, (one) => String(Math.round(one))) },
];
