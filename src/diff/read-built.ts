// What a build wrote as JSON → its sheets, and the days that had a session: for a comparison, and for a build that is to
// stay near the sheets that are out. Read strictly: a document that footfall didn't write is refused with what is wrong.

import { PHASES } from '../library/phases.ts';
import type { PhaseId } from '../library/types.ts';
import type { Season } from '../plan/types.ts';
import type { Day } from '../util/days.ts';
import {
  isThere,
  readDay,
  readList,
  readNumber,
  readText,
  readTruth,
  readWhole,
  readWord,
  under,
} from './built-reading.ts';
import type { Found, Reading } from './built-reading.ts';
import { blockedWeek } from './sheet.ts';
import type { AthleteSheet, SheetAthlete } from './side.ts';
import type { SheetLine, SheetSession, SheetWeek } from './types.ts';
import { GRAMS_A_KILO } from '../util/units.ts';
import { PARTS, WEEK_KINDS } from '../library/types.ts';

/** What stood on a day. */
export interface BuiltDayUse {
  readonly jumps: boolean;
  readonly lifts: boolean;
}

export interface WrittenBuild {
  readonly units: Season['units'];
  readonly athletes: readonly SheetAthlete[];
  readonly sheets: readonly AthleteSheet[];
  /** Of each athlete, by id: the days that had a session. */
  readonly days: ReadonlyMap<string, ReadonlyMap<Day, BuiltDayUse>>;
}

export type ReadBuilt =
  | { readonly ok: true; readonly value: WrittenBuild }
  /** Words, each about one place. */
  | { readonly ok: false; readonly problems: readonly string[] };

const FORMAT = 'footfall build';
const VERSION = 1;

/** The build in a JSON text. */
export function readBuilt(text: string): ReadBuilt {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return { ok: false, problems: [syntaxWords(text, error)] };
  }
  const document = { at: '', value };
  if (under(document, 'format').value !== FORMAT)
    return { ok: false, problems: [`this is no build: its format is not "${FORMAT}"`] };
  if (under(document, 'version').value !== VERSION)
    return { ok: false, problems: [`a build of another version of footfall's format; this one reads ${VERSION}`] };
  const reading: Reading = { problems: [] };
  const built = readDocument(reading, document);
  return reading.problems.length === 0 ? { ok: true, value: built } : { ok: false, problems: reading.problems };
}

/** Node says at which character the mistake is; people count lines. */
function syntaxWords(text: string, error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  const position = /at position (\d+)/u.exec(message)?.[1];
  if (position === undefined) return `this is no JSON: ${message}`;
  const before = text.slice(0, Number(position)).split('\n');
  return `this is no JSON: line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}`;
}

function readDocument(reading: Reading, document: Found): WrittenBuild {
  const units = readWord(reading, under(under(document, 'season'), 'units'), ['metric', 'imperial']) ?? 'metric';
  const plates = new Map(
    readList(reading, under(document, 'places'), (place) => [
      readText(reading, under(place, 'id')),
      grams(readNumber(reading, under(place, 'smallest_plate_kg'))),
    ]),
  );
  const starts = new Map(
    readList(reading, under(document, 'weeks'), (week) => [
      readWhole(reading, under(week, 'week')),
      readDay(reading, under(week, 'starts')),
    ]),
  );
  const read = readList(reading, under(document, 'athletes'), (athlete) =>
    readAthlete(reading, athlete, { plates, starts }),
  );
  const sorted = read.toSorted((a, b) => (a.sheet.athlete.id < b.sheet.athlete.id ? -1 : 1));
  const sheets = sorted.map(({ sheet }) => sheet);
  return {
    units,
    athletes: sheets.map(({ athlete }) => athlete),
    sheets,
    days: new Map(sorted.map(({ sheet, days }) => [sheet.athlete.id, days])),
  };
}

const grams = (kilos: number): number => Math.round(kilos * GRAMS_A_KILO);

type Plates = ReadonlyMap<string, number>;

/** The smallest plate of each place, in grams, and the first day of each week by its number. */
interface Head {
  readonly plates: Plates;
  readonly starts: ReadonlyMap<number, Day>;
}

function readAthlete(
  reading: Reading,
  found: Found,
  { plates, starts }: Head,
): { readonly sheet: AthleteSheet; readonly days: ReadonlyMap<Day, BuiltDayUse> } {
  const squad = under(found, 'squad');
  const athlete = {
    id: readText(reading, under(found, 'id')),
    name: readText(reading, under(found, 'name')),
    ...(isThere(squad) && { squad: readText(reading, squad) }),
  };
  const days = new Map<Day, BuiltDayUse>();
  const written = readList(reading, under(found, 'weeks'), (week) =>
    readWeek(reading, week, (session) => {
      const read = readSession(reading, session, plates);
      addDay(reading, days, session, read);
      return read;
    }),
  );
  // A build of some weeks names all that are blocked.
  const blocked = readList(
    reading,
    under(found, 'blocked'),
    (week) => starts.get(readWhole(reading, week)) ?? [],
  ).flat();
  const weeks = [...written, ...blocked.map(blockedWeek)].toSorted((a, b) => a.starts - b.starts);
  return { sheet: { athlete, weeks }, days };
}

/** Two sessions of a day are one day. */
function addDay(reading: Reading, days: Map<Day, BuiltDayUse>, found: Found, { day, contacts }: SheetSession): void {
  const before = days.get(day);
  const lifts = readTruth(reading, under(found, 'lifts'));
  days.set(day, { jumps: before?.jumps === true || contacts > 0, lifts: before?.lifts === true || lifts });
}

const PHASE_IDS: readonly PhaseId[] = PHASES.map(({ id }) => id);
const WRITTEN: ReadonlySet<unknown> = new Set(['pin', 'programme']);

function readWeek(reading: Reading, found: Found, session: (item: Found) => SheetSession): SheetWeek {
  return {
    starts: readDay(reading, under(found, 'starts')),
    phase: readWord(reading, under(found, 'phase'), PHASE_IDS) ?? 'closed',
    kind: readWord(reading, under(found, 'kind'), WEEK_KINDS) ?? 'load',
    contacts: readWhole(reading, under(found, 'contacts')),
    written: WRITTEN.has(readText(reading, under(found, 'bound_by'))),
    done: readTruth(reading, under(found, 'done')),
    sessions: readList(reading, under(found, 'sessions'), session),
  };
}

function readSession(reading: Reading, found: Found, plates: Plates): SheetSession {
  const at = under(found, 'at_minute');
  const place = readText(reading, under(found, 'place'));
  const seen = new Map<string, number>();
  return {
    day: readDay(reading, under(found, 'date')),
    slot: readText(reading, under(found, 'slot')),
    place,
    ...(isThere(at) && { at: readWhole(reading, at) }),
    contacts: readWhole(reading, under(found, 'contacts')),
    smallestPlateGrams: plates.get(place) ?? 0,
    lines: readList(reading, under(found, 'lines'), (line) => readLine(reading, line, seen)),
  };
}

function readLine(reading: Reading, found: Found, seen: Map<string, number>): SheetLine {
  const part = readWord(reading, under(found, 'part'), PARTS) ?? 'jumps';
  const exercise = readText(reading, under(found, 'exercise'));
  const occurrence = seen.get(`${part} ${exercise}`) ?? 0;
  seen.set(`${part} ${exercise}`, occurrence + 1);
  const whole = (key: string): number => readWhole(reading, under(found, key));
  const [load, tempo, note] = [under(found, 'load_kg'), under(found, 'tempo'), under(found, 'note')];
  const has = (key: string): boolean => isThere(under(found, key));
  return {
    part,
    exercise,
    occurrence,
    order: whole('order'),
    sets: whole('sets'),
    reps: whole('reps'),
    contacts: whole('contacts'),
    ...(isThere(load) && { loadGrams: grams(readNumber(reading, load)) }),
    ...(has('percent') && { percent: readNumber(reading, under(found, 'percent')) }),
    ...(has('reserve') && { reserve: whole('reserve') }),
    ...(has('drop_cm') && { dropCm: readNumber(reading, under(found, 'drop_cm')) }),
    restSeconds: whole('rest_s'),
    ...(isThere(tempo) && { tempo: readText(reading, tempo) }),
    ...(isThere(note) && { note: readText(reading, note) }),
    ...(isThere(under(found, 'paired_with')) && { paired: true }),
  };
}
