// The weeks chosen round the coach's pins. A pin that no plan meets is reported, with the lines that stand against it and
// what would work, and let go, so that the rest of the season can still be read. Called by ../contacts.ts.

import type { BoundBy } from '../../build/types.ts';
import { problem } from '../../diagnostics/problem.ts';
import type { Diagnostic } from '../../diagnostics/types.ts';
import type { Pin, Plan } from '../../plan/types.ts';
import type { Span } from '../../source/types.ts';
import { DAYS_A_WEEK, isoDate } from '../../util/days.ts';
import type { Day } from '../../util/days.ts';
import { contactsConflict } from '../conflicts/contacts-conflict.ts';
import { factWords, without } from '../conflicts/facts.ts';
import type { AthleteGrid } from '../types.ts';
import { boundsOf, holding, mostAllowed, nextVolume, openingVolume, roundDown } from './bounds.ts';
import { searchContacts } from './search.ts';
import type { WeekTerms } from './terms.ts';

export interface Met {
  readonly terms: readonly WeekTerms[];
  readonly contacts: readonly number[];
  /** Of the pins that are let go. Made when it is asked for: the search for a conflict asks for the numbers alone. */
  readonly diagnostics: () => readonly Diagnostic[];
}

export interface PinTask {
  readonly plan: Plan;
  readonly grid: AthleteGrid;
  /** A before the first week. */
  readonly start: number;
  /** Weeks wholly before this day are what the record says. */
  readonly asOf: Day | undefined;
  /** First days of weeks written by hand that the audit bars. */
  readonly unwritten: ReadonlySet<Day>;
  /** Pins that could not be met and are let go. */
  readonly released: ReadonlySet<Pin>;
}

/** The plan of least cost; pins that can't be met are reported and let go, one after the other. */
export function meetPins(task: PinTask, terms: readonly WeekTerms[]): Met {
  const found = searchContacts(terms, task.start);
  if (found !== undefined) return { terms, contacts: found, diagnostics: () => [] };
  const clash = firstClash(terms, task.start);
  const rest = terms.map((week, index) => (index === clash.week ? withoutPin(week) : week));
  const released = new Set([...task.released, ...pinsAt(task.plan, terms[clash.week]?.fixed?.span)]);
  const met = meetPins({ ...task, released }, rest);
  return { ...met, diagnostics: () => [pinConflict(task, terms, clash), ...met.diagnostics()] };
}

function pinsAt({ pins }: Plan, span: Span | undefined): readonly Pin[] {
  return pins.filter((pin) => pin.span === span);
}

function withoutPin(terms: WeekTerms): WeekTerms {
  const { fixed: _, ...rest } = terms;
  return rest;
}

interface Clash {
  readonly week: number;
  /** The most that week may have whatever is done before it. */
  readonly most: number;
  readonly by: BoundBy;
}

/** Always the most that targets and pins leave, until a pin asks for more than that. */
function firstClash(terms: readonly WeekTerms[], start: number): Clash {
  let adapted = start;
  for (const [week, one] of terms.entries()) {
    const opening = openingVolume(one, adapted);
    const most = mostAllowed(one, opening);
    if (one.fixed?.kind === 'pin' && one.fixed.contacts > most) {
      return { week, most, by: holding(boundsOf(one, opening))?.by ?? 'pin' };
    }
    adapted = nextVolume(one, opening, one.fixed?.contacts ?? Math.min(most, roundDown(one.reach)));
  }
  throw new Error('a plan without a clash was called impossible');
}

function pinConflict(
  { plan, grid, asOf, unwritten, released }: PinTask,
  terms: readonly WeekTerms[],
  clash: Clash,
): Diagnostic {
  const { athlete } = grid;
  const fixed = terms[clash.week]?.fixed;
  const span = fixed?.span ?? athlete.span;
  const wanted = fixed?.contacts ?? 0;
  const season = without({ plan, athlete, asOf, unwritten }, released);
  const conflict = contactsConflict(season, { week: clash.week, contacts: wanted, span });
  return problem('schedule/pin-too-high', {
    params: {
      athlete: athlete.name,
      week: isoDate(grid.weeks[clash.week]?.starts ?? grid.range.from),
      wanted,
      most: clash.most,
      rule: clash.by,
      others: conflict.facts.length,
      each: conflict.eachIsEnough,
      earliest:
        conflict.earliest === undefined ? '' : isoDate(grid.weeks[conflict.earliest]?.starts ?? grid.range.until),
      rise: conflict.rise ?? 0,
      waivers: conflict.waivers?.join(', ') ?? '',
      from: isoDate(grid.range.from),
      until: isoDate((grid.weeks[clash.week]?.starts ?? grid.range.from) + DAYS_A_WEEK - 1),
    },
    span,
    related: [
      ...conflict.facts.map((fact) => ({ span: fact.span, message: factWords(fact) })),
      { span: athlete.span, message: 'the athlete it is for' },
    ],
    athlete: athlete.id,
    week: grid.weeks[clash.week]?.starts,
  });
}
