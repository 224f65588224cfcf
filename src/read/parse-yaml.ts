// The text of a YAML file to located nodes. Called by read-plan for every YAML file. A file with a mistake in it comes
// back with all its mistakes and marked as broken: what could be read of it says which files it names, and is decoded
// no further, as that would only bring false ones.

import { hasErrors } from '../diagnostics/collector.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { SourceFile } from '../source/types.ts';
import { hasHidden, withoutControls, withoutHidden } from './hidden-characters.ts';
import { diagnosticBack, mendTabs, nodeBack } from './mend-tabs.ts';
import { documentNode } from './yaml-block.ts';
import { advance, inWords, report, spanOf, startParse, textAt } from './yaml-parse-state.ts';
import type { ParseState } from './yaml-parse-state.ts';
import { tokenStream } from './yaml-tokens.ts';
import type { Token } from './yaml-tokens.ts';
import type { Node } from './types.ts';

export interface ParsedYaml {
  /** A null scalar if there is nothing in the file but comments. */
  readonly root: Node;
  /** There are mistakes in the file. */
  readonly isBroken: boolean;
  /** Whatever mistakes there are, `root` has every key: what it says elsewhere than on their lines is what was meant. */
  readonly isWhole: boolean;
}

/** The root of a file's only document, of `most` tokens at most. Takes time in proportion to the text. */
export const parseYaml = (file: SourceFile, most?: number): Staged<ParsedYaml> => {
  const sound = withoutControls(file);
  const clean = hasHidden(sound.text)
    ? withoutHidden(file, sound.text, unquotedTokens(sound.text))
    : { text: sound.text, diagnostics: [] };
  const parsed = parseMendingQuotes(file.path, clean.text, most);
  const diagnostics = [...sound.diagnostics, ...clean.diagnostics, ...parsed.diagnostics];
  const isWhole = !parsed.lostLine && diagnostics.every((one) => losesNoKey(one, file.text));
  return { value: { root: parsed.value, isBroken: hasErrors(diagnostics), isWhole }, diagnostics };
};

/** Mistakes inside of one value: the keys around it are read as they were meant. */
const withinValues: ReadonlySet<string> = new Set([
  'source/no-break-space',
  'source/invisible-character',
  'source/control-character',
  'source/lone-carriage-return',
  'yaml/tab-indent',
  'yaml/missing-comma',
  'yaml/extra-comma',
  'yaml/colon-in-text',
  'yaml/reserved-character',
  'yaml/bad-escape',
  'yaml/tag',
  'yaml/directive',
]);

/** A quote left open takes a key with it unless it begins a value, a double key what it holds unless that is a word. */
const losesNoKey = ({ code, severity, span }: Diagnostic, text: string): boolean => {
  if (severity !== 'error' || withinValues.has(code)) return true;
  if (span === undefined) return false;
  const line = text.slice(text.lastIndexOf('\n', span.start - 1) + 1, span.start);
  if (code === 'yaml/unclosed-quote') return /:\s+$/u.test(line) && !/[{[]/u.test(line);
  return code === 'yaml/duplicate-key' && /^\s*:[ \t]+[^\s{[&*|>#]/u.test(text.slice(span.end, span.end + 100));
};

/** Quotes left open in one file that are looked behind. */
const mostOpenQuotes = 8;
/** Characters of a file in which they are; ten thousand athletes have fewer. */
const mostLookedBehind = 4_000_000;

/**
 * A quote that is never closed can swallow the rest of the file with every mistake in it, so the line it stands on is
 * taken as if it were closed, and the text parsed again.
 */
const parseMendingQuotes = (path: string, text: string, most: number | undefined): ParsedText => {
  const quotes: Diagnostic[] = [];
  let mended = text;
  for (;;) {
    const parsed = parseMendingTabs(path, mended, most);
    const { diagnostics, openQuote } = parsed;
    if (openQuote === -1 || quotes.length === mostOpenQuotes || text.length > mostLookedBehind) {
      return { ...parsed, diagnostics: [...quotes, ...diagnostics] };
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
  readonly lostLine: boolean;
  readonly tabs: readonly number[];
}

/** How far apart tab stops may be in the editor of whoever indents with tabs. */
const tabStops = [2, 4, 8];
/** A text longer than any plan written by hand isn't read so many times. */
const mostMended = 300_000;

/** Lines indented with tabs are put where their editor showed them, if there is a width of tabs that fits them all. */
const parseMendingTabs = (path: string, text: string, most: number | undefined): ParsedText => {
  const plain = parseText(path, text, most);
  if (plain.tabs.length === 0 || text.length > mostMended) return plain;
  for (const columns of tabStops) {
    const { text: mended, back } = mendTabs(text, plain.tabs, columns);
    const { value, diagnostics, openQuote } = parseText(path, mended, most);
    if (!diagnostics.every((one) => losesNoKey(one, mended))) continue;
    const tab = plain.diagnostics.filter(({ code, span }) => isOfIndent(code, span?.start, plain.tabs));
    return {
      value: nodeBack(value, back),
      diagnostics: [...diagnostics.map((one) => diagnosticBack(one, back)), ...tab],
      openQuote: openQuote === -1 ? -1 : back(openQuote),
      lostLine: false,
      tabs: plain.tabs,
    };
  }
  return plain;
};

const isOfIndent = (code: string, start: number | undefined, tabs: readonly number[]): boolean =>
  code === 'yaml/tab-indent' && start === tabs[0];

const parseText = (path: string, text: string, most: number | undefined): ParsedText => {
  const state = startParse(path, text, tokenStream(text), most);
  skipDirectives(state);
  const value = documentNode(state);
  refuseFurtherDocuments(state);
  const diagnostics = [...state.diagnostics, ...lexicalProblems(state)];
  return { value, diagnostics, openQuote: state.openQuote, lostLine: state.lostLine, tabs: state.tokens.tabs };
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
