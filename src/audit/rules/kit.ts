// kit: what a line needs is at the place of its slot, a box of the height that is dropped from or jumped onto among it,
// and the kilos on a bar are made of the bars and plates there are.

import type { Kit } from '../../plan/types.ts';
import { ALLOTTING } from '../../library/families.ts';
import { kitWords } from '../../library/kit.ts';
import { isoDate } from '../../util/days.ts';
import { writtenPlace } from '../places.ts';
import { auditRule } from '../rule.ts';
import type { LineReading } from '../line-reading.ts';
import { heightWords, loadWords } from '../../util/quantities.ts';
import type { Units } from '../../util/quantities.ts';

export const kit = auditRule(
  'kit',
  (season, find) => {
    const { units } = season.plan.season;
    for (const session of season.sessions) {
      const { place } = session.session.slot;
      for (const line of session.lines) {
        const missing =
          missingKit(line, place.kit) ?? missingBox(line, place.kit, units) ?? missingPlates(line, place.kit, units);
        if (missing === undefined) continue;
        find(season.weekOf(session), {
          params: { date: isoDate(session.day), exercise: line.line.exercise, missing, place: place.id },
          span: writtenPlace(line),
          related: [{ span: place.span, message: 'the place' }],
        });
      }
    }
  },
  { asksLoads: true },
);

function missingKit({ drill, lift }: LineReading, { counts }: Kit): string | undefined {
  for (const id of (drill ?? lift)?.kit ?? []) if ((counts.get(id) ?? 0) < 1) return kitWords(id, 2);
  return undefined;
}

/** A place whose boxes have no heights is taken to have the right one. */
function missingBox({ drill, dropCm }: LineReading, { boxesCm }: Kit, units: Units): string | undefined {
  const wanted = drill?.kit.includes('boxes') === true ? (dropCm ?? drill.boxCm) : undefined;
  if (wanted === undefined || boxesCm.length === 0) return undefined;
  const fits = boxesCm.some((box) => box >= wanted - ALLOTTING.boxLowerCm && box <= wanted + ALLOTTING.boxHigherCm);
  return fits ? undefined : `a box of ${heightWords(wanted, units)}`;
}

function missingPlates(
  { line, lift }: LineReading,
  { barsGrams, smallestPlateGrams }: Kit,
  units: Units,
): string | undefined {
  const { barGrams, perSideGrams, loadGrams } = line;
  if (barGrams === undefined || perSideGrams === undefined || loadGrams === undefined) return undefined;
  if (lift?.loading === 'bar' && !barsGrams.includes(barGrams)) {
    return `a bar of ${loadWords(barGrams, units)}`;
  }
  const even = smallestPlateGrams <= 0 || perSideGrams % smallestPlateGrams === 0;
  const adds = barGrams + 2 * perSideGrams === loadGrams;
  return even && adds ? undefined : `plates that make ${loadWords(loadGrams, units)}`;
}
