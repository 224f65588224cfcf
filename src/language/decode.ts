// Documents → Authored: puts the files of a plan together and reads every item by its shape. Called by plan/load-plan.ts. Lists
// of all files are appended, groups put together key by key; a key in two files keeps the first and names both places.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { Document, Documents, MapEntry, MapNode, Node } from '../read/types.ts';
import type { Span } from '../source/types.ts';
import type { Authored, Item, Located, RuleItem } from './authored.ts';
import { decodeItem } from './decode-item.ts';
import { meantHelp } from './words.ts';
import { gatherSections } from './gather.ts';
import type { Sections } from './gather.ts';
import { keysOf } from './groups.ts';
import { kindOf, unknownKeyProblem, whereOf } from './issues.ts';
import { isId, suggestedId } from './ids.ts';
import { EXAMPLES, entriesOfList, itemsOfGroup } from './peek.ts';
import { groupShapes, LIST_KEYS, listShapes, MAP_KEYS, mapShapes } from './sections.ts';
import type { ListKey, MapKey } from './sections.ts';
import type { At, Shape } from './shape.ts';
import { doneShape, testRowShape } from './shapes/record.ts';
import { RULE_IDS, ruleShapeOf } from './shapes/rules.ts';
import type { RuleFields } from './shapes/rules.ts';
import { filesShape, rosterShape, VERSION, versionShape } from './shapes/season.ts';

export type { Documents, Mistake } from '../read/types.ts';

/** The plan's files decoded; every problem found in them, in the order of the files. */
export function decode(documents: Documents): Staged<Authored> {
  const diagnostics: Diagnostic[] = [];
  const sections = gatherSections(documents.documents, diagnostics);
  const entry = documents.documents[0];
  const items = {
    files: documents.files,
    start: startOf(entry),
    ...decodeLists(sections, diagnostics),
    ...decodeMaps(sections, diagnostics),
    ...decodeGroups(sections, diagnostics),
    rules: decodeRules(sections, diagnostics),
    done: decodeRows(doneShape, documents.record?.done ?? [], 'done', diagnostics),
    testRows: decodeRows(testRowShape, documents.record?.tests ?? [], 'tests', diagnostics),
  };
  if (entry !== undefined) checkVersion(entry, sections, diagnostics);
  checkPaths(filesShape, sections.entries.get('files'), diagnostics);
  checkPaths(rosterShape, sections.entries.get('roster'), diagnostics);
  const misshapen = new Set([...sections.told, ...misshapenIn(diagnostics)]);
  return { value: { ...items, misshapen }, diagnostics: withoutRepeats(diagnostics) };
}

/** A column of a roster is one place for all its athletes, so what is wrong with its name is told once. */
function withoutRepeats(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const seen = new Set<string>();
  return diagnostics.filter(({ code, span }) => {
    if (!/^language\/(?:unknown|misplaced)-key$|^language\/contacts-of-what$/u.test(code)) return true;
    const place = `${code} ${span?.file ?? ''} ${String(span?.start)}`;
    const isNew = !seen.has(place);
    seen.add(place);
    return isNew;
  });
}

function misshapenIn(diagnostics: readonly Diagnostic[]): ReadonlySet<string> {
  const wrong = diagnostics.filter(({ code }) => code === 'language/wrong-kind');
  return new Set(wrong.flatMap(({ path }) => path ?? []));
}

function startOf(entry: Document | undefined): Span {
  const file = entry?.file.path ?? '';
  const first = entry?.root.kind === 'map' ? entry.root.entries[0]?.keySpan : undefined;
  return first ?? { file, start: 0, end: 0 };
}

function checkVersion(entry: Document, sections: Sections, diagnostics: Diagnostic[]): void {
  const written = sections.entries.get('footfall') ?? [];
  if (!sections.told.has('footfall') && !written.some((version) => version.keySpan.file === entry.file.path)) {
    diagnostics.push(problem('language/version-missing', { span: startOf(entry) }));
  }
  for (const { key, keySpan, value } of written) {
    const item = decodeItem(versionShape, { node: value, path: key, span: keySpan }, diagnostics);
    if (item.kind === 'whole' && item.value !== VERSION) {
      const params = { found: item.value, known: VERSION };
      diagnostics.push(problem('language/version-unknown', { params, span: value.span, path: key }));
    }
  }
}

/** What is no path at all; paths themselves were followed when the files were read. */
function checkPaths(shape: Shape<unknown>, entries: readonly MapEntry[] | undefined, diagnostics: Diagnostic[]): void {
  for (const { key, keySpan, value } of entries ?? []) {
    if (!isNothing(value)) decodeItem(shape, { node: value, path: key, span: keySpan }, diagnostics);
  }
}

type Lists = Pick<Authored, ListKey>;

function decodeLists(sections: Sections, diagnostics: Diagnostic[]): Lists {
  const lists: Partial<Record<ListKey, readonly Item<unknown>[]>> = {};
  for (const key of LIST_KEYS) {
    const shape: Shape<unknown> = listShapes[key];
    lists[key] = (sections.entries.get(key) ?? []).flatMap((entry) => listItems(shape, entry, diagnostics));
  }
  return lists as Lists;
}

function listItems(
  shape: Shape<unknown>,
  { key, keySpan, value }: MapEntry,
  diagnostics: Diagnostic[],
): readonly Item<unknown>[] {
  if (isNothing(value)) return [];
  const decoded = (nodes: readonly Node[], found: Diagnostic[]): readonly Item<unknown>[] =>
    nodes.map((node, index) =>
      decodeItem(shape, { node, path: `${key}[${String(index)}]`, span: itemSpan(node, keySpan) }, found),
    );
  if (value.kind === 'sequence') return decoded(value.items, diagnostics);
  diagnostics.push(wrongSection(key, keySpan, value, 'a list'));
  const { items, isKeyed } = itemsOfGroup(shape, value);
  const found: Diagnostic[] = [];
  const peeked = decoded(items, found);
  // The key an item stands under is mostly the value of one that it lacks.
  diagnostics.push(...found.filter(({ code }) => !isKeyed || code !== 'language/missing-key'));
  return peeked;
}

/** A list item is marked at its first key: its whole is too much to show. */
function itemSpan(node: Node, keySpan: Span): Span {
  if (node.kind === 'map') return node.entries[0]?.keySpan ?? keySpan;
  return node.kind === 'scalar' && node.text !== '' ? node.span : keySpan;
}

const isNothing = (node: Node): boolean => node.kind === 'scalar' && node.value === null;

function wrongSection(key: string, span: Span, node: Node, wanted: string): Diagnostic {
  const example = EXAMPLES[key] ?? '';
  const help =
    wanted === 'a list'
      ? `begin each with a dash, as in ${example}`
      : `write them below it without dashes, as in ${example}`;
  return problem('language/wrong-kind', { params: { key, wanted, found: kindOf(node) }, span, path: key, help });
}

type Maps = Pick<Authored, MapKey>;

function decodeMaps(sections: Sections, diagnostics: Diagnostic[]): Maps {
  const maps: Partial<Record<MapKey, ReadonlyMap<string, Item<unknown>>>> = {};
  for (const key of MAP_KEYS) {
    const shape: Shape<unknown> = mapShapes[key];
    const items = new Map<string, Item<unknown>>();
    let last: string | undefined;
    for (const { key: id, keySpan, value } of mergedEntries(key, sections, diagnostics)) {
      const path = `${key}.${id}`;
      if (isFieldOutside(shape, id, value)) {
        diagnostics.push(unknownKeyProblem(id, [], { span: keySpan, path }, whereOf(key)));
        if (last !== undefined) items.set(last, { ...items.get(last), kind: 'broken' } as Item<unknown>);
        continue;
      }
      if (!isId(id)) diagnostics.push(badId(key, id, { span: keySpan, path }));
      items.set(id, decodeItem(shape, { node: value, path, span: keySpan }, diagnostics));
      last = id;
    }
    reportSameIds(key, items, diagnostics);
    maps[key] = items;
  }
  return maps as Maps;
}

/** A field at the level of the ids, mostly because its line is indented too little. */
function isFieldOutside(shape: Shape<unknown>, id: string, value: Node): boolean {
  return value.kind === 'scalar' && value.value !== null && Object.hasOwn(keysOf(shape) ?? {}, id);
}

function badId(section: string, found: string, at: At): Diagnostic {
  const id = suggestedId(found);
  const name = section === 'places' ? '' : `, and the name as it is printed under \`name:\``;
  return problem('language/bad-id', {
    ...at,
    params: { found },
    ...(id !== undefined && { help: `write ${id}${name}` }),
  });
}

function reportSameIds(section: string, items: ReadonlyMap<string, Located>, diagnostics: Diagnostic[]): void {
  const seen = new Map<string, string>();
  for (const [id, { span, path }] of items) {
    const folded = id.normalize('NFC').toLowerCase();
    const other = seen.get(folded);
    if (other === undefined) seen.set(folded, id);
    else if (section === 'athletes') {
      const first = items.get(other)?.span;
      const related = first === undefined ? [] : [{ span: first, message: 'the other is here' }];
      diagnostics.push(problem('language/same-id', { params: { found: id, other }, span, path, related }));
    }
  }
}

/** The entries of a section in all files, each key once. */
function mergedEntries(section: string, sections: Sections, diagnostics: Diagnostic[]): readonly MapEntry[] {
  const merged = new Map<string, MapEntry>();
  for (const { key, keySpan, value } of sections.entries.get(section) ?? []) {
    if (isNothing(value)) continue;
    if (value.kind !== 'map') diagnostics.push(wrongSection(key, keySpan, value, 'a group of keys'));
    for (const entry of value.kind === 'map' ? value.entries : entriesOfList(value)) {
      const first = merged.get(entry.key);
      if (first === undefined) merged.set(entry.key, entry);
      else diagnostics.push(keyTwice(section, first, entry));
    }
  }
  return [...merged.values()];
}

function keyTwice(section: string, first: MapEntry, again: MapEntry): Diagnostic {
  const path = `${section}.${again.key}`;
  return problem('language/duplicate-key', {
    params: { key: path, first: first.keySpan.file },
    span: again.keySpan,
    path,
    related: [{ span: first.keySpan, message: 'first here' }],
  });
}

function decodeGroups(sections: Sections, diagnostics: Diagnostic[]): Pick<Authored, 'season' | 'record'> {
  const season = groupOf('season', sections, diagnostics);
  const record = groupOf('record', sections, diagnostics);
  return {
    ...(season !== undefined && { season: decodeItem(groupShapes.season, season, diagnostics) }),
    ...(record !== undefined && { record: decodeItem(groupShapes.record, record, diagnostics) }),
  };
}

function groupOf(section: string, sections: Sections, diagnostics: Diagnostic[]): Located | undefined {
  const [first] = sections.entries.get(section) ?? [];
  if (first === undefined) return undefined;
  const entries = mergedEntries(section, sections, diagnostics);
  if (entries.length === 0 && !isNothing(first.value) && first.value.kind !== 'map') return undefined;
  const node: MapNode = { kind: 'map', span: first.value.span, entries };
  return { node, path: section, span: first.keySpan };
}

function decodeRules(sections: Sections, diagnostics: Diagnostic[]): readonly RuleItem[] {
  return mergedEntries('rules', sections, diagnostics).flatMap((entry) => decodeRule(entry, diagnostics));
}

function decodeRule({ key, keySpan, value }: MapEntry, diagnostics: Diagnostic[]): readonly RuleItem[] {
  const shape = ruleShapeOf(key);
  const path = `rules.${key}`;
  if (shape === undefined) {
    diagnostics.push(
      problem('language/unknown-rule', {
        params: { found: key },
        span: keySpan,
        path,
        ...meantHelp(key, RULE_IDS),
      }),
    );
    return [];
  }
  const nodes = value.kind === 'sequence' ? value.items : [value];
  return nodes.map((node, index) => ({
    rule: key,
    keySpan,
    item: decodeItem<RuleFields>(
      shape,
      { node, path: value.kind === 'sequence' ? `${path}[${String(index)}]` : path, span: itemSpan(node, keySpan) },
      diagnostics,
    ),
  }));
}

function decodeRows<T>(
  shape: Shape<T>,
  rows: readonly MapNode[],
  key: string,
  diagnostics: Diagnostic[],
): readonly Item<T>[] {
  return rows.map((node, index) =>
    decodeItem(
      shape,
      { node, path: `record.${key}[${String(index)}]`, span: node.entries[0]?.value.span ?? node.span },
      diagnostics,
    ),
  );
}
