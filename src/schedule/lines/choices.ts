// The sets and reps that make each number of contacts of one drill, the neatest for each number. Called by the search
// that shares out a session. Neat is three to five sets of one rep count, and fewer sets where both would do.

import { ALLOTTING } from '../../library/families.ts';
import { contactsOfRep } from '../../library/drill-facts.ts';
import type { Drill, Range } from '../../library/types.ts';
import { VOLUME } from '../../library/volume.ts';

export interface Choice {
  readonly sets: number;
  readonly reps: number;
  readonly contacts: number;
  readonly cost: number;
}

/** A drill that may have some of a session's contacts. */
export interface Candidate {
  readonly drill: Drill;
  /** Most contacts it may have in this session. */
  readonly most: number;
  /** Sets a coach has pinned. */
  readonly sets?: number;
  /** It can't be left out. */
  readonly keep: boolean;
}

interface ChoiceRange {
  readonly sets: Range;
  readonly reps: Range;
}

/** The drill's own ranges, or the widest that still make a session. */
function rangeOf(drill: Drill, widened: boolean, fixedSets: number | undefined): ChoiceRange {
  const sets = widened ? ALLOTTING.widestSets : drill.sets;
  return {
    sets: fixedSets === undefined ? sets : { from: fixedSets, to: fixedSets },
    reps: widened ? ALLOTTING.widestReps : drill.reps,
  };
}

/** How the contacts of a line may be made. */
export interface Manner {
  /** Sets and reps beyond the drill's own ranges. */
  readonly widened: boolean;
  /** Contacts in steps of this. */
  readonly step: number;
  /** As few sets as can be. */
  readonly brief?: boolean;
}

/** As `choicesOf`, in the steps of a manner, worked out once for a drill; lines that are no step of the week's cost more. */
export function knownChoices(drill: Drill, manner: Manner, fixedSets: number | undefined): readonly Choice[] {
  const ofDrill = choicesKnown.get(drill) ?? new Map<string, readonly Choice[]>();
  choicesKnown.set(drill, ofDrill);
  const key = `${manner.widened ? 'w' : ''}${manner.brief === true ? 'b' : ''}${manner.step}/${fixedSets ?? ''}`;
  const choices = ofDrill.get(key) ?? choicesIn(drill, manner, fixedSets);
  ofDrill.set(key, choices);
  return choices;
}

const choicesKnown = new WeakMap<Drill, Map<string, readonly Choice[]>>();

function choicesIn(drill: Drill, { widened, step, brief }: Manner, fixedSets: number | undefined): readonly Choice[] {
  const choices = choicesOf(drill, rangeOf(drill, widened, fixedSets), brief).filter(
    ({ contacts }) => contacts % step === 0,
  );
  if (brief === true) return choices;
  return choices.map((choice) =>
    choice.contacts % VOLUME.step === 0 ? choice : { ...choice, cost: choice.cost + ALLOTTING.uneven },
  );
}

/** The neatest sets and reps for each number of contacts, in ascending order of contacts; `brief` for the fewest sets. */
function choicesOf(drill: Drill, range: ChoiceRange, brief = false): readonly Choice[] {
  const best = new Map<number, Choice>();
  const each = contactsOfRep(drill);
  for (let sets = range.sets.from; sets <= range.sets.to; sets += 1) {
    for (let reps = range.reps.from; reps <= range.reps.to; reps += 1) {
      const choice = {
        sets,
        reps,
        contacts: sets * reps * each,
        cost: brief ? sets * ALLOTTING.briefSet : setsCost(sets),
      };
      const known = best.get(choice.contacts);
      if (known === undefined || choice.cost < known.cost) best.set(choice.contacts, choice);
    }
  }
  return [...best.values()].sort((a, b) => a.contacts - b.contacts);
}

function setsCost(sets: number): number {
  const { from, to } = ALLOTTING.usualSets;
  const odd = sets < from ? from - sets : Math.max(0, sets - to);
  return odd * ALLOTTING.oddSets + sets * ALLOTTING.set;
}

/** The fewest contacts a drill makes in its own ranges: a step of the week's contacts, or the least of an uneven line. */
export function leastContacts(drill: Drill): number {
  const known = leastKnown.get(drill);
  if (known !== undefined) return known;
  const least =
    choicesOf(drill, rangeOf(drill, false, undefined)).find(fitsALine)?.contacts ?? Number.POSITIVE_INFINITY;
  leastKnown.set(drill, least);
  return least;
}

const leastKnown = new WeakMap<Drill, number>();

const fitsALine = ({ contacts }: Choice): boolean => contacts >= ALLOTTING.leastUneven || contacts % VOLUME.step === 0;
