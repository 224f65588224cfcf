// Pins that change nothing: the season is compiled without each, and where nobody's weeks differ the coach is told.
// Compiling again is the only sure way, as a pin may act through weeks far off; it is done for the athletes of the squads
// it reaches, and stops at the first who differs. Called by `footfall check`.

import type { BuiltAthlete, BuiltLine, BuiltSession, BuiltWeek } from './build/types.ts';
import { compilePlan } from './compile.ts';
import type { CompileOptions } from './compile.ts';
import { problem } from './diagnostics/problem.ts';
import type { Diagnostic } from './diagnostics/types.ts';
import { appliesTo } from './plan/applies.ts';
import type { Athlete, Pin, Plan } from './plan/types.ts';
import type { Span } from './source/types.ts';

/** What is idle among the pins. Those of which something is told already are left alone. */
export function idlePins(plan: Plan, told: Iterable<Diagnostic>, options: CompileOptions = {}): readonly Diagnostic[] {
  if (plan.pins.length === 0) return [];
  const places = new Set([...told].flatMap(({ span }) => (span === undefined ? [] : [placeKey(span)])));
  const usual = remembered(plan, options);
  return plan.pins
    .filter((pin) => !spansOf(pin).some((span) => places.has(placeKey(span))) && isIdle(plan, pin, usual, options))
    .map((pin) => problem('schedule/pin-idle', { span: pin.span }));
}

/** Where something may be told of a pin: at itself or at a line it adds. */
const spansOf = ({ span, effects }: Pin): readonly Span[] => [
  span,
  ...effects.flatMap((effect) => (effect.kind === 'add' ? effect.lines.map((line) => line.span) : [])),
];

const placeKey = ({ file, start }: Span): string => `${file} ${start}`;

/** Those whom the pin is for come first; the others of their squads may only differ by what they do side by side. */
function isIdle(plan: Plan, pin: Pin, usual: Usual, options: CompileOptions): boolean {
  const without = compilePlan({ ...plan, pins: plan.pins.filter((one) => one !== pin) }, options);
  const meant = plan.athletes.filter((athlete) => appliesTo(pin.who, athlete));
  const squads = new Set(meant.map(({ squad }) => squad));
  const beside = plan.athletes.filter((athlete) => squads.has(athlete.squad) && !appliesTo(pin.who, athlete));
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
