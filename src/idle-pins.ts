// Pins that change nothing, and items of `always` and `use`: the season is compiled without each, and where nobody's weeks
// differ the coach is told.
// Compiling again is the only sure way, as a pin may act through weeks far off; it is done for the athletes of the squads
// it reaches, and stops at the first who differs. Called by `footfall check`.

import type { BuiltAthlete, BuiltLine, BuiltSession, BuiltWeek } from './build/types.ts';
import { compilePlan } from './compile.ts';
import type { CompileOptions } from './compile.ts';
import { problem } from './diagnostics/problem.ts';
import type { Diagnostic } from './diagnostics/types.ts';
import { appliesTo } from './plan/applies.ts';
import type { Athlete, Plan, Who, WrittenLine } from './plan/types.ts';
import type { Span } from './source/types.ts';

/** What the coach asks for that may change nothing. */
interface Wish {
  readonly who: Who;
  /** Where it stands, and where else something may be told of it. */
  readonly spans: readonly [Span, ...Span[]];
  readonly without: Plan;
  readonly tell: () => Diagnostic;
}

/** What is idle among pins, `always` and `use`. Those of which something is told already are left alone. */
export function idlePins(plan: Plan, told: Iterable<Diagnostic>, options: CompileOptions = {}): readonly Diagnostic[] {
  const wishes = [...pinWishes(plan), ...alwaysWishes(plan), ...useWishes(plan)];
  if (wishes.length === 0) return [];
  const places = new Set([...told].flatMap(({ span }) => (span === undefined ? [] : [placeKey(span)])));
  const usual = remembered(plan, options);
  return wishes
    .filter(({ spans }) => !spans.some((span) => places.has(placeKey(span))))
    .filter((wish) => isIdle(plan, wish, usual, options))
    .map(({ tell }) => tell());
}

function pinWishes(plan: Plan): readonly Wish[] {
  return plan.pins.map((pin) => ({
    who: pin.who,
    spans: [pin.span, ...pin.effects.flatMap((effect) => (effect.kind === 'add' ? linePlaces(effect.lines) : []))],
    without: { ...plan, pins: plan.pins.filter((one) => one !== pin) },
    tell: () => problem('schedule/pin-idle', { span: pin.span }),
  }));
}

function alwaysWishes(plan: Plan): readonly Wish[] {
  return plan.always.map((item) => ({
    who: item.who,
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
function isIdle(plan: Plan, wish: Wish, usual: Usual, options: CompileOptions): boolean {
  const without = compilePlan(wish.without, options);
  const meant = plan.athletes.filter((athlete) => appliesTo(wish.who, athlete));
  const squads = new Set(meant.map(({ squad }) => squad));
  const beside = plan.athletes.filter((athlete) => squads.has(athlete.squad) && !appliesTo(wish.who, athlete));
  return [...meant, ...beside].every((athlete) => keyOf(without.athlete(athlete)) === usual(athlete));
}

type Usual = (athlete: Athlete) => string;

/** The athletes of the plan as it is, each compiled when it is first asked for. */
function remembered(plan: Plan, options: CompileOptions): Usual {
  const build = compilePlan(plan, options);
  const known = new Map<string, string>();
  return (athlete) => {
    const key = known.get(athlete.id) ?? keyOf(build.athlete(athlete));
    known.set(athlete.id, key);
    return key;
  };
}

/** A text that differs where anything that is done differs. */
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
