// Who lifts at which rack or bar, with what on it. Athletes with like loads share a station, the lightest first, so that
// plates are added and hardly ever taken off.

import type { BuiltLine } from '../build/types.ts';
import type { KitId } from '../library/types.ts';
import { kitWords } from '../library/kit.ts';
import type { Plan } from '../plan/types.ts';
import type { Attendance } from './attendance.ts';
import type { SheetLine } from './sheet-line.ts';

export interface StationTable {
  /** `Back squat`, or several. */
  readonly title: string;
  readonly stations: readonly Station[];
}

export interface Station {
  /** `rack 1`. */
  readonly name: string;
  readonly people: readonly StationPerson[];
}

export interface StationPerson {
  readonly name: string;
  /** The exercise, where the table has several. */
  readonly exercise?: string;
  readonly dose: string;
  /** Absent where the athlete picks it. */
  readonly load?: string;
  readonly made?: string;
}

interface Lifting {
  readonly person: string;
  readonly line: BuiltLine;
  readonly sheet: SheetLine;
}

/** Kit that makes a station, most particular first. */
const STATION_KIT: readonly KitId[] = ['racks', 'trap-bars', 'bars'];

/** A table for each pattern of lifts that needs a rack or a bar, in the order they come. */
export function stationsOf(
  { library }: Pick<Plan, 'library'>,
  attendances: readonly Attendance[],
): readonly StationTable[] {
  const byKind = new Map<string, { readonly kit: KitId; readonly lifting: Lifting[] }>();
  for (const { name, session, lines } of attendances) {
    session.lines.forEach((line, index) => {
      const sheet = lines[index];
      const lift = library.lifts.get(line.exercise);
      const kit = STATION_KIT.find((item) => lift?.kit.includes(item) === true);
      if (lift === undefined || sheet === undefined || kit === undefined) return;
      const key = `${kit} ${lift.pattern}`;
      const table = byKind.get(key) ?? { kit, lifting: [] };
      byKind.set(key, table);
      table.lifting.push({ person: name, line, sheet });
    });
  }
  const place = attendances[0]?.session.slot.place;
  return [...byKind.values()].map(({ kit, lifting }) => tableOf(kit, lifting, place?.kit.counts.get(kit) ?? 1));
}

function tableOf(kit: KitId, lifting: readonly Lifting[], pieces: number): StationTable {
  const names = [...new Set(lifting.map(({ sheet }) => sheet.name))];
  const ordered = lifting.toSorted(lightestFirst);
  const count = Math.max(1, Math.min(pieces, ordered.length));
  return {
    title: names.join(', '),
    stations: Array.from({ length: count }, (_, index) => ({
      name: `${kitWords(kit, 1)} ${index + 1}`,
      people: ordered
        .slice(cut(index, count, ordered.length), cut(index + 1, count, ordered.length))
        .map((one) => personOf(one, names.length > 1)),
    })),
  };
}

const cut = (index: number, of: number, total: number): number => Math.round((index * total) / of);

/** Those on one bar together; those who pick their weight first, as they start light. */
function lightestFirst(a: Lifting, b: Lifting): number {
  return (a.line.barGrams ?? 0) - (b.line.barGrams ?? 0) || (a.line.loadGrams ?? 0) - (b.line.loadGrams ?? 0);
}

function personOf({ person, sheet }: Lifting, withExercise: boolean): StationPerson {
  return {
    name: person,
    ...(withExercise && { exercise: sheet.name }),
    dose: sheet.dose,
    ...(sheet.load !== undefined && { load: sheet.load }),
    ...(sheet.made !== undefined && { made: sheet.made }),
  };
}
