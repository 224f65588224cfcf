// The anchors and tags before a value. Anchors are kept for aliases; tags are refused. Called wherever a value begins.

import { advance, report, spanOf, textAt } from './yaml-parse-state.ts';
import type { ParseState } from './yaml-parse-state.ts';
import type { Token } from './yaml-tokens.ts';

/** A name, with something between it and the value. */
const isWellFormed = (state: ParseState, anchor: Token): boolean =>
  /^&[^\s&*:]+$/u.test(textAt(state, anchor)) && /^[\s,\]}]?$/u.test(state.text.charAt(anchor.end));

/** Moves behind anchors and tags; returns the anchor, if there is one. */
export function takeProperties(state: ParseState): Token | undefined {
  let anchor: Token | undefined;
  while (state.current.kind === 'anchor' || state.current.kind === 'tag') {
    const token = advance(state);
    if (token.kind === 'tag') {
      report(state, 'yaml/tag', { params: { tag: textAt(state, token) }, span: spanOf(state, token) });
    } else if (anchor === undefined && isWellFormed(state, token)) {
      anchor = token;
    } else {
      report(state, 'yaml/anchor', { span: spanOf(state, token) });
    }
  }
  if (anchor !== undefined && state.current.kind === 'alias') {
    report(state, 'yaml/anchor', { span: spanOf(state, anchor) });
  }
  return anchor;
}
