// What each key at the left edge of the plan's files holds, file by file. Called by decode. A section that is misspelt, and
// what was meant to stand below one and stands at the left edge, is told and read where it was meant to be.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Document, MapEntry, MapNode, Node } from '../read/types.ts';
import { keysOf } from './groups.ts';
import { kindOf, misspeltProblem, unknownKeyProblem, whereOf } from './issues.ts';
import { meantKey } from './meant.ts';
import { findEntry } from './nodes.ts';
import { sectionsAlike } from './section-alike.ts';
import { groupShapes, LIST_KEYS, MAP_KEYS, mapShapes, SECTION_KEYS } from './sections.ts';
import type { MapKey } from './sections.ts';

export interface Sections {
  readonly entries: ReadonlyMap<string, readonly MapEntry[]>;
  /** Misspelt sections that hold nothing that could be read: that the plan lacks them isn't told as well. */
  readonly told: ReadonlySet<string>;
}

/** Keys that have no place at the left edge whose meaning is looked for; a file with more is no plan. */
const MOST_PLACED = 1000;

interface Gathering {
  readonly entries: Map<string, MapEntry[]>;
  readonly told: Set<string>;
  readonly diagnostics: Diagnostic[];
}

/**
 * All entries by section, in the order of the files. What is wrong is added to `diagnostics`; the rest is read all the
 * same.
 */
export function gatherSections(documents: readonly Document[], diagnostics: Diagnostic[]): Sections {
  const gathering: Gathering = { entries: new Map(), told: new Set(), diagnostics };
  const strays: MapEntry[] = [];
  for (const { root } of documents) {
    if (root.kind === 'map') {
      for (const entry of root.entries) {
        if (SECTION_KEYS.includes(entry.key)) add(gathering, entry.key, entry);
        else strays.push(entry);
      }
    } else if (root.kind === 'sequence' || root.value !== null) {
      diagnostics.push(problem('language/not-a-plan', { params: { found: kindOf(root) }, span: root.span }));
    }
  }
  for (const stray of strays.slice(0, MOST_PLACED)) placeStray(gathering, stray);
  for (const { key, keySpan } of strays.slice(MOST_PLACED)) {
    diagnostics.push(
      problem('language/unknown-key', { params: { key, where: whereOf('') }, span: keySpan, path: key }),
    );
  }
  return gathering;
}

function add({ entries }: Gathering, section: string, entry: MapEntry): void {
  const there = entries.get(section);
  if (there === undefined) entries.set(section, [entry]);
  else there.push(entry);
}

function placeStray(gathering: Gathering, entry: MapEntry): void {
  const { key, keySpan } = entry;
  const at = { span: keySpan, path: key };
  const where = whereOf('');
  const meant = meantKey(key, SECTION_KEYS);
  const below = meant === undefined ? sectionOfContent(entry) : undefined;
  if (meant !== undefined) {
    gathering.diagnostics.push(unknownKeyProblem(key, SECTION_KEYS, at, where));
    if (isFitting(meant, entry.value)) add(gathering, meant, { ...entry, key: meant });
    else gathering.told.add(meant);
  } else if (below !== undefined) {
    const help = `indent it, and what is below it, under \`${below}:\``;
    const params = { key, where, belongs: `below \`${below}:\`` };
    gathering.diagnostics.push(problem('language/misplaced-key', { ...at, params, help }));
    if (below !== 'season' || !isThere(gathering, below, key)) add(gathering, below, wrapped(below, entry));
  } else {
    placeByItems(gathering, entry);
  }
}

/** A key that says nothing of which section it is: what stands below it may. */
function placeByItems(gathering: Gathering, entry: MapEntry): void {
  const at = { span: entry.keySpan, path: entry.key };
  const [meant, ...others] = sectionsAlike(entry.value);
  if (meant === undefined || others.length > 0) {
    gathering.diagnostics.push(unknownKeyProblem(entry.key, SECTION_KEYS, at, whereOf('')));
    for (const section of [meant ?? [], others].flat()) gathering.told.add(section);
  } else {
    gathering.diagnostics.push(misspeltProblem(entry.key, meant, at, whereOf('')));
    add(gathering, meant, { ...entry, key: meant });
  }
}

const isThere = ({ entries }: Gathering, section: string, key: string): boolean =>
  (entries.get(section) ?? []).some(({ value }) => findEntry(value, key) !== undefined);

/** An entry as it would stand below its section. */
function wrapped(section: string, entry: MapEntry): MapEntry {
  const value: MapNode = { kind: 'map', span: entry.value.span, entries: [entry] };
  return { key: section, keySpan: entry.keySpan, value };
}

/** Whether a section can hold such a value, so that it is read for the slips in it. */
function isFitting(section: string, { kind }: Node): boolean {
  if (LIST_KEYS.some((key) => key === section)) return kind === 'sequence';
  return (kind === 'map') === (MAP_KEYS.some((key) => key === section) || GROUPS.has(section));
}

const GROUPS: ReadonlySet<string> = new Set([...Object.keys(groupShapes), 'rules']);

/** The section that what stands at the left edge was meant to be in, by what it looks like. */
function sectionOfContent({ key, value }: MapEntry): MapKey | 'season' | undefined {
  if (value.kind !== 'map')
    return value.kind === 'scalar' && Object.hasOwn(keysOf(groupShapes.season) ?? {}, key) ? 'season' : undefined;
  let best: MapKey | undefined;
  let most = 0;
  for (const section of CONTENT) {
    const keys = keysOf(mapShapes[section]) ?? {};
    const known = value.entries.filter((entry) => Object.hasOwn(keys, entry.key)).length;
    if (known > most && 2 * known > value.entries.length) {
      best = section;
      most = known;
    }
  }
  return best;
}

/** Of two that look alike the first is more likely to be meant. */
const CONTENT: readonly MapKey[] = ['athletes', 'places', 'drills', 'lifts'];
