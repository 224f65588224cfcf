// Seasons that are kept from one save to the next are those of a build from scratch: whatever is edited, what is found and
// where it points to, waivers that freed something, sheets, all tables, and what a watch tells of the save.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createSheets } from '../../src/cli/build-kept.ts';
import type { KeptSheets } from '../../src/cli/build-kept.ts';
import { compileAt } from '../../src/cli/open-plan.ts';
import type { BuildRequest } from '../../src/cli/requests.ts';
import { planFindings } from '../../src/compile.ts';
import type { CompiledPlan } from '../../src/compile.ts';
import { diffBuilds } from '../../src/diff/diff-builds.ts';
import type { Side } from '../../src/diff/side.ts';
import { rememberingParse } from '../../src/read/known-texts.ts';
import type { Parse } from '../../src/read/known-texts.ts';
import type { Athlete, Plan } from '../../src/plan/types.ts';
import { EVERYTHING } from '../../src/report/selection.ts';
import { createSeasonMemory } from '../../src/reuse/season-memory.ts';
import type { KeptSeason } from '../../src/reuse/season-memory.ts';
import { memoryFiles } from '../unit/read/memory-files.ts';
import { IN_ORDER, planFiles } from './plan-files.ts';
import type { Chance } from './plan-files.ts';
import { PATIENCE, plansFor, tell } from './plans.ts';
import { randomPlan, withProgramme, withRecord } from './random-plan.ts';
import { randomSave } from './random-save.ts';
import type { Saved } from './random-save.ts';

const PLANS = plansFor(16);
const MOST_SAVES = 5;
const REQUEST: BuildRequest = { plan: '/plan', athletes: [], squads: [], format: 'csv', out: 'out' };

/** Items dealt out over the files, by the same chance each time; a plan that is written down like another stays so. */
function dealtBy(seed: number | undefined): Chance {
  if (seed === undefined) return IN_ORDER;
  let state = seed;
  return (below) => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return Math.floor(state / 65536) % below;
  };
}

function compiled({ plan, linesAbove, asOf }: Saved, seed?: number, parse?: Parse): CompiledPlan | undefined {
  const files = Object.entries(planFiles(plan, dealtBy(seed))).map(([path, text], at): readonly [string, string] => [
    path,
    path.endsWith('.csv') ? text : `${'# nothing\n'.repeat(linesAbove[at] ?? 0)}${text}`,
  ]);
  const today = plan.season.ends + 400;
  const host = memoryFiles(Object.fromEntries(files));
  return compileAt('/plan', { files: host, today }, asOf === undefined ? {} : { asOf }, parse).build;
}

/** Everything that a round of a watch tells or writes of the athletes. */
function toldOf(build: CompiledPlan, seasons: readonly KeptSeason<KeptSheets>[]) {
  return {
    found: [...seasons.flatMap(({ diagnostics }) => diagnostics), ...planFindings(build.plan, seasons)],
    seasons: seasons.map(({ athlete, made, freed }) => ({
      athlete: athlete.id,
      weeks: made.weeks,
      tables: Object.entries(made.rows ?? {}).map(([table, rows]) => `${table}: ${Buffer.from(rows).toString()}`),
      freed: [...freed].map((waiver) => build.plan.waivers.indexOf(waiver)).toSorted((a, b) => a - b),
    })),
  };
}

const sideOf = ({ plan }: CompiledPlan, seasons: readonly KeptSeason<KeptSheets>[]): Side => ({
  plan,
  units: plan.season.units,
  athletes: plan.athletes,
  sheets: seasons.map(({ athlete, made }) => ({ athlete, weeks: made.weeks })),
});

/** From scratch. */
function coldSeasons(build: CompiledPlan): readonly KeptSeason<KeptSheets>[] {
  const make = createSheets(REQUEST, build.plan, EVERYTHING);
  return [...build.athletes].map((built) => ({ ...built, made: make(built) }));
}

const plans = fc.oneof(
  { weight: 2, arbitrary: randomPlan },
  { weight: 1, arbitrary: withRecord(randomPlan) },
  { weight: 1, arbitrary: withProgramme(randomPlan) },
);

/** Only plans that can be built, their squads larger by some who are like others. */
const withOthers = (some: fc.Arbitrary<Plan>, most: number): fc.Arbitrary<Plan> =>
  some
    .chain((plan) =>
      fc.integer({ min: 0, max: most }).map((many) => {
        const others = Array.from({ length: many }, (_, at): readonly Athlete[] => {
          const like = plan.athletes[at % plan.athletes.length];
          return like === undefined
            ? []
            : [{ ...like, id: `other-${String(at + 1)}`, name: `Other ${String(at + 1)}` }];
        });
        return { ...plan, athletes: [...plan.athletes, ...others.flat()] };
      }),
    )
    .filter((plan) => compiled({ plan, linesAbove: [0, 0, 0] }) !== undefined);

const KINDS = [
  {
    name: 'any plan',
    some: withOthers(plans, 5),
    saves: randomSave(),
    runs: PLANS,
  },
  {
    name: 'a plan with a record, of which numbers are edited',
    some: withOthers(withRecord(randomPlan), 2),
    saves: randomSave(['number of the record', 'number of the record', 'row of the record', 'lines above']),
    runs: Math.ceil(PLANS / 2),
  },
  {
    name: 'a big squad, in which some come and go',
    some: withOthers(randomPlan, 12),
    saves: randomSave(['athlete added', 'athlete removed', 'squad', 'cleared', 'mass', 'kit']),
    runs: Math.ceil(PLANS / 2),
  },
  {
    name: 'a squad of several sports',
    some: withOthers(randomPlan, 8),
    saves: randomSave(['sport', 'sport', 'sport of the season', 'athlete removed', 'squad', 'name']),
    runs: Math.ceil(PLANS / 2),
  },
  {
    name: 'a default that is written down',
    some: withOthers(randomPlan, 2),
    saves: randomSave(['now written down as it is', 'name']),
    runs: Math.ceil(PLANS / 2),
  },
];

describe('seasons that are kept', { timeout: PATIENCE }, () => {
  it.each(KINDS)('are those of a build from scratch, save after save: $name', ({ name, some, saves: save, runs }) => {
    const counts = { saves: 0, seasons: 0, kept: 0 };
    fc.assert(
      fc.property(
        some,
        fc.array(save, { minLength: 1, maxLength: MOST_SAVES }),
        fc.option(fc.nat({ max: 1_000_000 }), { nil: undefined, freq: 2 }),
        (plan, saves, seed) => {
          const memory = createSeasonMemory<KeptSheets>();
          const parse = rememberingParse();
          let saved: Saved = { plan, linesAbove: [0, 0, 0] };
          let last: { readonly kept: Side; readonly cold: Side } | undefined;
          for (const edit of [undefined, ...saves]) {
            saved = edit?.apply(saved) ?? saved;
            const [build, again] = [compiled(saved, seed, parse), compiled(saved, seed)];
            if (build === undefined || again === undefined) continue;
            let made = 0;
            const make = createSheets(REQUEST, build.plan, EVERYTHING);
            const round = memory.open(build, (built) => {
              made += 1;
              return make(built);
            });
            const kept = build.plan.athletes.map(round.season);
            const cold = coldSeasons(again);
            expect(toldOf(build, kept)).toEqual(toldOf(again, cold));
            const sides = { kept: sideOf(build, kept), cold: sideOf(again, cold) };
            if (last !== undefined)
              expect(diffBuilds(last.kept, sides.kept)).toEqual(diffBuilds(last.cold, sides.cold));
            if (edit !== undefined && last !== undefined) {
              counts.saves += 1;
              counts.seasons += kept.length;
              counts.kept += kept.length - made;
            }
            last = sides;
          }
        },
      ),
      { numRuns: runs },
    );
    tell(
      `seasons that are kept, ${name}: ${String(runs)} plans, ${String(counts.saves)} saves, ${String(counts.kept)} of ${String(counts.seasons)} seasons kept, all as from scratch`,
    );
    expect(counts.saves).toBeGreaterThan(runs / 2);
    expect(counts.kept).toBeGreaterThan(counts.seasons / 20);
  });
});
