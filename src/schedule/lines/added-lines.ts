// The coach's own lines in a generated session: what `always` puts into every one and what a pin adds. Called for every
// session that has some. Their jumps are part of the session's contacts. A line that a gate or the kit bars stays out,
// and so does lower-body lifting on a day that isn't for it.

import { problem } from '../../diagnostics/problem.ts';
import type { Reason } from '../../build/types.ts';
import { holds } from '../../plan/applies.ts';
import { itemsOf } from '../../plan/items-of.ts';
import type { Part, WrittenLine } from '../../plan/types.ts';
import { writtenContacts } from '../../plan/line-contacts.ts';
import type { Drill } from '../../library/types.ts';
import type { Span } from '../../source/types.ts';
import type { ScheduledSession } from '../types.ts';
import type { DayPins } from './day-pins.ts';
import type { Draft } from './draft.ts';
import { reportBarred } from './barred-wishes.ts';
import { drillPlaceRefusal, pinnedDrillRefusals } from './gates.ts';
import type { Refusal } from './gates.ts';
import { liftBars } from './lift-choice.ts';
import type { Ladder } from './ladders.ts';
import type { Trainee, TrainingWeek } from './trainee.ts';
import type { WrittenContext } from './written-lines.ts';
import { hangsOnMax, writtenDrafts } from './written-lines.ts';
import { SECONDS_A_MINUTE } from '../../util/units.ts';

export interface AddedLines {
  readonly drafts: readonly Draft[];
  readonly contacts: number;
  readonly drills: readonly { readonly drill: Drill; readonly contacts: number }[];
  readonly reasons: readonly Reason[];
}

export const NOTHING_ADDED: AddedLines = { drafts: [], contacts: 0, drills: [], reasons: [] };

interface Block {
  readonly by: 'always' | 'pin';
  readonly part: Part;
  readonly lines: readonly WrittenLine[];
  readonly minutes?: number;
  readonly span: Span;
}

export interface AddTask {
  readonly trainee: Trainee;
  readonly week: TrainingWeek;
  readonly session: ScheduledSession;
  readonly ladder: Ladder;
  readonly pins: DayPins;
  readonly written: WrittenContext;
}

/** Drafts in the order of the plan, their contacts together, and why what is left out is left out. */
export function addedLines(task: AddTask): AddedLines {
  const blocks = blocksOf(task);
  if (blocks.length === 0) return NOTHING_ADDED;
  const drafts: Draft[] = [];
  const drills: { drill: Drill; contacts: number }[] = [];
  const reasons: Reason[] = [];
  let contacts = 0;
  for (const block of blocks) {
    const first = drafts.length;
    for (const line of block.lines) {
      const own = writtenContacts(line, task.trainee.plan.library);
      const barred = barredBy(line, block, task) ?? placeBar(line, own, block, task, task.session.contacts - contacts);
      if (barred !== undefined) {
        reasons.push({ about: 'line', by: barred, params: { left: line.exercise.id }, spans: [line.span] });
        continue;
      }
      contacts += own;
      for (const draft of draftsOf(line, block, task, drafts.length === first)) {
        drafts.push(draft);
        const drill = task.trainee.plan.library.drills.get(draft.line.exercise);
        if (drill !== undefined) drills.push({ drill, contacts: draft.line.contacts });
      }
    }
  }
  return { drafts, contacts, drills, reasons };
}

function blocksOf({ trainee, session, pins }: AddTask): readonly Block[] {
  if (pins.add.length === 0 && (trainee.always.length === 0 || session.primer)) return [];
  const always = session.primer ? [] : trainee.always.filter((one) => holds(one.range, session.day));
  return [
    ...always.map(({ part, lines, minutes, span }): Block => ({
      by: 'always',
      part,
      lines,
      span,
      ...(minutes === undefined ? {} : { minutes }),
    })),
    ...pins.add.map(({ part, lines, pin }): Block => ({ by: 'pin', part, lines, span: pin.span })),
  ];
}

/** The gate or missing kit that keeps a line, or what it is paired with, out; it is told. */
function barredBy(line: WrittenLine, block: Block, task: AddTask): string | undefined {
  const bars = barsOf(line, task);
  const [first] = bars;
  if (first === undefined) return line.pair === undefined ? undefined : barredBy(line.pair, block, task);
  if (block.by === 'always' && isElsewhere(line, bars, task)) return first.by;
  const wish = { exercise: line.exercise.id, bars, span: line.span, block: block.span };
  reportBarred(task.trainee, task.week, wish, task.ladder);
  return first.by;
}

/** What stands in every session stands where its kit is: a place without it is no news as long as another has it. */
function isElsewhere(line: WrittenLine, bars: readonly Refusal[], task: AddTask): boolean {
  const { plan, athlete } = task.trainee;
  if (bars.some(({ by }) => by !== 'kit')) return false;
  const places = new Set(itemsOf(plan, athlete).slots.map(({ place }) => place));
  return [...places].some((place) => barsOf(line, { ...task, ladder: { ...task.ladder, place } }).length === 0);
}

function barsOf(line: WrittenLine, { ladder, trainee, week, session }: AddTask): readonly Refusal[] {
  const { drills, lifts } = trainee.plan.library;
  const day = { from: session.day, until: session.day };
  const waived = (rule: string): boolean =>
    trainee.plan.waivers.some((one) => one.rule === rule && trainee.book.waiver(one.rule, day) !== undefined);
  const drill = line.exercise.kind === 'drill' ? drills.get(line.exercise.id) : undefined;
  if (drill !== undefined) {
    const here = drillPlaceRefusal(drill, ladder.place);
    const gates = pinnedDrillRefusals(dropping(drill, line), ladder.standing, waived);
    return here === undefined ? gates : [...gates, here];
  }
  const lift = lifts.get(line.exercise.id);
  return lift === undefined ? [] : liftBars(lift, ladder, week.phase);
}

/** A drill dropped from the height that the line says. */
const dropping = (drill: Drill, line: WrittenLine): Drill =>
  line.dropCm === undefined ? drill : { ...drill, dropCm: line.dropCm };

/** What of the session keeps a line out: its contacts, its days, or lifting where none is planned. */
function placeBar(line: WrittenLine, contacts: number, block: Block, task: AddTask, left: number): string | undefined {
  const { trainee, week, session } = task;
  const drill = trainee.plan.library.drills.get(line.exercise.id);
  if (drill?.dropCm !== undefined && !session.dropsAllowed) return 'fast-spacing';
  if (contacts > left) {
    if (session.contacts > 0) reportOver(trainee, week, line, contacts, left, block);
    return 'session-contacts';
  }
  const lift = trainee.plan.library.lifts.get(line.exercise.id);
  if (line.exercise.kind === 'lift' && lift?.lower === true && !session.lifts) return 'lift-days';
  return line.exercise.kind === 'drill' && session.contacts === 0 ? 'jump-days' : undefined;
}

function reportOver(
  trainee: Trainee,
  week: TrainingWeek,
  line: WrittenLine,
  wanted: number,
  most: number,
  block: Block,
): void {
  trainee.report(`over|${line.span.file}|${line.span.start}`, () =>
    problem('lines/added-over-contacts', {
      params: { athlete: trainee.athlete.id, exercise: line.exercise.id, wanted, most },
      span: line.span,
      related: [{ span: block.span, message: 'it is added here' }],
      athlete: trainee.athlete.id,
      week: week.starts,
    }),
  );
}

/** The drafts of a line, made once for all sessions and athletes where they hang on no maximum. */
function draftsOf(line: WrittenLine, block: Block, { trainee, written }: AddTask, leads: boolean): readonly Draft[] {
  const make = (): readonly Draft[] => makeDrafts(line, block, written, leads);
  if (hangsOnMax(line, written)) return make();
  const known = trainee.groups.written.get(line) ?? new Map<string, readonly Draft[]>();
  trainee.groups.written.set(line, known);
  const { place, people, heavyFrom, mainRestSeconds } = written;
  const { file, start } = block.span;
  const key = `${file}|${start}|${leads}|${place.id}|${people}|${heavyFrom}|${mainRestSeconds}`;
  const drafts = known.get(key) ?? make();
  known.set(key, drafts);
  return drafts;
}

/** Minutes written for a block are those of all its lines together, and stand with the one that leads it. */
function makeDrafts(
  line: WrittenLine,
  { by, part, span, minutes }: Block,
  context: WrittenContext,
  leads: boolean,
): readonly Draft[] {
  const drafts = writtenDrafts(line, part, { about: 'line', by, params: {}, spans: [span] }, context);
  if (minutes === undefined) return drafts;
  return drafts.map((draft, index) => ({
    ...draft,
    numbered: [],
    seconds: leads && index === 0 ? minutes * SECONDS_A_MINUTE : 0,
  }));
}
