// How a rule of the audit is written: an id and a check that reports what it finds. Each file under rules/ exports one;
// audit.ts walks them. A check knows nothing of waivers: what it finds in a waived week is taken out later, and shows
// that the waiver was needed.

import type { Severity } from '../diagnostics/entry.ts';
import type { Diagnostic, RelatedPlace } from '../diagnostics/types.ts';
import type { Catalogue } from '../diagnostics/catalogue.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Details } from '../diagnostics/problem.ts';
import type { RuleId } from '../library/rules.ts';
import type { Athlete } from '../plan/types.ts';
import type { Span } from '../source/types.ts';
import { isoDate } from '../util/days.ts';
import type { Day } from '../util/days.ts';
import type { SeasonReading, WeekReading } from './season-reading.ts';

type RuleCode<Id extends RuleId> = `rule/${Id}`;

/** What the code's message asks for, but for the athlete and the week, which every finding has. */
type OwnParams<Id extends RuleId> = Omit<Parameters<Catalogue[RuleCode<Id>]['message']>[0], 'athlete' | 'week'>;

export interface FindingDetails<Id extends RuleId> {
  readonly params: OwnParams<Id>;
  /** The athlete's key, unless a more telling place made it. */
  readonly span?: Span | undefined;
  /** Only where it is graver than the rule's own. */
  readonly severity?: Severity | undefined;
  readonly related?: readonly RelatedPlace[];
}

export type Find<Id extends RuleId> = (week: WeekReading, details: FindingDetails<Id>) => void;

/**
 * What is found, told of an athlete. It holds no more of the season than what it tells, as it may be kept for others of
 * whom the same is true.
 */
export type Telling = (athlete: Athlete) => Diagnostic;

export interface Finding {
  readonly week: WeekReading;
  /** Its words are made when it stands: a waived finding, and one of a notice already said, need none. */
  readonly tell: Telling;
}

export interface AuditRule {
  readonly id: RuleId;
  /** Each of its findings is about something else, so that none stands for the others. */
  readonly separate: boolean;
  /**
   * Whether it looks at kilos, at shares of a maximum, at what is heavy by them, or at the athlete's maxima. What another
   * rule finds is true of everybody whose season differs in these alone.
   */
  readonly asksLoads: boolean;
  readonly check: (season: SeasonReading) => readonly Finding[];
}

/**
 * A rule from its id and its check. `find` takes the week a finding belongs to and what the code's message asks for;
 * the athlete and the week are added here.
 */
export function auditRule<Id extends RuleId>(
  id: Id,
  check: (season: SeasonReading, find: Find<Id>) => void,
  { separate = false, asksLoads = false }: Partial<Pick<AuditRule, 'separate' | 'asksLoads'>> = {},
): AuditRule {
  return {
    id,
    separate,
    asksLoads,
    check: (season) => {
      const findings: Finding[] = [];
      check(season, (week, details) => {
        findings.push({ week, tell: telling(id, week.range.from, details) });
      });
      return findings;
    },
  };
}

function telling<Id extends RuleId>(
  id: Id,
  week: Day,
  { params, span, severity, related }: FindingDetails<Id>,
): Telling {
  return (athlete) => {
    // The compiler can't see that the code's own params, the athlete and the week are all that its message asks for.
    const all: unknown = Object.assign({}, params, { athlete: athlete.id, week: isoDate(week) });
    return problem(`rule/${id}` satisfies RuleCode<Id>, {
      params: all,
      span: span ?? athlete.span,
      severity,
      related,
      rule: id,
      athlete: athlete.id,
      week,
    } as Details<RuleCode<Id>>);
  };
}
