// The jump lines of one generated session: what the session allows, the picks, and the sharing out. Called for every
// session with jumps. Exactly the contacts asked for, or a diagnostic and none.

import { problem } from '../../diagnostics/problem.ts';
import { ALLOTTING } from '../../library/families.ts';
import { isoDate } from '../../util/days.ts';
import type { ScheduledSession } from '../types.ts';
import type { DayPins } from './day-pins.ts';
import { NO_PINS } from './day-pins.ts';
import { reportBarred } from './barred-wishes.ts';
import type { Draft } from './draft.ts';
import { hurtsOn } from './hurts.ts';
import type { JumpLines, JumpRequest } from './jump-lines.ts';
import { jumpLines } from './jump-lines.ts';
import type { Ladder } from './ladders.ts';
import type { SessionGates } from './picks.ts';
import { gatesKey } from './picks.ts';
import type { LeftOut, Picked, PickRequest } from './session-picks.ts';
import { fillIn, sessionPicks } from './session-picks.ts';
import type { Tally } from './tally.ts';
import { tallyKey } from './tally.ts';
import type { Trainee, TrainingWeek } from './trainee.ts';
import { PERCENT } from '../../util/units.ts';

export interface SessionJumps {
  readonly drafts: readonly Draft[];
  /** The week with this session's generated lines added. */
  readonly week: Tally;
  /** Drills that a pin leaves out. */
  readonly left: readonly LeftOut[];
}

/** What a session and the week before it ask for. */
export interface JumpTask {
  readonly trainee: Trainee;
  readonly week: TrainingWeek;
  readonly session: ScheduledSession;
  readonly ladder: Ladder;
  readonly pins: DayPins;
  /** Seconds the slot leaves for them. */
  readonly mostSeconds: number;
  /** Contacts left for generated lines: more than 0. */
  readonly contacts: number;
  readonly tally: Tally;
}

/** The lines, the week's tally with them in it, and what was left out. Pins that can't be kept are reported. */
export function sessionJumps(task: JumpTask): SessionJumps {
  const { trainee, week, pins } = task;
  const gates = sessionGates(task);
  const first = attempt(task, gates);
  for (const barred of first.picked.barred) reportBarred(trainee, week, barred, task.ladder);
  const { picked, lines } =
    week.kind.kind !== 'taper' && worthALowerRung(first)
      ? cheaper(first, attempt(task, { ...gates, mostHigh: 0 }))
      : first;
  if (lines === undefined) {
    reportNothing(task);
    return { drafts: [], week: task.tally, left: picked.left };
  }
  trainee.known.note(lines.drills);
  if (pins.sets.size > 0) reportSets(task, picked, lines);
  return { drafts: lines.drafts, week: lines.week, left: picked.left };
}

interface Attempt {
  readonly picked: Picked;
  readonly lines: JumpLines | undefined;
}

function attempt(task: JumpTask, gates: SessionGates): Attempt {
  const novelLeft = newDrillsLeft(task);
  const request = (): PickRequest => pickRequest(task, gates, novelLeft);
  const picked = pickAll(task, gates, novelLeft, request);
  return { picked, lines: makeLines(task, picked, request) };
}

/**
 * A drill of the high tier has few contacts; where that keeps the week off its shares, a rung lower may serve better. Not
 * in a taper, which keeps its tiers.
 */
function worthALowerRung({ picked, lines }: Attempt): boolean {
  const off = lines === undefined || lines.named;
  return off && picked.picks.some((pick) => pick.drill.tier === 'high');
}

function cheaper(one: Attempt, other: Attempt): Attempt {
  const cost = ({ lines }: Attempt): number => lines?.cost ?? Number.POSITIVE_INFINITY;
  return cost(other) < cost(one) ? other : one;
}

function pickRequest(
  { trainee, week, session, ladder, pins }: JumpTask,
  gates: SessionGates,
  novelLeft: number,
): PickRequest {
  const { known, book, plan, athlete } = trainee;
  const day = { from: session.day, until: session.day };
  return {
    families: trainee.groups.choice.of(athlete, session.slot.place, week.phase).families,
    ladder,
    gates,
    choosing: {
      leftOut: () => undefined,
      novel: (drill) => known.settled() && !known.has(drill),
      novelLeft,
    },
    pins,
    drills: plan.library.drills,
    waived: (rule) =>
      plan.waivers.some((waiver) => waiver.rule === rule && book.waiver(waiver.rule, day) !== undefined),
  };
}

function pickAll(
  { trainee, week, session, ladder, pins }: JumpTask,
  gates: SessionGates,
  novelLeft: number,
  request: () => PickRequest,
): Picked {
  if (pins !== NO_PINS) return { number: 0, ...sessionPicks(request()) };
  const { number } = trainee.groups.choice.of(trainee.athlete, session.slot.place, week.phase);
  const known = trainee.known.settled() ? `${novelLeft}|${trainee.known.number()}` : '';
  const key = `${ladder.number}|${number}|${gatesKey(gates)}|${known}`;
  return trainee.groups.picked(key, () => sessionPicks(request()));
}

/** The picked drills shared out; with one more where they add up to no such session; without pinned sets at last. */
function makeLines(task: JumpTask, picked: Picked, request: () => PickRequest): JumpLines | undefined {
  const { trainee, week, session, pins, contacts, tally, mostSeconds } = task;
  const { place } = session.slot;
  const { people } = trainee;
  const wanted: JumpRequest = {
    picks: picked.picks,
    contacts,
    week: tally,
    aim: week.aim,
    place,
    people,
    mostSeconds,
    sets: pins.sets,
    keepHigh: week.kind.kind === 'taper' && tally.high === 0,
    allotted: trainee.groups.allotted,
  };
  const make = (): JumpLines | undefined => {
    const usual = jumpLines(wanted);
    if (usual !== undefined) return usual;
    const extra = fillIn(picked.picks, request());
    const picks = extra === undefined ? picked.picks : [extra, ...picked.picks];
    const wider: JumpRequest = { ...wanted, picks, keepHigh: false };
    return jumpLines(wider) ?? (pins.sets.size > 0 ? jumpLines({ ...wider, sets: new Map() }) : undefined);
  };
  if (pins !== NO_PINS) return make();
  const key = `${picked.number}|${contacts}|${tallyKey(tally)}|${week.aim.key}|${place.id}|${people}|${mostSeconds}|${wanted.keepHigh}`;
  return trainee.groups.jumps(key, make);
}

/** What the session allows: the days round it, the week's shares as far as they are left, pain, a novice's first weeks. */
function sessionGates({ week, session, ladder, tally }: JumpTask): SessionGates {
  const { rules, contacts, row, kind } = week;
  const { level, values } = ladder.standing;
  const pain = hurtsOn(contacts, session.day);
  const firstReturn = kind.kind === 'return' && kind.step === 1;
  const { underWay } = contacts;
  // What is cut of a week under way leaves the sheets of its days so far as they were.
  const total = underWay !== undefined && session.day < underWay.from ? underWay.planned : contacts.contacts;
  const left = (percent: number, used: number): number =>
    Math.max(0, Math.min(ALLOTTING.mostOfOne, Math.floor((total * percent) / PERCENT) - used));
  const highMost = Math.min(row.highShareMost ?? 0, rules.highMost ?? PERCENT);
  const dropsMost = Math.min(values.dropCount[level], values.dropCount[level] * values.dropWeekTimes - tally.drops);
  const drops = session.dropsAllowed && !session.primer && !firstReturn;
  return {
    drops,
    fastHigh: session.dropsAllowed && !session.primer,
    ...(pain ? { noFast: 'pain-hold' } : week.novice ? { noFast: 'fast-cycle-share' } : {}),
    ...(pain ? { noHigh: 'pain-hold' } : firstReturn ? { noHigh: 'return-ramp' } : {}),
    mostHigh: left(highMost, tally.high),
    mostDrops: Math.max(0, dropsMost),
    mostStill: left(rules.staticMost, tally.still),
  };
}

/** No drill is new in a taper, a primer or the first week back from time away: they are for what is known. */
function newDrillsLeft({ trainee, week, session }: JumpTask): number {
  const { kind, step } = week.kind;
  if (session.primer || kind === 'taper' || (kind === 'return' && step === 1)) return 0;
  return Math.max(0, week.rules.newDrills - trainee.known.newThisWeek());
}

function reportNothing({ trainee, week, session, contacts }: JumpTask): void {
  const { athlete } = trainee;
  trainee.report(`nothing|${session.day}|${session.slot.id}`, () =>
    problem('lines/no-drill-fits', {
      params: { athlete: athlete.id, day: isoDate(session.day), contacts, place: session.slot.place.id },
      span: athlete.limits[0]?.span ?? athlete.span,
      athlete: athlete.id,
      week: week.starts,
    }),
  );
}

/** Says so when a picked drill didn't get the sets that are pinned. */
function reportSets({ trainee, week, session, pins, contacts }: JumpTask, picked: Picked, lines: JumpLines): void {
  for (const { drill } of picked.picks) {
    const pinned = pins.sets.get(drill.id);
    const got = lines.drafts.find((draft) => draft.line.exercise === drill.id)?.line.sets;
    if (pinned === undefined || pinned.value === got) continue;
    trainee.report(`sets|${session.day}|${drill.id}`, () =>
      problem('lines/sets-unmet', {
        params: { athlete: trainee.athlete.id, day: isoDate(session.day), contacts },
        span: pinned.pin.span,
        athlete: trainee.athlete.id,
        week: week.starts,
      }),
    );
  }
}
