// A scalar token to a scalar node: quotes taken off, escapes and folded lines worked out, the value by the core schema.
// What one line without escapes can say, which is nearly everything in a plan, is read directly; the rest goes
// through the resolver of the yaml package.

import { CST } from 'yaml';
import { coreValue } from './core-schema.ts';
import { closedQuote, wholeQuoted } from './mend-line.ts';
import { isScalar, quotedStart, report, reportMended, spanOf, textAt } from './yaml-parse-state.ts';
import type { ParseState } from './yaml-parse-state.ts';
import type { Token } from './yaml-tokens.ts';
import type { ScalarNode } from './types.ts';

/** The node of a plain or quoted token. */
export function scalarNode(state: ParseState, token: Token): ScalarNode {
  const source = textAt(state, token);
  const span = spanOf(state, token);
  if (token.kind === 'plain') {
    checkPlainStart(state, token, source);
    if (token.line !== token.endLine) checkItemsInText(state, token, source);
    const text = token.line === token.endLine ? source : resolved(state, token, source);
    return { kind: 'scalar', span, text, value: coreValue(text), quoted: false };
  }
  const text = quotedText(state, token, source);
  return { kind: 'scalar', span, text, value: text, quoted: true };
}

function checkPlainStart(state: ParseState, token: Token, source: string): void {
  if (!/^[,%|>@`]/u.test(source)) return;
  const span = spanOf(state, { start: token.start, end: token.start + 1 });
  report(state, 'yaml/reserved-character', { params: { found: source.charAt(0) }, span });
}

/** A further line that begins with a dash is part of the text to YAML, and an item to whoever wrote it. */
function checkItemsInText(state: ParseState, token: Token, source: string): void {
  const found = /\n\s*-(?=\s)/u.exec(source);
  if (found === null) return;
  const end = token.start + found.index + found[0].length;
  report(state, 'yaml/item-in-text', { span: spanOf(state, { start: end - 1, end }) });
}

function quotedText(state: ParseState, token: Token, source: string): string {
  if (!isClosed(source)) {
    reportOpenQuote(state, token);
    return source.slice(1);
  }
  const inner = source.slice(1, -1);
  const simple = token.line === token.endLine && !inner.includes(token.kind === 'single-quoted' ? "'" : '\\');
  return simple ? inner : resolved(state, token, source);
}

/** A quote that is closed nowhere, or only further down at a quote that was meant to open another text. */
export function reportOpenQuote(state: ParseState, token: Token, closedAt?: number): void {
  const span = spanOf(state, { start: token.start, end: token.start + 1 });
  const related =
    closedAt === undefined
      ? []
      : [{ span: spanOf(state, { start: closedAt, end: closedAt + 1 }), message: 'it runs up to this one' }];
  const params = { quote: state.text.charAt(token.start) };
  const edits = closedQuote(state.text, token.start);
  reportMended(state, 'yaml/unclosed-quote', { params, span, related }, edits, false);
  state.broken = true;
}

/** A text in quotes with more of it behind the quote that ends it: that quote was meant to be part of the text. */
export function reportQuoteInside(state: ParseState, token: Token): void {
  const { start, end } = wholeQuoted(state.text, token.start, token.end);
  const quote = state.text.charAt(token.start);
  const span = spanOf(state, { start: token.end - 1, end: token.end });
  const edits = [{ at: start, cut: end - start, put: 'x' }];
  reportMended(state, 'yaml/quote-inside', { params: { quote }, span }, edits, false);
  state.broken = true;
}

/** What stands right behind a text in quotes on its line, with no space between them. */
export const touchesQuoted = ({ current, previous }: ParseState): boolean =>
  previous !== undefined &&
  previous.kind.endsWith('-quoted') &&
  previous.line === previous.endLine &&
  previous.end === current.start &&
  (isScalar(current) || current.kind === 'alias' || current.kind === 'anchor');

/** Whether the last character is the quote that ends the text, and not one that is escaped. */
export function isClosed(source: string): boolean {
  const quote = source.charAt(0);
  if (source.length < 2 || !source.endsWith(quote)) return false;
  const escape = quote === '"' ? '\\' : quote;
  let escapes = 0;
  for (let at = source.length - 2; at > 0 && source.charAt(at) === escape; at -= 1) escapes += 1;
  return escapes % 2 === 0;
}

const TOKEN_TYPES = {
  plain: 'scalar',
  'single-quoted': 'single-quoted-scalar',
  'double-quoted': 'double-quoted-scalar',
} as const;

function resolved(state: ParseState, token: Token, source: string): string {
  const kind = token.kind === 'single-quoted' || token.kind === 'double-quoted' ? token.kind : 'plain';
  const flowScalar = { type: TOKEN_TYPES[kind], offset: token.start, indent: 0, source, end: [] };
  const result = CST.resolveAsScalar(flowScalar, true, (offset, code) => {
    if (code === 'BAD_DQ_ESCAPE') reportEscape(state, token, offset);
  });
  return result.value;
}

function reportEscape(state: ParseState, token: Token, offset: number): void {
  const length = /^\\(?:x.{0,2}|u.{0,4}|U.{0,8}|.)/u.exec(
    state.text.slice(offset, Math.min(token.end - 1, offset + 12)),
  );
  const end = offset + (length?.[0].length ?? 1);
  report(state, 'yaml/bad-escape', {
    params: { found: state.text.slice(offset, end) },
    span: spanOf(state, { start: offset, end }),
  });
}

/** The node of a text begun with `|` or `>`, from its header and the lines below; `column` is that of its group. */
export function blockTextNode(state: ParseState, header: Token, body: Token, column: number): ScalarNode {
  const token: CST.BlockScalar = {
    type: 'block-scalar',
    offset: body.start,
    indent: Math.max(column, 0),
    props: [{ type: 'block-scalar-header', offset: header.start, indent: 0, source: textAt(state, header) }],
    source: textAt(state, body),
  };
  let faulty = false;
  const { value } = CST.resolveAsScalar(token, true, () => {
    faulty = true;
  });
  if (faulty) report(state, 'yaml/bad-text-block', { span: spanOf(state, header) });
  const span = spanOf(state, { start: header.start, end: Math.max(header.end, body.end) });
  return { kind: 'scalar', span, text: value, value, quoted: true };
}

/** A key as text: as written, whatever it might mean as a value. */
export const keyText = (state: ParseState, token: Token): string => scalarNode(state, token).text;

/** What stands where nothing can: the words of the report, and how far it reaches. */
export function unexpected(state: ParseState, token: Token): void {
  const end = token.line === token.endLine ? token.end : token.start + 1;
  report(state, 'yaml/syntax', {
    params: { found: quotedStart(state, token) },
    span: spanOf(state, { start: token.start, end }),
  });
}
