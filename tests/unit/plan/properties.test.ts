// Properties of reading a plan: the order of files, keys and items changes nothing but places, and whatever is done to an
// example, it ends in diagnostics that lie in their files.

import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fileSystem } from '../../../src/host/files.ts';
import { readDocuments } from '../../../src/language/read-documents.ts';
import { loadPlan } from '../../../src/plan/load-plan.ts';
import type { Plan } from '../../../src/plan/types.ts';
import type { Document, Documents, Node } from '../../../src/read/types.ts';

const examples = readdirSync('examples').map((name) => ({ name, documents: documentsOf(`examples/${name}`) }));

function documentsOf(path: string): Documents {
  const { value, diagnostics } = readDocuments(path, fileSystem);
  if (diagnostics.length > 0) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return value;
}

/** A plan as text without its places. */
function meaningOf(plan: Plan | undefined): string {
  const { files: _files, ...rest } = plan ?? { files: [] };
  return JSON.stringify(rest, (key, value: unknown) => {
    if (key === 'span') return undefined;
    return value instanceof Map || value instanceof Set ? [...value] : value;
  });
}

/** Takes numbers from a list, round and round. */
class Dice {
  private index = 0;
  private readonly throws: readonly number[];

  constructor(throws: readonly number[]) {
    this.throws = throws;
  }

  next(below: number): number {
    this.index += 1;
    return (this.throws[this.index % this.throws.length] ?? 0) % Math.max(1, below);
  }

  shuffled<T>(items: readonly T[]): readonly T[] {
    const left = [...items];
    return items.map(() => left.splice(this.next(left.length), 1)[0] as T);
  }
}

/** Lists whose order says something: lines of a session are done one after the other. */
const IN_ORDER: ReadonlySet<string> = new Set(['lines', 'add', 'tuesday', 'thursday']);

function shuffledNode(node: Node, dice: Dice, key = ''): Node {
  if (node.kind === 'scalar') return node;
  if (node.kind === 'sequence') {
    const items = node.items.map((item) => shuffledNode(item, dice));
    return { ...node, items: IN_ORDER.has(key) ? items : dice.shuffled(items) };
  }
  const entries = node.entries.map((entry) => ({ ...entry, value: shuffledNode(entry.value, dice, entry.key) }));
  return { ...node, entries: dice.shuffled(entries) };
}

function shuffledDocuments({ documents: [entry, ...others], ...rest }: Documents, dice: Dice): Documents {
  const shuffledOnes = dice.shuffled(others).map((one): Document => ({ ...one, root: shuffledNode(one.root, dice) }));
  if (entry === undefined) return { ...rest, documents: [] };
  const record =
    rest.record === undefined
      ? {}
      : { record: { done: dice.shuffled(rest.record.done), tests: dice.shuffled(rest.record.tests) } };
  return { ...rest, ...record, documents: [{ ...entry, root: shuffledNode(entry.root, dice) }, ...shuffledOnes] };
}

const throws = fc.array(fc.nat(), { minLength: 20, maxLength: 200 });

describe.each(examples)('$name', ({ documents }) => {
  const { value: plan, diagnostics } = loadPlan(documents);

  test('has no problem but notices', () => {
    expect(plan).toBeDefined();
    expect(diagnostics.filter(({ severity }) => severity !== 'notice')).toEqual([]);
  });

  test('means the same in any order of files, keys and items', () => {
    fc.assert(
      fc.property(throws, (numbers) => {
        const shuffled = loadPlan(shuffledDocuments(documents, new Dice(numbers)));
        expect(meaningOf(shuffled.value)).toBe(meaningOf(plan));
        expect(shuffled.diagnostics.map(({ code }) => code).toSorted()).toEqual(
          diagnostics.map(({ code }) => code).toSorted(),
        );
      }),
      { numRuns: 30 },
    );
  });
});

/** Every path to a node, for picking one. */
function* pathsIn(node: Node, path: readonly number[] = []): Generator<readonly number[]> {
  yield path;
  const children =
    node.kind === 'map' ? node.entries.map(({ value }) => value) : node.kind === 'sequence' ? node.items : [];
  for (const [index, child] of children.entries()) yield* pathsIn(child, [...path, index]);
}

function changedAt(node: Node, path: readonly number[], change: (node: Node) => Node): Node {
  const [step, ...rest] = path;
  if (step === undefined) return change(node);
  if (node.kind === 'map') {
    return {
      ...node,
      entries: node.entries.map((entry, index) =>
        index === step ? { ...entry, value: changedAt(entry.value, rest, change) } : entry,
      ),
    };
  }
  if (node.kind === 'sequence') {
    return { ...node, items: node.items.map((item, index) => (index === step ? changedAt(item, rest, change) : item)) };
  }
  return node;
}

const odd = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 12 }),
  fc.constantFrom(
    '',
    'no',
    '0',
    '-1',
    '1.5',
    '68 kg',
    '2027-02-30',
    '1999-01-01',
    'mira',
    '__proto__',
    'constructor',
    'seniors',
    '9'.repeat(400),
  ),
);

/** A node in the place of another: other words, one of its kinds, or what stands somewhere else. */
function mutated(root: Node, dice: Dice, word: string): Node {
  const paths = [...pathsIn(root)];
  const target = paths[dice.next(paths.length)] ?? [];
  const source = paths[dice.next(paths.length)] ?? [];
  let borrowed: Node = root;
  changedAt(root, source, (node) => {
    borrowed = node;
    return node;
  });
  return changedAt(root, target, (node): Node => {
    const value = word === '' ? null : word;
    if (dice.next(3) === 0) return borrowed;
    if (dice.next(3) === 0) return { kind: 'sequence', span: node.span, items: [node] };
    if (dice.next(3) === 0 && node.kind === 'map') {
      const entries = node.entries.map((entry, index) => (index === 0 ? { ...entry, key: word } : entry));
      return { ...node, entries };
    }
    return { kind: 'scalar', span: node.span, text: word, value, quoted: false };
  });
}

test('whatever is changed in an example, problems lie in their files and nothing throws', () => {
  let problems = 0;
  fc.assert(
    fc.property(
      fc.nat(examples.length - 1),
      throws,
      fc.array(odd, { minLength: 1, maxLength: 3 }),
      (which, numbers, words) => {
        const documents = examples[which]?.documents ?? { files: [], documents: [] };
        const dice = new Dice(numbers);
        const changed = documents.documents.map((one) => ({
          ...one,
          root: words.reduce((root, word) => mutated(root, dice, word), one.root),
        }));
        const { diagnostics } = loadPlan({ ...documents, documents: changed });
        problems += diagnostics.length;
        for (const { span, related } of diagnostics) {
          for (const place of [span, ...related.map((other) => other.span)]) {
            const file = documents.files.find(({ path }) => path === place?.file);
            expect(place).toBeDefined();
            expect(file?.text.length ?? -1).toBeGreaterThanOrEqual(place?.end ?? 0);
          }
        }
      },
    ),
    { numRuns: 300 },
  );
  expect(problems).toBeGreaterThan(100);
});
