// A session that the coach's own lines make too long for its slot, though all that may go has gone: the pins and items of
// `always` that don't fit together, none of them to spare, and the slot that would hold them. Called by session.ts. Told
// once with all its days, so that the audit needn't tell each of them again; a waiver of slot-minutes keeps it quiet.

import { problem } from '../../diagnostics/problem.ts';
import type { Diagnostic } from '../../diagnostics/types.ts';
import type { Span } from '../../source/types.ts';
import { isoDate } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import type { ScheduledSession } from '../types.ts';
import type { Draft } from './draft.ts';
import { fitSession } from './fit.ts';
import type { Trainee, TrainingWeek } from './trainee.ts';
import { PERCENT, SECONDS_A_MINUTE } from '../../util/units.ts';

interface Long {
  readonly drafts: readonly Draft[];
  /** Seconds that the slot holds. */
  readonly most: number;
}

/** Says nothing where the session is too long without them, or may be too long. */
export function reportTooLong(
  { athlete, book, report }: Trainee,
  week: TrainingWeek,
  { day, slot }: ScheduledSession,
  { drafts, most }: Long,
): void {
  if (book.waiver('slot-minutes', { from: day, until: day }) !== undefined) return;
  const blocks = tooLongTogether(drafts, most);
  const [first, ...others] = blocks;
  if (first === undefined) return;
  const found = fitSession(drafts, most).seconds;
  const share = PERCENT + week.rules.minutesOver;
  const key = `long|${slot.id}|${blocks.map(({ file, start }) => `${file} ${start}`).join('|')}`;
  const make = (days: readonly Day[]): Diagnostic =>
    problem('lines/added-over-minutes', {
      params: {
        athlete: athlete.id,
        days: days.map(isoDate),
        lines: blocks.length,
        found: Math.ceil(found / SECONDS_A_MINUTE),
        most: Math.floor(most / SECONDS_A_MINUTE),
        slot: slot.minutes,
        wanted: Math.ceil((Math.ceil(found / SECONDS_A_MINUTE) * PERCENT) / share),
      },
      span: first,
      related: [
        ...others.map((span) => ({ span, message: 'this stands against it' })),
        { span: slot.span, message: 'the slot' },
      ],
      rule: 'slot-minutes',
      athlete: athlete.id,
      week: week.starts,
    });
  report(key, make, day);
}

/** The items that add lines without jumps, without any one of which the rest of these would fit. */
function tooLongTogether(drafts: readonly Draft[], most: number): readonly Span[] {
  const isTooLong = (out: ReadonlySet<Span>): boolean =>
    fitSession(
      drafts.filter((draft) => !out.has(blockOf(draft) ?? NOWHERE)),
      most,
    ).seconds > most;
  const out = new Set<Span>();
  // Jumps are part of the session's contacts: without them others would take their time.
  const blocks = [...new Set(drafts.flatMap((draft) => (draft.line.contacts === 0 ? (blockOf(draft) ?? []) : [])))];
  if (isTooLong(new Set(blocks))) return [];
  for (const block of blocks) {
    out.add(block);
    if (!isTooLong(out)) out.delete(block);
  }
  return blocks.filter((block) => !out.has(block));
}

const NOWHERE: Span = { file: '', start: 0, end: 0 };

/** The pin or item of `always` that a line comes of. */
function blockOf({ line }: Draft): Span | undefined {
  const reason = line.reasons.find(({ about, by }) => about === 'line' && (by === 'always' || by === 'pin'));
  return reason?.spans[0];
}
