// Places and their kit. Called by resolve.ts. Kit listed piece by piece is counted as well, so that whoever asks how many
// needn't know how it was listed.

import { at } from '../language/authored.ts';
import type { Item } from '../language/authored.ts';
import type { MapFields } from '../language/sections.ts';
import { problem } from '../diagnostics/problem.ts';
import { KIT_IDS } from '../library/kit.ts';
import { STEP_WITHOUT_PLATES_GRAMS } from '../library/plates.ts';
import type { KitId } from '../library/types.ts';
import { byCodeUnit } from '../util/by-code-unit.ts';
import type { Scope } from './scope.ts';
import type { Kit, TrainingPlace } from './types.ts';

type PlaceItem = Item<MapFields<'places'>>;
type KitFields = NonNullable<MapFields<'places'>['kit']>;

/** Places by id, in order of id. A place with a mistake stays, as slots that name it aren't mistaken. */
export function resolvePlaces(scope: Scope): ReadonlyMap<string, TrainingPlace> {
  const entries = [...scope.authored.places].toSorted(([a], [b]) => byCodeUnit(a, b));
  return new Map(entries.map(([id, item]) => [id, resolvePlace(scope, id, item)]));
}

function resolvePlace(scope: Scope, id: string, item: PlaceItem): TrainingPlace {
  const kit = item.value.kit ?? {};
  if (needsPlate(kit)) scope.report(problem('plan/no-smallest-plate', at(item, 'kit')));
  const { surface } = item.value;
  return { id, ...(surface !== undefined && { surface }), kit: resolveKit(kit), span: item.span };
}

function needsPlate(kit: KitFields): boolean {
  return (countOf(kit.bars) > 0 || countOf(kit['trap-bars']) > 0) && kit['smallest-plate'] === undefined;
}

function countOf(value: number | readonly number[] | undefined): number {
  return typeof value === 'object' ? value.length : (value ?? 0);
}

function resolveKit(kit: KitFields): Kit {
  return {
    counts: new Map(
      KIT_IDS.flatMap((id): [KitId, number][] => (kit[id] === undefined ? [] : [[id, countOf(kit[id])]])),
    ),
    boxesCm: listOf(kit.boxes),
    barsGrams: listOf(kit.bars),
    smallestPlateGrams: kit['smallest-plate'] ?? STEP_WITHOUT_PLATES_GRAMS,
    dumbbellsGrams: listOf(kit.dumbbells),
    kettlebellsGrams: listOf(kit.kettlebells),
  };
}

function listOf(value: number | readonly number[] | undefined): readonly number[] {
  return typeof value === 'object' ? value.toSorted((a, b) => a - b) : [];
}
