// An exercise that the coach asks for and the athlete may not do: all that bars it, each by itself, with the lines of the
// plan behind it, and the highest rung of its family that could be done. Told once for an athlete and a line of the plan.

import { problem } from '../../diagnostics/problem.ts';
import type { RelatedPlace } from '../../diagnostics/types.ts';
import { findRule } from '../../library/rules.ts';
import type { Refusal } from './gates.ts';
import type { Ladder } from './ladders.ts';
import type { BarredWish } from './session-picks.ts';
import type { Trainee, TrainingWeek } from './trainee.ts';

/** Reports one wish: by which rules it is barred, what would open it, and the rung that may be done instead. */
export function reportBarred(
  { athlete, plan, report }: Trainee,
  week: TrainingWeek,
  { exercise, bars, span, block }: BarredWish,
  ladder: Ladder,
): void {
  const by = [...new Set(bars.map((bar) => bar.by))];
  const opens = [...new Set(bars.flatMap(opensBy))];
  const instead = rungInstead(plan.library.drills.get(exercise)?.family, ladder);
  report(`barred|${exercise}|${span.file}|${span.start}`, () =>
    problem('lines/pin-barred', {
      params: {
        athlete: athlete.id,
        exercise,
        by: by.join(' and '),
        bars: by.length,
        opens: opens.length === by.length ? opens.join(' and ') : '',
        instead: instead === undefined || instead === exercise ? '' : instead,
      },
      span,
      related: [
        ...bars.flatMap(placesOf),
        ...(block === undefined ? [] : [{ span: block, message: 'it is added here' }]),
      ],
      athlete: athlete.id,
      week: week.starts,
    }),
  );
}

const placesOf = ({ by, spans }: Refusal): readonly RelatedPlace[] =>
  spans.map((span) => ({ span, message: `${by} bars it here` }));

/** What a coach may write to open a gate; nothing where only time, or somebody else, opens it. */
function opensBy({ by, params }: Refusal): readonly string[] {
  if (by === 'drop-clearance') return [`cleared: [${params['clear']}]`];
  if (by === 'kit') return [`${params['kit']} at ${params['place']}`];
  return findRule(by)?.waivable === true ? [`a waiver of ${by}`] : [];
}

/** The hardest drill of a family that nothing keeps from the athlete here. */
const rungInstead = (family: string | undefined, { families }: Ladder): string | undefined =>
  family === undefined ? undefined : families.get(family)?.findLast(({ refusal }) => refusal === undefined)?.drill.id;
