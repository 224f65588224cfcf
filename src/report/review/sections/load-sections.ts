// Planned against done, and how the last week was, as the Monday page shows them. Contacts a week; loads are effort
// times minutes. Called by ../../review-page.ts.

import { mean } from '../../../util/statistics.ts';
import { dateWords } from '../../calendar-words.ts';
import type { Review } from '../../review.ts';
import type { AthleteReview } from '../athlete-review.ts';
import type { WeekDone } from '../athlete-weeks.ts';
import { LOAD_NOTES } from '../notes.ts';
import { optional, sectionOf, signed } from './section.ts';
import type { ReviewSection, Said } from './section.ts';
import { PERCENT } from '../../../util/units.ts';
import { groupsByKey } from '../../../util/grouped.ts';

/** A row for each athlete, a column for each week; none before the first week is over. */
export function plannedAndDone({ athletes, weeks }: Pick<Review, 'athletes' | 'weeks'>): readonly ReviewSection[] {
  if (weeks.length === 0) return [];
  const columns: readonly Said<AthleteReview>[] = [
    { title: 'athlete', align: 'left', text: ({ name }) => name },
    ...weeks.map(({ week, starts }): Said<AthleteReview> => ({
      title: dateWords(starts),
      align: 'right',
      text: (athlete) => doneWords(athlete.weeks.find((one) => one.week === week)),
    })),
    { title: 'last week', align: 'right', text: ({ weeks: behind }) => shareWords(behind.at(-1)) },
  ];
  return sectionOf('Contacts done of those planned, by week', athletes, columns, [LOAD_NOTES.planned]);
}

function doneWords(week: WeekDone | undefined): string {
  if (week === undefined) return '';
  return week.sessions.length === 0 ? 'none' : `${week.done ?? '?'} of ${week.planned}`;
}

const shareWords = (week: WeekDone | undefined): string =>
  week?.done === undefined ? '' : shareOf(week.done, week.planned);

interface GroupWeek {
  readonly name: string;
  readonly athletes: number;
  readonly recorded: readonly WeekDone[];
}

/** The last week of each group, where there are several. */
export function groupSection({ athletes }: Pick<Review, 'athletes'>): readonly ReviewSection[] {
  const groups = groupsByKey(athletes, ({ group = 'no group' }) => group);
  if (groups.size < 2 || athletes.every(({ weeks }) => weeks.length === 0)) return [];
  const rows = [...groups].map(([name, members]) => ({
    name,
    athletes: members.length,
    recorded: members.flatMap(({ weeks }) => weeks.slice(-1)).filter(({ done }) => done !== undefined),
  }));
  return sectionOf('Groups, last week', rows, GROUP_COLUMNS, [LOAD_NOTES.groups]);
}

const sum = (weeks: readonly WeekDone[], of: (week: WeekDone) => number): number =>
  weeks.reduce((total, week) => total + of(week), 0);

const GROUP_COLUMNS: readonly Said<GroupWeek>[] = [
  { title: 'group', align: 'left', text: ({ name }) => name },
  { title: 'on record', align: 'right', text: ({ athletes, recorded }) => `${recorded.length} of ${athletes}` },
  { title: 'planned', align: 'right', text: ({ recorded }) => String(sum(recorded, ({ planned }) => planned)) },
  { title: 'done', align: 'right', text: ({ recorded }) => String(sum(recorded, ({ done = 0 }) => done)) },
  {
    title: 'share',
    align: 'right',
    text: ({ recorded }) =>
      shareOf(
        sum(recorded, ({ done = 0 }) => done),
        sum(recorded, ({ planned }) => planned),
      ),
  },
  { title: 'effort', align: 'right', text: ({ recorded }) => effortWords(recorded) },
];

const shareOf = (done: number, planned: number): string =>
  planned === 0 ? '' : `${Math.round((PERCENT * done) / planned)} %`;

function effortWords(weeks: readonly WeekDone[]): string {
  const efforts = weeks.flatMap(({ felt }) => felt.effort ?? []);
  return efforts.length === 0 ? '' : mean(efforts).toFixed(1);
}

interface LastWeek {
  readonly name: string;
  readonly last: WeekDone;
}

/** A row for each athlete with a week behind: all jumping beside the weeks before it, and the load as it was felt. */
export function lastWeek({ athletes }: Pick<Review, 'athletes'>): readonly ReviewSection[] {
  const rows = athletes.flatMap(({ name, weeks }): readonly LastWeek[] => {
    const last = weeks.at(-1);
    return last === undefined ? [] : [{ name, last }];
  });
  const hasRatio = rows.some(({ last }) => last.ratio !== undefined);
  const columns = hasRatio ? COLUMNS : COLUMNS.filter(({ title }) => title !== RATIO);
  const notes = [LOAD_NOTES.jumps, ...(hasRatio ? [LOAD_NOTES.ratio] : []), LOAD_NOTES.load];
  return sectionOf('How last week was', rows, columns, notes);
}

/** A column that needs as many weeks behind as it is made of. */
const RATIO = 'ratio';

const COLUMNS: readonly Said<LastWeek>[] = [
  { title: 'athlete', align: 'left', text: ({ name }) => name },
  { title: 'all jumps', align: 'right', text: ({ last }) => `${last.done === undefined ? '~' : ''}${last.allJumps}` },
  { title: 'change', align: 'right', text: ({ last }) => optional(last.change, (by) => signed(by, `${by} %`)) },
  { title: RATIO, align: 'right', text: ({ last }) => optional(last.ratio, (ratio) => ratio.toFixed(2)), spare: 2 },
  { title: 'effort', align: 'right', text: ({ last }) => optional(last.felt.effort, (one) => one.toFixed(1)) },
  { title: 'load', align: 'right', text: ({ last }) => optional(last.felt.load, (load) => String(Math.round(load))) },
  { title: 'gaps', align: 'right', text: ({ last }) => (last.felt.gaps === 0 ? '' : String(last.felt.gaps)) },
  { title: 'monotony', align: 'right', text: ({ last }) => optional(last.felt.monotony, (one) => one.toFixed(2)) },
  { title: 'strain', align: 'right', text: ({ last }) => optional(last.felt.strain, (one) => String(Math.round(one))) },
];
