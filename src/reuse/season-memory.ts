// Athletes' seasons kept from one save of a plan to the next: what was found, and what the command makes of a compiled
// athlete. An athlete is compiled again unless all that the season hangs on says the same: the plan without its athletes
// and its record, the day it stands on, the athlete, the athlete's own rows, and what the squad gives. Called by the
// commands that watch; what `compile.ts` gives stays the only way to a season.

import { planIndex } from '../audit/plan-index.ts';
import type { Build, BuiltAthlete } from '../build/types.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { doneBy } from '../plan/done-by.ts';
import { athleteLikeness, likenessOf } from '../plan/same-meaning.ts';
import type { Likeness } from '../plan/same-meaning.ts';
import type { Athlete, Plan, Waiver } from '../plan/types.ts';
import type { Groups } from '../schedule/lines.ts';
import { movedFindings, movesBetween, pointInto } from './moved-findings.ts';
import type { Moves } from './moved-findings.ts';
import { squadGifts } from './squad-gifts.ts';
import type { KnownFamilies } from './squad-gifts.ts';

/** What is kept of an athlete's season, as the present plan has it. */
export interface KeptSeason<T> {
  readonly athlete: Athlete;
  readonly diagnostics: readonly Diagnostic[];
  readonly freed: ReadonlySet<Waiver>;
  /** What was made of the compiled athlete; the same object for as long as the season stands. */
  readonly made: T;
}

/** A build, and what its squads do side by side. */
export interface RememberedBuild extends Build {
  readonly context: { readonly groups: Groups };
}

export interface Round<T> {
  /** Whether nobody is left out for want of room. */
  readonly keepsEverybody: boolean;
  /** The season as it is kept, or compiled and kept. */
  readonly season: (athlete: Athlete) => KeptSeason<T>;
  /** Keeps a season that was compiled otherwise. */
  readonly keep: (built: BuiltAthlete) => KeptSeason<T>;
}

export interface SeasonMemory<T> {
  /**
   * One plan after the other. `make` may ask the athlete, the plan without its athletes and record, and `hangsOn`, which is
   * plain data; it holds nothing that says where a line stands.
   */
  readonly open: (build: RememberedBuild, make: (built: BuiltAthlete) => T, hangsOn?: unknown) => Round<T>;
}

/** Athletes whose seasons are kept; the others are compiled each time. */
const MOST_KEPT = 5_000;

/** An empty memory for as many athletes. */
export function createSeasonMemory<T>(mostKept: number = MOST_KEPT): SeasonMemory<T> {
  const seasons = new Map<string, Kept<T>>();
  let last: Standing | undefined;
  return {
    open: (build, make, hangsOn) => {
      const standing = standingOf(build, hangsOn, last);
      last = standing;
      const ids = new Set(build.plan.athletes.map(({ id }) => id));
      for (const id of seasons.keys()) if (!ids.has(id)) seasons.delete(id);
      const keep = (built: BuiltAthlete): KeptSeason<T> => {
        const kept = keptOf(built, standing, make(built));
        const { id } = built.athlete;
        seasons.delete(id);
        if (seasons.size < mostKept && isWhole(kept)) seasons.set(id, kept);
        return asNow(kept);
      };
      return {
        keepsEverybody: ids.size <= mostKept,
        keep,
        season: (athlete) => {
          const kept = seasons.get(athlete.id);
          const now = kept === undefined ? undefined : stillStanding(kept, athlete, standing);
          if (now === undefined) return keep(build.athlete(athlete));
          seasons.set(athlete.id, now);
          return asNow(now);
        },
      };
    },
  };
}

/** What all seasons of one plan hang on, and what is asked of it. */
interface Standing {
  readonly plan: Plan;
  readonly shared: unknown;
  readonly gifts: (athlete: Athlete) => string;
  readonly families: KnownFamilies;
  /** Against the plan of a season that was kept. */
  readonly since: (before: Standing) => Since;
}

interface Since {
  readonly likeness: Likeness;
  readonly moves: () => Moves;
}

function standingOf({ plan, asOf, context }: RememberedBuild, hangsOn: unknown, last: Standing | undefined): Standing {
  const { athletes: _athletes, record: _record, files: _files, ...rest } = plan;
  const shared = { rest, asOf, hangsOn };
  const known = new Map<Standing, Since>();
  const since = (before: Standing): Since => {
    const found = known.get(before) ?? sinceOf(before.shared, shared);
    known.set(before, found);
    return found;
  };
  const families = last === undefined || since(last).likeness === 'differs' ? new Map() : last.families;
  return { plan, shared, families, since, gifts: squadGifts(plan, context.groups, families) };
}

function sinceOf(before: unknown, after: unknown): Since {
  let moves: Moves | undefined;
  return { likeness: likenessOf(before, after), moves: () => (moves ??= movesBetween(before, after)) };
}

/** What a season hangs on besides. */
interface Own {
  readonly athlete: Athlete;
  readonly record: unknown;
}

interface Kept<T> {
  readonly standing: Standing;
  readonly own: Own;
  readonly gifts: string;
  readonly diagnostics: readonly Diagnostic[];
  /** By their order in the plan. */
  readonly freed: readonly number[];
  readonly made: T;
}

function ownOf(plan: Plan, athlete: Athlete): Own {
  return { athlete, record: [doneBy(plan.record, athlete.id), planIndex(plan).testsBy(athlete.id)] };
}

function keptOf<T>({ athlete, diagnostics, freed }: BuiltAthlete, standing: Standing, made: T): Kept<T> {
  const { plan } = standing;
  return {
    standing,
    own: ownOf(plan, athlete),
    gifts: standing.gifts(athlete),
    diagnostics,
    freed: [...freed].map((waiver) => plan.waivers.indexOf(waiver)),
    made,
  };
}

/** Whether nothing that was found points to what the season isn't known to hang on. */
function isWhole<T>({ diagnostics, own, standing }: Kept<T>): boolean {
  if (diagnostics.length === 0) return true;
  return pointInto(diagnostics, [movesBetween(own, own), standing.since(standing).moves()]);
}

/** The season as the present plan has it; undefined where something that it hangs on says otherwise. */
function stillStanding<T>(kept: Kept<T>, athlete: Athlete, standing: Standing): Kept<T> | undefined {
  const since = standing.since(kept.standing);
  if (since.likeness === 'differs') return undefined;
  const own = ownOf(standing.plan, athlete);
  const likeness = ownLikeness(kept.own, own);
  if (likeness === 'differs' || kept.gifts !== standing.gifts(athlete)) return undefined;
  const isMoved = since.likeness === 'moved' || likeness === 'moved';
  const diagnostics =
    isMoved && kept.diagnostics.length > 0
      ? movedFindings(kept.diagnostics, [movesBetween(kept.own, own), since.moves()])
      : kept.diagnostics;
  return diagnostics === undefined ? undefined : { ...kept, standing, own, diagnostics };
}

function ownLikeness(before: Own, after: Own): Likeness {
  const likeness = athleteLikeness(before.athlete, after.athlete);
  if (likeness === 'differs') return likeness;
  const record = likenessOf(before.record, after.record);
  return record === 'same' ? likeness : record;
}

function asNow<T>({ standing, own, diagnostics, freed, made }: Kept<T>): KeptSeason<T> {
  const waivers = freed.flatMap((at) => standing.plan.waivers[at] ?? []);
  return { athlete: own.athlete, diagnostics, freed: new Set(waivers), made };
}
