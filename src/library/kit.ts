// The kit a place may have: how each is written in a plan and named in print. Read by the plan language, by the choice
// of drills and lifts, and by the pages. `smallest-plate` stands beside these in a plan but is a mass, not kit.

import type { KitId } from './types.ts';

export interface KitItem {
  readonly id: KitId;
  readonly one: string;
  readonly many: string;
  /** How a plan lists it: a number of pieces, or one height or mass for each piece (where a number alone also reads). */
  readonly listed: 'count' | 'heights' | 'masses';
}

export const KIT: readonly KitItem[] = [
  { id: 'boxes', one: 'box', many: 'boxes', listed: 'heights' },
  { id: 'hurdles', one: 'hurdle', many: 'hurdles', listed: 'count' },
  { id: 'racks', one: 'rack', many: 'racks', listed: 'count' },
  { id: 'bars', one: 'bar', many: 'bars', listed: 'masses' },
  { id: 'trap-bars', one: 'trap bar', many: 'trap bars', listed: 'count' },
  { id: 'dumbbells', one: 'dumbbell', many: 'dumbbells', listed: 'masses' },
  { id: 'kettlebells', one: 'kettlebell', many: 'kettlebells', listed: 'masses' },
  { id: 'benches', one: 'bench', many: 'benches', listed: 'count' },
  { id: 'medicine-balls', one: 'medicine ball', many: 'medicine balls', listed: 'count' },
  { id: 'mats', one: 'mat', many: 'mats', listed: 'count' },
  { id: 'pull-up-bars', one: 'pull-up bar', many: 'pull-up bars', listed: 'count' },
  { id: 'bands', one: 'band', many: 'bands', listed: 'count' },
  { id: 'cables', one: 'cable station', many: 'cable stations', listed: 'count' },
  { id: 'sand-pit', one: 'sand pit', many: 'sand pits', listed: 'count' },
  { id: 'sled', one: 'sled', many: 'sleds', listed: 'count' },
  { id: 'cones', one: 'cone', many: 'cones', listed: 'count' },
  { id: 'balance-pads', one: 'balance pad', many: 'balance pads', listed: 'count' },
  { id: 'leg-machines', one: 'leg machine', many: 'leg machines', listed: 'count' },
];

export const KIT_IDS: readonly KitId[] = KIT.map((item) => item.id);

const BY_ID: ReadonlyMap<string, KitItem> = new Map(KIT.map((item) => [item.id, item]));

/** The kit of an id a person wrote, if there is one. */
export function findKit(id: string): KitItem | undefined {
  return BY_ID.get(id);
}

/** The kit of that id. */
export function getKit(id: KitId): KitItem {
  const item = BY_ID.get(id);
  if (item === undefined) throw new Error(`no kit ${id}`);
  return item;
}

/** What so many of a piece of kit are called: "box", "boxes". */
export function kitWords(id: KitId, count: number): string {
  const item = getKit(id);
  return count === 1 ? item.one : item.many;
}
