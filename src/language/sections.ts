// The keys at the left edge of a plan file, and the shape of what each holds. Decoding walks this table, and the JSON
// Schema is made from it, so that a key can't be in one and not in the other.

import type { Output } from './shape.ts';
import { athleteShape, squadShape } from './shapes/athletes.ts';
import { closureShape, competitionShape, practiceShape, slotShape, testShape } from './shapes/calendar.ts';
import { drillShape, liftShape } from './shapes/exercises.ts';
import { alwaysShape, programmeShape, useShape } from './shapes/lines.ts';
import { pinShape } from './shapes/pins.ts';
import { placeShape } from './shapes/places.ts';
import { waiverShape } from './shapes/rules.ts';
import { recordShape, seasonShape } from './shapes/season.ts';

/** Lists of items: those of all files, one after the other. */
export const listShapes = {
  slots: slotShape,
  competitions: competitionShape,
  closures: closureShape,
  practice: practiceShape,
  tests: testShape,
  pins: pinShape,
  always: alwaysShape,
  waivers: waiverShape,
  use: useShape,
} as const;

/** Items by id: those of all files together, each id once. */
export const mapShapes = {
  places: placeShape,
  squads: squadShape,
  athletes: athleteShape,
  programmes: programmeShape,
  drills: drillShape,
  lifts: liftShape,
} as const;

/** One group of keys, put together from all files. */
export const groupShapes = { season: seasonShape, record: recordShape } as const;

export type ListKey = keyof typeof listShapes;
export type MapKey = keyof typeof mapShapes;
export type GroupKey = keyof typeof groupShapes;

export type ListFields<K extends ListKey> = Output<(typeof listShapes)[K]>;
export type MapFields<K extends MapKey> = Output<(typeof mapShapes)[K]>;
export type GroupFields<K extends GroupKey> = Output<(typeof groupShapes)[K]>;

export const LIST_KEYS = Object.keys(listShapes) as readonly ListKey[];
export const MAP_KEYS = Object.keys(mapShapes) as readonly MapKey[];

/** In the order a coach reads a plan. */
export const SECTION_KEYS: readonly string[] = [
  'footfall',
  'season',
  'files',
  'roster',
  'places',
  'slots',
  'competitions',
  'closures',
  'practice',
  'tests',
  'squads',
  'athletes',
  'rules',
  'pins',
  'always',
  'waivers',
  'programmes',
  'use',
  'drills',
  'lifts',
  'record',
];
