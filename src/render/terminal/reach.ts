// When so many contacts a week are safe, on a terminal: the answer, and the weeks that stand in the way. Called by
// `footfall reach`.

import { dateWithYear } from '../../report/calendar-words.ts';
import type { Reach, ReachWeek } from '../../report/reach.ts';
import type { Canvas } from './canvas.ts';
import { hanging } from './layout.ts';

const INSET = '  ';

/** The answer in a sentence, then the weeks in the way with what each may have. */
export function renderReach(reach: Reach, { palette, width }: Canvas): readonly string[] {
  const { name, contacts, earliest, highest, inTheWay } = reach;
  const answer =
    earliest === undefined
      ? `no week of the season holds ${contacts} contacts; the most is ${highest.most}, ${weekWords(highest)}, held by ${ground(highest)}`
      : `${contacts} contacts are safe ${weekWords(earliest)} at the earliest, when every week before it has the most that is safe`;
  return [
    ...hanging('', `${palette.strong(name)}: ${answer}.`, width),
    ...(earliest === undefined ? hanging('', riseWords(reach), width) : []),
    ...(inTheWay.length === 0 ? [] : ['', palette.quiet('weeks in the way, with the most each may have')]),
    ...inTheWay.flatMap((week) =>
      hanging(
        `${INSET}week ${String(week.week).padStart(2)}  ${String(week.most).padStart(4)}  `,
        `${week.kindWords}: ${ground(week)}`,
        width,
      ),
    ),
  ];
}

const weekWords = ({ week, starts }: ReachWeek): string => `in week ${week}, from ${dateWithYear(starts)}`;

function ground({ heldBy }: ReachWeek): string {
  const { words, mark, places } = heldBy;
  const known = [...(mark === undefined ? [] : [mark]), ...places].join('; ');
  return known === '' ? words : `${words} (${known})`;
}

function riseWords({ rise, contacts }: Reach): string {
  if (rise === undefined) return `No weekly rise alone makes it ${contacts}: other bounds hold as well.`;
  return `It would take a weekly rise of ${rise.percent} % to have ${contacts} in week ${rise.byWeek}.`;
}
