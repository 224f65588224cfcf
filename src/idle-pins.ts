// Pins that change nothing: the season is compiled without each, and where nobody's weeks differ the coach is told.
// Compiling again is the only sure way, as a pin may act through weeks far off; it stops at the first athlete who
// differs. Called by `footfall check`.

import type { BuiltAthlete, BuiltLine, BuiltSession, BuiltWeek } from './build/types.ts';
import { compilePlan } from './compile.ts';
import type { CompileOptions } from './compile.ts';
import { problem } from './diagnostics/problem.ts';
import type { Diagnostic } from './diagnostics/types.ts';
import type { Pin, Plan } from './plan/types.ts';
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

function isIdle(plan: Plan, pin: Pin, usual: (index: number) => string | undefined, options: CompileOptions): boolean {
  const without = compilePlan({ ...plan, pins: plan.pins.filter((one) => one !== pin) }, options);
  let index = 0;
  for (const built of without.athletes) {
    if (keyOf(built) !== usual(index)) return false;
    index += 1;
  }
  return true;
}

/** The athletes of the plan as it is, compiled as far as they are asked for. */
function remembered(plan: Plan, options: CompileOptions): (index: number) => string | undefined {
  const athletes = compilePlan(plan, options).athletes[Symbol.iterator]();
  const known: string[] = [];
  return (index) => {
    while (known.length <= index) {
      const next = athletes.next();
      if (next.done === true) return undefined;
      known.push(keyOf(next.value));
    }
    return known[index];
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
