// Characters that look like others or like nothing: found before a text is parsed, reported at their place, and
// replaced for the parser by what they were taken for, so that one of them doesn't bring ten other problems with it.
// No-break spaces and the like are left alone inside quotes, text blocks and comments, where a coach may mean them.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { SourceFile, Span } from '../source/types.ts';

/** Spaces that are not the space, by code. */
const SPACES: ReadonlyMap<number, string> = new Map([
  [0x00a0, 'no-break space'],
  [0x1680, 'space of another script'],
  ...[0x2000, 0x2001, 0x2002, 0x2003, 0x2004, 0x2005, 0x2006, 0x2007, 0x2008, 0x2009, 0x200a].map(
    (code) => [code, 'space of a fixed width'] as const,
  ),
  [0x202f, 'narrow no-break space'],
  [0x205f, 'space of a fixed width'],
  [0x3000, 'wide space'],
]);

const INVISIBLE: ReadonlyMap<number, string> = new Map([
  [0x0085, 'line separator'],
  [0x00ad, 'soft hyphen'],
  [0x200b, 'zero-width space'],
  [0x2028, 'line separator'],
  [0x2029, 'paragraph separator'],
  [0x2060, 'word joiner'],
  [0xfeff, 'byte order mark'],
  ...[0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069].map(
    (code) => [code, 'mark of the writing direction'] as const,
  ),
]);

const LINE_FEED = 10;
const HIDDEN_CHARACTER =
  /[\u0085\u00A0\u00AD\u1680\u2000-\u200B\u200E\u200F\u2028-\u202F\u205F\u2060\u2066-\u2069\u3000\uFEFF]/gu;
const HIDDEN_RUN = new RegExp(`(?:${HIDDEN_CHARACTER.source})+`, 'gu');
/** With those that turn the text behind them around, in quotes as well: a sheet would show other numbers than are meant. */
const CONTROL_CHARACTER = /[\u202D\u202E\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u0084\u0086-\u009F]/gu;

/** Problems of one kind in one file that are shown. */
const MOST_SHOWN = 100;

export interface CleanText {
  /** As long as the text it was made of. */
  readonly text: string;
  readonly diagnostics: readonly Diagnostic[];
}

/** Control characters to spaces, carriage returns alone to line ends; each problem is reported. */
export function withoutControls(file: SourceFile): CleanText {
  const diagnostics: Diagnostic[] = [];
  let text = file.text;
  const returns = loneReturns(text);
  if (returns.count > 0) {
    const params = { count: returns.count };
    diagnostics.push(problem('source/lone-carriage-return', { params, span: spanAt(file, returns.first) }));
    text = withLineFeeds(text);
  }
  const controls = offsetsOf(text, CONTROL_CHARACTER);
  for (const offset of controls.slice(0, MOST_SHOWN)) {
    diagnostics.push(controlProblem(file, text.charCodeAt(offset), offset));
  }
  if (controls.length > 0) text = text.replaceAll(CONTROL_CHARACTER, ' ');
  return { text, diagnostics };
}

function controlProblem(file: SourceFile, code: number, offset: number): Diagnostic {
  const [character, span] = [codeName(code), spanAt(file, offset)];
  const name = INVISIBLE.get(code);
  if (name === undefined) return problem('source/control-character', { params: { character }, span });
  const help = 'delete it, or type the line anew: it turns around what stands behind it';
  return problem('source/invisible-character', { params: { name, character }, span, help });
}

/** Looked for one by one: a file from an old system may have millions. */
function loneReturns(text: string): { readonly first: number; readonly count: number } {
  let first = -1;
  let count = 0;
  for (let at = text.indexOf('\r'); at !== -1; at = text.indexOf('\r', at + 1)) {
    if (text.charCodeAt(at + 1) === LINE_FEED) continue;
    if (count === 0) first = at;
    count += 1;
  }
  return { first, count };
}

/** Units that are changed at a time: millions of places in one text take hundreds of megabytes. */
const AT_A_TIME = 100_000;

function withLineFeeds(text: string): string {
  const pieces: string[] = [];
  for (let start = 0; start < text.length;) {
    const end = start + AT_A_TIME;
    // A carriage return and its line feed stay together.
    const until = text.charCodeAt(end) === LINE_FEED ? end + 1 : end;
    pieces.push(text.slice(start, until).replaceAll(/\r(?!\n)/gu, '\n'));
    start = until;
  }
  return pieces.join('');
}

const offsetsOf = (text: string, pattern: RegExp): readonly number[] =>
  Array.from(text.matchAll(pattern), ({ index }) => index);

const spanAt = (file: SourceFile, offset: number): Span => ({ file: file.path, start: offset, end: offset + 1 });

/** The first of a text, as `U+0007`; an escape in quotes may bring one that no file holds. */
export function findControl(text: string): string | undefined {
  const at = text.search(CONTROL_CHARACTER);
  return at === -1 ? undefined : codeName(text.charCodeAt(at));
}

const codeName = (code: number): string => `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;

/** Whether a text holds any of them: cheap, as most files hold none. */
export const hasHidden = (text: string): boolean => text.search(HIDDEN_CHARACTER) !== -1;

/** Stretches of a text, such as its tokens, in their order. */
export type Ranges = Iterable<{ readonly start: number; readonly end: number }>;

/** Hidden characters inside these stretches to spaces, the first of each stretch reported. */
export function withoutHidden(file: SourceFile, text: string, ranges: Ranges): CleanText {
  const diagnostics: Diagnostic[] = [];
  const pieces: string[] = [];
  let done = 0;
  for (const { start, end } of ranges) {
    const stretch = text.slice(start, end);
    const at = stretch.search(HIDDEN_CHARACTER);
    if (at === -1) continue;
    if (diagnostics.length < MOST_SHOWN) diagnostics.push(hiddenProblem(file, text, start + at));
    pieces.push(
      text.slice(done, start),
      stretch.replaceAll(HIDDEN_RUN, (run) => ' '.repeat(run.length)),
    );
    done = end;
  }
  return { text: pieces.join('') + text.slice(done), diagnostics };
}

function hiddenProblem(file: SourceFile, text: string, offset: number): Diagnostic {
  const code = text.charCodeAt(offset);
  const character = codeName(code);
  const span = spanAt(file, offset);
  const space = SPACES.get(code);
  return space === undefined
    ? problem('source/invisible-character', { params: { name: INVISIBLE.get(code) ?? 'character', character }, span })
    : problem('source/no-break-space', { params: { name: space, character }, span });
}
