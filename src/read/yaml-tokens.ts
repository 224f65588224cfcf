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

const kinds: Readonly<Record<string, TokenKind>> = {
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

const manyLines: ReadonlySet<TokenKind> = new Set(['plain', 'single-quoted', 'double-quoted', 'block-text']);

/** The tokens of a text; after the last one `end`, again and again. */
export const tokenStream = (text: string): TokenStream => {
  const lexemes = new Lexer().lex(text);
  const touchingComments: number[] = [];
  const tabs: number[] = [];
  let offset = 0;
  let line = 0;
  let lineStart = 0;
  let first = true;
  let tabAt = -1;
  let scalarNext = false;
  let inHeader = false;

  const startLine = (at: number): void => {
    line += 1;
    lineStart = at;
    first = true;
    tabAt = -1;
  };

  const token = (kind: TokenKind, lexeme: string): Token => {
    if (first && tabAt !== -1 && kind !== 'end') tabs.push(tabAt);
    const start = offset;
    const startLine = line;
    const column = start - lineStart;
    const isFirst = first;
    const tab = tabAt;
    offset = start + lexeme.length;
    first = false;
    if (manyLines.has(kind)) passLines(lexeme, start);
    return { kind, start, end: offset, line: startLine, endLine: line, column, first: isFirst, tabAt: tab };
  };

  const passLines = (lexeme: string, start: number): void => {
    for (let at = lexeme.indexOf('\n'); at !== -1; at = lexeme.indexOf('\n', at + 1)) {
      line += 1;
      lineStart = start + at + 1;
      first = at + 1 === lexeme.length;
      tabAt = -1;
    }
  };

  const take = (lexeme: string): Token | undefined => {
    if (scalarNext) {
      scalarNext = false;
      const kind = inHeader ? 'block-text' : 'plain';
      inHeader = false;
      return lexeme === '' && kind === 'plain' ? undefined : token(kind, lexeme);
    }
    const type = CST.tokenType(lexeme);
    switch (type) {
      case 'scalar':
        scalarNext = true;
        return undefined;
      case 'doc-mode':
        return undefined;
      case 'newline':
        if (lexeme === '') return undefined;
        offset += lexeme.length;
        startLine(offset);
        return undefined;
      case 'space':
        if (first && tabAt === -1 && lexeme.includes('\t')) tabAt = offset + lexeme.indexOf('\t');
        offset += lexeme.length;
        return undefined;
      case 'comment':
        if (!first && !/[ \t\n\r]/u.test(text.charAt(offset - 1))) touchingComments.push(offset);
        offset += lexeme.length;
        return undefined;
      case 'flow-error-end':
        return {
          kind: 'flow-break',
          start: offset,
          end: offset,
          line,
          endLine: line,
          column: offset - lineStart,
          first,
          tabAt,
        };
      default: {
        if (inHeader) return token('stray', lexeme);
        inHeader = type === 'block-scalar-header';
        return token(type === null ? 'stray' : (kinds[type] ?? 'stray'), lexeme);
      }
    }
  };

  const next = (): Token => {
    for (;;) {
      const { done, value } = lexemes.next();
      if (done === true) return token('end', '');
      const taken = take(value);
      if (taken !== undefined) return taken;
    }
  };

  return { next, touchingComments, tabs };
};
