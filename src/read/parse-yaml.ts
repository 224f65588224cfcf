// The text of a YAML file to located nodes. Called by read-plan for every YAML file. Most slips are mended in the text and
// the text read again, so that one run finds what they hide; around the others the places are told where keys may be lost.

import type { Code } from '../diagnostics/catalogue.ts';
import { hasErrors } from '../diagnostics/collector.ts';
import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic, Staged } from '../diagnostics/types.ts';
import type { SourceFile } from '../source/types.ts';
import { hasHidden, withoutControls, withoutHidden } from './hidden-characters.ts';
import { losesNoKey, mistakesOf } from './mistakes.ts';
import { tabEdits } from './mend-tabs.ts';
import { diagnosticBack, mendText, nodeBack } from './mend-text.ts';
import type { Back, Edit } from './mend-text.ts';
import { documentNode } from './yaml-block.ts';
import {
  advance,
  MOST_MISTAKES,
  quotedStart,
  report,
  reportMended,
  spanOf,
  startParse,
  textAt,
} from './yaml-parse-state.ts';
import type { Mend, ParseState } from './yaml-parse-state.ts';
import { tokenStream } from './yaml-tokens.ts';
import type { Token } from './yaml-tokens.ts';
import type { Mistake, Node } from './types.ts';

export interface ParsedYaml {
  /** A null scalar if there is nothing in the file but comments. */
  readonly root: Node;
  /** There are mistakes in the file. */
  readonly isBroken: boolean;
  /** All of the file was read; what isn't in `root` was lost to one of the `mistakes`. */
  readonly isWhole: boolean;
  readonly mistakes: readonly Mistake[];
}

/** The root of a file's only document, of `most` tokens at most. Takes time in proportion to the text. */
export function parseYaml(file: SourceFile, most?: number): Staged<ParsedYaml> {
  const sound = withoutControls(file);
  const clean = hasHidden(sound.text)
    ? withoutHidden(file, sound.text, unquotedTokens(sound.text))
    : { text: sound.text, diagnostics: [] };
  const { value: root, told, diagnostics: rest, isWhole } = parseMending(file.path, clean.text, most);
  const hidden = [...sound.diagnostics, ...clean.diagnostics];
  const mistakes = mistakesOf(file, {
    mended: told.filter(({ isExact }) => !isExact).map(({ diagnostic }) => diagnostic),
    others: [...hidden, ...rest],
  });
  const diagnostics = [...hidden, ...withoutMost([...told.map(({ diagnostic }) => diagnostic), ...rest])];
  return { value: { root, isBroken: hasErrors(diagnostics), isWhole, mistakes }, diagnostics };
}

/** A file mended in many places has more to tell than anybody reads. */
function withoutMost(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  if (diagnostics.length <= MOST_MISTAKES + 1) return diagnostics;
  const shown = diagnostics.filter(({ code }) => code !== 'yaml/more').slice(0, MOST_MISTAKES);
  return [...shown, problem('yaml/more', { params: { most: MOST_MISTAKES }, span: shown.at(-1)?.span })];
}

interface ParsedText extends Staged<Node> {
  readonly mends: readonly Mend[];
  /** Tokens of it. */
  readonly taken: number;
  /** Where tabs indent a line. */
  readonly tabs: readonly number[];
  /** Nothing was left unread. */
  readonly isWhole: boolean;
}

interface MendedYaml extends Staged<Node> {
  readonly told: readonly Mend[];
  readonly isWhole: boolean;
}

/** Times a text is read, and characters and tokens of it up to which it is read once more. */
const MOST_ROUNDS = 12;
const MOST_REREAD = 12_000_000;
const MOST_RETAKEN = 1_500_000;

function parseMending(path: string, text: string, most: number | undefined): MendedYaml {
  const told = new Map<string, Mend>();
  const tabs: number[] = [];
  let columns: number | undefined;
  let mended = text;
  let back: Back = (offset) => offset;
  let taken = 0;
  for (let round = 1; ; round += 1) {
    const parsed = parseText(path, mended, most);
    taken += parsed.taken;
    const mayMend = round < MOST_ROUNDS && round * text.length <= MOST_REREAD && taken <= MOST_RETAKEN;
    if (mayMend && parsed.tabs.length > 0) columns ??= tabWidth(path, mended, parsed.tabs, most);
    const isTabbed = parsed.tabs.length > 0 && columns !== undefined;
    const fresh = mayMend && !isTabbed ? freshMends(parsed.mends, told, back) : [];
    const edits =
      isTabbed && columns !== undefined && mayMend
        ? tabEdits(mended, parsed.tabs, columns)
        : fresh.flatMap((mend) => mend.edits).toSorted((a, b) => a.at - b.at);
    if (edits.length === 0) return finished(path, parsed, { told, tabs, back });
    for (const mend of fresh) told.set(identityOf(mend, back), mendBack(mend, back));
    if (isTabbed) tabs.push(...parsed.tabs.map(back));
    const step = mendText(mended, edits);
    const before = back;
    mended = step.text;
    back = (offset) => before(step.back(offset));
  }
}

/** How far apart tab stops may be in the editor of whoever indents with tabs. */
const TAB_STOPS = [2, 4, 8];
/** A text longer than any plan written by hand isn't read so many times. */
const MOST_TABBED = 300_000;
/** What a wrong width of tabs brings about. */
const OF_INDENT: ReadonlySet<Code> = new Set<Code>(['yaml/indent', 'yaml/outdented', 'yaml/key-under-value']);

/** The width of tabs that puts all lines where they fit, if there is one. */
function tabWidth(path: string, text: string, tabs: readonly number[], most: number | undefined): number | undefined {
  if (text.length > MOST_TABBED) return undefined;
  return TAB_STOPS.find((columns) => {
    const { mends, diagnostics } = parseText(path, mendText(text, tabEdits(text, tabs, columns)).text, most);
    return diagnostics.every(losesNoKey) && mends.every(({ diagnostic }) => !OF_INDENT.has(diagnostic.code));
  });
}

const identityOf = ({ diagnostic: { code, span } }: Mend, back: Back): string =>
  `${code} ${String(back(span?.start ?? 0))}`;

const mendBack = (mend: Mend, back: Back): Mend => ({ ...mend, diagnostic: diagnosticBack(mend.diagnostic, back) });

/** Mends that weren't tried before and don't touch each other: what they leave comes again when the text is read again. */
function freshMends(mends: readonly Mend[], told: ReadonlyMap<string, Mend>, back: Back): readonly Mend[] {
  const fresh: Mend[] = [];
  const taken: Edit[] = [];
  for (const mend of mends) {
    if (told.has(identityOf(mend, back)) || mend.edits.some((edit) => taken.some((other) => touches(edit, other))))
      continue;
    fresh.push(mend);
    taken.push(...mend.edits);
  }
  return fresh;
}

const touches = (a: Edit, b: Edit): boolean => a.at <= b.at + b.cut && b.at <= a.at + a.cut;

interface SoFar {
  readonly told: ReadonlyMap<string, Mend>;
  readonly tabs: readonly number[];
  readonly back: Back;
}

function finished(path: string, parsed: ParsedText, { told, tabs, back }: SoFar): MendedYaml {
  const isMended = told.size + tabs.length > 0;
  const unmended = parsed.mends.filter((mend) => !told.has(identityOf(mend, back))).map(({ diagnostic }) => diagnostic);
  const rest = [...parsed.diagnostics, ...unmended];
  return {
    value: isMended ? nodeBack(parsed.value, back) : parsed.value,
    told: [...told.values()],
    diagnostics: [
      ...(isMended ? rest.map((one) => diagnosticBack(one, back)) : rest),
      ...tabProblems(path, [...tabs, ...parsed.tabs.map(back)]),
    ],
    isWhole: parsed.isWhole,
  };
}

function tabProblems(path: string, tabs: readonly number[]): readonly Diagnostic[] {
  const start = Math.min(...tabs);
  if (tabs.length === 0) return [];
  return [problem('yaml/tab-indent', { params: { lines: tabs.length }, span: { file: path, start, end: start + 1 } })];
}

function parseText(path: string, text: string, most: number | undefined): ParsedText {
  const state = startParse(path, text, tokenStream(text), most);
  skipDirectives(state);
  const value = documentNode(state);
  refuseFurtherDocuments(state);
  const diagnostics = [...state.diagnostics, ...lexicalProblems(state)];
  const isWhole = !state.stopped && !state.lostLine;
  return { value, diagnostics, mends: state.mends, tabs: state.tokens.tabs, taken: state.taken, isWhole };
}

function skipDirectives(state: ParseState): void {
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
  report(state, 'yaml/syntax', { params: { found: quotedStart(state, current) }, span: spanOf(state, current), help });
}

function refuseFurtherDocuments(state: ParseState): void {
  while (state.current.kind === 'document-end') advance(state);
  const { current } = state;
  if (current.kind === 'end') return;
  const cut = [{ at: current.start, cut: current.end - current.start, put: '' }];
  const span = spanOf(state, current);
  if (current.kind === 'document-start') reportMended(state, 'yaml/several-documents', { span }, cut, true);
  else report(state, 'yaml/several-documents', { span });
}

function lexicalProblems({ path, tokens }: ParseState): readonly Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  for (const offset of tokens.touchingComments.slice(0, 1)) {
    const span = { file: path, start: offset, end: offset + 1 };
    const help = 'put a space before the # of a comment';
    diagnostics.push(problem('yaml/syntax', { params: { found: '"#"' }, span, help }));
  }
  return diagnostics;
}

/** The tokens in which a hidden character can't be meant. */
function* unquotedTokens(text: string): Generator<Token> {
  const { next } = tokenStream(text);
  for (let token = next(); token.kind !== 'end'; token = next()) {
    const { kind } = token;
    if (kind !== 'single-quoted' && kind !== 'double-quoted' && kind !== 'block-text') yield token;
  }
}
