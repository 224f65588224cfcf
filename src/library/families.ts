// How drill families are chosen for a group, and how a session's contacts are shared among its drills: numbers of
// families, which phase's families a phase builds on, and what departures cost. Read by the stage that writes the lines.
// All of it is common practice (C): mixed jumping beat one kind (V7, P), but no source says how many kinds.

import type { PhaseId } from './types.ts';

export const FAMILIES = {
  /** Families of a block: fewest, usual, most. */
  least: 3,
  usual: 4,
  most: 5,
  /** Families of one athlete's session, at least, where any fit. */
  leastInSession: 2,
  /** Families that change from the phase before, at most. */
  change: 2,
} as const;

/** The phase whose families a phase keeps as many of as it can. */
const BUILDS_ON: Partial<Record<PhaseId, PhaseId>> = {
  strength: 'hypertrophy',
  'strength-power': 'strength',
  power: 'strength-power',
  sharpening: 'power',
  maintenance: 'strength-power',
  hold: 'power',
};

/** The phase whose families a phase keeps where it can; undefined for one that starts afresh. */
export function findPhaseBuiltOn(phase: PhaseId): PhaseId | undefined {
  return BUILDS_ON[phase];
}

/**
 * Families that a phase is usually built of, where several would do: those that learn to land and jump softly first,
 * quick and high ones later. A family not named here is taken where the named ones don't fit the place or the members.
 */
const USUAL: Partial<Record<PhaseId, readonly string[]>> = {
  foundation: ['landing', 'jump-in-place', 'long-jump', 'side-jump', 'bounce'],
  hypertrophy: ['jump-in-place', 'box-jump', 'long-jump', 'skater', 'bounce'],
  strength: ['box-jump', 'jump-in-place', 'long-jump', 'skater', 'rebound', 'bounce'],
  'strength-power': ['rebound', 'box-jump', 'jump-series', 'long-jump', 'skater', 'drop'],
  power: ['rebound', 'drop', 'approach-jump', 'bound', 'skater', 'skater-series', 'jump-series'],
  sharpening: ['rebound', 'drop', 'approach-jump', 'bound', 'skater', 'skater-series', 'jump-series'],
  maintenance: ['rebound', 'box-jump', 'long-jump', 'skater', 'line'],
  hold: ['rebound', 'box-jump', 'long-jump', 'skater', 'line'],
};

/** The families that a phase is usually built of. */
export function usualFamilies(phase: PhaseId): readonly string[] {
  return USUAL[phase] ?? [];
}

/** What a set of families costs; the least sum is chosen. Shares are in points of 100. */
export const FAMILY_COST = {
  /** A point squared that the nearest mixture is off a direction's share. */
  directionPoint: 0.1,
  /** A point squared that it is outside the phase's band of fast work. */
  fastPoint: 0.1,
  /** No drill of the high tier where the phase has room for some. */
  noHighTier: 60,
  /** A family that isn't usual in the phase. */
  unusual: 15,
  /** A family that the phase before didn't have, and one over the number that may change. */
  change: 8,
  changeTooMany: 1000,
  /** A family that the larger part of the squad, of another sport, doesn't do beside this one. */
  apart: 4,
  /** A family more or fewer than usual. */
  count: 10,
  /** A member in a hundred whom no rung of a family fits, and the members in a hundred it must fit. */
  memberLeftOut: 1,
  leastMembers: 50,
  /** Members are counted in steps of so many in a hundred, so that squads of one make choose alike. */
  memberStep: 10,
  /** A family without a counter-movement that isn't a landing: the rule leaves little room for it. */
  still: 30,
  /** A set takes this many times as long as its work and rest, or longer, as athletes queue for the kit. */
  queueFrom: 1.5,
  queue: 20,
  /** No drops where the phase has room for as much high-tier work as this, and most members are cleared for them. */
  noDrop: 40,
  dropsFromHigh: 25,
  /** Points of fast work that drops are counted for at most: a few of them stand on some of a week's days. */
  dropMost: 10,
  /** A second family with nothing below the high tier: a session has room for one. */
  secondHigh: 40,
  /** The mixtures looked at: shares in steps of this many points, and the most of one family. */
  mixtureStep: 10,
  mixtureMost: 40,
  /** Families of one kind (the same directions and cycle) that are looked at. */
  ofOneKind: 3,
  /** … and of all kinds together. */
  lookedAt: 16,
} as const;

/** What a way to share out a session's contacts costs; the least sum is chosen. Departures are in contacts of the week. */
export const ALLOTTING = {
  /** A contact squared off a direction's share. */
  direction: 2,
  /** In the week's last session: a direction off its share by more than the rule allows, for each. */
  directionNamed: 200,
  /** A contact squared outside the band of fast work; in the week's last session also being outside it at all. */
  fast: 6,
  fastNamed: 200,
  /** A contact squared off an equal part for each drill. */
  even: 0.1,
  /** A drill of the session left out. */
  leftOut: 40,
  /** A line whose contacts aren't a step of the week's, which is looked at only where the best costs more than this. */
  uneven: 3,
  goodEnough: 150,
  /** The most contacts of one line that any cap speaks of: no drill has more. */
  mostOfOne: 60,
  /** The least such an uneven line has. */
  leastUneven: 6,
  /** A set under or over the usual number. */
  oddSets: 6,
  usualSets: { from: 3, to: 5 },
  /** A set, for the time it takes, and what it costs where time is short. */
  set: 1,
  briefSet: 20,
  /** Sets and reps when no drill's own range meets the session's contacts. */
  widestSets: { from: 1, to: 10 },
  widestReps: { from: 1, to: 15 },
  /** The drop an athlete starts with, in cm. */
  firstDropCm: 20,
  /** A box stands for another that is lower by no more than this, or higher by the other, in cm. */
  boxLowerCm: 5,
  boxHigherCm: 1,
  /** How far a drill of another cycle is from one it stands in for, in points of direction. */
  otherCycle: 100,
  /** How far inside the band of fast work a session aims while others of its week are to come, in points. */
  fastInside: 4,
  /** Drills of a session that are done on each leg in turn, at most: one leg is a part of the work, not all of it. */
  eachLegDrills: 1,
} as const;
