// Pins that change nothing, and items of `always` and `use`: the season is scheduled without each, and where nobody's weeks
// differ the coach is told. Scheduling again is the only sure way, as a pin may act through weeks far off; it is done for
// the athletes of the squads it reaches, and stops at the first who differs. Called by `footfall check`, which walks the
// season as it is anyway.

import type { BuiltAthlete, BuiltLine, BuiltSession, BuiltWeek } from './build/types.ts';
import { dayAfterRecord, scheduleContext } from './compile.ts';
import type { CompiledPlan, CompileOptions } from './compile.ts';
import { problem } from './diagnostics/problem.ts';
import { isOf } from './diagnostics/is-of.ts';
import type { Diagnostic } from './diagnostics/types.ts';
import { appliesTo } from './plan/applies.ts';
import type { Athlete, Plan, Who, WrittenLine } from './plan/types.ts';
import { buildAthlete } from './schedule/build-athlete.ts';
import type { ScheduleContext } from './schedule/build-athlete.ts';
import type { FirstStages } from './schedule/first-stages.ts';
import type { Span } from './source/types.ts';
import type { Day } from './util/days.ts';

/** What the coach asks for that may change nothing. */
interface Wish {
  readonly who: Who;
  /** The last day on which it asks for something, where it has one. */
  readonly until?: Day;
  /** Where it stands, and where else something may be told of it. */
  readonly spans: readonly [Span, ...Span[]];
  readonly without: Plan;
  readonly tell: () => Diagnostic;
}

export interface WishWatch {
  /** Takes an athlete of the season as it is, so that nobody is scheduled twice for it. May be left out. */
  readonly pass: (built: BuiltAthlete) => void;
  /** What is idle among pins, `always` and `use`. Those of which something is told already are left alone. */
  readonly idle: (told: Iterable<Diagnostic>) => readonly Diagnostic[];
}

/**
 * `pass` takes each athlete of the season as it is, in any order; `idle` then gives a warning for each wish that
 * changes nothing. Places that are `told` already, as of a pin that is barred, are left out; so is what is over, as it
 * says what was planned then, and what waits for jumps that pain has stopped.
 */
export function watchWishes({ plan, context }: CompiledPlan, options: CompileOptions = {}): WishWatch {
  const wishes = [...pinWishes(plan), ...alwaysWishes(plan), ...useWishes(plan)];
  const asOf = options.asOf ?? dayAfterRecord(plan);
  const usual = remembered(context);
  // Most wishes change something for the first they are meant for: of the others nothing is kept.
  const first = new Set(wishes.map(({ who }) => plan.athletes.find((athlete) => appliesTo(who, athlete))));
  return {
    pass: (built) => {
      // Who has weeks barred may have been planned anew for it, and without the wish nothing is audited.
      if (first.has(built.athlete) && built.blocked.size === 0) usual.keep(built);
    },
    idle: (told) => {
      const all = [...told];
      const places = new Set(all.flatMap(({ span }) => (span === undefined ? [] : [placeKey(span)])));
      const isStopped = stoppedIn(all);
      return wishes
        .filter(({ spans }) => !spans.some((span) => places.has(placeKey(span))))
        .filter(({ until }) => asOf === undefined || until === undefined || until >= asOf)
        .filter(({ who }) => !plan.athletes.filter((athlete) => appliesTo(who, athlete)).every(isStopped))
        .filter((wish) => isIdle(plan, scheduleContext(wish.without, options, context.groups), wish.who, usual))
        .map(({ tell }) => tell());
    },
  };
}

/** Whose jumps pain has stopped until somebody writes that it is better. */
function stoppedIn(told: readonly Diagnostic[]): (athlete: Athlete) => boolean {
  const isOpen = (one: Diagnostic): boolean => isOf(one, 'schedule/pain-stop') && one.params.better === '';
  const stopped = new Set(told.filter(isOpen).flatMap(({ athlete }) => athlete ?? []));
  return ({ id }) => stopped.has(id);
}

function pinWishes(plan: Plan): readonly Wish[] {
  return plan.pins.map((pin) => ({
    who: pin.who,
    until: pin.range.until,
    spans: [pin.span, ...pin.effects.flatMap((effect) => (effect.kind === 'add' ? linePlaces(effect.lines) : []))],
    without: { ...plan, pins: plan.pins.filter((one) => one !== pin) },
    tell: () => problem('schedule/pin-idle', { span: pin.span }),
  }));
}

function alwaysWishes(plan: Plan): readonly Wish[] {
  return plan.always.map((item) => ({
    who: item.who,
    until: item.range.until,
    spans: [item.span, ...linePlaces(item.lines)],
    without: { ...plan, always: plan.always.filter((one) => one !== item) },
    tell: () => problem('schedule/line-idle', { params: { section: 'always' }, span: item.span }),
  }));
}

function useWishes(plan: Plan): readonly Wish[] {
  return plan.uses.map((use) => ({
    who: use.who,
    spans: [use.span, ...use.programme.weeks.flatMap(({ days }) => days.map(({ span }) => span))],
    without: { ...plan, uses: plan.uses.filter((one) => one !== use) },
    tell: () => problem('schedule/line-idle', { params: { section: 'use' }, span: use.span }),
  }));
}

const linePlaces = (lines: readonly WrittenLine[]): readonly Span[] => lines.map(({ span }) => span);

const placeKey = ({ file, start }: Span): string => `${file} ${start}`;

/** Those whom the wish is for come first; the others of their squads may only differ by what they do side by side. */
function isIdle(plan: Plan, without: ScheduleContext, who: Who, usual: Usual): boolean {
  const meant = plan.athletes.filter((athlete) => appliesTo(who, athlete));
  const squads = new Set(meant.map(({ squad }) => squad));
  const beside = plan.athletes.filter((athlete) => squads.has(athlete.squad) && !appliesTo(who, athlete));
  return [...meant, ...beside].every((athlete) => isSame(usual.of(athlete), without, athlete));
}

/** Lines are made only where everything before them is the same. */
function isSame(usual: SeasonKeys, without: ScheduleContext, athlete: Athlete): boolean {
  const first = without.firstStages(athlete);
  if (keyBeforeLines(first) !== usual.beforeLines) return false;
  return keyOf(buildAthlete({ ...without, firstStages: () => first }, athlete)) === usual.all;
}

/** Texts that differ where anything differs that is done: all of it, and what is known before the lines. */
interface SeasonKeys {
  readonly beforeLines: string;
  readonly all: string;
}

interface Usual {
  readonly of: (athlete: Athlete) => SeasonKeys;
  readonly keep: (built: BuiltAthlete) => void;
}

/** The athletes of the plan as it is, each scheduled when it is first asked for. */
function remembered(context: ScheduleContext): Usual {
  const known = new Map<Athlete, SeasonKeys>();
  const keep = (built: BuiltAthlete): SeasonKeys => {
    const keys = { beforeLines: builtBeforeLines(built), all: keyOf(built) };
    known.set(built.athlete, keys);
    return keys;
  };
  return {
    keep,
    of: (athlete) => known.get(athlete) ?? keep(buildAthlete(context, athlete)),
  };
}

const builtBeforeLines = ({ weeks }: BuiltAthlete): string =>
  JSON.stringify(weeks.map(({ phase, kind, contacts, sessions }) => [phase, kind, contacts, daysOf(sessions)]));

/** Of weeks that are over there are no sessions in a build. */
const keyBeforeLines = ({ schedule, over }: FirstStages): string =>
  JSON.stringify(
    schedule.days.map(({ sessions }, index) => [
      schedule.phases.weeks[index]?.phase,
      schedule.kinds[index]?.kind,
      schedule.contacts[index]?.contacts,
      index < over ? [] : daysOf(sessions),
    ]),
  );

const daysOf = (sessions: readonly Pick<BuiltSession, 'day'>[]): readonly Day[] => sessions.map(({ day }) => day);

const keyOf = ({ weeks }: BuiltAthlete): string => JSON.stringify(weeks.map(weekKey));

const weekKey = ({ phase, kind, contacts, sessions }: BuiltWeek): unknown => [
  phase,
  kind,
  contacts,
  sessions.map(sessionKey),
];

const sessionKey = ({ day, slot, kind, contacts, lines }: BuiltSession): unknown => [
  day,
  slot.id,
  kind,
  contacts,
  lines.map(lineKey),
];

const lineKey = ({ part, exercise, sets, reps, loadGrams, percent, reserve, restSeconds }: BuiltLine): unknown => [
  part,
  exercise,
  sets,
  reps,
  loadGrams,
  percent,
  reserve,
  restSeconds,
];
