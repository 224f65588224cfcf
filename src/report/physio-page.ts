// The page for whoever treats the athletes, and for the coach: limits with their reasons, stages of a return and who
// signed them, what is cleared and what opens the rest, pain of the last weeks on record. Not for a wall.

import type { Build, BuiltAthlete } from '../build/types.ts';
import { CLEARANCES } from '../library/clearances.ts';
import { findParameter } from '../library/rules.ts';
import { SHEETS } from '../library/sheets.ts';
import { ageOn } from '../plan/athlete-facts.ts';
import type { Athlete, DoneRow, Plan } from '../plan/types.ts';
import { limitWords } from './limit-words.ts';
import { dateWords } from './calendar-words.ts';
import { rangeInSeason } from './decision-words.ts';

export interface PhysioPage {
  readonly title: string;
  readonly mark: string;
  readonly people: readonly PhysioPerson[];
  /** Names of those with nothing to tell. */
  readonly others: readonly string[];
}

export interface PhysioPerson {
  readonly name: string;
  readonly limits: readonly { readonly when: string; readonly what: string; readonly because: string }[];
  /** `stage 2 of 4 from 20 Dec, signed by physio`. */
  readonly stages: readonly string[];
  /** What is not cleared, and the words that open it. */
  readonly closed: readonly { readonly what: string; readonly opens: string }[];
  /** The last weeks on record, oldest first. */
  readonly pain: readonly { readonly day: string; readonly pain: number; readonly note: string }[];
}

export interface PhysioMaker {
  readonly add: (built: BuiltAthlete) => void;
  readonly finish: () => PhysioPage;
}

/** Takes the athletes one by one; those with nothing to tell are named at the end. */
export function createPhysioPage({ plan, mark }: Pick<Build, 'plan' | 'mark'>): PhysioMaker {
  const people: PhysioPerson[] = [];
  const others: string[] = [];
  const painBy = painRows(plan);
  return {
    add: ({ athlete }) => {
      const person = personOf(plan, athlete, painBy.get(athlete.id) ?? []);
      const isQuiet = person.limits.length + person.stages.length + person.pain.length === 0;
      if (isQuiet) others.push(athlete.name);
      else people.push(person);
    },
    finish: () => ({ title: plan.season.title, mark, people, others }),
  };
}

function personOf(plan: Plan, athlete: Athlete, rows: readonly DoneRow[]): PhysioPerson {
  return {
    name: athlete.name,
    limits: athlete.limits.map((limit) => ({
      when: rangeInSeason(plan, limit.range),
      what: limitWords(plan, limit),
      because: limit.because,
    })),
    stages: athlete.returning.map(
      ({ stage, of, since, signed }) => `stage ${stage} of ${of} from ${dateWords(since)}, signed by ${signed}`,
    ),
    closed: CLEARANCES.filter(({ id }) => !athlete.cleared.has(id) && matters(id, athlete, plan)).map(
      ({ id, words }) => ({
        what: words,
        opens: `cleared: [${id}]`,
      }),
    ),
    pain: rows.map(({ day, pain = 0, note = '' }) => ({ day: dateWords(day), pain, note })),
  };
}

/** Loads are held back by age alone. */
function matters(clearance: string, athlete: Athlete, { season }: Plan): boolean {
  const age = ageOn(athlete, season.starts);
  return clearance !== 'loads' || (age !== undefined && age < (findParameter('youth-load', 'under')?.value ?? 0));
}

/** Rows with pain of the last weeks before the last row on record, by athlete. */
function painRows({ record }: Plan): ReadonlyMap<string, readonly DoneRow[]> {
  const last = record.done.at(-1)?.day ?? 0;
  const byAthlete = new Map<string, DoneRow[]>();
  for (const row of record.done) {
    if (row.pain === undefined || row.day <= last - SHEETS.painDays) continue;
    const rows = byAthlete.get(row.athlete) ?? [];
    byAthlete.set(row.athlete, rows);
    rows.push(row);
  }
  return byAthlete;
}
