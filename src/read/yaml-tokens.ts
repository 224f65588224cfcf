// YAML text to the tokens that matter: where each begins and ends, in which line and column, and whether it is the
// first of its line. Runs the lexer of the yaml package and drops spaces, line ends and comments; indentation survives
// as the column. Read one at a time by the parser, so that a large file never stands in memory as tokens.

import { CST, Lexer } from 'yaml';

export type TokenKind =
  | 'plain'
  | 'single-quoted'
  | 'double-quoted'
  | 'block-header'
  | 'block-text'
  | 'alias'
  | 'anchor'
  | 'tag'
  | 'item'
  | 'explicit-key'
  | 'colon'
  | 'open-list'
  | 'close-list'
  | 'open-map'
  | 'close-map'
  | 'comma'
  /** A bracket is open, and a line begins too far left to be inside it. */
  | 'flow-break'
  | 'directive'
  | 'document-start'
  | 'document-end'
  | 'stray'
  | 'end';

export interface Token {
  readonly kind: TokenKind;
  readonly start: number;
  readonly end: number;
  /** Lines from 0; a text in quotes may end in a later one. */
  readonly line: number;
  readonly endLine: number;
  /** UTF-16 units from the start of its line. */
  readonly column: number;
  /** Nothing but spaces stands before it in its line. */
  readonly first: boolean;
  /** Offset of a tab in the indentation before it, or -1. */
  readonly tabAt: number;
}

export interface TokenStream {
  readonly next: () => Token;
  /** Offsets of comments that touch what stands before them. */
  readonly touchingComments: readonly number[];
  /** Offsets of the first tab in the indentation of each line that has one. */
  readonly tabs: readonly number[];
}

const KINDS: Readonly<Record<string, TokenKind>> = {
  'doc-start': 'document-start',
  'doc-end': 'document-end',
  'seq-item-ind': 'item',
  'explicit-key-ind': 'explicit-key',
  'map-value-ind': 'colon',
  'flow-map-start': 'open-map',
  'flow-map-end': 'close-map',
  'flow-seq-start': 'open-list',
  'flow-seq-end': 'close-list',
  comma: 'comma',
  'directive-line': 'directive',
  alias: 'alias',
  anchor: 'anchor',
  tag: 'tag',
  'single-quoted-scalar': 'single-quoted',
  'double-quoted-scalar': 'double-quoted',
  'block-scalar-header': 'block-header',
};

const MANY_LINES: ReadonlySet<TokenKind> = new Set(['plain', 'single-quoted', 'double-quoted', 'block-text']);

/** The tokens of a text; after the last one `end`, again and again. */
export function tokenStream(text: string): TokenStream {
  const lexemes = new Lexer().lex(text);
  const place = startOf(text);
  const next = (): Token => {
    for (;;) {
      const { done, value } = lexemes.next();
      if (done === true) return token(place, 'end', '');
      const taken = take(place, value);
      if (taken !== undefined) return taken;
    }
  };
  return { next, touchingComments: place.touchingComments, tabs: place.tabs };
}

/** How far the text is read, and what is known of the line it is read to. */
interface Place {
  readonly text: string;
  offset: number;
  line: number;
  lineStart: number;
  first: boolean;
  tabAt: number;
  /** The lexer has said that the next lexeme is a text. */
  scalarNext: boolean;
  /** Between the header of a text block and the block. */
  inHeader: boolean;
  readonly touchingComments: number[];
  readonly tabs: number[];
}

const startOf = (text: string): Place => ({
  text,
  offset: 0,
  line: 0,
  lineStart: 0,
  first: true,
  tabAt: -1,
  scalarNext: false,
  inHeader: false,
  touchingComments: [],
  tabs: [],
});

/** The token of a lexeme; undefined where it says nothing by itself. */
function take(place: Place, lexeme: string): Token | undefined {
  if (place.scalarNext) return takeScalar(place, lexeme);
  const type = CST.tokenType(lexeme);
  switch (type) {
    case 'scalar':
      place.scalarNext = true;
      return undefined;
    case 'doc-mode':
      return undefined;
    case 'newline':
    case 'space':
    case 'comment':
      pass(place, type, lexeme);
      return undefined;
    case 'flow-error-end':
      return flowBreak(place);
    default:
      if (place.inHeader) return token(place, 'stray', lexeme);
      place.inHeader = type === 'block-scalar-header';
      return token(place, type === null ? 'stray' : (KINDS[type] ?? 'stray'), lexeme);
  }
}

function takeScalar(place: Place, lexeme: string): Token | undefined {
  const kind = place.inHeader ? 'block-text' : 'plain';
  place.scalarNext = false;
  place.inHeader = false;
  return lexeme === '' && kind === 'plain' ? undefined : token(place, kind, lexeme);
}

function token(place: Place, kind: TokenKind, lexeme: string): Token {
  const { offset: start, line, lineStart, first, tabAt } = place;
  if (first && tabAt !== -1 && kind !== 'end') place.tabs.push(tabAt);
  const end = start + lexeme.length;
  place.offset = end;
  place.first = false;
  if (MANY_LINES.has(kind)) passLines(place, lexeme, start);
  return { kind, start, end, line, endLine: place.line, column: start - lineStart, first, tabAt };
}

function passLines(place: Place, lexeme: string, start: number): void {
  for (let at = lexeme.indexOf('\n'); at !== -1; at = lexeme.indexOf('\n', at + 1)) {
    startLine(place, start + at + 1);
    place.first = at + 1 === lexeme.length;
  }
}

function startLine(place: Place, at: number): void {
  place.line += 1;
  place.lineStart = at;
  place.first = true;
  place.tabAt = -1;
}

/** Goes on behind what is no token: spaces, a comment, the end of a line. */
function pass(place: Place, type: 'newline' | 'space' | 'comment', lexeme: string): void {
  const { text, offset, first } = place;
  if (type === 'space' && first && place.tabAt === -1 && lexeme.includes('\t')) {
    place.tabAt = offset + lexeme.indexOf('\t');
  }
  if (type === 'comment' && !first && !/[ \t\n\r]/u.test(text.charAt(offset - 1))) place.touchingComments.push(offset);
  place.offset += lexeme.length;
  if (type === 'newline' && lexeme !== '') startLine(place, place.offset);
}

const flowBreak = ({ offset, line, lineStart, first, tabAt }: Place): Token => ({
  kind: 'flow-break',
  start: offset,
  end: offset,
  line,
  endLine: line,
  column: offset - lineStart,
  first,
  tabAt,
});
