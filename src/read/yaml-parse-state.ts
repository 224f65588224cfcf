// What the parts of the YAML parser share while one file is read: the token they are at, where problems go, how deep
// they are, and what the aliases of the file may still repeat. Lives as long as one parse.

import { problem } from '../diagnostics/problem.ts';
import type { Code } from '../diagnostics/catalogue.ts';
import type { Details } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Span } from '../source/types.ts';
import type { Edit } from './mend-text.ts';
import type { Token, TokenStream } from './yaml-tokens.ts';
import type { Node, ScalarNode } from './types.ts';
import { shortened } from '../util/printable.ts';

/** Levels of lists and groups in each other; a plan has about ten. */
export const MOST_LEVELS = 60;
/** Words and marks of one file that are read: three times what ten thousand athletes take. */
export const MOST_TOKENS = 2_500_000;
/** Mistakes in one file after which the rest is left unread. */
export const MOST_MISTAKES = 100;

export interface Anchor {
  readonly node: Node;
  /** Nodes in it, with all that its own aliases repeat. */
  readonly weight: number;
  /** Levels in it. */
  readonly height: number;
}

export interface Mend {
  readonly diagnostic: Diagnostic;
  readonly edits: readonly Edit[];
  /** Whether the mended text is what was meant, or only lets the rest be read. */
  readonly isExact: boolean;
}

export interface ParseState {
  readonly path: string;
  readonly text: string;
  readonly tokens: TokenStream;
  readonly diagnostics: Diagnostic[];
  /** Slips that can be mended in the text, so that what they hide is found too. */
  readonly mends: Mend[];
  readonly anchors: Map<string, Anchor>;
  current: Token;
  previous: Token | undefined;
  /** Tokens after which the rest is left unread. */
  readonly mostTokens: number;
  level: number;
  /** Tokens left behind so far. */
  taken: number;
  /** Nodes repeated by aliases so far. */
  repeated: number;
  /** The bracket being read is beyond help: what is left of it is skipped without a word. */
  broken: boolean;
  stopped: boolean;
  /** A line behind a tab was left out, as nothing says what it belongs to. */
  lostLine: boolean;
}

/** The state before the first token. `most` is how many tokens are read before the file is given up. */
export const startParse = (path: string, text: string, tokens: TokenStream, most = MOST_TOKENS): ParseState => ({
  path,
  text,
  tokens,
  diagnostics: [],
  mends: [],
  anchors: new Map(),
  current: tokens.next(),
  previous: undefined,
  mostTokens: most,
  level: 0,
  taken: 0,
  repeated: 0,
  broken: false,
  stopped: false,
  lostLine: false,
});

/** Goes on to the next token and returns the one left behind. */
export function advance(state: ParseState): Token {
  const left = state.current;
  state.previous = left;
  state.taken += 1;
  if (!state.stopped) state.current = state.tokens.next();
  if (state.taken === state.mostTokens) giveUpLongFile(state);
  return left;
}

function giveUpLongFile(state: ParseState): void {
  report(state, 'yaml/too-long', { params: { most: state.mostTokens }, span: spanOf(state, state.current) });
  stop(state);
}

/** Leaves the rest of the file unread. */
export function stop(state: ParseState): void {
  state.stopped = true;
  state.current = { ...state.current, kind: 'end' };
}

/** Reports a problem; the same one at the same place once. With the last that is allowed the rest is left unread. */
export function report<C extends Code>(state: ParseState, code: C, details: Details<C>): void {
  if (state.stopped) return;
  const last = state.diagnostics.at(-1);
  if (last?.code === code && last.span?.start === details.span?.start) return;
  state.diagnostics.push(problem(code, details));
  if (state.diagnostics.length < MOST_MISTAKES) return;
  state.diagnostics.push(problem('yaml/more', { params: { most: MOST_MISTAKES }, span: details.span }));
  stop(state);
}

/** Reports a slip together with what the text is to be read as. */
export function reportMended<C extends Code>(
  state: ParseState,
  code: C,
  details: Details<C>,
  edits: readonly Edit[],
  isExact: boolean,
): void {
  if (state.stopped) return;
  state.mends.push({ diagnostic: problem(code, details), edits, isExact });
  if (state.mends.length >= MOST_MISTAKES) stop(state);
}

/** A stretch of the text, such as a token. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

/** A stretch of the text as a place. */
export const spanOf = (state: ParseState, { start, end }: Range): Span => ({ file: state.path, start, end });

/** The text of a stretch, as it was written. */
export const textAt = (state: ParseState, { start, end }: Range): string => state.text.slice(start, end);

/** Nothing of the document is left: what follows is the end, or another document. */
export const isAtEnd = ({ current: { kind } }: ParseState): boolean =>
  kind === 'end' || kind === 'document-start' || kind === 'document-end';

/** Whether a token is a text, a word or a number on its own; block texts aren't among them. */
export const isScalar = ({ kind }: Token): boolean =>
  kind === 'plain' || kind === 'single-quoted' || kind === 'double-quoted';

/** The value of a key that has none, right behind its colon. */
export const emptyNode = (state: ParseState, offset: number): ScalarNode => ({
  kind: 'scalar',
  span: spanOf(state, { start: offset, end: offset }),
  text: '',
  value: null,
  quoted: false,
});

/** Enters a level; false, with the problem reported and the rest left unread, if it is one too many. */
export function enterLevel(state: ParseState, token: Token): boolean {
  state.level += 1;
  if (state.level <= MOST_LEVELS) return true;
  report(state, 'yaml/too-deep', { params: { most: MOST_LEVELS }, span: spanOf(state, token) });
  stop(state);
  return false;
}

/** Leaves the level that was entered last. */
export function leaveLevel(state: ParseState): void {
  state.level -= 1;
}

const MOST_SHOWN = 40;

/** The beginning of a token in quotes, for "… cannot stand here". */
export function quotedStart(state: ParseState, token: Token): string {
  const text = textAt(state, token).split('\n')[0]?.trim() ?? '';
  return `"${shortened(text, MOST_SHOWN)}"`;
}
