// Turns what is wrong in an item into diagnostics at the nodes that are meant. Issues tell of an unknown key and of a missing
// one by their group; here the unknown key is marked itself and the missing one at the key of the group it is missing from.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Node } from '../read/types.ts';
import type { Span } from '../source/types.ts';
import type { Located } from './authored.ts';
import { findHome } from './homes.ts';
import { ELSEWHERE, INSTEAD, meantKey } from './meant.ts';
import { follow, markOf, pathText } from './nodes.ts';
import type { Found, Step } from './nodes.ts';
import { inWords } from '../util/in-words.ts';
import type { At, Issue, UnknownKeys, WrongKind } from './shape.ts';
import { shortened } from '../util/printable.ts';

/** The problems of one item, in the order of its shape, each mistake once. */
export function diagnose(item: Located, issues: readonly Issue[]): readonly Diagnostic[] {
  const unsaid = unsaidContacts(issues);
  const seen = new Set<Node>();
  return issues.flatMap((issue) => {
    const steps = issue.path;
    const found = follow(item.node, steps);
    if (isUngrouped(found, issue)) {
      if (seen.has(found.node)) return [];
      seen.add(found.node);
      return [wrongKind(keyOf(item, steps, found), found.node, GROUP_WANTED, atOf(item, steps, found))];
    }
    return !found.whole && unsaid.has(pathText('', steps)) ? [] : diagnoseIssue(item, issue, steps, found);
  });
}

/** A single value where a group of keys is meant: the keys were looked for in the node itself. */
function isUngrouped({ node, whole }: Found, { kind }: Issue): boolean {
  return node.kind === 'scalar' && (!whole || kind === 'unknown keys');
}

/** A key that is near one its group has and lacks. */
export interface MisspeltKey {
  /** To the group it is in. */
  readonly steps: readonly Step[];
  readonly key: string;
  readonly meant: string;
  readonly told: Diagnostic;
}

/** The first of them, so many at most. Of two keys that were meant to be the same the first counts. */
export function misspeltKeys(item: Located, issues: readonly Issue[], most: number): readonly MisspeltKey[] {
  const found: MisspeltKey[] = [];
  for (const issue of issues) {
    if (found.length >= most) break;
    if (issue.kind === 'unknown keys') found.push(...misspeltIn(item, issue));
  }
  return found.slice(0, most);
}

function misspeltIn(item: Located, issue: Issue & UnknownKeys): readonly MisspeltKey[] {
  const steps = issue.path;
  const group = follow(item.node, steps).node;
  if (group.kind !== 'map') return [];
  const free = new Set(issue.known);
  for (const { key } of group.entries) free.delete(key);
  const spans = spansOf(group);
  return issue.keys.flatMap((key): readonly MisspeltKey[] => {
    const meant = isContactsOfWhat(key, issue.known) ? undefined : meantKey(key, [...free]);
    if (meant === undefined) return [];
    free.delete(meant);
    const path = pathText(item.path, steps);
    const at = { span: spans.get(key) ?? item.span, path: pathText(path, [key]) };
    return [{ steps, key, meant, told: misspeltProblem(key, meant, at, whereOf(path)) }];
  });
}

/** A key that is told with the one that was meant. */
export function misspeltProblem(key: string, meant: string, at: At, where: string): Diagnostic {
  return problem('language/unknown-key', { ...at, params: { key, where }, help: `did you mean "${meant}"?` });
}

/** Paths of keys that are missing only because `contacts` doesn't say of what. */
function unsaidContacts(issues: readonly Issue[]): ReadonlySet<string> {
  const meant = issues.flatMap((issue) => {
    if (issue.kind !== 'unknown keys' || !issue.keys.includes('contacts')) return [];
    const keys = issue.known.filter((one) => one.startsWith(CONTACTS_OF));
    return keys.map((key) => pathText('', [...issue.path, key]));
  });
  return new Set(meant);
}

const spansOf = (node: Node): ReadonlyMap<string, Span> =>
  new Map(node.kind === 'map' ? node.entries.map(({ key, keySpan }) => [key, keySpan]) : []);

/** The last key on the way to a node that is there, with its number where it is an item of a list. */
function keyOf(item: Located, steps: readonly Step[], { keySpan }: Found): string {
  const length = steps.findLastIndex((_, index) => follow(item.node, steps.slice(0, index + 1)).whole) + 1;
  const key = steps.slice(0, length).findLastIndex((step) => typeof step === 'string');
  if (key === -1) return counted(item.path.split('.').at(-1) ?? 'this');
  return counted(pathText('', steps.slice(key, keySpan === undefined ? length : key + 1)));
}

function atOf(item: Located, steps: readonly Step[], found: Found): At {
  return { span: spanOf(item, found), path: pathText(item.path, steps) };
}

function diagnoseIssue(item: Located, issue: Issue, steps: readonly Step[], found: Found): readonly Diagnostic[] {
  if (issue.kind === 'unknown keys') return unknownKeys(item, found.node, steps, issue);
  const at = atOf(item, steps, found);
  if (issue.kind === 'refused') return [issue.refusal(at)];
  if (!found.whole) return [missingKey(item, steps, at, issue)];
  return [wrongKind(keyOf(item, steps, found), found.node, issue, at)];
}

function spanOf(item: Located, found: Found): At['span'] {
  if (found.node !== item.node || found.keySpan !== undefined) return markOf(found);
  return item.node.kind === 'scalar' && item.node.text !== '' ? item.node.span : item.span;
}

function unknownKeys(
  item: Located,
  parent: Node,
  steps: readonly Step[],
  issue: Issue & UnknownKeys,
): readonly Diagnostic[] {
  const path = pathText(item.path, steps);
  const spans = spansOf(parent);
  return issue.keys.map((key) => {
    const at = { span: spans.get(key) ?? item.span, path: pathText(path, [key]) };
    return unknownKeyProblem(key, issue.known, at, whereOf(path));
  });
}

const CONTACTS_OF = 'contacts-a-';

const isContactsOfWhat = (key: string, known: readonly string[]): boolean =>
  key === 'contacts' && known.some((one) => one.startsWith(CONTACTS_OF));

/** A key that a group doesn't have: near one that it has, at home somewhere else, or known nowhere. */
export function unknownKeyProblem(key: string, known: readonly string[], at: At, where: string): Diagnostic {
  if (isContactsOfWhat(key, known)) {
    return problem('language/contacts-of-what', { ...at, params: { where } });
  }
  const meant = meantKey(key, known);
  if (meant !== undefined) return misspeltProblem(key, meant, at, where);
  const belongs = findHome(key);
  if (belongs !== undefined) {
    const params = { key, where, belongs };
    return problem('language/misplaced-key', { ...at, params, ...helpMisplaced(key, known) });
  }
  return problem('language/unknown-key', {
    ...at,
    params: { key, where },
    help: INSTEAD.get(key) ?? `the keys here are ${known.join(', ')}`,
  });
}

/** Groups of few keys have mostly another one that was meant. */
const FEW_KEYS = 8;

function helpMisplaced(key: string, known: readonly string[]): { readonly help?: string } {
  const instead = ELSEWHERE.get(key);
  if (instead !== undefined) return { help: instead };
  const few = known.length > 0 && known.length <= FEW_KEYS;
  return few ? { help: `look at the indentation; the keys here are ${known.join(', ')}` } : {};
}

/** `in athletes.mira`, `in pins #2`, or for the file itself `at the left edge of a plan file`. */
export function whereOf(path: string): string {
  return path === '' ? 'at the left edge of a plan file' : `in ${counted(path)}`;
}

/** Items of a list counted from 1, as coaches do. */
function counted(path: string): string {
  return path.replaceAll(/\[(\d+)\]/g, (_, index: string) => ` #${String(Number(index) + 1)}`);
}

function missingKey(item: Located, steps: readonly Step[], at: At, issue: Issue & WrongKind): Diagnostic {
  const key = String(steps.at(-1) ?? '');
  const where = whereOf(pathText(item.path, steps.slice(0, -1)));
  if (key === 'because') return problem('language/because-missing', { ...at, params: { where } });
  return problem('language/missing-key', { ...at, params: { key, where }, ...howMissing(key, issue) });
}

/** The words that fit, or what an editor is told of the key. */
function howMissing(key: string, { words, says }: WrongKind): { readonly help?: string } {
  if (words.length > 0) return { help: `write ${key}: ${inWords(words, 'or')}` };
  if (says === undefined) return {};
  return { help: `write \`${key}:\`, ${asClause(says)}` };
}

const GROUP_WANTED = { wanted: 'a group of keys' } as const;

type Kind = Pick<WrongKind, 'wanted' | 'says'>;

function wrongKind(key: string, node: Node, kind: Kind, at: At): Diagnostic {
  const { wanted } = kind;
  if (node.kind === 'scalar' && node.value === null)
    return problem('language/empty-value', { ...at, params: { wanted } });
  const glued = node.kind === 'scalar' ? /^([\w-]+):\S/u.exec(node.text)?.[1] : undefined;
  if (glued !== undefined && wanted === 'a group of keys') {
    return problem('yaml/missing-space', { ...at, params: { key: glued } });
  }
  return problem('language/wrong-kind', {
    ...at,
    params: { key, wanted, found: kindOf(node) },
    help: howTo(kind, node, /\[\d+\]\.[\w-]+$/u.test(at.path)),
  });
}

/** A list where one value stands: who wrote it in an item of a list wants the same said of each. */
function howTo({ wanted, says }: Kind, node: Node, isOfList: boolean): string {
  if (wanted === 'a list' && node.kind === 'scalar' && /^[\w-]+$/u.test(node.text)) return `write [${node.text}]`;
  if (wanted !== 'a single value' || node.kind !== 'sequence') return HOW[wanted];
  if (isOfList && node.items.length > 1) return 'write one of them, and an item of its own for each of the others';
  return says === undefined ? HOW[wanted] : `${HOW[wanted]}: ${asClause(says)}`;
}

/** A sentence as the end of another one, which has no full stop. */
const asClause = (sentence: string): string =>
  `${sentence.charAt(0).toLowerCase()}${sentence.slice(1).replace(/\.$/u, '')}`;

/** How each kind is written. */
const HOW = {
  'a single value': 'write one word or number behind the colon',
  'a list': 'write [a, b], or each on a line of its own with `- ` before it',
  'a group of keys': 'write `key: value` lines indented below it, without dashes, or { key: value }',
};

/** What a node is, in words. */
export function kindOf(node: Node): string {
  if (node.kind === 'map') return 'a group of keys';
  if (node.kind === 'sequence') return 'a list';
  return node.value === null ? 'empty' : `"${shortened(node.text, MOST_SHOWN)}"`;
}

const MOST_SHOWN = 40;
