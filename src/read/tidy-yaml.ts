// A YAML file of a plan in one tidy shape: two spaces a level, one space inside braces, lists as written, comments and
// order kept. Called by `footfall format`. What it makes is read again and has to hold the same values, and tidying it
// once more has to change nothing; where the yaml package can't promise that, the text stays as it is.

import { parseDocument } from 'yaml';
import { hasErrors } from '../diagnostics/collector.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Staged } from '../diagnostics/types.ts';
import { sourceFile } from '../source/source-file.ts';
import type { SourceFile } from '../source/types.ts';
import { parseYaml } from './parse-yaml.ts';
import { tokenStream } from './yaml-tokens.ts';
import type { Token } from './yaml-tokens.ts';
import type { Node } from './types.ts';

/** Columns up to which a list or group in brackets stands on one line. */
const MOST_COLUMNS = 140;
/** Comments inside brackets may move once before they stay. */
const MOST_ROUNDS = 4;

/**
 * The tidy text, or undefined for a file with mistakes in it, which are told. A table or notes read as YAML are one long
 * text, whose lines would be run together: what holds no keys is a mistake, too.
 */
export function tidyYaml(file: SourceFile): Staged<string | undefined> {
  const { value, diagnostics } = parseYaml(file);
  if (value.isBroken || hasErrors(diagnostics)) return { value: undefined, diagnostics };
  const { root } = value;
  if (root.kind === 'map' || (root.kind === 'scalar' && root.value === null))
    return { value: settled(file, root), diagnostics };
  const found = root.kind === 'sequence' ? 'a list' : 'a single text';
  return { value: undefined, diagnostics: [problem('language/not-a-plan', { params: { found }, span: root.span })] };
}

/** The shape that stays as it is; the text itself where there is none of the same meaning. */
function settled(file: SourceFile, root: Node): string {
  let text = file.text;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = tidied(text);
    if (next === text) return means(file.path, text, root) ? text : file.text;
    text = next;
  }
  return file.text;
}

function tidied(text: string): string {
  const document = parseDocument(text, { version: '1.2', schema: 'core', merge: false, keepSourceTokens: false });
  if (document.errors.length > 0) return text;
  return withoutListPadding(document.toString({ lineWidth: MOST_COLUMNS, indent: 2, flowCollectionPadding: true }));
}

/** `[ a, b ]` to `[a, b]`: the package pads both kinds of brackets alike. */
function withoutListPadding(text: string): string {
  const { next } = tokenStream(text);
  let made = '';
  let kept = 0;
  let before: Token | undefined;
  for (let token = next(); token.kind !== 'end'; token = next()) {
    const isInside = before?.kind === 'open-list' || token.kind === 'close-list';
    if (before !== undefined && isInside && text.slice(before.end, token.start) === ' ') {
      made += text.slice(kept, before.end);
      kept = token.start;
    }
    before = token;
  }
  return made + text.slice(kept);
}

function means(path: string, text: string, root: Node): boolean {
  const { value, diagnostics } = parseYaml(sourceFile(path, text));
  return diagnostics.length === 0 && sameNodes(value.root, root);
}

/** Whether two trees hold the same keys in the same order, and the same values. */
function sameNodes(a: Node, b: Node): boolean {
  if (a.kind === 'scalar') return b.kind === 'scalar' && Object.is(a.value, b.value) && a.text === b.text;
  if (a.kind === 'sequence') {
    return b.kind === 'sequence' && sameLists(a.items, b.items);
  }
  if (b.kind !== 'map') return false;
  const keys = b.entries.map(({ key }) => key);
  return (
    a.entries.every(({ key }, index) => key === keys[index]) &&
    sameLists(
      a.entries.map(({ value }) => value),
      b.entries.map(({ value }) => value),
    )
  );
}

const sameLists = (a: readonly Node[], b: readonly Node[]): boolean =>
  a.length === b.length &&
  a.every((node, index) => {
    const other = b[index];
    return other !== undefined && sameNodes(node, other);
  });
