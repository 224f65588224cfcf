// The text of a YAML file to located nodes. Called by read-plan for every YAML file. A file with a mistake in it comes
// back with all its mistakes and marked as broken: what could be read of it says which files it names, and is decoded
// no further, as that would only bring false ones.

import { hasErrors } from '../diagnostics/collector.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { SourceFile } from '../source/types.ts';
import { hasHidden, withoutControls, withoutHidden } from './hidden-characters.ts';
import { documentNode } from './yaml-block.ts';
import { advance, inWords, report, spanOf, startParse, textAt } from './yaml-parse-state.ts';
import type { ParseState } from './yaml-parse-state.ts';
import { tokenStream } from './yaml-tokens.ts';
import type { Token } from './yaml-tokens.ts';
import type { Node } from './types.ts';

export interface ParsedYaml {
  /** A null scalar if there is nothing in the file but comments. */
  readonly root: Node;
  /** There are mistakes in the file, and `root` lacks what they stand in. */
  readonly isBroken: boolean;
}

/** The root of a file's only document, of `most` tokens at most. Takes time in proportion to the text. */
export const parseYaml = (file: SourceFile, most?: number): Staged<ParsedYaml> => {
  const sound = withoutControls(file);
  const clean = hasHidden(sound.text)
    ? withoutHidden(file, sound.text, unquotedTokens(sound.text))
    : { text: sound.text, diagnostics: [] };
  const parsed = parseMendingQuotes(file.path, clean.text, most);
  const diagnostics = [...sound.diagnostics, ...clean.diagnostics, ...parsed.diagnostics];
  return { value: { root: parsed.value, isBroken: hasErrors(diagnostics) }, diagnostics };
};

/** Quotes left open in one file that are looked behind. */
const mostOpenQuotes = 8;

/**
 * A quote that is never closed can swallow the rest of the file with every mistake in it, so the line it stands on is
 * taken as if it were closed, and the text parsed again.
 */
const parseMendingQuotes = (path: string, text: string, most: number | undefined): Staged<Node> => {
  const quotes: Diagnostic[] = [];
  let mended = text;
  for (;;) {
    const { value: root, diagnostics, openQuote } = parseText(path, mended, most);
    if (openQuote === -1 || quotes.length === mostOpenQuotes) {
      return { value: root, diagnostics: [...quotes, ...diagnostics] };
    }
    const isOpenQuote = ({ code, span }: Diagnostic): boolean =>
      code === 'yaml/unclosed-quote' && span?.start === openQuote;
    quotes.push(...diagnostics.filter(isOpenQuote));
    mended = withQuoteMended(mended, openQuote);
  }
};

/** The text with letters for what stands behind the quote on its line, brackets at the end of the line aside. */
const withQuoteMended = (text: string, openQuote: number): string => {
  const rest = /[^\r\n]*/uy;
  rest.lastIndex = openQuote;
  const line = rest.exec(text)?.[0] ?? '';
  const quoted = Math.max(1, line.replace(/[\s,\]}]+$/u, '').length);
  return text.slice(0, openQuote) + 'x'.repeat(quoted) + text.slice(openQuote + quoted);
};

interface ParsedText extends Staged<Node> {
  readonly openQuote: number;
}

const parseText = (path: string, text: string, most: number | undefined): ParsedText => {
  const state = startParse(path, text, tokenStream(text), most);
  skipDirectives(state);
  const value = documentNode(state);
  refuseFurtherDocuments(state);
  return { value, diagnostics: [...state.diagnostics, ...lexicalProblems(state)], openQuote: state.openQuote };
};

const skipDirectives = (state: ParseState): void => {
  while (state.current.kind === 'directive') {
    const token = advance(state);
    const found = textAt(state, token);
    if (/^%YAML\s+1\.2$/u.test(found)) continue;
    report(state, 'yaml/directive', { params: { found }, span: spanOf(state, token) });
  }
  if (state.current.kind !== 'document-start') return;
  advance(state);
  const { current } = state;
  if (current.first || current.kind === 'end') return;
  const help = 'begin on the line below ---, or leave the --- out';
  report(state, 'yaml/syntax', { params: { found: inWords(state, current) }, span: spanOf(state, current), help });
};

const refuseFurtherDocuments = (state: ParseState): void => {
  while (state.current.kind === 'document-end') advance(state);
  if (state.current.kind === 'end') return;
  report(state, 'yaml/several-documents', { span: spanOf(state, state.current) });
};

const lexicalProblems = ({ path, tokens }: ParseState): readonly Diagnostic[] => {
  const diagnostics: Diagnostic[] = [];
  const [firstTab] = tokens.tabs;
  if (firstTab !== undefined) {
    const span = { file: path, start: firstTab, end: firstTab + 1 };
    diagnostics.push(problem('yaml/tab-indent', { params: { lines: tokens.tabs.length }, span }));
  }
  for (const offset of tokens.touchingComments.slice(0, 1)) {
    const span = { file: path, start: offset, end: offset + 1 };
    const help = 'put a space before the # of a comment';
    diagnostics.push(problem('yaml/syntax', { params: { found: '"#"' }, span, help }));
  }
  return diagnostics;
};

/** The tokens in which a hidden character can't be meant. */
const unquotedTokens = function* (text: string): Generator<Token> {
  const { next } = tokenStream(text);
  for (let token = next(); token.kind !== 'end'; token = next()) {
    const { kind } = token;
    if (kind !== 'single-quoted' && kind !== 'double-quoted' && kind !== 'block-text') yield token;
  }
};
