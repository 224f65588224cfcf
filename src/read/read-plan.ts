// A path to all documents of a plan: the entry file, what its `files:` and `roster:` name, what those name in turn. The
// first stage of the compiler. Which files there are, and in which order, depends on the plan alone, never on how the
// machine lists them: the entry file first, then the others by path.

import { createCollector } from '../diagnostics/collector.ts';
import type { Collector } from '../diagnostics/collector.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { SourceFile } from '../source/types.ts';
import type { FileHost } from './file-host.ts';
import { isGlob, matchFiles, MOST_LOOKED_AT } from './glob.ts';
import { loadFile, MOST_CSV_BYTES, MOST_YAML_BYTES } from './load-file.ts';
import type { FileToLoad } from './load-file.ts';
import type { Parse } from './known-texts.ts';
import { parseYaml } from './parse-yaml.ts';
import { findPlanFolder, findTarget } from './plan-folder.ts';
import type { PlanFolder, Target } from './plan-folder.ts';
import { parsePlanPath } from './plan-path.ts';
import type { PlanPath } from './plan-path.ts';
import { rosterRoot } from './read-roster.ts';
import type { Document, Documents, Mistake, Node, ScalarNode } from './types.ts';

interface Reading {
  readonly parse: Parse;
  readonly host: FileHost;
  readonly folder: PlanFolder;
  readonly collector: Collector;
  readonly files: SourceFile[];
  readonly documents: Document[];
  /** Real paths of the files read or about to be. */
  readonly known: Set<string>;
  readonly queue: Document[];
  /** In the documents. */
  readonly mistakes: Mistake[];
}

/** The two keys that name files, and what they take. */
const INCLUSIONS = [
  { key: 'files', endings: /\.ya?ml$/iu, endingsInWords: '.yaml or .yml', reads: 'yaml' },
  { key: 'roster', endings: /\.csv$/iu, endingsInWords: '.csv', reads: 'roster' },
] as const;

type Inclusion = (typeof INCLUSIONS)[number];

/**
 * All files of the plan at `entryPath`, a file or a folder that has a season.yaml. Paths are the host's, with forward
 * slashes. Files with mistakes are among `files`, so that they can be shown, and among `documents` only where all of
 * them was read; if the entry file isn't, there are no documents at all.
 */
export function readPlan(entryPath: string, host: FileHost, parse: Parse = parseYaml): Staged<Documents> {
  const folder = findPlanFolder(entryPath, host);
  if (!('kind' in folder)) return { value: { files: [], documents: [] }, diagnostics: [folder] };
  const collector = createCollector();
  const reading: Reading = {
    parse,
    host,
    folder,
    collector,
    files: [],
    documents: [],
    known: new Set(),
    queue: [],
    mistakes: [],
  };
  readEntry(reading);
  for (let next = reading.queue.shift(); next !== undefined; next = reading.queue.shift()) readIncluded(reading, next);
  // Without its entry file a plan can't be told from another: the files it names were read for their mistakes only.
  const hasEntry = reading.documents[0]?.file.path === folder.entry;
  const documents = hasEntry ? inOrder(reading.documents, pathOf) : [];
  const { diagnostics } = collector;
  const files = inOrder(reading.files, (file) => file.path);
  return { value: { files, documents, ...gapsOf(reading, documents, diagnostics) }, diagnostics };
}

/** Mistakes in documents that were read all the same, and whether anything else is missing from the plan. */
function gapsOf(
  { mistakes }: Reading,
  documents: readonly Document[],
  diagnostics: readonly Diagnostic[],
): Pick<Documents, 'mistakes' | 'isIncomplete'> {
  const paths = new Set(documents.map(pathOf));
  const isIncomplete = diagnostics.some(
    ({ code, severity, span }) =>
      severity === 'error' && !(/^(?:yaml|source)\//u.test(code) && paths.has(span?.file ?? '')),
  );
  return { ...(mistakes.length > 0 && { mistakes }), ...(isIncomplete && { isIncomplete }) };
}

const pathOf = ({ file }: Document): string => file.path;

/** The entry file, which is first already, and the rest by path. */
function inOrder<T>(items: readonly T[], path: (item: T) => string): readonly T[] {
  const [entry, ...others] = items;
  if (entry === undefined) return [];
  return [entry, ...others.sort((a, b) => (path(a) < path(b) ? -1 : 1))];
}

function readEntry(reading: Reading): void {
  const { folder, host } = reading;
  const location = `${folder.location}/${folder.entry}`;
  const real = host.realPath(location);
  if (real.ok) reading.known.add(real.value);
  readYaml(reading, { location, path: folder.entry, wanted: folder.entryPath, mostBytes: MOST_YAML_BYTES }, true);
}

function readYaml(reading: Reading, wanted: FileToLoad, isEntry: boolean): void {
  const file = load(reading, wanted);
  if (file === undefined) return;
  const { value, diagnostics } = reading.parse(file);
  reading.collector.add(diagnostics);
  const document = { file, root: value.root };
  reading.queue.push(document);
  if (!value.isWhole) return;
  reading.mistakes.push(...value.mistakes);
  if (isEmpty(value.root)) reading.collector.add([emptyFile(file, isEntry)]);
  else reading.documents.push(document);
}

function load(reading: Reading, wanted: FileToLoad): SourceFile | undefined {
  const loaded = loadFile(wanted, reading.host);
  if (!('file' in loaded)) {
    reading.collector.add([loaded]);
    return undefined;
  }
  reading.files.push(loaded.file);
  reading.collector.add(loaded.diagnostics);
  return loaded.sound ? loaded.file : undefined;
}

const isEmpty = (root: Node): boolean => root.kind === 'scalar' && root.value === null && root.text === '';

function emptyFile(file: SourceFile, isEntry: boolean): Diagnostic {
  const what = isEntry ? 'it is the entry file, and there is no plan without it' : 'it adds nothing to the plan';
  const span = { file: file.path, start: 0, end: 0 };
  return problem('source/empty', { params: { what }, span, severity: isEntry ? 'error' : 'warning' });
}

function readIncluded(reading: Reading, { file, root }: Document): void {
  if (root.kind !== 'map') return;
  const mistakes = reading.collector.diagnostics.flatMap(({ span }) => (span?.file === file.path ? [span.start] : []));
  for (const inclusion of INCLUSIONS) {
    const entry = root.entries.find(({ key }) => key === inclusion.key);
    for (const item of entry === undefined ? [] : writtenPaths(entry.value)) {
      const { start, end } = item.span;
      // A path with a mistake in it has been reported, and names no file.
      if (!mistakes.some((at) => start <= at && at < end)) include(reading, inclusion, item);
    }
  }
}

/** One path or a list of them; what is neither is left to the checks of the language. */
function writtenPaths(node: Node): readonly ScalarNode[] {
  const items = node.kind === 'sequence' ? node.items : [node];
  return items.filter((item): item is ScalarNode => item.kind === 'scalar' && item.value !== null);
}

function include(reading: Reading, inclusion: Inclusion, item: ScalarNode): void {
  const path = parsePlanPath(item.text, item.span);
  if (!('kind' in path)) {
    reading.collector.add([path]);
    return;
  }
  const paths = isGlob(path.path) ? matching(reading, path, item) : [path];
  const added = paths.filter((each) => includeFile(reading, inclusion, each, item));
  const isEntryAlone = paths.every(({ path: each }) => each === reading.folder.entry) && isGlob(path.path);
  if (added.length > 0 || paths.length === 0 || isEntryAlone) return;
  reading.collector.report('files/listed-twice', { params: { wanted: item.text }, span: item.span });
}

function matching(reading: Reading, pattern: PlanPath, item: ScalarNode): readonly PlanPath[] {
  const { collector, folder, host } = reading;
  const { paths, unlisted, tooMany } = matchFiles(pattern.parts, folder.location, host);
  if (tooMany) {
    collector.report('files/too-many', { params: { pattern: item.text, most: MOST_LOOKED_AT }, span: item.span });
    return [];
  }
  for (const params of unlisted) collector.report('files/unreadable', { params, span: item.span });
  if (paths.length === 0 && unlisted.length === 0) {
    const help = helpForNoMatch(pattern, folder, host);
    collector.report('files/no-match', { params: { pattern: item.text }, span: item.span, help });
  }
  return paths.map((path) => ({ kind: 'path', parts: path.split('/'), path }));
}

/** What is in the folder where the pattern begins to look. */
function helpForNoMatch({ parts }: PlanPath, folder: PlanFolder, host: FileHost): string {
  const fixed = parts.slice(
    0,
    parts.findIndex((part) => isGlob(part)),
  );
  const where = fixed.length === 0 ? 'the plan folder' : `the folder ${fixed.join('/')}`;
  const location = [folder.location, ...fixed].join('/');
  const listed = host.list(location);
  if (!listed.ok) {
    const state = host.stat(location);
    return state.kind === 'denied'
      ? `${where} cannot be read: ${state.reason}`
      : `there is no folder ${fixed.join('/')}`;
  }
  const names = listed.value.map(({ name, kind }) => (kind === 'folder' ? `${name}/` : name)).sort();
  if (names.length === 0) return `${where} is empty`;
  const shown = names.slice(0, 5).join(', ');
  return `${where} has ${shown}${names.length > 5 ? ` and ${String(names.length - 5)} more` : ''}`;
}

/** Whether the file is part of the plan by this item: true too if it can't be read, which is reported. */
function includeFile(reading: Reading, inclusion: Inclusion, path: PlanPath, item: ScalarNode): boolean {
  const target = findTarget(reading.folder, path, item.span, reading.host);
  if (!('kind' in target)) {
    reading.collector.add([target]);
    return true;
  }
  if (reading.known.has(target.real)) return false;
  if (reading.host.stat(target.location).kind === 'file') reading.known.add(target.real);
  readTarget(reading, inclusion, target, item);
  return true;
}

function readTarget(reading: Reading, inclusion: Inclusion, target: Target, item: ScalarNode): void {
  const { location, path } = target;
  if (reading.host.stat(location).kind === 'file' && !inclusion.endings.test(path)) {
    const params = { wanted: path, endings: inclusion.endingsInWords, key: `${inclusion.key}:` };
    reading.collector.report('files/wrong-ending', { params, span: item.span });
    return;
  }
  const wanted = { location, path, wanted: path, namedAt: item.span };
  if (inclusion.reads === 'yaml') readYaml(reading, { ...wanted, mostBytes: MOST_YAML_BYTES }, false);
  else readRoster(reading, { ...wanted, mostBytes: MOST_CSV_BYTES });
}

function readRoster(reading: Reading, wanted: FileToLoad): void {
  const file = load(reading, wanted);
  if (file === undefined) return;
  const { value: root, diagnostics } = rosterRoot(file);
  reading.collector.add(diagnostics);
  if (root !== undefined) reading.documents.push({ file, root });
}
