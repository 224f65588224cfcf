// Authored → Plan: names bound, squads' fields and defaults filled in, rules and waivers checked, everything in an order
// that files and keys can't change. Called by load-plan.ts. An item with a mistake is left out and reported once; the
// rest goes on, so that one run finds every mistake.

import type { Authored } from '../language/authored.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Day } from '../util/days.ts';
import { reportPeakClashes, reportSlotClashes } from './calendar-clashes.ts';
import { resolvePeople } from './resolve-athletes.ts';
import {
  resolveClosures,
  resolveCompetitions,
  resolvePractice,
  resolveSlots,
  resolveTests,
} from './resolve-calendar.ts';
import { resolveLibrary } from './resolve-exercises.ts';
import { resolveAlways, resolveProgrammes, resolveUses } from './resolve-lines.ts';
import { resolvePins } from './resolve-pins.ts';
import { resolvePlaces } from './resolve-places.ts';
import { resolveRecord } from './resolve-record.ts';
import { resolveRuleChanges, resolveWaivers } from './resolve-rules.ts';
import { resolveSeason } from './resolve-season.ts';
import type { SeasonFrame } from './resolve-season.ts';
import { limitedGuesses } from './bind-names.ts';
import type { Scope } from './scope.ts';
import type { DayRange, Plan } from './types.ts';

/**
 * The plan, or undefined where the season itself has a mistake; other items with mistakes are left out of it. Rows of the
 * record later than `today` are mistakes.
 */
export function resolve(authored: Authored, today?: Day): Staged<Plan | undefined> {
  const diagnostics: Diagnostic[] = [];
  const report = (diagnostic: Diagnostic): void => {
    diagnostics.push(diagnostic);
  };
  const frame = resolveSeason(authored, report);
  const scope = scopeOf(authored, frame, report);
  const items = resolveItems(scope, today);
  const { season } = frame;
  if (season === undefined) return { value: undefined, diagnostics };
  return { value: { files: authored.files, season, library: scope.library, ...items }, diagnostics };
}

/** Days that hold every item when the season's own are unknown, so that items are checked for the rest. */
const ALL_DAYS: DayRange = { from: -1_000_000, until: 3_000_000 };

function scopeOf(authored: Authored, { range, weekStarts, units }: SeasonFrame, report: Scope['report']): Scope {
  const library = resolveLibrary(authored, report);
  return {
    authored,
    library,
    patterns: new Set([...library.lifts.values()].map(({ pattern }) => pattern)),
    frame: range ?? ALL_DAYS,
    isFramed: range !== undefined,
    weekStarts,
    units,
    report,
    guess: limitedGuesses(),
  };
}

function resolveItems(scope: Scope, today: Day | undefined): Omit<Plan, 'files' | 'season' | 'library'> {
  const places = resolvePlaces(scope);
  const slots = resolveSlots(scope, places);
  const competitions = resolveCompetitions(scope);
  const people = resolvePeople(scope);
  const programmes = resolveProgrammes(scope);
  if (scope.authored.slots.length === 0 && !scope.authored.misshapen.has('slots'))
    scope.report(problem('plan/no-slots', { span: scope.authored.start }));
  reportSlotClashes(scope, slots, people.athletes);
  reportPeakClashes(scope, competitions, people.athletes);
  return {
    places,
    slots,
    competitions,
    closures: resolveClosures(scope),
    practice: resolvePractice(scope),
    tests: resolveTests(scope),
    ...people,
    ruleChanges: resolveRuleChanges(scope),
    pins: resolvePins(scope),
    always: resolveAlways(scope),
    waivers: resolveWaivers(scope),
    programmes,
    uses: resolveUses(scope, programmes),
    record: resolveRecord(scope, today),
  };
}
