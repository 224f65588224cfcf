// One session from its contacts and its lifting to numbered lines that fit the slot: written by hand where a programme
// holds that day, worked out everywhere else. Called by scheduleLines for every session, in order, as each leaves the
// week's shares, the known drills and the loads for the next.

import type { BuiltLine, BuiltSession, Reason } from '../../build/types.ts';
import type { ProgrammeDay, ProgrammeUse } from '../../plan/types.ts';
import { sparePlaces } from '../../library/leg-sparing.ts';
import { findPhaseLifting, LIFTING, sessionPatterns } from '../../library/lifting.ts';
import type { PhaseLifting } from '../../library/lifting.ts';
import { VOLUME } from '../../library/volume.ts';
import type { ScheduledSession } from '../types.ts';
import type { AddedLines } from './added-lines.ts';
import { addedLines, NOTHING_ADDED } from './added-lines.ts';
import { pinsOn } from './day-pins.ts';
import type { DayPins } from './day-pins.ts';
import type { Draft, Tried } from './draft.ts';
import { lineAt } from './draft.ts';
import { fitSession, sessionSeconds, shortOnTime } from './fit.ts';
import type { Fitted } from './fit.ts';
import { hurtsOn } from './hurts.ts';
import type { Ladder } from './ladders.ts';
import { liftDrafts, sharePlaces } from './lift-lines.ts';
import type { SharedPlace } from './lift-lines.ts';
import type { LiftSession } from './lift-draft.ts';
import type { LiftDay } from './lift-scheme.ts';
import { reportBarred } from './barred-wishes.ts';
import { sessionLoads } from './reload.ts';
import type { SessionLoads } from './reload.ts';
import { reportTooLong } from './too-long.ts';
import { sessionJumps } from './session-jumps.ts';
import type { LeftOut } from './session-picks.ts';
import type { Tally } from './tally.ts';
import { addDrill, addLoadedJump } from './tally.ts';
import type { Trainee, TrainingWeek } from './trainee.ts';
import type { WrittenContext } from './written-lines.ts';
import { writtenDrafts } from './written-lines.ts';
import { PERCENT, SECONDS_A_MINUTE } from '../../util/units.ts';
import { PARTS } from '../../library/types.ts';

export interface SessionPlace {
  readonly session: ScheduledSession;
  /** Among the week's lift sessions, from 0; and how many there are. */
  readonly liftIndex: number;
  readonly liftSessions: number;
}

export interface Written {
  readonly use: ProgrammeUse;
  readonly day: ProgrammeDay;
}

export interface MadeSession {
  readonly built: BuiltSession;
  /** What of it hangs on maxima. */
  readonly loads: SessionLoads;
  readonly tally: Tally;
}

/** A session as a programme writes it: its own contacts, nothing cut. */
export function writtenSession(
  trainee: Trainee,
  week: TrainingWeek,
  { session }: SessionPlace,
  { use, day }: Written,
  tally: Tally,
): MadeSession {
  const tries: Tried[] = [];
  const context = writtenContext(trainee, week, session, tries);
  const because: Reason = {
    about: 'line',
    by: 'programme',
    params: { programme: use.programme.id },
    spans: [use.span],
  };
  const drafts = day.lines.flatMap((line) => writtenDrafts(line, undefined, because, context));
  const { drills } = trainee.plan.library;
  let next = tally;
  for (const { line } of drafts) {
    const drill = drills.get(line.exercise);
    if (drill !== undefined && line.kind === 'drill') next = addDrill(next, drill, line.contacts);
    else if (line.contacts > 0) next = addLoadedJump(next, line.contacts);
  }
  trainee.known.note(drafts.flatMap(({ line }) => (line.kind === 'drill' ? (drills.get(line.exercise) ?? []) : [])));
  const fitted: Fitted = { drafts, seconds: sessionSeconds(drafts), leftOut: [], setsCut: 0 };
  const lifts = drafts.some((draft) => draft.line.kind === 'lift');
  const built = lay(week, { ...session, lifts }, fitted, []);
  return { built, loads: sessionLoads(tries, drafts), tally: next };
}

/** A session worked out: jumps that make its contacts, then lifting as far as the minutes go. */
export function plannedSession(trainee: Trainee, week: TrainingWeek, place: SessionPlace, tally: Tally): MadeSession {
  const { session } = place;
  const { groups, pins: allPins } = trainee;
  const ladder = groups.ladders.of(trainee.standingOn(session.day, week.rules.gates), session.slot.place);
  const pins = pinsOn(allPins, session.day);
  const tries: Tried[] = [];
  const written = writtenContext(trainee, week, session, tries);
  const added = addedLines({ trainee, week, session, ladder, pins, written });
  const left: LeftOut[] = [];
  const lifting = session.lifts ? liftingOf(trainee, week, place, { ladder, pins, added, left, tries }) : [];
  const loaded = lifting.reduce((sum, draft) => sum + draft.line.contacts, 0);
  let next = loaded === 0 ? tally : addLoadedJump(tally, loaded);
  for (const { drill, contacts } of added.drills) next = addDrill(next, drill, contacts);
  trainee.known.note(added.drills.map((one) => one.drill));
  const contacts = session.contacts - added.contacts - loaded;
  const most = Math.floor((session.slot.minutes * (PERCENT + week.rules.minutesOver)) / PERCENT) * SECONDS_A_MINUTE;
  const jumps =
    contacts > 0
      ? sessionJumps({
          trainee,
          week,
          session,
          ladder,
          pins,
          mostSeconds: mostJumping(most, session),
          contacts,
          tally: next,
        })
      : { drafts: [], week: next, left: [] };
  const drafts = inOrder(added, jumps.drafts, lifting);
  const fitted = fitSession(drafts, most);
  if (fitted.seconds > most && added !== NOTHING_ADDED) reportTooLong(trainee, week, session, { drafts, most });
  const reasons = [...added.reasons, ...leftReasons([...jumps.left, ...left])];
  const built = lay(week, session, fitted, reasons);
  return { built, loads: sessionLoads(tries, fitted.drafts), tally: jumps.week };
}

/** Each exercise once, however many places of the session it would have filled. */
function leftReasons(left: readonly LeftOut[]): readonly Reason[] {
  const pins = new Map(left.map(({ exercise, pin }) => [exercise, pin]));
  return [...pins].map(([exercise, pin]) => ({
    about: 'line',
    by: 'pin',
    params: { left: exercise },
    spans: [pin.span],
  }));
}

/** Behind the warm-up, and before the lifting that a session of both is planned with. */
function mostJumping(mostSeconds: number, session: ScheduledSession): number {
  const lifting = session.lifts ? VOLUME.liftingMinutes : 0;
  return mostSeconds - (VOLUME.warmUpMinutes + lifting) * SECONDS_A_MINUTE;
}

function writtenContext(
  trainee: Trainee,
  week: TrainingWeek,
  session: ScheduledSession,
  tries: Tried[],
): WrittenContext {
  return {
    athlete: trainee.athlete,
    library: trainee.plan.library,
    place: session.slot.place,
    day: session.day,
    people: trainee.people,
    stale: week.rules.stale,
    heavyFrom: week.rules.heavyFrom,
    returns: trainee.returns,
    mainRestSeconds: findPhaseLifting(week.phase)?.restSeconds ?? LIFTING.assistanceRestSeconds,
    tries,
  };
}

interface LiftCircumstances {
  readonly ladder: Ladder;
  readonly pins: DayPins;
  /** What the coach has put into the session. */
  readonly added: AddedLines;
  /** Gathers the lifts that pins leave out. */
  readonly left: LeftOut[];
  /** Gathers what was tried by a maximum. */
  readonly tries: Tried[];
}

function liftingOf(
  trainee: Trainee,
  week: TrainingWeek,
  place: SessionPlace,
  { ladder, pins, added, left, tries }: LiftCircumstances,
): readonly Draft[] {
  const scheme = findPhaseLifting(week.phase);
  if (scheme === undefined) return [];
  const { session } = place;
  const lifting: LiftSession = {
    athlete: trainee.athlete,
    day: session.day,
    phase: week.phase,
    ladder,
    liftDay: liftDayOf(week, session, ladder, scheme),
    rules: week.rules,
    pins,
    returns: trainee.returns,
    history: trainee.history,
    people: trainee.people,
    lifts: trainee.plan.library.lifts,
    mostLoadedContacts: mostLoaded(week, session, session.contacts - added.contacts),
    there: added === NOTHING_ADDED ? NONE_THERE : new Set(added.drafts.map((draft) => draft.line.exercise)),
    tries,
    barred: (exercise, bars, pin) => reportBarred(trainee, week, { exercise, bars, span: pin.span }, ladder),
    left: (exercise, pin) => left.push({ exercise, pin }),
  };
  return liftDrafts(liftPlaces(trainee, week, place, lifting), lifting);
}

function liftDayOf(
  { kind: { kind, step }, loadingWeek, rules }: TrainingWeek,
  session: ScheduledSession,
  ladder: Ladder,
  scheme: PhaseLifting,
): LiftDay {
  return {
    scheme,
    loadingWeek,
    easy: kind === 'deload' || kind === 'taper' || (kind === 'return' && (step ?? 1) === 1),
    heavyAllowed: session.heavyAllowed && ladder.standing.stage === undefined,
    heavyFrom: rules.heavyFrom,
    leastReserve: rules.leastReserve,
  };
}

/** The places of the session's pattern with what may fill them: the same for all who stand alike, and so kept by a key. */
function liftPlaces(
  { groups, people }: Trainee,
  { phase, index }: TrainingWeek,
  { session, liftIndex, liftSessions }: SessionPlace,
  lifting: LiftSession,
): readonly SharedPlace[] {
  const { loadingWeek, easy, heavyAllowed, heavyFrom, leastReserve } = lifting.liftDay;
  const short = session.shortLift === true;
  const turn = liftSessions <= 1 ? index % 2 : liftIndex;
  const day = `${phase}|${loadingWeek}|${easy}|${heavyAllowed}|${heavyFrom}|${leastReserve}`;
  return groups.lifting(
    `${lifting.ladder.number}|${people}|${day}|${liftSessions}|${turn}|${short}|${session.spares}`,
    () => {
      const all = sessionPatterns(phase, liftSessions, liftIndex, index);
      const patterns = short ? all.filter((one) => one.part === 'main').slice(-1) : all;
      return sharePlaces(sparePlaces(patterns, session.spares), groups.lifts, lifting);
    },
  );
}

const NONE_THERE: ReadonlySet<string> = new Set();

/** Loaded jumps take a part of a session that has jumps enough, on a day that may be heavy, and never while coming back. */
function mostLoaded(week: TrainingWeek, session: ScheduledSession, contacts: number): number {
  const hurt = week.kind.kind === 'return' || hurtsOn(week.contacts, session.day);
  if (hurt || session.primer || !session.heavyAllowed || contacts < LIFTING.loadedJumpFromContacts) return 0;
  return Math.floor((contacts * LIFTING.loadedJumpShare) / PERCENT);
}

/** By part, and within a part the generated lines before the coach's own; a pair stays together. */
function inOrder(added: AddedLines, jumps: readonly Draft[], lifting: readonly Draft[]): readonly Draft[] {
  if (added.drafts.length === 0) return [...jumps, ...lifting];
  const all = [...jumps, ...lifting, ...added.drafts];
  return PARTS.flatMap((part) => all.filter((draft) => draft.line.part === part));
}

function lay(week: TrainingWeek, session: ScheduledSession, fitted: Fitted, reasons: readonly Reason[]): BuiltSession {
  const { drafts, seconds, leftOut, setsCut } = fitted;
  const lines = numbered(drafts);
  const contacts = lines.reduce((sum, line) => sum + line.contacts, 0);
  const minutes = Math.ceil(seconds / SECONDS_A_MINUTE);
  const cut = leftOut.length > 0 || setsCut > 0;
  return {
    day: session.day,
    slot: session.slot,
    kind: session.primer ? 'primer' : week.kind.kind,
    contacts,
    jumps: contacts > 0,
    lifts: session.lifts,
    heavy: drafts.some((draft) => draft.heavy),
    minutes,
    lines,
    shortOnTime: shortOnTime(drafts),
    leftOut,
    reasons: [
      ...session.reasons,
      ...reasons,
      ...(cut ? [minutesReason(session, minutes, leftOut.length, setsCut)] : []),
    ],
  };
}

function minutesReason(session: ScheduledSession, minutes: number, lines: number, sets: number): Reason {
  const params = { slot: session.slot.minutes, minutes, lines, sets };
  return { about: 'minutes', by: 'slot-minutes', params, spans: [session.slot.span] };
}

function numbered(drafts: readonly Draft[]): readonly BuiltLine[] {
  const lines: BuiltLine[] = [];
  for (let index = 0; index < drafts.length; index += 1) {
    const draft = drafts[index];
    if (draft === undefined) continue;
    const order = index + 1;
    const pairedWith = draft.paired === true ? index : drafts[order]?.paired === true ? order + 1 : undefined;
    lines.push(lineAt(draft, order, pairedWith));
  }
  return lines;
}
